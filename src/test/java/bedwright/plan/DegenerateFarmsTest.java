package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Currency;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Farms at the edge of sense: a search runs on each, and the outcome says what can't be helped. */
class DegenerateFarmsTest {
    private static Outcome planned(PlanFacts facts) {
        Search.Found found = new Search(facts, new Search.Limits(1, null, 300L)).run(Search.nothingPlaced(facts));
        return Outcomes.of(facts, found.places());
    }

    @Test
    void whereNobodyTakesStemsNothingIsPlanted() {
        Outcome outcome = planned(new HandSeason()
                .with("\"height\": 1,", "\"height\": 1, \"price\": 0.25,")
                .facts());

        assertThat(outcome.plantings()).isEmpty();
        assertThat(outcome.score().soft()).isZero();
    }

    @Test
    void anEmptyPoolGivesAnEmptyPlan() {
        HandSeason season = new HandSeason()
                .outlet(2, 4, "{\"must\": 1}")
                .with("\"pool\": [{\"crop\": \"zinnia\", \"plants\": 10, \"lots\": 9}]", "\"pool\": []");

        Outcome outcome = planned(season.facts());

        assertThat(outcome.plantings()).isEmpty();
        assertThat(outcome.score().medium()).isEqualTo(-400);
    }

    @Test
    void aFarmWithoutHoursNamesEveryWeekThatTakesSome() {
        HandSeason season = new HandSeason()
                .outlet(2, 4, "")
                .with(
                        "\"labour\": {",
                        "\"labour\": {\"own\": [{\"hours\": 0}], \"chores\": [{\"name\": \"Watering\", \"hours\": 1}],");

        Outcome outcome = planned(season.facts());

        assertThat(outcome.broken()).hasSize(10).allSatisfy(broken -> {
            assertThat(broken.rule()).isEqualTo(Rule.HOURS.sentence());
            assertThat(broken.by()).isEqualTo(1.0);
        });
    }

    /** Ten metres are to be sown on a bed of four; what stands there already without room is a fault of the file. */
    @Test
    void whatIsDecidedWithoutRoomIsNamedWithItsBed() {
        HandSeason season = new HandSeason()
                .with("\"length\": 100", "\"length\": 4")
                .with(
                        "\"outlets\": []",
                        "\"outlets\": [], \"standing\": [{\"crop\": \"zinnia\", \"plants\": 10, \"method\": \"plain\","
                                + " \"bed\": \"Bed\", \"sown\": \"2027-03-01\"}]");

        Outcome outcome = planned(season.facts());

        assertThat(outcome.broken()).isNotEmpty().allSatisfy(broken -> {
            assertThat(broken.rule()).isEqualTo(Rule.BED_ROOM.sentence());
            assertThat(broken.where()).isEqualTo("Bed");
            assertThat(broken.by()).isEqualTo(6.0);
            assertThat(broken.unit()).isEqualTo("m");
        });
    }

    @Test
    void aBedThatIsTooShortForAnyLotStaysEmpty() {
        Outcome outcome = planned(new HandSeason()
                .outlet(2, 4, "")
                .with("\"length\": 100", "\"length\": 4")
                .facts());

        assertThat(outcome.plantings()).isEmpty();
        assertThat(outcome.broken()).isEmpty();
    }

    @Test
    void aSeasonTooShortForItsCropPlantsNone() {
        PlanFacts facts = new HandSeason().with("\"weeks\": 10", "\"weeks\": 1").facts();

        Outcome outcome = planned(facts);

        assertThat(outcome.plantings()).isEmpty();
        assertThat(Arrays.stream(outcome.money().season()).sum()).isZero();
    }

    /** Doubles hold all whole numbers up to 2^53 (IEEE 754); a season has up to 1,000 possible ones, summed in longs. */
    @Test
    void theMostMoneyOfASeasonIsCountedExactly() {
        long grains = Math.multiplyExact(Currency.MOST_SMALLEST, Grains.A_SMALLEST_UNIT);

        assertThat(grains).isLessThan(1L << 53);
        assertThat(Math.multiplyExact(grains, 1000L)).isPositive();
    }
}
