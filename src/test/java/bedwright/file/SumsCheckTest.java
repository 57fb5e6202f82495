package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is too large to be counted exactly is refused where it stands. */
class SumsCheckTest {
    private static List<Fault> faults(String... replaced) {
        return Edited.firstBed(replaced).faults();
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
            "price": 0.08  | "price": 1e9      | /pool/0           | what plantings of "sunflower, once-cut" cost
            "ownRate": 10  | "ownRate": 1e300  | /labour/ownRate   | what hours are worth
            "hiredRate": 18| "hiredRate": 1e7  | /labour/hiredRate | what hours are worth
            "wear": 0.2    | "wear": 1e7       | /pool/1           | what plantings of "sunflower, branching" cost
            "price": 1.2   | "price": 1e308    | /outlets/0        | what "Stall, focal" pays
            "price": 1.3   | "price": 1e6      | /orders/0         | what "Porch bouquets" pays
            "buyIn": 1.6   | "buyIn": 1e6      | /orders/0         | and loses where stems are missing
            "stock": {     | "rotation": {"followOn": 1e6}, "stock": {  | /rotation | what breaking the rotation costs
            "stock": {     | "changes": {"week": 1e6}, "stock": {       | /changes  | what changes of the plan cost
            "stock": {     | "changes": {"method": 1e6}, "stock": {     | /changes  | what changes of the plan cost
            "stock": {     | "changes": {"pulled": 1e6}, "stock": {     | /changes  | what changes of the plan cost
            "stock": {     | "changes": {"leftOut": 1e6}, "stock": {    | /changes  | what changes of the plan cost
            "stock": {     | "changes": {"putIn": 1e6}, "stock": {      | /changes  | what changes of the plan cost
            "stock": {     | "standing": [{"crop": "dill", "plants": 100000}], "rotation": {"restBroken": 1e7}, "stock": { | /rotation | rotation
            """)
    void moneyBeyondExactSumsIsRefusedAtItsLargestPart(String from, String to, String path, String what) {
        assertThat(faults(from, to)).singleElement().satisfies(fault -> {
            assertThat(fault.path()).isEqualTo(path);
            assertThat(fault.message())
                    .contains(what, "no more than 10000000 can be counted exactly", "\"currency\": {\"digits\": 0}");
        });
    }

    @Test
    void aCurrencyWithoutSmallCoinsHasRoomForMore() {
        String coarse = "\"currency\": {\"sign\": \"k\", \"digits\": 0}, \"stock\": {";

        assertThat(faults("\"price\": 1.2", "\"price\": 1e6", "\"stock\": {", coarse))
                .isEmpty();
        assertThat(faults("\"price\": 1.2", "\"price\": 1e9", "\"stock\": {", coarse))
                .singleElement()
                .satisfies(fault ->
                        assertThat(fault.message()).contains("1000000000").doesNotContain("\"digits\""));
    }

    @Test
    void priceOfWhatNobodyAsksForDoesNotMatter() {
        assertThat(faults("\"price\": 1.2", "\"price\": 1e308", "\"stems\": 90}", "\"stems\": 0}"))
                .isEmpty();
        assertThat(faults("\"price\": 0.08", "\"price\": 1e308", "\"lots\": 5", "\"lots\": 0"))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
            "plants": 60,     | "plants": 1000000,  | "lots": 5 | "lots": 10000 | /pool        | Bed, in all, could come to
            "emergence": 0.9, | "emergence": 1e-9,  | "lots": 5 | "lots": 5     | /pool        | Trays could come to
            "stems": 7,       | "stems": 1000,      | "plants": 36 | "plants": 100000 | /pool  | Cutting could come to
            "stems": 90       | "stems": 9000000    | "asks": [ | "asks": [{"from": "2027-06-14", "to": "2027-06-14", "stems": 1e7}, {"from": "2027-06-14", "to": "2027-06-14", "stems": 1e7}, | /outlets/0/asks | "Stall, focal" could come to
            """)
    void otherSumsTooLargeAreRefused(String from, String to, String too, String by, String path, String what) {
        assertThat(faults(from, to, too, by)).anySatisfy(fault -> {
            assertThat(fault.path()).isEqualTo(path);
            assertThat(fault.message()).contains(what, "can be counted", "Mend what is too large");
        });
    }

    /** 100,000 bouquets in each of three weeks at 1,000 minutes each. */
    @Test
    void workOfASeasonTooLargeIsRefused() {
        assertThat(faults("\"making\": 4", "\"making\": 1000", "\"bouquets\": 15", "\"bouquets\": 100000"))
                .anySatisfy(fault -> {
                    assertThat(fault.path()).isEqualTo("/labour");
                    assertThat(fault.message())
                            .contains("Work could come to 5000000 hours a season", "no more than 1000000");
                });
    }

    @Test
    void onePlantingThatTakesALifetimeIsRefused() {
        assertThat(faults(
                        "\"stock\": {",
                        "\"rotation\": {}, \"stock\": {",
                        "\"ownRate\": 10",
                        "\"ownRate\": 0, \"jobs\": {\"weed\": {\"minutes\": 10000}}",
                        "\"plants\": 75",
                        "\"plants\": 100000"))
                .anySatisfy(fault -> {
                    assertThat(fault.path()).isEqualTo("/pool/2/plants");
                    assertThat(fault.message()).contains("One such planting could take", "hours", "fewer plants");
                });
    }
}
