package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How a file is laid out in lines of at most a hundred characters. */
class JsonTextTest {
    private static String written(String json) {
        return JsonText.of(Defaults.node(json));
    }

    private static String number(int digits) {
        return "7".repeat(digits);
    }

    /** Brackets, two commas with blanks and the numbers: 2 + 4 + 94 = 100 characters. */
    @Test
    void aListThatFillsALineStaysOnIt() {
        String list = "[1, 2, " + number(92) + "]";

        assertThat(written(list)).isEqualTo(list + "\n").hasSize(101);
    }

    @Test
    void aListThatIsOneLongerIsFilledIntoLines() {
        assertThat(written("[1, 2, " + number(93) + "]")).isEqualTo("[\n  1, 2,\n  " + number(93) + "\n]\n");
    }

    /** Indent 2, with 24 numbers of two digits and a comma with a blank before all but the first: 2 + 24·2 + 23·2 = 96. */
    @Test
    void numbersStandAsManyToALineAsFit() {
        String row = String.join(", ", Collections.nCopies(24, "77"));

        assertThat(written("[" + String.join(", ", Collections.nCopies(49, "77")) + "]"))
                .isEqualTo("[\n  " + row + ",\n  " + row + ",\n  77\n]\n");
    }

    /** Indent, 94 digits, a comma with its blank and a digit are 99 characters, and a comma may follow. */
    @Test
    void aLineOfNumbersKeepsRoomForItsComma() {
        assertThat(written("[" + number(94) + ", 5, 6]")).isEqualTo("[\n  " + number(94) + ", 5,\n  6\n]\n");
        assertThat(written("[" + number(95) + ", 5, 6]")).isEqualTo("[\n  " + number(95) + ",\n  5, 6\n]\n");
    }

    /** The list is longer than what is left of the line behind its key, though it would fit on a line of its own. */
    @Test
    void aListIsIndentedUnderItsKey() {
        String key = "\"" + "k".repeat(40) + "\"";
        String row = String.join(", ", Collections.nCopies(24, "77"));

        assertThat(written("{ " + key + ": [" + row + "] }"))
                .isEqualTo("{\n  " + key + ": [\n    " + row + "\n  ]\n}\n");
    }

    @Test
    void textsOfALongListHaveALineEach() {
        String text = "\"" + "t".repeat(50) + "\"";

        assertThat(written("[" + text + ", " + text + "]")).isEqualTo("[\n  " + text + ",\n  " + text + "\n]\n");
    }

    /** A hundred characters with brackets, key and blanks: 2 + 5 + 91 + 2. */
    @Test
    void aGroupThatFillsALineStaysOnItAndALongerOneDoesNot() {
        assertThat(written("{ \"a\": " + number(91) + " }")).isEqualTo("{ \"a\": " + number(91) + " }\n");
        assertThat(written("{ \"a\": " + number(92) + " }")).isEqualTo("{\n  \"a\": " + number(92) + "\n}\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{}", "[]", "true", "null", "\"a \\\"b\\\"\"", "[true, null, { \"a\": [] }]"})
    void whatIsShortStandsAsItIs(String json) {
        assertThat(written(json)).isEqualTo(json + "\n");
    }

    @Test
    void aLineThatIsAskedForIsOneLineHoweverLong() {
        String list = "[" + String.join(", ", Collections.nCopies(200, "77")) + "]";

        assertThat(JsonText.line(Defaults.node(list))).isEqualTo(list).hasSizeGreaterThan(700);
    }
}
