package bedwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DayLengthTest {
    private static final double MINUTE = 1 / 60.0;

    /**
     * Hours from sunrise to sunset on 21 June 2019 by latitude, in whole minutes, as printed in Wolfram Community, thread
     * 1706977. Forsythe and others 1995 give their model's error against the Astronomical Almanac as about a minute up to
     * 40° and at most seven at 60° (from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "0, 12.1167, 1",
        "10, 12.7167, 1",
        "20, 13.35, 1",
        "30, 14.0833, 1",
        "35, 14.5167, 1",
        "40, 15.0167, 1.5",
        "45, 15.6167, 2",
        "50, 16.3667, 3",
        "55, 17.3833, 5",
        "60, 18.8667, 7"
    })
    void theLongestDayIsAsPublished(double latitude, double published, double minutes) {
        // The published times are whole minutes, so that a length can be a minute off.
        assertThat(DayLength.hours(latitude, LocalDate.of(2019, 6, 21).getDayOfYear()))
                .isCloseTo(published, within((minutes + 1) * MINUTE));
    }

    /**
     * U.S. Naval Observatory, Duration of Daylight; from memory. At the equinox a day makes three minutes, and the model,
     * which knows no leap years, can be more than a day late.
     */
    @ParameterizedTest
    @CsvSource({"40, 3, 20, 12, 8, 4", "40, 12, 21, 9, 20, 2", "50, 12, 21, 8, 4, 3", "60, 12, 21, 5, 52, 7"})
    void equinoxAndShortestDayAreAsInTheAlmanac(
            double latitude, int month, int day, int hours, int minutes, double tolerance) {
        assertThat(DayLength.hours(latitude, LocalDate.of(2019, month, day).getDayOfYear()))
                .isCloseTo(hours + minutes * MINUTE, within(tolerance * MINUTE));
    }

    /**
     * The sun's place by the low-precision formulas of the Astronomical Almanac (page C24 of 1996, good to 0.01°; printed
     * at stargazing.net/kepler/sun.html), on every day of four years. The model runs up to a day and a third behind the
     * sky, so it may be a day and a half off, and a minute.
     */
    @ParameterizedTest
    @ValueSource(doubles = {-60, -42, -20, 0, 30, 40, 50, 60})
    void everyDayIsWithinADayAndAHalfOfTheAlmanac(double latitude) {
        for (int d = 0; d < 4 * 365 + 1; d++) {
            LocalDate date = LocalDate.of(2025, 1, 1).plusDays(d);
            double days = date.toEpochDay() - LocalDate.of(2000, 1, 1).toEpochDay();
            double early = almanac(latitude, days - 1.5);
            double sameDay = almanac(latitude, days);
            double late = almanac(latitude, days + 1.5);
            assertThat(DayLength.hours(latitude, date.getDayOfYear()))
                    .as("%s", date)
                    .isBetween(
                            Math.min(sameDay, Math.min(early, late)) - MINUTE,
                            Math.max(sameDay, Math.max(early, late)) + MINUTE);
        }
    }

    /** Hours from sunrise to sunset, so many days after noon of 1 January 2000. */
    private static double almanac(double latitude, double days) {
        double meanLongitude = 280.461 + 0.9856474 * days;
        double anomaly = Math.toRadians(357.528 + 0.9856003 * days);
        double longitude = Math.toRadians(meanLongitude + 1.915 * Math.sin(anomaly) + 0.020 * Math.sin(2 * anomaly));
        double obliquity = Math.toRadians(23.439 - 0.0000004 * days);
        double declination = Math.asin(Math.sin(obliquity) * Math.sin(longitude));
        double phi = Math.toRadians(latitude);
        double hourAngle = Math.acos((Math.sin(Math.toRadians(-0.8333)) - Math.sin(phi) * Math.sin(declination))
                / (Math.cos(phi) * Math.cos(declination)));
        return 24 / Math.PI * hourAngle;
    }

    /**
     * Equations 1 to 3 of Forsythe and others 1995 worked out with a desk calculator. On day 186 the inner tangent is 0, so
     * that the sun's place is 0.2163108 and its declination asin(0.39795 × cos 0.2163108) = 22.87°.
     */
    @ParameterizedTest
    @CsvSource({"45, 186, 15.5160", "-30, 186, 10.2637", "52, 80, 12.1664"})
    void hoursAreAsTheEquationsGiveThem(double latitude, int day, double worked) {
        assertThat(DayLength.hours(latitude, day)).isCloseTo(worked, within(0.0001));
    }

    /** The sun's path in the south mirrors that in the north; both gain the same by its edge and by refraction. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 12.5, 30, 42, 51.5, 60})
    void oneHemispheresDayIsTheOthersNight(double latitude) {
        for (int day = 1; day <= 366; day++) {
            double both = DayLength.hours(latitude, day) + DayLength.hours(-latitude, day);
            // At most 4 × 0.8333°/15° an hour, stretched by the slant of the sun's path.
            double slant = Math.cos(Math.toRadians(latitude + 23.46));
            assertThat(both).as("day %s", day).isBetween(24 + 4 * 0.8333 / 15 * 0.99, 24 + 4 * 0.8333 / 15 / slant);
        }
    }

    @Test
    void theSunNeverSetsInAPolarSummer() {
        assertThat(DayLength.hours(80, 172)).isEqualTo(24);
    }

    @Test
    void theSunNeverRisesInAPolarWinter() {
        assertThat(DayLength.hours(80, 355)).isEqualTo(0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-90.5, 90.5, Double.NaN})
    void noSuchLatitudeIsRefusedWithItsValue(double latitude) {
        assertThatThrownBy(() -> DayLength.hours(latitude, 100))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.valueOf(latitude));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 367})
    void noSuchDayOfTheYearIsRefusedWithItsValue(int day) {
        assertThatThrownBy(() -> DayLength.hours(40, day))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.valueOf(day));
    }
}
