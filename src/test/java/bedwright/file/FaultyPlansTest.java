package bedwright.file;

import static bedwright.file.Expected.at;
import static bedwright.file.Expected.file;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Plan files that are at fault: every fault at its place. */
class FaultyPlansTest {
    @ParameterizedTest(name = "{0}")
    @MethodSource({"files", "plantings"})
    void tellsAllFaultsAtTheirPlaces(String name, List<Expected> expected) {
        String file = "faulty-plans/" + name + ".json";

        Expected.assertRefused(file, PlanFile::parse, expected);
    }

    static Stream<Arguments> files() {
        return Stream.of(
                file(
                        "another-version",
                        at("\"version\": ›2", "/version", "in form 2", "reads form 1", "make the plan anew")),
                file("no-season", at("\"season\": ›null", "/season", "group of keys", "null")),
                file("a-season", at("›{\n  \"name\"", "", "This is a season file", "Name the folder of a plan")),
                file("cut-off", at("\"2027-04-19\", \"pool\": 1, \"lots\": ›", "", "ends here", "cut off")),
                file(
                        "season-at-fault",
                        at("›90", "/season/weeks", "between 1 and 80"),
                        at("›\"latitudes\"", "/season/site/latitudes", "Did you mean \"latitude\"?"),
                        at("›\"dasy\"", "/season/crops/0/family", "Did you mean \"daisy\"?")),
                file(
                        "keys",
                        at("›{\n  \"version\"", "/making", "\"making\" is missing"),
                        at("›\"make\"", "/make", "no key \"make\""),
                        at("›\"lot\"", "/plantings/0/lot", "Did you mean \"lots\"?"),
                        at("›{ \"crop\": \"sunflower\", \"method\"", "/plantings/1/number", "\"number\" is missing"),
                        at("3, ›\"number\": 4", "/plantings/2/number", "a second time")),
                file(
                        "types",
                        at("\"seed\": ›-1", "/making/seed", "between 0 and"),
                        at("\"hard\": ›0.5", "/score/hard", "whole number"),
                        at("›\"374063625000\"", "/score/soft", "Take off the quotation marks"),
                        at("\"number\": ›\"1\"", "/plantings/0/number", "Take off the quotation marks")));
    }

    static Stream<Arguments> plantings() {
        return Stream.of(
                file(
                        "references",
                        at("›\"sunflowers\"", "/plantings/0/crop", "Did you mean \"sunflower\"?"),
                        at("›\"sunflowers\"", "/plantings/0/crop", "Entry 1 of the pool", "They must agree"),
                        at("›\"in trays\"", "/plantings/1/method", "no method \"in trays\""),
                        at("›\"Long4\"", "/plantings/1/bed", "Did you mean \"Long1\"?"),
                        at("\"standing\": ›2", "/plantings/2/standing", "no entry 2", "has 1 entry")),
                file(
                        "numbers-twice",
                        at(
                                "›1, \"crop\": \"sunflower\", \"method\": \"in the bed\", \"bed\": \"Long1\","
                                        + " \"sown\": \"2027-05-10\"",
                                "/plantings/1/number",
                                "the number \"1\"")),
                file(
                        "both-and-neither",
                        at("›{ \"number\": 1", "/plantings/0", "both are given"),
                        at("›{ \"number\": 2", "/plantings/1", "neither is given")),
                file(
                        "amounts",
                        at("›400", "/plantings/0/plants", "5 lots of 100 plants are 500"),
                        at("\"lots\": ›8", "/plantings/1/lots", "13 lots", "which has 12"),
                        at("\"plants\": ›90", "/plantings/2/plants", "has 100", "here stand 90")),
                file(
                        "days",
                        at("›\"2027-04-20\"", "/plantings/0/sown", "a Tuesday", "2027-04-19 or 2027-04-26"),
                        at("›\"2028-05-08\"", "/plantings/1/sown", "runs from 2027-03-01 to 2027-12-05"),
                        at("›\"2027-02-31\"", "/plantings/2/sown", "28 days")),
                file(
                        "standing-twice",
                        at("2027-03-01\", \"standing\": ›1", "/plantings/2/standing", "planted twice", "Keep one")),
                file("no-such-lots", at("\"pool\": ›2", "/plantings/0/pool", "no entry 2", "has 1 entry")));
    }

    @Test
    void aPlanIsNoSeason() {
        byte[] plan = Resources.bytes("faulty-plans/amounts.json");

        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> SeasonFile.parse("plan.json", plan))
                .satisfies(e -> assertThat(e.faults())
                        .singleElement()
                        .satisfies(fault ->
                                assertThat(fault.message()).contains("This is a plan", "Name the season file")));
    }
}
