package bedwright.plan;

import bedwright.climate.PossibleSeason;
import bedwright.growth.Courses;
import bedwright.growth.Late;
import bedwright.growth.Prospect;
import bedwright.growth.ProspectTable;
import bedwright.growth.Spot;
import bedwright.season.Job;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What it would cost to begin plantings of a plan a week later, or not at all, or to leave jobs on them for a week: each is
 * really tried, all else staying as planned, and what it changes is told by the difference of the plan's own score.
 *
 * <p>Not for use by several threads at once.
 */
public final class Delays {
    private final PlanFacts facts;
    private final SeasonScore score;

    private Delays(PlanFacts facts, int[] places) {
        this.facts = facts;
        this.score = new SeasonScore(facts);
        int[] all = places.clone();
        for (int p = 0; p < all.length; p++) {
            all[p] = facts.isFixed(p) ? facts.fixedPlace[p] : all[p];
        }
        score.settleAll(all);
    }

    /**
     * Measures from a plan.
     *
     * @param places where each planting is, by its number in the facts; −1 where it is left out
     */
    public static Delays of(PlanFacts facts, int[] places) {
        return new Delays(facts, places);
    }

    /**
     * Facts of a plan and of all that can be asked about it here.
     *
     * @param week the week that is asked about, or −1 for all
     * @throws IllegalArgumentException if the season has no such pool, crop, bed or method: the message says which
     */
    public static PlanFacts facts(Season season, List<PossibleSeason> seasons, List<KeptPlanting> plan, int week) {
        return PlanFacts.ofPlan(season, seasons, plan, spots(season, plan), late(season, plan, week));
    }

    /** All that can be left for a week, as {@link #left} is asked about it. */
    private static List<Late> late(Season season, List<KeptPlanting> plan, int week) {
        Courses courses = Courses.of(season);
        List<Late> late = new ArrayList<>();
        for (KeptPlanting planting : plan) {
            Spot spot = Outcomes.spot(season, planting);
            Map<Integer, Set<Job>> byWeek = new TreeMap<>();
            for (Prospect.Task task : courses.course(spot).tasks()) {
                if (week < 0 || task.week() == week) {
                    byWeek.computeIfAbsent(task.week(), w -> EnumSet.noneOf(Job.class))
                            .add(task.job());
                }
            }
            byWeek.values().forEach(jobs -> alone(jobs).forEach(some -> late.add(new Late(spot, some))));
        }
        return late;
    }

    /**
     * Which jobs of a planting's week are tried as left: those that come with its start each by itself, else all that can
     * be together; those that come with clearing not at all, since the bed is needed.
     */
    public static List<Set<Job>> alone(Set<Job> jobs) {
        Set<Job> some = EnumSet.noneOf(Job.class);
        jobs.stream().filter(Late.JOBS::contains).forEach(some::add);
        if (some.isEmpty() || jobs.contains(Job.CLEAR)) {
            return List.of();
        }
        return jobs.stream().anyMatch(STARTS::contains)
                ? some.stream().map(Set::of).toList()
                : List.of(some);
    }

    /** Jobs with which a planting begins. */
    public static final Set<Job> STARTS = Set.copyOf(EnumSet.of(Job.SOW, Job.FILL_TRAYS, Job.PLANT_OUT));

    /** The spots of all later weeks that plantings of a plan may be asked about. */
    private static List<Spot> spots(Season season, List<KeptPlanting> plan) {
        List<Spot> spots = new ArrayList<>();
        for (KeptPlanting planting : plan) {
            Spot spot = Outcomes.spot(season, planting);
            if (spot.stock() < season.pool().size()) {
                for (int w = Math.max(0, spot.sowWeek() + 1); w < season.weeks(); w++) {
                    spots.add(new Spot(spot.stock(), spot.bed(), w, spot.method()));
                }
            }
        }
        return spots;
    }

    /**
     * What a delay costs.
     *
     * @param grains money lost in the mean of the seasons, caution included, in grains; below 0 where it gains
     * @param mustStems stems more that must be ours and are missing, × their weight, in the mean of the seasons
     * @param isLeftOut whether it means that they are left out, since no later week will do
     * @param stopped the hard rule that a week later would break, or null; what is then told of a start is what is lost
     *     without it, of other jobs what it costs all the same
     */
    public record Delay(
            double grains,
            double mustStems,
            boolean isLeftOut,
            @Nullable Rule stopped) {}

    /** Begins plantings of the plan a week later; where one can't be, they are all left out. */
    public Delay later(List<KeptPlanting> plantings) {
        List<Integer> lots = new ArrayList<>();
        List<Integer> to = new ArrayList<>();
        boolean isOffered = true;
        for (KeptPlanting planting : plantings) {
            Spot spot = Outcomes.spot(facts.season(), planting);
            int next = next(spot, spot.sowWeek() + 1);
            for (int lot : lots(planting, spot)) {
                isOffered &= next >= 0 && (!facts.isFixed(lot) || facts.isHeld(lot));
                lots.add(lot);
                to.add(next);
            }
        }
        if (!isOffered) {
            return leftOut(lots, null);
        }
        for (int i = 0; i < lots.size(); i++) {
            score.put(lots.get(i), to.get(i));
        }
        Rule stopped = stopped(score.ask());
        Delay delay = told(false, stopped);
        score.forget();
        return stopped == null ? delay : leftOut(lots, stopped);
    }

    /**
     * Does some jobs on a planting a week later, all together; all else stays as planned, its bed and its last week, too.
     *
     * @param jobs some that {@link #alone} names for a week that the facts were made for
     */
    public Delay left(KeptPlanting planting, Set<Job> jobs) {
        Spot spot = Outcomes.spot(facts.season(), planting);
        int place = facts.table().find(new Late(spot, jobs));
        if (place < 0) {
            throw new IllegalArgumentException("Planting " + planting.number() + " was not tried without " + jobs);
        }
        lots(planting, spot).forEach(lot -> score.put(lot, place));
        Delay delay = told(false, stopped(score.ask()));
        score.forget();
        return delay;
    }

    /** Leaves plantings of the plan out. */
    public Delay leftOut(List<KeptPlanting> plantings) {
        List<Integer> lots = new ArrayList<>();
        plantings.forEach(planting -> lots.addAll(lots(planting, Outcomes.spot(facts.season(), planting))));
        return leftOut(lots, null);
    }

    /** The first hard rule that what was asked about breaks, if the plan is the worse for it. */
    private @Nullable Rule stopped(Answer answer) {
        if (score.hardAfter() >= score.hard()) {
            return null;
        }
        for (Rule rule : Rule.values()) {
            if (rule.level() == Rule.Level.HARD && answer.cost(rule) > 0) {
                return rule;
            }
        }
        return null;
    }

    private Delay leftOut(List<Integer> lots, @Nullable Rule stopped) {
        lots.forEach(lot -> score.put(lot, SeasonScore.NOWHERE));
        score.ask();
        Delay delay = told(true, stopped);
        score.forget();
        return delay;
    }

    private Delay told(boolean isLeftOut, @Nullable Rule stopped) {
        double seasons = facts.seasonCount;
        return new Delay(
                (score.soft() - score.softAfter()) / seasons,
                (score.medium() - score.mediumAfter()) / seasons / 100,
                isLeftOut,
                stopped);
    }

    /**
     * The last sow week, each from the planting's own on being offered in its bed and by its method, that still gives
     * stems; its own where none later does.
     */
    public int lastWeek(KeptPlanting planting) {
        Spot spot = Outcomes.spot(facts.season(), planting);
        int last = spot.sowWeek();
        while (next(spot, last + 1) >= 0) {
            last++;
        }
        return last;
    }

    private int next(Spot spot, int week) {
        ProspectTable table = facts.table();
        int place = table.find(spot.stock(), spot.bed(), week, spot.method());
        if (place < 0 || table.blocks(table.row(place)) == 0) {
            return -1;
        }
        return place;
    }

    private List<Integer> lots(KeptPlanting planting, Spot spot) {
        int place = facts.table().find(spot.stock(), spot.bed(), spot.sowWeek(), spot.method());
        List<Integer> lots = new ArrayList<>();
        for (int p = facts.firstPlanting(spot.stock()); p < facts.firstPlanting(spot.stock() + 1); p++) {
            if (score.place(p) == place && place >= 0 && facts.changes.isLotOf(p, planting)) {
                lots.add(p);
            }
        }
        if (lots.size() != planting.lots()) {
            throw new IllegalArgumentException("Planting " + planting.number() + " is not in this plan");
        }
        return lots;
    }
}
