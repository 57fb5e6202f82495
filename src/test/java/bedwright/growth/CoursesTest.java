package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedwright.season.Job;
import bedwright.season.Standing;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The way of single lots through the normal season: sown in week 1 it is up on day 11 and in cut from day 28 on. */
class CoursesTest {
    private final SmallSeason season = new SmallSeason();

    private Course course(int stock, int sowWeek, int way) {
        return Courses.of(season.build()).course(new Spot(stock, 0, sowWeek, way));
    }

    @Test
    void aSownLotIsToldByItsDays() {
        Course course = course(0, 1, 0);

        assertThat(List.of(course.sowDay(), course.groundDay(), course.hardenWeek(), course.emergence()))
                .containsExactly(7, 7, Prospect.NONE, 11);
        assertThat(List.of(course.pinch(), course.firstCut())).containsExactly(Prospect.NONE, 28);
    }

    @Test
    void aLotInTraysIsToldWithTheWeekInWhichItGoesOutToHarden() {
        season.crop.inTrays().hardeningWeeks = 2;
        Course course = course(0, 1, 0);

        assertThat(List.of(course.sowDay(), course.groundDay(), course.hardenWeek()))
                .containsExactly(7, 28, 2);
    }

    @Test
    void whatGoesOutToHardenForNoWeekHasNoWeekOfIt() {
        season.crop.inTrays();

        assertThat(course(0, 1, 0).hardenWeek()).isEqualTo(Prospect.NONE);
    }

    /** 100 °C·d on its tenth day. */
    @Test
    void whatIsPinchedIsToldWithTheDay() {
        season.crop.pinch = 100.0;
        season.crop.pinched = true;

        assertThat(course(0, 1, 0).pinch()).isEqualTo(16);
    }

    @Test
    void pulledEarlyItIsClearedInItsLastWeek() {
        Course course = course(0, 1, ProspectTable.way(0, 3));

        assertThat(course.tasks())
                .filteredOn(task -> task.job() == Job.CLEAR)
                .extracting(Prospect.Task::week)
                .containsExactly(3);
    }

    private void stands(Standing.@Nullable ClockReading clock, List<Standing.WrittenStems> stems) {
        season.standing.add(new Standing(null, "zinnia", 30, "plain", "Bed", null, clock, stems, null));
    }

    @Test
    void whatStandsWithItsClockReadCostsNothingAndDoesNotHarden() {
        season.crop.inTrays().hardeningWeeks = 2;
        stands(new Standing.ClockReading(season.starts.minusDays(1), 100), List.of());
        Course course = course(1, 0, 0);

        assertThat(course.costs()).isEmpty();
        assertThat(course.hardenWeek()).isEqualTo(Prospect.NONE);
        assertThat(course.firstCut()).as("120 of 220 °C·d to go").isEqualTo(11);
    }

    @Test
    void workIsThatOfAsManyPlantsAsStand() {
        stands(new Standing.ClockReading(season.starts.minusDays(1), 100), List.of());

        assertThat(course(1, 0, 0).tasks())
                .filteredOn(task -> task.job() == Job.CLEAR)
                .extracting(Prospect.Task::units)
                .containsExactly(30.0);
    }

    @Test
    void ofStemsThatAreWrittenOutNothingIsTold() {
        stands(null, List.of(new Standing.WrittenStems(season.starts, "focal", 12)));
        Course course = course(1, 0, 0);

        assertThat(List.of(course.sowDay(), course.groundDay(), course.emergence(), course.firstCut()))
                .containsOnly(Prospect.NONE);
        assertThat(course.tasks()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"-1, 0", "1, 0", "0, -1", "0, 1"})
    void aStockOrBedThatIsNotThereIsRefused(int stock, int bed) {
        Courses courses = Courses.of(season.build());
        Spot spot = new Spot(stock, bed, 1, 0);

        assertThatThrownBy(() -> courses.course(spot))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(spot.toString());
    }
}
