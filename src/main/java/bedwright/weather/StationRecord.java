package bedwright.weather;

import java.time.LocalDate;
import java.util.Arrays;

/**
 * What a weather station measured, a value a day without a break from the first day to the last; NaN where it has none.
 *
 * <p>The arrays are shared, not copied: they are not to be written to.
 *
 * @param station how the file calls the station; empty where it does not
 * @param first the day of the first values
 * @param min lowest temperature of each day, °C
 * @param max highest temperature of each day, °C
 * @param wind speed of the wind of each day, m/s, in the sense of {@code kind}
 * @param from side from which it blew, degrees clockwise from north
 * @param kind what the wind's speed is
 * @param flagged values that the file marks as doubtful, and that were dropped
 */
public record StationRecord(
        String station,
        LocalDate first,
        double[] min,
        double[] max,
        double[] wind,
        double[] from,
        Wind kind,
        int flagged) {

    /** What a record says of the wind. */
    public enum Wind {
        /** Nothing. */
        NONE,
        /** The mean speed of the day. */
        MEAN,
        /** The strongest gust of the day. */
        GUST
    }

    public StationRecord {
        if (min.length == 0 || max.length != min.length || wind.length != min.length || from.length != min.length) {
            throw new IllegalArgumentException("A record has a value of each kind for each of its days, not "
                    + min.length + " minima, " + max.length + " maxima, " + wind.length + " winds and " + from.length
                    + " directions");
        }
    }

    /** Number of days from the first to the last, those without values among them. */
    public int days() {
        return min.length;
    }

    /** The date of a day, counted from 0. */
    public LocalDate dateOf(int day) {
        return first.plusDays(day);
    }

    /** The last day. */
    public LocalDate last() {
        return dateOf(days() - 1);
    }

    /** The day of a date, counted from the first; below 0 or from {@link #days()} on where the date lies outside. */
    public int dayOf(LocalDate date) {
        return Math.toIntExact(date.toEpochDay() - first.toEpochDay());
    }

    /** Whether the record goes so far and has both temperatures of a day. */
    public boolean hasTemperatures(int day) {
        return day >= 0 && day < days() && !Double.isNaN(min[day]) && !Double.isNaN(max[day]);
    }

    /** Mean of a day's lowest and highest temperature, °C; NaN if it lacks one. */
    public double mean(int day) {
        return (min[day] + max[day]) / 2;
    }

    /** Number of days with both temperatures. */
    public int daysWithTemperatures() {
        int count = 0;
        for (int day = 0; day < days(); day++) {
            count += hasTemperatures(day) ? 1 : 0;
        }
        return count;
    }

    /** Number of days with a speed of the wind. */
    public int daysWithWind() {
        return (int) Arrays.stream(wind).filter(speed -> !Double.isNaN(speed)).count();
    }

    /**
     * The part of the record that lies in some calendar years.
     *
     * @throws IllegalArgumentException if it has no day in them
     */
    public StationRecord years(int fromYear, int toYear) {
        int begin = Math.max(0, dayOf(LocalDate.of(fromYear, 1, 1)));
        int end = Math.min(days(), dayOf(LocalDate.of(toYear, 12, 31)) + 1);
        if (begin >= end) {
            throw new IllegalArgumentException("The record runs from " + first + " to " + last() + " and has no day of "
                    + fromYear + " to " + toYear);
        }
        return new StationRecord(
                station,
                dateOf(begin),
                Arrays.copyOfRange(min, begin, end),
                Arrays.copyOfRange(max, begin, end),
                Arrays.copyOfRange(wind, begin, end),
                Arrays.copyOfRange(from, begin, end),
                kind,
                flagged);
    }
}
