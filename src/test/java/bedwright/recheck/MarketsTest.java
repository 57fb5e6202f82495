package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Labour;
import bedwright.season.Promise;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A lot holds ten metres in weeks 0 to 5 if it is sown in week 0, and gives five stems in each of the weeks 3 and 4.
 */
class MarketsTest {
    private final TestPlan plan = new TestPlan();

    @Test
    void outletPaysForWhatItGets() {
        plan.outlet(1.5, 4, null);
        plan.sow(1, 0);
        assertThat(plan.recheck().soft()).isEqualTo(2 * 4 * 150 * TestPlan.CENT);
    }

    @Test
    void outletPaysForNoMoreThanThereIs() {
        plan.outlet(1.5, 40, null);
        plan.sow(1, 0);
        assertThat(plan.recheck().soft()).isEqualTo(2 * 5 * 150 * TestPlan.CENT);
    }

    @Test
    void stemsOfLotsAreRoundedOneByOne() {
        plan.crop.stems = 0.033;
        plan.outlet(1, 40, null);
        // 0.165 stems a week are 0.17 in each of three lots.
        plan.sow(3, 0);
        assertThat(plan.recheck().soft()).isEqualTo(2 * 51 * TestPlan.CENT);
    }

    @Test
    void mustThatIsMissingCountsByItsWeight() {
        plan.outlet(1, 8, new Promise(7, null, null));
        plan.sow(1, 0);
        assertThat(plan.recheck().medium()).isEqualTo(-2 * 300 * 7);
    }

    @Test
    void mustEarnsItsPriceOnWhatIsDelivered() {
        plan.outlet(1, 8, new Promise(7, null, null));
        plan.sow(1, 0);
        assertThat(plan.recheck().soft()).isEqualTo(2 * 5 * 100 * TestPlan.CENT);
    }

    @Test
    void mustThatIsMissingIsSummedOverTheSeasons() {
        plan.stems = new double[] {1, 0};
        plan.outlet(1, 8, new Promise(7, null, null));
        plan.sow(1, 0);
        assertThat(plan.recheck().medium()).isEqualTo(-2 * (300 + 800) * 7);
    }

    @Test
    void whatIsBoughtInIsPaidInFullLessItsPrice() {
        plan.outlet(1, 8, new Promise(null, 2.5, null));
        plan.sow(1, 0);
        assertThat(plan.recheck().soft()).isEqualTo(2 * (8 * 100 - 3 * 250) * TestPlan.CENT);
    }

    @Test
    void shortageCostsItsPrice() {
        plan.outlet(1, 8, new Promise(null, null, 2.0));
        plan.sow(1, 0);
        assertThat(plan.recheck().soft()).isEqualTo(2 * (5 * 100 - 3 * 200) * TestPlan.CENT);
    }

    @Test
    void usualShortageCostsThreeTimesThePrice() {
        plan.outlet(1, 8, new Promise(null, null, null));
        plan.sow(1, 0);
        assertThat(plan.recheck().soft()).isEqualTo(2 * (5 * 100 - 3 * 300) * TestPlan.CENT);
    }

    /** Five stems at 60 minutes a hundred, at 20 an hour: a euro. */
    @Test
    void cuttingTakesHoursForStemsThatGoSomewhere() {
        plan.season.roles = List.of(TestSeason.role("focal", 60, 0));
        plan.season.ownRate = 20;
        plan.outlet(1, 8, null);
        plan.sow(1, 0);
        assertThat(plan.recheck().seasons().get(0).hoursCost()).isEqualTo(2 * 100 * TestPlan.CENT);
    }

    /** One stem of five is left over, at 120 minutes a hundred. */
    @Test
    void leftoversTakeHoursToClear() {
        plan.season.roles = List.of(TestSeason.role("focal", 0, 120));
        plan.season.ownRate = 20;
        plan.outlet(1, 4, null);
        plan.sow(1, 0);
        assertThat(plan.recheck().seasons().get(0).hoursCost()).isEqualTo(2 * 40 * TestPlan.CENT);
    }

    @Test
    void hoursBeyondOnesOwnCostTheHiredRate() {
        plan.season.ownRate = 20;
        plan.season.hiredRate = 30;
        plan.season.own.add(new Labour.Hours(null, null, 2));
        plan.season.hired.add(new Labour.Hours(null, null, 5));
        plan.season.chores.add(new Labour.Chore("market", null, TestSeason.week(0), 5));
        assertThat(plan.recheck().soft()).isEqualTo(-(2 * 2000 + 3 * 3000) * TestPlan.CENT);
    }

    @Test
    void hoursOverOwnAndHiredBreakAHardRule() {
        plan.season.own.add(new Labour.Hours(null, null, 2));
        plan.season.hired.add(new Labour.Hours(null, null, 1));
        plan.season.chores.add(new Labour.Chore("market", null, TestSeason.week(0), 5));
        assertThat(plan.recheck().hard()).isEqualTo(-2 * Units.TICKS_AN_HOUR);
    }

    /** 3 and 7 hours are five on the average. */
    @Test
    void hoursAreHeldOnTheAverageOfTheSeasons() {
        cutToTheHour(5);
        assertThat(plan.recheck().hard()).isZero();
    }

    @Test
    void hoursOverAreSummedOverTheSeasons() {
        cutToTheHour(4);
        assertThat(plan.recheck().hard()).isEqualTo(-2 * 2 * Units.TICKS_AN_HOUR);
    }

    /** Stems that take 3 hours to cut in one season and 7 in the other, in each of two weeks. */
    private void cutToTheHour(double own) {
        plan.season.roles = List.of(TestSeason.role("focal", 60, 0));
        plan.season.own.add(new Labour.Hours(null, null, own));
        plan.crop.stems = 100;
        plan.stems = new double[] {0.6, 1.4};
        plan.outlet(1, 10_000, null);
        plan.sow(1, 0);
    }

    @Test
    void cuttingHoursAreHeldByThemselves() {
        plan.season.roles = List.of(TestSeason.role("focal", 60, 0));
        plan.season.cutting.add(new Labour.CuttingHours(null, null, 1, 1, 4));
        plan.season.chores.add(new Labour.Chore("market", null, null, 50));
        plan.crop.stems = 100;
        plan.outlet(1, 10_000, null);
        plan.sow(1, 0);
        // Five hours in each of two weeks, where there are four.
        assertThat(plan.recheck().over().cuttingHours()).isEqualTo(2 * Units.TICKS_AN_HOUR);
    }
}
