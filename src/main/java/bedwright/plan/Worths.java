package bedwright.plan;

import bedwright.season.Bed;
import bedwright.season.Plan;
import bedwright.season.Plan.Worth.Thing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What one more of each thing that is scarce would add to a {@link Bound}: its price. As any prices give a bound, with one
 * more of a thing the best possible rises by no more than the price, and falls by no less with one less; at the best
 * prices that is all that can be said of it without looking for prices anew.
 *
 * <p>A bed has no prices by week of its own, but its best chain has: what the chain brings up to the end of a week less
 * what it brings up to its beginning, counted from the season's start or from its end; both are prices for which no
 * planting brings more than its weeks cost, and so is their mean, which is shown.
 */
final class Worths {
    /** A week whose worth is less than this part of the greatest is one of noise in the prices. */
    private static final double NOISE = 0.01;

    private final PlanFacts facts;
    private final Bound bound;
    private final int weeks;
    private final int seasons;

    Worths(PlanFacts facts, Bound bound) {
        this.facts = facts;
        this.bound = bound;
        this.weeks = facts.weeks;
        this.seasons = facts.seasonCount;
    }

    /** All things that are worth something in some week. */
    List<Plan.Worth> all() {
        List<Plan.Worth> all = new ArrayList<>();
        beds(all);
        double[] hours = new double[weeks];
        double[] cutting = new double[weeks];
        for (int w = 0; w < weeks; w++) {
            hours[w] = bound.hour(w) * Grains.TICKS_AN_HOUR;
            cutting[w] = bound.cutting(w) * Grains.TICKS_AN_HOUR * seasons;
        }
        add(all, Thing.HOUR, "", hours);
        add(all, Thing.CUTTING_HOUR, "", cutting);
        for (int s = facts.bench; s < facts.shelves.size(); s++) {
            Shelf shelf = facts.shelves.get(s);
            double[] each = new double[weeks];
            for (int w = 0; w < weeks; w++) {
                each[w] = bound.ofShelf(s, w) * (shelf.unit().equals("mm") ? 1000 : 1);
            }
            add(all, thing(shelf.kind()), shelf.kind() == Outcome.StockKind.NET ? shelf.name() : "", each);
        }
        return all;
    }

    private static Thing thing(Outcome.@Nullable StockKind kind) {
        return switch (kind) {
            case BENCH -> Thing.BENCH;
            case TRAYS -> Thing.TRAYS;
            case NET -> Thing.NET;
            case COVER -> Thing.COVER;
            case null -> Thing.BED;
        };
    }

    /** The beds of a block together: the mean of them. */
    private void beds(List<Plan.Worth> all) {
        Map<String, double[]> blocks = new LinkedHashMap<>();
        for (Bed bed : facts.season.allBeds()) {
            double[] sum = blocks.computeIfAbsent(bed.block().name(), name -> new double[weeks]);
            double[] each = bound.weeksOfBed(bed.index());
            for (int w = 0; w < weeks; w++) {
                sum[w] += 1000 * each[w] / bed.block().count();
            }
        }
        blocks.forEach((name, each) -> add(all, Thing.BED, name, each));
    }

    /**
     * @param grains what one more is worth by week, summed over the seasons
     */
    private void add(List<Plan.Worth> all, Thing thing, String name, double[] grains) {
        double most = 0;
        for (double one : grains) {
            most = Math.max(most, one);
        }
        List<Double> money = new ArrayList<>();
        boolean isNone = true;
        for (double one : grains) {
            double digits = facts.season.currency().smallest();
            double amount = Grains.toMoney(facts.season, one / seasons);
            double shown = one < NOISE * most ? 0 : Math.round(amount * digits) / digits;
            isNone &= shown == 0;
            money.add(shown);
        }
        if (!isNone) {
            all.add(new Plan.Worth(thing, name, money));
        }
    }
}
