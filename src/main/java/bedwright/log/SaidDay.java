package bedwright.log;

import bedwright.season.Season;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days of a season as people write them: 2027-09-12, 12 Sep, 12-Sep or 12 September 2027. */
public final class SaidDay {
    private static final Pattern WHOLE = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
    private static final Pattern SHORT = Pattern.compile("(\\d{1,2})[ -]+(\\p{L}{3,9})\\.?(?:[ -]+(\\d{4}))?");
    private static final int LETTERS = 3;

    private SaidDay() {}

    /**
     * The day that is meant.
     *
     * @throws IllegalArgumentException if none is, if it lies outside the season, or if two days may be meant; the message
     *     says what to write instead
     */
    public static LocalDate of(Season season, String said) {
        List<LocalDate> within = within(season, said);
        if (within.size() > 1) {
            throw new IllegalArgumentException("\"" + said.strip() + "\" comes more than once in this season. Write "
                    + within.getFirst() + " or " + within.getLast() + ".");
        }
        return within.getFirst();
    }

    /**
     * Likewise, of a day that lies ahead: of two in a season under way the one that is still to come is meant. Not for
     * what is kept, which would mean another day later.
     */
    static LocalDate toCome(Season season, String said) {
        LocalDate open = season.weekStart(season.firstWeek());
        List<LocalDate> left = within(season, said).stream()
                .filter(date -> !date.isBefore(open))
                .toList();
        return left.size() == 1 ? left.getFirst() : of(season, said);
    }

    private static List<LocalDate> within(Season season, String said) {
        String day = said.strip();
        List<LocalDate> meant = new ArrayList<>();
        Matcher whole = WHOLE.matcher(day);
        Matcher brief = SHORT.matcher(day);
        Optional<Month> month = brief.matches() ? month(brief.group(2)) : Optional.empty();
        LocalDate last = season.dateOf(season.days() - 1);
        if (whole.matches()) {
            add(meant, number(whole.group(1)), number(whole.group(2)), number(whole.group(3)));
        } else if (month.isPresent() && brief.group(3) != null) {
            add(meant, number(brief.group(3)), month.get().getValue(), number(brief.group(1)));
        } else if (month.isPresent()) {
            for (int year = season.starts().getYear(); year <= last.getYear(); year++) {
                add(meant, year, month.get().getValue(), number(brief.group(1)));
            }
        }
        if (meant.isEmpty()) {
            throw new IllegalArgumentException(
                    "\"" + day + "\" is not a day. Write it as 12 Sep, 12-Sep or " + season.starts() + ".");
        }
        List<LocalDate> within = meant.stream()
                .filter(date -> !date.isBefore(season.starts()) && !date.isAfter(last))
                .toList();
        if (within.isEmpty()) {
            throw new IllegalArgumentException("\"" + day + "\" lies outside the season. Write a day from "
                    + season.starts() + " to " + last + ".");
        }
        return within;
    }

    /** How many of the words that come first are a day, as far as can be told; at least 1. */
    static int length(List<String> words) {
        boolean isNumber = !words.isEmpty() && words.getFirst().matches("\\d{1,2}");
        if (!isNumber
                || words.size() < 2
                || month(words.get(1).replace(".", "")).isEmpty()) {
            return 1;
        }
        return words.size() > 2 && words.get(2).matches("\\d{4}") ? 3 : 2;
    }

    /** Whether a line begins with a day. */
    public static boolean begins(String line) {
        List<String> words = List.of(line.strip().split("\\s+"));
        return words.getFirst().matches("\\d+-\\S*") || length(words) > 1;
    }

    private static int number(String digits) {
        return Integer.parseInt(digits);
    }

    /** Adds a day if the calendar has it. */
    private static void add(List<LocalDate> days, int year, int month, int day) {
        try {
            days.add(LocalDate.of(year, month, day));
        } catch (DateTimeException e) {
            // 31 April, or 29 February of another year: not meant.
        }
    }

    /** The month that a word of at least three letters begins. */
    private static Optional<Month> month(String word) {
        String said = word.toLowerCase(Locale.ROOT);
        for (Month month : Month.values()) {
            String name = month.getDisplayName(TextStyle.FULL, Locale.ENGLISH).toLowerCase(Locale.ROOT);
            if (said.length() >= LETTERS && name.startsWith(said)) {
                return Optional.of(month);
            }
        }
        return Optional.empty();
    }
}
