package bedwright.plan;

import bedwright.file.PriceFile;
import bedwright.season.Season;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

/** Prices of a problem as a file beside the results, so that every gap can be worked out again from it. */
final class KeptPrices {
    private final Path file;
    private @Nullable Prices read;

    /** Those of a problem in a folder. */
    KeptPrices(Path folder, String problem) {
        this.file = folder.resolve("prices-" + ProblemName.plain(problem) + ".json");
    }

    boolean areThere() {
        return Files.exists(file);
    }

    /**
     * Those that are kept, or else such as are found now, as they are read back from the file.
     *
     * @param missing weighted hundredths of stems that must be ours and that the plan compared with misses
     * @param seconds to look for them
     */
    Prices of(Season season, PlanFacts facts, Relaxation relaxed, long missing, int seconds) {
        if (read == null) {
            if (!areThere()) {
                find(relaxed, missing, seconds);
            }
            read = PriceLists.of(facts, PriceFile.read(file, season, facts.seasonCount));
        }
        return read;
    }

    private void find(Relaxation relaxed, long missing, int seconds) {
        PriceSearch search = new PriceSearch(relaxed, missing);
        long end = System.nanoTime() + Duration.ofSeconds(seconds).toNanos();
        search.run(Long.MAX_VALUE, () -> System.nanoTime() > end);
        try {
            Files.write(file, PriceFile.bytes(search.kept()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        System.err.println("Prices after " + search.steps() + " steps kept in " + file);
    }
}
