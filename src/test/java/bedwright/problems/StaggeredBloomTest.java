package bedwright.problems;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeasons;
import bedwright.growth.ProspectTable;
import bedwright.season.Method;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What {@code tray-and-bed.json} is for. The dates are common practice without a source: in a warm-summer climate a
 * branching sunflower sown in the second half of April is in cut about the first of July; raised in trays two weeks
 * later and planted out it comes later.
 */
class StaggeredBloomTest {
    private static final LocalDate SOWN = LocalDate.of(2027, 4, 19);
    private static final LocalDate RAISED = LocalDate.of(2027, 5, 3);

    private final Season season = ProblemFiles.season("tray-and-bed.json");
    private final ProspectTable table = ProspectTable.of(season, List.of(PossibleSeasons.normal(season)));

    @Test
    void sownInTheSecondHalfOfAprilIsInCutAboutTheFirstOfJuly() {
        assertThat(firstCutWeek(Method.Start.SOWN, SOWN)).isEqualTo(season.weekOf(LocalDate.of(2027, 7, 1)));
    }

    @Test
    void raisedInTraysTwoWeeksLaterComesOneOrTwoWeeksAfter() {
        assertThat(firstCutWeek(Method.Start.TRAY, RAISED) - firstCutWeek(Method.Start.SOWN, SOWN))
                .isBetween(1, 2);
    }

    @Test
    void trayRaisedPlantsLoseFarLessToGrasshoppersBesideTheGrass() {
        int besideGrass = 0;
        assertThat(stems(row(Method.Start.TRAY, RAISED, besideGrass)))
                .isGreaterThan(stems(row(Method.Start.SOWN, SOWN, besideGrass)) * 1.2);
    }

    @Test
    void farFromTheGrassWhatIsSownGivesNearlyAsMuch() {
        int far = season.allBeds().size() - 1;
        assertThat(stems(row(Method.Start.SOWN, SOWN, far)))
                .isGreaterThan(stems(row(Method.Start.TRAY, RAISED, far)) * 0.8);
    }

    private int firstCutWeek(Method.Start start, LocalDate sown) {
        int row = row(start, sown, 0);
        int first = season.weeks();
        for (int block = 0; block < table.blocks(row); block++) {
            first = Math.min(first, table.blockWeek(row, block));
        }
        return first;
    }

    private double stems(int row) {
        double stems = 0;
        for (int hundredths : table.stems(row)) {
            stems += hundredths / 100.0;
        }
        return stems;
    }

    private int row(Method.Start start, LocalDate sown, int bed) {
        List<Method> methods = season.crops().getFirst().methods();
        for (int m = 0; m < methods.size(); m++) {
            int place = table.find(0, bed, season.weekOf(sown), m);
            if (methods.get(m).start() == start && place >= 0) {
                return table.row(place);
            }
        }
        throw new AssertionError("Not offered: " + start + " on " + sown);
    }
}
