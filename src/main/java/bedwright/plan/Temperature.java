package bedwright.plan;

import ai.timefold.solver.core.api.score.HardMediumSoftScore;
import java.util.Arrays;

/**
 * Where annealing starts: a loss so large is accepted once in e times at first.
 *
 * @param medium hundredths of stems × weight
 * @param soft grains, summed over the seasons
 */
record Temperature(long medium, long soft) {
    /**
     * Share of what a planting is worth in the mean. Measured on the demo farm: see the contributors' page.
     */
    private static final double SHARE = 0.035;

    /** From what the plantings of a good plan are worth: how much better it is than nothing placed but what is fixed. */
    static Temperature of(Search.Found nothing, Search.Found plan) {
        long more = placed(plan) - placed(nothing);
        double each = SHARE / Math.max(1, more);
        return new Temperature(
                Math.round(each * Math.max(0, plan.medium() - nothing.medium())),
                Math.max(1, Math.round(each * Math.max(0, plan.soft() - nothing.soft()))));
    }

    Temperature times(double share) {
        return new Temperature(Math.round(share * medium), Math.max(1, Math.round(share * soft)));
    }

    private static long placed(Search.Found plan) {
        return Arrays.stream(plan.places()).filter(place -> place >= 0).count();
    }

    String text() {
        return HardMediumSoftScore.of(0, medium, soft).toString();
    }
}
