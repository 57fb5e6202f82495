package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Method;
import bedwright.season.Stock;
import org.junit.jupiter.api.Test;

/** The weeks of a planting in the normal season, at 10 °C·d a day. */
class CalendarTest {
    private final SmallSeason season = new SmallSeason();
    private final SmallCrop crop = season.crop;

    private void net() {
        season.nets.add(new Stock.Net("mesh", 100, null, 0, 1.35));
        crop.net = new Method.NetUse("mesh", 1);
    }

    @Test
    void aSownPlantingHoldsItsBedFromTheSowWeek() {
        assertThat(season.calendar(2).heldFrom()).isEqualTo(2);
    }

    @Test
    void aTrayRaisedPlantingHoldsItsBedFromPlantingOut() {
        crop.inTrays();

        assertThat(season.calendar(2).heldFrom()).isEqualTo(5);
    }

    @Test
    void itHoldsThroughCutGraceAndClearing() {
        crop.grace = 2;
        crop.clearing = 1;

        assertThat(season.calendar(1).heldTo())
                .as("cut in weeks 4 and 5, grace 6 and 7, cleared in 8")
                .isEqualTo(9);
    }

    @Test
    void theHoldEndsWithTheSeason() {
        crop.grace = 9;

        assertThat(season.calendar(1).heldTo()).isEqualTo(10);
    }

    @Test
    void aPlantingThatIsNeverCutHoldsToTheEnd() {
        crop.firstCut = 701;

        assertThat(season.calendar(0).heldTo()).isEqualTo(10);
    }

    @Test
    void aPossibleSeasonLeavesTheHoldAsItIs() {
        season.firstCutFactor = 1.5;

        assertThat(season.calendar(0).heldTo()).isEqualTo(6);
    }

    @Test
    void netGoesUpOverSownPlantsInTheWeekTheyComeUp() {
        net();
        crop.emergence = 80;

        assertThat(season.calendar(1).netWeek()).isEqualTo(2);
    }

    @Test
    void netGoesUpOverRaisedPlantsWhenTheyArePlantedOut() {
        net();
        crop.inTrays();

        assertThat(season.calendar(1).netWeek()).isEqualTo(4);
    }

    @Test
    void netStaysToTheLastGraceWeek() {
        net();
        crop.clearing = 2;

        assertThat(season.calendar(0).netTo()).isEqualTo(6);
    }

    @Test
    void aPlantingThatNeverComesUpNeedsNoNet() {
        net();
        crop.emergence = 701;

        assertThat(season.calendar(0).netWeek()).isEqualTo(Calendar.NONE);
    }

    @Test
    void coverLiesForTheWeeksOfTheMethod() {
        crop.cover = new Method.CoverUse(2);

        assertThat(season.calendar(1))
                .extracting(Calendar::coverFrom, Calendar::coverTo, Calendar::coverOff)
                .containsExactly(1, 3, 3);
    }

    @Test
    void coverWithoutWeeksLiesUntilTheWeekInWhichItIsNoLongerTender() {
        crop.cover = new Method.CoverUse(null);
        crop.tender = 100;

        assertThat(season.calendar(0).coverTo()).as("day 15 starts at 150").isEqualTo(2);
    }

    @Test
    void coverLiesAtLeastAWeek() {
        crop.cover = new Method.CoverUse(null);

        assertThat(season.calendar(0).coverTo()).isEqualTo(1);
    }

    @Test
    void coverOfAPlantingThatStaysTenderLiesToTheEnd() {
        crop.cover = new Method.CoverUse(null);
        crop.tender = 5000;

        assertThat(season.calendar(0).coverTo()).isEqualTo(10);
    }

    @Test
    void aPinchedPlantingIsPinchedInTheWeekOfItsStage() {
        crop.pinch = 150.0;
        crop.pinched = true;

        assertThat(season.calendar(0).pinchWeek()).isEqualTo(2);
    }

    @Test
    void aPlantingThatIsNotPinchedHasNoPinchWeek() {
        crop.pinch = 150.0;

        assertThat(season.calendar(0).pinchWeek()).isEqualTo(Development.NEVER);
    }
}
