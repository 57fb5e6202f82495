package bedwright.file;

import static bedwright.file.Expected.at;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sums of a season that can be added up by hand: what is too much is refused with the sum that it comes to. */
class SumsByHandTest {
    private static final String MARKET = "›{\n      \"name\": \"market\"";

    /** Nothing is planted from the pool; the market takes 80 stems at 0.9 in each of 15 weeks, which makes 1,200. */
    private static Edited idle(String keys) {
        return Edited.page("\"lots\": 12", "\"lots\": 0", "\"pool\": [", keys + "\"pool\": [");
    }

    /** 12 lots of 100,000 plants of 10 stems, of which 9 in 10 can be sold: 10,800,000 stems as the figures say. */
    private static Edited manyStems(String keys) {
        return Edited.page(
                "\"plants\": 100",
                "\"plants\": 100000",
                "\"stems\": 1,",
                "\"stems\": 10,",
                "\"pool\": [",
                keys + "\"pool\": [");
    }

    /** 100 posies of 2 stems in one week. */
    private static Edited posies(String price, String spare) {
        return idle("\"recipes\": [ { \"name\": \"posy\", \"lines\": [ { \"kind\": \"focal\", \"stems\": 2, \"price\": "
                + price
                + " } ] } ], \"orders\": [ { \"name\": \"shop\", \"recipe\": \"posy\", \"spare\": " + spare
                + ", \"asks\": [ { \"from\": \"2027-06-21\", \"bouquets\": 100 } ] } ], ");
    }

    /** One lot that is weeded once at 10,000 minutes a metre; nothing else of it takes any time. */
    private static Edited weeded(int plants, int lots) {
        return Edited.page(
                "\"plants\": 100, \"lots\": 12",
                "\"plants\": " + plants + ", \"lots\": " + lots,
                "\"rows\": 5,",
                "\"weedings\": 1, \"rows\": 1,",
                "\"spacing\": 0.15",
                "\"spacing\": 0.5",
                "\"height\": 1.4,",
                "\"height\": 1.4, \"jobs\": { \"prepare\": { \"minutes\": 0 }, \"sow\": { \"minutes\": 0 },"
                        + " \"plant-out\": { \"minutes\": 0 }, \"clear\": { \"minutes\": 0 },"
                        + " \"weed\": { \"minutes\": 10000 } },");
    }

    @Test
    void tenMillionOfMoneyCanJustBeCounted() {
        Edited.page("\"lots\": 12", "\"lots\": 0", "\"to\": \"2027-09-27\", \"stems\": 80", "\"stems\": 1000")
                .with("\"price\": 0.9", "\"price\": 10000")
                .isToldOf();
    }

    @Test
    void aLittleMoreThanTenMillionOfMoneyCanNot() {
        Edited.page("\"lots\": 12", "\"lots\": 0", "\"to\": \"2027-09-27\", \"stems\": 80", "\"stems\": 1000")
                .with("\"price\": 0.9", "\"price\": 10000.01")
                .isToldOf(at(MARKET, "/outlets/0", "could come to 10000000", "\"market\" pays"));
    }

    /** 4 hours in each of 15 weeks; 5 in each of 40; 30 minutes for each 100 of 6,000,000 stems, cut or cleared. */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
            "stems": 80 } ] | "stems": 80 } ], "service": 240 | 200000 | ``                                                | 12000000
            "weeks": 40     | "weeks": 40  | 100000 | , "chores": [ { "name": "Watering", "hours": 5 } ] | 20000000
            { "name": "focal", | { "name": "focal", "cutting": 30, "clearing": 10, | 1000 | }, "standing": [ { "crop": "sunflower, once-cut", "plants": 1, "bed": "Long1", "stems": [ { "week": "2027-06-21", "stems": 6000000 } ] } ], "rotation": { | 30000000
            { "name": "focal", | { "name": "focal", "cutting": 10, "clearing": 30, | 1000 | }, "standing": [ { "crop": "sunflower, once-cut", "plants": 1, "bed": "Long1", "stems": [ { "week": "2027-06-21", "stems": 6000000 } ] } ], "rotation": { | 30000000
            """)
    void hoursOfServingOfChoresAndOfCuttingAreWorthMoney(
            String from, String to, String rate, String more, String worth) {
        idle("\"labour\": { \"ownRate\": " + rate + more + " }, ")
                .with(from, to)
                .isToldOf(at(
                        "\"ownRate\": ›" + rate, "/labour/ownRate", "of which " + worth + " is what hours are worth"));
    }

    @Test
    void whereHiredHoursCostAsMuchOnesOwnAreNamed() {
        idle("\"labour\": { \"ownRate\": 1e6, \"hiredRate\": 1e6, \"chores\": [ { \"name\": \"Watering\", \"hours\": 5"
                        + " } ] }, ")
                .isToldOf(at("\"ownRate\": ›1e6", "/labour/ownRate", "what hours are worth"));
    }

    /** 1,200 plants on 600 m are weeded in 100,000 hours, eleven such plantings in 1,100,000. */
    @Test
    void workOfAllPlantingsAddsUp() {
        weeded(1200, 11)
                .isToldOf(at("›{\n  \"name\": \"A season", "/labour", "Work could come to 1100000 hours a season"));
    }

    @Test
    void aPlantingOfAHundredThousandHoursIsAllowed() {
        weeded(1200, 1).isToldOf();
    }

    @Test
    void aPlantingOfMoreHoursIsRefused() {
        weeded(1201, 1)
                .isToldOf(at("\"plants\": ›1201", "/pool/0/plants", "One such planting could take 100000 hours"));
    }

    @Test
    void howMuchALotThatThereIsNoneOfWouldTakeDoesNotMatter() {
        weeded(1201, 0).isToldOf();
    }

    /** Six standard deviations of 0.2 are e to the 1.2: 3.32 times the stems. A given season may bring three times as many. */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
            ``                                                                                     | 36000000
            "possible": { "given": [ { "yields": { "sunflower, once-cut": 3 } }, { "name": "poor" } ] }, | 32000000
            """)
    void stemsAreThoseOfTheLuckiestPossibleSeason(String possible, String stems) {
        manyStems(possible).isToldOf(at("\"pool\": ›[", "/pool", "Cutting could come to " + stems + " stems a season"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"doubt\": { \"stems\": { \"sure\": 0, \"fair\": 0, \"weak\": 0 } }",
                "\"given\": [ { \"name\": \"as usual\" } ]"
            })
    void withoutLuckOnlyThoseThatTheFiguresSay(String possible) {
        manyStems("\"possible\": { " + possible + " }, ").isToldOf();
    }

    @Test
    void plantsThatStandCostMoneyToo() {
        idle("\"standing\": [ { \"crop\": \"sunflower, once-cut\", \"plants\": 100000 } ], ")
                .with("\"price\": 0.06", "\"price\": 1000")
                .isToldOf(at(
                        "\"standing\": [ ›{",
                        "/standing/0",
                        "could come to 100000000",
                        "what plantings of \"sunflower, once-cut\" cost"));
    }

    @Test
    void stemsWrittenOutOfAllWeeksAddUp() {
        idle("\"standing\": [ { \"crop\": \"sunflower, once-cut\", \"plants\": 1, \"bed\": \"Long1\", \"stems\": ["
                        + " { \"week\": \"2027-06-21\", \"stems\": 1e7 }, { \"week\": \"2027-06-28\", \"stems\": 1e7 },"
                        + " { \"week\": \"2027-07-05\", \"stems\": 1e7 } ] } ], ")
                .isToldOf(at("\"pool\": ›[", "/pool", "Cutting could come to 30000000 stems"));
    }

    @Test
    void aWeekMayAskForTwentyMillionStems() {
        asking("").isToldOf();
    }

    @Test
    void aWeekMayAskForNoMore() {
        asking(", { \"from\": \"2027-06-21\", \"stems\": 0.5 }")
                .isToldOf(at("\"asks\": ›[", "/outlets/0/asks", "\"market\" could come to 20000000 stems in one week"));
    }

    private static Edited asking(String more) {
        return idle("").with("\"price\": 0.9", "\"price\": 0")
                .with(
                        "{ \"from\": \"2027-06-21\", \"to\": \"2027-09-27\", \"stems\": 80 }",
                        "{ \"from\": \"2027-06-21\", \"stems\": 1e7 }, { \"from\": \"2027-06-21\", \"stems\": 1e7 }"
                                + more);
    }

    /** 1,200 stems: at 0.9 and 10,000 lost for each that is missing; at 3,000 and three times that lost. */
    @ParameterizedTest
    @CsvSource({"0.9, shortage, 10000, 12000000", "3000, , , 14000000"})
    void whatIsLostOnMissingStemsCounts(String price, String key, String lost, String sum) {
        String promise = key == null ? "{}" : "{ \"" + key + "\": " + lost + " }";

        idle("").with("\"price\": 0.9", "\"price\": " + price + ", \"promise\": " + promise)
                .isToldOf(at(MARKET, "/outlets/0", "of which " + sum + " is what \"market\" pays, and loses"));
    }

    /** 3,600,000 of takings; nothing is paid for what is missing. */
    @Test
    void stemsThatMustBeOursLoseNoMoney() {
        idle("").with("\"price\": 0.9", "\"price\": 3000, \"promise\": { \"must\": 5 }")
                .isToldOf();
    }

    /** 200 stems at 40,000. */
    @Test
    void anOrderCountsForItsStems() {
        posies("40000", "0").isToldOf();
    }

    /** As many again to be safe: 400 stems at 40,000. */
    @Test
    void spareStemsOfAnOrderCount() {
        posies("40000", "1").isToldOf(at("\"orders\": [ ›{", "/orders/0", "of which 16000000 is what \"shop\" pays"));
    }

    @Test
    void anOrderCountsByItsOwnRecipe() {
        posies("90000", "0")
                .with(
                        "\"recipes\": [",
                        "\"recipes\": [ { \"name\": \"cheap\", \"lines\": [ { \"kind\": \"focal\", \"stems\": 1,"
                                + " \"price\": 1 } ] },")
                .isToldOf(at("\"orders\": [ ›{", "/orders/0", "of which 18000000 is what \"shop\" pays"));
    }

    /** 100,000 posies of 1,000 stems. */
    @Test
    void anOrderMayAskForTooManyStemsInAWeek() {
        posies("0", "0")
                .with("\"bouquets\": 100 ", "\"bouquets\": 100000 ", "\"stems\": 2,", "\"stems\": 1000,")
                .isToldOf(at(
                        "\"asks\": ›[ { \"from\": \"2027-06-21\", \"bouquets\"",
                        "/orders/0/asks",
                        "\"shop\" could come to 100000000 stems in one week"));
    }
}
