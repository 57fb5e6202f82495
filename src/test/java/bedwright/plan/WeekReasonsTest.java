package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.growth.Barred;
import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Why a week is short or over, and why something is not there. */
class WeekReasonsTest {
    private static WeekReasons week(PlanFacts facts, int[] places, int week) {
        List<KeptPlanting> plan = Outcomes.of(facts, places).plantings();
        return WeekReasons.of(facts.season(), facts.seasons(), plan, week, 0);
    }

    private static List<NotThere> notThere(PlanFacts facts, int[] places, int week) {
        List<KeptPlanting> plan = Outcomes.of(facts, places).plantings();
        return NotThere.of(facts.season(), facts.seasons(), plan, 0, 0, week);
    }

    /** Ten stems are promised in week 3; a lot sown in week 0 gives five then. */
    @Test
    void aShortWeekIsMendedByAsManyLotsAsAreMissing() {
        PlanFacts facts = new HandSeason().outlet(1, 10, "{\"shortage\": 2}").facts();

        WeekReasons reasons = week(facts, HandSeason.sown(facts), 3);

        assertThat(reasons.state()).isEqualTo(WeekReasons.State.SHORT);
        WeekReasons.Mend first = reasons.mends().getFirst();
        assertThat(first.mended()).isEqualTo(1000);
        assertThat(first.tried().steps()).singleElement().satisfies(step -> {
            assertThat(step.lots()).isEqualTo(2);
            assertThat(step.from()).isNull();
        });
        assertThat(first.tried().missing()).isEqualTo(-1000);
    }

    @Test
    void aWeekWithTooManyIsMendedByLeavingSomeOutOrSowingThemElsewhen() {
        PlanFacts facts = new HandSeason().facts();

        WeekReasons reasons = week(facts, HandSeason.sown(facts, 0), 3);

        assertThat(reasons.state()).isEqualTo(WeekReasons.State.OVER);
        assertThat(reasons.mends()).isNotEmpty().allSatisfy(mend -> {
            assertThat(mend.mended()).isEqualTo(500);
            assertThat(mend.tried().after().leftOver()[0][3]).containsOnly(0);
        });
    }

    @Test
    void aWeekWithWhatIsPromisedNeedsNoMending() {
        PlanFacts facts = new HandSeason().outlet(1, 10, "{\"shortage\": 2}").facts();

        WeekReasons reasons = week(facts, HandSeason.sown(facts, 0, 0), 3);

        assertThat(reasons.state()).isEqualTo(WeekReasons.State.ENOUGH);
        assertThat(reasons.mends()).isEmpty();
    }

    /** Lots of ten metres in a bed of 15. */
    @Test
    void whatStandsInTheWayIsLeftOutToSeeWhatThatWouldCost() {
        PlanFacts facts =
                new HandSeason().with("\"length\": 100", "\"length\": 15").facts();

        NotThere way = notThere(facts, HandSeason.sown(facts, 0), 2).getFirst();

        assertThat(Objects.requireNonNull(way.tried()).isStopped()).isTrue();
        Tried withRoom = Objects.requireNonNull(way.inPlaceOfOthers());
        assertThat(withRoom.isStopped()).isFalse();
        assertThat(withRoom.steps()).hasSize(2);
        assertThat(withRoom.steps().getLast().to()).isNull();
    }

    @Test
    void whatFitsNeedsNobodyToMakeRoom() {
        PlanFacts facts = new HandSeason().facts();

        NotThere way = notThere(facts, HandSeason.sown(facts, 0), 2).getFirst();

        assertThat(Objects.requireNonNull(way.tried()).isStopped()).isFalse();
        assertThat(way.inPlaceOfOthers()).isNull();
    }

    /** Sown in week 8 of ten it would be cut first in week 11. */
    @Test
    void whatWouldGiveNothingIsNotTried() {
        PlanFacts facts = new HandSeason().facts();

        NotThere way = notThere(facts, HandSeason.sown(facts, 0), 8).getFirst();

        assertThat(way.barred()).isEqualTo(Barred.GIVES_NOTHING);
        assertThat(way.tried()).isNull();
    }

    @ParameterizedTest
    @ValueSource(strings = {"tray-and-bed.json", "first-bed.json"})
    void everyWayToMendAWeekScoresAsThePlanWithItMade(String file) {
        PlanFacts facts = Seasons.facts(Seasons.over(2, Seasons.of(file)));
        Outcome outcome = Outcomes.of(facts, Seasons.randomPlan(facts, new Random(12), 0.15));
        int told = 0;
        for (int week = 8; week < facts.weeks; week += 3) {
            WeekReasons reasons = WeekReasons.of(facts.season(), facts.seasons(), outcome.plantings(), week, 0);
            for (WeekReasons.Mend mend : reasons.mends()) {
                int[] places = Outcomes.places(facts, outcome.plantings());
                mend.tried().steps().forEach(step -> make(facts, places, step));
                Plan.Score made = Outcomes.of(facts, places).score();
                assertThat(mend.tried().after().score()).isEqualTo(made);
                assertThat(mend.tried().before().score()).isEqualTo(outcome.score());
                assertThat(mend.tried().rules().cost(Rule.Level.SOFT))
                        .isEqualTo(
                                seasonMoney(outcome) - seasonMoney(mend.tried().after()));
                told++;
            }
        }
        assertThat(told).isPositive();
    }

    private static long seasonMoney(Outcome outcome) {
        return Arrays.stream(outcome.money().season()).sum();
    }

    private static void make(PlanFacts facts, int[] places, Step step) {
        var from = step.from();
        var to = step.to();
        int before = from == null
                ? SeasonScore.NOWHERE
                : facts.table().find(from.stock(), from.bed(), from.sowWeek(), from.method());
        int after =
                to == null ? SeasonScore.NOWHERE : facts.table().find(to.stock(), to.bed(), to.sowWeek(), to.method());
        int left = step.lots();
        for (int p = facts.firstPlanting(step.stock()); left > 0; p++) {
            if (places[p] == before) {
                places[p] = after;
                left--;
            }
        }
    }
}
