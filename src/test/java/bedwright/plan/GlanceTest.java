package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Season;
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

    /** A temperature in the middle of a search of the demo farm: three dollars a season. */
    private static double temperature(PlanFacts facts) {
        return 3 * Grains.ofThing(facts.season, 1) * facts.seasonCount;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void noMoveBringsMoreThanAGlanceSaysButForExtraStockAndFollowers(long seed) {
        // With hired hands at the rate of the farm's own no line pays less than it takes to cut.
        Season season = Seasons.edited(Seasons.DEMO_FARM, "\"hiredRate\": 19", "\"hiredRate\": 14");
        PlanFacts facts = Seasons.facts(season);
        double hair = A_HAIR * Grains.ofThing(season, 1) * facts.seasonCount;
        draw(facts, seed, (score, answer, glance, ignored) -> {
            double saved = -facts.seasonCount
                    * (double) (Math.min(0, answer.cost(Rule.EXTRA_STOCK)) + Math.min(0, answer.cost(Rule.FOLLOW_ON)));
            if (score.mediumAfter() == score.medium()) {
                assertThat((double) score.softAfter() - score.soft())
                        .isLessThanOrEqualTo(glance.atMost() + saved + hair);
            }
        });
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
