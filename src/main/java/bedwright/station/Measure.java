package bedwright.station;

import bedwright.climate.DegreeDays;
import bedwright.season.Crop;
import bedwright.season.Unit;
import bedwright.station.FrostSeasons.Turn;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Something that is foretold of a growing year: a day, counted from the year's first, or a sum of degree-days.
 *
 * @param name in a grower's words
 * @param isDay whether it is a day
 * @param turn the frost that it is, or null for what follows from temperatures
 * @param sown day on which its clock starts, counted from the year's first
 * @param mark degree-days at which its day comes, or infinite for a sum
 */
record Measure(String name, boolean isDay, @Nullable Turn turn, int sown, double mark) {
    /** First ray flowers of field sunflowers, base 44 °F, published for Manitoba (°C·d). */
    static final double FIRST_FLOWER = 883;

    static final double BASE = 6.7;
    /** Half a year: what is summed up to 1 July, or 1 January in the south. */
    static final int HALF = 181;

    static final Measure LAST_FROST = new Measure("last frost of spring", true, Turn.SPRING, 0, 0);

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    /** What is judged in years that begin on a day of the calendar. */
    static List<Measure> all(LocalDate begins, int usualLastFrost, Unit temperature) {
        List<Measure> all = new ArrayList<>();
        all.add(LAST_FROST);
        all.add(new Measure("first frost of autumn", true, Turn.AUTUMN, 0, 0));
        all.add(new Measure(
                "degree-days over " + said(temperature) + " by " + DAY.format(begins.plusDays(HALF)),
                false,
                null,
                0,
                Double.POSITIVE_INFINITY));
        for (int weeks : new int[] {2, 6, 10}) {
            int sown = usualLastFrost + 7 * weeks;
            all.add(new Measure(
                    "first cut of sunflower sown " + DAY.format(MonthDay.from(begins.plusDays(sown))),
                    true,
                    null,
                    sown,
                    FIRST_FLOWER));
        }
        return all;
    }

    private static String said(Unit temperature) {
        String base = temperature.isPlain() ? String.valueOf(BASE) : String.valueOf(Math.round(temperature.of(BASE)));
        return base + " " + temperature.symbol();
    }

    /** A day's minimum and maximum. */
    interface Temperatures {
        double min(int day);

        double max(int day);
    }

    /**
     * What follows from temperatures: the day that a clock reaches the mark, or the sum of half a year. NaN where a
     * temperature is lacking or the mark is not reached in a year.
     */
    double of(Temperatures temperatures) {
        double clock = 0;
        int last = Double.isInfinite(mark) ? HALF : 364;
        for (int day = sown; day < last; day++) {
            double min = temperatures.min(day);
            double max = temperatures.max(day);
            if (Double.isNaN(min) || Double.isNaN(max)) {
                return Double.NaN;
            }
            clock += DegreeDays.of(Crop.Convention.CLAMPED, min, Math.max(min, max), BASE, null);
            if (clock >= mark) {
                return day;
            }
        }
        return Double.isInfinite(mark) ? clock : Double.NaN;
    }
}
