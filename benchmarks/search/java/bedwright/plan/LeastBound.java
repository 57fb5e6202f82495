package bedwright.plan;

import bedwright.file.PriceFile;
import bedwright.season.Caution;
import bedwright.season.PriceList;
import bedwright.season.Season;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/**
 * The least bound that any prices can prove for a problem, by {@link ColumnGeneration}, and the prices that prove it: kept
 * in {@code benchmarks/search/prices}, where {@link PriceQuality} holds the product's own prices against them and anybody
 * can work them out again.
 */
public final class LeastBound {
    static final Path FOLDER = Path.of("benchmarks/search/prices");

    private LeastBound() {}

    /**
     * Arguments: {@code problem} (demo), {@code seasons} (16), {@code caution} (33), {@code missing}
     * (weighted hundredths of stems that must be ours and may be missing, over all possible seasons; where no plan has all of
     * them the bound of those that do falls without end; 0), {@code solver} (PDLP, GLOP or
     * HIGHS_LP), {@code settings} of its own, {@code steps} of the product's search to begin from (4,000), {@code first}
     * and {@code each}: places at first (2,500) and in each round (1,500), {@code rounds} (12), {@code close} (1e-4).
     */
    public static void main(String[] args) throws IOException {
        BenchArgs given = new BenchArgs(
                args,
                "problem",
                "seasons",
                "caution",
                "missing",
                "solver",
                "settings",
                "steps",
                "first",
                "each",
                "rounds",
                "close");
        String problem = given.text("problem", "demo");
        int seasons = given.number("seasons", 16);
        int caution = given.number("caution", 33);
        PlanFacts facts = facts(problem, seasons, caution);
        int missing = given.number("missing", 0);
        Path file = file(problem, seasons, caution, missing);
        int first = given.number("first", 2500);
        String solver = given.text("solver", "HIGHS_LP");
        long began = System.nanoTime();
        Prices start;
        double[] lots = new double[facts.table.places()];
        if (Files.exists(file)) {
            start = read(file, facts);
        } else {
            PriceSearch search = new PriceSearch(facts, missing);
            search.run(given.number("steps", 4000), () -> false);
            start = search.bestPrices();
            lots = search.lots();
        }
        say(began, facts, "begins at", Bound.of(facts, start, missing));
        ColumnGeneration.Found found = new ColumnGeneration(
                        facts,
                        start,
                        solver,
                        given.text("settings", solver.equals("HIGHS_LP") ? RelaxedModel.INTERIOR : ""),
                        Double.parseDouble(given.text("close", "1e-4")),
                        missing,
                        line -> System.out.printf("%6.0f s  %s%n", (System.nanoTime() - began) / 1e9, line))
                .guess(lots, first)
                .run(first, given.number("each", 1500), given.number("rounds", 12));
        PriceList kept = PriceLists.kept(facts, found.prices());
        Files.createDirectories(FOLDER);
        try (GZIPOutputStream out = new GZIPOutputStream(Files.newOutputStream(file))) {
            out.write(PriceFile.bytes(kept));
        }
        say(began, facts, "no prices prove less than", found.lower());
        say(began, facts, file + " prove", Bound.of(facts, PriceLists.of(facts, kept), missing));
    }

    private static void say(long began, PlanFacts facts, String what, double bound) {
        System.out.printf(
                Locale.ROOT,
                "%6.0f s  %s %.2f%n",
                (System.nanoTime() - began) / 1e9,
                what,
                Grains.toMoney(facts.season, bound / facts.seasonCount));
    }

    static PlanFacts facts(String problem, int seasons, int caution) {
        PlanFacts facts = BenchArgs.facts(problem, seasons);
        Season season = facts.season.with(new Caution(caution));
        return PlanFacts.of(season, facts.seasons, facts.table);
    }

    /** Where the prices of a problem are kept. */
    static Path file(String problem, int seasons, int caution, long missing) {
        return FOLDER.resolve(problem.replace(':', '-') + "-" + seasons + "-seasons-caution-" + caution
                + (missing == 0 ? "" : "-missing-" + missing) + ".json.gz");
    }

    static Prices read(Path file, PlanFacts facts) throws IOException {
        byte[] bytes;
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(Files.readAllBytes(file)))) {
            bytes = in.readAllBytes();
        }
        return PriceLists.of(facts, PriceFile.parse(file.toString(), bytes, facts.season, facts.seasonCount));
    }
}
