package bedwright.growth;

import bedwright.season.Crop;
import bedwright.season.Job;
import bedwright.season.Method;
import bedwright.season.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A planting of one method and sow week, developed in every possible season in beds of one warmth: all of it that does
 * not depend on where its bed lies.
 */
final class Grown {
    final World world;
    final Crop crop;
    final Method method;
    final int cropIndex;
    final Start start;
    final boolean stood;
    final Noted noted;
    final Calendar calendar;
    final Development normal;
    /** By possible season. */
    final List<Development> developments;

    final List<Cutting.@Nullable Heat> heats;

    private Grown(
            World world,
            Crop crop,
            Method method,
            int cropIndex,
            Start start,
            boolean stood,
            Noted noted,
            Calendar calendar,
            Development normal,
            List<Development> developments,
            List<Cutting.@Nullable Heat> heats) {
        this.world = world;
        this.crop = crop;
        this.method = method;
        this.cropIndex = cropIndex;
        this.start = start;
        this.stood = stood;
        this.noted = noted;
        this.calendar = calendar;
        this.normal = normal;
        this.developments = developments;
        this.heats = heats;
    }

    static Grown of(
            World world, int cropIndex, Method method, int sowWeek, @Nullable Standing standing, double warmth) {
        return of(world, cropIndex, method, sowWeek, standing, warmth, false);
    }

    /** @param isPinchedLate whether it is pinched a week later than its calendar says, which stays as it is */
    private static Grown of(
            World world,
            int cropIndex,
            Method method,
            int sowWeek,
            @Nullable Standing standing,
            double warmth,
            boolean isPinchedLate) {
        Crop crop = world.season.crops().get(cropIndex);
        Start start = Start.of(world.season, crop, method, sowWeek, standing);
        Noted noted = Noted.of(world.season, standing == null ? null : standing.past());
        List<BedWeather> weather = world.weather(warmth);
        List<Development> developments = new ArrayList<>();
        List<Cutting.@Nullable Heat> heats = new ArrayList<>();
        for (int k = 0; k < world.seasons.size(); k++) {
            double factor = world.seasons.get(k).firstCutFactor()[cropIndex];
            Development development =
                    new Development(crop, method, start, noted, weather.get(k), world.climate, world.days, factor);
            developments.add(isPinchedLate ? development.pinchedAWeekLater() : development);
            heats.add(Cutting.Heat.of(crop, weather.get(k)));
        }
        BedWeather usual = weather.get(world.seasons.size());
        Development normal = new Development(crop, method, start, noted, usual, world.climate, world.days, 1);
        Calendar calendar = Calendar.of(method, start, normal, Cutting.Heat.of(crop, usual), world.weeks);
        boolean stood = standing != null && (start.groundDay() < 0);
        return new Grown(
                world,
                crop,
                method,
                cropIndex,
                start,
                stood,
                noted,
                calendar,
                isPinchedLate ? normal.pinchedAWeekLater() : normal,
                developments,
                heats);
    }

    /** A planting of which some jobs come a week late, see {@link Late}. */
    static Grown late(
            World world,
            int cropIndex,
            Method method,
            int sowWeek,
            @Nullable Standing standing,
            double warmth,
            int until,
            Set<Job> jobs) {
        boolean isPinchedLate = method.pinched() && jobs.contains(Job.PINCH);
        Grown whole = of(world, cropIndex, method, sowWeek, standing, warmth, isPinchedLate);
        Grown grown = until == ProspectTable.TO_ITS_END ? whole : whole.until(until);
        return grown.with(grown.calendar.late(jobs, world.weeks));
    }

    /** The same, pulled early: cleared in a week, its last. */
    Grown until(int week) {
        return with(calendar.until(week, method));
    }

    private Grown with(Calendar other) {
        return new Grown(world, crop, method, cropIndex, start, stood, noted, other, normal, developments, heats);
    }

    /** Share of the stems that comes in a week of a season, losses aside. */
    double shareIn(int k, int week) {
        Development development = developments.get(k);
        if (development.firstCut == Development.NEVER || week < Math.floorDiv(development.firstCut, 7)) {
            return 0;
        }
        if (calendar.lastGrace() != Development.NEVER && week > calendar.lastGrace()) {
            return 0;
        }
        Cutting.Heat heat = heats.get(k);
        if (heat != null) {
            if (heat.ends() && week > Cutting.lastWeek(method, heat, development.firstCut, world.weeks)) {
                return 0;
            }
            if (heat.pauses(week)) {
                return 0;
            }
        }
        return Cutting.shareIn(method, development.firstCut, week);
    }
}
