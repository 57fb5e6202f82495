package bedwright.start;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.TemporalQuery;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what is typed: numbers, days, sides. */
final class Read {
    private static final List<DateTimeFormatter> DAYS = List.of(
            form("uuuu-MM-dd"), form("d MMM uuuu"), form("d MMMM uuuu"), form("MMM d uuuu"), form("MMMM d uuuu"));
    private static final List<DateTimeFormatter> DAYS_OF_YEAR =
            List.of(form("MM-dd"), form("d MMM"), form("d MMMM"), form("MMM d"), form("MMMM d"));
    private static final Map<String, Double> SIDES = Map.ofEntries(
            Map.entry("north", 0.0),
            Map.entry("northeast", 45.0),
            Map.entry("east", 90.0),
            Map.entry("southeast", 135.0),
            Map.entry("south", 180.0),
            Map.entry("southwest", 225.0),
            Map.entry("west", 270.0),
            Map.entry("northwest", 315.0));

    private Read() {}

    private static DateTimeFormatter form(String pattern) {
        return new DateTimeFormatterBuilder()
                .parseCaseInsensitive()
                .appendPattern(pattern)
                .toFormatter(Locale.ENGLISH)
                .withResolverStyle(ResolverStyle.STRICT);
    }

    static double number(String typed, String what, double least, double most) {
        double value;
        try {
            value = Double.parseDouble(typed.strip());
        } catch (NumberFormatException e) {
            throw new BadAnswer(
                    "\"" + typed.strip() + "\" is not a number. Expected is " + what + ", with a point: 12.5.");
        }
        if (!(value >= least && value <= most)) {
            throw new BadAnswer("Expected is " + what + " from " + FirstSeason.number(least) + " to "
                    + FirstSeason.number(most) + ", not " + typed.strip() + ".");
        }
        return value;
    }

    static int whole(String typed, String what, int least, int most) {
        double value = number(typed, what, least, most);
        if (value != Math.rint(value)) {
            throw new BadAnswer("Expected is " + what + ", a whole number, not " + typed.strip() + ".");
        }
        return (int) value;
    }

    static LocalDate day(String typed) {
        return first(DAYS, typed, LocalDate::from)
                .orElseThrow(() -> new BadAnswer("\"" + typed.strip()
                        + "\" is not a day of the calendar. Write it as 2027-06-12 or 12 June 2027."));
    }

    static MonthDay dayOfYear(String typed) {
        return first(DAYS_OF_YEAR, typed, MonthDay::from)
                .orElseThrow(
                        () -> new BadAnswer("\"" + typed.strip() + "\" is not a day of the year. Write it as 10 May."));
    }

    private static <T> Optional<T> first(List<DateTimeFormatter> forms, String typed, TemporalQuery<T> day) {
        String plain = typed.strip().replaceAll("[,.]", " ").replaceAll("\\s+", " ");
        for (DateTimeFormatter form : forms) {
            try {
                return Optional.of(form.parse(plain, day));
            } catch (DateTimeException e) {
                // Another way of writing it may fit.
                continue;
            }
        }
        return Optional.empty();
    }

    /** Degrees of a side. */
    static double side(String typed) {
        String word = typed.strip().toLowerCase(Locale.ROOT).replaceAll("[ -]", "");
        Double named = SIDES.get(word);
        return named != null ? named : sideInDegrees(typed);
    }

    private static double sideInDegrees(String typed) {
        if (typed.strip().matches("[0-9.]+")) {
            return number(typed, "degrees", 0, 360);
        }
        throw new BadAnswer(
                "\"" + typed.strip() + "\" is no side. Write north, northeast and so on, degrees from 0 (north)"
                        + " by 90 (east) to 360, or none.");
    }

    static boolean isNone(String typed) {
        return typed.isBlank()
                || typed.strip().equalsIgnoreCase("none")
                || typed.strip().equals("0");
    }

    /** The parts of an answer of a given form. */
    static Matcher parts(Pattern form, String typed, String example) {
        Matcher matcher = form.matcher(typed.strip());
        if (!matcher.matches()) {
            throw new BadAnswer("\"" + typed.strip() + "\" is not understood. Write it as in: " + example);
        }
        return matcher;
    }
}
