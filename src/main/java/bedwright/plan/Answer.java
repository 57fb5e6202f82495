package bedwright.plan;

import java.util.Arrays;

/**
 * What a set of changes would cost, by rule, and what each possible season would bring. Filled by the ledgers; one is
 * kept for each score and used again, so nothing is made in the inner loop.
 *
 * <p>Costs are positive: hard ones in 1/100,000 of a minute, mm·week, cell or cm; medium ones in hundredths of stems ×
 * weight; money in grains, for each season where it is the same in all, summed over the seasons where it is not.
 */
final class Answer {
    private static final Rule[] RULES = Rule.values();

    private final long[] cost = new long[RULES.length];
    /** Change of each season's money, whole grains, without what is the same in all. */
    final double[] money;

    Answer(int seasons) {
        money = new double[seasons];
    }

    void clear() {
        Arrays.fill(cost, 0);
        Arrays.fill(money, 0);
    }

    void add(Rule rule, long more) {
        cost[rule.ordinal()] += more;
    }

    /** Cost of a rule. */
    long cost(Rule rule) {
        return cost[rule.ordinal()];
    }

    /** Cost of the hard rules together. */
    long hard() {
        return cost(Rule.BED_ROOM)
                + cost(Rule.HOURS)
                + cost(Rule.CUTTING_HOURS)
                + cost(Rule.BENCH_ROOM)
                + cost(Rule.STOCK_ROOM);
    }

    long medium() {
        return cost(Rule.MUST_BE_OURS);
    }

    /** What costs the same in every season, grains. */
    long everySeason() {
        return cost(Rule.MATERIAL)
                + cost(Rule.EXTRA_STOCK)
                + cost(Rule.REST_YEARS)
                + cost(Rule.FOLLOW_ON)
                + cost(Rule.CHANGES);
    }
}
