package bedwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MonthlyNormalsTest {
    /** A year of 365 days. */
    private static final int YEAR = 2023;

    /** Smooth years, and months in no order at all. */
    static List<List<Double>> climates() {
        SplittableRandom random = new SplittableRandom(5);
        List<List<Double>> climates = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            double centre = random.nextDouble(-10, 25);
            double swing = random.nextDouble(20);
            double coldest = random.nextDouble(12);
            boolean smooth = i % 2 == 0;
            climates.add(IntStream.range(0, 12)
                    .mapToObj(m -> smooth
                            ? centre - swing * Math.cos((m - coldest) * Math.PI / 6)
                            : random.nextDouble(-30, 40))
                    .toList());
        }
        return climates;
    }

    @ParameterizedTest
    @MethodSource("climates")
    void everyMonthKeepsItsMean(List<Double> means) {
        double[] values = MonthlyNormals.byDay(means);
        for (int m = 1; m <= 12; m++) {
            LocalDate first = LocalDate.of(YEAR, m, 1);
            double mean = Arrays.stream(
                            values, first.getDayOfYear() - 1, first.getDayOfYear() - 1 + first.lengthOfMonth())
                    .average()
                    .orElseThrow();
            assertThat(mean).as("month %s", m).isCloseTo(means.get(m - 1), within(1e-9));
        }
    }

    @ParameterizedTest
    @MethodSource("climates")
    void theCourseBendsOnlyOnThe15thOfAMonth(List<Double> means) {
        double[] values = MonthlyNormals.byDay(means);
        for (int d = 0; d < 365; d++) {
            if (LocalDate.ofYearDay(YEAR, d + 1).getDayOfMonth() != 15) {
                double bend = values[(d + 364) % 365] - 2 * values[d] + values[(d + 1) % 365];
                assertThat(bend).as("day of the year %s", d + 1).isCloseTo(0, within(1e-9));
            }
        }
    }

    @Test
    void aYearWithoutSeasonsStaysFlat() {
        assertThat(MonthlyNormals.byDay(Collections.nCopies(12, 7.5)))
                .hasSize(365)
                .containsExactly(IntStream.range(0, 365).mapToDouble(d -> 7.5).toArray(), within(1e-9));
    }

    @Test
    void daysOfTheYearAreThoseOfTheCalendar() {
        for (int d = 0; d < 365; d++) {
            LocalDate date = LocalDate.ofYearDay(YEAR, d + 1);
            assertThat(MonthlyNormals.dayOfYear(date.getMonthValue() - 1, date.getDayOfMonth()))
                    .as("%s", date)
                    .isEqualTo(d);
        }
    }

    @Test
    void theLeapDayIsTheDayBefore() {
        assertThat(MonthlyNormals.dayOfYear(1, 29)).isEqualTo(MonthlyNormals.dayOfYear(1, 28));
    }

    @Test
    void otherThanTwelveMeansAreRefusedWithTheirNumber() {
        assertThatThrownBy(() -> MonthlyNormals.byDay(Collections.nCopies(11, 1.0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("11");
    }
}
