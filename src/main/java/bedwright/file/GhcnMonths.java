package bedwright.file;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.regex.Pattern;

/**
 * Daily records in the fixed columns of GHCN-Daily's {@code .dly} files, a line for a station, month and element
 * (readme.txt of the data set, section III): station 1–11, year 12–15, month 16–17, element 18–21, then for each of 31
 * days the value (5 columns) and its flags of measurement, quality and source (a column each). Missing values are −9999;
 * temperatures are in tenths of a degree Celsius, winds in tenths of m/s. Any quality flag drops its value.
 */
final class GhcnMonths {
    private static final Pattern START = Pattern.compile("[A-Z]{2}[A-Z0-9_-]{9}\\d{4}\\d{2}[A-Z0-9]{4}.*");
    private static final int STATION = 11;
    private static final int HEAD = 21;
    private static final int DAY = 8;
    private static final int VALUE = 5;
    private static final int FULL = HEAD + 31 * DAY;

    private final WeatherTable table;

    GhcnMonths(WeatherTable table) {
        this.table = table;
    }

    /** Whether a file that starts with this line is one of these. */
    static boolean isStart(String line) {
        return START.matcher(line).matches();
    }

    void line(String line, int number) {
        if (line.isBlank()) {
            return;
        }
        if (!isStart(line)) {
            table.fault(
                    number,
                    1,
                    "The line is no month of a station: expected are 11 characters for the station, then year, month"
                            + " and an element such as TMAX. The file may be cut or joined here; fetch it anew, or take"
                            + " the line away.");
            return;
        }
        Measured.Kind kind = Measured.ofElement(line.substring(17, HEAD));
        if (!table.isOfStation(line.substring(0, STATION), number) || kind == null) {
            return;
        }
        YearMonth month;
        try {
            month = YearMonth.of(Integer.parseInt(line.substring(11, 15)), Integer.parseInt(line.substring(15, 17)));
        } catch (DateTimeException e) {
            table.fault(
                    number,
                    16,
                    "There is no month " + line.substring(15, 17) + ". Fetch the file anew, or mend the month.");
            return;
        }
        // The blank flags of the month's last days are cut off by many a program; a value never is.
        int least = HEAD + (month.lengthOfMonth() - 1) * DAY + VALUE;
        if (line.length() < least || line.length() > FULL) {
            table.fault(
                    number,
                    Math.min(line.length(), FULL) + 1,
                    "The line has " + line.length() + " characters; a month of a .dly file has " + FULL
                            + ". The file is cut or joined here: fetch it anew, or take the line away.");
            return;
        }
        for (int day = 1; day <= month.lengthOfMonth(); day++) {
            value(line, number, kind, month.atDay(day), HEAD + (day - 1) * DAY);
        }
    }

    private void value(String line, int number, Measured.Kind kind, LocalDate date, int at) {
        String text = line.substring(at, at + VALUE).strip();
        int value;
        try {
            value = Integer.parseInt(text);
        } catch (NumberFormatException e) {
            table.fault(
                    number,
                    at + 1,
                    Words.quoted(text) + " is no whole number; expected is the value of " + date
                            + " in tenths, or -9999." + " The columns may have shifted: fetch the file anew.");
            return;
        }
        boolean isFlagged = line.length() > at + VALUE + 1 && line.charAt(at + VALUE + 1) != ' ';
        table.ghcn(kind, date, value, isFlagged, number, at + 1);
    }
}
