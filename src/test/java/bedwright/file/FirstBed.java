package bedwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Season;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A small season that can be held in the head, some pieces of its file replaced. */
final class FirstBed {
    private static final String FILE = "first-bed.json";

    private FirstBed() {}

    /**
     * Its file's text.
     *
     * @param replaced pieces that stand in it, each with what to put in its place
     */
    static String text(String... replaced) {
        String text;
        try {
            text = Files.readString(Path.of("problems", FILE));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        for (int i = 0; i < replaced.length; i += 2) {
            assertThat(text).contains(replaced[i]);
            text = text.replace(replaced[i], replaced[i + 1]);
        }
        return text;
    }

    static Season season(String... replaced) {
        return SeasonFile.parse(FILE, text(replaced).getBytes(UTF_8));
    }

    /** With more keys before its outlets. */
    static String with(String keys, String... replaced) {
        return text(replaced).replace("\"outlets\": [", keys + ", \"outlets\": [");
    }

    /** Asserts that a text is refused for these faults and no others; for none, that it is read. */
    static void assertFaults(String text, Expected... expected) {
        List<Fault> faults = List.of();
        try {
            SeasonFile.parse(FILE, text.getBytes(UTF_8));
        } catch (FaultyFile e) {
            faults = e.faults();
        }
        Expected.assertAll(FILE, text, faults, List.of(expected));
    }
}
