package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.config.solver.EnvironmentMode;
import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import bedwright.season.Season;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Random farms planned while the solver counts the score afresh after every move and after undoing it, every plan
 * counted again by the recheck; and what must hold of any plan of any farm. A hundred farms in every build;
 * {@code -Pmany} plans 10,000.
 */
class RandomFarmsTest {
    private static final long MOVES = 300;
    private static final int FARMS = Integer.getInteger("bedwright.farms", 100);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, FARMS);
    }

    /** Fewer, since each of them makes many plans. */
    static LongStream someSeeds() {
        return LongStream.rangeClosed(1, FARMS / 10).map(i -> 10 * i);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyMoveIsCountedAsTheWholePlanIs(long seed) {
        Season season = RandomFarms.of(seed);
        PlanFacts facts = Seasons.facts(season);
        Random random = new Random(seed);
        int[] start = Seasons.randomPlan(facts, random, 0.5 * random.nextDouble());
        EnvironmentMode mode = seed % 10 == 0 ? EnvironmentMode.TRACKED_FULL_ASSERT : EnvironmentMode.FULL_ASSERT;

        Search.Found found = new Search(facts, new Search.Limits(seed, null, MOVES), mode).run(start);

        Outcome outcome = Outcomes.of(facts, found.places());
        Tally tally = Recheck.of(season, facts.seasons(), outcome.plantings());
        assertThat(tally.faults()).isEmpty();
        assertThat(List.of(tally.hard(), tally.medium(), tally.soft()))
                .containsExactly(found.hard(), found.medium(), found.soft())
                .containsExactly(
                        outcome.score().hard(),
                        outcome.score().medium(),
                        outcome.score().soft());
        assertThat(Search.Found.of(facts, start).isBetterThan(found)).isFalse();
        for (int p = 0; p < start.length; p++) {
            if (facts.isFixed(p)) {
                assertThat(found.places()[p]).isEqualTo(facts.fixedPlace[p]);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("someSeeds")
    void anyPlanIsCountedAlikeByTheRecheckAndReadBackAsItWas(long seed) {
        Season season = RandomFarms.of(seed);
        PlanFacts facts = Seasons.facts(season);
        Random random = new Random(seed);
        for (int trial = 0; trial < 3; trial++) {
            int[] places = whole(facts, Seasons.randomPlan(facts, random, random.nextDouble()));
            Outcome outcome = Outcomes.of(facts, places);
            Tally tally = Recheck.of(season, facts.seasons(), outcome.plantings());

            assertThat(tally.faults()).isEmpty();
            assertThat(List.of(tally.hard(), tally.medium(), tally.soft()))
                    .containsExactly(
                            outcome.score().hard(),
                            outcome.score().medium(),
                            outcome.score().soft());
            assertThat(byStock(facts, Outcomes.places(facts, outcome.plantings())))
                    .isEqualTo(byStock(facts, places));
        }
    }

    @ParameterizedTest
    @MethodSource("someSeeds")
    void aPlanScoresTheSameFromWhateverPlanItIsAskedAndOnWhateverWay(long seed) {
        PlanFacts facts = Seasons.facts(RandomFarms.of(seed));
        Random random = new Random(seed);
        for (int trial = 0; trial < 3; trial++) {
            int[] asked = Seasons.randomPlan(facts, random, random.nextDouble());
            SeasonScore fresh = Seasons.scoreOf(facts, asked);
            SeasonScore other = Seasons.scoreOf(facts, Seasons.randomPlan(facts, random, random.nextDouble()));
            List<Long> before = List.of(other.hard(), other.medium(), other.soft());
            for (int p : Seasons.shuffled(asked.length, random)) {
                if (other.place(p) != asked[p]) {
                    other.put(p, asked[p]);
                }
            }
            other.ask();

            assertThat(List.of(other.hardAfter(), other.mediumAfter(), other.softAfter()))
                    .containsExactly(fresh.hard(), fresh.medium(), fresh.soft());
            other.forget();
            assertThat(List.of(other.hard(), other.medium(), other.soft())).isEqualTo(before);
            for (int p : Seasons.shuffled(asked.length, random)) {
                other.settle(p, asked[p]);
            }
            assertThat(List.of(other.hard(), other.medium(), other.soft()))
                    .containsExactly(fresh.hard(), fresh.medium(), fresh.soft());
        }
    }

    @ParameterizedTest
    @MethodSource("someSeeds")
    void seedAndMovesDecideThePlan(long seed) {
        PlanFacts facts = Seasons.facts(RandomFarms.of(seed));
        int[] nothing = Search.nothingPlaced(facts);
        Search.Limits limits = new Search.Limits(seed, null, 200L);

        int[] once = new Search(facts, limits).run(nothing).places();

        assertThat(new Search(facts, limits).run(nothing).places()).isEqualTo(once);
    }

    /** A plan in which what is fixed stands where it stands. */
    private static int[] whole(PlanFacts facts, int[] places) {
        int[] all = places.clone();
        Arrays.setAll(all, p -> facts.isFixed(p) ? facts.fixedPlace[p] : places[p]);
        return all;
    }

    /** The places of each stock in order: which of its equal lots stands where does not matter. */
    private static List<List<Integer>> byStock(PlanFacts facts, int[] places) {
        return IntStream.range(0, facts.table().stocks())
                .mapToObj(stock -> IntStream.range(0, places.length)
                        .filter(p -> facts.stock(p) == stock)
                        .mapToObj(p -> places[p])
                        .sorted()
                        .toList())
                .toList();
    }
}
