package bedwright.plan;

import ai.timefold.solver.core.api.score.HardMediumSoftScore;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;

/**
 * A search of so many moves on one thread, set up as the product's, by one calculator or another. Whatever calculates
 * the score, it sees the same moves: none has a {@link Probe}, so the one kind of move that looks into our live score is drawn for none.
 */
final class CountedSearch {
    private static final long SEED = 1;

    private final PlanFacts facts;
    private final int[] start;
    private final Temperature temperature;

    CountedSearch(PlanFacts facts) {
        this.facts = facts;
        this.start = Opening.fill(facts, Search.nothingPlaced(facts), () -> false);
        this.temperature =
                Temperature.of(Search.Found.of(facts, Search.nothingPlaced(facts)), Search.Found.of(facts, start));
    }

    /** What calculates the score. */
    enum Calculator {
        OURS,
        STREAMS,
        NAIVE;

        String label() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Calculator of(String label) {
            return valueOf(label.toUpperCase(Locale.ROOT));
        }

        private ScoreDirectorFactoryConfig config() {
            ScoreDirectorFactoryConfig config = new ScoreDirectorFactoryConfig();
            return switch (this) {
                case OURS -> config.withIncrementalScoreCalculatorClass(SolverScore.class);
                case STREAMS -> config.withConstraintProviderClass(StreamRules.class);
                case NAIVE -> config.withIncrementalScoreCalculatorClass(NaiveScore.class);
            };
        }
    }

    /** One run: moves for each second of the thread's own processor time and of the clock, and where it ended. */
    record Run(double perCpuSecond, double perSecond, HardMediumSoftScore end, int[] places) {
        /** Microseconds of processor time a move. */
        double micros() {
            return 1e6 / perCpuSecond;
        }

        void demandSameEnd(String what, Run other) {
            if (!end.equals(other.end) || !Arrays.equals(places, other.places)) {
                throw new IllegalStateException(what + ": two searches that saw the same moves end in different plans, "
                        + end + " and " + other.end);
            }
        }
    }

    Run run(Calculator calculator, long moves) {
        return run(calculator, moves, EnvironmentMode.PHASE_ASSERT);
    }

    Run run(Calculator calculator, long moves, EnvironmentMode mode) {
        if (calculator == Calculator.STREAMS) {
            StreamPlots.use(facts);
        }
        SeasonPlan plan = new SeasonPlan(facts, start, new Probe());
        plan.setProbe(null);
        var solver = SolverFactory.<SeasonPlan>create(config(calculator, moves, mode))
                .buildSolver();
        var threads = ManagementFactory.getThreadMXBean();
        long clock = System.nanoTime();
        long cpu = threads.getCurrentThreadCpuTime();
        SeasonPlan end = solver.solve(plan);
        double cpuSeconds = (threads.getCurrentThreadCpuTime() - cpu) / 1e9;
        double seconds = (System.nanoTime() - clock) / 1e9;
        return new Run(moves / cpuSeconds, moves / seconds, Objects.requireNonNull(end.getScore()), end.places());
    }

    SolverConfig config(Calculator calculator, long moves, EnvironmentMode mode) {
        return new SolverSetup(mode, temperature, moves, null, false).config(SEED, calculator.config());
    }
}
