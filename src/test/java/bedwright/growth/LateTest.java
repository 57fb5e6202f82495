package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedwright.season.Job;
import bedwright.season.Method;
import bedwright.season.Standing;
import bedwright.season.Stock;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a lot sown in week 0 would be with a job left for a week: it is up in week 0, cut in weeks 3 and 4, cleared in 5. */
class LateTest {
    private static final Spot SPOT = new Spot(0, 0, 0, 0);

    private final SmallSeason season = new SmallSeason();

    private ProspectTable table(Late... late) {
        return ProspectTable.at(season.build(), List.of(season.possible()), List.of(SPOT), List.of(late));
    }

    /** The row with these jobs late; the place itself is there besides, as planned. */
    private static int row(ProspectTable table, Job... jobs) {
        int place = table.find(new Late(SPOT, Set.of(jobs)));
        assertThat(table.isLate(place)).isTrue();
        assertThat(table.spot(place)).isEqualTo(SPOT);
        assertThat(table.isLate(table.find(0, 0, 0, 0))).isFalse();
        return table.row(place);
    }

    private void net() {
        season.nets.add(new Stock.Net("mesh", 100, null, 0, 1.35));
        season.crop.net = new Method.NetUse("mesh", 1);
    }

    @Test
    void aNetLeftDownIsUpAWeekLater() {
        net();
        ProspectTable table = table(new Late(SPOT, Set.of(Job.NET_UP)));
        int row = row(table, Job.NET_UP);

        assertThat(List.of(table.netFrom(row), table.netTo(row))).containsExactly(1, 6);
    }

    @Test
    void aNetLeftUpIsThereAWeekLonger() {
        net();
        ProspectTable table = table(new Late(SPOT, Set.of(Job.NET_DOWN)));
        int row = row(table, Job.NET_DOWN);

        assertThat(List.of(table.netFrom(row), table.netTo(row))).containsExactly(0, 7);
    }

    @Test
    void severalJobsMayBeLateTogether() {
        net();
        ProspectTable table = table(new Late(SPOT, Set.of(Job.NET_UP, Job.NET_DOWN)));
        int row = row(table, Job.NET_DOWN, Job.NET_UP);

        assertThat(List.of(table.netFrom(row), table.netTo(row))).containsExactly(1, 7);
    }

    /** Pinched on day 9; ten degree-days a day put the first cut from day 21 to day 28. */
    @Test
    void pinchedAWeekLateItIsCutAWeekLater() {
        season.crop.pinch = 100.0;
        season.crop.pinched = true;
        ProspectTable table = table(new Late(SPOT, Set.of(Job.PINCH)));
        int row = row(table, Job.PINCH);

        assertThat(List.of(table.blockWeek(row, 0), table.blockWeek(row, 1))).containsExactly(4, 5);
        assertThat(table.stems(row)).containsExactly(500, 500);
    }

    @Test
    void ofOneThatIsPulledEarlyNoLaterStemsCount() {
        net();
        Spot pulled = new Spot(0, 0, 0, ProspectTable.way(0, 3));
        Late late = new Late(pulled, Set.of(Job.NET_UP));
        ProspectTable table = table(late);
        int row = table.row(table.find(late));

        assertThat(table.heldTo(row)).isEqualTo(4);
        assertThat(table.blocks(row)).isEqualTo(1);
    }

    /** Covered in the weeks 0 and 1, which keeps off 2 °C; dates of frosts move 5 days for each °C. */
    private int weeksOfStemsWithTheCoverLate(int lastFrost) {
        season.cover = new Stock.Cover(100, null, 0, 2, 0.1);
        season.crop.cover = new Method.CoverUse(2);
        season.frost = SmallSeason.frost(season.starts.plusDays(lastFrost), season.starts.plusDays(210), 5);
        ProspectTable table = table(new Late(SPOT, Set.of(Job.COVER_ON)));
        assertThat(table.blocks(table.row(table.find(0, 0, 0, 0))))
                .as("laid in time")
                .isEqualTo(2);
        return table.blocks(row(table, Job.COVER_ON));
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 6})
    void aFrostBetweenEmergenceAndACoverLaidLateKills(int lastFrost) {
        assertThat(weeksOfStemsWithTheCoverLate(lastFrost)).isZero();
    }

    @Test
    void aFrostBeforeEmergenceDoesNotThoughTheCoverIsLate() {
        assertThat(weeksOfStemsWithTheCoverLate(3)).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(ints = {7, 13})
    void aFrostUnderTheCoverLaidLateDoesNot(int lastFrost) {
        assertThat(weeksOfStemsWithTheCoverLate(lastFrost)).isEqualTo(2);
    }

    @Test
    void whatWasNotAskedForIsNotThere() {
        net();
        ProspectTable table = table(new Late(SPOT, Set.of(Job.NET_UP)));

        assertThat(table.find(new Late(SPOT, Set.of(Job.NET_DOWN)))).isNegative();
    }

    @Test
    void nothingCanBeLateOfStemsThatAreWrittenOut() {
        season.stands(null, new Standing.WrittenStems(season.starts, "focal", 12));
        Late late = new Late(new Spot(1, 0, 0, 0), Set.of(Job.NET_UP));

        assertThatThrownBy(() -> table(late)).hasMessageContaining("Nothing can be late of zinnia");
    }

    @Test
    void jobsThatCannotWaitAreRefused() {
        assertThatThrownBy(() -> new Late(SPOT, Set.of(Job.NET_UP, Job.SOW)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("SOW");
    }

    @Test
    void noJobAtAllIsRefused() {
        assertThatThrownBy(() -> new Late(SPOT, Set.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
