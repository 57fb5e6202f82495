package bedwright.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * An invented station whose weather comes from a generator that shares nothing with the product's: a cosine over the year,
 * a shift of each calendar year, a first-order autoregressive deviation of the day and a range that has its own noise;
 * gusts from a Gumbel distribution each day, from two sides. Values are rounded to tenths, as stations write them.
 */
public final class InventedStation {
    public static final String NAME = "XX000000001";

    /** One day: tenths of °C and of m/s, and degrees. */
    public record Day(LocalDate date, int min, int max, int gust, int from) {}

    /** Mean of the year, °C. */
    public double mean = 10;
    /** Half of the difference between the warmest and the coldest day, °C. */
    public double swing = 12;
    /** SD of a year's shift, °C. */
    public double year = 0.9;
    /** SD of a day's deviation, °C. */
    public double day = 3;

    public double memory = 0.7;
    /** Share by which midwinter's days stray more, and midsummer's less, than that: real climates have a third or so. */
    public double winter;
    /** Most frequent strongest gust of a day, m/s. */
    public double mode = 8;

    public double scale = 2.5;
    private final int from;
    private final int to;
    private final long seed;

    public InventedStation(int from, int to, long seed) {
        this.from = from;
        this.to = to;
        this.seed = seed;
    }

    public List<Day> days() {
        SplittableRandom random = new SplittableRandom(seed);
        List<Day> days = new ArrayList<>();
        double deviation = day * random.nextGaussian();
        double shift = 0;
        for (LocalDate date = LocalDate.of(from, 1, 1); date.getYear() <= to; date = date.plusDays(1)) {
            if (date.getDayOfYear() == 1) {
                shift = year * random.nextGaussian();
            }
            deviation = memory * deviation + day * Math.sqrt(1 - memory * memory) * random.nextGaussian();
            double season = Math.cos(2 * Math.PI * (date.getDayOfYear() - 20) / 365.25);
            double middle = mean - swing * season + shift + deviation * (1 + winter * season);
            double half = Math.max(0.5, 5 + random.nextGaussian());
            double gust = Math.max(0, mode - scale * Math.log(-Math.log(random.nextDouble(1e-12, 1))));
            int side = random.nextDouble() < 0.7 ? 270 : 180;
            days.add(new Day(
                    date,
                    (int) Math.round(10 * (middle - half)),
                    (int) Math.round(10 * (middle + half)),
                    (int) Math.round(10 * gust),
                    side));
        }
        return days;
    }

    /** As a table of one's own. */
    public static String table(List<Day> days) {
        StringBuilder out = new StringBuilder("date,min (°C),max (°C),gust (m/s),direction\n");
        for (Day day : days) {
            out.append(String.format(
                    Locale.ROOT,
                    "%s,%.1f,%.1f,%.1f,%d%n",
                    day.date(),
                    day.min() / 10.0,
                    day.max() / 10.0,
                    day.gust() / 10.0,
                    day.from()));
        }
        return out.toString();
    }

    /** As GHCN-Daily's file of a station, a line for a day and element. */
    public static String byStation(List<Day> days) {
        StringBuilder out = new StringBuilder();
        for (Day day : days) {
            String start = NAME + "," + day.date().toString().replace("-", "") + ",";
            out.append(start).append("TMAX,").append(day.max()).append(",,,X,0700\n");
            out.append(start).append("TMIN,").append(day.min()).append(",,,X,0700\n");
            out.append(start).append("PRCP,0,,,X,0700\n");
            out.append(start).append("WSFG,").append(day.gust()).append(",,,X,\n");
            out.append(start).append("WDFG,").append(day.from()).append(",,,X,\n");
        }
        return out.toString();
    }

    /** As GHCN-Daily's fixed columns, a line for a month and element; whole months only. */
    public static String dly(List<Day> days) {
        StringBuilder out = new StringBuilder();
        int first = 0;
        while (first < days.size()) {
            LocalDate date = days.get(first).date();
            List<Day> month = days.subList(first, first + date.lengthOfMonth());
            line(out, date, "TMAX", month.stream().map(Day::max).toList());
            line(out, date, "TMIN", month.stream().map(Day::min).toList());
            line(out, date, "PRCP", month.stream().map(day -> 0).toList());
            line(out, date, "WSFG", month.stream().map(Day::gust).toList());
            line(out, date, "WDFG", month.stream().map(Day::from).toList());
            first += month.size();
        }
        return out.toString();
    }

    private static void line(StringBuilder out, LocalDate month, String element, List<Integer> values) {
        out.append(NAME)
                .append(String.format(Locale.ROOT, "%04d%02d", month.getYear(), month.getMonthValue()))
                .append(element);
        for (int day = 0; day < 31; day++) {
            out.append(String.format(Locale.ROOT, "%5d  X", day < values.size() ? values.get(day) : -9999));
        }
        out.append('\n');
    }
}
