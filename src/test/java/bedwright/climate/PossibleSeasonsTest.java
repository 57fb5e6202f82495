package bedwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.UnderWay;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which seasons a plan is judged over, the normal one, and those given outright. */
class PossibleSeasonsTest {
    /** A season of which nothing is said, to start from. */
    private static final class Given {
        double warmer;
        List<Double> days = List.of();
        List<Sampling.GivenGust> gusts = List.of();
        Map<String, Double> pests = Map.of();

        @Nullable
        LocalDate spring;

        @Nullable
        LocalDate autumn;

        List<LocalDate> badSeedBeds = List.of();
        boolean hardWinter;
        Map<String, Double> firstCut = Map.of();
        Map<String, Double> yields = Map.of();

        Sampling.GivenSeason season() {
            return new Sampling.GivenSeason(
                    null, warmer, days, gusts, pests, spring, autumn, badSeedBeds, hardWinter, firstCut, yields);
        }
    }

    private static PossibleSeason only(Given given) {
        return only(new Farm(), given);
    }

    private static PossibleSeason only(Farm farm, Given given) {
        farm.given = List.of(given.season());
        List<PossibleSeason> seasons = PossibleSeasons.of(farm.season());
        assertThat(seasons).hasSize(1);
        return seasons.getFirst();
    }

    @Test
    void seasonsGivenOutrightAreTakenInOrder() {
        Farm farm = new Farm();
        Given cold = new Given();
        cold.warmer = -1;
        Given warm = new Given();
        warm.warmer = 2;
        farm.given = List.of(warm.season(), cold.season());
        assertThat(PossibleSeasons.of(farm.season())).map(s -> s.deviation()[0]).containsExactly(2.0, -1.0);
    }

    @Test
    void freshSeasonsAreNoneOfThosePlannedOn() {
        Farm farm = new Farm();
        List<Double> planned = PossibleSeasons.sample(farm.season(), 1000, 7).stream()
                .map(season -> season.deviation()[0])
                .toList();

        assertThat(PossibleSeasons.fresh(farm.season(), 200, 7))
                .map(season -> season.deviation()[0])
                .doesNotContainAnyElementsOf(planned)
                .doesNotHaveDuplicates();
    }

    @Test
    void aCountOfOneIsTheNormalSeason() {
        Farm farm = new Farm();
        farm.count = 1;
        assertThat(PossibleSeasons.of(farm.season()))
                .map(PossibleSeason::normal)
                .containsExactly(true);
    }

    @Test
    void moreAreSampledFromTheSeedOfTheFile() {
        Farm farm = new Farm();
        farm.count = 2;
        farm.seed = 77;
        assertThat(PossibleSeasons.of(farm.season()))
                .usingRecursiveComparison()
                .isEqualTo(PossibleSeasons.sample(farm.season(), 2, 77));
    }

    @Test
    void samplingOneSamplesOne() {
        assertThat(PossibleSeasons.sample(new Farm().season(), 1, 1))
                .map(PossibleSeason::normal)
                .containsExactly(false);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -4})
    void lessThanOneSeasonIsRefusedWithItsNumber(int count) {
        assertThatThrownBy(() -> PossibleSeasons.sample(new Farm().season(), count, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.valueOf(count));
    }

    /** What is neutral in the normal season, and what a season given outright is when nothing is said of it. */
    private static PossibleSeason neutral(boolean normal) {
        return new PossibleSeason(
                normal,
                new double[280],
                List.of(),
                new double[] {1, 1},
                0,
                0,
                new boolean[40],
                false,
                new double[] {1, 1},
                new double[] {1, 1});
    }

    @Test
    void theNormalSeasonIsNeutral() {
        assertThat(PossibleSeasons.normal(new Farm().season()))
                .usingRecursiveComparison()
                .isEqualTo(neutral(true));
    }

    @Test
    void aGivenSeasonOfWhichNothingIsSaidIsNeutral() {
        assertThat(only(new Given())).usingRecursiveComparison().isEqualTo(neutral(false));
    }

    @Test
    void warmthAndDaysAddUp() {
        Given given = new Given();
        given.warmer = 1.5;
        given.days = List.of(0.5, -2.0);
        assertThat(IntStream.of(0, 1, 2, 279).mapToDouble(d -> only(given).deviation()[d]))
                .containsExactly(2.0, -0.5, 1.5, 1.5);
    }

    @Test
    void daysBeyondTheSeasonAreNotLookedAt() {
        Farm farm = new Farm();
        farm.weeks = 1;
        Given given = new Given();
        given.days = List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0);
        assertThat(only(farm, given).deviation()).containsExactly(1, 2, 3, 4, 5, 6, 7);
    }

    @Test
    void gustsComeFromSidesOfTheirOwnByDay() {
        Given given = new Given();
        given.gusts = List.of(
                new Sampling.GivenGust(LocalDate.of(2027, 7, 9), 250, 27),
                new Sampling.GivenGust(LocalDate.of(2027, 3, 2), 10, 22));
        assertThat(only(given).gusts()).containsExactly(new Gust(1, -1, 10, 22), new Gust(130, -1, 250, 27));
    }

    @Test
    void gustsOfTheFirstAndTheLastDayCount() {
        Given given = new Given();
        given.gusts = List.of(
                new Sampling.GivenGust(LocalDate.of(2027, 3, 1), 250, 27),
                new Sampling.GivenGust(LocalDate.of(2027, 3, 1).plusDays(279), 10, 22));
        assertThat(only(given).gusts()).map(Gust::day).containsExactly(0, 279);
    }

    @Test
    void gustsOutsideTheSeasonDontCount() {
        Given given = new Given();
        given.gusts = List.of(
                new Sampling.GivenGust(LocalDate.of(2027, 2, 28), 250, 27),
                new Sampling.GivenGust(LocalDate.of(2027, 3, 1).plusDays(280), 10, 22));
        assertThat(only(given).gusts()).isEmpty();
    }

    @Test
    void pestsNotNamedHaveOne() {
        Given given = new Given();
        given.pests = Map.of("grasshoppers", 3.0);
        assertThat(only(given).pestYear()).containsExactly(1, 3);
    }

    @Test
    void yieldsAreFactorsOnStemsByCrop() {
        Given given = new Given();
        given.yields = Map.of("celosia", 0.5);
        assertThat(only(given).stemsFactor()).containsExactly(1, 0.5);
    }

    @Test
    void firstCutsAreFactorsByCrop() {
        Given given = new Given();
        given.firstCut = Map.of("zinnia", 1.1);
        assertThat(only(given).firstCutFactor()).containsExactly(1.1, 1);
    }

    @Test
    void weeksWithABadSeedBedAreThoseNamed() {
        Given given = new Given();
        given.badSeedBeds = List.of(LocalDate.of(2027, 3, 15), LocalDate.of(2027, 4, 5));
        boolean[] bad = only(given).badSeedBed();
        assertThat(IntStream.range(0, bad.length).filter(w -> bad[w])).containsExactly(2, 5);
    }

    @Test
    void weeksOutsideTheSeasonAreNotLookedAt() {
        Given given = new Given();
        given.badSeedBeds = List.of(LocalDate.of(2027, 2, 22), LocalDate.of(2028, 2, 21));
        assertThat(only(given).badSeedBed()).doesNotContain(true);
    }

    @Test
    void aHardWinterIsOne() {
        Given given = new Given();
        given.hardWinter = true;
        assertThat(only(given).hardWinter()).isTrue();
    }

    /** Usual 5 May, late 17 May: one year in ten, deviate 1.2816 by any table of the normal distribution. */
    @Test
    void aLateSpringFrostIsADeviateOfTheLateHalf() {
        Given given = new Given();
        given.spring = LocalDate.of(2027, 5, 17);
        assertThat(only(given).springFrost()).isCloseTo(1.2816, within(0.00005));
    }

    /** Usual 2 October, early 20 September. */
    @Test
    void anEarlyAutumnFrostIsADeviateOfTheEarlyHalf() {
        Given given = new Given();
        given.autumn = LocalDate.of(2027, 9, 20);
        assertThat(only(given).autumnFrost()).isCloseTo(-1.2816, within(0.00005));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-04-11", "2027-05-05", "2027-06-02"})
    void aGivenFrostFallsOnItsDay(LocalDate date) {
        Given given = new Given();
        given.spring = date;
        Farm farm = new Farm();
        PossibleSeason season = only(farm, given);
        FrostDates dates = FrostDates.of(farm.season()).orElseThrow();
        assertThat(dates.spring(1, 0, season.springFrost()))
                .isEqualTo(farm.season().dayOf(date));
    }

    @Test
    void withoutFrostAtTheSiteItsDateIsNotLookedAt() {
        Farm farm = new Farm();
        farm.frost = null;
        Given given = new Given();
        given.spring = LocalDate.of(2027, 5, 17);
        assertThat(only(farm, given).springFrost()).isZero();
    }

    @Test
    void weeksWithABadSeedBedMayBeTheFirstAndTheLast() {
        Given given = new Given();
        LocalDate first = LocalDate.of(2027, 3, 1);
        given.badSeedBeds = List.of(first.minusWeeks(1), first, first.plusWeeks(39), first.plusWeeks(40));
        boolean[] bad = only(given).badSeedBed();
        assertThat(IntStream.range(0, bad.length).filter(w -> bad[w])).containsExactly(0, 39);
    }

    @Test
    void freshSeasonsHaveNumbersOfTheirOwnWhateverTheirCount() {
        Season season = new Farm().season();
        SeasonSampler sampler = new SeasonSampler(season, 7);

        assertThat(PossibleSeasons.fresh(season, 2, 7))
                .usingRecursiveComparison()
                .isEqualTo(List.of(
                        sampler.sample(PossibleSeasons.FIRST_FRESH), sampler.sample(PossibleSeasons.FIRST_FRESH + 1)));
        assertThat(PossibleSeasons.fresh(season, 1, 7)).hasSize(1);
        assertThatThrownBy(() -> PossibleSeasons.fresh(season, 0, 7)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Season underWay(List<UnderWay.DaySeen> weather, List<Sampling.GivenGust> gusts) {
        Farm farm = new Farm();
        Given given = new Given();
        given.warmer = 1.5;
        given.gusts = List.of(
                new Sampling.GivenGust(LocalDate.of(2027, 3, 3), 10, 22),
                new Sampling.GivenGust(LocalDate.of(2027, 3, 5), 20, 23));
        farm.given = List.of(given.season());
        return farm.season().with(new UnderWay(LocalDate.of(2027, 3, 6), weather, gusts, List.of(), List.of(), 1));
    }

    @Test
    void weatherSeenStandsInPlaceOfWhatWasDrawn() {
        LocalDate first = LocalDate.of(2027, 3, 1);
        Season season = underWay(
                List.of(
                        new UnderWay.DaySeen(first.minusDays(1), -9, null),
                        new UnderWay.DaySeen(first, -2, null),
                        new UnderWay.DaySeen(first.plusDays(279), 3, null),
                        new UnderWay.DaySeen(first.plusDays(280), -9, null)),
                List.of());

        double[] deviation = PossibleSeasons.of(season).getFirst().deviation();
        assertThat(deviation).hasSize(280);
        assertThat(deviation[0]).isEqualTo(-2);
        assertThat(deviation[279]).isEqualTo(3);
        assertThat(Arrays.copyOfRange(deviation, 1, 279)).containsOnly(1.5);
        assertThat(PossibleSeasons.sample(season, 1, 7).getFirst().deviation()[0])
                .isEqualTo(-2);
    }

    @Test
    void gustsSeenBlowAloneOnTheirDays() {
        List<Sampling.GivenGust> seen = List.of(
                new Sampling.GivenGust(LocalDate.of(2027, 3, 5), 90, 30),
                new Sampling.GivenGust(LocalDate.of(2027, 3, 1), 180, 19));

        assertThat(PossibleSeasons.of(underWay(List.of(), seen)).getFirst().gusts())
                .containsExactly(new Gust(0, -1, 180, 19), new Gust(2, -1, 10, 22), new Gust(4, -1, 90, 30));
        assertThat(PossibleSeasons.of(underWay(List.of(), List.of())).getFirst().gusts())
                .containsExactly(new Gust(2, -1, 10, 22), new Gust(4, -1, 20, 23));
    }
}
