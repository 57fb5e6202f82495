package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.SiteClimate;
import bedwright.season.BedBlock;
import bedwright.season.Crop;
import bedwright.season.Method;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Season model, section 3, at 10 °C·d a day. */
class DevelopmentTest {
    private final SmallSeason season = new SmallSeason();
    private final SmallCrop crop = season.crop;

    @Test
    void sownSeedComesUpOnTheDayWhoseClockReachesTheMark() {
        assertThat(season.development(2).emergence).isEqualTo(14 + 4);
    }

    @Test
    void aMarkALittleHigherIsReachedADayLater() {
        crop.emergence = 50.001;

        assertThat(season.development(0).emergence).isEqualTo(5);
    }

    @Test
    void sownPlantsComeIntoCutOnTheDayWhoseClockReachesTheFirstCut() {
        assertThat(season.development(1).firstCut).isEqualTo(7 + 21);
    }

    @Test
    void aTunnelsWarmthDoublesThePace() {
        season.beds.set(0, SmallSeason.bed("Bed", 0, new BedBlock.Tunnel(10, 0, 1), null, List.of(), List.of()));

        assertThat(season.development(0).firstCut).isEqualTo(10);
    }

    @Test
    void aTrayIsUpOnItsPlantingOutDay() {
        crop.inTrays();

        assertThat(season.development(1).emergence).isEqualTo(28);
    }

    @Test
    void aTraysClockStartsAtHeadStartLessCheck() {
        crop.inTrays();

        assertThat(season.development(0).firstCut).as("12 days from 100 to 220").isEqualTo(21 + 11);
    }

    @Test
    void aCheckTakesNoMoreThanTheHeadStart() {
        crop.inTrays().check = 500;

        assertThat(season.development(0).firstCut).isEqualTo(21 + 21);
    }

    @Test
    void plugsStartAtHeadStartLessCheckInTheWeekTheyAreSet() {
        crop.asPlugs();

        assertThat(season.development(1).firstCut).isEqualTo(7 + 11);
    }

    @Test
    void plugsPastTheFirstCutAreCutOnTheDayTheyAreSet() {
        crop.asPlugs().headStart = 300;

        assertThat(season.development(1).firstCut).isEqualTo(7);
    }

    @Test
    void tubersStartAtNothing() {
        crop.start = Method.Start.SET;
        crop.headStart = 120;

        assertThat(season.development(1).emergence).isEqualTo(7 + 4);
    }

    @Test
    void pinchingPutsOffTheFirstCut() {
        crop.pinch = 100.0;
        crop.pinched = true;
        crop.pinchDelay = 60;

        assertThat(season.development(0).firstCut).isEqualTo(27);
    }

    @Test
    void aMethodThatIsNotPinchedHasNoDelay() {
        crop.pinch = 100.0;
        crop.pinchDelay = 60;

        assertThat(season.development(0).firstCut).isEqualTo(21);
    }

    @Test
    void theSeasonsFactorWorksOnTheWholeFirstCutDelayIncluded() {
        crop.pinch = 100.0;
        crop.pinched = true;
        crop.pinchDelay = 60;
        season.firstCutFactor = 1.1;

        assertThat(season.grown(0).developments.getFirst().firstCut)
                .as("308 °C·d")
                .isEqualTo(30);
    }

    @Test
    void theCalendarsSeasonKnowsNoFactor() {
        season.firstCutFactor = 1.1;

        assertThat(season.development(0).firstCut).isEqualTo(21);
    }

    @Test
    void daysShorterThanTheShortDayHaveItsFactor() {
        crop.dayLength = new Crop.DayLengthAnswer(20, 1.5, 22, 3, 21);

        assertThat(season.development(0).firstCut).as("330 °C·d").isEqualTo(32);
    }

    @Test
    void daysLongerThanTheLongDayHaveItsFactor() {
        crop.dayLength = new Crop.DayLengthAnswer(4, 3, 6, 0.5, 21);

        assertThat(season.development(0).firstCut).as("110 °C·d").isEqualTo(10);
    }

    @Test
    void theFactorIsLinearInTheMeanDayLengthAfterEmergence() {
        season.weeks = 40;
        crop.firstCut = 1000;
        crop.dayLength = new Crop.DayLengthAnswer(8, 0.5, 16, 1.5, 21);
        double factor = 0.5 + (meanDayLength(5, 21) - 8) / 8;

        assertThat(season.development(0).firstCut).isEqualTo((int) Math.ceil(100 * factor) - 1);
    }

    @Test
    void traysCountTheirDaysFromTheSowDayOn() {
        season.weeks = 40;
        season.latitude = 60;
        crop.inTrays().firstCut = 1000;
        crop.dayLength = new Crop.DayLengthAnswer(8, 0.5, 16, 1.5, 14);
        double factor = 0.5 + (meanDayLength(0, 14) - 8) / 8;

        assertThat(season.development(0).firstCut).isEqualTo(21 + (int) Math.ceil(100 * factor - 10) - 1);
    }

    private double meanDayLength(int first, int days) {
        SiteClimate climate = SiteClimate.of(season.build());
        double sum = 0;
        for (int d = first; d < first + days; d++) {
            sum += climate.dayLength(d);
        }
        return sum / days;
    }

    @Test
    void shortDaysStandStillAfterEmergence() {
        crop.leastDayLength = 12;
        SiteClimate climate = SiteClimate.of(season.build());
        int firstLong = 0;
        while (climate.dayLength(firstLong) < 12) {
            firstLong++;
        }

        assertThat(season.development(0).firstCut).as("17 long days").isEqualTo(firstLong + 16);
    }

    @Test
    void shortDaysDoNotHoldUpEmergence() {
        crop.leastDayLength = 24;

        assertThat(season.development(0).emergence).isEqualTo(4);
    }

    @Test
    void theSeasonsLastDayIsTheLastToReachAMark() {
        season.weeks = 3;
        crop.firstCut = 210;

        assertThat(season.development(0).firstCut).isEqualTo(20);
    }

    @Test
    void aMarkBeyondTheSeasonIsNeverReached() {
        season.weeks = 3;

        assertThat(season.development(0).firstCut).isEqualTo(Development.NEVER);
    }

    @Test
    void heightGrowsWithTheClockFromEmergenceToFirstCut() {
        assertThat(season.development(0).heightShare(12)).isCloseTo(80 / 170.0, within(1e-12));
    }

    @Test
    void heightStaysFullAfterTheFirstCut() {
        assertThat(season.development(0).heightShare(40)).isEqualTo(1);
    }

    @Test
    void nothingStandsBeforeEmergence() {
        assertThat(season.development(0).heightShare(3)).isZero();
    }

    @Test
    void aCropCutAtEmergenceStandsFullAtOnce() {
        crop.firstCut = 50;

        assertThat(season.development(0).heightShare(4)).isEqualTo(1);
    }

    @Test
    void aCropWithoutPinchingStageIsGrownAtHalfOfItsFirstCut() {
        assertThat(season.development(0).grown).isEqualTo(10);
    }

    @Test
    void aCropWithPinchingStageIsGrownAtItPinchedOrNot() {
        crop.pinch = 150.0;

        assertThat(season.development(0).grown).isEqualTo(14);
    }

    @Test
    void itIsTenderWhileTheDayStartsBelowTheMark() {
        crop.tender = 30;

        assertThat(season.development(0).hardy)
                .as("day 7 starts at 70, day 8 at 80")
                .isEqualTo(8);
    }

    /**
     * Stages of sunflower by degree-days from sowing, base 6.7 °C, simple average: emergence 97, 12 leaves 333, first
     * rays open (R5.1) 883 (Manitoba Agriculture, A. Kubinec 2014, after the North Dakota stages of growth). At 15 °C·d
     * a day they are the 7th, 23rd and 59th day.
     */
    @Test
    void sunflowerStagesFollowThePublishedSums() {
        season.min = 16.7;
        season.max = 26.7;
        crop.name = "sunflower";
        crop.convention = Crop.Convention.AVERAGE;
        crop.base = 6.7;
        crop.emergence = 97;
        crop.pinch = 333.0;
        crop.firstCut = 883;
        Development sunflower = season.development(0);

        assertThat(List.of(sunflower.emergence, sunflower.pinch, sunflower.firstCut))
                .containsExactly(6, 22, 58);
    }
}
