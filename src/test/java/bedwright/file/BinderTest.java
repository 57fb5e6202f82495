package bedwright.file;

import static bedwright.file.Expected.at;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What stands in for a value at fault raises no further fault, and how a value is named that is at fault. */
class BinderTest {
    private static final String START = "\"start\": \"sown\",";

    /** What is sown in trays is its plants over this share: a share made up asks for no more cells than can be counted. */
    @Test
    void anEmergenceAtFaultIsToldAlone() {
        Edited.page(START, "\"start\": \"tray\", \"trayWeeks\": 4,", "\"emergence\": 0.85", "\"emergence\": \"good\"")
                .isToldOf(at("›\"good\"", "/crops/0/methods/0/emergence", "a number"));
    }

    @Test
    void aJobAtFaultIsToldAlone() {
        Edited.page(START, START + " \"jobs\": { \"weed\": \"often\" },")
                .isToldOf(at("›\"often\"", "/crops/0/methods/0/jobs/weed", "a group of keys"));
    }

    @Test
    void aFactorOfAGivenSeasonAtFaultIsToldAlone() {
        Edited.page(
                        "\"pool\": [",
                        "\"possible\": { \"given\": [ { \"yields\": { \"sunflower, once-cut\": \"good\" } } ] }, \"pool\": [")
                .isToldOf(at("›\"good\"", "/possible/given/0/yields/sunflower, once-cut", "a number"));
    }

    @Test
    void anEntryThatHasNoNameIsNamedByItsCrop() {
        Edited.page("\"lots\": 12", "\"lot\": 12")
                .isToldOf(at("›\"lot\"", "/pool/0/lot", "in entry 1 of \"pool\" (\"sunflower, once-cut\")"));
    }

    @Test
    void nothingInPlaceOfWhatMustBeGivenCanNotBeLeftOut() {
        assertThat(Edited.page("\"weeks\": 40", "\"weeks\": null").faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.message()).doesNotContain("Leave the key out"));
    }
}
