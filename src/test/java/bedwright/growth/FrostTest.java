package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.BedBlock;
import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Site;
import bedwright.season.Stock;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Frost and winter (season model, section 4): sown in week 0 it is up on day 4 and grown on day 10, and in cut in the
 * weeks 3 and 4. Dates move 5 days for each °C.
 */
class FrostTest {
    /** Deviate beyond which a tenth lies, from any table of the standard normal distribution. */
    private static final double TENTH = 1.28155;

    private final SmallSeason season = new SmallSeason();
    private final SmallCrop crop = season.crop;
    private int springDay = 200;
    private int autumnDay = 210;
    private int width = 5;

    private void frosts() {
        LocalDate start = season.starts;
        season.frost = SmallSeason.frost(start.plusDays(springDay), start.plusDays(autumnDay), width);
    }

    private double spring(int lastFrost) {
        springDay = lastFrost;
        frosts();
        Grown grown = season.grown(0);
        return season.losses(0).springOrWinter(season.possible(), grown.developments.getFirst());
    }

    private double usualSpring(int lastFrost) {
        springDay = lastFrost;
        frosts();
        return season.losses(0).springOrWinter(season.normal(), season.development(0));
    }

    private double autumn(int firstFrost, int week) {
        autumnDay = firstFrost;
        frosts();
        Grown grown = season.grown(0);
        return season.losses(0).autumn(season.possible(), grown.developments.getFirst(), week);
    }

    @Test
    void aFrostOnTheDayOfEmergenceKills() {
        assertThat(spring(4)).isZero();
    }

    @Test
    void aFrostTheDayBeforeEmergenceDoesNot() {
        assertThat(spring(3)).isEqualTo(1);
    }

    @Test
    void aHardierSeedlingStandsALaterFrost() {
        crop.killing = new Crop.Killing(-2, -6);

        assertThat(spring(13)).as("−2 °C last on day 3").isEqualTo(1);
    }

    @Test
    void evenAHardierSeedlingDiesOfItsOwnTemperature() {
        crop.killing = new Crop.Killing(-2, -6);

        assertThat(spring(14)).as("−2 °C last on day 4").isZero();
    }

    @Test
    void aGrownPlantDiesOfItsOwnTemperature() {
        crop.killing = new Crop.Killing(-6, 0);

        assertThat(spring(10)).isZero();
    }

    @Test
    void aFrostBeforeItIsGrownIsMeasuredAgainstTheYoungTemperature() {
        crop.killing = new Crop.Killing(-6, 0);

        assertThat(spring(9)).isEqualTo(1);
    }

    @Test
    void aLateYearMovesTheFrost() {
        season.springFrost = TENTH;

        assertThat(spring(-1)).as("5 days later: day 4").isZero();
    }

    @Test
    void temperaturesBelowTheColdestKnownAreTakenAsThat() {
        crop.killing = new Crop.Killing(-20, -20);

        assertThat(spring(34)).as("−6 °C last on day 4").isZero();
    }

    private void cover() {
        season.cover = new Stock.Cover(100, null, 0, 2, 0.1);
        crop.cover = new Method.CoverUse(1);
    }

    @Test
    void aCoverKeepsOffItsDegreesWhileItLies() {
        cover();

        assertThat(spring(6)).isEqualTo(1);
    }

    @Test
    void aFrostAfterTheCoverKills() {
        cover();

        assertThat(spring(7)).isZero();
    }

    @Test
    void aFrostTooHardForTheCoverKills() {
        cover();
        season.cover = new Stock.Cover(100, null, 0, 0.4, 0.1);

        assertThat(spring(6)).as("−0.4 °C last on day 4").isZero();
    }

    @Test
    void aTunnelKeepsOffItsDegrees() {
        season.beds.set(0, SmallSeason.bed("Bed", 0, new BedBlock.Tunnel(0, 1, 1), null, List.of(), List.of()));

        assertThat(spring(8)).as("−1 °C last on day 3").isEqualTo(1);
    }

    @Test
    void theNormalSeasonTakesSpringFrostByProbability() {
        width = 1;
        double sigma = 1 / TENTH;

        assertThat(usualSpring(4))
                .as("Φ(−½/σ) = Φ(−0.641), from a table 0.261")
                .isCloseTo(0.2608, within(0.0005))
                .isCloseTo(1 - 0.7392, within(sigma / 1000));
    }

    @Test
    void withoutFrostNothingIsLost() {
        assertThat(season.losses(0).springOrWinter(season.possible(), season.development(0)))
                .isEqualTo(1);
    }

    @Test
    void aWeekCountsIfTheAutumnFrostIsOnItsMiddleDay() {
        assertThat(autumn(24, 3)).isEqualTo(1);
    }

    @Test
    void aWeekIsLostIfTheAutumnFrostIsBeforeItsMiddleDay() {
        assertThat(autumn(23, 3)).isZero();
    }

    @Test
    void aHardierPlantBearsALaterAutumn() {
        crop.killing = new Crop.Killing(0, -2);

        assertThat(autumn(22, 4))
                .as("−2 °C first on day 32; week 4's middle is day 31")
                .isEqualTo(1);
    }

    @Test
    void anAutumnWhoseMedianIsOnTheFirstCutIsPast() {
        assertThat(autumn(21, 4)).isEqualTo(1);
    }

    @Test
    void anEarlyYearMovesTheAutumnFrost() {
        season.autumnFrost = -TENTH;

        assertThat(autumn(28, 3)).as("5 days earlier: day 23").isZero();
    }

    @Test
    void theNormalSeasonTakesAutumnFrostByProbability() {
        width = 1;
        autumnDay = 24;
        frosts();

        assertThat(season.losses(0).autumn(season.normal(), season.development(0), 3))
                .as("P(day ≥ 24) = Φ(½/σ) = Φ(0.641), from a table 0.739")
                .isCloseTo(0.7392, within(0.0005));
    }

    /** Sown on 1 November; every day is as cold as another, so that 1 January counts as the coldest: day 61. */
    private void overWinter() {
        season.starts = LocalDate.of(2027, 11, 1);
        season.weeks = 30;
        season.hardWinter = new Site.HardWinter(0.2, 0.5);
        crop.firstCut = 1000;
        crop.winterShare = 0.7;
        springDay = 170;
        autumnDay = 340;
        frosts();
    }

    @Test
    void aUsualWinterLeavesItsShareInsteadOfSpringFrost() {
        overWinter();

        assertThat(spring(170)).isEqualTo(0.7);
    }

    @Test
    void aHardWinterLeavesAShareOfThat() {
        overWinter();
        season.isHardWinter = true;

        assertThat(spring(170)).isCloseTo(0.35, within(1e-12));
    }

    @Test
    void theNormalWinterIsTheMean() {
        overWinter();

        assertThat(usualSpring(170)).isCloseTo(0.7 * 0.9, within(1e-12));
    }

    @Test
    void whatIsCutBeforeTheColdestDayStandsThroughNoWinter() {
        overWinter();
        crop.firstCut = 600;

        assertThat(spring(170))
                .as("killed by the frost of the next spring, which is the nearest")
                .isZero();
    }

    @Test
    void whatComesUpAfterTheColdestDayStandsThroughNoWinter() {
        overWinter();
        crop.emergence = 700;

        assertThat(spring(60)).as("up on day 69, after the last frost").isEqualTo(1);
    }
}
