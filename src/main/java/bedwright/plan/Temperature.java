package bedwright.plan;

import ai.timefold.solver.core.api.score.HardMediumSoftScore;

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

    /** From what the plantings of a good plan are worth: how much better it is than nothing placed. */
    static Temperature of(PlanFacts facts, Search.Found plan) {
        SeasonScore empty = new SeasonScore(facts);
        int placed = 0;
        for (int p = 0; p < facts.plantings(); p++) {
            if (facts.isFixed(p)) {
                empty.settle(p, facts.fixedPlace[p]);
            } else if (plan.places()[p] >= 0) {
                placed++;
            }
        }
        double each = SHARE / Math.max(1, placed);
        return new Temperature(
                Math.round(each * Math.max(0, plan.medium() - empty.medium())),
                Math.max(1, Math.round(each * Math.max(0, plan.soft() - empty.soft()))));
    }

    String text() {
        return HardMediumSoftScore.of(0, medium, soft).toString();
    }
}
