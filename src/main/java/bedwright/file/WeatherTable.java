package bedwright.file;

import java.time.LocalDate;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Takes the values of a weather file as they are read, and refuses those that can't be. */
final class WeatherTable {
    private static final int MISSING = -9999;
    /** Colder and hotter than was ever measured, °C (−89.2 and 56.7, from memory of the WMO's list of extremes). */
    private static final double COLDEST = -90;

    private static final double HOTTEST = 60;
    /** Stronger than any gust ever measured, m/s (113, likewise). */
    private static final double STRONGEST = 115;

    private static final int FIRST_YEAR = 1650;
    private static final int LAST_YEAR = 2200;

    private final WeatherFaults faults;
    private final WeatherFaults impossible;
    private final Measured measured = new Measured();
    private final int fromYear;
    private final int toYear;
    private final long[] lastDay = new long[Measured.Kind.values().length];
    private @Nullable String otherStation;
    private int lineOutOfOrder;
    private int lineOfOtherYear;

    WeatherTable(String file, int fromYear, int toYear) {
        this.faults = new WeatherFaults(file);
        this.impossible = new WeatherFaults(file);
        this.fromYear = fromYear;
        this.toYear = toYear;
        Arrays.fill(lastDay, Long.MIN_VALUE);
    }

    WeatherFaults faults() {
        return faults;
    }

    /** Tells of impossible values, once it is known that they don't only show that all is in another unit. */
    void tellImpossible() {
        faults.addAll(impossible);
    }

    /** Whether there can be such a temperature, °C. */
    static boolean isPossible(double temperature) {
        return temperature >= COLDEST && temperature <= HOTTEST;
    }

    Measured measured() {
        return measured;
    }

    void fault(int line, int column, String message) {
        faults.add(line, column, message);
    }

    /** Whether a line is of the first line's station; the first that is of another is a fault, further ones are not. */
    boolean isOfStation(String station, int line) {
        if (measured.station().isEmpty()) {
            measured.name(station);
        }
        if (measured.station().equals(station)) {
            return true;
        }
        if (otherStation == null) {
            otherStation = station;
            faults.add(
                    line,
                    1,
                    "The file has days of " + Words.quoted(measured.station()) + " and, from here on, of "
                            + Words.quoted(station) + ". A climate is that of one station: keep the lines of one.");
        }
        return false;
    }

    /** Whether a day lies in the years that are asked for. */
    boolean isAskedFor(LocalDate date) {
        return date.getYear() >= fromYear && date.getYear() <= toYear;
    }

    /** A value of GHCN-Daily: tenths of °C or of m/s, or degrees. */
    void ghcn(Measured.Kind kind, LocalDate date, int value, boolean isFlagged, int line, int column) {
        if (!isAskedFor(date) || !isInOrder(kind, date, line, column) || value == MISSING) {
            return;
        }
        if (isFlagged) {
            measured.drop();
            return;
        }
        add(kind, date, kind.isDirection() ? value : value / 10.0, line, column);
    }

    /** Whether a kind's day can be meant and comes after its last one. */
    boolean isInOrder(Measured.Kind kind, LocalDate date, int line, int column) {
        if (date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR) {
            if (lineOfOtherYear != line) {
                lineOfOtherYear = line;
                faults.add(
                        line,
                        column,
                        "The year " + date.getYear() + " can't be meant. Mend the date, or take it away.");
            }
            return false;
        }
        long day = date.toEpochDay();
        long last = lastDay[kind.ordinal()];
        if (day > last) {
            lastDay[kind.ordinal()] = day;
            return true;
        }
        if (lineOutOfOrder != line) {
            lineOutOfOrder = line;
            faults.add(
                    line,
                    column,
                    day == last
                            ? "The day " + date + " is here twice (" + kind.words() + "). Take one of the two away."
                            : "The day " + date + " comes after " + LocalDate.ofEpochDay(last) + " (" + kind.words()
                                    + "). Days must be in order, each once: sort the lines, and take away what is"
                                    + " double.");
        }
        return false;
    }

    /**
     * @param value °C, m/s or degrees
     */
    void add(Measured.Kind kind, LocalDate date, double value, int line, int column) {
        double least = kind.isTemperature() ? COLDEST : 0;
        double most = kind.isTemperature() ? HOTTEST : kind.isDirection() ? 360 : STRONGEST;
        if (!(value >= least && value <= most)) {
            String unit = kind.isTemperature() ? " °C" : kind.isDirection() ? " degrees" : " m/s";
            impossible.add(
                    line,
                    column,
                    kind.words() + " of " + date + " is " + rounded(value) + unit + "; nothing under " + rounded(least)
                            + " or over " + rounded(most) + unit + " can be. Mend it, or leave it empty.");
        }
        measured.add(kind, Math.toIntExact(date.toEpochDay()), value, line);
    }

    static String rounded(double value) {
        return Words.number(Math.round(value * 10) / 10.0);
    }
}
