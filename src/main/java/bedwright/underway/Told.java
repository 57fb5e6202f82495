package bedwright.underway;

import bedwright.log.Amount;
import bedwright.log.Entry;
import bedwright.log.Note;
import bedwright.season.Method;
import bedwright.season.Past;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the notes tell of one planting, taken in by the day they are about; silence means done as planned. */
final class Told {
    /** Its plants, as planned or as noted otherwise. */
    int plants;
    /** Its bed, as planned or as noted otherwise. */
    String bed;
    /** Day of sowing, setting or starting in trays. */
    LocalDate sown;
    /** Day of planting out, for what is raised in trays. */
    @Nullable
    LocalDate out;

    boolean isMoved;
    boolean isNotDone;

    @Nullable
    LocalDate counted;

    double left = 1;

    @Nullable
    LocalDate storms;

    @Nullable
    LocalDate pests;

    @Nullable
    LocalDate alive;

    @Nullable
    LocalDate pulled;

    final List<Past.StageSeen> stages = new ArrayList<>();
    final List<CutNoted> cuts = new ArrayList<>();
    /** Share of the plants lost by the last note of a loss. */
    private double lastLost;

    /** Stems cut on a day, and how many more were ready, if that was said. */
    record CutNoted(LocalDate on, int stems, @Nullable Integer left) {}

    private Told(Planted planted) {
        plants = planted.plants();
        bed = planted.bed();
        sown = planted.sown();
        out = planted.out();
    }

    /**
     * @param planted as planned
     * @param notes of any planting, those of later days than the one it is left out
     */
    static Told of(Planted planted, List<Entry> notes) {
        Told told = new Told(planted);
        notes.stream()
                .sorted(Comparator.comparing(Entry::on).thenComparing(Entry::number))
                .forEach(entry -> told.take(planted, entry));
        told.forgetWhatWasBefore();
        return told;
    }

    /** What was noted of days before it was begun can't have been of it. */
    private void forgetWhatWasBefore() {
        stages.removeIf(stage -> stage.on().isBefore(sown));
        cuts.removeIf(cut -> cut.on().isBefore(sown));
        LocalDate count = counted;
        if (count != null && count.isBefore(sown)) {
            counted = null;
            left = 1;
        }
    }

    private void take(Planted planted, Entry entry) {
        LocalDate on = entry.on();
        if (entry.note() instanceof Note.WeekDone week && week.except().contains(planted.number())) {
            putOff(planted, week.week());
        }
        if (!(entry.note() instanceof Note.OfPlanting note) || note.planting() != planted.number()) {
            return;
        }
        switch (note) {
            case Note.Moved moved -> move(planted, moved.to());
            case Note.NotDone none -> isNotDone = true;
            case Note.Seen seen -> {
                stages.add(new Past.StageSeen(on, stage(seen.stage())));
                alive = on;
            }
            case Note.Counted count -> count(on, count.stands());
            case Note.Lost lost -> lose(on, lost);
            case Note.Cut cut -> {
                cuts.add(new CutNoted(on, cut.stems(), cut.left()));
                alive = cut.stems() > 0 ? on : alive;
            }
            case Note.Pulled gone -> pulled = on;
        }
    }

    private static Past.Stage stage(Note.Stage stage) {
        return switch (stage) {
            case UP -> Past.Stage.UP;
            case PINCH -> Past.Stage.PINCH;
            case COLOUR -> Past.Stage.COLOUR;
            case FIRST_STEM -> Past.Stage.FIRST_STEM;
        };
    }

    /** What was due in a week and was not done is due in the next. */
    private void putOff(Planted planted, LocalDate week) {
        LocalDate end = week.plusWeeks(1);
        LocalDate planting = out;
        if (isWithin(sown, week, end)) {
            move(planted, sown, sown.plusWeeks(1));
        } else if (planting != null && isWithin(planting, week, end)) {
            out = planting.plusWeeks(1);
            isMoved = true;
        }
    }

    private static boolean isWithin(LocalDate day, LocalDate from, LocalDate end) {
        return !day.isBefore(from) && day.isBefore(end);
    }

    /** What was moved is the sowing or the planting out, whichever is nearer to the day that is said. */
    private void move(Planted planted, LocalDate to) {
        LocalDate planting = out;
        if (planting != null
                && Math.abs(planting.toEpochDay() - to.toEpochDay()) < Math.abs(sown.toEpochDay() - to.toEpochDay())) {
            out = to;
            isMoved = true;
        } else {
            move(planted, sown, to);
        }
    }

    /** A sowing on another day brings its planting out along. */
    private void move(Planted planted, LocalDate from, LocalDate to) {
        LocalDate planting = out;
        if (planting != null && planted.kept().out() == null && planted.method().start() == Method.Start.TRAY) {
            out = planting.plusDays(to.toEpochDay() - from.toEpochDay());
        }
        sown = to;
        isMoved = true;
    }

    private void count(LocalDate on, Amount stands) {
        counted = on;
        left = Math.min(1, share(stands, 1));
        alive = left > 0 ? on : alive;
    }

    private void lose(LocalDate on, Note.Lost lost) {
        lastLost = Math.min(left, share(lost.lost(), left));
        left -= lastLost;
        switch (lost.cause()) {
            case WIND -> storms = on;
            case PEST -> pests = on;
            case FROST -> alive = left > 0 ? on : alive;
            case DISEASE, OTHER -> {}
        }
    }

    /** An amount as a share of all plants; a share is one of {@code of} of them. */
    private double share(Amount amount, double of) {
        return amount.isShare() ? amount.value() * of : amount.value() / plants;
    }
}
