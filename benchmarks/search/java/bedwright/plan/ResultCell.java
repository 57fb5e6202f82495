package bedwright.plan;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A cell of a file of results, empty where nothing was measured; a fault in it names its column. */
record ResultCell(String head, String text) {
    @Nullable
    Double number() {
        try {
            return text.isEmpty() ? null : Double.valueOf(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("Column " + head + ": expected a number, found \"" + text + "\"", e);
        }
    }

    double needed() {
        Double number = number();
        if (number == null) {
            throw new IllegalArgumentException("Column " + head + ": expected a number, found nothing");
        }
        return number;
    }

    @Nullable
    Long whole() {
        Double number = number();
        return number == null ? null : (long) number.doubleValue();
    }

    @Nullable
    LocalDate day() {
        try {
            return text.isEmpty() ? null : LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    "Column " + head + ": expected a date as 2026-11-29, found \"" + text + "\"", e);
        }
    }

    static String of(@Nullable Double number, int digits) {
        return number == null ? "" : String.format(Locale.ROOT, "%." + digits + "f", number);
    }

    /** What is whole, or a date; nothing for null. */
    static String of(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }
}
