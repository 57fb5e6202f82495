package bedwright.file;

import bedwright.weather.StationRecord;
import java.time.LocalDate;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** The values of a weather file as they are found, each with the line that it stands on. */
final class Measured {
    /** What is measured, in the order in which the winds are preferred. */
    enum Kind {
        MIN("the minimum"),
        MAX("the maximum"),
        PEAK("the gust"),
        PEAK_FROM("the gust's direction"),
        FASTEST("the 5-second gust"),
        FASTEST_FROM("the 5-second gust's direction"),
        INSTANT("the instantaneous gust"),
        INSTANT_FROM("the instantaneous gust's direction"),
        WIND("the mean wind"),
        WIND_FROM("the wind's direction");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }

        boolean isTemperature() {
            return this == MIN || this == MAX;
        }

        boolean isDirection() {
            return this == PEAK_FROM || this == FASTEST_FROM || this == INSTANT_FROM || this == WIND_FROM;
        }
    }

    private static final Kind[][] GUSTS = {
        {Kind.PEAK, Kind.PEAK_FROM}, {Kind.FASTEST, Kind.FASTEST_FROM}, {Kind.INSTANT, Kind.INSTANT_FROM}
    };

    /** Fewer days with gusts than this, and more with a mean wind: the mean wind is taken. */
    private static final int FEW_GUSTS = 365;

    private byte[] kinds = new byte[0];
    private int[] days = new int[0];
    private double[] values = new double[0];
    private int[] lines = new int[0];
    private int count;
    private int least = Integer.MAX_VALUE;
    private int most = Integer.MIN_VALUE;
    private String station = "";
    private int flagged;

    /**
     * @param day days since 1970
     */
    void add(Kind kind, int day, double value, int line) {
        if (count == days.length) {
            int length = Math.max(4096, 2 * count);
            kinds = Arrays.copyOf(kinds, length);
            days = Arrays.copyOf(days, length);
            values = Arrays.copyOf(values, length);
            lines = Arrays.copyOf(lines, length);
        }
        kinds[count] = (byte) kind.ordinal();
        days[count] = day;
        values[count] = value;
        lines[count++] = line;
        least = Math.min(least, day);
        most = Math.max(most, day);
    }

    void drop() {
        flagged++;
    }

    void name(String name) {
        station = name;
    }

    String station() {
        return station;
    }

    boolean isEmpty() {
        return count == 0;
    }

    /** First day of all, since 1970. */
    int first() {
        return least;
    }

    int length() {
        return most - least + 1;
    }

    /** Values of a kind by day from the first on, NaN where there is none. */
    double[] byDay(Kind kind) {
        double[] byDay = new double[length()];
        Arrays.fill(byDay, Double.NaN);
        for (int i = 0; i < count; i++) {
            if (kinds[i] == kind.ordinal()) {
                byDay[days[i] - least] = values[i];
            }
        }
        return byDay;
    }

    /** Line of a kind's value by day from the first on, 0 where there is none. */
    int[] linesByDay(Kind kind) {
        int[] byDay = new int[length()];
        for (int i = 0; i < count; i++) {
            if (kinds[i] == kind.ordinal()) {
                byDay[days[i] - least] = lines[i];
            }
        }
        return byDay;
    }

    StationRecord record() {
        double[] speed = new double[length()];
        double[] from = new double[length()];
        Arrays.fill(speed, Double.NaN);
        Arrays.fill(from, Double.NaN);
        for (Kind[] gust : GUSTS) {
            fill(speed, from, byDay(gust[0]), byDay(gust[1]));
        }
        double[] mean = byDay(Kind.WIND);
        StationRecord.Wind kind = StationRecord.Wind.GUST;
        long gusts = known(speed);
        long means = known(mean);
        if (gusts == 0 && means == 0) {
            kind = StationRecord.Wind.NONE;
        } else if (means > gusts && gusts < FEW_GUSTS) {
            kind = StationRecord.Wind.MEAN;
            speed = mean;
            from = byDay(Kind.WIND_FROM);
        }
        return new StationRecord(
                station, LocalDate.ofEpochDay(least), byDay(Kind.MIN), byDay(Kind.MAX), speed, from, kind, flagged);
    }

    private static void fill(double[] speed, double[] from, double[] found, double[] foundFrom) {
        for (int day = 0; day < speed.length; day++) {
            if (Double.isNaN(speed[day]) && !Double.isNaN(found[day])) {
                speed[day] = found[day];
                from[day] = foundFrom[day];
            }
        }
    }

    private static long known(double[] values) {
        return Arrays.stream(values).filter(value -> !Double.isNaN(value)).count();
    }

    /** The kind that an element of GHCN-Daily is, or null for one of no use here. */
    static @Nullable Kind ofElement(String element) {
        return switch (element) {
            case "TMIN" -> Kind.MIN;
            case "TMAX" -> Kind.MAX;
            case "WSFG" -> Kind.PEAK;
            case "WDFG" -> Kind.PEAK_FROM;
            case "WSF5" -> Kind.FASTEST;
            case "WDF5" -> Kind.FASTEST_FROM;
            case "WSFI" -> Kind.INSTANT;
            case "WDFI" -> Kind.INSTANT_FROM;
            case "AWND" -> Kind.WIND;
            default -> null;
        };
    }
}
