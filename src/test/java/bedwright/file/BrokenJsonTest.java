package bedwright.file;

import static bedwright.file.Expected.at;
import static bedwright.file.Expected.file;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Files that are no JSON, or not whole: the first such fault, and those of what could be read. */
class BrokenJsonTest {
    @ParameterizedTest(name = "{0}")
    @MethodSource({"files", "numbers", "marks", "texts"})
    void saysWhereItBreaksAndWhy(String name, List<Expected> expected) {
        String file = "faulty/" + name + ".json";

        Expected.assertRefused(file, SeasonFile::parse, expected);
    }

    static Stream<Arguments> files() {
        return Stream.of(
                file(
                        "cut-off",
                        at("›95", "/site/latitude", "between -65 and 65"),
                        at("›\"spac", "", "ends within the text", "cut off")),
                file(
                        "cut-off-in-list",
                        at("7.5,›", "", "the [ of line 9, column 16", "2 brackets around it", "cut off")),
                file(
                        "missing-comma",
                        at("›\"48.5\"", "/site/latitude", "Take off the quotation marks"),
                        at("2 ›\"length\"", "", "A comma is missing before this")),
                file("missing-colon", at("\"weeks\" ›40", "", "A colon is missing")),
                file("comma-too-many", at("2›, }", "", "After this comma nothing follows but }")),
                file("single-quotes", at("{ ›'name'", "", "straight and double")),
                file("curly-quotes", at("›“Long”", "", "straight and double")),
                file("decimal-comma", at("0,›9", "", "1.5, not 1,5")),
                file("comment", at("›// till", "", "no remarks", "about")),
                file("wrong-bracket", at("{ \"name\": \"dahlia\" } ›}", "", "the [ of line 26", "Put ]")),
                file("unclosed-text", at("›\"market,", "", "no closing quotation mark")),
                file("bare-word", at("›daisy,", "", "without quotation marks", "\"daisy\"")),
                file("written-number", at("›040", "", "zeros in front")),
                file("big-letters", at("›True", "", "small letters")),
                file("backslash", at("farm ›\\", "", "Write it twice")),
                file("two-groups", at("›{ \"name\": \"another\" }", "", "behind the end")),
                file("empty", new Expected("›\n", "", List.of("The file is empty"))));
    }

    static Stream<Arguments> numbers() {
        return Stream.of(
                file("nan", at("›NaN", "", "none of true, false or null", "or a number")),
                file("infinity", at("›-Infinity", "", "not written as numbers are", "0.5, 12 or -3.25")),
                file("plus-sign", at("›+48.5", "", "a plus sign")),
                file("point-in-front", at("\"price\": ›.9", "", "The number .9", "as in 0.5")),
                file("point-at-the-end", at("\"latitude\": ›48.", "", "The number 48.", "as in 0.5")),
                // Nothing is said of the 0 weeks that a reader takes from it.
                file("hexadecimal", at("›0x28", "", "The number 0x28", "digits with a point")),
                file("half-an-exponent", at("›9e,", "", "The number 9e")),
                file("minus-alone", at("›- 0.9", "", "The number -")),
                file("thousands", at("\"bench\": 2 ›000", "", "comma is missing", "without blanks: 2000")),
                file("unit-behind", at("\"length\": 30 ›m", "", "comma is missing", "without a unit")));
    }

    static Stream<Arguments> marks() {
        return Stream.of(
                file("key-without-quotes", at("›latitude: 48.5", "", "key in quotation marks")),
                file("equals-sign", at("\"weeks\" ›= 40", "", "colon is missing", "\"key\": value")),
                file("semicolon", at("›48.5;", "", "The number 48.5; is not written")),
                file("two-commas", at("48.5,›,", "", "a comma where a key was expected", "Take it away")),
                file("comma-in-front", at("[›, \"seedlings\"]", "", "a comma where a value was expected")),
                file("block-remark", at("›/* long */", "", "no remarks")),
                file("hash-remark", at("›# long", "", "no remarks")),
                file(
                        "bracket-missing",
                        at("\"seedlings\", ›\"pressure\"", "/pests/0/takes/1", "\"seed\", \"seedlings\" or \"blooms\""),
                        at("\"pressure\"›:", "", "the end of the list was expected")),
                file("brackets-crossed", at("[\"seedlings\"›}", "", "the [ of line 19, column 33", "Put ]")));
    }

    static Stream<Arguments> texts() {
        return Stream.of(
                file("tab-in-a-text", at("invented›\tfarm", "", "a tab", "Write a space")),
                file("no-such-escape", at("invented ›\\x66arm", "", "A single \\", "Write it twice")),
                file("half-an-escape", at("\\u00›g1", "", "four digits", "\\u00e9")),
                file("only-blanks", new Expected("›\n  ", "", List.of("The file is empty"))),
                file("only-null", at("›null", "", "one group of keys", "here stands null")),
                file("only-a-text", at("›\"An invented farm\"", "", "one group of keys", "the text")),
                file("a-web-page", at("›<!DOCTYPE", "", "a page of the web", "the right file")),
                file("a-table", at("›bed,length", "", "one group { … }", "the right file")));
    }

    @ParameterizedTest
    @CsvSource({
        "utf16-without-mark,    1,  2, UTF-16",
        "utf8-cut-in-a-letter,  3, 31, byte C3",
        "overlong-letter,       3, 29, byte C0",
        "nul-bytes,             7,  3, damaged"
    })
    void saysWhereBytesAreNoText(String name, int line, int column, String words) {
        assertThat(faulty(Resources.bytes("faulty/" + name + ".json")).faults())
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.place()).isEqualTo(new Place(line, column));
                    assertThat(fault.message()).contains(words);
                });
    }

    @Test
    void refusesTenThousandBracketsWithinOneAnother() {
        byte[] deep = ("{\"beds\": " + "[".repeat(10_000) + "]".repeat(10_000) + "}").getBytes(StandardCharsets.UTF_8);

        assertThat(faulty(deep).faults()).anySatisfy(fault -> {
            assertThat(fault.place()).isEqualTo(new Place(1, 1 + "{\"beds\": ".length() + 99));
            assertThat(fault.message()).contains("more than 100 deep", "Take some away");
        });
    }

    @Test
    void refusesBracketsMoreThanAHundredDeep() {
        FaultyFile faulty = faulty(Resources.bytes("faulty/too-deep.json"));

        assertThat(faulty.faults()).singleElement().satisfies(fault -> {
            // The list of a role's kinds is the 4th bracket, and each kind with its list opens two more: the 100th is
            // the
            // 48th list below, and the kind in it would be the 101st.
            assertThat(fault.path()).isEqualTo("/roles/0/kinds" + "/0/kinds".repeat(48) + "/0");
            assertThat(fault.message()).contains("more than 100 deep");
        });
    }

    @Test
    void saysWhichByteIsNoUtf8() {
        FaultyFile faulty = faulty(Resources.bytes("faulty/not-utf8.json"));

        assertThat(faulty.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.place()).isEqualTo(new Place(3, 1 + "  \"about\": \"An invented farm in a caf".length()));
            assertThat(fault.message()).contains("byte E9", "UTF-8");
        });
    }

    @Test
    void knowsUtf16() {
        assertThat(faulty(Resources.bytes("faulty/utf16.json")).faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.message()).contains("UTF-16", "Save the file as UTF-8"));
    }

    @Test
    void toleratesAByteOrderMark() {
        byte[] page = Resources.bytes("page.json");
        byte[] marked = new byte[page.length + 3];
        marked[0] = (byte) 0xEF;
        marked[1] = (byte) 0xBB;
        marked[2] = (byte) 0xBF;
        System.arraycopy(page, 0, marked, 3, page.length);

        assertThat(SeasonFile.parse("marked", marked)).isEqualTo(Resources.season("page.json"));
    }

    @Test
    void countsColumnsInCharactersBehindTheByteOrderMark() {
        FaultyFile faulty = faulty("\uFEFF{ \"näm🌻e\": 1, \"weeks\": x }".getBytes(StandardCharsets.UTF_8));

        assertThat(faulty.faults().get(faulty.faults().size() - 1).place())
                .isEqualTo(new Place(1, 1 + "{ \"näm..e\": 1, \"weeks\": ".length() - 1));
    }

    @ParameterizedTest(name = "line ends {index}")
    @MethodSource("lineEnds")
    void countsLinesWhateverEndsThem(String end) {
        FaultyFile faulty = faulty(String.join(end, "{", "  \"name\": 1,", "}").getBytes(StandardCharsets.UTF_8));

        // The comma before the bracket is the last fault.
        assertThat(faulty.faults().get(faulty.faults().size() - 1).place()).isEqualTo(new Place(2, 12));
    }

    static Stream<String> lineEnds() {
        return Stream.of("\n", "\r\n", "\r");
    }

    @Test
    void doesNotReadWhatIsTooLarge() {
        byte[] large = new byte[JsonTree.LARGEST + 1];

        assertThat(faulty(large).faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.message()).contains("more than 64 MB"));
    }

    @Test
    void doesNotReadWhatHoldsTooManyValues() {
        byte[] many = ("[" + "0,".repeat(2_100_000) + "0]").getBytes(StandardCharsets.UTF_8);

        assertThat(faulty(many).faults())
                .anySatisfy(fault -> assertThat(fault.message()).contains("more than 2000000 values"));
    }

    private static FaultyFile faulty(byte[] bytes) {
        try {
            SeasonFile.parse("file", bytes);
        } catch (FaultyFile e) {
            return e;
        }
        throw new AssertionError("read without a fault");
    }
}
