package bedwright.plan;

import bedwright.season.PriceList;
import java.util.Arrays;
import java.util.function.BooleanSupplier;

/**
 * Looks for prices that make a close {@link Bound}, without any solver: accelerated gradient steps (Y. Nesterov 1983, from
 * memory; never begun afresh) down a {@link SmoothBound} whose smoothing falls with every step. Each price has a scale of its
 * own ({@link PriceScales}), in coordinates in which those of stems and hours do not get in each other's way ({@link
 * PriceMoves}); all steps are shortened as soon as the slope is seen to change faster than they allow for.
 *
 * <p>What it does depends on nothing but the season and the number of steps. Of the prices looked at, the best are kept, so
 * more steps never give a worse bound.
 */
public final class PriceSearch {
    /** Smoothing to begin with, as a part of what a mm of bed brings; a quarter of it after so many steps. */
    private static final double SOFT = 0.03;

    private static final double FALLS = 250;
    private static final double POWER = 2;
    /** How much a line's surplus is bent for each part of smoothing, and at most. */
    private static final double BEND = 16;

    private static final double MOST_BEND = 0.2;
    /** How much of what the last change of the slope allows a step may take. */
    private static final double SAFE = 0.7;
    /** How much longer steps may get, one after the other, as long as the search has not gone astray. */
    private static final double GROWTH = 1.05;
    /** The prices are looked at after so many steps, at first more often. */
    private static final int LOOK = 32;
    /** From a bound worse than the best by this part it goes back to the best. */
    private static final double ASTRAY = 0.1;

    private final Relaxation relaxed;
    private final long missing;
    private final SmoothBound smooth;
    private final PriceRanges ranges;
    private final double lotValue;
    private final int[] live;
    private final PriceMoves moves;
    private final double[] moved;
    private final double[] prices;
    private final double[] at;
    private final double[] before;
    private final double[] ahead;
    private final double[] aheadBefore;
    private final double[] slopeBefore;
    private double stepLength = 0.01;
    private double growth = GROWTH;
    private double softBefore;
    private double momentum = 1;
    private long steps;
    private long lookedAt = -1;
    /** The best bound looked at, and its prices. */
    private double looked = Double.POSITIVE_INFINITY;

    private double[] lookedPrices;
    private boolean isWorkedOut;
    /** The best worked out, and its prices. */
    private double best = Double.POSITIVE_INFINITY;

    private double[] bestPrices;

    /**
     * Begins a search.
     *
     * @param missing weighted hundredths of stems that must be ours and that the plan compared with misses: its medium
     *     score without the sign
     */
    public PriceSearch(PlanFacts facts, long missing) {
        this(new Relaxation(facts), missing);
    }

    PriceSearch(Relaxation relaxed, long missing) {
        this.relaxed = relaxed;
        this.missing = missing;
        this.smooth = new SmoothBound(relaxed);
        PriceScales scales = new PriceScales(relaxed, smooth.layout);
        this.lotValue = scales.lotValue;
        this.prices = scales.start.clone();
        this.lookedPrices = prices.clone();
        this.bestPrices = prices.clone();
        int[] which = new int[prices.length];
        int count = 0;
        for (int i = 0; i < which.length; i++) {
            if (scales.scale[i] > 0) {
                which[count++] = i;
            }
        }
        this.live = Arrays.copyOf(which, count);
        this.moves = new PriceMoves(relaxed, smooth.layout, scales.scale);
        this.moved = new double[prices.length];
        this.at = new double[count];
        for (int i = 0; i < count; i++) {
            at[i] = prices[live[i]];
        }
        this.ranges = new PriceRanges(relaxed, smooth.layout, live);
        ranges.keep(at);
        this.before = at.clone();
        this.ahead = at.clone();
        this.aheadBefore = at.clone();
        this.softBefore = soft();
        this.slopeBefore = new double[count];
    }

    /**
     * Takes steps.
     *
     * @param limit how many, those of earlier runs included
     * @param stop asked now and then: whether to end before that; there is always a bound, if only of the first prices
     */
    public void run(long limit, BooleanSupplier stop) {
        while (true) {
            if (isLook() && lookedAt != steps) {
                if (steps > 0 && stop.getAsBoolean()) {
                    return;
                }
                look();
            }
            if (steps >= limit) {
                return;
            }
            step();
            steps++;
        }
    }

    private boolean isLook() {
        long every = steps < 64 ? 8 : steps < 256 ? 16 : LOOK;
        return steps % every == 0;
    }

    private double soft() {
        return SOFT * lotValue / Math.pow(1 + steps / FALLS, POWER);
    }

    private double bend(double soft) {
        return Math.min(MOST_BEND, BEND * soft / lotValue);
    }

    private void look() {
        lookedAt = steps;
        spread(at);
        double bound = smooth.look(prices, soft(), missing);
        if (bound < looked) {
            looked = bound;
            lookedPrices = prices.clone();
            isWorkedOut = false;
        } else if (bound > looked + ASTRAY * Math.abs(looked)) {
            for (int i = 0; i < live.length; i++) {
                at[i] = lookedPrices[live[i]];
                ahead[i] = at[i];
            }
            momentum = 1;
            stepLength /= 4;
            // Or the steps would be as long again at the next look.
            growth = Math.sqrt(growth);
        }
    }

    private void spread(double[] some) {
        for (int i = 0; i < live.length; i++) {
            prices[live[i]] = some[i];
        }
    }

    private void step() {
        spread(ahead);
        double soft = soft();
        smooth.at(prices, soft, bend(soft), missing);
        double[] change = smooth.change();
        double bends = 0;
        for (int i = 0; i < live.length; i++) {
            ahead[i] = prices[live[i]];
            double slope = change[live[i]];
            moved[live[i]] = ahead[i] - aheadBefore[i];
            bends += moved[live[i]] * (slope - slopeBefore[i]);
            slopeBefore[i] = slope;
            aheadBefore[i] = ahead[i];
        }
        moves.at(prices, change);
        double far = moves.lengthSquared(moved);
        // How far a step may go is in proportion to the smoothing.
        stepLength *= growth * soft / softBefore;
        softBefore = soft;
        if (far > 0 && stepLength * bends > SAFE * far) {
            stepLength = SAFE * far / bends;
        }
        moves.down(prices, change, stepLength, moved);
        for (int i = 0; i < live.length; i++) {
            before[i] = at[i];
            at[i] = ahead[i] + moved[live[i]];
        }
        Arrays.fill(moved, 0);
        ranges.keep(at);
        double next = (1 + Math.sqrt(1 + 4 * momentum * momentum)) / 2;
        double push = (momentum - 1) / next;
        momentum = next;
        for (int i = 0; i < live.length; i++) {
            ahead[i] = at[i] + push * (at[i] - before[i]);
        }
        ranges.keep(ahead);
    }

    /** The best bound so far, as {@link #best} but for the last digits, and without working it out. */
    public double nearly() {
        return looked;
    }

    /** The best bound so far: grains, summed over the possible seasons as the soft score is. */
    public double best() {
        if (!isWorkedOut) {
            isWorkedOut = true;
            double exact = Bound.of(relaxed, new Prices(relaxed.facts, lookedPrices), missing);
            if (exact < best) {
                best = exact;
                bestPrices = lookedPrices;
            }
        }
        return best;
    }

    /** The prices that it follows from. */
    Prices bestPrices() {
        return best() < Double.POSITIVE_INFINITY
                ? new Prices(relaxed.facts, bestPrices)
                : new Prices(relaxed.facts, lookedPrices);
    }

    /** The same as they are kept in a file, to six digits: what follows from those may differ from {@link #best} a little. */
    public PriceList kept() {
        return PriceLists.kept(relaxed.facts, bestPrices());
    }

    /** Steps taken so far. */
    public long steps() {
        return steps;
    }

    /**
     * Parts of lots by place that answer the best prices with the smoothing of now: nearly a solution of what the bound
     * relaxes, the more nearly the more steps were taken.
     */
    double[] lots() {
        double[] at = bestPrices().toArray();
        smooth.look(at, soft(), missing);
        smooth.at(at, soft(), bend(soft()), missing);
        return smooth.lots().clone();
    }
}
