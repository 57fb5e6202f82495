package bedwright.plan;

import bedwright.growth.Barred;
import bedwright.growth.Barring;
import bedwright.growth.ProspectTable;
import bedwright.growth.Spot;
import bedwright.season.Held;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the grower holds in place: whether it can stand there, and what it costs in a plan. */
public final class HeldPlaces {
    private HeldPlaces() {}

    /**
     * Something held that can't be: what the season does not offer, or what breaks a hard rule beside what stands and what
     * is held before it.
     *
     * @param held it, with all lots that are held there
     * @param spot where it is to stand
     * @param barred why the season does not offer that; null if it does
     * @param broken where hard rules are broken, or further than without it
     * @param fits how many of its lots could stand there
     * @param earlier the nearest week before in which all of them could stand in that bed by that method
     * @param later the nearest week after, likewise
     * @param beds numbers of the beds in which all of them could stand in that week by that method
     * @param outcome what stands and is held, with it
     */
    public record Trouble(
            Held held,
            Spot spot,
            @Nullable Barred barred,
            List<Outcome.Broken> broken,
            int fits,
            @Nullable Integer earlier,
            @Nullable Integer later,
            List<Integer> beds,
            Outcome outcome) {
        public Trouble {
            broken = List.copyOf(broken);
            beds = List.copyOf(beds);
        }
    }

    /**
     * What it costs to hold some lots in place.
     *
     * @param held all lots that are held there
     * @param best the best that could be done with just these lots instead, really tried; null where nothing else is offered
     * @param to where they would stand then; null where they would be left out
     * @param tried places tried, leaving out among them
     */
    public record Cost(
            Held held, @Nullable Tried best, @Nullable Spot to, int tried) {
        /** What holding it there costs, grains a season as judged; less than 0 where nothing else is as good. */
        public double grains() {
            return best == null ? 0 : best.weighed();
        }
    }

    /** All that can't be held, in the order in which it is held. */
    public static List<Trouble> troubles(PlanFacts facts) {
        Season season = facts.season();
        Barring barring = Barring.of(season, facts.seasons());
        int[] places = facts.unplanted.clone();
        for (int p = 0; p < places.length; p++) {
            places[p] = facts.isHeld(p) ? SeasonScore.NOWHERE : places[p];
        }
        List<Trouble> troubles = new ArrayList<>();
        for (Held held : Held.together(season)) {
            Spot spot = PlanFacts.spot(season, held);
            if (spot == null) {
                continue;
            }
            int place = facts.placeOf(held);
            Optional<Barred> barred = place < 0 ? barring.why(spot) : Optional.empty();
            int[] lots = free(facts, places, spot.stock(), held.lots());
            Trials trials = new Trials(facts, places, true);
            int[] with = places.clone();
            for (int lot : lots) {
                with[lot] = place;
            }
            Tried tried = place < 0 ? null : trials.tried(lots, place);
            if (tried != null && !tried.isStopped()) {
                places = with;
                continue;
            }
            troubles.add(new Trouble(
                    held,
                    spot,
                    place < 0 ? barred.orElse(Barred.GIVES_NOTHING) : null,
                    tried == null ? List.of() : tried.stops(),
                    place < 0 ? 0 : fitting(trials, lots, place),
                    week(facts, trials, lots, spot, -1),
                    week(facts, trials, lots, spot, 1),
                    beds(facts, trials, lots, spot),
                    tried == null ? trials.outcome() : tried.after()));
        }
        return troubles;
    }

    /** The first lots of a stock that are nowhere yet. */
    private static int[] free(PlanFacts facts, int[] places, int stock, int count) {
        List<Integer> lots = new ArrayList<>();
        for (int p = facts.firstPlanting(stock); p < facts.firstPlanting(stock + 1) && lots.size() < count; p++) {
            if (places[p] < 0) {
                lots.add(p);
            }
        }
        return lots.stream().mapToInt(Integer::intValue).toArray();
    }

    private static int fitting(Trials trials, int[] lots, int place) {
        int count = lots.length;
        while (count > 0 && trials.gain(Arrays.copyOf(lots, count), place).hard() < 0) {
            count--;
        }
        return count;
    }

    private static @Nullable Integer week(PlanFacts facts, Trials trials, int[] lots, Spot spot, int step) {
        for (int week = spot.sowWeek() + step; week >= 0 && week < facts.weeks; week += step) {
            if (fits(facts, trials, lots, new Spot(spot.stock(), spot.bed(), week, spot.method()))) {
                return week;
            }
        }
        return null;
    }

    private static List<Integer> beds(PlanFacts facts, Trials trials, int[] lots, Spot spot) {
        List<Integer> beds = new ArrayList<>();
        for (int bed = 0; bed < facts.bench; bed++) {
            if (bed != spot.bed()
                    && fits(facts, trials, lots, new Spot(spot.stock(), bed, spot.sowWeek(), spot.method()))) {
                beds.add(bed);
            }
        }
        return beds;
    }

    private static boolean fits(PlanFacts facts, Trials trials, int[] lots, Spot spot) {
        int place = facts.table().find(spot.stock(), spot.bed(), spot.sowWeek(), spot.method());
        return lots.length > 0 && place >= 0 && trials.gain(lots, place).hard() >= 0;
    }

    /**
     * What holding costs, by what is held together: in the plan all lots that are held at one place are put at every other
     * place that the season offers them, and left out, all else staying as it is.
     */
    public static List<Cost> costs(PlanFacts facts, int[] places) {
        Trials trials = new Trials(facts, places);
        ProspectTable table = facts.table();
        List<Cost> costs = new ArrayList<>();
        for (Held held : Held.together(facts.season())) {
            int at = facts.placeOf(held);
            if (at < 0) {
                continue;
            }
            int stock = table.stock(at);
            List<Integer> same = new ArrayList<>();
            for (int p = facts.firstPlanting(stock); p < facts.firstPlanting(stock + 1); p++) {
                if (facts.fixedPlace[p] == at) {
                    same.add(p);
                }
            }
            int[] lots = same.stream().mapToInt(Integer::intValue).toArray();
            if (lots.length == 0) {
                continue;
            }
            int best = SeasonScore.NOWHERE;
            Search.Found most = trials.gain(lots, best);
            int tried = 1;
            for (int to = table.firstPlace(stock); to < table.firstPlace(stock + 1); to++) {
                if (to != at) {
                    Search.Found gain = trials.gain(lots, to);
                    tried++;
                    if (gain.isBetterThan(most)) {
                        most = gain;
                        best = to;
                    }
                }
            }
            costs.add(new Cost(held, trials.tried(lots, best), best < 0 ? null : table.spot(best), tried));
        }
        return costs;
    }
}
