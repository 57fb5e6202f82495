package bedwright.plan;

import ai.timefold.solver.core.api.score.HardMediumSoftScore;
import ai.timefold.solver.core.api.score.calculator.IncrementalScoreCalculator;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.monitoring.MonitoringConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import bedwright.climate.PossibleSeasons;
import bedwright.recheck.Recheck;
import bedwright.season.Season;
import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;

/**
 * Moves a second of {@link SolverScore} and of {@link NaiveScore}: the same season, start, seed and number of moves, one
 * thread, in turns. Both see the same moves and have to end in the same plan, or the run fails.
 *
 * <p>Neither has a {@link Probe}, so the one kind of move that looks into our live score is drawn for neither.
 */
public final class MovesASecond {
    private static final long SEED = 1;
    private static final int ROUNDS = 3;
    private static final int PLANS = 200;
    private static final int RECHECKED = 10;

    private final PlanFacts facts;
    private final int[] start;
    private final long moves;

    private MovesASecond(PlanFacts facts, long moves) {
        this.facts = facts;
        this.start = Opening.fill(facts, Search.nothingPlaced(facts), () -> false);
        this.moves = moves;
    }

    /** One run: moves for each second of the thread's own processor time and of the clock, and where it ended. */
    private record Run(double perCpuSecond, double perSecond, HardMediumSoftScore end, int[] places) {}

    /** Arguments: moves a round (default 200,000), commit. */
    public static void main(String[] args) {
        long moves = args.length > 0 ? Long.parseLong(args[0]) : 200_000;
        Season season = DemoFarm.season();
        PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));
        System.out.printf(
                Locale.ROOT,
                "%s, commit %s%n",
                LocalDate.now(ZoneId.systemDefault()),
                args.length > 1 ? args[1] : "not named");
        System.out.println(DemoFarm.machine());
        checkScores(facts);
        new MovesASecond(facts, moves).measure();
    }

    private static void checkScores(PlanFacts facts) {
        Random random = new Random(SEED);
        NaiveScore naive = new NaiveScore();
        SeasonPlan plan = new SeasonPlan(facts, Search.nothingPlaced(facts), new Probe());
        naive.resetWorkingSolution(plan);
        SeasonScore ours = new SeasonScore(facts);
        plan.getPlantings().forEach(planting -> ours.settle(planting.getId(), planting.place()));
        for (int i = 0; i < PLANS; i++) {
            int[] places = DemoFarm.randomPlan(facts, random, random.nextDouble());
            for (Planting planting : plan.getPlantings()) {
                naive.beforeVariableChanged(planting, "bed");
                planting.put(places[planting.getId()]);
                naive.afterVariableChanged(planting, "bed");
                ours.settle(planting.getId(), planting.place());
            }
            HardMediumSoftScore expected = HardMediumSoftScore.of(ours.hard(), ours.medium(), ours.soft());
            demandEqual("plan " + i + ", naive", naive.calculateScore(), expected);
            if (i % (PLANS / RECHECKED) == 0) {
                var tally = Recheck.of(
                        facts.season, facts.seasons, Outcomes.of(facts, places).plantings());
                var again = HardMediumSoftScore.of(tally.hard(), tally.medium(), tally.soft());
                demandEqual("plan " + i + ", recheck", again, expected);
            }
        }
        System.out.printf(Locale.ROOT, "%d random plans: equal scores; %d of them rechecked%n", PLANS, RECHECKED);
    }

    private static void demandEqual(String what, HardMediumSoftScore found, HardMediumSoftScore expected) {
        if (!found.equals(expected)) {
            throw new IllegalStateException(what + ": scores " + found + ", ours " + expected);
        }
    }

    private void measure() {
        run(SolverScore.class);
        run(NaiveScore.class);
        List<Run> ours = new ArrayList<>();
        List<Run> naive = new ArrayList<>();
        System.out.printf(
                Locale.ROOT,
                "%d plantings, %d seasons, %d moves a round%n",
                facts.plantings(),
                facts.seasonCount,
                moves);
        System.out.println("          moves per second of processor time    (of the clock)");
        System.out.println("round           ours     naive   ratio          ours     naive");
        for (int round = 1; round <= ROUNDS; round++) {
            ours.add(run(SolverScore.class));
            naive.add(run(NaiveScore.class));
            Run a = ours.getLast();
            Run b = naive.getLast();
            demandEqual("round " + round + ", naive", b.end, a.end);
            if (!Arrays.equals(a.places, b.places)) {
                throw new IllegalStateException("Round " + round + ": the two searches end in different plans");
            }
            print(Integer.toString(round), a.perCpuSecond, b.perCpuSecond, a.perSecond, b.perSecond);
        }
        print(
                "mean",
                ours.stream().mapToDouble(Run::perCpuSecond).average().orElseThrow(),
                naive.stream().mapToDouble(Run::perCpuSecond).average().orElseThrow(),
                ours.stream().mapToDouble(Run::perSecond).average().orElseThrow(),
                naive.stream().mapToDouble(Run::perSecond).average().orElseThrow());
    }

    private static void print(String round, double ours, double naive, double oursByClock, double naiveByClock) {
        System.out.printf(
                Locale.ROOT,
                "%-10s%10.0f%10.0f%8.1f    %10.0f%10.0f%n",
                round,
                ours,
                naive,
                ours / naive,
                oursByClock,
                naiveByClock);
    }

    private Run run(Class<? extends IncrementalScoreCalculator<SeasonPlan, HardMediumSoftScore>> calculator) {
        SeasonPlan plan = new SeasonPlan(facts, start, new Probe());
        plan.setProbe(null);
        var solver = SolverFactory.<SeasonPlan>create(config(calculator)).buildSolver();
        var threads = ManagementFactory.getThreadMXBean();
        long clock = System.nanoTime();
        long cpu = threads.getCurrentThreadCpuTime();
        SeasonPlan end = solver.solve(plan);
        double cpuSeconds = (threads.getCurrentThreadCpuTime() - cpu) / 1e9;
        double seconds = (System.nanoTime() - clock) / 1e9;
        return new Run(moves / cpuSeconds, moves / seconds, Objects.requireNonNull(end.getScore()), end.places());
    }

    private SolverConfig config(
            Class<? extends IncrementalScoreCalculator<SeasonPlan, HardMediumSoftScore>> calculator) {
        return new SolverConfig()
                .withRandomSeed(SEED)
                .withSolutionClass(SeasonPlan.class)
                .withEntityClasses(Planting.class)
                .withScoreDirectorFactory(
                        new ScoreDirectorFactoryConfig().withIncrementalScoreCalculatorClass(calculator))
                .withMonitoringConfig(new MonitoringConfig().withSolverMetricList(List.of()))
                .withTerminationConfig(new TerminationConfig().withMoveCountLimit(moves))
                .withPhases(new LocalSearchPhaseConfig()
                        .withMoveSelectorConfig(
                                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(SeasonMoves.class))
                        .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(4000))
                        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1)));
    }
}
