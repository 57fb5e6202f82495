package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Method;
import bedwright.season.Pest;
import bedwright.season.Point;
import bedwright.season.RoughGrass;
import bedwright.season.Site;
import bedwright.season.Stock;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Stand and pests (season model, section 4): up on day 4, no longer tender on day 8. */
class LossesTest {
    private static final double EXACT = 1e-12;

    private final SmallSeason season = new SmallSeason();
    private final SmallCrop crop = season.crop;

    private void badSeedBeds() {
        season.badSeedBed = new Site.BadSeedBed(0.25, 0.4);
        crop.emergenceShare = 0.8;
    }

    private double stand() {
        return season.losses(0).stand(season.possible());
    }

    @Test
    void aBadSeedBedLeavesItsShareOfWhatComesUp() {
        badSeedBeds();
        season.badSeedBeds = true;

        assertThat(stand()).isCloseTo(0.8 * 0.4, within(EXACT));
    }

    @Test
    void aGoodSeedBedLeavesTheEmergenceShare() {
        badSeedBeds();

        assertThat(stand()).isEqualTo(0.8);
    }

    @Test
    void theNormalSeedBedIsTheMeanOfGoodAndBad() {
        badSeedBeds();

        assertThat(season.losses(0).stand(season.normal())).isCloseTo(0.8 * 0.85, within(EXACT));
    }

    @Test
    void moreCellsMakeGoodWhatDoesNotComeUpInTrays() {
        badSeedBeds();
        crop.inTrays();

        assertThat(stand()).isEqualTo(1);
    }

    @Test
    void seedBedWeatherDoesNotTouchPlugs() {
        badSeedBeds();
        season.badSeedBeds = true;
        crop.asPlugs();

        assertThat(stand()).isEqualTo(0.8);
    }

    @Test
    void seedBedWeatherDoesNotTouchTubers() {
        badSeedBeds();
        season.badSeedBeds = true;
        crop.start = Method.Start.SET;

        assertThat(stand()).isEqualTo(0.8);
    }

    private void pest(Pest.Takes takes) {
        season.pests.add(SmallSeason.pest(0.01, null, takes));
        crop.appeal.put("slugs", 1.0);
        crop.tender = 30;
    }

    private double pestLeaves() {
        return season.losses(0).pest(0, season.possible(), season.development(0));
    }

    @Test
    void seedIsTakenFromSowingToEmergence() {
        pest(Pest.Takes.SEED);

        assertThat(pestLeaves()).as("days 0 to 3").isCloseTo(Math.exp(-0.04), within(EXACT));
    }

    @Test
    void seedInTraysIsSafe() {
        pest(Pest.Takes.SEED);
        crop.inTrays();

        assertThat(pestLeaves()).isEqualTo(1);
    }

    @Test
    void seedlingsAreTakenWhileTheyAreTender() {
        pest(Pest.Takes.SEEDLINGS);

        assertThat(pestLeaves()).as("days 4 to 7").isCloseTo(Math.exp(-0.04), within(EXACT));
    }

    @Test
    void plantsThatLeaveTheTrayNoLongerTenderAreSafe() {
        pest(Pest.Takes.SEEDLINGS);
        crop.inTrays();

        assertThat(pestLeaves()).as("100 of 80 °C·d behind them").isEqualTo(1);
    }

    @Test
    void bloomsAreTakenOnTheSevenDaysOfTheWeek() {
        pest(Pest.Takes.BLOOMS);

        assertThat(season.losses(0).blooms(0, season.possible(), 3)).isCloseTo(Math.exp(-0.07), within(EXACT));
    }

    @Test
    void aPestThatTakesNoBloomsLeavesThemAll() {
        pest(Pest.Takes.SEED);

        assertThat(season.losses(0).blooms(0, season.possible(), 3)).isEqualTo(1);
    }

    @Test
    void appetiteMultipliesThePressure() {
        pest(Pest.Takes.SEED);
        crop.appeal.put("slugs", 0.3);

        assertThat(pestLeaves()).isCloseTo(Math.exp(-0.012), within(EXACT));
    }

    @Test
    void aCropThatIsNotNamedIsLeftAlone() {
        pest(Pest.Takes.SEED);
        crop.appeal.clear();

        assertThat(pestLeaves()).isEqualTo(1);
    }

    @Test
    void aBadYearMultipliesThePressure() {
        pest(Pest.Takes.SEED);
        season.pestYear = 3;

        assertThat(pestLeaves()).isCloseTo(Math.exp(-0.12), within(EXACT));
    }

    @Test
    void aRangeAwayFromTheRoughGrassAboutAThirdIsLeftOfThePressure() {
        pest(Pest.Takes.SEED);
        season.pests.set(0, SmallSeason.pest(0.01, 25.0, Pest.Takes.SEED));
        season.roughGrass.add(new RoughGrass(new Point(25, -200), new Point(25, 200)));

        assertThat(pestLeaves()).as("1/e = 0.36788").isCloseTo(Math.exp(-0.04 * 0.36787944), within(1e-9));
    }

    @Test
    void withoutRoughGrassAPestWithARangeDoesNotCome() {
        pest(Pest.Takes.SEED);
        season.pests.set(0, SmallSeason.pest(0.01, 25.0, Pest.Takes.SEED));

        assertThat(pestLeaves()).isEqualTo(1);
    }

    @Test
    void coverLetsItsShareThroughOnTheDaysItLies() {
        pest(Pest.Takes.SEEDLINGS);
        season.cover = new Stock.Cover(100, null, 0, 2, 0.1);
        crop.cover = new Method.CoverUse(1);

        assertThat(pestLeaves())
                .as("days 4 to 6 covered, day 7 bare")
                .isCloseTo(Math.exp(-0.01 * (3 * 0.1 + 1)), within(EXACT));
    }

    @Test
    void pressureMayWrapTheNewYear() {
        Pest pest = pest(new Pest.Pressure(MonthDay.of(12, 1), MonthDay.of(1, 20), 0.1));

        assertThat(PestPressure.byWeek(pest))
                .as("weeks of days 337 to 365 and 1 to 15")
                .satisfies(week -> assertThat(week[2]).isEqualTo(0.1))
                .satisfies(week -> assertThat(week[3]).isZero())
                .satisfies(week -> assertThat(week[47]).isZero())
                .satisfies(week -> assertThat(week[48]).isEqualTo(0.1));
    }

    @Test
    void theLastEntryThatHoldsAWeekCounts() {
        Pest pest = pest(
                new Pest.Pressure(MonthDay.of(1, 1), MonthDay.of(12, 31), 0.1),
                new Pest.Pressure(MonthDay.of(1, 8), MonthDay.of(1, 8), 0.2));

        assertThat(PestPressure.byWeek(pest)[1]).isEqualTo(0.2);
    }

    private static Pest pest(Pest.Pressure... pressure) {
        return new Pest("slugs", List.of(Pest.Takes.SEED), List.of(pressure), null, 0.5);
    }

    @Test
    void allCausesMultiply() {
        pest(Pest.Takes.SEED);
        season.pests.add(new Pest(
                "beetles", List.of(Pest.Takes.BLOOMS), season.pests.getFirst().pressure(), null, 0.5));
        crop.appeal.put("beetles", 1.0);
        crop.emergenceShare = 0.5;

        assertThat(season.stems(0)[3]).isCloseTo(5 * 0.5 * Math.exp(-0.11), within(EXACT));
    }

    private Eaten eaten(int day) {
        Grown grown = season.grown(0);
        return season.losses(0).eaten(0, season.possible(), grown.developments.getFirst(), day);
    }

    @Test
    void ofAWeekSeedIsEatenOnItsDaysBeforeEmergence() {
        pest(Pest.Takes.SEED);

        assertThat(eaten(6).plants()).as("days 0 to 3").isCloseTo(1 - Math.exp(-0.04), within(EXACT));
        assertThat(eaten(2).plants()).as("days 0 to 2").isCloseTo(1 - Math.exp(-0.03), within(EXACT));
        assertThat(eaten(9).plants()).as("day 3").isCloseTo(1 - Math.exp(-0.01), within(EXACT));
        assertThat(eaten(10).plants()).isZero();
    }

    @Test
    void ofAWeekSeedlingsAreEatenOnItsDaysWhileTheyAreTender() {
        pest(Pest.Takes.SEEDLINGS);

        assertThat(eaten(3).plants()).isZero();
        assertThat(eaten(5).plants()).as("days 4 and 5").isCloseTo(1 - Math.exp(-0.02), within(EXACT));
        assertThat(eaten(12).plants()).as("days 6 and 7").isCloseTo(1 - Math.exp(-0.02), within(EXACT));
        assertThat(eaten(14).plants()).isZero();
    }

    @Test
    void nothingIsEatenAsSeedOfWhatIsPlantedOut() {
        pest(Pest.Takes.SEED);
        crop.inTrays();

        assertThat(eaten(6).plants()).isZero();
    }

    @Test
    void ofAWeekBloomsAreEatenFromTheFirstCutUntilTheBedIsCleared() {
        pest(Pest.Takes.BLOOMS);
        season.pestYear = 2;

        assertThat(eaten(20).blooms()).isZero();
        assertThat(eaten(21).blooms()).as("seven days").isCloseTo(1 - Math.exp(-0.14), within(EXACT));
        assertThat(eaten(41).blooms()).as("the last day of week 5").isCloseTo(1 - Math.exp(-0.14), within(EXACT));
        assertThat(eaten(42).blooms()).isZero();
        assertThat(eaten(21).plants()).isZero();
    }

    @Test
    void whatIsEatenIsSaidWithWhetherCoverLies() {
        pest(Pest.Takes.SEEDLINGS);
        season.cover = new Stock.Cover(100, null, 0, 2, 0.1);
        crop.cover = new Method.CoverUse(1);

        assertThat(eaten(6).isCovered()).isTrue();
        assertThat(eaten(7).isCovered()).isFalse();
        assertThat(eaten(6).plants()).as("days 4 to 6").isCloseTo(1 - Math.exp(-0.003), within(EXACT));
    }
}
