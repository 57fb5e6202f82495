package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Caution;
import bedwright.season.Season;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** No plan that keeps the hard rules scores beyond the bound, whatever the prices. */
class BoundTest {
    private static final int PLANS = 12;

    /** The seasons that come with the project, over some seasons, with some cautions, and small ones drawn at random. */
    static Stream<Season> seasons() {
        Season demo = Seasons.over(3, Seasons.of(Seasons.DEMO_FARM));
        Season first = Seasons.of(Seasons.FIRST_BED);
        return Stream.concat(
                Stream.of(
                        first,
                        Seasons.over(1, first),
                        Seasons.over(7, first).with(new Caution(100)),
                        Seasons.of(Seasons.FARMERS_PROBLEM),
                        Seasons.of("tray-and-bed.json"),
                        Seasons.edited(
                                Seasons.FIRST_BED,
                                "\"pool\": [",
                                "\"held\": [{\"crop\": \"dill\", \"lots\": 2, \"bed\": \"Open bed\", \"sown\":"
                                        + " \"2027-05-31\", \"method\": \"sown\"}], \"pool\": ["),
                        demo.with(Caution.BOLD),
                        demo.with(Caution.CAREFUL)),
                IntStream.range(0, 20).mapToObj(BoundTest::drawn));
    }

    private static Season drawn(int seed) {
        Random random = new Random(seed);
        String buy = random.nextBoolean() ? "" : ", \"buy\": " + tenths(random, 30);
        String promise = switch (random.nextInt(3)) {
            case 0 -> "{\"must\": 2}";
            case 1 -> "{\"shortage\": " + tenths(random, 30) + "}";
            default -> "{\"buyIn\": " + tenths(random, 30) + "}";
        };
        Season season = Seasons.edited(
                Seasons.FIRST_BED,
                "\"length\": 12",
                "\"length\": " + (3 + random.nextInt(20)),
                "\"own\": [{\"hours\": 6}]",
                "\"own\": [{\"hours\": " + tenths(random, 80) + "}]",
                "\"coolHours\": 1.5",
                "\"coolHours\": " + tenths(random, 20),
                "\"bench\": 150",
                "\"bench\": " + random.nextInt(300),
                "\"metres\": 6",
                "\"metres\": " + random.nextInt(10) + buy,
                "\"promise\": {\"buyIn\": 1.6}",
                "\"promise\": " + promise,
                "\"mostAWeek\": 150",
                "\"mostAWeek\": " + (20 + random.nextInt(200)),
                "\"cutting\": 40",
                "\"cutting\": 40, \"clearing\": " + random.nextInt(60),
                "\"height\": 1.5,",
                "\"height\": 1.5, \"family\": \"daisies\",",
                "\"crops\": [",
                "\"families\": [{\"name\": \"daisies\", \"restYears\": 2}], \"rotation\": {\"followOn\": "
                        + random.nextInt(9) + "}, \"crops\": [",
                "\"hiredRate\": 18",
                "\"hiredRate\": " + tenths(random, 300));
        return Seasons.over(1 + random.nextInt(9), season).with(new Caution(random.nextInt(101)));
    }

    private static String tenths(Random random, int below) {
        return String.format(Locale.ROOT, "%.1f", random.nextInt(below) / 10.0);
    }

    /** A plan that breaks no hard rule: plantings put down in any order wherever they break none. */
    private static SeasonScore feasible(PlanFacts facts, Random random) {
        SeasonScore score = new SeasonScore(facts);
        for (int p = 0; p < facts.plantings(); p++) {
            if (facts.isFixed(p)) {
                score.settle(p, facts.fixedPlace[p]);
            }
        }
        for (int p : Seasons.shuffled(facts.plantings(), random)) {
            int first = facts.table.firstPlace(facts.stock(p));
            int count = facts.table.firstPlace(facts.stock(p) + 1) - first;
            if (facts.isFixed(p) || count == 0) {
                continue;
            }
            for (int tries = 0; tries < 3; tries++) {
                int place = first + random.nextInt(count);
                score.put(p, place);
                score.ask();
                long hard = score.hardAfter();
                score.forget();
                if (hard >= score.hard()) {
                    score.settle(p, place);
                    break;
                }
            }
        }
        return score;
    }

    private static Prices randomPrices(PlanFacts facts, Random random) {
        PriceScales scales = new PriceScales(new Relaxation(facts), PriceLayout.of(facts));
        double[] prices = new double[scales.scale.length];
        double kept = random.nextDouble();
        double size = Math.exp(4 * random.nextGaussian());
        for (int i = 0; i < prices.length; i++) {
            double like = Math.max(scales.start[i], scales.scale[i] * Math.exp(10 * random.nextDouble()));
            prices[i] = random.nextDouble() < kept ? size * like * -Math.log(1 - random.nextDouble()) : 0;
        }
        return new Prices(facts, prices);
    }

    @ParameterizedTest
    @MethodSource("seasons")
    void noPlanIsBeyondTheBoundWhateverThePrices(Season season) {
        PlanFacts facts = Seasons.facts(season);
        Random random = new Random(1);
        for (int i = 0; i < PLANS; i++) {
            SeasonScore plan = feasible(facts, random);
            double bound = Bound.of(facts, randomPrices(facts, random), -plan.medium());
            if (plan.hard() == 0) {
                assertThat((double) plan.soft()).isLessThanOrEqualTo(bound);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seasons")
    void noPlanIsBeyondTheBoundOfGoodPrices(Season season) {
        PlanFacts facts = Seasons.facts(season);
        int[] opening = Opening.fill(facts, Search.nothingPlaced(facts), () -> false);
        SeasonScore plan = Seasons.scoreOf(facts, opening);
        PriceSearch search = new PriceSearch(facts, -plan.medium());
        search.run(100, () -> false);
        if (plan.hard() == 0) {
            assertThat((double) plan.soft()).isLessThanOrEqualTo(search.best());
        }
    }

    /** Else the two tests above would hold for want of plans. */
    @Test
    void plansThatKeepTheHardRulesAreFoundInMostSeasons() {
        long kept = seasons()
                .filter(season -> feasible(Seasons.facts(season), new Random(1)).hard() == 0)
                .count();
        assertThat(kept).isGreaterThan(20);
    }

    /** Six lots sown in week 0 give the 30 stems that are asked for in week 3 at a price of 2. */
    @Test
    void theBoundIsWhatTheStemsBringWhereNothingIsScarce() {
        assertThat(bound(new HandSeason().outlet(2, 30, ""))).isCloseTo(60, within(0.3));
    }

    /** Of many stems asked for in week 3 at a price of 2, a bed for two lots gives ten. */
    @Test
    void aBedThatIsFullLimitsWhatCanBeBrought() {
        HandSeason season = new HandSeason().with("\"length\": 100", "\"length\": 20");
        assertThat(bound(season.outlet(2, 1000, ""))).isCloseTo(20, within(0.1));
    }

    /** All nine lots give 45. */
    @Test
    void lotsThatAreFewLimitWhatCanBeBrought() {
        assertThat(bound(new HandSeason().outlet(2, 1000, ""))).isCloseTo(90, within(0.5));
    }

    private static double bound(HandSeason season) {
        PlanFacts facts = season.facts();
        PriceSearch search = new PriceSearch(facts, 0);
        search.run(3000, () -> false);
        return Grains.toMoney(facts.season, search.best() / facts.seasonCount);
    }

    @Test
    void atNoPriceAtAllTheBoundIsWhatAllThatIsAskedForWouldBring() {
        PlanFacts facts = new HandSeason().outlet(2, 50, "").facts();
        assertThat(Bound.of(facts, Prices.none(facts), 0)).isCloseTo(100 * 100.0 * Grains.A_SMALLEST_UNIT, within(1e3));
    }

    /** The textbook's optimum of 108,390 is that of the relaxation too: its acres can be cut anywhere. */
    @ParameterizedTest
    @ValueSource(ints = {0})
    void theFarmersProblemIsBoundedByItsOptimum(int caution) {
        Season season = Seasons.of(Seasons.FARMERS_PROBLEM).with(new Caution(caution));
        PlanFacts facts = Seasons.facts(season);
        PriceSearch search = new PriceSearch(facts, 0);
        search.run(3000, () -> false);
        double money = Grains.toMoney(season, search.best() / facts.seasonCount);
        assertThat(money).isBetween(108_390.0, 108_390 * 1.002);
    }

    @Test
    void moreStepsNeverGiveAWorseBound() {
        PriceSearch search = new PriceSearch(Seasons.facts(Seasons.of(Seasons.FIRST_BED)), 0);
        double before = Double.POSITIVE_INFINITY;
        for (int steps = 0; steps <= 1000; steps += 50) {
            search.run(steps, () -> false);
            assertThat(search.best()).isLessThanOrEqualTo(before);
            before = search.best();
        }
    }

    @Test
    void theSameStepsGiveTheSameBoundHoweverTheyAreTaken() {
        PlanFacts facts = Seasons.facts(Seasons.over(2, Seasons.of(Seasons.DEMO_FARM)));
        PriceSearch inOne = new PriceSearch(facts, 0);
        inOne.run(64, () -> false);
        PriceSearch inTwo = new PriceSearch(facts, 0);
        inTwo.run(23, () -> false);
        inTwo.run(64, () -> false);
        assertThat(inTwo.best()).isEqualTo(inOne.best());
    }

    @Test
    void theBoundThatWasFoundFollowsFromItsPrices() {
        PlanFacts facts = Seasons.facts(Seasons.of(Seasons.FIRST_BED));
        PriceSearch search = new PriceSearch(facts, 0);
        search.run(200, () -> false);
        assertThat(Bound.of(facts, search.bestPrices(), 0)).isEqualTo(search.best());
    }

    @Test
    void whatTheSmoothBoundLooksAtIsTheBound() {
        PlanFacts facts = Seasons.facts(Seasons.over(3, Seasons.of(Seasons.DEMO_FARM)));
        PriceSearch search = new PriceSearch(facts, 0);
        search.run(64, () -> false);
        double[] prices = search.bestPrices().toArray();
        double looked = new SmoothBound(new Relaxation(facts)).look(prices, 0, 0);
        assertThat(looked).isCloseTo(search.best(), within(1e-6 * search.best()));
    }

    /** Slopes against differences, each group of prices in a direction of its own. */
    @Test
    void theSlopeIsHowTheSmoothBoundChanges() {
        Season season = Seasons.edited(Seasons.FIRST_BED, "\"metres\": 6", "\"metres\": 1, \"buy\": 1.5");
        PlanFacts facts = Seasons.facts(season.with(new Caution(30)));
        Relaxation relaxed = new Relaxation(facts);
        SmoothBound smooth = new SmoothBound(relaxed);
        PriceScales scales = new PriceScales(relaxed, smooth.layout);
        double soft = scales.lotValue / 5;
        double[] prices = scales.start.clone();
        Random random = new Random(3);
        for (int i = 0; i < smooth.layout.seasons(); i++) {
            prices[i] += scales.scale[i] * 100 * random.nextDouble();
        }
        smooth.look(prices, 100 * soft, 0);
        smooth.at(prices, soft, 0.3, 0);
        double[] slope = smooth.change().clone();
        PriceLayout layout = smooth.layout;
        int[] ends = {
            layout.most(),
            layout.hired(),
            layout.hours(),
            layout.cutting(),
            layout.shelves(),
            layout.lots(),
            layout.standing(),
            layout.seasons(),
            layout.must()
        };
        int from = 0;
        for (int end : ends) {
            double[] some = prices.clone();
            double[] others = prices.clone();
            double expected = 0;
            for (int i = from; i < end; i++) {
                double by = 1e-3 * Math.max(scales.scale[i], end == layout.must() ? 1 : 0) * random.nextDouble();
                some[i] += by;
                others[i] -= by;
                expected += 2 * by * slope[i];
            }
            double changed = smooth.at(some, soft, 0.3, 0) - smooth.at(others, soft, 0.3, 0);
            assertThat(changed)
                    .as("prices %d to %d", from, end)
                    .isCloseTo(expected, within(1e-3 * Math.abs(expected) + 1e-8 * smooth.at(prices, soft, 0.3, 0)));
            from = end;
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void aPriceBelowNothingIsRefused(double price) {
        PlanFacts facts = new HandSeason().facts();
        double[] prices = Prices.none(facts).toArray();
        prices[3] = price;
        assertThatThrownBy(() -> new Prices(facts, prices))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Price 3");
    }

    @Test
    void pricesOfAnotherSeasonAreRefused() {
        PlanFacts facts = new HandSeason().facts();
        assertThatThrownBy(() -> new Prices(facts, Arrays.copyOf(new double[0], 7)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("7");
    }
}
