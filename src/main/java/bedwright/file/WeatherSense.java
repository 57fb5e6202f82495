package bedwright.file;

import java.time.LocalDate;
import java.util.Arrays;

/** What does not hold together in a weather file although each of its lines can be read. */
final class WeatherSense {
    /** No warmest month has mean maxima beyond these, °C: the hottest places reach about 47, and at 6 nothing flowers. */
    private static final double HOTTEST_MONTH = 50;

    private static final double COLDEST_SUMMER = 6;
    /** No place has mean daily winds or gusts over these, m/s. */
    private static final double MEAN_WIND = 14;

    private static final double MEAN_GUST = 25;
    private static final int LEAST_DAYS = 20;
    private static final int LEAST_WINDS = 60;

    private final WeatherTable table;
    private final Measured measured;
    private final boolean isPlain;

    WeatherSense(WeatherTable table, boolean isPlain) {
        this.table = table;
        this.measured = table.measured();
        this.isPlain = isPlain;
    }

    void check() {
        double[] min = measured.byDay(Measured.Kind.MIN);
        double[] max = measured.byDay(Measured.Kind.MAX);
        // Each value in another unit would be a fault of its own: one is told.
        if (looksLikeAnotherUnit(max)) {
            return;
        }
        table.tellImpossible();
        minimaOverMaxima(min, max);
        missingYears(min, max);
    }

    private boolean looksLikeAnotherUnit(double[] max) {
        double warmest = warmestMonth(max);
        String named = isPlain ? "the heading's unit" : "tenths of a degree Celsius";
        if (warmest > HOTTEST_MONTH || warmest < COLDEST_SUMMER) {
            String look = warmest > 100
                    ? "in tenths of a degree"
                    : warmest > HOTTEST_MONTH ? "in °F" : isPlain ? "in °C" : "in whole degrees";
            table.fault(
                    1,
                    1,
                    "Read in " + named + ", the maxima of the warmest month would be "
                            + WeatherTable.rounded(warmest) + " °C in the mean, which can't be where flowers grow."
                            + " By the look of them the temperatures are " + look + ": "
                            + (isPlain ? "name that unit in the first line." : "turn them into tenths."));
            return true;
        }
        return looksTooWindy(Measured.Kind.PEAK, MEAN_GUST) || looksTooWindy(Measured.Kind.WIND, MEAN_WIND);
    }

    private boolean looksTooWindy(Measured.Kind kind, double most) {
        double[] known = Arrays.stream(measured.byDay(kind))
                .filter(value -> !Double.isNaN(value))
                .toArray();
        double mean = Arrays.stream(known).average().orElse(0);
        if (known.length < LEAST_WINDS || mean <= most) {
            return false;
        }
        table.fault(
                1,
                1,
                kind.words() + " would be " + WeatherTable.rounded(mean) + " m/s in the mean of all days; no more than "
                        + WeatherTable.rounded(most) + " can be. By the look of it the unit is another, such as km/h: "
                        + (isPlain ? "name it in the first line." : "turn it into tenths of m/s."));
        return true;
    }

    /** Mean maximum of the calendar month that has the highest; NaN if a month has too few days. */
    private double warmestMonth(double[] max) {
        double[] sum = new double[12];
        int[] days = new int[12];
        for (int day = 0; day < max.length; day++) {
            if (!Double.isNaN(max[day])) {
                int month = LocalDate.ofEpochDay(measured.first() + (long) day).getMonthValue() - 1;
                sum[month] += max[day];
                days[month]++;
            }
        }
        double warmest = Double.NEGATIVE_INFINITY;
        for (int month = 0; month < sum.length; month++) {
            // Of a few months nobody knows whether the warmest is among them.
            if (days[month] < LEAST_DAYS) {
                return Double.NaN;
            }
            warmest = Math.max(warmest, sum[month] / days[month]);
        }
        return warmest;
    }

    private void minimaOverMaxima(double[] min, double[] max) {
        int[] lines = measured.linesByDay(Measured.Kind.MAX);
        for (int day = 0; day < min.length; day++) {
            if (min[day] > max[day] && WeatherTable.isPossible(min[day]) && WeatherTable.isPossible(max[day])) {
                table.fault(
                        lines[day],
                        1,
                        "The minimum of " + date(day) + ", " + WeatherTable.rounded(min[day])
                                + " °C, is over its maximum, " + WeatherTable.rounded(max[day])
                                + " °C. Mend one of them, or leave both out.");
            }
        }
    }

    private void missingYears(double[] min, double[] max) {
        int last = -1;
        int[] lines = measured.linesByDay(Measured.Kind.MAX);
        for (int day = 0; day < min.length; day++) {
            if (Double.isNaN(min[day]) || Double.isNaN(max[day])) {
                continue;
            }
            int from = last < 0 ? 0 : date(last).getYear() + 1;
            int to = date(day).getYear() - 1;
            if (last >= 0 && from <= to) {
                table.fault(
                        lines[day],
                        1,
                        "Between " + date(last) + " and " + date(day) + " no day has both temperatures: "
                                + (from == to
                                        ? "the year " + from + " is missing"
                                        : from + " to " + to + " are missing")
                                + ". Add the days, or take only the years on one side: --from " + (to + 1)
                                + " or --to " + (from - 1) + ".");
            }
            last = day;
        }
        if (last < 0 && table.faults().count() == 0) {
            table.fault(
                    1,
                    1,
                    "No day has both a minimum and a maximum. Expected are TMIN and TMAX of GHCN-Daily, or columns min and"
                            + " max.");
        }
    }

    private LocalDate date(int day) {
        return LocalDate.ofEpochDay(measured.first() + (long) day);
    }
}
