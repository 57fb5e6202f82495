package bedwright.command;

import bedwright.file.FaultyFile;
import bedwright.file.PlanFile;
import bedwright.file.StrategiesFile;
import bedwright.file.Writing;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.Strategies;
import bedwright.season.Strategies.Strategy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The folder of a comparison. Every plan in it is kept as soon as it is made, so that a run goes on where it was broken
 * off; what is judged is worked out from the plans alone.
 */
final class ComparisonFolder {
    private static final String SHEET = "comparison.html";
    private static final int LONGEST_NAME = 40;

    private final Path folder;
    private final Map<String, String> names = new HashMap<>();

    ComparisonFolder(Path folder, Strategies strategies) {
        this.folder = folder;
        for (Strategy strategy : strategies.strategies()) {
            String plain = plain(strategy.name());
            String name = plain;
            for (int i = 2; names.containsValue(name); i++) {
                name = plain + "-" + i;
            }
            names.put(strategy.name(), name);
        }
    }

    private static String plain(String name) {
        String plain =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String some = plain.isEmpty() ? "strategy" : plain;
        return some.length() <= LONGEST_NAME ? some : some.substring(0, LONGEST_NAME);
    }

    /** The folder of a strategy's plan from one search, by its number from 1. */
    PlanFolder plan(Strategy strategy, int search) {
        return new PlanFolder(folder.resolve("plans").resolve(names.get(strategy.name()) + "-" + search));
    }

    /** A plan that was made before of just this season in just this way, to its end. */
    Optional<Plan> kept(Strategy strategy, int search, Season season, Plan.Making making) {
        Path file = plan(strategy, search).plan();
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            Plan plan = PlanFile.read(file);
            return plan.making().equals(making) && plan.season().equals(season) ? Optional.of(plan) : Optional.empty();
        } catch (FaultyFile e) {
            return Optional.empty();
        }
    }

    void keep(Strategy strategy, int search, Plan plan) {
        Writing.saveAll(plan(strategy, search).folder(), Map.of("plan.json", PlanFile.bytes(plan)));
    }

    /** Refuses a folder that can't be written to, before anything is planned. */
    void mustBeWritable() {
        new PlanFolder(folder).mustBeWritable();
    }

    Path sheet() {
        return folder.resolve(SHEET);
    }

    /** Writes what came out, by name of the file, and what was asked. */
    void write(Strategies strategies, Map<String, String> results) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("strategies.json", StrategiesFile.bytes(strategies));
        results.forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
        Writing.saveAll(folder, files);
    }
}
