package bedwright.file;

import static bedwright.file.Expected.at;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Frost dates, windbreaks, hands and given seasons that do not hold together. */
class SiteCheckTest {
    private static Edited given(String season) {
        return Edited.page("\"pool\": [", "\"possible\": { \"given\": [ " + season + " ] }, \"pool\": [");
    }

    /** Last frosts of spring from New Year's Day to New Year's Eve. */
    private static Edited frost(String usual) {
        return Edited.page(
                "\"early\": \"04-15\"", "\"early\": \"01-01\"",
                "\"usual\": \"05-01\"", "\"usual\": \"" + usual + "\"",
                "\"late\": \"05-15\"", "\"late\": \"12-31\"");
    }

    /** 2 July is 182 days after New Year's Day, New Year's Eve 182 days after that: the other way round it is 183. */
    @Test
    void frostDatesMayLieHalfAYearApart() {
        assertThat(frost("07-02").faults()).isEmpty();
    }

    @Test
    void aFrostDateMoreThanHalfAYearOnComesBefore() {
        frost("07-03").isToldOf(at("›\"07-03\"", "/site/frost/lastSpring/usual", "before the early one"));
    }

    @Test
    void twoWindbreaksOfOneNameAreTold() {
        String hedge = "{ \"name\": \"hedge\", \"from\": { \"x\": 0, \"y\": 0 }, \"to\": { \"x\": Z, \"y\": 0 },"
                + " \"height\": 2, \"density\": \"solid\" }";

        Edited.page(
                        "\"roles\": [",
                        "\"windbreaks\": [ " + hedge.replace("Z", "3") + ", " + hedge.replace("Z", "5")
                                + " ], \"roles\": [")
                .isToldOf(at("}, { \"name\": ›\"hedge\"", "/windbreaks/1/name", "another windbreak \"hedge\""));
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
            hired   | "hours": 5
            cutting | "hands": 1, "coolHours": 2, "mornings": 3
            chores  | "name": "Watering", "hours": 5
            """)
    void hoursThatEndBeforeTheyBeginAreTold(String list, String what) {
        Edited.page(
                        "\"pool\": [",
                        "\"labour\": { \"" + list + "\": [ { \"from\": \"2027-06-02\", \"to\": \"2027-06-01\", " + what
                                + " } ] }, \"pool\": [")
                .isToldOf(at("\"to\": ›\"2027-06-01\"", "/labour/" + list + "/0/to", "before \"from\", 2027-06-02"));
    }

    @Test
    void aBadSeedBedOfAnotherSeasonIsTold() {
        given("{ \"badSeedBeds\": [ \"2027-12-06\" ] }")
                .isToldOf(at(
                        "›\"2027-12-06\"",
                        "/possible/given/0/badSeedBeds/0",
                        "the season runs from 2027-03-01 to 2027-12-05"));
    }

    /** 40 weeks have 280 days. */
    @Test
    void aGivenSeasonMaySayAllItsDays() {
        assertThat(given("{ \"days\": [ 0" + ", 0".repeat(279) + " ] }").faults())
                .isEmpty();
    }

    @Test
    void aGivenSeasonOfMoreDaysIsTold() {
        given("{ \"days\": [ 0" + ", 0".repeat(280) + " ] }")
                .isToldOf(at(
                        "\"days\": ›[",
                        "/possible/given/0/days",
                        "\"days\" has 281 entries, but the season has only 280 days"));
    }
}
