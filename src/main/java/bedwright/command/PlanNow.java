package bedwright.command;

import bedwright.climate.PossibleSeasons;
import bedwright.log.Entry;
import bedwright.log.SeasonLog;
import bedwright.plan.InForce;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.UnderWay;
import bedwright.underway.Remaining;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;

/**
 * The plan that a question is asked of: as it was made, or what is left of it on a day by what was noted.
 *
 * @param plan the plan with its season
 * @param log what was noted
 * @param on the day, or null if the season is looked at as it was planned
 * @param gone days on which plantings were pulled or the last of them was lost, by number
 * @param undecided notes of orders that are asked for and held for those who asked
 */
record PlanNow(Plan plan, SeasonLog log, @Nullable LocalDate on, Map<Integer, LocalDate> gone, List<Entry> undecided) {

    /**
     * The plan in a folder. Without a day and without notes it is as it was made; with notes the day left out is today, or
     * that of the last note where today lies outside the season.
     *
     * @param said the day, or null
     */
    static PlanNow of(PlanFolder plans, @Nullable String said, CommandSpec spec) {
        Plan plan = plans.read();
        return of(plan, SofarCommand.log(plans, plan), said, spec);
    }

    /** The same of a plan and its notes that were read already. */
    static PlanNow of(Plan plan, SeasonLog log, @Nullable String said, CommandSpec spec) {
        if (said == null && log.inForce().isEmpty()) {
            return new PlanNow(plan, log, null, Map.of(), List.of());
        }
        return on(plan, log, said == null ? today(plan.season(), log) : SofarCommand.day(plan.season(), said, spec));
    }

    /** What is left of a plan on a day, by what was noted. */
    static PlanNow on(Plan plan, SeasonLog log, LocalDate day) {
        Remaining left = Remaining.brief(plan, log, day);
        // What has to be pulled in time hangs on calendars alone, so that one season is enough.
        Season season = InForce.facts(
                        left.season(), List.of(PossibleSeasons.usualWith(left.season(), List.of())), false)
                .season();
        UnderWay underWay = Objects.requireNonNull(season.underWay());
        return new PlanNow(
                new Plan(plan.version(), season, plan.making(), plan.score(), underWay.inForce()),
                log,
                day,
                left.gone(),
                left.undecided());
    }

    private static LocalDate today(Season season, SeasonLog log) {
        LocalDate today = StartDay.or(null);
        int day = season.dayOf(today);
        return day >= 0 && day < season.days()
                ? today
                : log.inForce().stream()
                        .map(Entry::on)
                        .max(LocalDate::compareTo)
                        .orElseThrow();
    }

    /** First week in which something can be started. */
    int firstOpenWeek() {
        return on == null ? 0 : Math.max(0, Math.ceilDiv(plan.season().dayOf(on), 7));
    }
}
