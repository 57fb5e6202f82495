package bedwright.file;

import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.Held;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Checks of what is held in place, as far as the file alone can tell: how long a planting keeps its bed is known only once
 * it is grown, so of places that come together later the planner tells.
 */
final class HeldCheck {
    /** Metres that rounding may add up to. */
    private static final double ROUNDING = 1e-6;

    private final Season season;
    private final Known known;
    private final Days days;
    private final Flaws flaws;
    private final Map<Integer, Long> lotsHeld = new HashMap<>();

    HeldCheck(Season season, Known known, Days days, Flaws flaws) {
        this.season = season;
        this.known = known;
        this.days = days;
        this.flaws = flaws;
    }

    void run() {
        for (int i = 0; i < season.held().size(); i++) {
            Held held = season.held().get(i);
            String path = "/held/" + i;
            known.checkCrop(flaws, path + "/crop", held.crop());
            known.checkBed(flaws, path + "/bed", held.bed());
            known.crop(held.crop()).ifPresent(crop -> known.checkMethod(flaws, path + "/method", crop, held.method()));
            days.firstOfAWeek(path + "/sown", "sown", held.sown());
            days.inside(path + "/sown", "sown", held.sown());
            if (hasLots(path, held)) {
                room(i, path, held);
            }
        }
    }

    /** Whether the pool has so many; if not that is told. */
    private boolean hasLots(String path, Held held) {
        Integer pool = held.pool();
        int entry = held.entry(season);
        if (entry < 0) {
            tellNoEntry(path, held, pool);
            return false;
        }
        Lots lots = season.pool().get(entry);
        long before = lotsHeld.getOrDefault(entry, 0L);
        lotsHeld.put(entry, before + held.lots());
        if (before <= lots.lots() && before + held.lots() > lots.lots()) {
            flaws.add(
                    path + "/lots",
                    "With these, " + Words.count(Math.toIntExact(before + held.lots()), "lot", "lots") + " of "
                            + Words.quoted(held.crop()) + " are held in place, but entry " + (entry + 1)
                            + " of the pool has " + lots.lots() + ". Hold fewer, or give the pool more.",
                    "/held/*/lots",
                    "/held/*/crop",
                    "/held/*/pool",
                    "/pool/" + entry + "/lots",
                    "/pool/*/crop");
            return false;
        }
        return true;
    }

    private void tellNoEntry(String path, Held held, @Nullable Integer pool) {
        if (pool == null) {
            if (known.crop(held.crop()).isPresent()) {
                flaws.add(
                        path + "/crop",
                        "There are no lots of " + Words.quoted(held.crop())
                                + " in the \"pool\", so none can be held in place. Add lots of it there, or take this"
                                + " away; what stands already belongs under \"standing\".",
                        "/pool",
                        "/pool/*/crop");
            }
        } else if (pool > season.pool().size()) {
            flaws.add(
                    path + "/pool",
                    "There is no entry " + pool + " in the season's \"pool\", which has "
                            + Words.count(season.pool().size(), "entry", "entries")
                            + ". Mend the number; it counts from 1.",
                    "/pool");
        } else {
            flaws.add(
                    path + "/pool",
                    "Entry " + pool + " of the pool is of "
                            + Words.quoted(season.pool().get(pool - 1).crop()) + ", but here "
                            + Words.quoted(held.crop()) + " is held. They must agree.",
                    path + "/crop",
                    "/pool/*/crop");
        }
    }

    /** Whether there is room on the day on which it comes into its bed, beside what is surely there then. */
    private void room(int i, String path, Held held) {
        Optional<Bed> bed = season.allBeds().stream()
                .filter(one -> one.name().equals(held.bed()))
                .findFirst();
        Optional<LocalDate> comes = comes(held);
        if (bed.isEmpty() || comes.isEmpty()) {
            return;
        }
        double others = standing(held.bed(), comes.get());
        for (Held before : season.held().subList(0, i)) {
            others += before.bed().equals(held.bed()) && comes(before).equals(comes) ? metres(before) : 0;
        }
        double length = bed.get().block().length();
        double metres = metres(held);
        if (others + metres > length + ROUNDING && others <= length + ROUNDING) {
            flaws.add(
                    path + "/bed",
                    said(metres) + " of " + Words.quoted(held.crop()) + " come into " + Words.quoted(held.bed())
                            + " on "
                            + comes.get()
                            + (others > 0 ? ", beside " + said(others) + " that are held or stand there then" : "")
                            + ", but the bed has " + said(length)
                            + ". Hold fewer lots, or some in another bed or week.",
                    "/beds/*/name",
                    "/beds/*/count",
                    "/beds/*/length",
                    "/held/*/crop",
                    "/held/*/lots",
                    "/held/*/bed",
                    "/held/*/sown",
                    "/held/*/method",
                    "/held/*/pool",
                    "/pool/*/crop",
                    "/pool/*/plants",
                    "/standing/*/bed",
                    "/standing/*/plants",
                    "/standing/*/crop",
                    "/standing/*/until",
                    "/crops/*/methods/*/spacing",
                    "/crops/*/methods/*/rows",
                    "/crops/*/methods/*/trayWeeks");
        }
    }

    /** Metres of what is written out and keeps its bed until then. */
    private double standing(String bed, LocalDate day) {
        double metres = 0;
        for (Standing standing : season.standing()) {
            LocalDate until = standing.until();
            if (standing.isWritten() && bed.equals(standing.bed()) && (until == null || !until.isBefore(day))) {
                List<Method> methods =
                        known.crop(standing.crop()).map(Crop::methods).orElse(List.of());
                metres += methods.stream()
                        .filter(one -> standing.method() == null || one.name().equals(standing.method()))
                        .findFirst()
                        .map(one -> one.metres(standing.plants()))
                        .orElse(0.0);
            }
        }
        return metres;
    }

    /** The day on which it comes into its bed. */
    private Optional<LocalDate> comes(Held held) {
        return method(held)
                .map(method ->
                        method.start() == Method.Start.TRAY ? held.sown().plusWeeks(method.trayWeeks()) : held.sown());
    }

    private double metres(Held held) {
        int entry = held.entry(season);
        return entry < 0
                ? 0
                : method(held)
                        .map(method -> (double) held.lots()
                                * season.pool().get(entry).plants()
                                * method.spacing()
                                / method.rows())
                        .orElse(0.0);
    }

    private Optional<Method> method(Held held) {
        return known.crop(held.crop()).flatMap(crop -> Known.method(crop, held.method()));
    }

    private String said(double metres) {
        var unit = season.units().length();
        return Words.number(Math.round(unit.of(metres) * 100) / 100.0) + " " + unit.symbol();
    }
}
