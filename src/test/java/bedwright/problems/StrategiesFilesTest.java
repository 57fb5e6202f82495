package bedwright.problems;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.SeasonFile;
import bedwright.file.StrategiesFile;
import bedwright.season.Changes;
import bedwright.season.Season;
import bedwright.season.Strategies;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The ready files of strategies. */
class StrategiesFilesTest {
    private static final Path FOLDER = Path.of("benchmarks/strategies");

    private static Stream<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.filter(file -> file.toString().endsWith(".json")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void fitTheirSeasonAndEachStrategyChangesIt(Path file) {
        String name = file.getFileName().toString().equals("first-bed.json") ? "first-bed" : "demo-farm";
        Season season = SeasonFile.read(Path.of("problems", name + ".json"));

        Strategies strategies = StrategiesFile.read(file, season);

        assertThat(strategies.about()).contains("nvented");
        List<Season> seasons = strategies.strategies().stream()
                .map(strategy -> Changes.of(season, strategy))
                .toList();
        assertThat(seasons).doesNotHaveDuplicates();
    }
}
