package bedwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Site;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.GumbelDistribution;
import org.apache.commons.statistics.distribution.LogisticDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GustsTest {

    /**
     * Wind Energy Engineering, p. 150: Valentine, Nebraska, 20 gusts of 20 m/s and more in 4 years, so 5 a year; mode
     * 21.137 and scale 1.945 by moments; extreme wind of n years b − a × ln(−ln(1 − 1/(n × 5))), worked out by hand for 10
     * and 50 years: 28.7 and 31.9 m/s.
     */
    @ParameterizedTest
    @CsvSource({"10, 28.7", "50, 31.9"})
    void extremesOfValentineAreAsPublished(int years, double published) {
        assertThat(Gusts.quantile(21.137, 1.945, 1 - 1 / (years * 5.0))).isCloseTo(published, within(0.05));
    }

    /**
     * Annual maxima of Hartford and Albany 1944–1983 in mph (data set "wind" of the package ismev on CRAN, from Coles,
     * An Introduction to Statistical Modeling of Extreme Values, 2001) and of Lisbon 1963–1992 in km/h (package evd);
     * modes and scales by moments, and the wind of 10 and 50 years, worked out away from this code.
     */
    @ParameterizedTest(name = "{0}, {3} years")
    @CsvSource({
        "Hartford, 49.854, 5.147, 10, 61.4",
        "Hartford, 49.854, 5.147, 50, 69.9",
        "Albany, 44.586, 5.178, 10, 56.2",
        "Albany, 44.586, 5.178, 50, 64.8",
        "Lisbon, 95.08, 10.84, 50, 137.4"
    })
    void returnLevelsOfAnnualMaximaAreAsWorkedOut(String place, double mode, double scale, int years, double expected) {
        assertThat(Gusts.quantile(mode, scale, 1 - 1.0 / years)).isCloseTo(expected, within(0.05));
    }

    /** A second implementation: the Gumbel distribution of Commons Statistics. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-9, 0.01, 0.2, 0.5, 0.9, 0.999999})
    void quantilesAreThoseOfALibrary(double p) {
        assertThat(Gusts.quantile(21, 2.5, p))
                .isCloseTo(GumbelDistribution.of(21, 2.5).inverseCumulativeProbability(p), within(1e-9));
    }

    /** A second implementation: the logistic distribution of Commons Statistics. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 10, 24, 27, 60})
    void theFlattenedShareIsLogistic(double speed) {
        assertThat(Gusts.flattened(speed, 24, 3))
                .isCloseTo(LogisticDistribution.of(24, 3).cumulativeProbability(speed), within(1e-12));
    }

    @Test
    void oneSpreadMoreLaysAboutThreeQuartersFlat() {
        assertThat(Gusts.flattened(27, 24, 3)).isCloseTo(0.75, within(0.03));
    }

    @Test
    void nothingLaysFlatWhatHasNoHeight() {
        assertThat(Gusts.flattened(80, Double.POSITIVE_INFINITY, 3)).isZero();
    }

    /**
     * The share laid flat rises with the probability of the speed and stays within 0 and 1, so a mean at the middles of n
     * equal steps is at most 1/(2n) from the integral.
     */
    @Test
    void theExpectationIsTheIntegralOverAllSpeeds() {
        SplittableRandom random = new SplittableRandom(8);
        for (int i = 0; i < 50; i++) {
            double mode = random.nextDouble(10, 35);
            double scale = random.nextDouble(0.5, 6);
            double relative = random.nextDouble();
            double half = random.nextDouble(10, 60);
            double spread = random.nextDouble(0.5, 6);
            assertThat(Gusts.expectedFlattened(mode, scale, relative, half, spread))
                    .as("mode %s, scale %s, relative %s, half %s, spread %s", mode, scale, relative, half, spread)
                    .isCloseTo(integral(mode, scale, relative, half, spread), within(0.5 / Gusts.SPEEDS + 1e-4));
        }
    }

    /** The slow way: over speeds, by a library's density. */
    private static double integral(double mode, double scale, double relative, double half, double spread) {
        GumbelDistribution speeds = GumbelDistribution.of(mode, scale);
        double step = scale / 500;
        double sum = 0;
        for (double v = mode - 6 * scale; v < mode + 25 * scale; v += step) {
            sum += speeds.density(v + step / 2) * step / (1 + Math.exp((half - relative * (v + step / 2)) / spread));
        }
        return sum;
    }

    @Test
    void theExpectationIsTheMeanOfFiftySpeeds() {
        GumbelDistribution speeds = GumbelDistribution.of(21, 2);
        double sum = 0;
        for (int i = 0; i < 50; i++) {
            sum += LogisticDistribution.of(16, 3)
                    .cumulativeProbability(0.7 * speeds.inverseCumulativeProbability((i + 0.5) / 50));
        }
        assertThat(Gusts.expectedFlattened(21, 2, 0.7, 16, 3)).isCloseTo(sum / 50, within(1e-12));
    }

    @Test
    void noExpectationForWhatHasNoHeight() {
        assertThat(Gusts.expectedFlattened(21, 2, 1, Double.POSITIVE_INFINITY, 3))
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.5, 1.5, Double.NaN})
    void aProbabilityOutOfRangeIsRefusedWithItsValue(double p) {
        assertThatThrownBy(() -> Gusts.quantile(21, 2, p))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.valueOf(p));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -2.5, Double.NaN})
    void aScaleOutOfRangeIsRefusedWithItsValue(double scale) {
        assertThatThrownBy(() -> Gusts.expectedFlattened(21, scale, 1, 20, 3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.valueOf(scale));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -2.5, Double.NaN})
    void aSpreadOutOfRangeIsRefusedWithItsValue(double spread) {
        assertThatThrownBy(() -> Gusts.flattened(21, 20, spread))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.valueOf(spread));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.25, 1.25, Double.NaN})
    void aRelativeSpeedOutOfRangeIsRefusedWithItsValue(double relative) {
        assertThatThrownBy(() -> Gusts.expectedFlattened(21, 2, relative, 20, 3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.valueOf(relative));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
    void aModeThatIsNoNumberIsRefused(double mode) {
        assertThatThrownBy(() -> Gusts.expectedFlattened(mode, 2, 1, 20, 3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.valueOf(mode));
    }

    @Test
    void aSpeedThatIsNoNumberIsRefused() {
        assertThatThrownBy(() -> Gusts.flattened(Double.NaN, 20, 3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("NaN");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -4.5, Double.NaN})
    void aStandingSpeedOutOfRangeIsRefusedWithItsValue(double half) {
        assertThatThrownBy(() -> Gusts.expectedFlattened(21, 2, 1, half, 3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.valueOf(half));
    }

    private static Site.StormSide west(List<Double> gustsAWeek) {
        return new Site.StormSide(270, gustsAWeek, 20, 3);
    }

    private static List<Double> inEachMonth(double gusts) {
        return Collections.nCopies(12, gusts);
    }

    /** Put back into the law that it solves, exp(−N(1 − F(v))), with the distribution F of Commons Statistics. */
    @ParameterizedTest
    @CsvSource({"2, 0.5", "2, 0.9", "0.8, 0.5", "12, 0.9"})
    void theStrongestStaysBelowInThatShareOfTheYears(double aYear, double share) {
        double strongest = Gusts.strongest(west(inEachMonth(1)), aYear, share).orElseThrow();

        double below = GumbelDistribution.of(20, 3).cumulativeProbability(strongest);
        assertThat(Math.exp(-aYear * (1 - below))).isCloseTo(share, within(1e-12));
    }

    /** A year has no gust with probability exp(−N): 0.61 for 0.5 a year, 1 for none. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.5, false", "0.5, 0.6, false", "0.5, 0.61, true", "0, 0.9, false"})
    void whereAYearWithoutGustsIsLikelierThereIsNoStrongest(double aYear, double share, boolean isAny) {
        assertThat(Gusts.strongest(west(inEachMonth(1)), aYear, share).isPresent())
                .isEqualTo(isAny);
    }

    @Test
    void theYearsGustsAreThoseOfItsMonths() {
        List<Double> july = new ArrayList<>(inEachMonth(0));
        july.set(6, 0.7);

        assertThat(Gusts.strongestOfAYear(west(july), 0.9).orElseThrow())
                .isCloseTo(Gusts.strongest(west(july), 0.7 * 31 / 7, 0.9).orElseThrow(), within(1e-12));
        assertThat(Gusts.strongestOfAYear(west(inEachMonth(0.07)), 0.9).orElseThrow())
                .isCloseTo(Gusts.strongest(west(july), 0.01 * 365, 0.9).orElseThrow(), within(1e-12));
    }

    @Test
    void noWindAndTheOpenWindAreRelativeSpeeds() {
        assertThat(Gusts.expectedFlattened(21, 2, 0, 20, 3)).isCloseTo(Gusts.flattened(0, 20, 3), within(1e-12));
        assertThat(Gusts.expectedFlattened(21, 2, 1, 20, 3)).isGreaterThan(0.5);
    }

    @Test
    void aModeOrScaleOfAQuantileOutOfRangeIsRefused() {
        assertThatThrownBy(() -> Gusts.quantile(Double.NaN, 2, 0.5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Gusts.quantile(21, 0, 0.5)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -4.5, Double.NaN})
    void whatStandsOneGustIsRefusedLikewise(double value) {
        assertThatThrownBy(() -> Gusts.flattened(21, value, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Gusts.expectedFlattened(21, 2, 1, 20, value))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
