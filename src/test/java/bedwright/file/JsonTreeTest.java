package bedwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How much of a file is read before it is refused. */
class JsonTreeTest {
    private static JsonTree tree(String text) {
        return JsonTree.read("file", text.getBytes(UTF_8));
    }

    @ParameterizedTest
    @CsvSource({"'{\"a\":', 1, }", "[, 1, ]", "'{\"a\":', '\"b\"', }"})
    void bracketsMayStandAHundredDeep(String open, String inmost, String close) {
        assertThat(tree(open.repeat(100) + inmost + close.repeat(100)).faults()).isEmpty();
        assertThat(tree(open.repeat(101) + inmost + close.repeat(101)).faults())
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.place()).isEqualTo(new Place(1, 100 * open.length() + 1));
                    assertThat(fault.message()).contains("more than 100 deep");
                });
    }

    @Test
    void aNumberMayHaveTwoHundredCharacters() {
        assertThat(tree("[" + "7".repeat(200) + "]").faults()).isEmpty();
        assertThat(tree("[1, " + "7".repeat(201) + "]").faults())
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.place()).isEqualTo(new Place(1, 5));
                    assertThat(fault.path()).isEqualTo("/1");
                    assertThat(fault.message()).contains("201 characters", "Round it");
                });
    }

    /** It is told for itself, not also as a key that nobody knows. */
    @Test
    void aKeyWithHalfACharacterIsToldAndLeftOut() {
        JsonTree tree = tree("{ \"a\": 1,\n  \"b\\ud83c\": 2 }");

        assertThat(tree.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.place()).isEqualTo(new Place(2, 3));
            assertThat(fault.message()).contains("half a character", "\\ud83c");
        });
        assertThat(tree.root())
                .isInstanceOfSatisfying(
                        Node.Group.class,
                        group -> assertThat(group.members())
                                .extracting(Node.Member::key)
                                .containsExactly("a"));
    }
}
