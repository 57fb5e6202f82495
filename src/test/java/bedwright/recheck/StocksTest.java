package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Method;
import bedwright.season.Stock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * A lot holds ten metres in weeks 0 to 5 if it is sown in week 0, and gives five stems in each of the weeks 3 and 4.
 */
class StocksTest {
    private final TestPlan plan = new TestPlan();

    @Test
    void bedRoomOverIsCountedInMillimetresByWeek() {
        plan.season.beds = List.of(TestSeason.bed("Bed", 15));
        plan.sow(2, 0);
        assertThat(plan.recheck().hard()).isEqualTo(-100_000L * 6 * 5_000);
    }

    @Test
    void plantingsAfterOneAnotherShareTheBed() {
        plan.season.beds = List.of(TestSeason.bed("Bed", 10));
        plan.sow(1, 0);
        plan.sow(1, 6);
        assertThat(plan.recheck().hard()).isZero();
    }

    @Test
    void benchCellsOverAreCountedByWeek() {
        plan.season.bench = 15;
        tray(3, 1);
        plan.sow(2, 0);
        assertThat(plan.recheck().hard()).isEqualTo(-100_000L * 2 * 5);
    }

    @Test
    void traysThatCannotBeBoughtAreCountedByWeek() {
        plan.season.bench = 100;
        plan.season.trays = new Stock.Trays(15, null);
        tray(3, 1);
        plan.sow(2, 0);
        assertThat(plan.recheck().hard()).isEqualTo(-100_000L * 3 * 5);
    }

    @Test
    void traysAreBoughtForTheWorstWeek() {
        plan.season.bench = 100;
        plan.season.trays = new Stock.Trays(15, 0.2);
        tray(3, 1);
        plan.sow(2, 0);
        plan.sow(1, 1);
        // 30 cells in weeks 1 and 2, 15 of them bought.
        assertThat(plan.recheck().soft()).isEqualTo(-15 * 20 * TestPlan.CENT);
    }

    private void tray(int weeks, int hardening) {
        plan.crop.start = Method.Start.TRAY;
        plan.crop.trayWeeks = weeks;
        plan.crop.hardeningWeeks = hardening;
    }

    /** The net is in use in the six weeks 0 to 5, ten metres in two layers. */
    @Test
    void netThatCannotBeBoughtIsCountedInCentimetres() {
        net(null);
        plan.sow(1, 0);
        assertThat(plan.recheck().hard()).isEqualTo(-100_000L * 6 * 800);
    }

    @Test
    void netIsBoughtForTheWorstWeek() {
        net(0.5);
        plan.sow(1, 0);
        assertThat(plan.recheck().soft()).isEqualTo(-8 * 50 * TestPlan.CENT);
    }

    private void net(@Nullable Double buy) {
        plan.season.nets.add(new Stock.Net("net", 12, buy, 0, 1));
        plan.crop.net = new Method.NetUse("net", 2);
    }

    @Test
    void coverThatCannotBeBoughtIsCountedInCentimetres() {
        plan.season.cover = new Stock.Cover(4, null, 0, 2, 0.1);
        plan.crop.cover = new Method.CoverUse(3);
        plan.sow(1, 0);
        assertThat(plan.recheck().hard()).isEqualTo(-100_000L * 3 * 600);
    }

    @Test
    void overIsToldByRule() {
        net(null);
        plan.season.beds = List.of(TestSeason.bed("Bed", 9));
        plan.sow(1, 0);
        assertThat(plan.recheck().over())
                .isEqualTo(
                        new Tally.Over(6 * 1_000, 0, 0, 0, List.of(new Tally.StockOver("net", 6 * 8_000, 10_000)), 0));
    }
}
