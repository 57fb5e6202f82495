package bedwright.calendar;

import java.time.LocalDate;
import java.util.List;

/**
 * One entry of the calendar, which takes whole days.
 *
 * @param subject what it speaks of
 * @param doing what is to be done
 * @param time the how manieth such entry of its subject, from 1
 * @param from first day
 * @param end day after the last
 * @param summary what it is, in a few words
 * @param details more of it, a line each
 * @param bed where; empty for an event
 */
record Entry(
        Subject subject,
        Doing doing,
        int time,
        LocalDate from,
        LocalDate end,
        String summary,
        List<String> details,
        String bed) {

    Entry {
        details = List.copyOf(details);
        if (!from.isBefore(end)) {
            throw new IllegalArgumentException("An entry ends after it begins, not from " + from + " to " + end);
        }
    }
}
