package bedwright.plan;

import java.util.Arrays;

/**
 * Prices of what a season has too little of, from which a {@link Bound} follows. Any that are not negative will do; good
 * ones make a close bound.
 *
 * <p>All are for the sum over the possible seasons. Those of stems and of hired hours are counted in a season's own
 * money: a season of weight 2 pays them twice.
 */
final class Prices {
    final PriceLayout layout;
    private final double[] each;

    /**
     * These prices, laid out as {@link PriceLayout} says.
     *
     * @throws IllegalArgumentException if there are too few or too many, or one is negative or no number
     */
    Prices(PlanFacts facts, double[] each) {
        this.layout = PriceLayout.of(facts);
        this.each = each.clone();
        if (each.length != layout.size()) {
            throw new IllegalArgumentException("This season has " + layout.size() + " prices, not " + each.length
                    + ": are they another season's?");
        }
        for (int i = 0; i < each.length; i++) {
            if (!(each[i] >= 0 && each[i] < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("Price " + i + " is " + each[i] + ", but has to be 0 or more");
            }
        }
    }

    /** What everything costs nothing at, all possible seasons alike. */
    static Prices none(PlanFacts facts) {
        PriceLayout layout = PriceLayout.of(facts);
        double[] each = new double[layout.size()];
        Arrays.fill(each, layout.seasons(), layout.must(), 1);
        return new Prices(facts, each);
    }

    double[] toArray() {
        return each.clone();
    }

    double at(int index) {
        return each[index];
    }

    double hour(int week) {
        return each[layout.hours() + week];
    }
}
