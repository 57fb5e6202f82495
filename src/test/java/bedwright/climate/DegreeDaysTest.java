package bedwright.climate;

import static bedwright.season.Crop.Convention.AVERAGE;
import static bedwright.season.Crop.Convention.CLAMPED;
import static bedwright.season.Crop.Convention.SINE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Crop;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The formulas hold in any degree, so figures published in °F are checked as they stand. */
class DegreeDaysTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "'Iowa State University, Agronomy 541, lesson 2b', 50, 70, 50, 10",
        "'University of California IPM, citrus, a simple way to calculate degree-days (mean of the day only)', 64, 64, 53, 11",
        "'Manitoba Agriculture, sunflower staging note 2014', 10, 25, 6.7, 10.8",
        "'a consultant’s note, arithmetic only', 61, 83, 50, 22"
    })
    void averageIsAsPublished(String source, double min, double max, double base, double published) {
        assertThat(DegreeDays.of(AVERAGE, min, max, base, null)).isCloseTo(published, within(1e-9));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "'extension column, Waushara Argus, 25 April 2018, first day', 65, 90, 50, 86, 25.5",
        "'the same, second day', 46, 72, 50, 86, 11",
        "'the same, third day', 42, 63, 50, 86, 6.5",
        "'Ohio State University Extension, 12 June 2023, after the Ohio Agronomy Guide', 63, 87, 50, 86, 24.5",
        "'University of Montana climate office: clamped to 35 and 80 (the result follows)', 32, 82, 35, 80, 22.5",
        "'Iowa State University, Agronomy 541: at most 36 a day', 90, 110, 50, 86, 36"
    })
    void clampedIsAsPublished(String source, double min, double max, double base, double upper, double published) {
        assertThat(DegreeDays.of(CLAMPED, min, max, base, upper)).isCloseTo(published, within(1e-9));
    }

    /** Extension column, Waushara Argus, 25 April 2018: the three days total 43. */
    @Test
    void publishedDaysAddUp() {
        double sum = DegreeDays.of(CLAMPED, 65, 90, 50, 86.0)
                + DegreeDays.of(CLAMPED, 46, 72, 50, 86.0)
                + DegreeDays.of(CLAMPED, 42, 63, 50, 86.0);
        assertThat(sum).isCloseTo(43, within(1e-9));
    }

    /** North Dakota State University's rule for sunflower: both temperatures raised to 44 °F, no upper cut-off. */
    @Test
    void clampedWithoutUpperThresholdOnlyRaisesToTheBase() {
        assertThat(DegreeDays.of(CLAMPED, 30, 100, 44, null)).isCloseTo((44 + 100) / 2.0 - 44, within(1e-9));
    }

    /**
     * The thermal-ecology package of the TrEnCh project (University of Washington, on CRAN), documentation example of
     * the single sine: 0.47 to two decimals.
     */
    @Test
    void sineIsAsPublished() {
        assertThat(DegreeDays.of(SINE, 7, 14, 12, 33.0)).isCloseTo(0.47, within(0.005));
    }

    /**
     * No table of the single sine could be read in print. These were worked out away from this code, from the closed
     * forms of Zalom and others 1983 and, agreeing to four decimals, by integration in 400,000 steps.
     */
    @ParameterizedTest
    @CsvSource({
        "90, 100, 50, 88, 45.0, 38.0, 38.0000",
        "30, 45, 50, 88, 0, 0, 0",
        "55, 80, 50, 88, 17.5, 17.5, 17.5000",
        "40, 80, 50, 88, 10.0, 15.0, 12.1800",
        "45, 65, 50, 88, 5.0, 7.5, 6.0900",
        "35, 55, 50, 88, 0, 2.5, 1.0900",
        "60, 100, 50, 88, 30.0, 24.0, 27.1174",
        "70, 96, 50, 88, 33.0, 29.0, 31.0520",
        "40, 100, 50, 88, 20.0, 19.0, 19.4368",
        "45, 95, 50, 86, 20.0, 18.0, 19.0264",
        "5, 25, 10, 30, 5.0, 7.5, 6.0900",
        "2, 18, 6.7, 40, 3.3, 5.65, 4.4164",
        "15, 38, 10, 30, 16.5, 12.5, 14.4186",
        "4, 36, 10, 30, 10.0, 10.0, 10.0000"
    })
    void allConventionsAgreeWithTheWorkedTable(
            double min, double max, double base, double upper, double average, double clamped, double sine) {
        assertThat(new double[] {
                    DegreeDays.of(AVERAGE, min, max, base, upper),
                    DegreeDays.of(CLAMPED, min, max, base, upper),
                    DegreeDays.of(SINE, min, max, base, upper)
                })
                .containsExactly(new double[] {average, clamped, sine}, within(0.00005 + 1e-9));
    }

    /** Worked out away from this code, as above; thresholds 50 and 88 °F. Columns: minimum 30, 34, … 70 °F. */
    @ParameterizedTest
    @CsvSource({
        "52, 0.3 0.3 0.3 0.4 0.5 1.0",
        "60, 2.5 2.7 3.0 3.4 3.9 5.0 7.0 9.0",
        "68, 5.6 5.9 6.4 6.9 7.7 9.0 11.0 13.0 15.0 17.0",
        "76, 8.9 9.4 10.0 10.7 11.6 13.0 15.0 17.0 19.0 21.0 23.0",
        "84, 12.4 13.0 13.7 14.5 15.6 17.0 19.0 21.0 23.0 25.0 27.0",
        "88, 14.2 14.8 15.6 16.4 17.5 19.0 21.0 23.0 25.0 27.0 29.0",
        "92, 15.6 16.2 17.0 17.9 19.0 20.5 22.4 24.4 26.4 28.3 30.3",
        "96, 16.6 17.3 18.1 19.0 20.1 21.6 23.5 25.4 27.3 29.2 31.1",
        "100, 17.5 18.2 19.0 19.9 21.0 22.4 24.3 26.2 28.0 29.9 31.6"
    })
    void sineAgreesWithTheWorkedLookUpTable(double max, String row) {
        double[] worked =
                Stream.of(row.split(" ", -1)).mapToDouble(Double::parseDouble).toArray();
        double[] ours = IntStream.range(0, worked.length)
                .mapToDouble(i -> DegreeDays.of(SINE, 30 + 4 * i, max, 50, 88.0))
                .toArray();
        assertThat(ours).containsExactly(worked, within(0.05 + 1e-9));
    }

    /** Days of each of the six cases: where the minimum and the maximum lie against the thresholds. */
    enum Case {
        ALL_ABOVE,
        ALL_BELOW,
        BETWEEN,
        DIPS,
        PEAKS,
        DIPS_AND_PEAKS;

        double[] day(SplittableRandom random, double base, double upper) {
            double below = base - random.nextDouble(0.01, 20);
            double lower = base + random.nextDouble(0.01, 0.5) * (upper - base);
            double higher = base + random.nextDouble(0.5, 0.99) * (upper - base);
            double above = upper + random.nextDouble(0.01, 20);
            return switch (this) {
                case ALL_ABOVE -> new double[] {above, above + random.nextDouble(15)};
                case ALL_BELOW -> new double[] {below - random.nextDouble(15), below};
                case BETWEEN -> new double[] {lower, higher};
                case DIPS -> new double[] {below, higher};
                case PEAKS -> new double[] {lower, above};
                case DIPS_AND_PEAKS -> new double[] {below, above};
            };
        }
    }

    @ParameterizedTest
    @EnumSource(Case.class)
    void sineIsTheAreaUnderTheCurve(Case kind) {
        SplittableRandom random = new SplittableRandom(kind.ordinal());
        for (int i = 0; i < 50; i++) {
            double base = random.nextDouble(-5, 15);
            double upper = base + random.nextDouble(5, 30);
            double[] day = kind.day(random, base, upper);
            assertThat(DegreeDays.of(SINE, day[0], day[1], base, upper))
                    .as("%s: %s to %s, thresholds %s and %s", kind, day[0], day[1], base, upper)
                    .isCloseTo(integrated(day[0], day[1], base, upper), within(1e-5));
        }
    }

    /** The slow way: the mean, over a sine from minimum to maximum and back, of what lies between the thresholds. */
    private static double integrated(double min, double max, double base, double upper) {
        int steps = 20_000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double temperature = (min + max) / 2 + (max - min) / 2 * Math.sin(2 * Math.PI * (i + 0.5) / steps);
            sum += Math.min(Math.max(temperature, base), upper) - base;
        }
        return sum / steps;
    }

    /**
     * Averaging is good where a day does not straddle a threshold, and else the conventions part (Acta Biotheoretica 62
     * (2014) 69–90).
     */
    @Test
    void conventionsAgreeOnlyWhereNoThresholdIsCrossed() {
        assertThat(DegreeDays.of(SINE, 12, 24, 10, 30.0))
                .isEqualTo(DegreeDays.of(AVERAGE, 12, 24, 10, 30.0))
                .isEqualTo(DegreeDays.of(CLAMPED, 12, 24, 10, 30.0));
        assertThat(DegreeDays.of(SINE, 5, 24, 10, 30.0))
                .isStrictlyBetween(DegreeDays.of(AVERAGE, 5, 24, 10, 30.0), DegreeDays.of(CLAMPED, 5, 24, 10, 30.0));
    }

    /**
     * The form of the Irish and British weather services (met.ie, climate data): with the base between the minimum and
     * the mean of the day, (max − base)/2 − (base − min)/4. It is an approximation of the sine: within a tenth of a
     * degree-day in this range of a day.
     */
    @ParameterizedTest
    @CsvSource({"5, 25", "8, 20", "9, 14"})
    void theWeatherServicesFormIsNearTheSine(double min, double max) {
        assertThat(DegreeDays.of(SINE, min, max, 10, null)).isCloseTo((max - 10) / 2 - (10 - min) / 4, within(0.2));
    }

    @Test
    void sineWithoutUpperThresholdHasNoCutOff() {
        assertThat(DegreeDays.of(SINE, 5, 45, 10, null)).isCloseTo(integrated(5, 45, 10, 1000), within(1e-5));
    }

    static Stream<Arguments> conventionsAndUppers() {
        return Stream.of(Crop.Convention.values())
                .flatMap(convention -> Stream.of(Arguments.of(convention, null), Arguments.of(convention, 26.0)));
    }

    @ParameterizedTest
    @MethodSource("conventionsAndUppers")
    void aWarmerDayNeverCountsLessAndNoneIsNegative(Crop.Convention convention, Double upper) {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 2000; i++) {
            double min = random.nextDouble(-25, 35);
            double max = min + random.nextDouble(25);
            double cooler = DegreeDays.of(convention, min, max, 8, upper);
            double warmer = DegreeDays.of(convention, min + random.nextDouble(3), max + 3, 8, upper);
            assertThat(cooler).as("%s °C to %s °C", min, max).isNotNegative().isLessThanOrEqualTo(warmer + 1e-12);
        }
    }

    @Test
    void averageLeavesTheUpperThresholdOutOfAccount() {
        assertThat(DegreeDays.of(AVERAGE, 20, 40, 10, 25.0)).isEqualTo(20);
    }

    @ParameterizedTest
    @EnumSource(Crop.Convention.class)
    void aDayOfOneTemperatureCountsWhatItIsAboveTheBase(Crop.Convention convention) {
        assertThat(DegreeDays.of(convention, 18, 18, 10, 30.0)).isEqualTo(8);
    }

    @Test
    void aMinimumAboveTheMaximumIsRefusedWithBoth() {
        assertThatThrownBy(() -> DegreeDays.of(SINE, 20.5, 10.25, 5, null))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("20.5")
                .hasMessageContaining("10.25");
    }

    @Test
    void whatIsNotANumberIsRefused() {
        assertThatThrownBy(() -> DegreeDays.of(SINE, Double.NaN, 10, 5, null))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("NaN");
    }

    @Test
    void anUpperThresholdNotAboveTheBaseIsRefusedWithBoth() {
        assertThatThrownBy(() -> DegreeDays.of(CLAMPED, 5, 10, 12.5, 12.25))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("12.5")
                .hasMessageContaining("12.25");
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 9.5})
    void anUpperThresholdNotAboveTheBaseIsRefused(double upper) {
        assertThatThrownBy(() -> DegreeDays.of(SINE, 5, 25, 10, upper))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.valueOf(upper));
    }
}
