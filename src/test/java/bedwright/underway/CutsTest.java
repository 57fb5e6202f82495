package bedwright.underway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.growth.Prospect;
import bedwright.log.SeasonLog;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** What cut notes say of the stems still to come: (cut + left + k) / (expected so far + k), season model, section 9. */
class CutsTest {
    private static final Plan PLAN = RandomStates.plan("first-bed.json");
    private static final Season SEASON = PLAN.season();

    /** The planting that is cut the longest. */
    private static final PlantingState CUT_LONG = longest();

    private static PlantingState longest() {
        PlantingState longest = null;
        int most = 0;
        for (PlantingState state : on(SEASON.dateOf(SEASON.days() - 1), "").states()) {
            int weeks = weeks(state);
            if (weeks > most) {
                most = weeks;
                longest = state;
            }
        }
        return Objects.requireNonNull(longest);
    }

    private static int weeks(PlantingState state) {
        int weeks = 0;
        for (int w = 0; w < SEASON.weeks(); w++) {
            weeks += mean(prospect(state), w) > 0 ? 1 : 0;
        }
        return weeks;
    }

    private static Remaining on(LocalDate on, String notes) {
        return Remaining.of(PLAN, SeasonLog.EMPTY.plus(PLAN, notes), on);
    }

    private static PlantingState of(Remaining remaining) {
        return remaining.states().stream()
                .filter(state -> state.number() == CUT_LONG.number())
                .findFirst()
                .orElseThrow();
    }

    private static Prospect prospect(PlantingState state) {
        return Objects.requireNonNull(state.expected());
    }

    private static double mean(Prospect prospect, int week) {
        double sum = 0;
        for (int[][] kind : prospect.stems()) {
            for (int stems : kind[week]) {
                sum += stems / 100.0 / kind[week].length;
            }
        }
        return sum;
    }

    private static double all(Prospect prospect) {
        double sum = 0;
        for (int w = 0; w < SEASON.weeks(); w++) {
            sum += mean(prospect, w);
        }
        return sum;
    }

    private static int firstWeek() {
        int week = 0;
        while (mean(prospect(CUT_LONG), week) == 0) {
            week++;
        }
        return week;
    }

    /** Notes on the last day of each of some weeks: a part of what was expected is cut. */
    private static String weekly(int weeks, double part, boolean saysLeft) {
        StringBuilder notes = new StringBuilder();
        for (int w = firstWeek(); w < firstWeek() + weeks; w++) {
            long ready = Math.round(mean(prospect(CUT_LONG), w));
            long cut = Math.round(part * ready);
            notes.append(SEASON.weekStart(w).plusDays(6))
                    .append(' ')
                    .append(CUT_LONG.number())
                    .append(" cut ")
                    .append(cut)
                    .append(saysLeft ? " left " + (ready - cut) : "")
                    .append('\n');
        }
        return notes.toString();
    }

    private static double factor(String notes, int weeks) {
        return of(on(SEASON.weekStart(firstWeek() + weeks), notes)).factor();
    }

    @Test
    void whoCutsOnlyWhatIsOrderedAndSaysSoDoesNotLowerTheForecast() {
        assertThat(factor(weekly(2, 0.4, true), 2)).isCloseTo(1, within(0.02));
    }

    @Test
    void aBareCutNoteDoesNotLowerTheForecast() {
        assertThat(factor(weekly(2, 0.4, false), 2)).isEqualTo(1);
    }

    @Test
    void aBareCutNoteOfMoreThanWasExpectedRaisesIt() {
        assertThat(factor(weekly(2, 2, false), 2)).isBetween(1.2, 2.0);
    }

    @Test
    void whoTookAllAndFoundHalfIsPromisedLessButNotHalf() {
        String notes = weekly(2, 0.5, false).replace("\n", " all\n");

        assertThat(factor(notes, 2)).isBetween(0.5, 0.9);
    }

    @Test
    void aWeekLateWithItsFirstStemNotedIsLateNotPoor() {
        Prospect usual = prospect(CUT_LONG);
        LocalDate late = SEASON.dateOf(usual.firstCut() + 7);
        PlantingState state = of(on(late.plusDays(1), late + " " + CUT_LONG.number() + " first-stem\n"));

        assertThat(state.factor()).isEqualTo(1);
        assertThat(prospect(state).firstCut()).isEqualTo(usual.firstCut() + 7);
        assertThat(prospect(state).firstCuts()).containsOnly(usual.firstCut() + 7);
        assertThat(all(prospect(state))).isGreaterThan(0.85 * all(usual));
    }

    @Test
    void aWeekLateAndCutInFullFromThenOnIsNotPoorEither() {
        LocalDate late = SEASON.dateOf(prospect(CUT_LONG).firstCut() + 7);
        String first = late + " " + CUT_LONG.number() + " first-stem\n";
        PlantingState before = of(on(late.plusDays(7), first));
        double soFar = new Cuts(SEASON, prospect(before)).soFar(late.plusDays(6));
        String cut = late.plusDays(6) + " " + CUT_LONG.number() + " cut " + Math.round(soFar) + " all\n";

        assertThat(of(on(late.plusDays(7), first + cut)).factor()).isCloseTo(1, within(0.05));
    }
}
