package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * Puts a planting where there may be no room for it: one that stands there then goes into another bed, in the same week and by
 * the same method, which costs it little. In full beds hardly any other move is left: of plantings put a few weeks away in
 * another bed one in thirty fits, and with one that gives way three in four do (see the contributors' page).
 */
final class MakingWay {
    /** Trials that fit, and of which none may be accepted, before it is given up. */
    private static final int TRIALS = 4;
    /** Beds that are looked at for one that gives way, so that it takes no longer on a large farm. */
    private static final int MOST_BEDS = 24;

    private final Layout layout;
    private final PlanFacts facts;
    private final ProspectTable table;
    private final @Nullable Metropolis metropolis;
    private final RandomGenerator random;
    private int trials;

    MakingWay(Layout layout, @Nullable Metropolis metropolis, RandomGenerator random) {
        this.layout = layout;
        this.facts = layout.facts();
        this.table = facts.table();
        this.metropolis = metropolis;
        this.random = random;
    }

    /**
     * Makes an empty trial such a move, if one is found that may be accepted.
     *
     * @param to may be −1
     * @return false where none was found
     */
    boolean put(int planting, int to) {
        int from = layout.place(planting);
        if (to < 0 || to == from || !layout.hasRoomBesidesBed(to, from)) {
            return false;
        }
        layout.move(planting, to);
        // What gives way gains little by it, so what is hopeless without it stays so; and most is.
        if (!mayBeAccepted()) {
            return false;
        }
        if (layout.fits()) {
            return true;
        }
        trials = 0;
        return anotherGivesWay(planting, from, to);
    }

    private boolean mayBeAccepted() {
        return metropolis == null || metropolis.mayAccept(random);
    }

    /** Tries those that stand in a bed one after the other. */
    private boolean anotherGivesWay(int planting, int from, int to) {
        int bed = table.bed(to);
        // Where it only moves within its bed, how much room it leaves is seen when the whole trial is tried.
        boolean isNew = from < 0 || table.bed(from) != bed;
        int count = layout.inBed(bed);
        int start = count == 0 ? 0 : random.nextInt(count);
        for (int i = 0; i < count && trials < TRIALS; i++) {
            int other = layout.inBed(bed, start + i < count ? start + i : start + i - count);
            int at = layout.place(other);
            if (other != planting
                    && facts.holds.overlap(at, to)
                    && (!isNew || layout.hasBedRoom(to, at))
                    && givesWay(other, at, from)) {
                return true;
            }
        }
        return false;
    }

    /**
     * Puts a planting into another bed.
     *
     * @param left a place that is left for the trial, or −1
     */
    private boolean givesWay(int planting, int from, int left) {
        int first = table.firstAlike(from);
        int alike = table.endAlike(from) - first;
        int start = random.nextInt(alike);
        for (int i = 0; i < alike && i < MOST_BEDS && trials < TRIALS; i++) {
            int to = first + (start + i < alike ? start + i : start + i - alike);
            if (to == from || !layout.hasBedRoom(to, left)) {
                continue;
            }
            layout.move(planting, to);
            if (layout.fits()) {
                trials++;
                if (mayBeAccepted()) {
                    return true;
                }
            }
            layout.takeBack();
        }
        return false;
    }
}
