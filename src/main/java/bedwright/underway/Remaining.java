package bedwright.underway;

import bedwright.log.Entry;
import bedwright.log.SeasonLog;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * A season under way on a date: what each planting of the plan in force has become, and what is left of the season, as a
 * season of its own on the same weeks: what was begun stands in it with its past, what was not is still to choose from, and
 * the plan in force is what changes are counted from.
 *
 * @param season what is left of the season
 * @param states the plantings of the plan in force, by its order
 * @param gone days on which plantings were pulled or the last of them was lost, by number
 * @param undecided notes of orders that are asked for, undecided and have not lapsed
 */
public record Remaining(
        Season season, List<PlantingState> states, Map<Integer, LocalDate> gone, List<Entry> undecided) {

    public Remaining {
        states = List.copyOf(states);
        gone = Map.copyOf(gone);
        undecided = List.copyOf(undecided);
    }

    /**
     * Where a season is on a date.
     *
     * @param plan the plan in force
     * @param log what happened; notes of later days don't count
     * @param on the day it is, of the season: what is due on it is still open, what was due before it is done unless the
     *     log says otherwise
     */
    public static Remaining of(Plan plan, SeasonLog log, LocalDate on) {
        return new Begun(plan, log, on, false, false).remaining();
    }

    /** Likewise, with what is asked for and undecided held for those who asked, as if it were promised. */
    public static Remaining holding(Plan plan, SeasonLog log, LocalDate on) {
        return new Begun(plan, log, on, true, false).remaining();
    }

    /** Likewise, quicker, since nothing is worked out of what the plantings have become: without states. */
    public static Remaining brief(Plan plan, SeasonLog log, LocalDate on) {
        return new Begun(plan, log, on, true, true).remaining();
    }
}
