package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedwright.climate.Gust;
import bedwright.season.KeptPlanting;
import bedwright.season.Pest;
import bedwright.season.Standing;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is told of plantings of a plan: two lots of ten plants sown in week 0, cut in the weeks 3 and 4. */
class ProspectsTest {
    private final SmallSeason season = new SmallSeason();

    private KeptPlanting kept(String crop, String method, String bed) {
        return new KeptPlanting(1, crop, method, bed, season.starts, 1, null, 2, 20);
    }

    private final KeptPlanting kept = kept("zinnia", "plain", "Bed");

    private Prospects prospects() {
        return Prospects.of(season.build(), List.of(season.possible()));
    }

    @Test
    void aPlantingIsToldByTheLot() {
        Prospect told = prospects().expect(kept);

        assertThat(told.plants()).isEqualTo(10);
        assertThat(List.of(told.firstCut(), told.heldTo())).containsExactly(21, 6);
        assertThat(told.kinds()).containsExactly("focal");
        assertThat(told.stems()[0][3]).containsExactly(500);
    }

    @Test
    void pulledEarlyItGivesUpToThenOnly() {
        Prospect told = prospects().expect(kept.pulledAfter(season.starts.plusWeeks(4)));

        assertThat(told.heldTo()).isEqualTo(5);
        assertThat(told.lastCutWeek()).isEqualTo(4);
    }

    @Test
    void aStandingPlantingIsToldFromItsClock() {
        season.stands(new Standing.ClockReading(season.starts.minusDays(1), 150));
        KeptPlanting stands = new KeptPlanting(1, "zinnia", "plain", "Bed", season.starts, null, 1, 1, 10);

        assertThat(prospects().expect(stands).firstCut()).as("70 °C·d to go").isEqualTo(6);
    }

    @Test
    void ofStemsThatAreWrittenOutNothingIsWorkedOut() {
        season.stands(null, new Standing.WrittenStems(season.starts, "focal", 3));
        KeptPlanting stands = new KeptPlanting(7, "zinnia", "plain", "Bed", season.starts, null, 1, 1, 10);

        assertThatThrownBy(() -> prospects().expect(stands))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("planting 7");
    }

    @ParameterizedTest
    @CsvSource({
        "rose, plain, Bed, no crop named rose",
        "zinnia, fancy, Bed, no method of zinnia named fancy",
        "zinnia, plain, Shed, no bed named Shed"
    })
    void whatTheSeasonDoesNotKnowIsRefused(String crop, String method, String bed, String says) {
        assertThatThrownBy(() -> prospects().expect(kept(crop, method, bed)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(says);
    }

    @Test
    void aGustIsToldAsThePlantingMeetsIt() {
        season.gusts = List.of(new Gust(30, -1, 270, 24));

        assertThat(prospects().blown(kept, season.gusts.getFirst())).isEqualTo(new Blown(1, 24, 0.5, 0.3));
    }

    @Test
    void aPestIsToldByTheWeek() {
        season.pests.add(SmallSeason.pest(0.01, null, Pest.Takes.SEED));
        season.crop.appeal.put("slugs", 1.0);

        assertThat(prospects().eaten(kept, 0, 1).plants()).as("days 0 and 1").isEqualTo(1 - Math.exp(-0.02));
    }
}
