package bedwright.sheet;

import bedwright.growth.Course;
import bedwright.growth.Courses;
import bedwright.plan.Outcomes;
import bedwright.season.Bed;
import bedwright.season.Rounding;
import bedwright.season.Season;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What all week sheets of a plan share. The season may be one under way: what has happened is then in its standing
 * plantings and its orders, and the outcome is that of what is still to come.
 *
 * @param plantings by number
 * @param courses of one lot of each planting, by its number
 * @param work all jobs
 * @param where where plantings lie
 */
record WeekFacts(
        SheetFacts facts, List<Shown> plantings, Map<Integer, Course> courses, List<WorkLine> work, Whereabouts where) {

    static WeekFacts of(SheetFacts facts) {
        List<Shown> plantings = Shown.of(facts);
        Courses ways = Courses.of(facts.season());
        Map<Integer, Course> courses = new HashMap<>();
        for (Shown planting : plantings) {
            courses.put(planting.number(), ways.course(Outcomes.spot(facts.season(), planting.kept())));
        }
        return new WeekFacts(
                facts,
                plantings,
                courses,
                WorkLine.of(facts, plantings, courses),
                Whereabouts.of(facts.season(), plantings));
    }

    Season season() {
        return facts.season();
    }

    Course course(Shown planting) {
        return Objects.requireNonNull(courses.get(planting.number()));
    }

    /** Length of a bed, mm. */
    long length(int bed) {
        Bed one = facts.season().allBeds().get(bed);
        return Rounding.halfUp(1000 * one.block().length());
    }
}
