package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Job;
import bedwright.season.Method;
import bedwright.season.Stock;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A calendar of which something came otherwise: pulled early, or a job a week late. Cut in weeks 3 and 4, grace in 5. */
class ChangedCalendarTest {
    private final SmallSeason season = new SmallSeason();
    private final SmallCrop crop = season.crop;

    private Calendar pulledIn(int week) {
        return season.calendar(0).until(week, crop.build().methods().getFirst());
    }

    private Calendar late(Job... jobs) {
        return season.calendar(0).late(Set.of(jobs), season.weeks);
    }

    private void netFromWeekOne() {
        season.nets.add(new Stock.Net("mesh", 100, null, 0, 1.35));
        crop.net = new Method.NetUse("mesh", 1);
        crop.emergence = 80;
    }

    private void pinchedInWeekTwo() {
        crop.pinch = 150.0;
        crop.pinched = true;
    }

    @Test
    void theWeekOfPullingIsTheLastThatIsHeldAndCut() {
        assertThat(pulledIn(3))
                .extracting(Calendar::heldFrom, Calendar::heldTo, Calendar::lastHeld, Calendar::lastCut)
                .containsExactly(0, 4, 3, 3);
    }

    @Test
    void clearingComesOffTheWeeksOfCutting() {
        crop.clearing = 1;

        assertThat(pulledIn(4)).extracting(Calendar::heldTo, Calendar::lastCut).containsExactly(5, 3);
    }

    @Test
    void pulledAWeekBeforeItsEndItHoldsAWeekLess() {
        assertThat(pulledIn(4).heldTo()).isEqualTo(5);
    }

    @Test
    void pulledInItsLastWeekNothingChanges() {
        assertThat(pulledIn(5)).isEqualTo(season.calendar(0));
    }

    @Test
    void aPlantingThatIsNeverCutCanBePulled() {
        crop.firstCut = 701;

        assertThat(pulledIn(3)).extracting(Calendar::heldTo, Calendar::lastCut).containsExactly(4, Development.NEVER);
    }

    @Test
    void netComesDownInTheWeekOfPulling() {
        netFromWeekOne();

        assertThat(pulledIn(3))
                .extracting(Calendar::netFrom, Calendar::netTo, Calendar::netDown)
                .containsExactly(1, 4, 3);
    }

    @Test
    void netOfTheWeekOfPullingStillGoesUp() {
        netFromWeekOne();

        assertThat(pulledIn(1)).extracting(Calendar::netWeek, Calendar::netTo).containsExactly(1, 2);
    }

    @Test
    void netThatWouldComeAfterPullingIsNotNeeded() {
        netFromWeekOne();

        assertThat(pulledIn(0))
                .extracting(Calendar::netWeek, Calendar::netFrom, Calendar::netTo)
                .containsExactly(Calendar.NONE, 0, 0);
    }

    @Test
    void coverComesOffInTheWeekOfPulling() {
        crop.cover = new Method.CoverUse(4);

        assertThat(pulledIn(2))
                .extracting(Calendar::coverTo, Calendar::coverOff)
                .containsExactly(2, 2);
    }

    @Test
    void coverThatIsOffBeforePullingStaysAsItWas() {
        crop.cover = new Method.CoverUse(2);

        assertThat(pulledIn(3))
                .extracting(Calendar::coverTo, Calendar::coverOff)
                .containsExactly(2, 2);
    }

    @Test
    void whatIsPulledInTheWeekOfPinchingIsPinched() {
        pinchedInWeekTwo();

        assertThat(pulledIn(2).pinchWeek()).isEqualTo(2);
    }

    @Test
    void whatIsPulledBeforeItsStageIsNotPinched() {
        pinchedInWeekTwo();

        assertThat(pulledIn(1).pinchWeek()).isEqualTo(Development.NEVER);
    }

    @Test
    void withNothingLateNothingChanges() {
        netFromWeekOne();
        pinchedInWeekTwo();
        crop.cover = new Method.CoverUse(2);

        assertThat(late()).isEqualTo(season.calendar(0));
    }

    @Test
    void netThatGoesUpLateHoldsPlantsFromThatWeekOn() {
        netFromWeekOne();

        assertThat(late(Job.NET_UP))
                .extracting(Calendar::netWeek, Calendar::netCounts, Calendar::netFrom, Calendar::netTo)
                .containsExactly(2, 14, 2, 6);
    }

    @Test
    void netThatWouldGoUpAfterTheSeasonNeverHoldsAnything() {
        netFromWeekOne();
        season.weeks = 2;

        assertThat(late(Job.NET_UP))
                .extracting(Calendar::netWeek, Calendar::netCounts, Calendar::netFrom, Calendar::netTo)
                .containsExactly(Calendar.NONE, Integer.MAX_VALUE, 0, 0);
    }

    @Test
    void netThatComesDownLateIsInUseAWeekLonger() {
        netFromWeekOne();

        assertThat(late(Job.NET_DOWN))
                .extracting(Calendar::netDown, Calendar::netTo)
                .containsExactly(6, 7);
    }

    @Test
    void netIsNotInUseAfterTheSeason() {
        netFromWeekOne();
        season.weeks = 6;

        assertThat(late(Job.NET_DOWN).netTo()).isEqualTo(6);
    }

    @Test
    void coverThatIsLaidLateComesOffInItsOwnWeek() {
        crop.cover = new Method.CoverUse(3);

        assertThat(late(Job.COVER_ON))
                .extracting(Calendar::coverOn, Calendar::coverFrom, Calendar::coverTo, Calendar::coverOff)
                .containsExactly(1, 1, 3, 3);
    }

    @Test
    void coverThatComesOffLateIsInUseAWeekLonger() {
        crop.cover = new Method.CoverUse(3);

        assertThat(late(Job.COVER_OFF))
                .extracting(Calendar::coverTo, Calendar::coverOff)
                .containsExactly(4, 4);
    }

    @Test
    void coverOfOneWeekThatIsLateIsNotLaid() {
        crop.cover = new Method.CoverUse(1);

        assertThat(late(Job.COVER_ON))
                .extracting(Calendar::coverFrom, Calendar::coverTo, Calendar::coverOff)
                .containsExactly(0, 0, Calendar.NONE);
    }

    @Test
    void pinchingThatIsLateIsAWeekLater() {
        pinchedInWeekTwo();

        assertThat(late(Job.PINCH).pinchWeek()).isEqualTo(3);
    }

    @Test
    void coverLiesFromItsFirstDayToTheDayBeforeItComesOff() {
        crop.cover = new Method.CoverUse(2);
        Calendar calendar = season.calendar(1);

        assertThat(new int[] {6, 7, 20, 21}).satisfies(days -> {
            assertThat(calendar.isCoveredOn(days[0])).isFalse();
            assertThat(calendar.isCoveredOn(days[1])).isTrue();
            assertThat(calendar.isCoveredOn(days[2])).isTrue();
            assertThat(calendar.isCoveredOn(days[3])).isFalse();
        });
    }
}
