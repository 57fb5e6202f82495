package bedwright.file;

import static bedwright.file.Expected.at;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What stands already and can't be so. The season runs from 2027-05-10 to 2027-07-18; the open bed has 12 m, of which
 * 300 dill take 10.8 and 240 sunflowers 12.
 */
class StandingFaultsTest {
    private static final String STEMS = "\"stems\": [{\"week\": \"2027-05-17\", \"stems\": 5}]";

    private static String planting(String crop, int plants, String more) {
        return "{\"crop\": \"" + crop + "\", \"plants\": " + plants + ", \"bed\": \"Open bed\", " + more + "}";
    }

    private static Edited standing(String... plantings) {
        return Edited.firstBed(
                "\"outlets\": [", "\"standing\": [" + String.join(", ", plantings) + "], \"outlets\": [");
    }

    private static String clock(String on) {
        return "\"method\": \"sown\", \"clock\": {\"on\": \"" + on + "\", \"degreeDays\": 100}";
    }

    @Test
    void stemsOfAKindThatThereIsNotAreTold() {
        standing(planting("dill", 10, STEMS.replace("\"stems\": 5", "\"kind\": \"fillr\", \"stems\": 5")))
                .isToldOf(at("›\"fillr\"", "/standing/0/stems/0/kind", "no kind of stems", "Did you mean \"filler\"?"));
    }

    @Test
    void writtenStemsAndAClockExcludeOneAnother() {
        standing(planting("dill", 10, STEMS + ", \"clock\": {\"on\": \"2027-05-01\", \"degreeDays\": 100}"))
                .isToldOf(at(
                        "\"clock\": ›{\"on\"",
                        "/standing/0/clock",
                        "not computed from a clock",
                        "Leave \"clock\" out, or \"stems\""));
    }

    /** Four hundred days before 10 May 2027 it is 5 April 2026. */
    @Test
    void aClockReadTooLongAgoIsTold() {
        standing(planting("dill", 10, clock("2026-04-05"))).isToldOf();
        standing(planting("dill", 10, clock("2026-04-04")))
                .isToldOf(at("›\"2026-04-04\"", "/standing/0/clock/on", "more than 400 days before the season starts"));
    }

    @Test
    void aClockReadAfterTheSeasonIsTold() {
        standing(planting("dill", 10, clock("2027-07-18"))).isToldOf();
        standing(planting("dill", 10, clock("2027-07-19")))
                .isToldOf(at("›\"2027-07-19\"", "/standing/0/clock/on", "from 2027-05-10 to 2027-07-18"));
    }

    @Test
    void whatFillsItsBedIsReadAndTheNextOneIsToldOnce() {
        standing(planting("sunflower, once-cut", 240, STEMS)).isToldOf();
        standing(planting("sunflower, once-cut", 240, STEMS), planting("dill", 10, STEMS), planting("dill", 20, STEMS))
                .isToldOf(at(
                        "\"dill\", \"plants\": ›10,",
                        "/standing/1/plants",
                        "0.36 m of this one stand in \"Open bed\", beside 12 m of \"sunflower, once-cut\": together 12.36 m",
                        "the bed has 12 m"));
    }

    @Test
    void whatAloneIsTooMuchStandsBesideNothing() {
        standing(planting("dill", 350, STEMS))
                .isToldOf(at(
                        "›350",
                        "/standing/0/plants",
                        "12.6 m of this one stand in \"Open bed\", but the bed has 12 m"));
    }

    /** Beside 10.8 m of dill that stand there when the season begins. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"method\": \"sown\", \"clock\": {\"on\": \"2027-05-10\", \"degreeDays\": 100}",
                "\"method\": \"tray\", \"sown\": \"2027-05-03\"",
                "\"method\": \"tray\", \"sown\": \"2027-04-26\"",
                "\"method\": \"sown\", \"sown\": \"2027-05-10\""
            })
    void whatComesIntoItsBedDuringTheSeasonNeedsNoRoomAtItsBeginning(String start) {
        standing(planting("dill", 300, STEMS), planting("sunflower, once-cut", 200, start))
                .isToldOf();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"method\": \"sown\", \"clock\": {\"on\": \"2027-05-09\", \"degreeDays\": 100}",
                "\"method\": \"tray\", \"sown\": \"2027-04-19\"",
                "\"method\": \"sown\", \"sown\": \"2027-05-03\""
            })
    void whatIsInItsBedBeforeTheSeasonNeedsRoomAtItsBeginning(String start) {
        standing(planting("dill", 300, STEMS), planting("sunflower, once-cut", 200, start))
                .isToldOf(
                        at("\"plants\": ›200", "/standing/1/plants", "10 m of this one", "beside 10.8 m of \"dill\""));
    }

    @ParameterizedTest
    @ValueSource(ints = {10, 400})
    void whatWasSownByNoMethodTakesNobodyKnowsHowMuchRoom(int plants) {
        standing(planting("dill", plants, "\"sown\": \"2027-05-03\""))
                .isToldOf(at("›\"2027-05-03\"", "/standing/0/sown", "its method is not given", "Add \"method\""));
    }
}
