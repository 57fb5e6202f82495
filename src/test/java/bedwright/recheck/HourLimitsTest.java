package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Labour;
import org.junit.jupiter.api.Test;

class HourLimitsTest {
    private final TestSeason season = new TestSeason();

    private HourLimits limits() {
        return new HourLimits(season.build());
    }

    @Test
    void withNoEntryOwnHoursHaveNoLimit() {
        assertThat(limits().own[0]).isEqualTo(Units.UNLIMITED);
    }

    @Test
    void withNoEntryThereAreNoHiredHours() {
        assertThat(limits().hired[0]).isZero();
    }

    @Test
    void withNoEntryCuttingHoursHaveNoLimit() {
        assertThat(limits().cutting[0]).isEqualTo(Units.UNLIMITED);
    }

    @Test
    void laterEntryOverrides() {
        season.own.add(new Labour.Hours(null, null, 40));
        season.own.add(new Labour.Hours(TestSeason.week(2), TestSeason.week(2), 10.5));
        assertThat(limits().own).startsWith(240_000_000, 240_000_000, 63_000_000, 240_000_000);
    }

    @Test
    void weekThatNoEntryHoldsHasNone() {
        season.own.add(new Labour.Hours(TestSeason.week(1), null, 40));
        assertThat(limits().own[0]).isZero();
    }

    @Test
    void entryHoldsTheWeeksWhoseFirstDayLiesInIt() {
        season.hired.add(new Labour.Hours(
                TestSeason.week(1).plusDays(1), TestSeason.week(3).minusDays(1), 1));
        assertThat(limits().hired).startsWith(0, 0, Units.TICKS_AN_HOUR, 0);
    }

    @Test
    void cuttingHoursAreHandsTimesCoolHoursTimesMornings() {
        season.cutting.add(new Labour.CuttingHours(null, null, 2, 1.5, 3));
        assertThat(limits().cutting[0]).isEqualTo(9 * Units.TICKS_AN_HOUR);
    }

    @Test
    void choresAddUp() {
        season.chores.add(new Labour.Chore("watering", null, null, 3));
        season.chores.add(new Labour.Chore("market", TestSeason.week(1), null, 6));
        assertThat(limits().chores).startsWith(3 * Units.TICKS_AN_HOUR, 9 * Units.TICKS_AN_HOUR);
    }
}
