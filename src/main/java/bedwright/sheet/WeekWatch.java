package bedwright.sheet;

import bedwright.growth.Course;
import bedwright.growth.Prospect;
import bedwright.season.Method;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;

/** What to look for in a week, with what to write in the season log once it is seen. */
final class WeekWatch {
    private final WeekFacts facts;
    private final Season season;

    WeekWatch(WeekFacts facts) {
        this.facts = facts;
        this.season = facts.season();
    }

    /** What to look for, with the plantings and about when each is due. */
    Table table(int week) {
        List<List<String>> rows = new ArrayList<>();
        add(rows, "coming up, evenly?", "up", week, 0, WeekWatch::emergence);
        add(rows, "about six leaf nodes: ready to pinch", "pinch-stage", week, 0, Course::pinch);
        add(rows, "colour showing", "colour", week, 7, Course::firstCut);
        add(rows, "first stems ready", "first-stem", week, 0, Course::firstCut);
        return new Table(
                "watch-" + week,
                "What to look for",
                List.of(
                        Table.Column.text("Look for"),
                        Table.Column.text("Note"),
                        Table.Column.text("Where, and about when")),
                rows);
    }

    private static int emergence(Course course) {
        boolean inTheBed =
                course.method().start() == Method.Start.SOWN || course.method().start() == Method.Start.SET;
        return inTheBed ? course.emergence() : Prospect.NONE;
    }

    /** @param before days before that day in which to look */
    private void add(
            List<List<String>> rows, String what, String note, int week, int before, ToIntFunction<Course> dayOf) {
        Map<String, List<String>> byCrop = new LinkedHashMap<>();
        for (Shown planting : facts.plantings()) {
            int day = dayOf.applyAsInt(facts.course(planting));
            if (day != Prospect.NONE && Math.floorDiv(day - before, 7) == week) {
                byCrop.computeIfAbsent(planting.name(), name -> new ArrayList<>())
                        .add(planting.number() + "\u00a0" + planting.kept().bed() + " "
                                + Say.weekday(season.dateOf(day - before)) + "\u00a0___");
            }
        }
        List<String> each = new ArrayList<>();
        byCrop.forEach((name, plantings) -> each.add(name + ": " + String.join(", ", plantings)));
        if (!each.isEmpty()) {
            rows.add(List.of(what, "No. " + note, String.join("; ", each)));
        }
    }
}
