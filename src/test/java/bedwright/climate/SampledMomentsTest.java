package bedwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Site;
import bedwright.season.Sureness;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.GumbelDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sampled seasons against the moments of the distributions that they are drawn from (season model, section 6). All
 * tolerances are {@link #ERRORS} standard errors of the estimate, by the textbook formulas; a right sampler fails one
 * such check in 16,000.
 */
class SampledMomentsTest {
    private static final int ERRORS = 4;
    private static final int COUNT = 4000;
    private static final int WEEKS = 12;
    private static final double YEAR = 0.8;
    private static final double DAY = 3.2;
    private static final double MEMORY = 0.8;
    private static final double RATE = 0.4;

    private static final List<PossibleSeason> SEASONS = PossibleSeasons.sample(farm().season(), COUNT, 2027);

    private static Farm farm() {
        Farm farm = new Farm();
        farm.weeks = WEEKS;
        farm.spread = new Site.TemperatureSpread(YEAR, DAY, MEMORY);
        farm.storms = List.of(Farm.side(270, RATE), Farm.side(0, 0.1));
        farm.crops = List.of(
                Farm.crop("zinnia", Sureness.SURE, Sureness.FAIR), Farm.crop("celosia", Sureness.WEAK, Sureness.WEAK));
        return farm;
    }

    private static double[] of(ToDoubleFunction<PossibleSeason> what) {
        return SEASONS.stream().mapToDouble(what).toArray();
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double covariance(double[] a, double[] b) {
        double meanA = mean(a);
        double meanB = mean(b);
        return IntStream.range(0, a.length)
                        .mapToDouble(i -> (a[i] - meanA) * (b[i] - meanB))
                        .sum()
                / (a.length - 1);
    }

    /** Normal numbers of a known mean and SD: standard errors σ/√n of the mean and σ²√(2/n) of the variance. */
    private static void assertNormal(double[] values, double mean, double sd) {
        assertThat(mean(values)).as("mean").isCloseTo(mean, within(ERRORS * sd / Math.sqrt(values.length)));
        assertThat(covariance(values, values))
                .as("variance")
                .isCloseTo(sd * sd, within(ERRORS * sd * sd * Math.sqrt(2.0 / values.length)));
        // The shares of a normal distribution within one and two SD: 68.27 and 95.45 per cent.
        assertShare(values, mean, sd, 0.6827);
        assertShare(values, mean, 2 * sd, 0.9545);
    }

    private static void assertShare(double[] values, double mean, double within, double share) {
        double found =
                Arrays.stream(values).filter(v -> Math.abs(v - mean) <= within).count() / (double) values.length;
        assertThat(found).as("share within %s", within).isCloseTo(share, within(ERRORS * errorOfShare(share)));
    }

    private static double errorOfShare(double share) {
        return Math.sqrt(share * (1 - share) / COUNT);
    }

    /** The deviation is in its steady state on the first day as on the last: the variances of year and day add up. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 40, 7 * WEEKS - 1})
    void everyDaysDeviationHasTheSameSpread(int day) {
        assertNormal(of(s -> s.deviation()[day]), 0, Math.hypot(YEAR, DAY));
    }

    /** Covariance over a lag: year² + day² × memory^lag; standard error √((σ⁴ + c²)/n). */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 60})
    void daysRememberOneAnotherByTheirDistance(int lag) {
        double variance = YEAR * YEAR + DAY * DAY;
        double expected = YEAR * YEAR + DAY * DAY * Math.pow(MEMORY, lag);
        double error = Math.sqrt((variance * variance + expected * expected) / COUNT);
        assertThat(covariance(of(s -> s.deviation()[3]), of(s -> s.deviation()[3 + lag])))
                .isCloseTo(expected, within(ERRORS * error));
    }

    @Test
    void springFrostsAreStandardNormal() {
        assertNormal(of(PossibleSeason::springFrost), 0, 1);
    }

    @Test
    void autumnFrostsAreStandardNormal() {
        assertNormal(of(PossibleSeason::autumnFrost), 0, 1);
    }

    /** exp(σz − σ²/2) with σ 0.8: the logarithm is normal about −0.32. */
    @Test
    void pestYearsAreLogNormal() {
        assertNormal(of(s -> Math.log(s.pestYear()[1])), -0.32, 0.8);
    }

    /** SD of exp(σz − σ²/2): √(exp(σ²) − 1). */
    @Test
    void pestYearsHaveMeanOne() {
        double sd = Math.sqrt(Math.exp(0.8 * 0.8) - 1);
        assertThat(mean(of(s -> s.pestYear()[1]))).isCloseTo(1, within(ERRORS * sd / Math.sqrt(COUNT)));
    }

    /** Sure: exp(0.03 z). */
    @Test
    void aSureFirstCutStraysLittle() {
        assertNormal(of(s -> Math.log(s.firstCutFactor()[0])), 0, 0.03);
    }

    /** Weak: exp(0.1 z). */
    @Test
    void aWeakFirstCutStraysMore() {
        assertNormal(of(s -> Math.log(s.firstCutFactor()[1])), 0, 0.1);
    }

    /** Fair: exp(0.2 z − 0.02). */
    @Test
    void fairStemsStrayAboutTheirMean() {
        assertNormal(of(s -> Math.log(s.stemsFactor()[0])), -0.02, 0.2);
    }

    /** Weak: exp(0.35 z − 0.06125). */
    @Test
    void weakStemsStrayMore() {
        assertNormal(of(s -> Math.log(s.stemsFactor()[1])), -0.06125, 0.35);
    }

    /** One number for each cause; none of them may know of another, nor of its own in the season before. */
    private static Map<String, double[]> causes() {
        Map<String, double[]> causes = new LinkedHashMap<>();
        causes.put("temperature of the first day", of(s -> s.deviation()[0]));
        causes.put("temperature of the season", of(s -> mean(s.deviation())));
        causes.put("gusts of a side", of(s -> gusts(s, 0)));
        causes.put("gusts of the other", of(s -> gusts(s, 1)));
        causes.put("a pest", of(s -> Math.log(s.pestYear()[0])));
        causes.put("another pest", of(s -> Math.log(s.pestYear()[1])));
        causes.put("spring frost", of(PossibleSeason::springFrost));
        causes.put("autumn frost", of(PossibleSeason::autumnFrost));
        causes.put(
                "seed-bed",
                of(s -> IntStream.range(0, WEEKS).filter(w -> s.badSeedBed()[w]).count()));
        causes.put("winter", of(s -> s.hardWinter() ? 1 : 0));
        causes.put("a crop's first cut", of(s -> Math.log(s.firstCutFactor()[0])));
        causes.put("another crop's first cut", of(s -> Math.log(s.firstCutFactor()[1])));
        causes.put("a crop's stems", of(s -> Math.log(s.stemsFactor()[0])));
        causes.put("another crop's stems", of(s -> Math.log(s.stemsFactor()[1])));
        return causes;
    }

    private static double correlation(double[] a, double[] b) {
        return covariance(a, b) / Math.sqrt(covariance(a, a) * covariance(b, b));
    }

    /**
     * Of independent numbers, the correlation has standard error 1/√n. The first day is left out against the season that
     * it is part of.
     */
    @Test
    void causesKnowNothingOfOneAnother() {
        List<Map.Entry<String, double[]>> causes = List.copyOf(causes().entrySet());
        for (int a = 0; a < causes.size(); a++) {
            for (int b = Math.max(a + 1, 2); b < causes.size(); b++) {
                assertThat(correlation(causes.get(a).getValue(), causes.get(b).getValue()))
                        .as("%s and %s", causes.get(a).getKey(), causes.get(b).getKey())
                        .isCloseTo(0, within(ERRORS / Math.sqrt(COUNT)));
            }
        }
    }

    @Test
    void seasonsKnowNothingOfTheOneBefore() {
        causes().forEach((cause, draws) -> assertThat(
                        correlation(Arrays.copyOf(draws, COUNT - 1), Arrays.copyOfRange(draws, 1, COUNT)))
                .as(cause)
                .isCloseTo(0, within(ERRORS / Math.sqrt(COUNT - 1))));
    }

    private static double gusts(PossibleSeason season, int side) {
        return season.gusts().stream().filter(g -> g.side() == side).count();
    }

    /** Poisson with mean λ a season: standard errors √(λ/n) of the mean and √((λ + 2λ²)/n) of the variance. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void gustsOfASeasonAreAPoissonNumber(int side) {
        double expected = WEEKS * (side == 0 ? RATE : 0.1);
        double[] counts = of(s -> gusts(s, side));
        assertThat(mean(counts)).as("mean").isCloseTo(expected, within(ERRORS * Math.sqrt(expected / COUNT)));
        assertThat(covariance(counts, counts))
                .as("variance")
                .isCloseTo(expected, within(ERRORS * Math.sqrt((expected + 2 * expected * expected) / COUNT)));
    }

    /** A share of a seventh for each day of the week. */
    @Test
    void gustsFallOnAnyDayOfTheWeekAlike() {
        int[] days = new int[7];
        SEASONS.forEach(s -> s.gusts().forEach(g -> days[g.day() % 7]++));
        int all = IntStream.of(days).sum();
        double error = Math.sqrt(6 / 49.0 / all);
        assertThat(IntStream.of(days).mapToDouble(d -> d / (double) all))
                .allSatisfy(share -> assertThat(share).isCloseTo(1 / 7.0, within(ERRORS * error)));
    }

    /** Shares below the quantiles of a library's Gumbel distribution. */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.3, 0.5, 0.8, 0.98})
    void speedsOfGustsFollowGumbel(double p) {
        double quantile = GumbelDistribution.of(21, 2).inverseCumulativeProbability(p);
        double[] speeds = SEASONS.stream()
                .flatMap(s -> s.gusts().stream())
                .mapToDouble(Gust::speed)
                .toArray();
        double below = Arrays.stream(speeds).filter(v -> v <= quantile).count() / (double) speeds.length;
        assertThat(below).isCloseTo(p, within(ERRORS * Math.sqrt(p * (1 - p) / speeds.length)));
    }

    @Test
    void gustsComeByDayThenSide() {
        assertThat(SEASONS)
                .allSatisfy(s -> assertThat(s.gusts())
                        .isSortedAccordingTo((a, b) -> a.day() != b.day() ? a.day() - b.day() : a.side() - b.side()));
    }

    @Test
    void gustsNameTheirSide() {
        assertThat(SEASONS.stream().flatMap(s -> s.gusts().stream()))
                .isNotEmpty()
                .allSatisfy(g -> assertThat(g.from()).isEqualTo(g.side() == 0 ? 270 : 0));
    }

    /** A week has the rate of the month of its day 3: the week of 29 March 2027 to 4 April that of April. */
    @Test
    void aWeekHasTheRateOfTheMonthOfItsMiddle() {
        Farm farm = farm();
        List<Double> rates =
                IntStream.range(0, 12).mapToObj(m -> m == 3 ? 7.0 : 0.0).toList();
        farm.storms = List.of(new Site.StormSide(90, rates, 21, 2));
        farm.starts = LocalDate.of(2027, 3, 1);
        int[] weeks = PossibleSeasons.sample(farm.season(), 200, 3).stream()
                .flatMap(s -> s.gusts().stream())
                .mapToInt(g -> g.day() / 7)
                .distinct()
                .sorted()
                .toArray();
        assertThat(weeks).containsExactly(4, 5, 6, 7, 8);
    }

    @Test
    void badSeedBedsComeAsOftenAsTheyShould() {
        double[] bad =
                of(s -> IntStream.range(0, WEEKS).filter(w -> s.badSeedBed()[w]).count());
        assertThat(mean(bad)).isCloseTo(WEEKS * 0.2, within(ERRORS * Math.sqrt(WEEKS * 0.2 * 0.8 / COUNT)));
    }

    @Test
    void hardWintersComeAsOftenAsTheyShould() {
        assertThat(mean(of(s -> s.hardWinter() ? 1 : 0))).isCloseTo(0.3, within(ERRORS * errorOfShare(0.3)));
    }

    @Test
    void whatIsCertainAlwaysComes() {
        Farm farm = farm();
        farm.badSeedBed = new Site.BadSeedBed(1, 0.5);
        farm.hardWinter = new Site.HardWinter(0, 0.5);
        farm.storms = List.of(new Site.StormSide(0, Collections.nCopies(12, 0.0), 21, 2));
        assertThat(PossibleSeasons.sample(farm.season(), 100, 9)).allSatisfy(s -> {
            assertThat(s.badSeedBed()).doesNotContain(false);
            assertThat(s.hardWinter()).isFalse();
            assertThat(s.gusts()).isEmpty();
        });
    }
}
