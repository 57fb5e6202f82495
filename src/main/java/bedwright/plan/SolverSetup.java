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
 */
record SolverSetup(
        EnvironmentMode mode,
        Temperature temperature,
        long moves,
        @Nullable Duration time) {

    SolverSetup(EnvironmentMode mode, Temperature temperature) {
        this(mode, temperature, 1, null);
    }

    /**
     * The same for a round, numbered from 0. Only in every other round may a plan pass through ones in which more of what
     * must be ours is missing: meant for seasons in which it freezes the plan, it costs money where it does not (demo farm,
     * 500,000 moves: 22,667 dollars without, 22,355 with it).
     */
    SolverSetup round(int number, long itsMoves, @Nullable Duration itsTime) {
        Temperature its = number % 2 == 0 ? new Temperature(0, temperature.soft()) : temperature;
        return new SolverSetup(mode, its, itsMoves, itsTime);
    }

    /** How such a round cools; null where plans may get worse in what must be ours, which is not money. */
    @Nullable
    Cooling cooling() {
        return temperature.medium() > 0
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
        TerminationConfig end = new TerminationConfig().withMoveCountLimit(moves);
        if (time != null) {
            end = end.withSpentLimit(time);
        }
        LocalSearchPhaseConfig phase = new LocalSearchPhaseConfig()
                .withMoveSelectorConfig(new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(SeasonMoves.class))
                .withAcceptorConfig(
                        new LocalSearchAcceptorConfig().withSimulatedAnnealingStartingTemperature(temperature.text()))
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
