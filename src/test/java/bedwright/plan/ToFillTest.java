package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.season.KeptPlanting;
import bedwright.season.Lots;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What to plant besides, so that an order can be filled. */
class ToFillTest {
    private static final int WEEK = 8;

    private static final Season SEASON = Seasons.of(Seasons.FIRST_BED);
    private static final List<PossibleSeason> SEASONS = PossibleSeasons.fresh(SEASON, 64, 1);
    private static final List<Promises.Line> ORDER = List.of(new Promises.Line(0, 2000));

    /** Nothing stands, so nothing is filled. */
    private static Plan empty() {
        return new Plan(1, SEASON, new Plan.Making(1, null, 1L, false, false), new Plan.Score(0, 0, 0), List.of());
    }

    private static Promises promises(Season season, List<KeptPlanting> plan) {
        PlanFacts facts = PlanFacts.ofPlan(season, SEASONS, plan);
        return Promises.of(facts, Outcomes.places(facts, plan));
    }

    private static List<ToFill.Way> ways(int from) {
        return ToFill.ways(empty(), SEASONS, promises(SEASON, List.of()), WEEK, ORDER, from);
    }

    /** Each way, put into the plan and judged afresh, fills the order as often as it says. */
    @Test
    void aPlantingMoreFillsTheOrderAsOftenAsIsSaid() {
        assertThat(ways(0)).isNotEmpty().allSatisfy(way -> {
            List<Lots> pool = new ArrayList<>(SEASON.pool());
            pool.add(new Lots(way.crop().name(), way.plants(), 1));
            KeptPlanting planting = new KeptPlanting(
                    1,
                    way.crop().name(),
                    way.method().name(),
                    way.bed().name(),
                    SEASON.weekStart(way.sowWeek()),
                    pool.size(),
                    null,
                    1,
                    way.plants());

            assertThat(promises(SEASON.withPool(pool), List.of(planting))
                            .ask(WEEK, ORDER)
                            .filled())
                    .isEqualTo(way.filled())
                    .isPositive();
        });
    }

    @Test
    void theBestComesFirst() {
        assertThat(ways(0)).extracting(ToFill.Way::filled).isSortedAccordingTo(java.util.Comparator.reverseOrder());
    }

    @Test
    void nothingIsStartedBeforeTheFirstDayThatIsLeft() {
        assertThat(ways(2)).allSatisfy(way -> assertThat(way.sowWeek()).isGreaterThanOrEqualTo(2));
        assertThat(ways(WEEK)).isEmpty();
    }

    @Test
    void anOrderThatIsFilledNeedsNothing() {
        assertThat(ToFill.ways(empty(), SEASONS, promises(SEASON, List.of()), WEEK, List.of(), 0))
                .isEmpty();
    }
}
