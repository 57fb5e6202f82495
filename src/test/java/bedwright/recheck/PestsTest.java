package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.PossibleSeason;
import bedwright.season.Method;
import bedwright.season.Pest;
import bedwright.season.Point;
import bedwright.season.RoughGrass;
import bedwright.season.Stock;
import java.time.MonthDay;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A sowing of the first week lies four days as seed, and is tender for four days (30 °C·d) from the fifth day on. */
class PestsTest {
    private final TestCrop crop = new TestCrop();
    private final TestSeason season = new TestSeason();

    PestsTest() {
        crop.tender = 30;
        crop.appeal.put("slugs", 1.0);
    }

    private static Pest pest(Pest.Takes takes, @Nullable Double range) {
        return new Pest("slugs", List.of(takes), List.of(always(0.01)), range, 0.5);
    }

    private static Pest.Pressure always(double aDay) {
        return new Pest.Pressure(MonthDay.of(1, 1), MonthDay.of(12, 31), aDay);
    }

    private Pests pests(Pest pest, double year) {
        season.crops.add(crop.build());
        season.pests.add(pest);
        PossibleSeason possible = season.still();
        possible.pestYear()[0] = year;
        Facts facts = season.facts();
        Placed placed = season.placed(1, 0);
        return new Pests(facts, placed, possible, new Course(facts, placed, possible), new Calendar(facts, placed));
    }

    private double early(Pest.Takes takes) {
        return pests(pest(takes, null), 1).seedAndSeedlings();
    }

    @Test
    void seedIsTakenFromSowingToEmergence() {
        assertThat(early(Pest.Takes.SEED)).isCloseTo(Math.exp(-0.04), within(1e-12));
    }

    @Test
    void seedInTraysIsLeftAlone() {
        crop.start = Method.Start.TRAY;
        assertThat(early(Pest.Takes.SEED)).isEqualTo(1);
    }

    @Test
    void seedlingsAreTakenWhileTender() {
        assertThat(early(Pest.Takes.SEEDLINGS)).isCloseTo(Math.exp(-0.04), within(1e-12));
    }

    @Test
    void plantsPastTheTenderStageArePlantedOutSafely() {
        crop.start = Method.Start.PLUGS;
        crop.headStart = 80;
        assertThat(early(Pest.Takes.SEEDLINGS)).isEqualTo(1);
    }

    @Test
    void bloomsAreTakenOnTheSevenDaysOfTheirWeek() {
        assertThat(pests(pest(Pest.Takes.BLOOMS, null), 1).blooms(3)).isCloseTo(Math.exp(-0.07), within(1e-12));
    }

    @Test
    void bloomsPestLeavesSeedlingsAlone() {
        assertThat(early(Pest.Takes.BLOOMS)).isEqualTo(1);
    }

    @Test
    void appealMultiplies() {
        crop.appeal.put("slugs", 0.5);
        assertThat(early(Pest.Takes.SEED)).isCloseTo(Math.exp(-0.02), within(1e-12));
    }

    @Test
    void pestThatTheCropDoesNotNameLeavesItAlone() {
        crop.appeal.clear();
        assertThat(early(Pest.Takes.SEED)).isEqualTo(1);
    }

    @Test
    void yearMultiplies() {
        assertThat(pests(pest(Pest.Takes.SEED, null), 3).seedAndSeedlings()).isCloseTo(Math.exp(-0.12), within(1e-12));
    }

    @Test
    void pestFromTheRoughGrassFadesWithDistance() {
        season.roughGrass.add(new RoughGrass(new Point(20, 0), new Point(20, 100)));
        double share = pests(pest(Pest.Takes.SEED, 10.0), 1).seedAndSeedlings();
        assertThat(share).isCloseTo(Math.exp(-0.04 * Math.exp(-2)), within(1e-12));
    }

    @Test
    void pestFromTheRoughGrassStaysAwayWhereThereIsNone() {
        assertThat(pests(pest(Pest.Takes.SEED, 10.0), 1).seedAndSeedlings()).isEqualTo(1);
    }

    @Test
    void coverLetsAShareThroughWhileItLies() {
        season.cover = new Stock.Cover(100, null, 0, 2, 0.25);
        crop.cover = new Method.CoverUse(1);
        crop.tender = 60;
        // Tender on days 4 to 10: three of them under the cover, four without.
        double share = early(Pest.Takes.SEEDLINGS);
        assertThat(share).isCloseTo(Math.exp(-(0.01 * 0.25 * 3 + 0.01 * 4)), within(1e-12));
    }

    @Test
    void lastEntryThatHoldsAWeekCounts() {
        Pest pest = new Pest("slugs", List.of(Pest.Takes.SEED), List.of(always(0.01), always(0.03)), null, 0.5);
        assertThat(Pests.pressure(pest, 20)).isEqualTo(0.03);
    }

    @Test
    void pressureWrapsTheNewYear() {
        Pest.Pressure winter = new Pest.Pressure(MonthDay.of(12, 1), MonthDay.of(1, 31), 0.02);
        Pest pest = new Pest("slugs", List.of(Pest.Takes.SEED), List.of(winter), null, 0.5);
        assertThat(List.of(Pests.pressure(pest, 51), Pests.pressure(pest, 2), Pests.pressure(pest, 20)))
                .containsExactly(0.02, 0.02, 0.0);
    }

    @Test
    void weekOfTheYearHasThePressureOfItsFirstDay() {
        // Week 1 starts on 8 January.
        Pest.Pressure from9 = new Pest.Pressure(MonthDay.of(1, 9), MonthDay.of(2, 28), 0.02);
        Pest pest = new Pest("slugs", List.of(Pest.Takes.SEED), List.of(from9), null, 0.5);
        assertThat(Pests.pressure(pest, 1)).isZero();
    }
}
