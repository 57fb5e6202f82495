package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeasons;
import bedwright.season.KeptPlanting;
import bedwright.season.Lots;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What can still be started for a stretch of a bed. */
class GapTest {
    private static final int METRES = 2;

    /** A plan with some of the pool at drawn places. */
    private static Plan plan(long seed) {
        Season season = Seasons.of(Seasons.FIRST_BED);
        PlanFacts facts = Seasons.facts(season);
        Outcome outcome = Outcomes.of(facts, Seasons.randomPlan(facts, new Random(seed), 0.3));
        return new Plan(1, season, new Plan.Making(1, null, 1L, false, false), outcome.score(), outcome.plantings());
    }

    private static List<Gap.Way> ways(Plan plan, int week) {
        return Gap.ways(plan, PossibleSeasons.of(plan.season()), 0, 1000 * METRES, week);
    }

    /** Each way is worth exactly what the plan scores more with that planting in it, counted from nothing. */
    @Test
    void aWayBringsWhatThePlanScoresMoreWithIt() {
        int looked = 0;
        for (long seed = 1; seed <= 5; seed++) {
            Plan plan = plan(seed);
            for (Gap.Way way : ways(plan, 2)) {
                Season season = plan.season();
                List<Lots> pool = new ArrayList<>(season.pool());
                pool.add(new Lots(way.crop().name(), way.prospect().plants(), 1));
                List<KeptPlanting> with = new ArrayList<>(plan.plantings());
                with.add(new KeptPlanting(
                        999,
                        way.crop().name(),
                        way.method().name(),
                        season.allBeds().getFirst().name(),
                        season.weekStart(2),
                        pool.size(),
                        null,
                        1,
                        way.prospect().plants()));
                PlanFacts facts = Seasons.facts(season.withPool(pool));
                Plan.Score more =
                        Outcomes.of(facts, Outcomes.places(facts, with)).score();

                assertThat(way.money() * facts.seasonCount)
                        .isEqualTo((double) more.soft() - plan.score().soft());
                assertThat(way.breaks().isEmpty())
                        .isEqualTo(more.hard() >= plan.score().hard());
                looked++;
            }
        }
        assertThat(looked).isGreaterThan(10);
    }

    @Test
    void waysThatBreakNothingComeFirstAndTheBestOfThemBeforeAll() {
        List<Gap.Way> ways = ways(plan(2), 2);
        List<Double> possible = ways.stream()
                .takeWhile(way -> way.breaks().isEmpty())
                .map(Gap.Way::money)
                .toList();

        assertThat(possible).isNotEmpty().isSortedAccordingTo(java.util.Comparator.reverseOrder());
        assertThat(ways.stream().skip(possible.size()))
                .noneMatch(way -> way.breaks().isEmpty());
    }

    @Test
    void inAnEmptyBedThePlantsFillTheStretchAndNoMore() {
        Season season = Seasons.of(Seasons.FIRST_BED);
        Plan empty =
                new Plan(1, season, new Plan.Making(1, null, 1L, false, false), new Plan.Score(0, 0, 0), List.of());

        assertThat(ways(empty, 2)).isNotEmpty().allSatisfy(way -> {
            double one = 1000 * way.method().spacing() / way.method().rows();
            assertThat(way.prospect().millimetres()).isLessThanOrEqualTo(1000 * METRES);
            assertThat(way.prospect().millimetres() + one).isGreaterThan(1000 * METRES - 1);
        });
    }

    @Test
    void inTheLastWeekNothingCanBeStarted() {
        Plan plan = plan(2);
        assertThat(ways(plan, plan.season().weeks() - 1)).isEmpty();
    }
}
