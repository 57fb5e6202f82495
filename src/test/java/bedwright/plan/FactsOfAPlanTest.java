package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedwright.climate.PossibleSeasons;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Facts that go only as far as a plan. */
class FactsOfAPlanTest {
    private static List<KeptPlanting> drawn(PlanFacts facts, long seed) {
        int[] places = Seasons.randomPlan(facts, new Random(seed), 0.5);
        return Outcomes.of(facts, places).plantings();
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json", "farmers-problem.json"})
    void aPlanScoresTheSameByThemAsByAllFacts(String file) {
        Season season = Seasons.of(file);
        PlanFacts all = Seasons.facts(season);
        for (long seed = 1; seed <= 20; seed++) {
            List<KeptPlanting> plan = drawn(all, seed);
            PlanFacts some = PlanFacts.ofPlan(season, all.seasons(), plan);

            assertThat(Outcomes.of(some, Outcomes.places(some, plan)).score())
                    .isEqualTo(Outcomes.of(all, Outcomes.places(all, plan)).score());
        }
    }

    @Test
    void theyHaveNoPlacesBesidesThePlans() {
        Season season = Seasons.of(Seasons.FIRST_BED);
        List<KeptPlanting> plan = drawn(Seasons.facts(season), 3);
        PlanFacts some = PlanFacts.ofPlan(season, PossibleSeasons.fresh(season, 8, 1), plan);

        assertThat(some.table().places()).isEqualTo((int) plan.stream()
                .map(planting -> Outcomes.spot(season, planting))
                .distinct()
                .count());
    }

    @Test
    void aPlantingInABedThatIsNotThereIsRefused() {
        Season season = Seasons.of(Seasons.FIRST_BED);
        KeptPlanting one = drawn(Seasons.facts(season), 3).getFirst();
        KeptPlanting astray = new KeptPlanting(
                one.number(), one.crop(), one.method(), "no bed", one.sown(), one.pool(), null, 1, one.plants());

        assertThatThrownBy(() -> PlanFacts.ofPlan(season, PossibleSeasons.of(season), List.of(astray)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("bed no bed");
    }
}
