package bedwright.file;

import static bedwright.file.Expected.at;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures of crops that must come in order, up to the case that both are the same, and names. */
class CropCheckTest {
    private static final String CLOCK = "\"emergence\": 97, \"firstCut\": 850";
    private static final String START = "\"start\": \"sown\",";
    private static final String HEIGHT = "\"height\": 1.4,";

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
            "firstCut": 850 | "pinch": 97, "firstCut": 850
            "firstCut": 850 | "pinch": 850, "firstCut": 850
            "firstCut": 850 | "firstCut": 97
            "height": 1.4,  | "height": 1.4, "harvest": { "stage": "open", "vase": { "least": 7, "most": 7 } },
            "start": "sown" | "start": "sown", "seedTemperature": { "coldest": 15, "warmest": 15 }
            "start": "sown" | "start": "tray", "trayWeeks": 4, "hardeningWeeks": 4
            """)
    void twoThatAreTheSameAreInOrder(String from, String to) {
        assertThat(Edited.page(from, to).faults()).isEmpty();
    }

    @Test
    void dayLengthsThatAreTheSameAreNot() {
        Edited.page(CLOCK, CLOCK + ", \"dayLength\": { \"shortDay\": 12, \"longDay\": 12 }")
                .isToldOf(at("\"longDay\": ›12", "/crops/0/clock/dayLength/longDay", "12 hours, is not longer"));
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
            "vase": { "least": 7, "most": ›6 }                           | vase
            "cold": { "temperature": 2, "days": { "least": 7, "most": ›6 } } | cold/days
            """)
    void daysAtMostAreNoFewerThanAtLeast(String harvest, String path) {
        Edited.page(HEIGHT, HEIGHT + " \"harvest\": { \"stage\": \"open\", " + harvest.replace("›", "") + " },")
                .isToldOf(at(harvest, "/crops/0/harvest/" + path + "/most", "At most 6 days is fewer than at least 7"));
    }

    @Test
    void aRolesNameHoldsNoSlash() {
        Edited.page("\"roles\": [", "\"roles\": [ { \"name\": \"air/light\" },")
                .isToldOf(at("›\"air/light\"", "/roles/0/name", "\"air/light\" holds a slash"));
    }

    @Test
    void twoCropsOfOneNameAreTold() {
        Edited.page(
                        "\"crops\": [",
                        "\"crops\": [ { \"name\": \"sunflower, once-cut\", \"kinds\": [ { \"kind\": \"focal\" } ],"
                                + " \"clock\": { \"base\": 6, \"emergence\": 90, \"firstCut\": 900 }, \"height\": 1,"
                                + " \"methods\": [ { \"name\": \"a\", \"start\": \"sown\", \"rows\": 1, \"spacing\": 0.2,"
                                + " \"cutDays\": 9, \"stems\": 1 } ] },")
                .isToldOf(at(
                        "›\"sunflower, once-cut\",\n      \"family\"",
                        "/crops/1/name",
                        "another crop \"sunflower, once-cut\" before this one"));
    }

    @Test
    void aFigureOfNoKeyIsTold() {
        Edited.page(HEIGHT, HEIGHT + " \"figures\": { \"heihgt\": {} },")
                .isToldOf(at("›\"heihgt\"", "/crops/0/figures/heihgt", "Did you mean \"height\"?"));
    }

    @Test
    void hardeningIsNoLongerThanTheTime() {
        Edited.page(START, "\"start\": \"tray\", \"trayWeeks\": 4, \"hardeningWeeks\": 5,")
                .isToldOf(at(
                        "\"hardeningWeeks\": ›5",
                        "/crops/0/methods/0/hardeningWeeks",
                        "takes 5 weeks, more than the 4"));
    }
}
