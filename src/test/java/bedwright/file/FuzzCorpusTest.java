package bedwright.file;

import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the fuzzer begins with, and what it once found: each is read or told. */
class FuzzCorpusTest {
    private static final Path CORPUS = Path.of("src/test/resources/bedwright/file/fuzz");

    static List<Path> season() throws IOException {
        return in("Season");
    }

    static List<Path> plan() throws IOException {
        return in("Plan");
    }

    static List<Path> weather() throws IOException {
        return in("Weather");
    }

    private static List<Path> in(String folder) throws IOException {
        try (Stream<Path> files = Files.list(CORPUS.resolve(folder))) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("season")
    void aSeasonIsReadOrTold(Path file) {
        assertThatCode(() -> FuzzSeason.fuzzerTestOneInput(Files.readAllBytes(file)))
                .doesNotThrowAnyException();
    }

    @ParameterizedTest
    @MethodSource("plan")
    void aPlanIsReadOrTold(Path file) {
        assertThatCode(() -> FuzzPlan.fuzzerTestOneInput(Files.readAllBytes(file)))
                .doesNotThrowAnyException();
    }

    @ParameterizedTest
    @MethodSource("weather")
    void aWeatherFileIsReadOrTold(Path file) {
        assertThatCode(() -> FuzzWeather.fuzzerTestOneInput(Files.readAllBytes(file)))
                .doesNotThrowAnyException();
    }
}
