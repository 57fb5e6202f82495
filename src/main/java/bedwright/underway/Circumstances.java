package bedwright.underway;

import bedwright.climate.SiteClimate;
import bedwright.log.Entry;
import bedwright.log.Note;
import bedwright.log.Period;
import bedwright.season.Bed;
import bedwright.season.BedBlock;
import bedwright.season.KeptPlanting;
import bedwright.season.Labour;
import bedwright.season.Lots;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.UnderWay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** What of a season that is not its plantings is left on a date: what is asked for, beds, hands, stock and weather. */
final class Circumstances {
    private static final int DAYS = 7;

    private final Season whole;
    private final List<Entry> notes;
    private final LocalDate on;
    private final AskedFor asked;
    /** First day of the week that it is. */
    private final LocalDate week;

    /**
     * @param notes up to the date
     * @param isHeld whether what is asked for and undecided counts as promised
     */
    Circumstances(Season whole, List<Entry> notes, LocalDate on, boolean isHeld) {
        this.whole = whole;
        this.notes = List.copyOf(notes);
        this.on = on;
        this.asked = new AskedFor(whole, notes, on, isHeld);
        this.week = whole.weekStart(Math.max(0, whole.weekOf(on)));
    }

    Season season(List<Lots> pool, List<Standing> standing, List<KeptPlanting> inForce, int nextNumber) {
        return whole.begun(
                new UnderWay(on, weather(), gusts(), missing(), inForce, nextNumber),
                beds(),
                labour(),
                pool,
                standing,
                asked.outlets(),
                asked.orders());
    }

    /** Notes of what is asked for and undecided. */
    List<Entry> undecided() {
        return asked.undecided();
    }

    private <T extends Note> List<T> of(Class<T> kind) {
        return notes.stream()
                .map(Entry::note)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    /** By how much days were warmer than normal, the mean of what was noted less that of the normal; and their minima. */
    private List<UnderWay.DaySeen> weather() {
        List<UnderWay.DaySeen> seen = new ArrayList<>();
        if (of(Note.Weather.class).isEmpty()) {
            return seen;
        }
        SiteClimate climate = SiteClimate.of(whole);
        for (Entry entry : notes) {
            if (entry.note() instanceof Note.Weather day && day.least() != null && day.most() != null) {
                int d = whole.dayOf(entry.on());
                double mean = (day.least() + day.most()) / 2;
                double warmer = mean - (climate.normalMin(d) + climate.normalMax(d)) / 2;
                seen.add(new UnderWay.DaySeen(entry.on(), warmer, day.least()));
            }
        }
        seen.sort(Comparator.comparing(UnderWay.DaySeen::on));
        return seen;
    }

    private List<Sampling.GivenGust> gusts() {
        List<Sampling.GivenGust> seen = new ArrayList<>();
        for (Entry entry : notes) {
            if (entry.note() instanceof Note.Weather day && day.gust() != null) {
                seen.add(new Sampling.GivenGust(entry.on(), day.from(), day.gust()));
            }
        }
        seen.sort(Comparator.comparing(Sampling.GivenGust::on));
        return seen;
    }

    private List<UnderWay.Missing> missing() {
        return of(Note.StockGone.class).stream()
                .map(gone -> new UnderWay.Missing(
                        gone.stock(), gone.time().from(), gone.time().to(), gone.amount()))
                .toList();
    }

    private List<BedBlock> beds() {
        List<BedBlock> blocks = new ArrayList<>(whole.beds());
        for (Note.BedGone gone : of(Note.BedGone.class)) {
            Bed bed = whole.allBeds().stream()
                    .filter(one -> one.name().equals(gone.bed()))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("No bed named " + gone.bed()));
            int at = whole.beds().indexOf(bed.block());
            BedBlock block = blocks.get(at);
            List<BedBlock.Taken> taken = new ArrayList<>(block.taken());
            taken.add(new BedBlock.Taken(gone.time().from(), gone.time().to(), bed.number()));
            blocks.set(at, block.with(taken));
        }
        return blocks;
    }

    /** Work that comes every week comes from this week on; hands that are gone are not there. */
    private Labour labour() {
        Labour labour = whole.labour();
        List<Labour.Chore> chores = labour.chores().stream()
                .filter(chore -> chore.to() == null || !chore.to().isBefore(week))
                .map(chore -> new Labour.Chore(chore.name(), later(chore.from()), chore.to(), chore.hours()))
                .toList();
        return new Labour(
                labour.ownRate(),
                labour.hiredRate(),
                fewer(labour.own(), helper -> !helper.isHired()),
                fewer(labour.hired(), Note.HelperGone::isHired),
                fewerHands(labour.cutting()),
                chores,
                labour.jobs());
    }

    private List<Labour.Hours> fewer(List<Labour.Hours> hours, Predicate<Note.HelperGone> whose) {
        List<Labour.Hours> left = new ArrayList<>(hours);
        of(Note.HelperGone.class).stream().filter(whose).forEach(helper -> {
            for (int w = first(helper.time()); w <= last(helper.time()); w++) {
                LocalDate start = whole.weekStart(w);
                double there = Labour.at(left, start) - helper.hours() * share(helper.time(), start);
                left.add(new Labour.Hours(start, start, Math.max(0, there)));
            }
        });
        return left;
    }

    private List<Labour.CuttingHours> fewerHands(List<Labour.CuttingHours> hours) {
        List<Labour.CuttingHours> left = new ArrayList<>(hours);
        of(Note.HelperGone.class).stream()
                .filter(helper -> helper.cutting() > 0)
                .forEach(helper -> {
                    for (int w = first(helper.time()); w <= last(helper.time()); w++) {
                        LocalDate start = whole.weekStart(w);
                        left.stream()
                                .filter(entry -> holds(entry, start))
                                .reduce((earlier, later) -> later)
                                .ifPresent(now -> left.add(new Labour.CuttingHours(
                                        start,
                                        start,
                                        Math.max(0, now.hands() - helper.cutting() * share(helper.time(), start)),
                                        now.coolHours(),
                                        now.mornings())));
                    }
                });
        return left;
    }

    private static boolean holds(Labour.CuttingHours entry, LocalDate start) {
        return (entry.from() == null || !start.isBefore(entry.from()))
                && (entry.to() == null || !start.isAfter(entry.to()));
    }

    private int first(Period time) {
        return Math.max(0, whole.weekOf(time.from()));
    }

    private int last(Period time) {
        return Math.min(whole.weeks() - 1, whole.weekOf(time.to()));
    }

    /** Share of a week's days that lie in a time. */
    private static double share(Period time, LocalDate start) {
        return start.datesUntil(start.plusDays(DAYS))
                        .filter(day -> !day.isBefore(time.from()) && !day.isAfter(time.to()))
                        .count()
                / (double) DAYS;
    }

    private LocalDate later(@Nullable LocalDate from) {
        return from == null || from.isBefore(week) ? week : Objects.requireNonNull(from);
    }
}
