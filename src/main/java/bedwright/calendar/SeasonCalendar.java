package bedwright.calendar;

import bedwright.season.Plan;
import bedwright.season.Season;
import java.io.Serial;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * A calendar of jobs and events as an iCalendar file (RFC 5545).
 *
 * @param text what stands in the file; empty where there is nothing to put into it
 * @param fresh how many entries are new
 * @param changed how many came before and are changed
 * @param same how many came before and are as they were
 * @param cancelled how many came before and are cancelled now
 */
public record SeasonCalendar(String text, int fresh, int changed, int same, int cancelled) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);
    private static final int MINUTES_AN_HOUR = 60;

    /** How one plan's entries are spread over calendars. */
    public enum Split {
        /** All in one. */
        NONE,
        /** One for each bed, and one for events. */
        BED,
        /** One for each kind of job, and one for events. */
        JOB
    }

    /** A former calendar that Bedwright did not write. */
    public static final class NotOurs extends IllegalArgumentException {
        @Serial
        private static final long serialVersionUID = 1;

        private final String part;

        NotOurs(String part, String message) {
            super(message);
            this.part = part;
        }

        /** The name of the part whose former calendar it is. */
        public String part() {
            return part;
        }
    }

    /** Whether Bedwright wrote a file. */
    public static boolean isOurs(String file) {
        return ContentLines.unfolded(file).contains("PRODID:" + Published.PRODUCT);
    }

    /** The names of a plan's calendars, in order: its beds or kinds of job; one empty name where they are not split. */
    public static List<String> names(Plan plan, Split split) {
        return List.copyOf(empty(plan, split).keySet());
    }

    private static Map<String, List<Entry>> empty(Plan plan, Split split) {
        Map<String, List<Entry>> parts = new LinkedHashMap<>();
        switch (split) {
            case NONE -> parts.put("", new ArrayList<>());
            case BED -> {
                plan.season().allBeds().forEach(bed -> parts.put(bed.name(), new ArrayList<>()));
                parts.put(Doing.EVENT.words(), new ArrayList<>());
            }
            case JOB -> {
                for (Doing doing : Doing.values()) {
                    parts.put(doing.words(), new ArrayList<>());
                }
            }
        }
        return parts;
    }

    private static Map<String, List<Entry>> parts(Plan plan, Season began, Map<Integer, LocalDate> gone, Split split) {
        Map<String, List<Entry>> parts = empty(plan, split);
        for (Entry entry : Diary.of(plan, began, gone)) {
            String part = switch (split) {
                case NONE -> "";
                case BED -> entry.bed().isEmpty() ? Doing.EVENT.words() : entry.bed();
                case JOB -> entry.doing().words();
            };
            parts.getOrDefault(part, List.of()).add(entry);
        }
        return parts;
    }

    /**
     * The calendars of a plan by the name of their part; one with an empty name where they are not split.
     *
     * @param former texts of the calendars that were written before, by the same names; those left out are new
     * @throws NotOurs if one of the former was not written by Bedwright
     */
    public static Map<String, SeasonCalendar> of(Plan plan, Split split, Map<String, String> former) {
        return of(plan, plan.season(), Map.of(), split, former);
    }

    /**
     * The same of a plan of what is left of a season: what is over stays in it as it was done.
     *
     * @param began the season as it began, whose events of weeks that are over count
     * @param gone days on which plantings were pulled or the last of them was lost, by number
     */
    public static Map<String, SeasonCalendar> of(
            Plan plan, Season began, Map<Integer, LocalDate> gone, Split split, Map<String, String> former) {
        Map<String, SeasonCalendar> calendars = new LinkedHashMap<>();
        parts(plan, began, gone, split).forEach((name, entries) -> {
            String text = former.get(name);
            Published before;
            try {
                before = text == null ? Published.none() : Published.read(text);
            } catch (IllegalArgumentException e) {
                throw new NotOurs(name, String.valueOf(e.getMessage()));
            }
            calendars.put(name, of(plan, name, entries, before));
        });
        return calendars;
    }

    private static SeasonCalendar of(Plan plan, String part, List<Entry> entries, Published before) {
        String name = plan.season().name() + (part.isEmpty() ? "" : ": " + part);
        LocalDate starts = plan.season().starts();
        Map<Subject, String> threads = Threads.of(
                name + "\n" + starts,
                before.subjects(),
                entries.stream().map(Entry::subject).distinct().toList());
        List<String> lines = new ArrayList<>(List.of(
                "BEGIN:VCALENDAR",
                "VERSION:2.0",
                "PRODID:" + Published.PRODUCT,
                "CALSCALE:GREGORIAN",
                // The newer name of a calendar's name (RFC 7986), and the one that most programs read.
                "NAME:" + ContentLines.text(name),
                "X-WR-CALNAME:" + ContentLines.text(name)));
        Map<String, List<String>> gone = new TreeMap<>(before.entries());
        int fresh = 0;
        int changed = 0;
        int same = 0;
        for (Entry entry : entries) {
            String uid = threads.get(entry.subject()) + "-"
                    + entry.doing().name().toLowerCase(Locale.ROOT).replace('_', '-') + "-" + entry.time();
            List<String> body = body(uid, entry);
            List<String> was = gone.remove(uid);
            int sequence = was == null ? 0 : Published.sequence(was);
            if (was == null) {
                fresh++;
            } else if (withSequence(body, sequence, starts).equals(was)) {
                same++;
            } else {
                sequence++;
                changed++;
            }
            event(lines, withSequence(body, sequence, starts));
        }
        int cancelled = 0;
        for (List<String> was : gone.values()) {
            boolean already = Published.isCancelled(was);
            cancelled += already ? 0 : 1;
            event(lines, already ? was : cancelled(was, starts));
        }
        lines.add("END:VCALENDAR");
        boolean empty = entries.isEmpty() && gone.isEmpty();
        return new SeasonCalendar(empty ? "" : ContentLines.folded(lines), fresh, changed, same, cancelled);
    }

    private static void event(List<String> lines, List<String> entry) {
        lines.add("BEGIN:VEVENT");
        lines.addAll(entry);
        lines.add("END:VEVENT");
    }

    /** All of an entry but which version of itself it is; DTEND is not included (RFC 5545, 3.8.2.2). */
    private static List<String> body(String uid, Entry entry) {
        List<String> body = new ArrayList<>(List.of(
                "UID:" + uid,
                "DTSTART;VALUE=DATE:" + DAY.format(entry.from()),
                "DTEND;VALUE=DATE:" + DAY.format(entry.end()),
                "SUMMARY:" + ContentLines.text(entry.summary()),
                "DESCRIPTION:" + ContentLines.text(String.join("\n", entry.details()))));
        if (!entry.bed().isEmpty()) {
            body.add("LOCATION:" + ContentLines.text(entry.bed()));
        }
        body.add("CATEGORIES:" + ContentLines.text(entry.doing().words()));
        body.add("STATUS:CONFIRMED");
        // Whole-day jobs don't fill anybody's day.
        body.add("TRANSP:TRANSPARENT");
        body.add(Published.SUBJECT + ":" + ContentLines.texts(entry.subject().parts()));
        return body;
    }

    /**
     * With its version, and the time at which that was made: no plan knows the hour it was made, so it is the season's
     * first day and a minute more for each version, which is the same everywhere and never runs backwards.
     */
    private static List<String> withSequence(List<String> body, int sequence, LocalDate starts) {
        List<String> lines = new ArrayList<>(body);
        int hours = sequence / MINUTES_AN_HOUR;
        String time = String.format(Locale.ROOT, "%02d%02d00", hours % 24, sequence % MINUTES_AN_HOUR);
        lines.add(1, "DTSTAMP:" + DAY.format(starts.plusDays(hours / 24)) + "T" + time + "Z");
        lines.add(2, "SEQUENCE:" + sequence);
        return lines;
    }

    private static List<String> cancelled(List<String> was, LocalDate starts) {
        List<String> body = new ArrayList<>();
        for (String line : was) {
            if (line.startsWith("STATUS:")) {
                body.add("STATUS:CANCELLED");
            } else if (!line.startsWith("SEQUENCE:") && !line.startsWith("DTSTAMP:")) {
                // For the programs that show what is cancelled as if it were not.
                body.add(
                        line.startsWith("SUMMARY:")
                                ? "SUMMARY:Cancelled: " + line.substring("SUMMARY:".length())
                                : line);
            }
        }
        return withSequence(body, Published.sequence(was) + 1, starts);
    }
}
