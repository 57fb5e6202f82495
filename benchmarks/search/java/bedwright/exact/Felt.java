package bedwright.exact;

import bedwright.plan.Rule;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** In which of the small seasons each rule decides about the best plan: {@code benchmarks/search/small/felt.csv}. */
final class Felt {
    private static final Path FILE = Path.of("benchmarks", "search", "small", "felt.csv");

    private Felt() {}

    /** Seeds by rule; none for a rule that the file does not name. */
    static Map<Rule, List<Long>> all() {
        Map<Rule, List<Long>> all = new EnumMap<>(Rule.class);
        for (Rule rule : Rule.values()) {
            all.put(rule, List.of());
        }
        try {
            for (String line : Files.readAllLines(FILE)) {
                String[] cells = line.split(",", -1);
                if (!cells[0].equals("rule")) {
                    List<Long> seeds = new ArrayList<>();
                    for (String seed : cells[1].split(" ", -1)) {
                        seeds.addAll(seed.isEmpty() ? List.of() : List.of(Long.valueOf(seed)));
                    }
                    all.put(Rule.valueOf(cells[0]), List.copyOf(seeds));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }

    /** Writes the file anew. */
    static void keep(Map<Rule, List<Long>> all) {
        String text = all.entrySet().stream()
                .map(entry -> entry.getKey() + ","
                        + entry.getValue().stream().map(String::valueOf).collect(Collectors.joining(" ")))
                .collect(Collectors.joining("\n", "rule,seasons in which it decides about the best plan\n", "\n"));
        try {
            Files.writeString(FILE, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
