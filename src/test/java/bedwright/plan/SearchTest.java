package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Sampling;
import bedwright.season.Season;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What a search promises of its result. */
class SearchTest {
    private static final long GRAINS_A_DOLLAR = 100 * Grains.A_SMALLEST_UNIT;

    private final Season firstBed = Seasons.of(Seasons.FIRST_BED);
    private final PlanFacts facts = Seasons.facts(firstBed);
    private final Random random = new Random(3);

    private static Search.Found search(PlanFacts facts, int[] start, long moves) {
        return new Search(facts, new Search.Limits(1, null, moves)).run(start);
    }

    /** Birge and Louveaux, Introduction to Stochastic Programming, chapter 1: the best plan brings 108,390 in the mean. */
    @Test
    void farmersProblemReachesThePublishedMean() {
        PlanFacts farm = Seasons.facts(Seasons.of(Seasons.FARMERS_PROBLEM));

        Search.Found found = search(farm, Search.nothingPlaced(farm), 20_000);

        assertThat(found.hard()).isZero();
        assertThat(found.soft()).isEqualTo(3 * 108_390 * GRAINS_A_DOLLAR);
    }

    /** Ibid.: 170 acres of wheat, 80 of corn and 250 of beets; a lot is ten. */
    @Test
    void farmersProblemEndsAtThePublishedAcres() {
        PlanFacts farm = Seasons.facts(Seasons.of(Seasons.FARMERS_PROBLEM));

        Search.Found found = search(farm, Search.nothingPlaced(farm), 20_000);

        assertThat(acres(farm, found.places())).containsExactly(170, 80, 250);
    }

    private static int[] acres(PlanFacts farm, int[] places) {
        int[] acres = new int[3];
        for (int p = 0; p < places.length; p++) {
            acres[farm.stock(p)] += places[p] >= 0 ? 10 : 0;
        }
        return acres;
    }

    /** Ibid.: the plan made on mean yields brings 107,240 in the mean of the three. */
    @Test
    void farmersPlanForMeanYieldsBringsThePublishedMean() {
        Season season = Seasons.of(Seasons.FARMERS_PROBLEM);
        List<Sampling.GivenSeason> mean = List.of(season.possible().given().get(1));
        PlanFacts onMean =
                Seasons.facts(season.with(new Sampling(1, 1, season.possible().doubt(), mean)));
        PlanFacts onThree = Seasons.facts(season);

        Search.Found found = search(onMean, Search.nothingPlaced(onMean), 20_000);
        int[] judged =
                Outcomes.places(onThree, Outcomes.of(onMean, found.places()).plantings());

        assertThat(Outcomes.of(onThree, judged).score().soft()).isEqualTo(3 * 107_240 * GRAINS_A_DOLLAR);
    }

    @Test
    void theSameSeedAndMovesGiveTheSamePlan() {
        Search.Found one = search(facts, Search.nothingPlaced(facts), 3000);
        Search.Found other = search(Seasons.facts(firstBed), Search.nothingPlaced(facts), 3000);

        assertThat(other.places()).containsExactly(one.places());
    }

    @Test
    void theResultIsNeverWorseThanThePlanGiven() {
        for (int trial = 0; trial < 5; trial++) {
            int[] start = Seasons.randomPlan(facts, random, 0.2 * trial);
            SeasonScore given = Seasons.scoreOf(facts, start);

            Search.Found found = search(facts, start, 20);

            assertThat(new Search.Found(start, given.hard(), given.medium(), given.soft()).isBetterThan(found))
                    .isFalse();
        }
    }

    @Test
    void theResultOfASearchIsNotWorseWhenItIsGivenBack() {
        Search.Found once = search(facts, Search.nothingPlaced(facts), 3000);

        Search.Found again = search(facts, once.places(), 20);

        assertThat(once.isBetterThan(again)).isFalse();
    }

    @Test
    void theSearchFindsMoreThanItsOpening() {
        int[] opening = Opening.fill(facts, Search.nothingPlaced(facts), () -> false);
        SeasonScore opened = Seasons.scoreOf(facts, opening);

        Search.Found found = search(facts, Search.nothingPlaced(facts), 20_000);

        assertThat(found.isBetterThan(new Search.Found(opening, opened.hard(), opened.medium(), opened.soft())))
                .isTrue();
    }

    @Test
    @Timeout(value = 60, unit = TimeUnit.SECONDS)
    void aSearchWithATimeEndsByItself() {
        Search.Limits limits = new Search.Limits(1, Duration.ofNanos(300_000_001), null);

        Search.Found found = new Search(facts, limits).run(Search.nothingPlaced(facts));

        assertThat(found.hard()).isZero();
    }

    @Test
    @Timeout(value = 60, unit = TimeUnit.SECONDS)
    void aSearchThatMaySettleEndsWithoutReachingItsLimit() {
        Search search = new Search(facts, new Search.Limits(1, null, Long.MAX_VALUE / 2, true));

        Search.Found found = search.run(Search.nothingPlaced(facts));

        assertThat(search.isSettled()).isTrue();
        assertThat(found.hard()).isZero();
    }

    @Test
    @Timeout(value = 60, unit = TimeUnit.SECONDS)
    void aSearchThatIsStoppedGivesItsBestSoFar() {
        Search search = new Search(facts, new Search.Limits(1, null, Long.MAX_VALUE / 2));
        CompletableFuture<Search.Found> running =
                CompletableFuture.supplyAsync(() -> search.run(Search.nothingPlaced(facts)));
        while (search.moves() < 500 && !running.isDone()) {
            Thread.onSpinWait();
        }

        search.stop();
        Search.Found found = running.join();

        assertThat(found).isSameAs(search.best());
        assertThat(found.hard()).isZero();
    }

    @Test
    void aSearchStoppedBeforeItBeginsGivesThePlanGiven() {
        int[] start = search(facts, Search.nothingPlaced(facts), 1000).places();
        Search search = new Search(facts, new Search.Limits(1, null, Long.MAX_VALUE / 2));

        search.stop();

        assertThat(search.run(start).places()).containsExactly(start);
    }

    /** Stopped at the first plan that is noted: before either search has begun to try moves, or just after. */
    @Test
    @Timeout(value = 60, unit = TimeUnit.SECONDS)
    void aSearchThatIsStoppedWhileItStartsEnds() {
        for (int trial = 0; trial < 12; trial++) {
            Search search = new Search(facts, new Search.Limits(1, null, Long.MAX_VALUE / 2));
            CompletableFuture<Search.Found> running =
                    CompletableFuture.supplyAsync(() -> search.run(Search.nothingPlaced(facts)));
            while (search.best() == null) {
                Thread.onSpinWait();
            }

            search.stop();

            assertThat(running.join()).isNotNull();
        }
    }

    @Test
    void whatStandsStaysWhereItStands() {
        PlanFacts stood = Seasons.facts(Seasons.edited(
                Seasons.FIRST_BED,
                "\"outlets\": [",
                "\"standing\": [{\"crop\": \"dill\", \"plants\": 40, \"method\": \"sown\", \"bed\": \"Open bed\","
                        + " \"sown\": \"2027-04-26\"}], \"outlets\": ["));
        int last = stood.plantings() - 1;
        int[] start = new int[stood.plantings()];
        Arrays.fill(start, SeasonScore.NOWHERE);

        Search.Found found = search(stood, start, 3000);

        assertThat(stood.isFixed(last)).isTrue();
        assertThat(found.places()[last]).isEqualTo(stood.fixedPlace[last]);
        assertThat(stood.table().bed(found.places()[last])).isEqualTo(1);
    }

    @Test
    void aKeptPlanIsReadBackAsItWas() {
        for (int trial = 0; trial < 20; trial++) {
            int[] places = Seasons.randomPlan(facts, random, random.nextDouble());

            int[] readBack = Outcomes.places(facts, Outcomes.of(facts, places).plantings());

            assertThat(byStock(readBack)).isEqualTo(byStock(places));
        }
    }

    /** The places of each stock in order: which of its equal lots stands where does not matter. */
    private List<List<Integer>> byStock(int[] places) {
        return IntStream.range(0, facts.table().stocks())
                .mapToObj(stock -> IntStream.range(0, places.length)
                        .filter(p -> facts.stock(p) == stock)
                        .mapToObj(p -> places[p])
                        .sorted()
                        .toList())
                .toList();
    }
}
