package bedwright.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Site;
import bedwright.station.FrostSeasons.Turn;
import bedwright.weather.InventedStation;
import bedwright.weather.StationRecord;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrostFitTest {
    private static final int FIRST = 2001;

    /** A record of mild days but for one frost each spring and autumn, from 2001 on; a spring day of 0 has none. */
    private static StationRecord frosts(int... aprilDays) {
        LocalDate first = LocalDate.of(FIRST, 1, 1);
        int days = (int) (LocalDate.of(FIRST + aprilDays.length, 1, 1).toEpochDay() - first.toEpochDay());
        double[] min = new double[days];
        double[] max = new double[days];
        Arrays.fill(min, 8);
        Arrays.fill(max, 18);
        for (int year = 0; year < aprilDays.length; year++) {
            if (aprilDays[year] > 0) {
                min[day(first, LocalDate.of(FIRST + year, 4, 1)) + aprilDays[year] - 1] = -1;
            }
            min[day(first, LocalDate.of(FIRST + year, 10, 20))] = 0;
        }
        double[] none = new double[days];
        Arrays.fill(none, Double.NaN);
        return new StationRecord("", first, min, max, none, none, StationRecord.Wind.NONE, 0);
    }

    private static int day(LocalDate first, LocalDate date) {
        return Math.toIntExact(date.toEpochDay() - first.toEpochDay());
    }

    private static Site.FrostDate spring(StationRecord record) {
        return new FrostFit(record, true, Turn.SPRING).date();
    }

    private static MonthDay april(int day) {
        return MonthDay.of(4, day);
    }

    /** Of the dates 1 to 29 in order, the 30 × 0.1-th, 30 × 0.5-th and 30 × 0.9-th. */
    @Test
    void ofManySpringsTheQuantilesAreDatesInOrder() {
        int[] days = new int[29];
        for (int i = 0; i < days.length; i++) {
            days[i] = 1 + i * 7 % 29;
        }

        assertThat(spring(frosts(days))).isEqualTo(new Site.FrostDate(april(3), april(15), april(27)));
    }

    /**
     * Of 10, 14, 18 and 22 April the mean is the 16th and the SD 5.164; t of 3 degrees of freedom that a tenth passes is
     * 1.638 (tables of Student's t), so ± 1.638 × 5.164 × √1.25 = 9.5 days: the 6.5th and the 25.5th.
     */
    @Test
    void ofFewSpringsTheQuantilesLieWideApart() {
        assertThat(spring(frosts(10, 14, 18, 22))).isEqualTo(new Site.FrostDate(april(7), april(16), april(25)));
    }

    /** 36 springs of which 6 have none: of 37 × 0.5 and 37 × 0.9 in order, 6 are before the first date. */
    @Test
    void springsWithoutFrostCountAsEarlier() {
        int[] days = new int[36];
        for (int i = 6; i < days.length; i++) {
            days[i] = i - 5;
        }
        Site.FrostDate date = spring(frosts(days));

        assertThat(date.usual()).isEqualTo(april(13));
        assertThat(date.late()).isEqualTo(april(27));
    }

    @Test
    void autumnsAreFoundFromAugustOn() {
        assertThat(new FrostFit(frosts(5, 5, 5), true, Turn.AUTUMN).date().usual())
                .isEqualTo(MonthDay.of(10, 20));
    }

    /** The Utah Climate Center's freeze tables drop a season with ten days missing before a freeze is met. */
    @ParameterizedTest
    @CsvSource({"10, 3", "11, 2"})
    void aSpringWithTooManyDaysMissingAfterItsFrostIsDropped(int missing, int counted) {
        StationRecord record = frosts(5, 5, 5);
        int from = record.dayOf(LocalDate.of(FIRST + 1, 5, 1));
        Arrays.fill(record.min(), from, from + missing, Double.NaN);

        assertThat(new FrostFit(record, true, Turn.SPRING).counted()).isEqualTo(counted);
    }

    @Test
    void daysMissingBeforeTheFrostDoNotMatter() {
        StationRecord record = frosts(5, 5, 5);
        int from = record.dayOf(LocalDate.of(FIRST + 1, 1, 1));
        Arrays.fill(record.min(), from, from + 60, Double.NaN);

        assertThat(new FrostFit(record, true, Turn.SPRING).counted()).isEqualTo(3);
    }

    @Test
    void inTheSouthSpringIsHalfAYearOn() {
        InventedStation station = new InventedStation(1991, 2000, 3);
        station.swing = -station.swing;
        StationRecord record = Stations.of(station);
        int month = new FrostFit(record, false, Turn.SPRING).date().usual().getMonthValue();

        assertThat(month).isBetween(9, 11);
    }

    /**
     * Distribution-free: of n years in order the next one falls below the (n + 1)p-th with a chance of p, whatever their
     * distribution. Over 1,000 draws of 25 skewed years and a next one, within four standard errors (binomial).
     */
    @Test
    void theNextYearFallsBelowTheEarlyDateInOneOfTen() {
        SplittableRandom random = new SplittableRandom(12);
        int draws = 1000;
        int below = 0;
        for (int i = 0; i < draws; i++) {
            int[] days = new int[25];
            for (int year = 0; year < days.length; year++) {
                days[year] = skewed(random);
            }
            MonthDay early = spring(frosts(days)).early();
            below += MonthDay.from(LocalDate.of(FIRST, 4, 1).plusDays(skewed(random) - 1))
                            .isBefore(early)
                    ? 1
                    : 0;
        }

        // Dates are whole days, of which a hundredth of the years may share one.
        assertThat(below / (double) draws).isCloseTo(0.1, within(4 * Math.sqrt(0.09 / draws) + 0.01));
    }

    /** From April to mid-July, late dates the likelier. */
    private static int skewed(SplittableRandom random) {
        double u = random.nextDouble();
        return 111 - (int) (110 * u * u);
    }

    /**
     * The dates of Fort Collins 1900–1999 move by 12.7 days from 0 °C to 28 °F in spring (figures from the data set FCwx of
     * the package extRemes), 5.7 a degree. Here a course that falls by 0.2 °C a day, so by 5 days a degree, without noise.
     */
    @Test
    void daysPerDegreeAreTheSlopeOfTheDates() {
        StationRecord record = frosts(1, 1, 1, 1);
        for (int day = 0; day < record.days(); day++) {
            int ofYear = record.dateOf(day).getDayOfYear();
            record.min()[day] = 20 - 0.2 * Math.abs(ofYear - 200);
        }

        assertThat(new FrostFit(record, true, Turn.SPRING).daysPerDegree()).isCloseTo(5.0, within(0.05));
        assertThat(new FrostFit(record, true, Turn.AUTUMN).daysPerDegree()).isCloseTo(5.0, within(0.05));
    }

    @Test
    void whereItNeverGetsColderThanAFrostNoSlopeIsTold() {
        assertThat(new FrostFit(frosts(3, 4, 5, 6), true, Turn.AUTUMN).daysPerDegree())
                .isNull();
    }
}
