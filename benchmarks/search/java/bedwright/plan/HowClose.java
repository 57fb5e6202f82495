package bedwright.plan;

import bedwright.climate.PossibleSeasons;
import bedwright.file.PriceFile;
import bedwright.season.PriceList;
import bedwright.season.Season;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How close plans come to the best possible: each problem searched from nothing with so many seeds for so many seconds, one
 * after the other, on both cores, and held against the bound that follows from its prices.
 *
 * <p>Arguments: {@code problems} (families or season files, commas between; demo), {@code seeds} (10), {@code first} (the
 * first seed; 1), {@code seconds} (10,60), {@code prices} (seconds to look for prices; 60), {@code out} (a folder; the prices
 * that are found are kept there and, where they lie there already, read; results are added to {@code how-close.csv}),
 * {@code commit}.
 */
public final class HowClose {
    private static final String RESULTS = "how-close.csv";
    private static final String HEADER =
            "problem,seconds,seed,money,must missing,bound,gap %,moves a second,MB,health,commit,machine";

    private final String commit;
    private final Path folder;
    private final PrintWriter results;

    private HowClose(String commit, Path folder, PrintWriter results) {
        this.commit = commit;
        this.folder = folder;
        this.results = results;
    }

    public static void main(String[] args) throws IOException {
        BenchArgs given = new BenchArgs(args, "problems", "seeds", "first", "seconds", "prices", "out", "commit");
        String commit = given.text("commit", "not named");
        System.out.println(DemoFarm.heading(commit));
        Path folder = Path.of(given.text("out", "benchmarks/search/results"));
        Files.createDirectories(folder);
        Path file = folder.resolve(RESULTS);
        boolean isNew = Files.notExists(file);
        try (PrintWriter results = new PrintWriter(Files.newBufferedWriter(
                file,
                StandardCharsets.UTF_8,
                java.nio.file.StandardOpenOption.CREATE,
                java.nio.file.StandardOpenOption.APPEND))) {
            if (isNew) {
                results.println(HEADER);
            }
            HowClose how = new HowClose(commit, folder, results);
            int first = given.number("first", 1);
            for (String problem : given.list("problems", "demo")) {
                how.run(
                        problem,
                        first,
                        given.number("seeds", 10),
                        given.list("seconds", "10,60"),
                        given.number("prices", 60));
            }
        }
    }

    private void run(String problem, int first, int seeds, List<String> seconds, int priceSeconds) throws IOException {
        Season season = ProblemFamily.named(problem);
        PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));
        double unit = (double) facts.seasonCount * season.currency().smallest() * Grains.A_SMALLEST_UNIT;
        long nothing = BestPossible.nothingPlanted(facts);
        Relaxation relaxed = new Relaxation(facts);
        Prices prices = prices(problem, season, facts, priceSeconds);
        for (String time : seconds) {
            List<Double> gaps = new ArrayList<>();
            for (int seed = first; seed < first + seeds; seed++) {
                long clock = System.nanoTime();
                Search search =
                        new Search(facts, new Search.Limits(seed, Duration.ofSeconds(Long.parseLong(time)), null));
                Search.Found found = search.run(Search.nothingPlaced(facts));
                double took = (System.nanoTime() - clock) / 1e9;
                double bound = Bound.of(relaxed, prices, -found.medium());
                double gap = 100 * (bound - found.soft()) / (bound - nothing);
                gaps.add(found.hard() == 0 ? gap : Double.NaN);
                results.println(String.format(
                        Locale.ROOT,
                        "%s,%s,%d,%.2f,%d,%.2f,%.3f,%.0f,%d,%s,%s,\"%s\"",
                        problem,
                        time,
                        seed,
                        found.soft() / unit,
                        -found.medium(),
                        bound / unit,
                        gap,
                        search.moves() / took,
                        usedMemory(),
                        health(found, gap),
                        commit,
                        DemoFarm.machine()));
                results.flush();
            }
            double[] sorted =
                    gaps.stream().mapToDouble(Double::doubleValue).sorted().toArray();
            System.out.printf(
                    Locale.ROOT,
                    "%-14s %4s s, %d seeds: gap median %.2f %%, best %.2f, worst %.2f%n",
                    problem,
                    time,
                    seeds,
                    median(sorted),
                    sorted[0],
                    sorted[sorted.length - 1]);
        }
    }

    /** What is suspect of a plan, or that nothing is. */
    private static String health(Search.Found found, double gap) {
        if (found.hard() != 0) {
            return "breaks a hard rule";
        }
        return gap < 0 ? "better than the bound: suspect" : "sound";
    }

    /** The prices kept for a problem, or such as are found for a plan of some seconds, which are kept as they are rounded. */
    private Prices prices(String problem, Season season, PlanFacts facts, int seconds) throws IOException {
        Path kept = folder.resolve("prices-" + problem.replaceAll("[^A-Za-z0-9]+", "-") + ".json");
        if (Files.notExists(kept)) {
            Search.Limits limits = new Search.Limits(1, Duration.ofSeconds(10), null);
            Search.Found found = new Search(facts, limits).run(Search.nothingPlaced(facts));
            PriceSearch search = new PriceSearch(facts, -found.medium());
            long end = System.nanoTime() + Duration.ofSeconds(seconds).toNanos();
            search.run(Long.MAX_VALUE, () -> System.nanoTime() > end);
            Files.write(kept, PriceFile.bytes(search.kept()));
            System.out.printf(Locale.ROOT, "%s: prices after %d steps kept in %s%n", problem, search.steps(), kept);
        }
        PriceList list = PriceFile.read(kept, season, facts.seasonCount);
        return PriceLists.of(facts, list);
    }

    private static long usedMemory() {
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) >> 20;
    }

    private static double median(double[] sorted) {
        int half = sorted.length / 2;
        return sorted.length % 2 == 1
                ? sorted[half]
                : Arrays.stream(sorted, half - 1, half + 1).average().orElseThrow();
    }
}
