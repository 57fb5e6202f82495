package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import bedwright.season.Caution;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The score is a matter of the plan alone, and agrees with the count that is made from the season's facts alone. */
class SeasonScoreTest {
    private final PlanFacts facts = Seasons.facts(Seasons.of("tray-and-bed.json"));
    private final Random random = new Random(11);

    private int[] plan() {
        return Seasons.randomPlan(facts, random, random.nextDouble());
    }

    private static List<Long> whole(SeasonScore score) {
        List<Long> all = new ArrayList<>(List.of(score.hard(), score.medium(), score.soft()));
        for (Rule rule : Rule.values()) {
            all.add(score.cost(rule));
        }
        for (long money : score.seasonMoney()) {
            all.add(money);
        }
        return all;
    }

    @Test
    void aPlanScoresTheSameFromWhateverPlanItIsAsked() {
        for (int trial = 0; trial < 60; trial++) {
            int[] asked = plan();
            SeasonScore fresh = Seasons.scoreOf(facts, asked);
            SeasonScore other = Seasons.scoreOf(facts, plan());
            for (int p : Seasons.shuffled(asked.length, random)) {
                if (other.place(p) != asked[p]) {
                    other.put(p, asked[p]);
                }
            }
            other.ask();

            assertThat(List.of(other.hardAfter(), other.mediumAfter(), other.softAfter()))
                    .containsExactly(fresh.hard(), fresh.medium(), fresh.soft());
        }
    }

    @Test
    void theWayToAPlanLeavesNoTrace() {
        for (int trial = 0; trial < 40; trial++) {
            int[] last = plan();
            SeasonScore wandered = Seasons.scoreOf(facts, plan());
            for (int[] next : List.of(plan(), last)) {
                for (int p : Seasons.shuffled(next.length, random)) {
                    wandered.settle(p, next[p]);
                }
            }

            assertThat(whole(wandered)).isEqualTo(whole(Seasons.scoreOf(facts, last)));
        }
    }

    @Test
    void whatIsTakenScoresAsItWasAsked() {
        SeasonScore score = Seasons.scoreOf(facts, plan());
        for (int trial = 0; trial < 40; trial++) {
            int[] next = plan();
            for (int p = 0; p < next.length; p++) {
                if (score.place(p) != next[p]) {
                    score.put(p, next[p]);
                }
            }
            score.ask();
            List<Long> asked = List.of(score.hardAfter(), score.mediumAfter(), score.softAfter());
            score.take();
            for (int p = 0; p < next.length; p++) {
                score.moved(p, next[p]);
            }

            assertThat(List.of(score.hard(), score.medium(), score.soft())).isEqualTo(asked);
        }
    }

    @Test
    void aQuestionForgottenLeavesNothingBehind() {
        SeasonScore score = Seasons.scoreOf(facts, plan());
        List<Long> before = whole(score);
        for (int trial = 0; trial < 60; trial++) {
            int[] other = plan();
            for (int p = 0; p < other.length; p++) {
                if (score.place(p) != other[p]) {
                    score.put(p, other[p]);
                }
            }
            score.ask();
            score.forget();

            assertThat(whole(score)).isEqualTo(before);
            score.ask();
            assertThat(List.of(score.hardAfter(), score.mediumAfter(), score.softAfter()))
                    .isEqualTo(before.subList(0, 3));
        }
    }

    static Stream<Arguments> seasonsToRecheck() {
        List<Arguments> all = new ArrayList<>();
        for (String file : List.of(Seasons.FIRST_BED, "tray-and-bed.json", Seasons.FARMERS_PROBLEM)) {
            for (int seasons : new int[] {1, 4, 16}) {
                for (int caution : new int[] {0, 33, 100}) {
                    all.add(Arguments.of(file, seasons, caution, 8));
                }
            }
        }
        all.add(Arguments.of(Seasons.DEMO_FARM, 4, 33, 5));
        return all.stream();
    }

    @ParameterizedTest(name = "{0}, {1} possible seasons, caution {2}")
    @MethodSource("seasonsToRecheck")
    void agreesWithTheCountMadeFromTheFactsAlone(String file, int seasons, int caution, int plans) {
        Season season = Seasons.over(seasons, Seasons.of(file)).with(new Caution(caution));
        PlanFacts ofSeason = Seasons.facts(season);
        for (int trial = 0; trial < plans; trial++) {
            int[] places = Seasons.randomPlan(ofSeason, random, random.nextDouble());
            Outcome outcome = Outcomes.of(ofSeason, places);
            Tally tally = Recheck.of(season, ofSeason.seasons(), outcome.plantings());

            assertThat(tally.faults()).isEmpty();
            assertThat(List.of(
                            outcome.score().hard(),
                            outcome.score().medium(),
                            outcome.score().soft()))
                    .containsExactly(tally.hard(), tally.medium(), tally.soft());
        }
    }
}
