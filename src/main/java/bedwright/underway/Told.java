package bedwright.underway;

import bedwright.log.Amount;
import bedwright.log.Beginning;
import bedwright.log.Entry;
import bedwright.log.Note;
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

    private Beginning beginning;
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

    /** Day on which the last of it was lost, or counted as gone. */
    @Nullable
    LocalDate gone;

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
        beginning = planted.beginning();
    }

    /**
     * @param planted as planned
     * @param stoodBefore whether it stood before the season began
     * @param notes of any planting, those of later days than the one it is left out
     * @param takenIn number of the last note that the plan was made with: what was moved or left out up to it stands in
     *     the plan as it was done, or as it was planned anew
     */
    static Told of(Planted planted, boolean stoodBefore, List<Entry> notes, int takenIn) {
        Told told = new Told(planted);
        List<Entry> counting = notes.stream()
                .filter(entry ->
                        stoodBefore || entry.number() > takenIn || !entry.note().isOfHow())
                .toList();
        // How many there are is needed to take a number of them as a share, whatever the order of the notes.
        counting.forEach(entry -> {
            if (entry.note() instanceof Note.OfPlants many && many.planting() == planted.number()) {
                told.plants = many.plants();
            }
        });
        counting.stream()
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
            gone = null;
        }
    }

    private void take(Planted planted, Entry entry) {
        LocalDate on = entry.on();
        Beginning now = beginning.after(planted.number(), entry.note());
        if (!now.equals(beginning)) {
            beginning = now;
            sown = now.sown();
            out = now.out();
            isMoved = true;
        }
        if (!(entry.note() instanceof Note.OfPlanting note) || note.planting() != planted.number()) {
            return;
        }
        switch (note) {
            case Note.Moved moved -> isMoved = true;
            case Note.InBed other -> bed = other.bed();
            case Note.OfPlants many -> {}
            case Note.NotDone none -> isNotDone = true;
            case Note.Seen seen -> {
                stages.add(new Past.StageSeen(on, stage(seen.stage())));
                alive = on;
            }
            case Note.CameUp up -> {
                stages.add(new Past.StageSeen(on, Past.Stage.UP));
                count(on, cameUp(planted, up.share()));
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

    private void count(LocalDate on, Amount stands) {
        counted = on;
        left = Math.min(1, share(stands, 1));
        gone = left > 0 ? null : on;
        alive = left > 0 ? on : alive;
    }

    /** Of what is in trays more cells are sown than plants are wanted. */
    private static Amount cameUp(Planted planted, Amount share) {
        return share.isShare() && planted.out() != null
                ? new Amount(Math.min(1, share.value() / planted.method().emergence()), true)
                : share;
    }

    private void lose(LocalDate on, Note.Lost lost) {
        lastLost = Math.min(left, share(lost.lost(), left));
        left -= lastLost;
        gone = left > 0 ? gone : gone == null ? on : gone;
        // Of what is lost in part the rest was seen to stand.
        alive = left > 0 ? on : alive;
        switch (lost.cause()) {
            case WIND -> storms = on;
            case PEST -> pests = on;
            case FROST, DISEASE, OTHER -> {}
        }
    }

    /** An amount as a share of all plants; a share is one of {@code of} of them. */
    private double share(Amount amount, double of) {
        return amount.isShare() ? amount.value() * of : amount.value() / plants;
    }
}
