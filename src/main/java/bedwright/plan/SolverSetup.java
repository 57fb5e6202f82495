package bedwright.plan;

import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.monitoring.MonitoringConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the solver is set up for one round: simulated annealing that cools evenly from a temperature to nothing, over the
 * round's moves or its time, whichever ends first.
 *
 * @param temperature at the start
 * @param moves of the round
 * @param time of the round, or null
 * @param movesDecide whether moves are given only if they are accepted ({@link Metropolis}), the solver taking what it is
 *     given; not where plans may get worse in what must be ours, which is not money
 */
record SolverSetup(
        EnvironmentMode mode,
        Temperature temperature,
        long moves,
        @Nullable Duration time,
        boolean movesDecide) {
    /** So warm that whatever is tried is accepted. */
    private static final Temperature HOT = new Temperature(0, Long.MAX_VALUE);

    /**
     * Rounds after the first begin so much warmer: they are to come away from the best plan so far, which in a small season
     * less warmth does not (see the contributors' page).
     */
    private static final double WARMER_AGAIN = 1.75;

    SolverSetup(EnvironmentMode mode, Temperature temperature) {
        this(mode, temperature, 1, null, false);
    }

    /**
     * The same for a round, numbered from 0. Only in every other round may a plan pass through ones in which more of what
     * must be ours is missing: meant for seasons in which it freezes the plan, it costs money where it does not (demo farm,
     * 500,000 moves: 22,667 dollars without, 22,355 with it).
     */
    SolverSetup round(int number, long itsMoves, @Nullable Duration itsTime) {
        boolean itsMovesDecide = number % 2 == 0 || temperature.medium() == 0;
        Temperature money = new Temperature(0, temperature.soft()).times(number == 0 ? 1 : WARMER_AGAIN);
        return new SolverSetup(mode, itsMovesDecide ? money : temperature, itsMoves, itsTime, itsMovesDecide);
    }

    /** How such a round cools; null where the solver decides about moves. */
    @Nullable
    Cooling cooling() {
        return !movesDecide
                ? null
                : new Cooling(temperature.soft(), moves, time == null ? Long.MAX_VALUE : time.toNanos());
    }

    Solver<SeasonPlan> solver(long seed) {
        var score = new ScoreDirectorFactoryConfig().withIncrementalScoreCalculatorClass(SolverScore.class);
        return SolverFactory.<SeasonPlan>create(config(seed, score)).buildSolver();
    }

    /**
     * The solver's configuration.
     *
     * @param score what calculates the score
     */
    SolverConfig config(long seed, ScoreDirectorFactoryConfig score) {
        TerminationConfig end = new TerminationConfig();
        if (!movesDecide) {
            end = end.withMoveCountLimit(moves);
        }
        if (time != null) {
            end = end.withSpentLimit(time);
        }
        LocalSearchPhaseConfig phase = new LocalSearchPhaseConfig()
                .withMoveSelectorConfig(new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(SeasonMoves.class))
                .withAcceptorConfig(new LocalSearchAcceptorConfig()
                        .withSimulatedAnnealingStartingTemperature((movesDecide ? HOT : temperature).text()))
                .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1))
                .withTerminationConfig(end);
        return new SolverConfig()
                .withEnvironmentMode(mode)
                .withRandomSeed(seed)
                .withSolutionClass(SeasonPlan.class)
                .withEntityClasses(Planting.class)
                .withScoreDirectorFactory(score)
                .withMonitoringConfig(new MonitoringConfig().withSolverMetricList(List.of()))
                .withPhases(phase);
    }
}
