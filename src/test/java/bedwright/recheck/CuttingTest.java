package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.PossibleSeason;
import bedwright.season.Crop;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class CuttingTest {
    private final TestCrop crop = new TestCrop();

    /** Shares of a sowing in the first week, with two further degrees in week 4. */
    private double[] shares() {
        TestSeason season = new TestSeason(crop.build(), 1);
        PossibleSeason possible = season.still();
        Arrays.fill(possible.deviation(), 28, 35, 2);
        Facts facts = season.facts();
        Placed placed = season.placed(1, 0);
        return Cutting.shares(facts, placed, possible, new Course(facts, placed, possible));
    }

    @Test
    void stemsFallEvenlyOnTheDaysOfAStretch() {
        assertThat(shares()).containsExactly(new double[] {0, 0, 0, 0.5, 0.5, 0, 0, 0, 0, 0}, within(1e-12));
    }

    @Test
    void cuttingFromTheMiddleOfAWeekIsSummedByWeek() {
        crop.firstCut = 240;
        crop.cutDays = 10;
        assertThat(shares()).containsExactly(new double[] {0, 0, 0, 0.5, 0.5, 0, 0, 0, 0, 0}, within(1e-12));
    }

    @Test
    void stretchesHaveTheirShares() {
        crop.cutShares = List.of(0.7, 0.3);
        assertThat(shares()).containsExactly(new double[] {0, 0, 0, 0.7, 0.3, 0, 0, 0, 0, 0}, within(1e-12));
    }

    /** Ten days in four stretches of two and a half: the third day is half in the first and half in the second. */
    @Test
    void dayInTwoStretchesTakesItsPartOfEach() {
        assertThat(Cutting.ofDay(2, 10, List.of(0.1, 0.2, 0.3, 0.4)))
                .isCloseTo(0.1 * 0.5 / 2.5 + 0.2 * 0.5 / 2.5, within(1e-12));
    }

    @Test
    void daysOfAllStretchesAddUpToOne() {
        double sum = 0;
        for (int j = 0; j < 11; j++) {
            sum += Cutting.ofDay(j, 11, List.of(0.1, 0.2, 0.3, 0.4));
        }
        assertThat(sum).isCloseTo(1, within(1e-12));
    }

    @Test
    void hotWeekThatPausesLosesItsStems() {
        crop.cutDays = 21;
        crop.heat = new Crop.Heat(21, Crop.Heat.Answer.PAUSES);
        assertThat(shares()).containsExactly(new double[] {0, 0, 0, 1.0 / 3, 0, 1.0 / 3, 0, 0, 0, 0}, within(1e-12));
    }

    @Test
    void hotWeekThatEndsTheCuttingIsTheLast() {
        crop.cutDays = 21;
        crop.heat = new Crop.Heat(21, Crop.Heat.Answer.ENDS);
        assertThat(shares()).containsExactly(new double[] {0, 0, 0, 1.0 / 3, 1.0 / 3, 0, 0, 0, 0, 0}, within(1e-12));
    }

    @Test
    void stemsAfterTheSeasonsEndAreLost() {
        // Day 65: the warm week has added 14 to the ten of each day. Five days are left.
        crop.firstCut = 670;
        assertThat(shares()[9]).isCloseTo(5.0 / 14, within(1e-12));
    }
}
