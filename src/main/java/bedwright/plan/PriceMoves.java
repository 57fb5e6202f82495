package bedwright.plan;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Which way prices move down a slope: not each by itself, but so that what should stand still does.
 *
 * <p>At good prices most stems are worth just what one of the lines that ask for them gains: there the bound has a kink. What
 * a stem is worth is the sum of the {@code asked} prices of its kind and of those above it, less {@code most}, and beside
 * that stands the work of cutting it. Were each price moved by itself, one more for the hours of a week would push thousands of
 * stems off their kinks, in every kind and season, and the search would creep along. So the slope is taken in other
 * coordinates: for each kind what a stem costs its buyer, cutting included, instead of {@code asked}; and for a limited kind
 * what a stem is worth to its grower instead of {@code most}. If an hour gets dearer, stems get cheaper by as much, and
 * lines gain what they did. A price that is 0, and that the slope would have below, is tied: what lies within a tied kind
 * moves with the kind above.
 *
 * <p>This is a change of scale only, another one at each step; any prices make a bound.
 */
final class PriceMoves {
    /** The least weight of a season that prices by season are divided by. */
    private static final double LEAST_WEIGHT = 0.1;

    private final Relaxation relaxed;
    private final PlanFacts facts;
    private final PriceLayout layout;
    private final int weeks;
    private final int seasons;
    /** How far prices of each kind move at a time; 0 for such as stay as they are. */
    private final double[] scale;

    private final boolean[] isFree;
    private final double[] weight;
    private final double[] lengths;
    private final Week[] each;

    PriceMoves(Relaxation relaxed, PriceLayout layout, double[] scale) {
        this.relaxed = relaxed;
        this.facts = relaxed.facts;
        this.layout = layout;
        this.weeks = facts.weeks;
        this.seasons = facts.seasonCount;
        this.scale = scale;
        this.isFree = new boolean[layout.hired()];
        this.weight = new double[seasons];
        this.lengths = new double[weeks];
        this.each = new Week[weeks];
        Arrays.setAll(each, Week::new);
    }

    /** Takes prices and the slope there: which of them are tied. */
    void at(double[] prices, double[] slope) {
        for (int k = 0; k < seasons; k++) {
            weight[k] = Math.max(prices[layout.seasons() + k], LEAST_WEIGHT);
        }
        for (int i = 0; i < isFree.length; i++) {
            isFree[i] = scale[i] > 0 && (prices[i] > 0 || slope[i] < 0);
        }
    }

    /**
     * A step down the slope from the prices that {@link #at} was given. Those of hours and stems stay within what each may
     * be; for the others see {@link PriceRanges}.
     *
     * @param length of the step
     * @param moved set to how far each price moves
     */
    void down(double[] prices, double[] slope, double length, double[] moved) {
        for (int i = layout.shelves(); i < layout.size(); i++) {
            moved[i] = -length * scale[i] * slope[i];
        }
        IntStream.range(0, weeks).parallel().forEach(week -> each[week].down(prices, slope, length, moved));
    }

    /** How long a move is, squared, as steps count it. */
    double lengthSquared(double[] moved) {
        IntStream.range(0, weeks).parallel().forEach(week -> lengths[week] = each[week].lengthSquared(moved));
        double sum = 0;
        for (double length : lengths) {
            sum += length;
        }
        for (int i = layout.shelves(); i < layout.size(); i++) {
            sum += squared(moved[i], i);
        }
        return sum;
    }

    private double squared(double move, int price) {
        return scale[price] > 0 ? move * move / scale[price] : 0;
    }

    /** From where a kind's {@code asked} price stands to its {@code most}. */
    private int toMost() {
        return layout.most() - layout.asked();
    }

    /** The kinds of a filling whose prices move in a week, those above others first. */
    private final class Kinds {
        private final Filling filling;
        /** Where the kind's {@code asked} prices begin. */
        private final int[] asked;
        /** The nearest kind above that is here, by its number here; -1 for none. */
        private final int[] above;
        /** What the buyer's and the grower's price of a kind move by, or weigh in the slope: kind × K + season. */
        private final double[] buyers;

        private final double[] growers;

        Kinds(Filling filling, int week) {
            this.filling = filling;
            int[] starts = new int[filling.nodes];
            int[] parents = new int[filling.nodes];
            int[] here = new int[filling.nodes];
            int count = 0;
            for (int n = 0; n < filling.nodes; n++) {
                int parent = filling.parent[n] < 0 ? -1 : here[filling.parent[n]];
                int start = layout.asked() + ((filling.firstNode + n) * weeks + week) * seasons;
                boolean isMoved = false;
                for (int k = 0; k < seasons; k++) {
                    isMoved |= scale[start + k] > 0 || scale[start + k + toMost()] > 0;
                }
                if (isMoved) {
                    starts[count] = start;
                    parents[count] = parent;
                    parent = count++;
                }
                here[n] = parent;
            }
            this.asked = Arrays.copyOf(starts, count);
            this.above = Arrays.copyOf(parents, count);
            this.buyers = new double[count * seasons];
            this.growers = new double[count * seasons];
        }

        /** What a tick of work more makes a stem's cutting dearer, over what it does without being cut. */
        private double rate() {
            return filling.cutRate - filling.clearRate;
        }

        /**
         * The slope in the other coordinates, kept in {@code moved} until the step.
         *
         * @param work set to the slope of the work of cutting, by season
         */
        void slopes(double[] slope, double[] moved, double[] work) {
            Arrays.fill(buyers, 0);
            Arrays.fill(growers, 0);
            Arrays.fill(work, 0);
            for (int n = asked.length - 1; n >= 0; n--) {
                for (int k = 0; k < seasons; k++) {
                    int price = asked[n] + k;
                    int most = price + toMost();
                    double grower = growers[n * seasons + k];
                    if (isFree[most]) {
                        moved[most] = slope[most] - grower;
                        grower = slope[most];
                    }
                    double buyer = buyers[n * seasons + k];
                    if (isFree[price]) {
                        moved[price] = slope[price] + grower + buyer;
                        buyer = -slope[price] - grower;
                    }
                    if (above[n] < 0) {
                        work[k] += buyer;
                    } else {
                        buyers[above[n] * seasons + k] += buyer;
                        growers[above[n] * seasons + k] += grower;
                    }
                }
            }
        }

        /** @param work how much dearer cutting a stem gets, by season */
        void move(double[] prices, double length, double[] moved, double[] work) {
            for (int n = 0; n < asked.length; n++) {
                for (int k = 0; k < seasons; k++) {
                    int price = asked[n] + k;
                    int most = price + toMost();
                    double buyer = above[n] < 0 ? work[k] : buyers[above[n] * seasons + k];
                    double grower = above[n] < 0 ? 0 : growers[above[n] * seasons + k];
                    double more = 0;
                    if (isFree[price]) {
                        more = Math.max(-length * scale[price] * moved[price] - buyer, -prices[price]);
                    }
                    double less = 0;
                    if (isFree[most]) {
                        less = Math.max(grower + more - length * scale[most] * moved[most], -prices[most]);
                    }
                    moved[price] = more;
                    moved[most] = less;
                    buyers[n * seasons + k] = buyer + more;
                    growers[n * seasons + k] = grower + more - less;
                }
            }
        }

        /** @param work how much dearer cutting a stem got, by season */
        double lengthSquared(double[] moved, double[] work) {
            double sum = 0;
            for (int n = 0; n < asked.length; n++) {
                for (int k = 0; k < seasons; k++) {
                    int price = asked[n] + k;
                    int most = price + toMost();
                    double buyer = moved[price] + (above[n] < 0 ? work[k] : buyers[above[n] * seasons + k]);
                    double grower = moved[price] - moved[most] + (above[n] < 0 ? 0 : growers[above[n] * seasons + k]);
                    buyers[n * seasons + k] = buyer;
                    growers[n * seasons + k] = grower;
                    sum += squared(isFree[price] ? buyer : moved[price], price);
                    sum += squared(isFree[most] ? grower : moved[most], most);
                }
            }
            return sum;
        }
    }

    /** The prices of a week's hours and stems. */
    private final class Week {
        private final int week;
        private final Kinds[] kinds;
        private final double[] hired = new double[seasons];
        private double hours;
        private double cutting;
        private final double[] work = new double[seasons];

        Week(int week) {
            this.week = week;
            this.kinds = new Kinds[facts.fillings.length];
            Arrays.setAll(kinds, role -> new Kinds(facts.fillings[role], week));
        }

        void down(double[] prices, double[] slope, double length, double[] moved) {
            Arrays.fill(hired, 0);
            hours = 0;
            cutting = 0;
            for (Kinds some : kinds) {
                some.slopes(slope, moved, work);
                for (int k = 0; k < seasons; k++) {
                    hired[k] += some.rate() * work[k];
                    hours += some.rate() * work[k] / weight[k];
                    cutting += some.filling.cutRate * work[k] / weight[k];
                }
            }
            hours(prices, slope, length, moved);
            for (Kinds some : kinds) {
                work(some);
                some.move(prices, length, moved, work);
            }
        }

        /** Moves the prices of the week's hours, and leaves here how far. */
        private void hours(double[] prices, double[] slope, double length, double[] moved) {
            for (int k = 0; k < seasons; k++) {
                int at = layout.hired() + week * seasons + k;
                hired[k] = kept(prices[at], -length * scale[at] * (slope[at] + hired[k]), relaxed.extraPay(week));
                moved[at] = hired[k];
            }
            int at = layout.hours() + week;
            hours = kept(prices[at], -length * scale[at] * (slope[at] + hours), Double.POSITIVE_INFINITY);
            moved[at] = hours;
            at = layout.cutting() + week;
            cutting = kept(prices[at], -length * scale[at] * (slope[at] + cutting), Double.POSITIVE_INFINITY);
            moved[at] = cutting;
        }

        private static double kept(double price, double by, double most) {
            return Math.min(Math.max(price + by, 0), most) - price;
        }

        /** How much dearer the moves of the hours make cutting a stem. */
        private void work(Kinds some) {
            for (int k = 0; k < seasons; k++) {
                work[k] = some.rate() * (hired[k] + hours / weight[k]) + some.filling.cutRate * cutting / weight[k];
            }
        }

        double lengthSquared(double[] moved) {
            double sum = 0;
            for (int k = 0; k < seasons; k++) {
                int at = layout.hired() + week * seasons + k;
                hired[k] = moved[at];
                sum += squared(moved[at], at);
            }
            hours = moved[layout.hours() + week];
            cutting = moved[layout.cutting() + week];
            sum += squared(hours, layout.hours() + week) + squared(cutting, layout.cutting() + week);
            for (Kinds some : kinds) {
                work(some);
                sum += some.lengthSquared(moved, work);
            }
            return sum;
        }
    }
}
