package bedwright.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Factors: NIST Special Publication 811 (2008), appendix B, where they are exact; from memory of it. */
class UnitsTest {
    private static double metric(Unit unit, String written) {
        return unit.metric(new BigDecimal(written));
    }

    @Test
    void figuresAreTurnedAsDefined() {
        assertThat(metric(Units.FEET.length(), "1")).isEqualTo(0.3048);
        assertThat(metric(Units.FEET.smallLength(), "1")).isEqualTo(0.0254);
        assertThat(metric(Units.FEET.speed(), "1")).isEqualTo(0.44704);
        assertThat(metric(Units.FEET.temperature(), "32")).isEqualTo(0);
        assertThat(metric(Units.FEET.temperature(), "212")).isEqualTo(100);
        assertThat(metric(Units.FEET.temperature(), "-40")).isEqualTo(-40);
        assertThat(metric(Units.FEET.degrees(), "9")).isEqualTo(5);
        assertThat(metric(Units.FEET.degreeDays(), "1800")).isEqualTo(1000);
        assertThat(metric(Units.FEET.daysADegree(), "5")).isEqualTo(9);
        assertThat(metric(Units.FEET.eachLength("money"), "0.3048")).isEqualTo(1);
    }

    /** As binary fractions 0.7 ft would be 0.21336000000000002 m. */
    @Test
    void figuresAreReadAsDecimals() {
        assertThat(metric(Units.FEET.length(), "0.7")).isEqualTo(0.21336);
        assertThat(metric(Units.FEET.smallLength(), "0.3")).isEqualTo(0.00762);
    }

    static IntStream seeds() {
        return IntStream.range(0, 20);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsWrittenMakesTheSameFigureAgain(int seed) {
        Random random = new Random(seed);
        List<Unit> units = List.of(
                Units.FEET.length(),
                Units.FEET.smallLength(),
                Units.FEET.temperature(),
                Units.FEET.degrees(),
                Units.FEET.daysADegree(),
                Units.FEET.speed(),
                Units.FEET.eachLength("money"));
        for (Unit unit : units) {
            for (int i = 0; i < 50; i++) {
                double metric = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(8) - 3);

                assertThat(unit.metric(unit.written(metric))).isEqualTo(metric);
            }
        }
    }

    @Test
    void whatIsWrittenHasNoNeedlessDigits() {
        assertThat(Units.FEET.length().written(3.6576)).isEqualByComparingTo("12");
        assertThat(Units.FEET.temperature().written(50 * 5 / 9.0)).isEqualByComparingTo("82");
        assertThat(Units.FEET.temperature().written(18.5 * 5 / 9.0)).isEqualByComparingTo("50.5");
    }

    @Test
    void limitsAreRoundedOutwards() {
        assertThat(Units.FEET.length().least(0.5)).isEqualTo(1.64);
        assertThat(Units.FEET.length().most(2000)).isEqualTo(6562);
        assertThat(Units.FEET.temperature().least(-10)).isEqualTo(14);
    }

    @Test
    void metricFiguresAreKeptAsTheyAre() {
        assertThat(metric(Units.METRES.length(), "1.2")).isEqualTo(1.2);
        assertThat(Units.METRES.temperature().of(21.5)).isEqualTo(21.5);
        assertThat(Units.METRES.speed().least(1)).isEqualTo(1);
    }
}
