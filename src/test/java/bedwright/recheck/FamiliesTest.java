package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.BedBlock;
import bedwright.season.Family;
import bedwright.season.Rotation;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A lot holds ten metres in weeks 0 to 5 if it is sown in week 0, and gives five stems in each of the weeks 3 and 4.
 */
class FamiliesTest {
    private final TestPlan plan = new TestPlan();

    @Test
    void restBrokenIsPaidByPlanting() {
        grewIn(2025, 2);
        plan.season.rotation = new Rotation(3, 0);
        plan.sow(2, 0);
        assertThat(plan.recheck().constants().restBroken()).isEqualTo(2 * 300 * TestPlan.CENT);
    }

    @Test
    void restKeptCostsNothing() {
        grewIn(2024, 2);
        plan.season.rotation = new Rotation(3, 0);
        plan.sow(1, 0);
        assertThat(plan.recheck().constants().restBroken()).isZero();
    }

    @Test
    void whatStandsPaysNothingForRest() {
        grewIn(2026, 2);
        plan.season.rotation = new Rotation(3, 0);
        plan.stand();
        assertThat(plan.recheck().constants().restBroken()).isZero();
    }

    private void grewIn(int year, int restYears) {
        plan.crop.family = "daisies";
        plan.season.families.add(new Family("daisies", restYears, false));
        BedBlock.Grown grown = new BedBlock.Grown("daisies", year, null);
        plan.season.beds = List.of(TestSeason.bed("Bed", 100, null, null, List.of(), List.of(grown)));
    }

    @Test
    void followingOnIsPaidByPlanting() {
        plan.crop.family = "daisies";
        plan.season.rotation = new Rotation(0, 3);
        plan.sow(1, 0);
        plan.sow(2, 6);
        assertThat(plan.recheck().constants().followOn()).isEqualTo(2 * 300 * TestPlan.CENT);
    }

    @Test
    void plantingsThatOverlapDoNotFollowOn() {
        plan.crop.family = "daisies";
        plan.season.rotation = new Rotation(0, 3);
        plan.sow(1, 0);
        plan.sow(1, 5);
        assertThat(plan.recheck().constants().followOn()).isZero();
    }

    @Test
    void whatFollowsAStandingPlantingPays() {
        plan.crop.family = "daisies";
        plan.season.rotation = new Rotation(0, 3);
        plan.sow(1, 4);
        plan.stand();
        assertThat(plan.recheck().constants().followOn()).isEqualTo(300 * TestPlan.CENT);
    }

    @Test
    void withoutAFamilyNothingFollowsOn() {
        plan.season.rotation = new Rotation(0, 3);
        plan.sow(1, 0);
        plan.sow(1, 6);
        assertThat(plan.recheck().constants().followOn()).isZero();
    }
}
