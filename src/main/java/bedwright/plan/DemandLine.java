package bedwright.plan;

import org.jspecify.annotations.Nullable;

/**
 * Somebody who takes stems of one kind, by week: an outlet of the season file, or one line of an ordered recipe.
 *
 * @param index its number: the season's outlets first, then orders by line
 * @param name name of the outlet or order
 * @param order index of the order in the season, or −1 for a plain outlet
 * @param line index of the recipe's line, or −1 for a plain outlet
 * @param node kind it takes, a node of the season's kind tree
 * @param role role of that kind
 * @param promise what is promised
 * @param weight weight of what must be ours, else 0
 * @param price grains for each hundredth of a stem delivered (for a bought-in promise: of a stem asked for)
 * @param lack grains for each hundredth of a stem missing: buy-in or shortage price, else 0
 * @param asked hundredths of stems by week
 * @param event whether it belongs to an event
 */
public record DemandLine(
        int index,
        String name,
        int order,
        int line,
        int node,
        int role,
        Promised promise,
        int weight,
        long price,
        long lack,
        long[] asked,
        boolean event) {

    /** What is promised to an outlet. */
    public enum Promised {
        /** Nothing: it takes what is left. */
        NOTHING,
        /** The stems must be ours. */
        MUST_BE_OURS,
        /** Missing stems are bought in. */
        BOUGHT_IN,
        /** Missing stems cost a price. */
        SHORTAGE_PRICE
    }

    /** What it pays in a week, grains, if it gets so many hundredths of stems. */
    public long takings(int week, long got) {
        return price * (promise == Promised.BOUGHT_IN ? asked[week] : got);
    }

    /** What the stems cost that it misses in a week, grains, if it gets so many: bought in, or short. */
    public long lacking(int week, long got) {
        return lack * (asked[week] - got);
    }

    /** The name with the line's kind behind it where it is a line of an order. */
    public String label(@Nullable String kind) {
        return kind == null || order < 0 ? name : name + ": " + kind;
    }
}
