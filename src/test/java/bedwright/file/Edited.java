package bedwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Season;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A season file of these tests, changed here and there, and what is told of it. */
record Edited(String text) {
    private static final String NAME = "edited.json";

    /** The season on a page. */
    static Edited page(String... replaced) {
        return new Edited(new String(Resources.bytes("page.json"), UTF_8)).with(replaced);
    }

    /** The first bed of the problems. */
    static Edited firstBed(String... replaced) {
        try {
            return new Edited(Files.readString(Path.of("problems/first-bed.json"))).with(replaced);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Pieces in pairs: what is there, which is replaced where it stands first, and what stands there then. */
    Edited with(String... replaced) {
        String edited = text;
        for (int i = 0; i < replaced.length; i += 2) {
            int at = edited.indexOf(replaced[i]);
            assertThat(at).as("place of %s", replaced[i]).isNotNegative();
            edited = edited.substring(0, at) + replaced[i + 1] + edited.substring(at + replaced[i].length());
        }
        return new Edited(edited);
    }

    byte[] bytes() {
        return text.getBytes(UTF_8);
    }

    Season season() {
        return SeasonFile.parse(NAME, bytes());
    }

    List<Fault> remarks() {
        return SeasonFile.check(NAME, bytes()).remarks();
    }

    List<Fault> faults() {
        try {
            season();
            return List.of();
        } catch (FaultyFile e) {
            return e.faults();
        }
    }

    /** Asserts that it is refused for these faults, each at its place, and no others; that it is read if there are none. */
    void isToldOf(Expected... expected) {
        Expected.assertAll(NAME, text, faults(), List.of(expected));
    }
}
