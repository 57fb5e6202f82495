package bedwright.plan;

import bedwright.climate.PossibleSeason;
import bedwright.growth.ProspectTable;
import bedwright.growth.Spot;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import bedwright.season.UnderWay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The plan in force in what is left of a season, as it can still be carried out. */
public final class InForce {
    private InForce() {}

    /**
     * The facts of what is left of a season with the plan in force made possible: plantings whose place is no more are left
     * out, what is in trays is planted out in the nearest week in which it still can be, and what stands longer than planned
     * is pulled when the bed is needed for what follows.
     *
     * @param remaining a season under way
     * @param seasons its possible seasons
     * @param all whether other places than those of the plan in force are to be worked out too
     */
    public static PlanFacts facts(Season remaining, List<PossibleSeason> seasons, boolean all) {
        UnderWay underWay = remaining.underWay();
        if (underWay == null) {
            throw new IllegalArgumentException("The season is not under way");
        }
        PlanFacts facts = all ? PlanFacts.of(remaining, seasons) : ofPlan(remaining, seasons, underWay);
        List<KeptPlanting> possible = underWay.inForce().stream()
                .map(kept -> Outcomes.placeOf(facts, kept) >= 0 ? kept : inAnotherWeek(facts, kept))
                .filter(Objects::nonNull)
                .toList();
        PlanFacts offered = with(facts, underWay, possible);
        Map<Integer, Integer> until = pulledInTime(offered);
        if (until.isEmpty()) {
            return offered;
        }
        List<KeptPlanting> settled = new ArrayList<>();
        for (KeptPlanting kept : possible) {
            Integer week = until.get(kept.number());
            settled.add(week == null ? kept : kept.pulledAfter(remaining.weekStart(week)));
        }
        return with(facts, underWay, settled);
    }

    private static PlanFacts ofPlan(Season remaining, List<PossibleSeason> seasons, UnderWay underWay) {
        List<Spot> more = pulled(remaining);
        more.addAll(plantedOutInAnyWeek(remaining));
        return PlanFacts.ofPlan(remaining, seasons, underWay.inForce(), more);
    }

    /**
     * What is in trays and can't be planted out any more in the week said: in the nearest week there is for the same bed and
     * method, of two the later; null if there is none.
     */
    private static @Nullable KeptPlanting inAnotherWeek(PlanFacts facts, KeptPlanting kept) {
        Season season = facts.season();
        LocalDate out = kept.out();
        if (out == null || !isInTray(season, kept)) {
            return null;
        }
        for (int weeks = 1; weeks < season.weeks(); weeks++) {
            for (LocalDate other : List.of(out.plusWeeks(weeks), out.minusWeeks(weeks))) {
                KeptPlanting then = kept.plantedOut(other);
                if (Outcomes.placeOf(facts, then) >= 0) {
                    return then;
                }
            }
        }
        return null;
    }

    private static boolean isInTray(Season season, KeptPlanting kept) {
        return kept.standing() != null
                && season.standing().get(kept.standing() - 1).isInTray();
    }

    /** All that is in trays, planted out in any week. */
    private static List<Spot> plantedOutInAnyWeek(Season remaining) {
        List<Spot> spots = new ArrayList<>();
        UnderWay underWay = remaining.underWay();
        for (KeptPlanting kept : underWay == null ? List.<KeptPlanting>of() : underWay.inForce()) {
            LocalDate out = kept.out();
            if (out != null && isInTray(remaining, kept)) {
                for (int week = remaining.firstWeek(); week < remaining.weeks(); week++) {
                    spots.add(Outcomes.spot(remaining, kept.plantedOut(remaining.weekStart(week))));
                }
            }
        }
        return spots;
    }

    /** Where the plan in force has each planting. */
    public static int[] places(PlanFacts facts) {
        return facts.changes.inForce.clone();
    }

    private static PlanFacts with(PlanFacts facts, UnderWay underWay, List<KeptPlanting> inForce) {
        return PlanFacts.of(facts.season().with(underWay.with(inForce)), facts.seasons(), facts.table());
    }

    /** All that stands, pulled in any week. */
    private static List<Spot> pulled(Season remaining) {
        List<Spot> spots = new ArrayList<>();
        UnderWay underWay = remaining.underWay();
        for (KeptPlanting kept : underWay == null ? List.<KeptPlanting>of() : underWay.inForce()) {
            if (kept.standing() != null) {
                Spot spot = Outcomes.spot(remaining, kept);
                for (int week = remaining.firstWeek(); week < remaining.weeks(); week++) {
                    spots.add(new Spot(
                            spot.stock(),
                            spot.bed(),
                            spot.sowWeek(),
                            ProspectTable.way(ProspectTable.methodOf(spot.method()), week)));
                }
            }
        }
        return spots;
    }

    /** By number, the last week of what has to go before its end because its bed is needed: of several the oldest. */
    private static Map<Integer, Integer> pulledInTime(PlanFacts facts) {
        ProspectTable table = facts.table();
        SeasonScore score = new SeasonScore(facts);
        int[] places = places(facts);
        for (int p = 0; p < places.length; p++) {
            score.settle(p, places[p]);
        }
        Map<Integer, Integer> until = new HashMap<>();
        for (int bed = 0; bed < facts.bench; bed++) {
            int week = facts.season().firstWeek();
            while (week < facts.weeks) {
                if (score.room().used(bed, week) <= facts.shelves.get(bed).holds()) {
                    week++;
                    continue;
                }
                int oldest = -1;
                int to = -1;
                for (int p = 0; p < places.length; p++) {
                    int at = score.place(p);
                    if (at < 0 || !facts.stays(p) || table.bed(at) != bed || table.heldTo(table.row(at)) <= week) {
                        continue;
                    }
                    int shorter = table.find(
                            table.stock(at), bed, table.sowWeek(at), ProspectTable.way(table.method(at), week - 1));
                    if (shorter >= 0 && (oldest < 0 || table.sowWeek(at) < table.sowWeek(score.place(oldest)))) {
                        oldest = p;
                        to = shorter;
                    }
                }
                if (oldest < 0) {
                    week++;
                    continue;
                }
                score.settle(oldest, to);
                until.put(facts.changes.number[oldest], table.until(to));
            }
        }
        return until;
    }
}
