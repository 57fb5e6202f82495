package bedwright.underway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.PossibleSeasons;
import bedwright.growth.Prospect;
import bedwright.growth.Weathered;
import bedwright.log.SeasonLog;
import bedwright.plan.InForce;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import bedwright.season.Plan;
import bedwright.season.Sampling;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a noted night or gust does to what stands, and until when: a bed sown on 10 May, of which some is up by 9 June and
 * nothing is cut.
 */
class NotedWeatherTest {
    private static final Plan PLAN = RandomStates.plan("first-bed.json");
    private static final LocalDate ON = LocalDate.of(2027, 6, 9);
    private static final PlantingState UP = firstUp();

    private static PlantingState firstUp() {
        return left(PLAN).states().stream()
                .filter(state -> state.stage() == PlantingState.Stage.GROWING && toCome(state) > 100)
                .findFirst()
                .orElseThrow();
    }

    private static Remaining left(Plan plan, String... notes) {
        return left(plan, ON, notes);
    }

    private static Remaining left(Plan plan, LocalDate on, String... notes) {
        return Remaining.of(plan, SeasonLog.EMPTY.plus(plan, String.join("\n", notes) + "\n"), on);
    }

    private static PlantingState after(String... notes) {
        return left(PLAN, notes).states().stream()
                .filter(state -> state.number() == UP.number())
                .findFirst()
                .orElseThrow();
    }

    private static double toCome(PlantingState state) {
        return Weeks.mean(Objects.requireNonNull(state.expected()), 0, state.factor());
    }

    private static Prospect.Surviving usual(PlantingState state) {
        return Objects.requireNonNull(state.expected()).usual();
    }

    @Test
    void aNightThatItDoesNotStandTakesAllThatWasToComeInEveryPossibleSeason() {
        PlantingState state = after("7-Jun weather min -6 max 9");

        assertThat(toCome(state)).isZero();
        assertThat(usual(state).springOrWinter()).isZero();
        assertThat(state.weathered())
                .containsExactly(
                        new Weathered(Weathered.Cause.NIGHT, PLAN.season().dayOf(LocalDate.of(2027, 6, 7)), -6, 1, 1));
    }

    @Test
    void itStillHoldsItsBedUntilItsLossIsNoted() {
        PlantingState state = after("7-Jun weather min -6 max 9");

        assertThat(state.isAlive()).isTrue();
        assertThat(Objects.requireNonNull(state.expected()).heldTo())
                .isEqualTo(Objects.requireNonNull(UP.expected()).heldTo());
    }

    @Test
    void aMildNightTakesNothing() {
        PlantingState state = after("7-Jun weather min 9 max 21");

        assertThat(toCome(state)).isPositive();
        assertThat(state.weathered()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"stands 40%", "colour", "lost 60% frost", "lost 60% wind", "lost 60% pest", "lost 60%"})
    void whatWasSeenToStandAfterTheNightWasNotKilledByIt(String seen) {
        PlantingState state = after("7-Jun weather min -6 max 9", "8-Jun " + UP.number() + " " + seen);

        assertThat(toCome(state)).isPositive();
        assertThat(state.weathered()).isEmpty();
    }

    @Test
    void aCountAfterTheNightIsAllThatIsLeft() {
        String count = "8-Jun " + UP.number() + " stands 40%";
        // The same warmth in the mean, so that it comes on as fast.
        PlantingState cold = after("7-Jun weather min -6 max 30", count);
        PlantingState mild = after("7-Jun weather min 6 max 18", count);

        assertThat(toCome(cold)).isCloseTo(toCome(mild), within(1e-9));
    }

    @Test
    void whatWasCountedBeforeTheNightIsKilledByIt() {
        assertThat(toCome(after("6-Jun " + UP.number() + " stands 40%", "7-Jun weather min -6 max 9")))
                .isZero();
    }

    @Test
    void aNightThatIsTakenBackKillsNothing() {
        assertThat(toCome(after("7-Jun weather min -6 max 9", "8-Jun take-back 1")))
                .isCloseTo(toCome(UP), within(1e-9));
    }

    @Test
    void whatIsSownAfterTheNightKnowsNothingOfIt() {
        LocalDate early = LocalDate.of(2027, 5, 20);
        List<PlantingState> planned = left(PLAN, early).states();
        List<PlantingState> now =
                left(PLAN, early, "20-May weather min -6 max 30").states();
        int looked = 0;
        for (int i = 0; i < planned.size(); i++) {
            if (planned.get(i).stage() == PlantingState.Stage.TO_COME) {
                looked++;
                assertThat(toCome(now.get(i))).isPositive();
            }
        }
        assertThat(looked).isPositive();
    }

    /** Not the same: in possible seasons it is higher or lower than in the normal one. */
    @Test
    void aGustTakesAboutTheSameInTheNormalSeasonAsInThePossibleOnes() {
        LocalDate late = LocalDate.of(2027, 7, 5);
        List<PlantingState> planned = left(PLAN, late).states();
        List<PlantingState> now = left(PLAN, late, "4-Jul weather gust 40 west").states();
        int looked = 0;
        for (int i = 0; i < now.size(); i++) {
            PlantingState state = now.get(i);
            if (state.isAlive() && state.weathered().size() == 1 && isCutLater(state, late)) {
                looked++;
                double share = state.weathered().getFirst().share();
                double left = usual(state).storms() / usual(planned.get(i)).storms();
                assertThat(1 - left).isCloseTo(share, within(0.1));
            }
        }
        assertThat(looked).isPositive();
    }

    private static boolean isCutLater(PlantingState state, LocalDate on) {
        return Objects.requireNonNull(state.expected()).firstCut()
                > PLAN.season().dayOf(on);
    }

    @Test
    void aLossToWindNotedAfterTheGustIsAllThatItTook() {
        String lost = "8-Jun " + UP.number() + " lost 10% wind";

        assertThat(toCome(after("8-Jun weather gust 60 west", lost))).isCloseTo(toCome(after(lost)), within(1e-9));
        assertThat(after("8-Jun weather gust 60 west", lost).weathered()).isEmpty();
    }

    private static Plan inTheNormalSeason() {
        Season season = PLAN.season();
        Season normal = season.with(new Sampling(1, 1, season.possible().doubt(), List.of()));
        return new Plan(PLAN.version(), normal, PLAN.making(), PLAN.score(), PLAN.plantings());
    }

    private static void assertCountedAlike(Season season) {
        PlanFacts facts = InForce.facts(season, PossibleSeasons.of(season), false);
        Outcome outcome = Outcomes.of(facts, InForce.places(facts));
        Tally tally = Recheck.of(facts.season(), facts.seasons(), outcome.plantings());

        assertThat(tally.faults()).isEmpty();
        assertThat(new Plan.Score(tally.hard(), tally.medium(), tally.soft())).isEqualTo(outcome.score());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "7-Jun weather min -6 max 9",
                "20-May weather min -1 max 9",
                "8-Jun weather gust 30 west",
                "8-Jun weather min 0 max 20 gust 45 100"
            })
    void theSameIsCountedByOtherCode(String note) {
        assertCountedAlike(left(PLAN, note).season());
        assertCountedAlike(left(inTheNormalSeason(), note).season());
    }
}
