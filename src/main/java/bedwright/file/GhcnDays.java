package bedwright.file;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Daily records in GHCN-Daily's files by station, a line for a station, day and element (readme-by_station.txt of the
 * data set): station, day as yyyymmdd, element, value, flags of measurement, quality and source, time of observation. A
 * line of headings may stand first. Units and missing values are those of the {@code .dly} files; any quality flag drops
 * its value.
 */
final class GhcnDays {
    private static final Pattern START = Pattern.compile("\"?[A-Z]{2}[A-Z0-9_-]{9}\"?,\"?\\d.*");
    private static final int LEAST_CELLS = 4;
    private static final int STATION = 11;
    private static final int ELEMENT = STATION + 1 + 8 + 1;
    private static final int QUALITY = 5;

    private final WeatherTable table;

    GhcnDays(WeatherTable table) {
        this.table = table;
    }

    /** Whether a line is one of a day, not of headings. */
    static boolean isStart(String line) {
        return START.matcher(line).matches();
    }

    /** Whether a line is one of headings. */
    static boolean isHeading(List<Cells.Cell> cells) {
        return cells.size() >= LEAST_CELLS && cells.get(2).text().equalsIgnoreCase("element");
    }

    /** Most lines of a large file are of rain and snow: they are told by their columns, without taking them apart. */
    private boolean isOfNoUse(String line) {
        return line.length() > ELEMENT + 4
                && line.charAt(STATION) == ','
                && line.charAt(ELEMENT - 1) == ','
                && line.charAt(ELEMENT + 4) == ','
                && line.startsWith(table.measured().station())
                && Measured.ofElement(line.substring(ELEMENT, ELEMENT + 4)) == null;
    }

    void line(String line, int number) {
        if (line.isBlank() || isOfNoUse(line)) {
            return;
        }
        List<Cells.Cell> cells = Cells.of(line, ',');
        if (!isStart(line) || cells.size() <= QUALITY) {
            table.fault(
                    number,
                    1,
                    "The line is no day of a station: expected are station, day as yyyymmdd, element, value and three"
                            + " flags between commas, but there are " + Words.count(cells.size(), "cell", "cells")
                            + ". The file may be cut here; fetch it anew, or take the line away.");
            return;
        }
        Measured.Kind kind = Measured.ofElement(cells.get(2).text());
        if (!table.isOfStation(cells.get(0).text(), number) || kind == null) {
            return;
        }
        LocalDate date;
        try {
            date = LocalDate.parse(cells.get(1).text(), DateTimeFormatter.BASIC_ISO_DATE);
        } catch (DateTimeParseException e) {
            table.fault(
                    number,
                    cells.get(1).column(),
                    Words.quoted(cells.get(1).text())
                            + " is no day of the calendar, written yyyymmdd as 19870418. Mend it, or take the line away.");
            return;
        }
        Cells.Cell value = cells.get(3);
        try {
            boolean isFlagged = !cells.get(QUALITY).text().isBlank();
            table.ghcn(kind, date, Integer.parseInt(value.text()), isFlagged, number, value.column());
        } catch (NumberFormatException e) {
            table.fault(
                    number,
                    value.column(),
                    Words.quoted(value.text()) + " is no whole number; expected is a value in tenths, as 215 for 21.5."
                            + " Mend it, or take the line away.");
        }
    }
}
