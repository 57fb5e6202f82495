package bedwright.file;

import bedwright.weather.StationRecord;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.function.ObjIntConsumer;

/**
 * Files of daily weather: GHCN-Daily's {@code .dly} and by-station files, and tables of one's own. UTF-8, with line ends
 * of any system, with or without a byte order mark.
 */
public final class WeatherFile {
    /** For a range of years that does not end. */
    public static final int NO_YEAR = -1;

    private static final String WANTED =
            " Expected is a station's daily record: a .dly or by-station file of GHCN-Daily, or"
                    + " a table that begins with a line such as: date, min (°C), max (°C), gust (m/s), direction.";

    private WeatherFile() {}

    /**
     * Reads all years of a record.
     *
     * @throws FileTrouble if the file can't be read
     * @throws FaultyFile if it is at fault, with all faults
     */
    public static StationRecord read(Path file) {
        return read(file, NO_YEAR, NO_YEAR);
    }

    /**
     * Reads some years of a record; faults in values of other years don't count.
     *
     * @param from first calendar year, or {@link #NO_YEAR}
     * @param to last calendar year, or {@link #NO_YEAR}
     */
    public static StationRecord read(Path file, int from, int to) {
        return parse(file.toString(), Reading.bytes(file), from, to);
    }

    /**
     * The record that these bytes hold.
     *
     * @param name what faults call the file
     */
    public static StationRecord parse(String name, byte[] bytes, int from, int to) {
        WeatherTable table = new WeatherTable(
                name, from == NO_YEAR ? Integer.MIN_VALUE : from, to == NO_YEAR ? Integer.MAX_VALUE : to);
        if (bytes.length > JsonTree.LARGEST) {
            table.fault(
                    1,
                    1,
                    "The file has " + bytes.length / (1024 * 1024) + " MB or more; more than "
                            + JsonTree.LARGEST / (1024 * 1024) + " MB is not read. Keep the lines of one station.");
            table.faults().tell();
        }
        Decoded decoded = Decoded.of(bytes);
        String trouble = decoded.trouble();
        boolean isPlain = read(trouble == null ? decoded.text() : wholeLines(decoded.text()), table);
        if (trouble != null) {
            Place place = new Lines(decoded.text()).at(decoded.text().length);
            table.fault(place.line(), place.column(), trouble + " (The sign ° is one that is often not.)");
        } else if (table.faults().count() == 0 && table.measured().isEmpty()) {
            table.fault(
                    1,
                    1,
                    from == NO_YEAR && to == NO_YEAR
                            ? "The file holds no day of weather." + WANTED
                            : "The file holds no day of weather of the years asked for.");
        } else if (!table.measured().isEmpty()) {
            new WeatherSense(table, isPlain).check();
        }
        table.faults().tell();
        return table.measured().record();
    }

    /** The text up to its last line's end: of a line that could not be read whole nothing is told but that. */
    private static char[] wholeLines(char[] text) {
        int end = text.length;
        while (end > 0 && text[end - 1] != '\n' && text[end - 1] != '\r') {
            end--;
        }
        return Arrays.copyOf(text, end);
    }

    /** Reads all lines; returns whether they are a table of one's own. */
    private static boolean read(char[] text, WeatherTable table) {
        LineReader lines = new LineReader(text);
        String first = lines.next();
        while (first != null && first.isBlank()) {
            first = lines.next();
        }
        if (first == null) {
            return true;
        }
        if (GhcnMonths.isStart(first)) {
            GhcnMonths months = new GhcnMonths(table);
            all(lines, first, months::line);
            return false;
        }
        boolean isHeading = GhcnDays.isHeading(Cells.of(first, ','));
        if (isHeading || GhcnDays.isStart(first)) {
            all(lines, isHeading ? "" : first, new GhcnDays(table)::line);
            return false;
        }
        PlainDays days = new PlainDays(table);
        if (days.heading(first, lines.number())) {
            all(lines, "", days::line);
        }
        return true;
    }

    private static void all(LineReader lines, String first, ObjIntConsumer<String> each) {
        each.accept(first, lines.number());
        for (String line = lines.next(); line != null; line = lines.next()) {
            each.accept(line, lines.number());
        }
    }
}
