package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.Gust;
import bedwright.season.BedBlock;
import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Point;
import bedwright.season.Sampling;
import bedwright.season.Site;
import bedwright.season.Stock;
import bedwright.season.Windbreak;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Storms (season model, section 4): a gust of 24 m/s lays half of the full-grown plants flat, three tenths of them stand
 * up again. Full grown is the first cut, day 21.
 */
class StormTest {
    private static final double EXACT = 1e-12;
    private static final double HALF_FLAT = 1 - 0.5 * 0.7;

    private final SmallSeason season = new SmallSeason();
    private final SmallCrop crop = season.crop;

    private double[] after(Gust... gusts) {
        season.gusts = List.of(gusts);
        return season.losses(0)
                .storms(season.possible(), season.grown(0).developments.getFirst());
    }

    /** A gust from the west, given outright. */
    private static Gust gust(int day, double speed) {
        return new Gust(day, -1, 270, speed);
    }

    @Test
    void theStandingSpeedLaysHalfFlat() {
        assertThat(after(gust(21, 24))[3]).isCloseTo(HALF_FLAT, within(EXACT));
    }

    @Test
    void weeksBeforeTheGustLoseNothing() {
        assertThat(after(gust(21, 24))[2]).isEqualTo(1);
    }

    @Test
    void aWeekWhoseMiddleIsPastLosesNothing() {
        assertThat(after(gust(25, 24))[3]).isEqualTo(1);
    }

    @Test
    void allWeeksAfterTheGustLose() {
        assertThat(after(gust(25, 24))[9]).isCloseTo(HALF_FLAT, within(EXACT));
    }

    @Test
    void aSpreadAboveTheStandingSpeedAboutThreeQuartersLieFlat() {
        assertThat(after(gust(21, 27))[3]).as("1/(1 + 1/e) = 0.7310586").isCloseTo(1 - 0.7310586 * 0.7, within(1e-7));
    }

    @Test
    void aLowPlantStandsInInverseProportionToItsHeight() {
        assertThat(after(gust(12, 24 * 170.0 / 80))[3])
                .as("80 of 170 °C·d grown")
                .isCloseTo(HALF_FLAT, within(EXACT));
    }

    @Test
    void theMethodsHeightAndGustGoBeforeTheCrops() {
        crop.methodHeight = 2.0;
        crop.methodGust = 30.0;

        assertThat(after(gust(21, 15))[3]).isCloseTo(HALF_FLAT, within(EXACT));
    }

    @Test
    void theStandingSpeedMayBeMeantAtAHeightOfItsOwn() {
        crop.stand = new Crop.Stand(24, 1.5, 3, 0.3);

        assertThat(after(gust(21, 36))[3]).isCloseTo(HALF_FLAT, within(EXACT));
    }

    @Test
    void netStrengthens() {
        season.nets.add(new Stock.Net("mesh", 100, null, 0, 1.35));
        crop.net = new Method.NetUse("mesh", 1);

        assertThat(after(gust(21, 24 * 1.35))[3]).isCloseTo(HALF_FLAT, within(EXACT));
    }

    @Test
    void nothingIsFlattenedBeforeItIsUp() {
        assertThat(after(gust(3, 90))[3]).isEqualTo(1);
    }

    @Test
    void gustsMultiply() {
        assertThat(after(gust(21, 24), gust(22, 24))[4]).isCloseTo(HALF_FLAT * HALF_FLAT, within(EXACT));
    }

    @Test
    void aTunnelLetsItsShareOfTheGustThrough() {
        season.beds.set(0, SmallSeason.bed("Bed", 0, new BedBlock.Tunnel(0, 0, 0.5), null, List.of(), List.of()));

        assertThat(after(gust(21, 48))[3]).isCloseTo(HALF_FLAT, within(EXACT));
    }

    /**
     * Five heights in the lee of a dense windbreak a quarter of the open wind is left (Brandle and Finch, How Windbreaks
     * Work, University of Nebraska Extension EC 1763; from memory).
     */
    @Test
    void aWindbreakLeavesItsPublishedShareInTheLee() {
        season.windbreaks.add(
                new Windbreak("belt", new Point(-50, -500), new Point(-50, 600), 10, Windbreak.Density.DENSE));

        assertThat(after(gust(21, 96))[3]).isCloseTo(HALF_FLAT, within(EXACT));
    }

    /** One damaging gust in ten weeks, all of them close to 24 m/s, on plants full grown from day 2 on. */
    private void usualStorms() {
        crop.emergence = 30;
        crop.firstCut = 30;
        crop.stand = new Crop.Stand(24, null, 50, 0.3);
        season.storms.add(new Site.StormSide(270, Collections.nCopies(12, 0.1), 24, 0.1));
    }

    private double[] usual() {
        return season.losses(0).storms(season.normal(), season.development(0));
    }

    @Test
    void theNormalSeasonLosesTheExpectedShareOfPastWeeksAndFourSeventhsOfThisOne() {
        usualStorms();

        assertThat(-Math.log(usual()[2]))
                .as("0.1 a week × ½ × 0.7 over 2 4/7 weeks")
                .isCloseTo(0.1 * 0.5 * 0.7 * 18 / 7, within(1e-4));
    }

    @Test
    void theNormalSeasonCountsFromTheWeekOfEmergence() {
        usualStorms();
        Losses losses = season.losses(2);

        assertThat(losses.storms(season.normal(), season.development(2))[1]).isEqualTo(1);
    }

    @Test
    void sidesAddUp() {
        usualStorms();
        season.storms.add(season.storms.getFirst());

        assertThat(-Math.log(usual()[2])).isCloseTo(2 * 0.1 * 0.5 * 0.7 * 18 / 7, within(2e-4));
    }

    @Test
    void theMonthSaysHowOftenGustsCome() {
        usualStorms();
        season.storms.set(
                0, new Site.StormSide(270, List.of(0., 0., 0.1, 0., 0., 0., 0., 0., 0., 0., 0., 0.), 24, 0.1));

        assertThat(-Math.log(usual()[8]))
                .as("the middles of weeks 0 to 3 lie in March, that of week 4 is 1 April")
                .isCloseTo(0.1 * 0.5 * 0.7 * 4, within(1e-4));
    }

    @Test
    void netStrengthensTheNormalSeasonToo() {
        usualStorms();
        crop.stand = new Crop.Stand(24, null, 0.1, 0.3);
        season.nets.add(new Stock.Net("mesh", 100, null, 0, 1.35));
        crop.net = new Method.NetUse("mesh", 1);

        assertThat(usual()[9]).as("24 m/s are nothing where 32.4 lay half flat").isCloseTo(1, within(1e-6));
    }

    private Blown blown(Gust gust) {
        season.gusts = List.of(gust);
        return season.losses(0).blown(season.grown(0).developments.getFirst(), gust);
    }

    @Test
    void aGustIsToldWithTheHeightItMeetsAndWhatItLaysFlat() {
        assertThat(blown(gust(12, 48)).height()).as("80 of 170 °C·d grown").isCloseTo(80.0 / 170, within(EXACT));
        assertThat(blown(gust(30, 24))).isEqualTo(new Blown(1, 24, 0.5, 0.3));
    }

    @Test
    void aGustBeforeItIsUpLaysNothingFlat() {
        assertThat(blown(gust(3, 90))).isEqualTo(new Blown(0, 90, 0, 0.3));
    }

    /** Notes a gust of so many m/s from the west on a day. */
    private void noted(int day, double speed) {
        season.notedGusts.add(new Sampling.GivenGust(season.starts.plusDays(day), 270, speed));
    }

    /** 0.35 of it lies for good; on the other days of the weeks 0.1 × ½ × 0.7 a week are expected. */
    @Test
    void aNotedGustTakesItsShareInTheNormalSeasonInsteadOfItsDaysUsualLoss() {
        usualStorms();
        noted(10, 24);

        assertThat(-Math.log(usual()[1]))
                .as("the gust, and ten of the eleven days up to the middle of week 1")
                .isCloseTo(-Math.log(HALF_FLAT) + 0.1 * 0.5 * 0.7 * 10 / 7, within(1e-4));
    }

    @Test
    void aNotedGustAfterTheMiddleOfAWeekCountsFromTheNextOne() {
        usualStorms();
        noted(11, 24);
        double[] left = usual();

        assertThat(-Math.log(left[1])).as("eleven days").isCloseTo(0.1 * 0.5 * 0.7 * 11 / 7, within(1e-4));
        assertThat(-Math.log(left[2]))
                .as("the gust, and seventeen of eighteen days")
                .isCloseTo(-Math.log(HALF_FLAT) + 0.1 * 0.5 * 0.7 * 17 / 7, within(1e-4));
    }

    @Test
    void aNotedGustFromASideWithoutStormsIsFeltInTheNormalSeason() {
        season.notedGusts.add(new Sampling.GivenGust(season.starts.plusDays(21), 100, 24));

        assertThat(usual()[3]).isCloseTo(HALF_FLAT, within(EXACT));
    }

    @Test
    void whatNotedGustsTookIsToldTogetherWithTheWorst() {
        noted(21, 24);
        noted(22, 23);
        Grown grown = season.grown(0);

        assertThat(new WeatherTaken(grown, grown.world.ground.classes().getFirst()).all())
                .singleElement()
                .satisfies(taken -> {
                    assertThat(taken.cause()).isEqualTo(Weathered.Cause.GUST);
                    assertThat(taken.day()).isEqualTo(21);
                    assertThat(taken.worst()).isEqualTo(24);
                    assertThat(taken.times()).isEqualTo(2);
                    assertThat(taken.share())
                            .as("1/(1 + exp(1/3)) = 0.4174298 lie flat at 23 m/s")
                            .isCloseTo(1 - HALF_FLAT * (1 - 0.4174298 * 0.7), within(1e-6));
                });
    }
}
