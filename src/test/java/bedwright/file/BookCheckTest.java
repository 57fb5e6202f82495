package bedwright.file;

import static bedwright.file.Expected.at;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Crop books whose values are right one by one but don't hold together. */
class BookCheckTest {
    private static final String FILE = "book/small.json";

    private static String text() {
        return new String(Resources.bytes(FILE), UTF_8);
    }

    @Test
    void aSoundBookIsRead() {
        assertThat(CropBookFile.parse(FILE, Resources.bytes(FILE)).names())
                .containsExactly("marigold", "sweet william");
    }

    @ParameterizedTest(name = "{0} for {1}")
    @MethodSource({"names", "evidence"})
    void tellsWhatDoesNotHoldTogetherWhereItStands(String from, String to, Expected expected) {
        assertThat(text()).containsOnlyOnce(from);
        String edited = text().replace(from, to);

        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> CropBookFile.parse(FILE, edited.getBytes(UTF_8)))
                .satisfies(e -> Expected.assertAll(FILE, edited, e.faults(), List.of(expected)));
    }

    @Test
    void stemsOfWhichNobodySaysWhereTheyComeFromAreToldForEachMethod() {
        String edited = text().replace("\"of\": [\"stems\"]", "\"of\": [\"rows\"]");

        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> CropBookFile.parse(FILE, edited.getBytes(UTF_8)))
                .satisfies(e -> assertThat(e.faults())
                        .extracting(Fault::message)
                        .satisfiesExactly(
                                fault -> assertThat(fault).contains("\"stems\" of the method \"sown\""),
                                fault -> assertThat(fault).contains("\"stems\" of the method \"tray, pinched\"")));
    }

    static Stream<Arguments> names() {
        return Stream.of(
                Arguments.of(
                        "\"name\": \"sweet william\",",
                        "\"name\": \"marigold\", ",
                        at("›\"marigold\", ", "/crops/1/crop/name", "another crop \"marigold\"", "another")),
                Arguments.of(
                        "\"name\": \"pinks\"",
                        "\"name\": \"daisies\"",
                        at("›\"daisies\", \"restYears\": 2", "/families/1/name", "another family \"daisies\"")),
                Arguments.of(
                        "\"known\": \"memory\" }",
                        "\"known\": \"memory\" }, { \"name\": \"Talk\", \"title\": \"Another\", \"known\": \"text\" }",
                        at("›\"Talk\", \"title\": \"Another", "/sources/2/name", "another source \"Talk\"")),
                Arguments.of(
                        "\"family\": \"daisies\"",
                        "\"family\": \"dasies\"",
                        at("›\"dasies\"", "/crops/0/crop/family", "no family \"dasies\"", "Did you mean \"daisies\"?")),
                Arguments.of(
                        "\"height\": 0.6,",
                        "\"height\": 0.6, \"figures\": { \"height\": { \"sure\": \"sure\" } },",
                        at("›{\n        \"name\": \"marigold\"", "/crops/0/crop", "as \"evidence\" beside the crop")),
                Arguments.of(
                        "\"stems\": 8 }",
                        "\"stems\": 8, \"figures\": { \"stems\": { \"sure\": \"sure\" } } }",
                        at("›{\n        \"name\": \"sweet", "/crops/1/crop", "as \"evidence\" beside the crop")));
    }

    static Stream<Arguments> evidence() {
        return Stream.of(
                Arguments.of(
                        "\"height\", \"stage\"",
                        "\"height\", \"heigth\", \"stage\"",
                        at("›\"heigth\"", "/crops/0/evidence/1/of/2", "no key \"heigth\" of crops or methods")),
                Arguments.of(
                        "[\"tender\",",
                        "[\"tendre\", \"tender\",",
                        at("›\"tendre\"", "/usual/0/of/0", "no key \"tendre\"", "Did you mean \"tender\"?")),
                Arguments.of(
                        "[\"sown\"]",
                        "[\"sown\", \"trays\"]",
                        at("›\"trays\"", "/crops/0/evidence/5/methods/1", "no method \"trays\" here", "\"sown\"")),
                Arguments.of(
                        "\"Trial, table 1\"",
                        "\"Talk, table 1\"",
                        at(
                                "›\"Talk, table 1\"",
                                "/crops/0/evidence/0/source",
                                "called published",
                                "\"sources\" that was seen")),
                Arguments.of(
                        "\"Trial, table 2\"",
                        "\"A trial, table 2\"",
                        at(
                                "›\"A trial, table 2\"",
                                "/crops/0/evidence/6/source",
                                "called published",
                                "\"A trial, table 2\"")),
                Arguments.of(
                        "\"Talk of the year\"",
                        "\"The talk of the year\"",
                        at(
                                "›\"The talk of the year\"",
                                "/crops/0/evidence/1/source",
                                "called a memory",
                                "of what it is a memory")),
                Arguments.of(
                        "\"practice\", \"source\": \"usual beds\"",
                        "\"own\", \"source\": \"usual beds\"",
                        at("›\"own\"", "/crops/0/evidence/2/from", "nobody's \"own\"")),
                // What the crop's own emergence rests on says nothing of its methods'.
                Arguments.of(
                        "\"methods\": [\"sown\", \"tray, pinched\"]",
                        "\"methods\": [\"sown\"]",
                        at(
                                "\"evidence\": ›[\n        { \"of\": [\"base\"",
                                "/crops/0/evidence",
                                "Nothing says where \"emergence\" of the method \"tray, pinched\" of \"marigold\"")),
                Arguments.of(
                        "\"of\": [\"stems\"], \"methods\": [\"tray, pinched\"]",
                        "\"of\": [\"rows\"], \"methods\": [\"tray, pinched\"]",
                        at(
                                "\"evidence\": ›[\n        { \"of\": [\"base\"",
                                "/crops/0/evidence",
                                "Nothing says where \"stems\" of the method \"tray, pinched\" of \"marigold\"")),
                Arguments.of(
                        "\"height\", \"stage\"",
                        "\"height\"",
                        at(
                                "\"evidence\": ›[\n        { \"of\": [\"base\"",
                                "/crops/0/evidence",
                                "Nothing says where \"stage\" of the crop of \"marigold\"")));
    }
}
