package bedwright.station;

import bedwright.climate.MonthlyNormals;
import bedwright.season.Site;
import bedwright.station.FrostSeasons.Turn;
import bedwright.weather.StationRecord;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.TDistribution;
import org.jspecify.annotations.Nullable;

/**
 * Frost dates of a record: three quantiles of the last of spring and the first of autumn, and how they move with the
 * temperature.
 *
 * <p>With 20 seasons or more the quantile of p is the (n + 1)p-th of the dates in order (between two of them on a straight
 * line): just so often, whatever their distribution, the next year's falls before it. With fewer it is that of the next
 * date of normal ones, mean ± t × SD × √(1 + 1/n) with Student's t of n − 1 degrees of freedom: freeze dates are near
 * normal (Thom and Shaw, 1958, from memory), and few years tell little.
 */
final class FrostFit {
    private static final int ENOUGH = 20;
    private static final double TENTH = 0.1;
    /** Temperatures over which the line through the date at 0 °C is laid, °C. */
    private static final double[] THRESHOLDS = {2, 1, -1, -2, -3, -4};
    /** Share of the seasons that must reach a temperature for it to count. */
    private static final double SHARE = 0.9;

    private static final double MOST_DAYS = 30;
    private static final int LEAP_OR_NOT = 2023;

    private final FrostSeasons seasons;
    private final List<Integer> years = new ArrayList<>();
    private final List<Double> dates = new ArrayList<>();
    private final Turn turn;
    private int counted;

    FrostFit(StationRecord record, boolean isNorthern, Turn turn) {
        this.turn = turn;
        seasons = new FrostSeasons(record, isNorthern);
        for (int year = record.first().getYear() - 1; year <= record.last().getYear(); year++) {
            FrostSeasons.Found found = seasons.find(turn, year, 0);
            if (found.counts()) {
                counted++;
                if (found.date().isPresent()) {
                    years.add(year);
                    dates.add(offset(year, found.date().get()));
                }
            }
        }
    }

    /** Seasons with enough days. */
    int counted() {
        return counted;
    }

    /** Seasons with a frost. */
    int withFrost() {
        return dates.size();
    }

    /** Days from the season's first to a date, in a year of 365 days. */
    private double offset(int year, LocalDate date) {
        return Math.floorMod(dayOfYear(date) - dayOfYear(seasons.begins(turn, year)), MonthlyNormals.YEAR);
    }

    private static int dayOfYear(LocalDate date) {
        return MonthlyNormals.dayOfYear(date.getMonthValue() - 1, date.getDayOfMonth());
    }

    /**
     * The three dates. A season without frost counts as one whose frost falls before (spring) or after (autumn) all
     * others; where the date on that side can't be told it lies as far out as the one on the other side.
     */
    Site.FrostDate date() {
        double[] sorted =
                dates.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        double early;
        double usual;
        double late;
        if (sorted.length < ENOUGH) {
            double mean = mean(sorted);
            double reach = reach(sorted, mean);
            early = mean - reach;
            usual = mean;
            late = mean + reach;
        } else {
            int before = turn == Turn.SPRING ? counted - sorted.length : 0;
            usual = quantile(sorted, before, 0.5);
            early = quantile(sorted, before, TENTH);
            late = quantile(sorted, before, 1 - TENTH);
            early = Double.isNaN(early) ? 2 * usual - late : early;
            late = Double.isNaN(late) ? 2 * usual - early : late;
        }
        return new Site.FrostDate(monthDay(early), monthDay(usual), monthDay(late));
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /** Days from the mean to the date that the next year passes in one of ten. */
    private static double reach(double[] values, double mean) {
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        int n = values.length;
        double t = TDistribution.of(n - 1).inverseSurvivalProbability(TENTH);
        return t * Math.sqrt(squares / (n - 1) * (1 + 1.0 / n));
    }

    /** The (n + 1)p-th of all seasons' dates, of which some without frost come before or after; NaN among those. */
    private double quantile(double[] sorted, int before, double p) {
        double at = (counted + 1) * p - 1 - before;
        int left = (int) Math.floor(at);
        if (left < 0 || left + 1 >= sorted.length) {
            boolean isLast = left + 1 == sorted.length && at == left;
            return isLast ? sorted[left] : Double.NaN;
        }
        return sorted[left] + (at - left) * (sorted[left + 1] - sorted[left]);
    }

    private MonthDay monthDay(double offset) {
        LocalDate begins = seasons.begins(turn, LEAP_OR_NOT);
        return MonthDay.from(begins.withYear(LEAP_OR_NOT).plusDays(Math.round(offset)));
    }

    /**
     * Days that the date comes earlier (spring) or later (autumn) for each °C colder: the straight line through the date
     * at 0 °C that leaves the least squares over the mean dates at other temperatures; null if too few seasons are cold
     * enough to tell.
     */
    @Nullable
    Double daysPerDegree() {
        double products = 0;
        double squares = 0;
        int used = 0;
        for (double threshold : THRESHOLDS) {
            double sum = 0;
            int both = 0;
            for (int i = 0; i < years.size(); i++) {
                FrostSeasons.Found found = seasons.find(turn, years.get(i), threshold);
                if (found.counts() && found.date().isPresent()) {
                    sum += offset(years.get(i), found.date().get()) - dates.get(i);
                    both++;
                }
            }
            if (both >= SHARE * years.size() && both > 0) {
                double later = sum / both;
                products += threshold * later;
                squares += threshold * threshold;
                used++;
            }
        }
        if (used < 3) {
            return null;
        }
        double slope = products / squares;
        return Math.clamp(Math.round((turn == Turn.SPRING ? slope : -slope) * 10) / 10.0, 0, MOST_DAYS);
    }
}
