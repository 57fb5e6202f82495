package bedwright.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What prices may be: 0 at least; a hired hour's no more than what it costs beyond an own one; those of a stock that can be
 * bought no more than its price together; weights of seasons as caution has them. Prices outside are moved to the nearest
 * within.
 */
final class PriceRanges {
    private final Relaxation relaxed;
    private final double[] most;
    /** Where the prices of each stock that can be bought stand, and what they may come to. */
    private final List<int[]> bought = new ArrayList<>();

    private final List<Double> cost = new ArrayList<>();
    private final int[] seasons;

    /** @param live which prices of the layout are looked for, in this order */
    PriceRanges(Relaxation relaxed, PriceLayout layout, int[] live) {
        this.relaxed = relaxed;
        PlanFacts facts = relaxed.facts;
        this.most = new double[live.length];
        for (int i = 0; i < live.length; i++) {
            boolean isHired = live[i] >= layout.hired() && live[i] < layout.hours();
            most[i] = isHired
                    ? relaxed.extraPay((live[i] - layout.hired()) / facts.seasonCount)
                    : Double.POSITIVE_INFINITY;
        }
        for (int s = facts.bench; s < facts.shelves.size(); s++) {
            if (facts.shelves.get(s).price() > 0) {
                int from = layout.shelves() + (s - facts.bench) * facts.weeks;
                bought.add(among(live, from, from + facts.weeks));
                cost.add((double) facts.shelves.get(s).price() * facts.seasonCount);
            }
        }
        this.seasons = among(live, layout.seasons(), layout.must());
    }

    private static int[] among(int[] live, int from, int to) {
        int[] places = new int[live.length];
        int count = 0;
        for (int i = 0; i < live.length; i++) {
            if (live[i] >= from && live[i] < to) {
                places[count++] = i;
            }
        }
        return Arrays.copyOf(places, count);
    }

    /** Moves prices to the nearest within their ranges. */
    void keep(double[] prices) {
        for (int i = 0; i < prices.length; i++) {
            prices[i] = Math.min(Math.max(prices[i], 0), most[i]);
        }
        for (int s = 0; s < bought.size(); s++) {
            keepTogether(prices, bought.get(s), cost.get(s));
        }
        if (seasons.length > 0) {
            double[] weights = new double[seasons.length];
            for (int k = 0; k < weights.length; k++) {
                weights[k] = prices[seasons[k]];
            }
            weights = relaxed.weights(weights);
            for (int k = 0; k < weights.length; k++) {
                prices[seasons[k]] = weights[k];
            }
        }
    }

    /** Takes the same from all, down to 0, until they come to no more than they may together. */
    private static void keepTogether(double[] prices, int[] which, double together) {
        double sum = 0;
        double up = 0;
        for (int i : which) {
            sum += prices[i];
            up = Math.max(up, prices[i]);
        }
        if (sum <= together) {
            return;
        }
        double down = 0;
        for (int halving = 0; halving < 60; halving++) {
            double less = (down + up) / 2;
            double left = 0;
            for (int i : which) {
                left += Math.max(0, prices[i] - less);
            }
            if (left > together) {
                down = less;
            } else {
                up = less;
            }
        }
        for (int i : which) {
            prices[i] = Math.max(0, prices[i] - up);
        }
    }
}
