package bedwright.log;

import bedwright.season.Season;
import java.time.LocalDate;

/**
 * Days on end.
 *
 * @param from the first
 * @param to the last
 */
public record Period(LocalDate from, LocalDate to) {
    private static final String TO = " to ";

    /**
     * Reads {@code 12 Jul} or {@code 12 Jul to 2 Aug}.
     *
     * @throws IllegalArgumentException if it is not understood; the message says what to write instead
     */
    static Period of(Season season, String said) {
        int to = said.indexOf(TO);
        LocalDate first = SaidDay.of(season, to < 0 ? said : said.substring(0, to));
        LocalDate last = to < 0 ? first : SaidDay.of(season, said.substring(to + TO.length()));
        if (last.isBefore(first)) {
            throw new IllegalArgumentException(
                    last + " comes before " + first + ". Write the first day first: " + last + TO + first + ".");
        }
        return new Period(first, last);
    }

    /** Whether it has a day in common with another. */
    boolean meets(Period other) {
        return !from.isAfter(other.to) && !to.isBefore(other.from);
    }

    String said() {
        return from.equals(to) ? from.toString() : from + TO + to;
    }
}
