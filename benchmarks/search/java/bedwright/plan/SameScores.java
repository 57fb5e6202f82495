package bedwright.plan;

import ai.timefold.solver.core.api.score.HardMediumSoftScore;
import ai.timefold.solver.core.api.solver.SolutionManager;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import bedwright.recheck.Recheck;
import java.util.Objects;
import java.util.Random;

/** Holds all calculators to one another, and to the recheck, on random plans; a difference ends the run. */
final class SameScores {
    private final PlanFacts facts;
    private final Random random;

    SameScores(PlanFacts facts, long seed) {
        this.facts = facts;
        this.random = new Random(seed);
    }

    /**
     * @param plans scored by our ledgers and by the plain calculator
     * @param streamed of these, scored by streams too
     * @param rechecked of these, rechecked too
     */
    void demand(int plans, int streamed, int rechecked) {
        NaiveScore naive = new NaiveScore();
        SeasonPlan plan = new SeasonPlan(facts, Search.nothingPlaced(facts), new Probe());
        naive.resetWorkingSolution(plan);
        SeasonScore ours = new SeasonScore(facts);
        plan.getPlantings().forEach(planting -> ours.settle(planting.getId(), planting.place()));
        StreamPlots.use(facts);
        SolutionManager<SeasonPlan, HardMediumSoftScore> streams =
                SolutionManager.create(SolverFactory.<SeasonPlan>create(new CountedSearch(facts)
                        .config(CountedSearch.Calculator.STREAMS, 1, EnvironmentMode.PHASE_ASSERT)));
        for (int i = 0; i < plans; i++) {
            int[] places = DemoFarm.randomPlan(facts, random, random.nextDouble());
            for (Planting planting : plan.getPlantings()) {
                naive.beforeVariableChanged(planting, "bed");
                planting.put(places[planting.getId()]);
                naive.afterVariableChanged(planting, "bed");
                ours.settle(planting.getId(), planting.place());
            }
            var expected = HardMediumSoftScore.of(ours.hard(), ours.medium(), ours.soft());
            demandEqual("plan " + i + ", naive", naive.calculateScore(), expected);
            if (isOneOf(streamed, plans, i)) {
                demandEqual("plan " + i + ", streams", Objects.requireNonNull(streams.update(plan)), expected);
            }
            if (isOneOf(rechecked, plans, i)) {
                var tally = Recheck.of(
                        facts.season, facts.seasons, Outcomes.of(facts, places).plantings());
                var again = HardMediumSoftScore.of(tally.hard(), tally.medium(), tally.soft());
                demandEqual("plan " + i + ", recheck", again, expected);
            }
        }
    }

    /** Whether plan i is one of so many taken evenly from all. */
    private static boolean isOneOf(int some, int all, int i) {
        return some > 0 && (long) i * some / all != (long) (i - 1) * some / all || some > 0 && i == 0;
    }

    private static void demandEqual(String what, HardMediumSoftScore found, HardMediumSoftScore expected) {
        if (!found.equals(expected)) {
            throw new IllegalStateException(what + ": scores " + found + ", ours " + expected);
        }
    }
}
