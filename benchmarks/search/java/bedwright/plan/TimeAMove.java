package bedwright.plan;

import bedwright.plan.CountedSearch.Calculator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How the time a move grows with what is planned: with the number of possible seasons (16 to 64), and with the farm (demo to
 * sixteen such fields). One thread, in turns, microseconds of its processor time; the median of the rounds counts.
 *
 * <p>Sixteen fields have to be compiled, opened and searched within the memory given: run with {@code -Xmx4g}.
 */
public final class TimeAMove {
    private static final double MOST_FOR_SEASONS = 3.5;
    private static final double MOST_FOR_FARM = 2;

    private TimeAMove() {}

    /** Arguments: {@code moves} a round (100,000), {@code rounds} (5), {@code large} (demo-x16), {@code commit}. */
    public static void main(String[] args) {
        BenchArgs given = new BenchArgs(args, "moves", "rounds", "large", "commit");
        int moves = given.number("moves", 100_000);
        int rounds = given.number("rounds", 5);
        String large = given.text("large", "demo-x16");
        System.out.println(DemoFarm.heading(given.text("commit", "not named")));
        List<String> names = List.of("demo, 16 seasons", "demo, 64 seasons", large + ", 16 seasons");
        List<CountedSearch> searches = new ArrayList<>();
        searches.add(prepare("demo", 16));
        searches.add(prepare("demo", 64));
        searches.add(prepare(large, 16));
        double[][] micros = new double[names.size()][rounds];
        searches.forEach(search -> search.run(Calculator.OURS, moves));
        for (int round = 0; round < rounds; round++) {
            for (int i = 0; i < names.size(); i++) {
                micros[i][round] = searches.get(i).run(Calculator.OURS, moves).micros();
            }
        }
        for (int i = 0; i < names.size(); i++) {
            System.out.printf(
                    Locale.ROOT, "%-24s%8.2f µs a move  %s%n", names.get(i), median(micros[i]), rounded(micros[i]));
        }
        verdict("16 to 64 seasons", median(micros[1]) / median(micros[0]), MOST_FOR_SEASONS);
        verdict("demo to " + large, median(micros[2]) / median(micros[0]), MOST_FOR_FARM);
        Runtime.getRuntime().gc();
        System.out.printf(
                Locale.ROOT,
                "Memory: %d MB in use after a collection, of %d MB at the most%n",
                (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) >> 20,
                Runtime.getRuntime().maxMemory() >> 20);
    }

    private static CountedSearch prepare(String problem, int seasons) {
        long clock = System.nanoTime();
        PlanFacts facts = BenchArgs.facts(problem, seasons);
        double compiled = (System.nanoTime() - clock) / 1e9;
        CountedSearch search = new CountedSearch(facts);
        System.out.printf(
                Locale.ROOT,
                "%s, %d seasons: %d plantings, %d places; compiled in %.1f s, opened in %.1f s%n",
                problem,
                seasons,
                facts.plantings(),
                facts.table.places(),
                compiled,
                (System.nanoTime() - clock) / 1e9 - compiled);
        return search;
    }

    private static void verdict(String what, double ratio, double most) {
        System.out.printf(
                Locale.ROOT,
                "%s: %.2f times the time a move (bar: at most %.1f, %s)%n",
                what,
                ratio,
                most,
                ratio <= most ? "kept" : "missed");
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static String rounded(double[] values) {
        StringBuilder text = new StringBuilder();
        for (double value : values) {
            text.append(String.format(Locale.ROOT, " %.2f", value));
        }
        return text.toString();
    }
}
