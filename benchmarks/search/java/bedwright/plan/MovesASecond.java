package bedwright.plan;

import bedwright.plan.CountedSearch.Calculator;
import bedwright.plan.CountedSearch.Run;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Moves a second of {@link SolverScore}, of {@link StreamRules} and of {@link NaiveScore}: the same season, start, seed and
 * number of moves, one thread, in turns. All see the same moves and have to end in the same plan, or the run fails.
 */
public final class MovesASecond {
    private static final int PLANS = 200;
    private static final int STREAMED = 100;
    private static final int RECHECKED = 10;

    private MovesASecond() {}

    /**
     * Arguments, all of which may be left out: {@code problem} (a family or a season file; default demo), {@code seasons}
     * (default: the problem's own), {@code moves} a round (100,000), {@code rounds} (3), {@code with}
     * (ours,streams,naive), {@code plans} compared before (200), {@code commit}.
     */
    public static void main(String[] args) {
        BenchArgs given = new BenchArgs(args, "problem", "seasons", "moves", "rounds", "with", "plans", "commit");
        int moves = given.number("moves", 100_000);
        int plans = given.number("plans", PLANS);
        String problem = given.text("problem", "demo");
        List<Calculator> with = given.list("with", "ours,streams,naive").stream()
                .map(Calculator::of)
                .toList();
        PlanFacts facts = BenchArgs.facts(problem, given.number("seasons", 0));
        System.out.println(DemoFarm.heading(given.text("commit", "not named")));
        System.out.printf(
                Locale.ROOT,
                "%s: %d plantings, %d places, %d seasons, %d moves a round%n",
                problem,
                facts.plantings(),
                facts.table.places(),
                facts.seasonCount,
                moves);
        int streamed = Math.min(plans, STREAMED);
        int rechecked = Math.min(plans, RECHECKED);
        new SameScores(facts, 1).demand(plans, streamed, rechecked);
        System.out.printf(
                Locale.ROOT,
                "%d random plans: equal scores of ours and naive; %d of them by streams, %d rechecked%n",
                plans,
                streamed,
                rechecked);
        measure(new CountedSearch(facts), with, moves, given.number("rounds", 3));
    }

    private static void measure(CountedSearch search, List<Calculator> with, long moves, int rounds) {
        with.forEach(calculator -> search.run(calculator, moves));
        Map<Calculator, List<Run>> runs = new EnumMap<>(Calculator.class);
        with.forEach(calculator -> runs.put(calculator, new ArrayList<>()));
        System.out.println("          moves per second of processor time (of the clock)");
        System.out.print("round ");
        with.forEach(calculator -> System.out.printf(Locale.ROOT, "%20s", calculator.label()));
        System.out.println();
        for (int round = 1; round <= rounds; round++) {
            List<Run> now = new ArrayList<>();
            for (Calculator calculator : with) {
                Run run = search.run(calculator, moves);
                runs.getOrDefault(calculator, new ArrayList<>()).add(run);
                run.demandSameEnd("round " + round + ", " + calculator.label(), now.isEmpty() ? run : now.getFirst());
                now.add(run);
            }
            System.out.printf(Locale.ROOT, "%-6d", round);
            now.forEach(run -> System.out.printf(Locale.ROOT, "%11.0f (%6.0f)", run.perCpuSecond(), run.perSecond()));
            System.out.println();
        }
        System.out.print("mean  ");
        for (Calculator calculator : with) {
            System.out.printf(Locale.ROOT, "%11.0f%9s", mean(runs.getOrDefault(calculator, List.of())), "");
        }
        System.out.println();
        ratio(runs, Calculator.OURS, Calculator.STREAMS, 4);
        ratio(runs, Calculator.STREAMS, Calculator.NAIVE, 1.5);
        ratio(runs, Calculator.OURS, Calculator.NAIVE, 0);
    }

    private static void ratio(Map<Calculator, List<Run>> runs, Calculator fast, Calculator slow, double bar) {
        List<Run> faster = runs.get(fast);
        List<Run> slower = runs.get(slow);
        if (faster == null || slower == null) {
            return;
        }
        double ratio = mean(faster) / mean(slower);
        String verdict = bar == 0
                ? ""
                : String.format(Locale.ROOT, " (bar: at least %.1f, %s)", bar, ratio >= bar ? "kept" : "missed");
        System.out.printf(Locale.ROOT, "%s to %s: %.2f%s%n", fast.label(), slow.label(), ratio, verdict);
    }

    private static double mean(List<Run> runs) {
        return runs.stream().mapToDouble(Run::perCpuSecond).average().orElseThrow();
    }
}
