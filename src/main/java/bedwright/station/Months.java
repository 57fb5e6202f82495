package bedwright.station;

import bedwright.weather.StationRecord;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The months of a record. One with more than ten days missing does not count (the usual rule of weather services, from
 * memory).
 */
final class Months {
    private static final int MISSING = 10;

    private final List<Double> meanMin = new ArrayList<>();
    private final List<Double> meanMax = new ArrayList<>();
    private final int firstYear;
    private int counting = Integer.MAX_VALUE;
    private final double[][] min;
    private final double[][] max;

    /**
     * @throws TooLittleWeather if there are fewer than {@link StationClimate#LEAST_YEARS} of a month
     */
    Months(StationRecord record) {
        firstYear = record.first().getYear();
        int years = record.last().getYear() - firstYear + 1;
        min = new double[12][years];
        max = new double[12][years];
        int[][] days = new int[12][years];
        for (int day = 0; day < record.days(); day++) {
            if (record.hasTemperatures(day)) {
                LocalDate date = record.dateOf(day);
                int month = date.getMonthValue() - 1;
                int year = date.getYear() - firstYear;
                min[month][year] += record.min()[day];
                max[month][year] += record.max()[day];
                days[month][year]++;
            }
        }
        for (int month = 0; month < 12; month++) {
            int counted = 0;
            double minima = 0;
            double maxima = 0;
            for (int year = 0; year < years; year++) {
                int length = LocalDate.of(firstYear + year, month + 1, 1).lengthOfMonth();
                boolean counts = days[month][year] >= length - MISSING;
                min[month][year] = counts ? min[month][year] / days[month][year] : Double.NaN;
                max[month][year] = counts ? max[month][year] / days[month][year] : Double.NaN;
                if (counts) {
                    counted++;
                    minima += min[month][year];
                    maxima += max[month][year];
                }
            }
            if (counted < StationClimate.LEAST_YEARS) {
                throw new TooLittleWeather(
                        "The record has " + counted + " whole month" + (counted == 1 ? "" : "s") + " of "
                                + Month.of(month + 1).getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " (no more than "
                                + MISSING
                                + " days missing); a climate takes at least " + StationClimate.LEAST_YEARS
                                + " of each month, and 30 are usual. Take a station with a longer record"
                                + (years > counted ? ", or fill its gaps." : "."));
            }
            counting = Math.min(counting, counted);
            meanMin.add(minima / counted);
            meanMax.add(maxima / counted);
        }
    }

    List<Double> meanMin() {
        return meanMin;
    }

    List<Double> meanMax() {
        return meanMax;
    }

    /** Mean temperature of a calendar month, °C. */
    double mean(int month) {
        return (meanMin.get(month) + meanMax.get(month)) / 2;
    }

    /** Whether the warmest month lies in the northern summer half-year. */
    boolean isNorthern() {
        int warmest = 0;
        for (int month = 1; month < 12; month++) {
            if (mean(month) > mean(warmest)) {
                warmest = month;
            }
        }
        return warmest >= 3 && warmest <= 8;
    }

    /** Calendar years that the record touches. */
    int years() {
        return min[0].length;
    }

    /** Years of which the month that has the fewest counts. */
    int counting() {
        return counting;
    }

    int firstYear() {
        return firstYear;
    }

    /** Mean temperature of one month of one year, °C; NaN if it does not count. */
    double mean(int month, int year) {
        return (min[month][year] + max[month][year]) / 2;
    }
}
