package bedwright.sheet;

import bedwright.growth.Course;
import bedwright.growth.Prospect;
import bedwright.growth.ProspectTable;
import bedwright.plan.Outcomes;
import bedwright.season.Job;
import bedwright.season.Rounding;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;

/**
 * One job on one planting in one week. A week's lines add up to the minutes that the plan counts for it: a planting's
 * minutes of a week are shared out over its jobs by what each takes.
 *
 * @param minutes setting up included, which lots planted alike share
 */
record WorkLine(Shown planting, Course course, Job job, int week, long minutes) {

    /** All jobs of a plan, by planting, then week, then as they are done. */
    static List<WorkLine> of(SheetFacts facts, List<Shown> plantings, Map<Integer, Course> courses) {
        List<WorkLine> lines = new ArrayList<>();
        Set<List<Object>> setUp = new HashSet<>();
        for (Shown planting : plantings) {
            Course course = Objects.requireNonNull(courses.get(planting.number()));
            Map<Integer, List<Prospect.Task>> byWeek = new TreeMap<>();
            course.tasks()
                    .forEach(task -> byWeek.computeIfAbsent(task.week(), w -> new ArrayList<>())
                            .add(task));
            boolean isFirst = setUp.add(
                    planting.kept().standing() != null
                            ? List.of(planting.number())
                            : List.of(
                                    planting.kept().crop(),
                                    planting.bed(),
                                    planting.kept().sown(),
                                    planting.kept().method()));
            byWeek.forEach((week, tasks) -> share(facts, planting, course, week, tasks, isFirst, lines));
        }
        return List.copyOf(lines);
    }

    private static void share(
            SheetFacts facts,
            Shown planting,
            Course course,
            int week,
            List<Prospect.Task> tasks,
            boolean isFirst,
            List<WorkLine> lines) {
        long all = planting.kept().lots() * (long) minutes(facts, planting, week);
        double sum = tasks.stream().mapToDouble(Prospect.Task::minutes).sum();
        double behind = 0;
        long given = 0;
        for (int i = 0; i < tasks.size(); i++) {
            Prospect.Task task = tasks.get(i);
            behind += task.minutes();
            long by = i == tasks.size() - 1 || sum <= 0 ? all : Rounding.halfUp(all * (behind / sum));
            lines.add(new WorkLine(planting, course, task.job(), week, by - given + (isFirst ? task.setUp() : 0)));
            given = by;
        }
    }

    /** Minutes of one lot in a week, without setting up. */
    private static int minutes(SheetFacts facts, Shown planting, int week) {
        ProspectTable table = facts.prospects();
        var spot = Outcomes.spot(facts.season(), planting.kept());
        int row = table.row(table.find(spot.stock(), spot.bed(), spot.sowWeek(), spot.method()));
        int at = week - table.workFrom(row);
        return at < 0 || at >= table.work(row).length ? 0 : table.work(row)[at];
    }
}
