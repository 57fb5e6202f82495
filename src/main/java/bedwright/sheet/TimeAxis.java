package bedwright.sheet;

import bedwright.season.Season;
import java.time.LocalDate;

/** Weeks across a picture, the same for all bands that stand under one another. */
final class TimeAxis {
    /** Width of every picture over time. */
    static final double WIDTH = 1300;

    private static final double LEFT = 124;
    private static final double RIGHT = WIDTH - 46;
    /** Height that the names of the months take. */
    static final double MONTHS = 11;

    private final Season season;
    private final double week;

    TimeAxis(Season season) {
        this.season = season;
        this.week = (RIGHT - LEFT) / season.weeks();
    }

    double left() {
        return LEFT;
    }

    double right() {
        return RIGHT;
    }

    /** Width of a week. */
    double week() {
        return week;
    }

    int weeks() {
        return season.weeks();
    }

    /** Where a week starts. */
    double x(int week) {
        return LEFT + this.week * week;
    }

    /** Where a day starts; days outside the season are held at its ends. */
    double xOfDay(int day) {
        return LEFT + week * Math.clamp(day, 0, season.days()) / 7.0;
    }

    /** The names of the months above a band, and lines of months and weeks through it. */
    void draw(Svg svg, double top, double bottom) {
        svg.group("axis");
        for (int w = 0; w <= season.weeks(); w++) {
            svg.line(x(w), top + MONTHS, x(w), bottom, "week");
        }
        LocalDate last = season.dateOf(season.days() - 1);
        LocalDate from = season.starts();
        while (!from.isAfter(last)) {
            LocalDate next = from.withDayOfMonth(1).plusMonths(1);
            double x = xOfDay(season.dayOf(from));
            double end = xOfDay(season.dayOf(next));
            svg.line(x, top, x, bottom, "month");
            String name = name(from, end - x);
            if (!name.isEmpty()) {
                svg.text(x + 2, top + MONTHS - 3, from.getMonthValue() == 1 ? "bold" : "axis-month", name);
            }
            from = next;
        }
        svg.line(RIGHT, top, RIGHT, bottom, "month");
        svg.end();
    }

    /** A month's name as far as there is room for it. */
    private static String name(LocalDate date, double room) {
        String name = Say.month(date.getMonthValue() - 1);
        String withYear = name + " " + date.getYear();
        double letter = 5.6;
        if (withYear.length() * letter <= room) {
            return withYear;
        } else if (name.length() * letter <= room) {
            return name;
        }
        return 3 * letter <= room ? name.substring(0, 3) : "";
    }
}
