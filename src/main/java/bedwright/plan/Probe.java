package bedwright.plan;

import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;

/** What one search lets others see of itself while it runs: how much it has asked, and the score its moves look at. */
public final class Probe {
    private static final double NOT_SAID = -1;

    private final AtomicLong asked = new AtomicLong();
    private @Nullable SolverScore live;
    private @Nullable Cooling cooling;
    private long askedAtFirst;
    private long began;
    private double temperature = NOT_SAID;
    private Runnable onLook = () -> {};
    private Runnable onOver = () -> {};
    /** Plantings that were moved since {@link #forgetMoved}, unless the whole plan may be another. */
    private int[] moved = new int[0];

    private boolean[] isMoved = new boolean[0];
    private int movedCount;
    private boolean isAnotherPlan = true;

    /** Has this run by the search's own thread whenever its working plan is set, at its start above all. */
    void whenLooking(Runnable run) {
        onLook = run;
    }

    /**
     * Begins a round that cools like that; called by the search's own thread only.
     *
     * @param round null if the solver decides which moves are accepted, not the moves themselves
     */
    void cool(@Nullable Cooling round) {
        cooling = round;
        live = null;
        askedAtFirst = asked.get();
        began = System.nanoTime();
        cool();
    }

    private void cool() {
        temperature = cooling == null ? NOT_SAID : cooling.after(asked.get() - askedAtFirst, System.nanoTime() - began);
    }

    /** The temperature since the last move that was counted, or −1 if nothing is said of it; for the search's own thread only. */
    double temperature() {
        return temperature;
    }

    /** Has this run when as many moves have been tried as the round has, where moves decide themselves. */
    void whenOver(Runnable run) {
        onOver = run;
    }

    /** Whether the moves themselves decide which of them are accepted. */
    boolean isCooling() {
        return cooling != null;
    }

    /** Counts one move as tried, and ends the round after its last; called by the search's own thread only. */
    void count() {
        asked.lazySet(asked.get() + 1);
        cool();
        if (cooling != null && asked.get() - askedAtFirst >= cooling.moves()) {
            onOver.run();
        }
    }

    /** Moves tried so far; from any thread. */
    long asked() {
        return asked.get();
    }

    /**
     * Notes who scores the working plan; called by the search's own thread only. The first of a round: others are made where
     * the solver checks a score.
     */
    void look(SolverScore score) {
        if (live == null) {
            live = score;
        }
        onLook.run();
    }

    /** Who scores the working plan, for moves that look before they are given; for the search's own thread only. */
    @Nullable
    SolverScore live() {
        return live;
    }

    /** Begins to note which plantings are moved; called by the search's own thread only, like all that follows. */
    void noteMoved(int plantings) {
        moved = new int[plantings];
        isMoved = new boolean[plantings];
        movedCount = 0;
        isAnotherPlan = true;
    }

    /** Notes a planting as moved, there and perhaps back. */
    void moved(int planting) {
        if (!isMoved[planting]) {
            isMoved[planting] = true;
            moved[movedCount++] = planting;
        }
    }

    /** Whether any planting may have been moved, whatever was noted. */
    boolean isAnotherPlan() {
        return isAnotherPlan;
    }

    int movedCount() {
        return movedCount;
    }

    /** The i-th that was noted as moved. */
    int movedPlanting(int i) {
        return moved[i];
    }

    void forgetMoved() {
        isAnotherPlan = moved.length == 0;
        while (movedCount > 0) {
            isMoved[moved[--movedCount]] = false;
        }
    }
}
