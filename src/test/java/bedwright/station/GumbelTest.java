package bedwright.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GumbelTest {

    /** Wind Energy Engineering, p. 150: 20 gusts at Valentine, Nebraska, mean 22.26 and SD 2.4949 m/s: a 1.945, b 21.137. */
    @Test
    void theGustsOfValentineAreFittedAsPublished() {
        Gumbel fit = Gumbel.ofMoments(22.26, 2.4949);

        assertThat(fit.scale()).isCloseTo(1.945, within(0.0005));
        assertThat(fit.mode()).isCloseTo(21.137, within(0.0005));
    }

    /**
     * Annual maxima 1944–1983 in mph (data set "wind" of the package ismev on CRAN, from Coles, An Introduction to
     * Statistical Modeling of Extreme Values, 2001); the fits worked out away from this code.
     */
    @ParameterizedTest
    @CsvSource({"Hartford, 52.825, 6.6018, 49.854, 5.147", "Albany, 47.575, 6.6405, 44.586, 5.178"})
    void annualMaximaAreFittedAsWorkedOut(String place, double mean, double sd, double mode, double scale) {
        Gumbel fit = Gumbel.ofMoments(mean, sd);

        assertThat(fit.mode()).isCloseTo(mode, within(0.001));
        assertThat(fit.scale()).isCloseTo(scale, within(0.001));
    }

    /**
     * Annual maxima of Lisbon, km/h, from the first to the last year (data set "lisbon" of the Debian package r-cran-evd;
     * the years 1963–1992 and the unit are from memory); the fit worked out away from this code.
     */
    @Test
    void theMaximaOfLisbonAreFittedFromTheirValues() {
        double[] maxima = {
            129, 117, 100, 100, 132, 94, 108, 113, 96, 113, 96, 72, 98, 85, 124, 108, 102, 102, 112, 107, 86, 91, 96,
            89, 90, 89, 89, 84, 107, 111
        };
        Gumbel fit = Gumbel.byMoments(maxima);

        assertThat(fit.mode()).isCloseTo(95.08, within(0.005));
        assertThat(fit.scale()).isCloseTo(10.84, within(0.005));
    }

    @Test
    void speedsWithoutSpreadAreRefused() {
        assertThatThrownBy(() -> Gumbel.byMoments(new double[] {20, 20, 20}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("3 speeds");
    }
}
