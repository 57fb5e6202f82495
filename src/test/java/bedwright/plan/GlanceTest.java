package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a glance says of a move, held against the move's score. */
class GlanceTest {
    private static final int DRAWS = 2000;
    /** What prices and stems in whole numbers may be wrong by, dollars a season. */
    private static final double A_HAIR = 0.2;
    /** What prices in single precision may be wrong by, dollars a season. */
    private static final double NEXT_TO_NOTHING = 0.0001;

    /** A temperature in the middle of a search of the demo farm: three dollars a season. */
    private static double temperature(PlanFacts facts) {
        return dollars(facts, 3);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void noMoveBringsMoreThanAGlanceSaysButForExtraStockAndFollowers(long seed) {
        PlanFacts facts = withHandsAtOneRate();
        assertThat(mostAboveAGlance(facts, seed)).isLessThan(dollars(facts, A_HAIR));
    }

    /** Where a wedding must have flowers before there are any, prices are not in whole numbers. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void noMoveBringsMoreThanAGlanceSaysWhereNothingIsRounded(long seed) {
        PlanFacts facts = withHandsAtOneRate("2027-06-07\", \"bouquets\": 26}", "2027-04-12\", \"bouquets\": 26}");
        assertThat(mostAboveAGlance(facts, seed)).isLessThan(dollars(facts, NEXT_TO_NOTHING));
    }

    /** With hired hands at the rate of the farm's own no line pays less than it takes to cut. */
    private static PlanFacts withHandsAtOneRate(String... fromTo) {
        String[] all = Arrays.copyOf(fromTo, fromTo.length + 2);
        all[fromTo.length] = "\"hiredRate\": 19";
        all[fromTo.length + 1] = "\"hiredRate\": 14";
        return Seasons.facts(Seasons.edited(Seasons.DEMO_FARM, all));
    }

    /** @return grains over all seasons */
    private static double dollars(PlanFacts facts, double aSeason) {
        return aSeason * Grains.ofThing(facts.season, 1) * facts.seasonCount;
    }

    /** By how much a move that leaves {@code must} as it is brings more than a glance says, at most, grains over all seasons. */
    private static double mostAboveAGlance(PlanFacts facts, long seed) {
        double[] most = {Double.NEGATIVE_INFINITY};
        draw(facts, seed, (score, answer, glance, ignored) -> {
            double saved = -facts.seasonCount
                    * (double) (Math.min(0, answer.cost(Rule.EXTRA_STOCK)) + Math.min(0, answer.cost(Rule.FOLLOW_ON)));
            if (score.mediumAfter() == score.medium()) {
                most[0] = Math.max(most[0], (double) score.softAfter() - score.soft() - glance.atMost() - saved);
            }
        });
        return most[0];
    }

    @Test
    void whatIsCalledHopelessIsHardlyEverAcceptedAndMostMovesAre() {
        PlanFacts facts = Seasons.facts(Seasons.of(Seasons.DEMO_FARM));
        double temperature = temperature(facts);
        int[] count = new int[3];
        draw(facts, 7, (score, answer, glance, ignored) -> {
            boolean isWorse = score.hardAfter() < 0 || score.mediumAfter() < score.medium();
            boolean isAccepted = !isWorse && score.softAfter() - score.soft() > -2 * temperature;
            count[0]++;
            if (glance.isHopeless(-3.5 * temperature)) {
                count[1]++;
                count[2] += isAccepted ? 1 : 0;
            }
        });
        assertThat(count[1]).isBetween(count[0] / 2, count[0] * 9 / 10);
        assertThat(count[2]).isLessThan(count[1] / 100);
    }

    @Test
    void hoursThatAreSaidToBeBrokenAre() {
        PlanFacts facts = Seasons.facts(Seasons.of(Seasons.DEMO_FARM));
        int[] count = new int[2];
        draw(facts, 8, (score, answer, glance, ignored) -> {
            if (glance.breaksHours()) {
                count[0]++;
                count[1] += answer.cost(Rule.HOURS) + answer.cost(Rule.CUTTING_HOURS) > 0 ? 1 : 0;
            }
        });
        assertThat(count[0]).isGreaterThan(DRAWS / 25);
        assertThat(count[1]).isGreaterThan(count[0] * 95 / 100);
    }

    @Test
    void marginsThatFollowAPlanAreThoseOfThePlan() {
        PlanFacts facts = Seasons.facts(Seasons.of(Seasons.DEMO_FARM));
        Random random = new Random(9);
        draw(facts, 9, (score, answer, glance, margins) -> {
            if (random.nextInt(20) == 0) {
                int place = random.nextInt(facts.table().places());
                assertThat(margins.of(place)).isEqualTo(new Margins(facts, score).of(place));
            }
        });
    }

    @Test
    void nothingIsSaidOfAPlanThatBreaksAHardRule() {
        PlanFacts facts = Seasons.facts(Seasons.of(Seasons.FIRST_BED));
        int[] all = Search.nothingPlaced(facts);
        for (int p = 0; p < all.length; p++) {
            all[p] = facts.table().firstPlace(facts.stock(p));
        }
        Layout layout = new Layout(facts);
        layout.follow(new SeasonPlan(facts, all, new Probe()).getPlantings());

        assertThat(new Glance(layout).canJudge(Seasons.scoreOf(facts, all))).isFalse();
    }

    @Test
    void nothingIsSaidBesideAnotherPlanThanTheScoreMeasuresFrom() {
        PlanFacts facts = Seasons.facts(Seasons.of(Seasons.FIRST_BED));
        int[] one = Search.nothingPlaced(facts);
        one[0] = facts.table().firstPlace(facts.stock(0));
        Layout layout = new Layout(facts);
        layout.follow(new SeasonPlan(facts, one, new Probe()).getPlantings());
        SeasonScore score = new SeasonScore(facts);

        assertThat(new Glance(layout).canJudge(score)).isFalse();
    }

    private interface Judged {
        /** Called with the changes of a move put and asked. */
        void move(SeasonScore score, Answer answer, Glance glance, Margins margins);
    }

    /** Draws moves from a filled plan on, and makes every tenth that breaks nothing, whatever it brings. */
    private static void draw(PlanFacts facts, long seed, Judged judged) {
        Probe probe = new Probe();
        SeasonPlan plan = new SeasonPlan(facts, Opening.fill(facts, Search.nothingPlaced(facts), () -> false), probe);
        List<Planting> plantings = plan.getPlantings();
        SeasonScore score = Seasons.scoreOf(facts, plan.places());
        probe.noteMoved(plantings.size());
        Layout layout = new Layout(facts);
        layout.follow(plantings, probe);
        Glance glance = new Glance(layout);
        DrawnMoves moves = new DrawnMoves(layout, null, probe, new SplittableRandom(seed));
        Random random = new Random(seed);
        for (int i = 0; i < DRAWS; i++) {
            Put put = moves.next();
            assertThat(glance.canJudge(score)).isTrue();
            List<Planting> moved = put.plantings();
            for (int p = 0; p < moved.size(); p++) {
                if (score.place(moved.get(p).getId()) != put.places().get(p)) {
                    score.put(moved.get(p).getId(), put.places().get(p));
                }
            }
            Answer answer = score.ask();
            boolean isMade = score.hardAfter() == 0 && random.nextInt(10) == 0;
            judged.move(score, answer, glance, glance.margins());
            if (isMade) {
                score.take();
                for (int p = 0; p < moved.size(); p++) {
                    moved.get(p).put(put.places().get(p));
                    score.moved(moved.get(p).getId(), put.places().get(p));
                    probe.moved(moved.get(p).getId());
                }
                layout.follow(plantings, probe);
            } else {
                score.forget();
                layout.begin();
            }
        }
    }
}
