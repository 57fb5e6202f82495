package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Crop;
import bedwright.season.Method;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How stems spread over weeks, and what heat does to it: ten plants of one stem. */
class CuttingTest {
    private static final double EXACT = 1e-12;

    private final SmallSeason season = new SmallSeason();
    private final SmallCrop crop = season.crop;

    private Method method() {
        return crop.build().methods().getFirst();
    }

    @Test
    void aCutThatStartsInMidWeekSpreadsByDays() {
        crop.firstCut = 250;

        assertThat(season.stems(0))
                .as("days 24 to 37: 4, 7 and 3 of 14")
                .containsExactly(new double[] {0, 0, 0, 40 / 14.0, 70 / 14.0, 30 / 14.0, 0, 0, 0, 0}, within(EXACT));
    }

    @Test
    void eachStretchGivesItsShare() {
        crop.cutDays = 21;
        crop.cutShares = List.of(0.5, 0.3, 0.2);

        assertThat(season.stems(0)).containsExactly(new double[] {0, 0, 0, 5, 3, 2, 0, 0, 0, 0}, within(EXACT));
    }

    @Test
    void aDayInTwoStretchesTakesItsPartOfEach() {
        crop.cutDays = 7;
        crop.cutShares = List.of(0.7, 0.3);

        assertThat(Cutting.shareBy(method(), 4))
                .as("0.7 and half a day of 3.5")
                .isCloseTo(0.7 + 0.3 / 7, within(EXACT));
    }

    @Test
    void allStretchesTogetherAreAll() {
        crop.cutDays = 20;
        crop.cutShares = List.of(0.2, 0.5, 0.3);

        assertThat(Cutting.shareBy(method(), 20)).isCloseTo(1, within(EXACT));
    }

    @Test
    void theLastWeekIsThatOfTheLastDay() {
        assertThat(Cutting.lastWeek(method(), null, 22, 10)).as("day 35").isEqualTo(5);
    }

    @Test
    void theLastWeekIsNotBeyondTheSeason() {
        assertThat(Cutting.lastWeek(method(), null, 22, 5)).isEqualTo(4);
    }

    @Test
    void aHotWeekIsTheLastWhereHeatEnds() {
        crop.cutDays = 28;
        crop.grace = 4;
        crop.heat = new Crop.Heat(20, Crop.Heat.Answer.ENDS);
        season.deviation = SmallSeason.warmWeek(4, 6);

        assertThat(season.stems(0)).containsExactly(new double[] {0, 0, 0, 2.5, 2.5, 0, 0, 0, 0, 0}, within(EXACT));
    }

    @Test
    void aHotWeekIsLostWhereHeatPauses() {
        crop.cutDays = 28;
        crop.heat = new Crop.Heat(20, Crop.Heat.Answer.PAUSES);
        season.deviation = SmallSeason.warmWeek(4, 6);

        assertThat(season.stems(0)).containsExactly(new double[] {0, 0, 0, 2.5, 0, 2.5, 2.5, 0, 0, 0}, within(EXACT));
    }

    @Test
    void aWeekJustUnderTheLimitIsNotTooHot() {
        crop.heat = new Crop.Heat(15.001, Crop.Heat.Answer.PAUSES);

        assertThat(season.stems(0)[3]).isCloseTo(5, within(EXACT));
    }

    @Test
    void heatBeforeTheFirstCutDoesNothing() {
        crop.heat = new Crop.Heat(20, Crop.Heat.Answer.ENDS);
        crop.inTrays();
        season.deviation = SmallSeason.warmWeek(1, 6);

        assertThat(season.stems(0)[4]).as("days 32 to 34 of 14").isCloseTo(30 / 14.0, within(EXACT));
    }

    @Test
    void heatInTheNormalSeasonEndsTheCalendarsCut() {
        crop.cutDays = 28;
        crop.heat = new Crop.Heat(14, Crop.Heat.Answer.ENDS);

        assertThat(season.calendar(0).lastCut()).isEqualTo(3);
    }

    @Test
    void aPauseLeavesTheCalendarItsEnd() {
        crop.cutDays = 28;
        crop.heat = new Crop.Heat(14, Crop.Heat.Answer.PAUSES);

        assertThat(season.calendar(0).lastCut()).isEqualTo(6);
    }

    @Test
    void stemsAreMultipliedByWhatAPlantGivesTheSaleableShareAndTheSeasonsFactor() {
        crop.stems = 4;
        crop.saleable = 0.5;
        season.stemsFactor = 1.5;

        assertThat(season.stems(0)[3]).isCloseTo(5 * 3, within(EXACT));
    }

    @Test
    void stemsLaterThanTheGraceWeeksAreLost() {
        season.firstCutFactor = 1.5;

        assertThat(season.stems(0))
                .as("330 °C·d: days 32 to 45; the grace week is week 5")
                .containsExactly(new double[] {0, 0, 0, 0, 30 / 14.0, 5, 0, 0, 0, 0}, within(EXACT));
    }

    @Test
    void aSeasonThatNeverReachesTheFirstCutGivesNothing() {
        season.firstCutFactor = 4;

        assertThat(season.stems(0)).containsOnly(0);
    }

    @Test
    void stemsBeyondTheSeasonsEndAreLost() {
        season.weeks = 4;

        assertThat(season.stems(0)).containsExactly(new double[] {0, 0, 0, 5}, within(EXACT));
    }
}
