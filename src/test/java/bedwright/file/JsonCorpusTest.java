package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * JSON as RFC 8259 has it: texts that its grammar allows (section 2 to 8.1), texts that it does not, and texts of which
 * it leaves open what becomes of them (names twice, section 4; range and precision of numbers, section 6; halves of
 * characters and a byte order mark, section 8; limits, section 9). None of them is a season.
 */
class JsonCorpusTest {
    private static final Path CORPUS = Path.of("src/test/resources/bedwright/file/json");

    static List<Path> valid() throws IOException {
        return in("valid");
    }

    static List<Path> invalid() throws IOException {
        return in("invalid");
    }

    static List<Path> undefined() throws IOException {
        return in("undefined");
    }

    private static List<Path> in(String folder) throws IOException {
        try (Stream<Path> files = Files.list(CORPUS.resolve(folder))) {
            return files.sorted().toList();
        }
    }

    @Test
    void theCorpusIsLarge() throws IOException {
        assertThat(valid()).hasSizeGreaterThan(60);
        assertThat(invalid()).hasSizeGreaterThan(100);
        assertThat(undefined()).hasSizeGreaterThan(20);
    }

    @ParameterizedTest
    @MethodSource("valid")
    void whatTheGrammarAllowsIsReadAndFoundToBeNoSeason(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);

        JsonTree tree = JsonTree.read("file", bytes);

        assertThat(tree.faults()).isEmpty();
        assertThat(tree.whole()).isTrue();
        assertThat(tree.root()).isNotNull();
        assertToldWithPlaces(bytes);
    }

    @ParameterizedTest
    @MethodSource("invalid")
    void whatTheGrammarForbidsIsRefusedAtItsPlace(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);

        JsonTree tree = JsonTree.read("file", bytes);

        assertThat(tree.whole()).isFalse();
        assertThat(tree.faults()).isNotEmpty();
        assertToldWithPlaces(bytes);
    }

    @ParameterizedTest
    @MethodSource("undefined")
    void whatIsLeftOpenIsReadOrRefusedAtItsPlace(Path file) throws IOException {
        assertToldWithPlaces(Files.readAllBytes(file));
    }

    private static void assertToldWithPlaces(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        List<String> lines = text.lines().toList();
        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> SeasonFile.parse("file", bytes))
                .satisfies(e -> assertThat(e.faults()).isNotEmpty().allSatisfy(fault -> {
                    assertThat(fault.line()).isBetween(1, lines.size() + 1);
                    int length = fault.line() <= lines.size()
                            ? lines.get(fault.line() - 1).length()
                            : 0;
                    assertThat(fault.column()).isBetween(1, length + 1);
                    assertThat(fault.message()).isNotBlank();
                }));
    }
}
