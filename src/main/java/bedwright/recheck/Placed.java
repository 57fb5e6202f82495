package bedwright.recheck;

import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Past;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A planting at a place that the season offers: equal lots, or one standing planting.
 *
 * @param number its number in the plan
 * @param cropIndex index of its crop in the season
 * @param sowWeek week in which it is sown, set or started in trays; negative before the season. Of no meaning for a
 *     standing planting of which only a clock or its stems are known
 * @param standing the standing planting that it is; null for lots of the pool
 * @param lastWeek the week in which it is cleared, if it is pulled; {@link Facts#NEVER} if it is kept to its end
 * @param lots plantings of {@code plants} plants each
 * @param plants plants of one lot
 */
record Placed(
        int number,
        int cropIndex,
        Crop crop,
        Method method,
        Bed bed,
        int sowWeek,
        @Nullable Standing standing,
        int lastWeek,
        int lots,
        int plants) {

    /** A planting that is kept to its end. */
    Placed(
            int number,
            int cropIndex,
            Crop crop,
            Method method,
            Bed bed,
            int sowWeek,
            @Nullable Standing standing,
            int lots,
            int plants) {
        this(number, cropIndex, crop, method, bed, sowWeek, standing, Facts.NEVER, lots, plants);
    }

    /** What has happened to it so far, of what stands in a season under way. */
    @Nullable
    Past past() {
        return standing == null ? null : standing.past();
    }

    /** Day of sowing, setting or starting in trays. */
    int sowDay(Season season) {
        Past past = past();
        LocalDate sown = past == null ? null : past.sown();
        return sown == null ? 7 * sowWeek : season.dayOf(sown);
    }

    /** Day from which it is in the ground, of one that is not only known by its clock or its stems. */
    int groundDay(Season season) {
        if (method.start() != Method.Start.TRAY) {
            return sowDay(season);
        }
        Past past = past();
        LocalDate out = past == null ? null : past.out();
        return out == null ? 7 * (sowWeek + method.trayWeeks()) : season.dayOf(out);
    }

    /** The day of a date that its past tells, or {@code none}. */
    static int day(Season season, @Nullable LocalDate date, int none) {
        return date == null ? none : season.dayOf(date);
    }

    boolean isStanding() {
        return standing != null;
    }

    /** Whether its stems are written out. */
    boolean isWritten() {
        return standing != null && standing.isWritten();
    }

    Standing.@Nullable ClockReading clock() {
        return standing == null ? null : standing.clock();
    }

    /** Whether the week in which it was sown is known. */
    boolean knowsSowWeek() {
        return standing == null || standing.sown() != null || (standing.clock() == null && !standing.isWritten());
    }

    /** Whether it is raised or bought as young plants and planted out. */
    boolean isPlantedOut() {
        return method.start() == Method.Start.TRAY || method.start() == Method.Start.PLUGS;
    }

    /** Plants × distance / rows, m, not yet rounded. */
    double metres() {
        return plants * method.spacing() / method.rows();
    }

    /** Metres of bed that a lot takes, in mm. */
    long millimetres() {
        return Units.millimetres(metres());
    }
}
