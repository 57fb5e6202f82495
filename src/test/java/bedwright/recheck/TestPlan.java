package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeason;
import bedwright.season.KeptPlanting;
import bedwright.season.Lots;
import bedwright.season.Promise;
import bedwright.season.Standing;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A whole plan to reckon by hand. A lot is ten plants on ten metres; sown in week 0 it holds weeks 0 to 5 and gives five
 * stems in each of the weeks 3 and 4.
 */
final class TestPlan {
    static final long CENT = Units.GRAINS;

    final TestCrop crop = new TestCrop();
    final TestSeason season = new TestSeason();
    final List<KeptPlanting> plantings = new ArrayList<>();
    /** Factors on the stems of the possible seasons. */
    double[] stems = {1};

    private void grow() {
        if (season.crops.isEmpty()) {
            season.crops.add(crop.build());
            season.pool.add(new Lots(crop.name, 10, 100));
        }
    }

    void sow(int lots, int week) {
        grow();
        plantings.add(season.lots(plantings.size() + 1, lots, week));
    }

    /** A planting that was sown two weeks before the season, with stems written out if there are any. */
    void stand(Standing.WrittenStems... written) {
        grow();
        season.standing.add(
                new Standing(null, "zinnia", 10, "plain", "Bed", TestSeason.week(-2), null, List.of(written), null));
        plantings.add(season.stands(plantings.size() + 1, season.standing.size()));
    }

    /** An outlet that asks for so many stems in each of the weeks 3 and 4. */
    void outlet(double price, double stemsAWeek, @Nullable Promise promise) {
        season.outlets.add(TestSeason.outlet("shop", "focal", price, stemsAWeek, 3, 4, promise));
    }

    Tally recheck() {
        List<PossibleSeason> possible = new ArrayList<>();
        for (double factor : stems) {
            possible.add(season.possible(List.of(), 0, 0, false, false, 1, factor));
        }
        Tally tally = Recheck.of(season.build(), possible, plantings);
        assertThat(tally.faults()).isEmpty();
        return tally;
    }
}
