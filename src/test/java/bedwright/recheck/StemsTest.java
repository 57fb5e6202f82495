package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.PossibleSeason;
import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Site;
import bedwright.season.Standing;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sown in the first week the crop is in cut in weeks 3 and 4, half of its stems in each; week 5 is its grace. */
class StemsTest {
    private final TestCrop crop = new TestCrop();
    private final TestSeason season = new TestSeason();

    private double[] ofAPlant(PossibleSeason possible) {
        Facts facts = season.facts();
        Placed placed = season.placed(1, 0);
        return new Stems(facts).ofAPlant(placed, possible, new Calendar(facts, placed));
    }

    private double[] ofAPlant(boolean badSeedBed, double firstCut, double stems) {
        season.crops.add(crop.build());
        return ofAPlant(season.possible(List.of(), 0, 0, badSeedBed, false, firstCut, stems));
    }

    private double[] ofAPlant() {
        return ofAPlant(false, 1, 1);
    }

    /** 1/100 stems in week 3 of a lot, by kind, of a plant's stems that are given. */
    private long[][] ofALot(int plants, double ofAPlant) {
        season.crops.add(crop.build());
        double[] stems = new double[season.weeks];
        stems[3] = ofAPlant;
        return new Stems(season.facts()).ofALot(season.placed(plants, 0), stems);
    }

    @Test
    void stemsAreAllSharesMultiplied() {
        crop.stems = 2;
        crop.saleable = 0.9;
        crop.emergenceShare = 0.8;
        assertThat(ofAPlant()[3]).isCloseTo(2 * 0.5 * 0.9 * 0.8, within(1e-12));
    }

    @Test
    void seasonsFactorMultiplies() {
        assertThat(ofAPlant(false, 1, 1.3)[3]).isCloseTo(0.65, within(1e-12));
    }

    @Test
    void badSeedBedLeavesItsShare() {
        season.badSeedBed = new Site.BadSeedBed(0.2, 0.5);
        assertThat(ofAPlant(true, 1, 1)[3]).isCloseTo(0.25, within(1e-12));
    }

    @Test
    void badSeedBedIsNothingToTubers() {
        season.badSeedBed = new Site.BadSeedBed(0.2, 0.5);
        crop.start = Method.Start.SET;
        assertThat(ofAPlant(true, 1, 1)[3]).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void normalSeasonTakesBadSeedBedsByExpectation() {
        season.badSeedBed = new Site.BadSeedBed(0.2, 0.5);
        season.crops.add(crop.build());
        assertThat(ofAPlant(season.facts().normal())[3]).isCloseTo(0.5 * (1 - 0.2 * 0.5), within(1e-12));
    }

    @Test
    void standOfTraysIsWhole() {
        crop.start = Method.Start.TRAY;
        crop.headStart = 50;
        crop.emergenceShare = 0.8;
        // In cut from day 16, five days in week 2.
        assertThat(ofAPlant()[2]).isCloseTo(5.0 / 14, within(1e-12));
    }

    @Test
    void standOfPlugsIsTheirShare() {
        crop.start = Method.Start.PLUGS;
        crop.headStart = 50;
        crop.emergenceShare = 0.8;
        assertThat(ofAPlant()[2]).isCloseTo(0.8 * 5 / 14, within(1e-12));
    }

    /** At 297 °C·d it is in cut from day 29 to day 42, the last of them in week 6. */
    @Test
    void stemsLaterThanTheGraceWeeksAreLost() {
        assertThat(ofAPlant(false, 1.35, 1))
                .containsExactly(new double[] {0, 0, 0, 0, 6.0 / 14, 0.5, 0, 0, 0, 0}, within(1e-12));
    }

    @Test
    void whatIsNeverInCutNormallyMayBeInAWarmSeason() {
        crop.firstCut = 1_000;
        assertThat(ofAPlant(false, 0.5, 1)[7]).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void whatIsNotInCutGivesNothing() {
        assertThat(ofAPlant(false, 5, 1)).containsOnly(0);
    }

    @Test
    void stemsAreRoundedHalfUpByLot() {
        assertThat(ofALot(1, 0.165)[0][3]).isEqualTo(17);
    }

    @Test
    void stemsAreOfSeveralKindsInFixedShares() {
        season.roles = List.of(TestSeason.role("focal", 0, 0), TestSeason.role("filler", 0, 0));
        crop.kinds = List.of(new Crop.KindShare("focal", 0.75), new Crop.KindShare("filler", 0.25));
        long[][] stems = ofALot(10, 1);
        assertThat(List.of(stems[0][3], stems[1][3])).containsExactly(750L, 250L);
    }

    @Test
    void methodMayGiveKindsOfItsOwn() {
        season.roles = List.of(TestSeason.role("focal", 0, 0), TestSeason.role("filler", 0, 0));
        crop.methodKinds = List.of(new Crop.KindShare("filler", 1));
        assertThat(ofALot(10, 1)[1][3]).isEqualTo(1_000);
    }

    @Test
    void writtenStemsAreTakenAsTheyAre() {
        season.crops.add(crop.build());
        season.standing.add(new Standing(
                null,
                "zinnia",
                10,
                "plain",
                "Bed",
                null,
                null,
                List.of(
                        new Standing.WrittenStems(TestSeason.week(2), null, 12.5),
                        new Standing.WrittenStems(TestSeason.week(2), "focal", 50.5)),
                null));
        long[][] stems = new Stems(season.facts()).ofALot(season.standing(), new double[season.weeks]);
        assertThat(stems[0][2]).isEqualTo(6_300);
    }

    @Test
    void standingSownBeforeTheSeasonKnowsNoSeedBedOfIt() {
        season.badSeedBed = new Site.BadSeedBed(1, 0.5);
        season.crops.add(crop.build());
        season.standing.add(
                new Standing(null, "zinnia", 1, "plain", "Bed", TestSeason.week(-2), null, List.of(), null));
        Facts facts = season.facts();
        Placed placed = season.standing();
        PossibleSeason possible = season.possible(List.of(), 0, 0, true, false, 1, 1);
        double[] stems = new Stems(facts).ofAPlant(placed, possible, new Calendar(facts, placed));
        assertThat(stems[1]).isCloseTo(0.5, within(1e-12));
    }
}
