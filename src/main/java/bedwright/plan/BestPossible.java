package bedwright.plan;

import bedwright.season.Plan;
import bedwright.season.PriceList;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What no plan of a season goes beyond, as it follows from prices that can be read in a file, and how close a plan comes
 * to it.
 *
 * <p>Plans that break no hard rule are meant, and that miss no more weighted stems that must be ours than the one
 * compared. The gap is (bound − plan) / (bound − nothing planted), in money with caution: the share that the plan lacks
 * of what planting can bring at best.
 */
public final class BestPossible {
    private final PlanFacts facts;
    private final Bound bound;

    private BestPossible(PlanFacts facts, PriceList prices, long missing) {
        this.facts = facts;
        this.bound = new Bound(new Relaxation(facts), PriceLists.of(facts, prices), missing);
    }

    /**
     * How close a plan comes to the best possible. Nothing of it is taken on trust: the bound is worked out from the prices
     * as they would be read.
     *
     * @param score the plan's score
     * @param steps taken to find the prices
     * @param seconds limit of the search for them, if that was its limit
     * @throws IllegalArgumentException if the prices are not this season's
     */
    public static Plan.Closeness closeness(
            PlanFacts facts, Plan.Score score, PriceList prices, long steps, @Nullable Double seconds) {
        BestPossible best = new BestPossible(facts, prices, -score.medium());
        long nothing = nothingPlanted(facts);
        long bound = (long) Math.ceil(best.bound.value());
        Double within = within(score, bound, nothing, facts.seasonCount);
        return new Plan.Closeness(within, bound, nothing, steps, seconds, best.worths());
    }

    /** What the season is worth with nothing planted: grains, summed over the possible seasons as the soft score is. */
    public static long nothingPlanted(PlanFacts facts) {
        return Search.Found.of(facts, Search.nothingPlaced(facts)).soft();
    }

    /**
     * Within how much of the best possible a plan lies, in per cent as {@link Plan.Closeness#within} has it, at a bound
     * found so far.
     *
     * @param bound grains, summed over the possible seasons as the soft score is
     * @param nothing as {@link #nothingPlanted} has it
     */
    public static @Nullable Double within(PlanFacts facts, Plan.Score score, double bound, long nothing) {
        return within(score, (long) Math.ceil(bound), nothing, facts.seasonCount);
    }

    /** Per cent of what planting can bring, rounded up to a tenth; null where nothing can be claimed. */
    private static @Nullable Double within(Plan.Score plan, long bound, long nothing, int seasons) {
        double lacking = (double) bound - plan.soft();
        double possible = (double) bound - nothing;
        if (plan.hard() != 0 || lacking < 0) {
            return null;
        }
        if (lacking <= (double) seasons * Grains.A_SMALLEST_UNIT) {
            // Not even the currency's smallest unit a season.
            return 0.0;
        }
        if (possible <= 0) {
            return null;
        }
        return new BigDecimal(100 * lacking / possible)
                .setScale(1, RoundingMode.CEILING)
                .doubleValue();
    }

    private List<Plan.Worth> worths() {
        return new Worths(facts, bound).all();
    }
}
