package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.PossibleSeason;
import bedwright.season.BedBlock;
import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Site;
import bedwright.season.Standing;
import bedwright.season.Stock;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Half of all last frosts come by 1 April (day 31), one in ten after the 14th: a spread of 13/1.28155 = 10.144 days. Half
 * of all first frosts come by 1 May (day 61), alike. The dates move by 5 and 4 days a degree. Sown in week 4 (day 28)
 * the crop is up on day 32, grown on day 38 and in cut from day 49. Values of Φ are from the usual table, from memory.
 */
class FrostsTest {
    private static final double TABLE = 0.0005;

    private final TestCrop crop = new TestCrop();
    private final TestSeason season = new TestSeason();

    FrostsTest() {
        season.frost = new Site.Frost(
                new Site.FrostDate(MonthDay.of(3, 19), MonthDay.of(4, 1), MonthDay.of(4, 14)),
                new Site.FrostDate(MonthDay.of(4, 18), MonthDay.of(5, 1), MonthDay.of(5, 14)),
                5,
                4);
        crop.killing = new Crop.Killing(0, 0);
    }

    private Frosts frosts(int sowWeek, PossibleSeason possible) {
        return frosts(season.placed(1, sowWeek), possible);
    }

    private Frosts frosts(Placed placed, PossibleSeason possible) {
        Facts facts = season.facts();
        return new Frosts(facts, placed, possible, new Course(facts, placed, possible), new Calendar(facts, placed));
    }

    private double springByChance(int sowWeek) {
        season.crops.add(crop.build());
        return frosts(sowWeek, season.facts().normal()).winterAndSpring();
    }

    private double springWith(double deviate) {
        season.crops.add(crop.build());
        return frosts(4, season.possible(List.of(), deviate, 0, false, false, 1, 1))
                .winterAndSpring();
    }

    private double autumnByChance() {
        season.crops.add(crop.build());
        return frosts(4, season.facts().normal()).autumn(8);
    }

    private double autumnWith(double deviate) {
        season.crops.add(crop.build());
        return frosts(4, season.possible(List.of(), 0, deviate, false, false, 1, 1))
                .autumn(8);
    }

    /** (32 − ½ − 31)/10.144 = 0.0493. */
    @Test
    void normalSeasonTakesSpringFrostByProbability() {
        assertThat(springByChance(4)).isCloseTo(0.5197, within(TABLE));
    }

    /** A degree colder is five days earlier: (31.5 − 26)/10.144 = 0.5422. */
    @Test
    void hardierSeedlingsFearAnEarlierFrost() {
        crop.killing = new Crop.Killing(-1, -1);
        assertThat(springByChance(4)).isCloseTo(0.7062, within(TABLE));
    }

    /** Grown on day 38 and killed at 0 °C, while young only at −6 °C: (37.5 − 31)/10.144 = 0.6408. */
    @Test
    void grownPlantsFearTheFrostOfTheirOwnTemperature() {
        crop.killing = new Crop.Killing(-6, 0);
        assertThat(springByChance(4)).isCloseTo(0.7392, within(TABLE));
    }

    /** 31 + 0.1 × 10.144 rounds to day 32, the day of emergence. */
    @Test
    void frostOnTheDayOfEmergenceKills() {
        assertThat(springWith(0.1)).isZero();
    }

    @Test
    void frostOnTheDayBeforeEmergenceDoesNot() {
        assertThat(springWith(0.04)).isEqualTo(1);
    }

    @Test
    void tunnelKeepsOffItsDegrees() {
        BedBlock.Tunnel tunnel = new BedBlock.Tunnel(0, 2, 1);
        season.beds = List.of(TestSeason.bed("Bed", 100, tunnel, null, List.of(), List.of()));
        // Day 41 in the open, day 31 at −2 °C.
        assertThat(springWith(1)).isEqualTo(1);
    }

    @Test
    void coverKeepsOffItsDegreesWhileItLies() {
        coverForAWeek();
        // Day 34 in the open: the cover lies to the end of that day.
        assertThat(springWith(0.3)).isEqualTo(1);
    }

    @Test
    void frostOnTheFirstDayWithoutCoverKills() {
        coverForAWeek();
        // Day 35 in the open.
        assertThat(springWith(0.4)).isZero();
    }

    private void coverForAWeek() {
        season.cover = new Stock.Cover(100, null, 0, 2, 1);
        crop.cover = new Method.CoverUse(1);
    }

    /** Up on 25 February 2028, 36 days before that year's usual last frost. */
    @Test
    void springIsTheNearestYears() {
        season.weeks = 60;
        assertThat(springByChance(51)).isLessThan(0.001);
    }

    @Test
    void whatComesUpLongAfterTheLastFrostHasNoneToFear() {
        season.weeks = 30;
        assertThat(springByChance(10)).isGreaterThan(0.9999);
    }

    /** Of equally cold days the first of the calendar year is the coldest: 1 January 2028 is day 306. */
    @Test
    void winterShareStandsInForTheSpringFrost() {
        assertThat(winter(43, false)).isEqualTo(0.8);
    }

    @Test
    void hardWinterLeavesAShareOfThat() {
        assertThat(winter(43, true)).isCloseTo(0.4, within(1e-12));
    }

    @Test
    void normalSeasonTakesHardWintersByExpectation() {
        winterSeason();
        assertThat(frosts(43, season.facts().normal()).winterAndSpring())
                .isCloseTo(0.8 * (1 - 0.2 * 0.5), within(1e-12));
    }

    @Test
    void whatComesUpAfterTheColdestDayHasNoWinter() {
        assertThat(winter(44, true)).isEqualTo(1);
    }

    /** Sown on 8 November it would be in cut on the 29th, before the coldest day. */
    @Test
    void whatIsInCutBeforeTheColdestDayHasNoWinter() {
        assertThat(winter(36, true)).isEqualTo(1);
    }

    private void winterSeason() {
        season.weeks = 60;
        season.hardWinter = new Site.HardWinter(0.2, 0.5);
        crop.winterShare = 0.8;
        season.crops.add(crop.build());
    }

    private double winter(int sowWeek, boolean hard) {
        winterSeason();
        // Both springs' frosts come long before.
        PossibleSeason possible = season.possible(List.of(), -20, 0, false, hard, 1, 1);
        return frosts(sowWeek, possible).winterAndSpring();
    }

    @Test
    void standingBeforeTheSeasonsSpringIsTreatedAsUpOnItsFirstDay() {
        // Day 0 in the open: 31 − 3.05 × 10.144.
        assertThat(standingSpring(-3.05)).isZero();
    }

    @Test
    void standingOutlivesAFrostBeforeTheSeason() {
        // Day −1 in the open, though it was up on day −10.
        assertThat(standingSpring(-3.15)).isEqualTo(1);
    }

    @Test
    void standingHasNoSpringFrostToFearIfNoneLiesInTheSeason() {
        season.weeks = 4;
        assertThat(standingSpring(1)).isEqualTo(1);
    }

    private double standingSpring(double deviate) {
        season.crops.add(crop.build());
        season.standing.add(
                new Standing(null, "zinnia", 1, "plain", "Bed", TestSeason.week(-2), null, List.of(), null));
        return frosts(season.standing(), season.possible(List.of(), deviate, 0, false, false, 1, 1))
                .winterAndSpring();
    }

    /** Week 8 counts from day 59 on: 1 − Φ((58.5 − 61)/10.144 = −0.2465). */
    @Test
    void normalSeasonTakesAutumnFrostByProbability() {
        assertThat(autumnByChance()).isCloseTo(0.5973, within(TABLE));
    }

    /** A degree colder is four days later: (58.5 − 65)/10.144 = −0.6408. */
    @Test
    void hardierPlantsLastLonger() {
        crop.killing = new Crop.Killing(0, -1);
        assertThat(autumnByChance()).isCloseTo(0.7392, within(TABLE));
    }

    @Test
    void weekStillCountsIfTheFrostComesOnItsFourthDay() {
        assertThat(autumnWith(-0.2)).isEqualTo(1);
    }

    @Test
    void weekIsLostIfTheFrostComesOnItsThirdDay() {
        assertThat(autumnWith(-0.3)).isZero();
    }

    /** In cut from day 61, the day of the usual frost itself: the next autumn's is meant. */
    @Test
    void autumnIsTheFirstWhoseUsualFrostComesAfterTheNormalFirstCut() {
        crop.firstCut = 340;
        assertThat(autumnWith(-3)).isEqualTo(1);
    }

    @Test
    void siteWithoutFrostLosesNothingNotEvenToWinter() {
        season.frost = null;
        assertThat(winter(43, true)).isEqualTo(1);
    }

    // Nights whose minimum was noted

    private Frosts frosts() {
        season.crops.add(crop.build());
        return frosts(4, season.still());
    }

    @ParameterizedTest
    @CsvSource({"31, -9, 1", "32, -1.9, 1", "32, -2, 0", "37, -1.5, 1", "38, -1.5, 0", "48, -1, 0", "49, -1, 1"})
    void aNotedNightKillsWhatIsUpByItsAge(int day, double least, double left) {
        season.frost = null;
        crop.killing = new Crop.Killing(-2, -1);
        season.night(day, least);

        assertThat(frosts().winterAndSpring()).isEqualTo(left);
    }

    /** Week 8 has its middle on day 59. */
    @ParameterizedTest
    @CsvSource({"58, 0", "59, 1"})
    void aNotedNightInCutTakesTheWeeksWhoseMiddleComesLater(int day, double left) {
        season.frost = null;
        season.night(day, 0);

        assertThat(frosts().autumn(8)).isEqualTo(left);
    }

    @ParameterizedTest
    @CsvSource({"34, -1.9, 1", "34, -2, 0", "35, -0.1, 0"})
    void aCoverHelpsInTheNotedNightsInWhichItLies(int day, double least, double left) {
        season.frost = null;
        crop.killing = new Crop.Killing(0, 0);
        coverForAWeek();
        season.night(day, least);

        assertThat(frosts().winterAndSpring()).isEqualTo(left);
    }

    @Test
    void aNotedNightOfTheWinterItStandsThroughIsInItsWinterShare() {
        season.night(310, -20);

        assertThat(winter(43, false)).isEqualTo(0.8);
    }

    /** The usual last frost falls on day 31, a day later with a deviate of 0.1: day 32, when it is up. */
    @ParameterizedTest
    @CsvSource({"32, 32, 1", "33, 33, 0"})
    void aLastFrostDoesNotFallOnNightsKnownAsMild(int from, int to, double left) {
        for (int day = from; day <= to; day++) {
            season.night(day, 5);
        }

        assertThat(springWith(0.1)).isEqualTo(left);
    }

    /** Nights up to day 37 were mild, so that it dies only from day 38 on: (37.5 − 31)/10.144 = 0.6408. */
    @Test
    void theChanceOfAFrostOnNightsNotKnownIsLeft() {
        for (int day = 32; day <= 37; day++) {
            season.night(day, 5);
        }

        assertThat(springByChance(4)).isCloseTo(0.7392, within(TABLE));
    }

    /** With a deviate of −0.3 the first frost falls on day 58. */
    @Test
    void aFirstFrostComesOnTheNextNightNotKnown() {
        season.night(58, 5);

        assertThat(autumnWith(-0.3)).isEqualTo(1);
    }

    /** A frost on day 58 would come on day 59, which is in time: 1 − Φ((57.5 − 61)/10.144 = −0.3450). */
    @Test
    void theChanceOfAFirstFrostIsThatOfTheFirstNightNotKnown() {
        season.night(58, 5);

        assertThat(autumnByChance()).isCloseTo(0.6350, within(TABLE));
    }
}
