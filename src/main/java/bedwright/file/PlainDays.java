package bedwright.file;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Daily records in a table of one's own, a line a day: date, minimum, maximum and, if there is any, gust or wind and its
 * direction. The first line names the columns and their units; cells stand between commas, semicolons or tabs.
 */
final class PlainDays {
    private static final Set<String> MISSING = Set.of("", "-", ".", "na", "n/a", "nan", "null", "m", "-9999", "-999.9");
    private static final Set<String> DATE = Set.of("date", "day");
    private static final Set<String> MIN = Set.of("min", "tmin", "minimum", "low", "lowest", "mintemp", "tn");
    private static final Set<String> MAX = Set.of("max", "tmax", "maximum", "high", "highest", "maxtemp", "tx");
    private static final Set<String> GUST = Set.of("gust", "gusts", "peak");
    private static final Set<String> WIND = Set.of("wind", "windspeed", "awnd");
    private static final Set<String> DIRECTION = Set.of("direction", "dir", "from", "bearing");
    private static final String DATES = "is no day of the calendar, written year-month-day as 1987-04-18";

    private final WeatherTable table;
    private final List<Column> columns = new ArrayList<>();
    private char between = ',';
    private int dateAt = -1;
    private int cellsExpected;
    private boolean hasGusts;

    /**
     * A column that is read.
     *
     * @param toOurs from the column's unit to °C, m/s or degrees
     */
    private record Column(int at, String heading, Measured.Kind kind, DoubleUnaryOperator toOurs) {}

    PlainDays(WeatherTable table) {
        this.table = table;
    }

    /**
     * Reads the line that names the columns.
     *
     * @return whether the lines below it can be read
     */
    boolean heading(String line, int number) {
        between = line.indexOf('\t') >= 0 ? '\t' : line.indexOf(';') >= 0 ? ';' : ',';
        List<Cells.Cell> cells = Cells.of(line, between);
        cellsExpected = cells.size();
        hasGusts = cells.stream().flatMap(cell -> words(cell).stream()).anyMatch(GUST::contains);
        boolean isReadable = true;
        for (int i = 0; i < cells.size(); i++) {
            isReadable &= column(cells.get(i), i, number);
        }
        boolean hasMin = has(Measured.Kind.MIN);
        boolean hasMax = has(Measured.Kind.MAX);
        if (isReadable && (dateAt < 0 || !hasMin || !hasMax)) {
            table.fault(
                    number,
                    1,
                    "The first line must name a column for the date, the minimum and the maximum, as in: date, min (°C),"
                            + " max (°C), gust (m/s), direction. It lacks "
                            + Words.and(lacking(dateAt >= 0, hasMin, hasMax))
                            + ". A file of GHCN-Daily is known by its station's name at the start of a line.");
            return false;
        }
        return isReadable;
    }

    private static List<String> lacking(boolean hasDate, boolean hasMin, boolean hasMax) {
        List<String> lacking = new ArrayList<>();
        if (!hasDate) {
            lacking.add("date");
        }
        if (!hasMin) {
            lacking.add("min");
        }
        if (!hasMax) {
            lacking.add("max");
        }
        return lacking;
    }

    private boolean has(Measured.Kind kind) {
        return columns.stream().anyMatch(column -> column.kind() == kind);
    }

    private static List<String> words(Cells.Cell cell) {
        return List.of(cell.text().toLowerCase(Locale.ROOT).split("[^a-z0-9°/]+", -1));
    }

    private boolean column(Cells.Cell cell, int at, int line) {
        List<String> words = words(cell);
        Measured.Kind kind = kind(words);
        if (kind == null) {
            if (dateAt < 0 && words.stream().anyMatch(DATE::contains)) {
                dateAt = at;
            }
            return true;
        }
        if (has(kind)) {
            table.fault(
                    line,
                    cell.column(),
                    "There is another column for " + kind.words() + " before " + Words.quoted(cell.text())
                            + ". Take one away, or name it otherwise.");
            return false;
        }
        DoubleUnaryOperator unit = WeatherUnit.of(kind, words);
        if (unit == null) {
            String units = kind.isTemperature() ? "(°C) or (°F)" : "(m/s), (km/h), (mph) or (kn)";
            table.fault(
                    line,
                    cell.column(),
                    "The column " + Words.quoted(cell.text()) + " names no unit. Write it behind the name: " + units
                            + ".");
            return false;
        }
        columns.add(new Column(at, cell.text(), kind, unit));
        return true;
    }

    /** What a column holds; a direction is that of the gusts where there are any. */
    private Measured.@Nullable Kind kind(List<String> words) {
        if (words.stream().anyMatch(DIRECTION::contains)) {
            return hasGusts ? Measured.Kind.PEAK_FROM : Measured.Kind.WIND_FROM;
        }
        if (words.stream().anyMatch(GUST::contains)) {
            return Measured.Kind.PEAK;
        }
        if (words.stream().anyMatch(WIND::contains)) {
            return Measured.Kind.WIND;
        }
        if (words.stream().anyMatch(MIN::contains)) {
            return Measured.Kind.MIN;
        }
        return words.stream().anyMatch(MAX::contains) ? Measured.Kind.MAX : null;
    }

    void line(String line, int number) {
        if (line.isBlank()) {
            return;
        }
        List<Cells.Cell> cells = Cells.of(line, between);
        if (cells.size() != cellsExpected) {
            table.fault(
                    number,
                    1,
                    "The line has " + Words.count(cells.size(), "cell", "cells") + ", but the first line names "
                            + Words.count(cellsExpected, "column", "columns")
                            + ". The file may be cut here; mend the line, or take it away.");
            return;
        }
        Cells.Cell day = cells.get(dateAt);
        LocalDate date = date(day.text());
        if (date == null) {
            table.fault(
                    number, day.column(), Words.quoted(day.text()) + " " + DATES + ". Mend it, or take the line away.");
            return;
        }
        if (!table.isAskedFor(date) || !table.isInOrder(Measured.Kind.MIN, date, number, day.column())) {
            return;
        }
        for (Column column : columns) {
            value(column, cells.get(column.at()), date, number);
        }
    }

    private void value(Column column, Cells.Cell cell, LocalDate date, int line) {
        String text = cell.text();
        if (MISSING.contains(text.toLowerCase(Locale.ROOT))) {
            return;
        }
        try {
            double value = Double.parseDouble(between == ',' ? text : text.replace(',', '.'));
            if (Double.isFinite(value)) {
                table.add(column.kind(), date, column.toOurs().applyAsDouble(value), line, cell.column());
                return;
            }
        } catch (NumberFormatException e) {
            // Told below.
        }
        table.fault(
                line,
                cell.column(),
                Words.quoted(text) + " is no number; expected is a value for " + Words.quoted(column.heading())
                        + ", or nothing where it is not known. Mend it, or leave it empty.");
    }

    private static @Nullable LocalDate date(String text) {
        String day =
                text.length() > 10 && (text.charAt(10) == 'T' || text.charAt(10) == ' ') ? text.substring(0, 10) : text;
        try {
            return LocalDate.parse(
                    day, day.length() == 8 ? DateTimeFormatter.BASIC_ISO_DATE : DateTimeFormatter.ISO_LOCAL_DATE);
        } catch (DateTimeParseException e) {
            return null;
        }
    }
}
