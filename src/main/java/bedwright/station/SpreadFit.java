package bedwright.station;

import bedwright.climate.MonthlyNormals;
import bedwright.season.Site;
import bedwright.weather.StationRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * How far temperatures stray from the normal: a year's shift and an autoregressive deviation of the day, such as sampled
 * seasons have (season model, section 6), with the same moments as the record's.
 *
 * <p>Only the months in which things grow count (mean at or over 5 °C; if these are fewer than three, all), since winters
 * stray more than summers. With Y the SD of the shift, D that of the day and m its memory, three moments are met: the
 * variance of a day, Y² + D²; the covariance of a day and the next, Y² + D²m; and the variance of the mean of three
 * months, Y² + D²h, h being the mean over 91 days of such a deviation: h = (1 + 2 Σ (1 − k/91) mᵏ)/91 (variance of the
 * mean of an autoregressive series, any textbook of time series). That the normals come from n years alone makes the
 * next year stray from them by 1/n of the variance of the three months more, which is added to the shift's.
 */
final class SpreadFit {
    private static final double GROWING = 5;
    private static final int SPAN = 91;
    private static final double MOST_MEMORY = 0.95;
    private static final int ROUNDS = 200;

    private final Months months;
    private final List<Integer> growing;
    private final double[] normal;
    private final StationRecord record;

    SpreadFit(StationRecord record, Months months) {
        this.record = record;
        this.months = months;
        this.growing = growing(months);
        double[] min = MonthlyNormals.byDay(months.meanMin());
        double[] max = MonthlyNormals.byDay(months.meanMax());
        normal = new double[min.length];
        for (int day = 0; day < normal.length; day++) {
            normal[day] = (min[day] + max[day]) / 2;
        }
    }

    /** The months that count, in their order through the warm part of the year. */
    private static List<Integer> growing(Months months) {
        int first = 0;
        for (int month = 0; month < 12; month++) {
            if (months.mean(month) >= GROWING && months.mean((month + 11) % 12) < GROWING) {
                first = month;
            }
        }
        List<Integer> growing = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            int month = (first + i) % 12;
            if (months.mean(month) >= GROWING) {
                growing.add(month);
            }
        }
        if (growing.size() < 3) {
            return List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11);
        }
        return growing;
    }

    Site.TemperatureSpread fit() {
        double ofMonth = varianceOfMeans(1);
        double ofSpan = varianceOfMeans(3);
        // The normals are means of the same years, so deviations from them are too small by a share of the months'.
        double[] moments = ofDays();
        double lost = ofMonth / months.counting();
        double variance = moments[0] + lost;
        double next = moments[1] + lost;
        double shift = 0;
        double memory = 0;
        for (int round = 0; round < ROUNDS; round++) {
            memory = Math.clamp((next - shift) / (variance - shift), 0, MOST_MEMORY);
            double h = ofMean(memory);
            shift = Math.clamp((ofSpan - variance * h) / (1 - h), 0, 0.9 * variance);
        }
        double day = Math.sqrt(variance - shift);
        double year = Math.sqrt(shift + ofSpan / months.counting());
        return new Site.TemperatureSpread(round(year), round(day), round(memory));
    }

    private static double round(double value) {
        return Math.round(value * 100) / 100.0;
    }

    /** Variance of the mean over three months of an autoregressive deviation of variance 1. */
    static double ofMean(double memory) {
        double sum = 1;
        double power = 1;
        for (int k = 1; k < SPAN; k++) {
            power *= memory;
            sum += 2 * (1 - (double) k / SPAN) * power;
        }
        return sum / SPAN;
    }

    /** Mean square of a day's deviation from the normal, and mean product of a day's and the next one's. */
    private double[] ofDays() {
        double squares = 0;
        double products = 0;
        int days = 0;
        int pairs = 0;
        double before = Double.NaN;
        for (int day = 0; day < record.days(); day++) {
            LocalDate date = record.dateOf(day);
            double deviation = Double.NaN;
            if (record.hasTemperatures(day) && growing.contains(date.getMonthValue() - 1)) {
                deviation = record.mean(day)
                        - normal[MonthlyNormals.dayOfYear(date.getMonthValue() - 1, date.getDayOfMonth())];
                squares += deviation * deviation;
                days++;
            }
            if (!Double.isNaN(deviation) && !Double.isNaN(before)) {
                products += deviation * before;
                pairs++;
            }
            before = deviation;
        }
        return new double[] {squares / days, products / pairs};
    }

    /** Variance from year to year of the mean of so many growing months on end, mean over the year. */
    private double varianceOfMeans(int together) {
        double sum = 0;
        int spans = 0;
        for (int first = 0; first + together <= growing.size(); first += together) {
            double variance = varianceOfMean(growing.subList(first, first + together));
            if (!Double.isNaN(variance)) {
                sum += variance;
                spans++;
            }
        }
        return spans == 0 ? 0 : sum / spans;
    }

    private double varianceOfMean(List<Integer> together) {
        double sum = 0;
        double squares = 0;
        int years = 0;
        for (int year = 0; year < months.years(); year++) {
            double mean = 0;
            for (int month : together) {
                boolean isNextYear = month < together.getFirst();
                int of = isNextYear ? year + 1 : year;
                mean += of < months.years()
                        ? (months.mean(month, of) - months.mean(month)) / together.size()
                        : Double.NaN;
            }
            if (!Double.isNaN(mean)) {
                sum += mean;
                squares += mean * mean;
                years++;
            }
        }
        return years < 2 ? Double.NaN : (squares - sum * sum / years) / (years - 1);
    }
}
