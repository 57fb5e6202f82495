package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Method;
import bedwright.season.Standing;
import bedwright.season.Stock;
import java.util.List;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class UseTest {
    private final TestCrop crop = new TestCrop();
    private final TestSeason season = new TestSeason();

    private Use use(int plants, int sowWeek) {
        season.crops.add(crop.build());
        Facts facts = season.facts();
        Placed placed = season.placed(plants, sowWeek);
        return new Use(facts, placed, new Calendar(facts, placed));
    }

    private static List<Integer> weeksOf(IntToLongFunction use) {
        return IntStream.range(0, 10)
                .filter(w -> use.applyAsLong(w) > 0)
                .boxed()
                .toList();
    }

    private void tray(int weeks, int hardening) {
        crop.start = Method.Start.TRAY;
        crop.trayWeeks = weeks;
        crop.hardeningWeeks = hardening;
    }

    @Test
    void metresArePlantsTimesDistanceByRows() {
        crop.rows = 3;
        crop.spacing = 0.23;
        // 40 × 0.23 / 3 = 3.0667 m.
        assertThat(use(40, 1).bed(1)).isEqualTo(3_067);
    }

    @Test
    void bedIsTakenForTheWeeksHeld() {
        Use use = use(1, 1);
        assertThat(weeksOf(use::bed)).containsExactly(1, 2, 3, 4, 5, 6);
    }

    /** The season model's own example of figures read as decimals. */
    @Test
    void sixtyThreePlantsOfSevenTenthsAreNinetyCells() {
        tray(2, 0);
        crop.emergenceShare = 0.7;
        assertThat(use(63, 1).trays(1)).isEqualTo(90);
    }

    @Test
    void traysAreInUseUntilPlantingOut() {
        tray(3, 1);
        Use use = use(10, 1);
        assertThat(weeksOf(use::trays)).containsExactly(1, 2, 3);
    }

    @Test
    void benchIsLeftToHarden() {
        tray(3, 1);
        Use use = use(10, 1);
        assertThat(weeksOf(use::bench)).containsExactly(1, 2);
    }

    @Test
    void sowingInTheBedNeedsNoCells() {
        assertThat(use(10, 1).trays(1)).isZero();
    }

    @Test
    void netIsMetresTimesLayers() {
        net();
        assertThat(use(10, 1).net("net", 1)).isEqualTo(20_000);
    }

    @Test
    void netIsInUseFromEmergenceToTheLastGraceWeek() {
        net();
        crop.clearing = 1;
        crop.emergence = 80;
        Use use = use(10, 1);
        assertThat(weeksOf(week -> use.net("net", week))).containsExactly(2, 3, 4, 5, 6);
    }

    @Test
    void coverIsInUseInTheWeeksItLies() {
        cover();
        Use use = use(10, 1);
        assertThat(weeksOf(use::cover)).containsExactly(1, 2);
    }

    private void net() {
        season.nets.add(new Stock.Net("net", 100, null, 0.25, 1.35));
        crop.net = new Method.NetUse("net", 2);
    }

    private void cover() {
        season.cover = new Stock.Cover(100, null, 0.1, 2, 0.1);
        crop.cover = new Method.CoverUse(2);
    }

    @Test
    void seedInTheBedIsPaidBySeed() {
        crop.price = 0.03;
        crop.seedsAPlace = 2;
        assertThat(use(10, 1).material()).isEqualTo(60 * Units.GRAINS);
    }

    @Test
    void seedInTraysIsPaidByCell() {
        tray(2, 0);
        crop.price = 0.1;
        crop.emergenceShare = 0.7;
        assertThat(use(63, 1).material()).isEqualTo(900 * Units.GRAINS);
    }

    @Test
    void plugsArePaidByPlant() {
        crop.start = Method.Start.PLUGS;
        crop.price = 0.5;
        crop.emergenceShare = 0.7;
        assertThat(use(10, 1).material()).isEqualTo(500 * Units.GRAINS);
    }

    @Test
    void netAndCoverWear() {
        net();
        cover();
        // 10 m of two layers at 0.25 and 10 m at 0.10.
        assertThat(use(10, 1).material()).isEqualTo((500 + 100) * Units.GRAINS);
    }

    @Test
    void materialIsRoundedOnceToTheSmallestUnit() {
        season.cover = new Stock.Cover(100, null, 0.003, 2, 0.1);
        crop.cover = new Method.CoverUse(2);
        crop.price = 0.002;
        // 0.2 and 0.3 cents.
        assertThat(use(1, 1).material()).isEqualTo(Units.GRAINS);
    }

    @Test
    void standingCostsNoMaterial() {
        crop.price = 0.5;
        season.crops.add(crop.build());
        season.standing.add(
                new Standing(null, "zinnia", 10, "plain", "Bed", TestSeason.week(-2), null, List.of(), null));
        Facts facts = season.facts();
        Placed placed = season.standing();
        assertThat(new Use(facts, placed, new Calendar(facts, placed)).material())
                .isZero();
    }
}
