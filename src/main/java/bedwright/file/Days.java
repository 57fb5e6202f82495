package bedwright.file;

import bedwright.season.Season;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Checks of dates against the season's run of weeks. */
final class Days {
    private static final int YEAR = 365;

    private final Season season;
    private final Flaws flaws;

    Days(Season season, Flaws flaws) {
        this.season = season;
        this.flaws = flaws;
    }

    LocalDate last() {
        return season.starts().plusDays(season.days() - 1L);
    }

    boolean holds(LocalDate date) {
        return !date.isBefore(season.starts()) && !date.isAfter(last());
    }

    /** A date that names a week must be its first day. */
    void firstOfAWeek(String path, String label, @Nullable LocalDate date) {
        if (date == null) {
            return;
        }
        DayOfWeek first = season.starts().getDayOfWeek();
        if (date.getDayOfWeek() != first) {
            LocalDate before = date.minusDays(Math.floorMod(date.getDayOfWeek().getValue() - first.getValue(), 7));
            flaws.add(
                    path,
                    Words.quoted(label) + " is " + date + ", a " + said(date.getDayOfWeek())
                            + ", but a week of this season starts on a " + said(first) + ", as the season does. Write "
                            + before + " or " + before.plusWeeks(1) + ".",
                    "/starts");
        }
    }

    void inside(String path, String label, @Nullable LocalDate date) {
        if (date != null && !holds(date)) {
            flaws.add(
                    path,
                    Words.quoted(label) + " is " + date + ", but the season runs from " + season.starts() + " to "
                            + last() + ". Write a date within it, or change the season's \"starts\" or \"weeks\".",
                    "/starts",
                    "/weeks");
        }
    }

    /** A week, or a run of weeks, within the season. */
    void weeks(String path, LocalDate from, @Nullable LocalDate to) {
        firstOfAWeek(path + "/from", "from", from);
        inside(path + "/from", "from", from);
        firstOfAWeek(path + "/to", "to", to);
        inside(path + "/to", "to", to);
        inOrder(path, from, to);
    }

    void inOrder(String path, @Nullable LocalDate from, @Nullable LocalDate to) {
        if (from != null && to != null && from.isAfter(to)) {
            flaws.add(
                    path + "/to",
                    "\"to\" is " + to + ", before \"from\", " + from + ". Change one of them, or swap them.",
                    path + "/from");
        }
    }

    /** Days forward from one day of the year to another, 0 to 364; 29 February counts as the 28th. */
    static int forward(MonthDay from, MonthDay to) {
        return Math.floorMod(dayOfYear(to) - dayOfYear(from), YEAR);
    }

    private static int dayOfYear(MonthDay day) {
        return day.getMonthValue() == 2 && day.getDayOfMonth() == 29
                ? dayOfYear(MonthDay.of(2, 28))
                : day.atYear(2001).getDayOfYear();
    }

    private static String said(DayOfWeek day) {
        return day.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }
}
