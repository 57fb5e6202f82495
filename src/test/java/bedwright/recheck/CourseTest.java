package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Standing;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Dates by hand: at 20 °C over a base of 10 °C each day adds 10 °C·d. */
class CourseTest {
    private final TestCrop crop = new TestCrop();

    private Course normal(int sowWeek) {
        TestSeason season = new TestSeason(crop.build(), 1);
        Facts facts = season.facts();
        return new Course(facts, season.placed(1, sowWeek), facts.normal());
    }

    private Course ofAll(double firstCutFactor) {
        TestSeason season = new TestSeason(crop.build(), 1);
        return new Course(
                season.facts(), season.placed(1, 0), season.possible(List.of(), 0, 0, false, false, firstCutFactor, 1));
    }

    private Course standing(@Nullable LocalDate sown, Standing.@Nullable ClockReading clock) {
        TestSeason season = new TestSeason(crop.build(), 1);
        season.standing.add(new Standing(null, "zinnia", 1, "plain", "Bed", sown, clock, List.of(), null));
        Facts facts = season.facts();
        return new Course(facts, season.standing(), facts.normal());
    }

    private static Standing.ClockReading reading(int day, double degreeDays) {
        return new Standing.ClockReading(TestSeason.START.plusDays(day), degreeDays);
    }

    @Test
    void sownComesUpOnTheDayWhoseClockReachesEmergence() {
        assertThat(normal(1).emergence).isEqualTo(7 + 4);
    }

    @Test
    void firstCutIsTheDayWhoseClockReachesIt() {
        assertThat(normal(1).firstCut).isEqualTo(7 + 21);
    }

    @Test
    void setTubersComeUpLikeSeed() {
        crop.start = Method.Start.SET;
        assertThat(normal(1).emergence).isEqualTo(7 + 4);
    }

    @Test
    void plugsAreUpOnTheDayOfSetting() {
        crop.start = Method.Start.PLUGS;
        assertThat(normal(2).emergence).isEqualTo(14);
    }

    @Test
    void plugsStartWithTheirHeadStartLessTheCheck() {
        crop.start = Method.Start.PLUGS;
        crop.headStart = 70;
        crop.check = 20;
        assertThat(normal(2).firstCut).isEqualTo(14 + 16);
    }

    @Test
    void checkBeyondTheHeadStartLeavesAClockOfNothing() {
        crop.start = Method.Start.PLUGS;
        crop.headStart = 10;
        crop.check = 20;
        assertThat(normal(2).firstCut).isEqualTo(14 + 21);
    }

    @Test
    void traysStartTheirClockOnPlantingOut() {
        crop.start = Method.Start.TRAY;
        crop.trayWeeks = 2;
        crop.headStart = 50;
        assertThat(normal(1).firstCut).isEqualTo(7 * 3 + 16);
    }

    @Test
    void whatIsPlantedOutAfterTheEndNeverComesUp() {
        crop.start = Method.Start.TRAY;
        crop.trayWeeks = 3;
        assertThat(normal(8).emergence).isEqualTo(Facts.NEVER);
    }

    @Test
    void firstCutBeyondTheSeasonsEndNeverComes() {
        crop.firstCut = 701;
        assertThat(normal(0).firstCut).isEqualTo(Facts.NEVER);
    }

    @Test
    void lastDayOfTheSeasonMayBeTheFirstCut() {
        crop.firstCut = 700;
        assertThat(normal(0).firstCut).isEqualTo(69);
    }

    @Test
    void daysTooShortAddNothingAfterEmergence() {
        crop.leastDayLength = 24;
        assertThat(normal(0).firstCut).isEqualTo(Facts.NEVER);
    }

    @Test
    void daysTooShortStillBringUpTheSeed() {
        crop.leastDayLength = 24;
        assertThat(normal(0).emergence).isEqualTo(4);
    }

    @Test
    void daysTooShortAddNothingFromPlantingOut() {
        crop.leastDayLength = 24;
        crop.start = Method.Start.PLUGS;
        crop.firstCut = 10;
        assertThat(normal(0).firstCut).isEqualTo(Facts.NEVER);
    }

    @Test
    void pinchingPutsOffTheFirstCut() {
        crop.pinched = true;
        crop.pinchDelay = 30;
        assertThat(normal(0).firstCut).isEqualTo(24);
    }

    @Test
    void unpinchedKnowsNoDelay() {
        crop.pinchDelay = 30;
        assertThat(normal(0).firstCut).isEqualTo(21);
    }

    @Test
    void doubtOfASeasonStretchesTheWholeOfTheFirstCut() {
        crop.pinched = true;
        crop.pinchDelay = 20;
        assertThat(ofAll(1.5).firstCut).isEqualTo(35);
    }

    @Test
    void longDaysTakeTheFactorOfTheLongDay() {
        crop.dayLength = new Crop.DayLengthAnswer(1, 1, 2, 1.5, 21);
        assertThat(normal(0).firstCutMark).isEqualTo(330);
    }

    @Test
    void shortDaysTakeTheFactorOfTheShortDay() {
        crop.dayLength = new Crop.DayLengthAnswer(23, 0.5, 24, 2, 21);
        assertThat(normal(0).firstCutMark).isEqualTo(110);
    }

    /**
     * The days from 10 to 30 March centre on the equinox: twelve hours, and at 45° some 2 × 0.8333/15/cos 45° = 0.157 h
     * more by refraction and the sun's width. Between 0 h with a factor of 1 and 24 h with 3 that is 2.013.
     */
    @Test
    void daysBetweenTakeAFactorBetween() {
        crop.emergence = 90;
        crop.dayLength = new Crop.DayLengthAnswer(0, 1, 24, 3, 21);
        assertThat(normal(0).firstCutMark).isCloseTo(220 * 2.013, within(2.0));
    }

    @Test
    void sensitiveDaysOfPlugsBeginOnTheDayOfSetting() {
        crop.dayLength = new Crop.DayLengthAnswer(0, 1, 24, 25, 1);
        crop.start = Method.Start.PLUGS;
        TestSeason season = new TestSeason(crop.build(), 1);
        double hours = season.facts().climate.dayLength(14);
        assertThat(normal(2).firstCutMark).isCloseTo(220 * (1 + hours), within(1e-9));
    }

    @Test
    void sensitiveDaysOfSeedBeginOnTheDayAfterEmergence() {
        crop.dayLength = new Crop.DayLengthAnswer(0, 1, 24, 25, 1);
        TestSeason season = new TestSeason(crop.build(), 1);
        double hours = season.facts().climate.dayLength(5);
        assertThat(normal(0).firstCutMark).isCloseTo(220 * (1 + hours), within(1e-9));
    }

    @Test
    void grownIsHalfOfTheFirstCutWhereThereIsNoPinchingStage() {
        assertThat(normal(0).grown).isEqualTo(10);
    }

    @Test
    void grownIsThePinchingStageWhereThereIsOne() {
        crop.pinch = 80.0;
        assertThat(normal(0).grown).isEqualTo(7);
    }

    @Test
    void hardyIsTheFirstDayThatStartsPastTheTenderStage() {
        crop.tender = 30;
        assertThat(normal(0).hardy).isEqualTo(8);
    }

    @Test
    void heightGrowsWithTheClockFromEmergence() {
        assertThat(normal(0).height(13)).isCloseTo(90.0 / 170, within(1e-12));
    }

    @Test
    void heightIsNothingBeforeEmergence() {
        assertThat(normal(0).height(3)).isZero();
    }

    @Test
    void heightIsFullFromEmergenceWhereTheFirstCutComesNoLater() {
        crop.firstCut = 50;
        assertThat(normal(0).height(4)).isEqualTo(1);
    }

    @Test
    void standingRunsFromItsSowDayBeforeTheSeason() {
        assertThat(standing(TestSeason.week(-2), null).firstCut).isEqualTo(-14 + 21);
    }

    @Test
    void clockReadRunsOnFromTheNextDay() {
        assertThat(standing(null, reading(-3, 100)).firstCut).isEqualTo(9);
    }

    @Test
    void clockReadPastEmergenceBeforeTheSeasonIsUpOnItsFirstDay() {
        assertThat(standing(null, reading(-3, 100)).emergence).isZero();
    }

    @Test
    void clockReadPastEmergenceInTheSeasonIsUpOnThatDay() {
        assertThat(standing(null, reading(2, 100)).emergence).isEqualTo(2);
    }

    @Test
    void clockReadShortOfEmergenceComesUpWhenItIsReached() {
        assertThat(standing(null, reading(-3, 10)).emergence).isEqualTo(1);
    }
}
