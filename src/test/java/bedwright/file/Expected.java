package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiConsumer;
import org.junit.jupiter.params.provider.Arguments;

/**
 * A fault that a test expects.
 *
 * @param at a piece of the file that stands nowhere else in it, with {@code ›} before the character at fault
 * @param path JSON pointer
 * @param words what its message must say
 */
record Expected(String at, String path, List<String> words) {
    static Expected at(String at, String path, String... words) {
        return new Expected(at, path, List.of(words));
    }

    /** Line and column counted the slow way. */
    private Place place(String text) {
        int mark = at.indexOf('›');
        String piece = at.replace("›", "");
        int found = text.indexOf(piece);
        assertThat(mark).as("the mark in %s", at).isNotNegative();
        assertThat(found).as("place of %s", piece).isNotNegative();
        assertThat(text.indexOf(piece, found + 1))
                .as("another place of %s", piece)
                .isNegative();
        String before = text.substring(0, found + mark);
        int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
        return new Place(line, before.length() - before.lastIndexOf('\n'));
    }

    /** A parameter of a test: a file and all that is at fault in it. */
    static Arguments file(String name, Expected... expected) {
        return Arguments.of(name, List.of(expected));
    }

    /** Asserts that a file is refused for these faults and no others: see the other form. */
    static void assertRefused(String file, BiConsumer<String, byte[]> parse, List<Expected> expected) {
        byte[] bytes = Resources.bytes(file);
        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> parse.accept(file, bytes))
                .satisfies(e -> assertAll(file, new String(bytes, StandardCharsets.UTF_8), e.faults(), expected));
    }

    /** Asserts that these are all faults, each where and as expected, in order of place. */
    static void assertAll(String file, String text, List<Fault> faults, List<Expected> expected) {
        List<String> found =
                faults.stream().map(f -> f.place().said() + " " + f.path()).toList();
        List<Expected> ordered = new ArrayList<>(expected);
        ordered.sort(Comparator.comparing(e -> e.place(text)));
        assertThat(found)
                .as("faults of %s:%n%s", file, faults)
                .containsExactlyElementsOf(ordered.stream()
                        .map(e -> e.place(text).said() + " " + e.path())
                        .toList());
        for (int i = 0; i < faults.size(); i++) {
            assertThat(faults.get(i).file()).isEqualTo(file);
            assertThat(faults.get(i).message()).contains(ordered.get(i).words());
        }
    }
}
