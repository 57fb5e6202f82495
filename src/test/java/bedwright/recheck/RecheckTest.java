package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedwright.season.Job;
import bedwright.season.Labour;
import bedwright.season.Standing;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A lot holds ten metres in weeks 0 to 5 if it is sown in week 0, and gives five stems in each of the weeks 3 and 4.
 */
class RecheckTest {
    private final TestPlan plan = new TestPlan();

    @Test
    void nothingPlantedIsNothing() {
        Tally tally = plan.recheck();
        assertThat(List.of(tally.hard(), tally.medium(), tally.soft())).containsExactly(0L, 0L, 0L);
    }

    @Test
    void planIsJudgedOverASeasonAtLeast() {
        assertThatThrownBy(() -> Recheck.of(plan.season.build(), List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void lotsThatStandTogetherAreSetUpOnce() {
        plan.season.jobs.put(Job.SOW, new Labour.JobRate(30, 1));
        plan.season.ownRate = 20;
        plan.sow(2, 0);
        plan.sow(1, 0);
        // Half an hour to set up, and ten minutes for each of three lots.
        assertThat(plan.recheck().soft()).isEqualTo(-2_000 * TestPlan.CENT);
    }

    @Test
    void lotsOfDifferentWeeksAreSetUpEach() {
        plan.season.jobs.put(Job.SOW, new Labour.JobRate(30, 0));
        plan.season.ownRate = 20;
        plan.sow(1, 0);
        plan.sow(1, 1);
        assertThat(plan.recheck().soft()).isEqualTo(-2_000 * TestPlan.CENT);
    }

    @Test
    void eachStandingPlantingIsSetUpByItself() {
        plan.season.jobs.put(Job.CLEAR, new Labour.JobRate(30, 0));
        plan.season.ownRate = 20;
        plan.stand();
        plan.stand();
        assertThat(plan.recheck().soft()).isEqualTo(-2_000 * TestPlan.CENT);
    }

    @Test
    void seedIsPaidInEverySeason() {
        plan.stems = new double[] {1, 1, 1};
        plan.crop.price = 0.4;
        plan.sow(2, 0);
        assertThat(plan.recheck().soft()).isEqualTo(-3 * 20 * 40 * TestPlan.CENT);
    }

    /** Takings of 10 and 20: (60 × 30 + 40 × 2 × 10) / 100. */
    @Test
    void cautionWeighsTheWorstSeason() {
        plan.season.caution = 40;
        plan.stems = new double[] {1, 2};
        plan.outlet(1, 1_000, null);
        plan.sow(1, 0);
        assertThat(plan.recheck().soft()).isEqualTo(2_600 * TestPlan.CENT);
    }

    @Test
    void writtenStemsAreSold() {
        plan.stand(new Standing.WrittenStems(TestSeason.week(3), null, 6));
        plan.outlet(1, 1_000, null);
        assertThat(plan.recheck().soft()).isEqualTo(600 * TestPlan.CENT);
    }
}
