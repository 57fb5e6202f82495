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
    private static final Rule[] EVERY_SEASON = {
        Rule.MATERIAL, Rule.EXTRA_STOCK, Rule.REST_YEARS, Rule.FOLLOW_ON, Rule.CHANGES
    };

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
        long sum = 0;
        for (Rule rule : EVERY_SEASON) {
            sum += cost(rule);
        }
        return sum;
    }

    /** Whether a rule's cost is the same in every season, and told for one of them. */
    static boolean isEverySeason(Rule rule) {
        return Arrays.asList(EVERY_SEASON).contains(rule);
    }
}
