package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.season.Caution;
import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.Lots;
import bedwright.season.Promise;
import bedwright.season.Sampling;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * The farmer's problem of Birge and Louveaux (Introduction to Stochastic Programming, chapter 1), written as a season:
 * an acre is a plant on a metre of a bed of 500 m, a tonne a stem, the planting cost the price of the seed. Published
 * there: 108,390 for 170 acres of wheat, 80 of corn and 250 of beets, with profits of 48,820, 109,350 and 167,000 at
 * low, mean and high yields; 107,240 for 120, 80 and 300 acres, the plan made on mean yields, which at mean yields
 * brings 118,600.
 */
class FarmersProblemTest {
    private static final long GRAINS_A_DOLLAR = 100 * Units.GRAINS;

    @Test
    void bestPlanBringsThePublishedMean() {
        Tally tally = recheck(170, 80, 250);

        assertThat(tally.soft()).isEqualTo(3 * 108_390 * GRAINS_A_DOLLAR);
    }

    @Test
    void bestPlanBringsThePublishedProfitInEachSeason() {
        Tally tally = recheck(170, 80, 250);

        assertThat(tally.seasons())
                .extracting(season -> season.money() / GRAINS_A_DOLLAR)
                .containsExactly(48_820L, 109_350L, 167_000L);
    }

    @Test
    void planForMeanYieldsBringsThePublishedMean() {
        Tally tally = recheck(120, 80, 300);

        assertThat(tally.soft()).isEqualTo(3 * 107_240 * GRAINS_A_DOLLAR);
    }

    @Test
    void planForMeanYieldsBringsThePublishedProfitAtMeanYields() {
        Tally tally = recheck(120, 80, 300);

        assertThat(tally.seasons().get(1).money()).isEqualTo(118_600 * GRAINS_A_DOLLAR);
    }

    /** Published as 108,900 in all three seasons, so that what sales and purchases add is 157,720, 218,250 and 275,900. */
    @Test
    void bestPlanCostsWhatIsPublishedToPlant() {
        Season season = season();
        double[] acres = {170, 80, 250};
        double cost = 0;
        for (int i = 0; i < acres.length; i++) {
            cost += acres[i]
                    * Objects.requireNonNull(
                            season.crops().get(i).methods().getFirst().price());
        }

        assertThat(cost).isEqualTo(108_900);
        assertThat(recheck(170, 80, 250).seasons())
                .extracting(one -> one.money() / GRAINS_A_DOLLAR + 108_900)
                .containsExactly(157_720L, 218_250L, 275_900L);
    }

    /** Wait and see at low yields: 59,950 for 100, 25 and 375 acres, in lots of five. */
    @Test
    void bestPlanForLowYieldsBringsThePublishedProfitInThem() {
        Tally tally = recheck(5, 100, 25, 375);

        assertThat(tally.seasons().getFirst().money()).isEqualTo(59_950 * GRAINS_A_DOLLAR);
    }

    @Test
    void landIsFullToTheAcre() {
        assertThat(recheck(170, 80, 250).hard()).isZero();
    }

    @Test
    void tenAcresTooManyAreTenMetresOverForTheTwoWeeks() {
        assertThat(recheck(180, 80, 250).over().bedRoom()).isEqualTo(2 * 10_000);
    }

    private static Tally recheck(int wheat, int corn, int beets) {
        return recheck(10, wheat, corn, beets);
    }

    private static Tally recheck(int lot, int wheat, int corn, int beets) {
        Season season = season(lot);
        List<PossibleSeason> possible = PossibleSeasons.of(season);
        List<KeptPlanting> plan = new ArrayList<>();
        int[] acres = {wheat, corn, beets};
        for (int i = 0; i < acres.length; i++) {
            plan.add(new KeptPlanting(
                    i + 1,
                    season.crops().get(i).name(),
                    "plain",
                    "The 500 acres",
                    TestSeason.START,
                    i + 1,
                    null,
                    acres[i] / lot,
                    acres[i]));
        }
        Tally tally = Recheck.of(season, possible, plan);
        assertThat(tally.faults()).isEmpty();
        return tally;
    }

    private static Season season() {
        return season(10);
    }

    private static Season season(int lot) {
        TestSeason test = new TestSeason();
        test.weeks = 2;
        test.beds = List.of(TestSeason.bed("The 500 acres", 500));
        test.roles =
                List.of(TestSeason.role("wheat", 0, 0), TestSeason.role("corn", 0, 0), TestSeason.role("beets", 0, 0));
        test.crops = List.of(crop("wheat", 2.5, 150), crop("corn", 3, 230), crop("beets", 20, 260));
        for (Crop crop : test.crops) {
            test.pool.add(new Lots(crop.name(), lot, 500 / lot));
        }
        test.outlets = List.of(
                TestSeason.outlet("wheat fed", "wheat", 0, 200, 1, 1, new Promise(null, 238.0, null)),
                TestSeason.outlet("corn fed", "corn", 0, 240, 1, 1, new Promise(null, 210.0, null)),
                TestSeason.outlet("wheat sold", "wheat", 170, 10_000, 1, 1, null),
                TestSeason.outlet("corn sold", "corn", 150, 10_000, 1, 1, null),
                TestSeason.outlet("beets in quota", "beets", 36, 6_000, 1, 1, null),
                TestSeason.outlet("beets beyond", "beets", 10, 100_000, 1, 1, null));
        Season plain = test.build();
        List<Sampling.GivenSeason> given = List.of(yields(0.8), yields(1), yields(1.2));
        return withGiven(plain, given);
    }

    private static Season withGiven(Season plain, List<Sampling.GivenSeason> given) {
        Sampling sampling = plain.possible();
        return new Season(
                plain.name(),
                plain.about(),
                plain.starts(),
                plain.weeks(),
                plain.currency(),
                plain.site(),
                plain.beds(),
                plain.windbreaks(),
                plain.roughGrass(),
                plain.pests(),
                plain.stock(),
                plain.labour(),
                plain.roles(),
                plain.families(),
                plain.rotation(),
                plain.crops(),
                plain.pool(),
                plain.standing(),
                plain.outlets(),
                plain.recipes(),
                plain.orders(),
                Caution.BOLD,
                new Sampling(16, 1, sampling.doubt(), given));
    }

    private static Sampling.GivenSeason yields(double factor) {
        return new Sampling.GivenSeason(
                null,
                0,
                List.of(),
                List.of(),
                Map.of(),
                null,
                null,
                List.of(),
                false,
                Map.of(),
                Map.of("wheat", factor, "corn", factor, "beets", factor));
    }

    /** An acre's crop is in cut in the second week, 80 °C·d after sowing. */
    private static Crop crop(String name, double tonnes, double cost) {
        TestCrop crop = new TestCrop();
        crop.name = name;
        crop.kinds = List.of(new Crop.KindShare(name, 1));
        crop.emergence = 0;
        crop.firstCut = 80;
        crop.cutDays = 7;
        crop.stems = tonnes;
        crop.price = cost;
        crop.grace = 0;
        return crop.build();
    }
}
