package bedwright.growth;

import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.util.List;

/** Tells the way of single lots through the normal season, by the same formulas as the {@link ProspectTable}. */
public final class Courses {
    private final World world;
    private final List<Bed> beds;

    private Courses(World world) {
        this.world = world;
        this.beds = world.season.allBeds();
    }

    /** For lots and standing plantings of a season. */
    public static Courses of(Season season) {
        return new Courses(new World(season, List.of()));
    }

    /**
     * The course of a lot of a stock, or of a standing planting.
     *
     * @throws IllegalArgumentException if the season has no such stock, bed or method
     */
    public Course course(Spot spot) {
        Season season = world.season;
        int pool = season.pool().size();
        if (spot.stock() < 0
                || spot.stock() >= pool + season.standing().size()
                || spot.bed() < 0
                || spot.bed() >= beds.size()) {
            throw new IllegalArgumentException("No such stock or bed: " + spot);
        }
        Standing standing = spot.stock() < pool ? null : season.standing().get(spot.stock() - pool);
        String name = standing == null ? season.pool().get(spot.stock()).crop() : standing.crop();
        int plants = standing == null ? season.pool().get(spot.stock()).plants() : standing.plants();
        int crop = season.crops().stream().map(Crop::name).toList().indexOf(name);
        Method method = season.crops().get(crop).methods().get(ProspectTable.methodOf(spot.method()));
        if (standing != null && (standing.isWritten() || standing.isPulled())) {
            return withoutWork(method);
        }
        Grown whole = Grown.of(
                world,
                crop,
                method,
                spot.sowWeek(),
                standing,
                world.ground.classes().get(world.ground.classOf(spot.bed())).warmth());
        int until = ProspectTable.untilOf(spot.method());
        Grown grown = until == ProspectTable.TO_ITS_END ? whole : whole.until(until);
        Needs needs = new Needs(season, season.crops().get(crop), method, grown.calendar, plants, standing != null);
        boolean raised = method.start() == Method.Start.TRAY && (standing == null || standing.clock() == null);
        return new Course(
                method,
                grown.start.sowDay(),
                grown.start.groundDay(),
                raised && method.hardeningWeeks() > 0
                        ? grown.calendar.groundWeek() - method.hardeningWeeks()
                        : Prospect.NONE,
                Development.dayOrNone(grown.normal.emergence),
                method.pinched() ? Development.dayOrNone(grown.normal.pinch) : Prospect.NONE,
                Development.dayOrNone(grown.normal.firstCut),
                needs.tasks().stream()
                        .filter(task -> task.week() >= season.firstWeek())
                        .toList(),
                needs.costs());
    }

    private static Course withoutWork(Method method) {
        return new Course(
                method,
                Prospect.NONE,
                Prospect.NONE,
                Prospect.NONE,
                Prospect.NONE,
                Prospect.NONE,
                Prospect.NONE,
                List.of(),
                List.of());
    }
}
