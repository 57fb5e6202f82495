package bedwright.plan;

import java.util.random.RandomGenerator;

/**
 * Decides about moves as they are drawn: one that makes the plan better is accepted, one that costs c with probability
 * exp(−c / temperature) (Metropolis and others, Equation of State Calculations by Fast Computing Machines, 1953). Which loss
 * would still be accepted is drawn first, so that a {@link Glance} refuses most moves without a score, and moves that are put
 * together step by step are given up early.
 */
final class Metropolis {
    /** Moves that a glance refuses and that count as one that was scored: about as long. */
    private static final int GLANCES_A_SCORE = 30;

    private final Layout layout;
    private final Glance glance;
    private final Probe probe;
    private final SolverScore live;
    private int glances;
    /** What the trial has to bring at least, grains; not a number before it is drawn. */
    private double least = Double.NaN;

    Metropolis(Layout layout, Glance glance, Probe probe, SolverScore live) {
        this.layout = layout;
        this.glance = glance;
        this.probe = probe;
        this.live = live;
    }

    boolean isOf(Layout itsLayout, Probe itsProbe, SolverScore itsLive) {
        return layout == itsLayout && probe == itsProbe && live == itsLive;
    }

    /** Begins another trial, before anything is asked of it: which loss would be accepted is drawn anew. */
    void begin() {
        least = Double.NaN;
    }

    private double least(RandomGenerator random) {
        if (Double.isNaN(least)) {
            least = probe.temperature() * Math.log(1 - random.nextDouble());
        }
        return least;
    }

    /** Whether the trial as far as it is put together can still be accepted, as money goes; for moves that are put together by looking. */
    boolean mayAccept(RandomGenerator random) {
        if (glance.canJudge(live.score()) && glance.atMost() < least(random)) {
            countGlance();
            return false;
        }
        return true;
    }

    private void countGlance() {
        if (++glances == GLANCES_A_SCORE) {
            glances = 0;
            probe.count();
        }
    }

    /** Whether the layout's trial is accepted at the temperature that the search has now; then it has been asked about. */
    boolean accepts(RandomGenerator random) {
        SeasonScore score = live.score();
        double least = least(random);
        if (glance.canJudge(score) && glance.isHopeless(least)) {
            countGlance();
            return false;
        }
        probe.count();
        live.askAhead(layout);
        if (isAccepted(score, least)) {
            return true;
        }
        live.forget();
        return false;
    }

    /** Counts a move of nothing, given where no other was found: else a plan that can't change would be searched for ever. */
    void countNone() {
        probe.count();
    }

    private static boolean isAccepted(SeasonScore score, double least) {
        if (score.hardAfter() != score.hard()) {
            return score.hardAfter() > score.hard();
        }
        if (score.mediumAfter() != score.medium()) {
            return score.mediumAfter() > score.medium();
        }
        return score.softAfter() - score.soft() >= least;
    }
}
