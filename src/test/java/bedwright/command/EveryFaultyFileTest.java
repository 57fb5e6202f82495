package bedwright.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedwright.weather.InventedStation;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is wrong with a file: its faults with their places, exit code 3, no stack trace, and nothing written. */
class EveryFaultyFileTest {
    private static final Path KEPT = Path.of("src/test/resources/bedwright/file");
    private static final String PLACE = ":[1-9]\\d*:[1-9]\\d*: \\S.*";

    @TempDir
    private Path temporary;

    static List<Path> seasons() throws IOException {
        return in("faulty");
    }

    static List<Path> plans() throws IOException {
        return in("faulty-plans");
    }

    private static List<Path> in(String folder) throws IOException {
        try (Stream<Path> files = Files.list(KEPT.resolve(folder))) {
            return files.sorted().toList();
        }
    }

    @Test
    void thereAreManySortsOfFaults() throws IOException {
        assertThat(seasons()).hasSizeGreaterThan(90);
        assertThat(plans()).hasSizeGreaterThan(12);
    }

    @ParameterizedTest
    @MethodSource("seasons")
    void checkTellsTheFaultsOfASeason(Path file) {
        assertOnlyFaults(file, Ran.of("check", file));
    }

    @ParameterizedTest
    @MethodSource("seasons")
    void nothingIsPlannedFromAFaultySeason(Path file) {
        Path folder = temporary.resolve("plan");

        assertOnlyFaults(file, Ran.of("plan", file, "--moves", 1, "--out", folder));
        assertThat(folder).doesNotExist();
    }

    @ParameterizedTest
    @MethodSource("plans")
    void nothingIsDrawnOfAFaultyPlan(Path file) throws IOException {
        Path plan = Files.copy(file, temporary.resolve("plan.json"));

        assertOnlyFaults(plan, Ran.of("sheet", temporary));
        assertOnlyFaults(plan, Ran.of("recheck", temporary));
        assertThat(temporary.toFile().list()).containsExactly("plan.json");
    }

    /** Larger than any season: refused after as much of it as shows that. */
    @Test
    void aHundredMegabytesAreRefused() throws IOException {
        Path file = temporary.resolve("large.json");
        byte[] blanks = new byte[1 << 20];
        Arrays.fill(blanks, (byte) ' ');
        try (OutputStream out = Files.newOutputStream(file)) {
            out.write("{ \"about\": \"".getBytes(UTF_8));
            for (int i = 0; i < 100; i++) {
                out.write(blanks);
            }
            out.write("\" }".getBytes(UTF_8));
        }
        Ran ran = Ran.of("check", file);
        Files.delete(file);

        assertOnlyFaults(file, ran);
        assertThat(ran.err()).contains("more than 64 MB is not read", "right file");
    }

    @Test
    void tenThousandBracketsAreRefused() throws IOException {
        Path file = Files.writeString(
                temporary.resolve("deep.json"), "{\"roles\":" + "[".repeat(10_000) + "]".repeat(10_000) + "}");

        assertOnlyFaults(file, Ran.of("check", file));
    }

    @ParameterizedTest
    @MethodSource("brokenWeather")
    void faultsOfAWeatherFileAreTold(String text) throws IOException {
        Path file = Files.writeString(temporary.resolve("station.csv"), text);

        assertOnlyFaults(file, Ran.of("weather", file, "--latitude", 40));
    }

    static Stream<String> brokenWeather() {
        String whole = InventedStation.table(new InventedStation(2001, 2003, 5).days());
        return Stream.of(
                "",
                "\n\n",
                "{}",
                "date,min (°C)\n2020-07-01,10\n",
                whole.substring(0, whole.length() / 2) + "\n",
                whole.replace(",", " "),
                whole.replace("2002-0", "2002-9"),
                whole + whole,
                "\0".repeat(500),
                whole.replace("(°C)", "(°X)"));
    }

    private static void assertOnlyFaults(Path file, Ran ran) {
        assertThat(ran.code()).as("%s%n%s", file, ran.err()).isEqualTo(Exit.FAULTY_FILE);
        assertThat(ran.out()).isEmpty();
        List<String> lines = ran.err().lines().toList();
        assertThat(lines.getLast()).matches("[1-9]\\d* faults?; nothing was written\\.");
        assertThat(lines.subList(0, lines.size() - 1))
                .isNotEmpty()
                .allMatch(line -> line.startsWith(file.toString())
                                && line.substring(file.toString().length()).matches(PLACE)
                        || line.startsWith("… and "));
        assertThat(ran.err()).doesNotContain("Exception", "bedwright.", "java.");
    }
}
