package bedwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Season;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SiteClimateTest {
    /** From the autumn before a leap year on. */
    private static Farm farm() {
        Farm farm = new Farm();
        farm.starts = LocalDate.of(2027, 10, 4);
        farm.weeks = 70;
        return farm;
    }

    private static final Season SEASON = farm().season();
    private static final SiteClimate CLIMATE = SiteClimate.of(SEASON);

    private static int day(int year, int month, int day) {
        return SEASON.dayOf(LocalDate.of(year, month, day));
    }

    @Test
    void theMonthsOfTheSeasonKeepTheirNormals() {
        double mean = IntStream.rangeClosed(day(2028, 7, 1), day(2028, 7, 31))
                .mapToDouble(CLIMATE::normalMax)
                .average()
                .orElseThrow();
        assertThat(mean).isCloseTo(farm().meanMax.get(6), within(1e-9));
    }

    @Test
    void minimaAreMadeOfTheMinima() {
        double mean = IntStream.rangeClosed(day(2027, 12, 1), day(2027, 12, 31))
                .mapToDouble(CLIMATE::normalMin)
                .average()
                .orElseThrow();
        assertThat(mean).isCloseTo(farm().meanMin.get(11), within(1e-9));
    }

    @Test
    void theLeapDayHasTheNormalsOfTheDayBefore() {
        assertThat(CLIMATE.normalMin(day(2028, 2, 29))).isEqualTo(CLIMATE.normalMin(day(2028, 2, 28)));
    }

    @Test
    void aDateHasTheSameNormalsInEveryYear() {
        assertThat(CLIMATE.normalMax(day(2028, 10, 20))).isEqualTo(CLIMATE.normalMax(day(2026, 10, 20)));
    }

    @ParameterizedTest
    @CsvSource({
        "2027-01-01, 0",
        "2027-01-07, 0",
        "2027-01-08, 1",
        "2027-12-30, 51",
        "2027-12-31, 52",
        "2028-12-29, 51",
        "2028-12-30, 52",
        "2028-02-29, 8"
    })
    void weekOfTheYearIsThatOfTheDay(LocalDate date, int week) {
        assertThat(CLIMATE.weekOfYear(SEASON.dayOf(date))).isEqualTo(week);
    }

    @Test
    void monthsRunFromJanuaryAtZero() {
        assertThat(List.of(
                        CLIMATE.month(day(2028, 1, 1)),
                        CLIMATE.month(day(2028, 2, 29)),
                        CLIMATE.month(day(2027, 12, 31))))
                .containsExactly(0, 1, 11);
    }

    @Test
    void dayLengthIsThatOfTheDate() {
        assertThat(CLIMATE.dayLength(day(2028, 12, 31))).isEqualTo(DayLength.hours(42, 366));
    }

    /** The farm's coldest month is January, so its coldest day is the knot on the 15th, in every year within reach. */
    @Test
    void theColdestDayComesInEveryYearWithinReach() {
        assertThat(CLIMATE.coldestDays()).containsExactly(day(2027, 1, 15), day(2028, 1, 15), day(2029, 1, 15));
    }

    @Test
    void theSouthIsColdestInJuly() {
        Farm south = farm();
        south.latitude = -42;
        south.meanMin = turned(south.meanMin);
        south.meanMax = turned(south.meanMax);
        assertThat(SiteClimate.of(south.season()).coldestDays()).containsExactly(day(2027, 7, 15), day(2028, 7, 15));
    }

    private static List<Double> turned(List<Double> months) {
        return IntStream.range(0, 12).mapToObj(m -> months.get((m + 6) % 12)).toList();
    }

    @Test
    void ofEquallyColdDaysTheFirstOfTheYearCounts() {
        Farm flat = farm();
        flat.meanMin = Collections.nCopies(12, 10.3);
        flat.meanMax = Collections.nCopies(12, 20.7);
        assertThat(SiteClimate.of(flat.season()).coldestDays())
                .containsExactly(day(2027, 1, 1), day(2028, 1, 1), day(2029, 1, 1));
    }

    @Test
    void theColdestDaysAreTheCallersOwn() {
        CLIMATE.coldestDays()[0] = 999;
        assertThat(CLIMATE.coldestDays()).doesNotContain(999);
    }

    /** Ranges that leap from half a degree to forty: the knots of the narrow months would cross. */
    @Test
    void theMinimumNeverPassesTheMaximum() {
        Farm leaping = farm();
        leaping.meanMin = Collections.nCopies(12, 0.0);
        leaping.meanMax =
                IntStream.range(0, 12).mapToObj(m -> m % 2 == 0 ? 0.5 : 40.0).toList();
        SiteClimate climate = SiteClimate.of(leaping.season());
        assertThat(IntStream.range(0, 400))
                .allSatisfy(d -> assertThat(climate.normalMin(d)).isLessThanOrEqualTo(climate.normalMax(d)));
    }

    @ParameterizedTest
    @ValueSource(ints = {-400, 0, 70 * 7 + 30})
    void daysWithinReachAreKnown(int day) {
        assertThat(CLIMATE.normalMin(day)).isBetween(-20.0, 30.0);
    }

    @ParameterizedTest
    @ValueSource(ints = {-401, 70 * 7 + 31})
    void daysOutOfReachAreRefusedWithTheirNumber(int day) {
        assertThatThrownBy(() -> CLIMATE.normalMin(day))
                .isInstanceOf(IndexOutOfBoundsException.class)
                .hasMessageContaining(String.valueOf(day));
    }
}
