package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Promise;
import bedwright.season.Recipe;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Two digits: a cent a stem is 60,000 grains a hundredth. */
class DemandTest {
    private static final long CENT = 60_000;

    private final TestSeason season = new TestSeason();

    private List<Demand.Taker> takers() {
        return new Demand(season.facts()).inOrder();
    }

    private void outlet(String name, double price, @Nullable Promise promise) {
        season.outlets.add(TestSeason.outlet(name, "focal", price, 10, 1, 2, promise));
    }

    private static Promise must(int weight) {
        return new Promise(weight, null, null);
    }

    private static Promise buyIn(double price) {
        return new Promise(null, price, null);
    }

    private static Promise shortage(@Nullable Double price) {
        return new Promise(null, null, price);
    }

    private void bouquets(double stems, double price, double spare, @Nullable Promise promise, @Nullable Double buyIn) {
        season.recipes.add(new Recipe("posy", List.of(new Recipe.Line("focal", stems, price, buyIn)), 2.5));
        season.orders.add(new Order(
                "shop", "posy", List.of(new Order.Ask(TestSeason.week(1), null, 3)), spare, promise, 20, false));
    }

    @Test
    void outletAsksInEachWeekOfItsRun() {
        outlet("market", 1, null);
        assertThat(takers().get(0).asked()).startsWith(0, 1_000, 1_000, 0);
    }

    @Test
    void runsThatOverlapAddUp() {
        season.outlets.add(new Outlet(
                "market",
                "focal",
                1,
                List.of(
                        new Outlet.Ask(TestSeason.week(0), TestSeason.week(2), 1.5),
                        new Outlet.Ask(TestSeason.week(2), null, 2)),
                null,
                0));
        assertThat(takers().get(0).asked()).startsWith(150, 150, 350, 0);
    }

    @Test
    void mustComesFirstByWeightThenPrice() {
        outlet("dear", 9, null);
        outlet("light", 5, must(1));
        outlet("heavy", 1, must(2));
        outlet("light and dear", 6, must(1));
        assertThat(takers()).extracting(Demand.Taker::name).containsExactly("heavy", "light and dear", "light", "dear");
    }

    @Test
    void othersComeByWhatAStemIsWorth() {
        outlet("plain", 3, null);
        outlet("bought in", 1, buyIn(5));
        outlet("short", 2, shortage(2.0));
        outlet("usual shortage", 1.5, shortage(null));
        assertThat(takers())
                .extracting(Demand.Taker::name)
                .containsExactly("usual shortage", "bought in", "short", "plain");
    }

    @Test
    void tiesComeInTheOrderOfTheFile() {
        outlet("first", 3, null);
        outlet("second", 3, null);
        assertThat(takers()).extracting(Demand.Taker::name).containsExactly("first", "second");
    }

    @Test
    void usualShortageIsThreeTimesThePrice() {
        outlet("short", 2, shortage(null));
        assertThat(takers().get(0).extra()).isEqualTo(600 * CENT);
    }

    /** 60 minutes of cutting less 30 of clearing at 20 an hour: 0.10 a stem. */
    @Test
    void outletThatPaysNoMoreThanCuttingIsNeverServed() {
        cuttingCosts();
        outlet("cheap", 0.10, null);
        assertThat(takers()).isEmpty();
    }

    @Test
    void outletThatPaysMoreThanCuttingIsServed() {
        cuttingCosts();
        outlet("fair", 0.11, null);
        assertThat(takers()).hasSize(1);
    }

    @Test
    void promisedOutletIsServedWhateverItPays() {
        cuttingCosts();
        outlet("promised", 0, buyIn(0));
        assertThat(takers()).hasSize(1);
    }

    private void cuttingCosts() {
        season.roles = List.of(TestSeason.role("focal", 60, 30));
        season.ownRate = 20;
    }

    @Test
    void orderAsksForSpareStems() {
        bouquets(5, 1, 0.1, null, null);
        assertThat(takers().get(0).asked()[1]).isEqualTo(1_650);
    }

    /** 3 bouquets of 5 stems at 1.10 pay 16.50, spread over the 16.5 stems asked for. */
    @Test
    void orderDeliveredInFullIsPaidInFull() {
        bouquets(5, 1.10, 0.1, null, null);
        Demand.Taker line = takers().get(0);
        assertThat(line.price() * line.asked()[1]).isEqualTo(1_650 * 100 * CENT);
    }

    @Test
    void lineMayBeBoughtInAtAPriceOfItsOwn() {
        bouquets(5, 1, 0, buyIn(2), 3.0);
        assertThat(takers().get(0).extra()).isEqualTo(300 * CENT);
    }

    @Test
    void linesPriceOfBuyingInIsNothingWhereTheOrderDoesNotBuyIn() {
        bouquets(5, 1, 0, shortage(4.0), 3.0);
        assertThat(takers().get(0).extra()).isEqualTo(400 * CENT);
    }

    /** 3 × 2.5 minutes round to 8, and 20 of service. */
    @Test
    void bouquetsAreMadeUpAndServed() {
        bouquets(5, 1, 0, null, null);
        assertThat(new Demand(season.facts()).work[1]).isEqualTo(28 * Units.TICKS_A_MINUTE);
    }

    @Test
    void outletIsServedInTheWeeksInWhichItAsks() {
        season.outlets.add(
                new Outlet("market", "focal", 1, List.of(new Outlet.Ask(TestSeason.week(1), null, 5)), null, 40));
        assertThat(new Demand(season.facts()).work).startsWith(0, 40 * Units.TICKS_A_MINUTE, 0);
    }
}
