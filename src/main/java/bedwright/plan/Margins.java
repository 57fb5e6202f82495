package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What a little more or less of everything brings beside a plan: stems of each kind, work and set-up, in money, as
 * caution weighs the seasons. Follows the score whose plan it is said of, anew only where that was changed.
 */
final class Margins {
    /** Grains for a weighted hundredth that must be ours: more than any money, so that none is given for it. */
    private static final double MUST = 1e9;

    private final PlanFacts facts;
    private final Figures figures;
    private final SeasonScore score;
    private final int weeks;
    private final int seasons;
    /** Grains a hundredth of a kind told apart: (kind × weeks + week) × K + season. */
    private final float[] prices;
    /** The same where money alone is at stake, and as it can be looked up quicker. */
    private final WholePrices whole;

    private boolean isWhole;
    /** Grains a tick of work: week × K + season. */
    private final double[] rates;
    /** Grains for a tick of work in every season: by week. */
    private final double[] work;

    private final float[] money;
    /** The kinds told apart that any place gives, by role: only they need a price. */
    private final int[][] given;

    private double[] weights;
    private final boolean[] isNewRate;
    /** What places bring, and what their set-up costs, as far as it was asked for since the last change. */
    private final Known worths;

    private final Known setUps;
    /** The score's when it was last followed. */
    private long version;

    /** A figure a place, each with the version of the plan that it is of. */
    private static final class Known {
        final double[] figures;
        private final long[] at;

        Known(int places) {
            figures = new double[places];
            at = new long[places];
            Arrays.fill(at, -1);
        }

        /** Whether a place's figure has to be worked out for that version; from then on it is taken to be there. */
        boolean isMissing(int place, long version) {
            boolean isMissing = at[place] != version;
            at[place] = version;
            return isMissing;
        }
    }

    Margins(PlanFacts facts, SeasonScore score) {
        this.facts = facts;
        this.figures = facts.figures;
        this.score = score;
        this.weeks = facts.weeks;
        this.seasons = facts.seasonCount;
        this.prices = new float[weeks * facts.cells.size() * seasons];
        this.whole = new WholePrices(facts);
        this.rates = new double[weeks * seasons];
        this.work = new double[weeks];
        this.money = new float[seasons];
        this.given = given(facts);
        this.weights = score.weights();
        this.isNewRate = new boolean[weeks];
        this.worths = new Known(facts.table().places());
        this.setUps = new Known(facts.table().places());
        follow(true);
    }

    private static int[][] given(PlanFacts facts) {
        boolean[] isGiven = new boolean[facts.cells.size()];
        ProspectTable table = facts.table;
        for (int row = 0; row < table.rows(); row++) {
            for (int b = 0; b < table.blocks(row); b++) {
                isGiven[facts.cells.of(table.blockNode(row, b))] = true;
            }
        }
        return Arrays.stream(facts.fillings)
                .map(filling -> IntStream.range(0, filling.nodes)
                        .filter(n -> isGiven[filling.firstNode + n])
                        .toArray())
                .toArray(int[][]::new);
    }

    SeasonScore score() {
        return score;
    }

    /** Takes over what was changed for good in the score, if anything was. */
    void follow() {
        if (version != score.version()) {
            follow(false);
        }
    }

    private void follow(boolean all) {
        double[] before = weights;
        weights = score.weights();
        boolean areNew = !Arrays.equals(before, weights);
        for (int w = 0; w < weeks; w++) {
            isNewRate[w] = all;
            if (all || score.hours().isNew(w)) {
                rate(w);
            }
            if (all || areNew || isNewRate[w]) {
                work[w] = weighed(w);
            }
        }
        if (all || areNew) {
            whole.weigh(weights);
        }
        for (Filling filling : facts.fillings) {
            price(filling, all);
        }
        if (!all && areNew) {
            for (Filling filling : facts.fillings) {
                makeWhole(filling, 0, weeks);
            }
        }
        score.stems().forgetNew();
        score.hours().forgetNew();
        version = score.version();
        // What must be ours has no price that whole numbers reach.
        isWhole = whole.areFine() && score.medium() == 0;
    }

    private void rate(int week) {
        for (int k = 0; k < seasons; k++) {
            double rate = score.hours().rate(week, k);
            isNewRate[week] |= rate != rates[week * seasons + k];
            rates[week * seasons + k] = rate;
        }
    }

    private double weighed(int week) {
        double sum = 0;
        for (int k = 0; k < seasons; k++) {
            sum += weights[k] * rates[week * seasons + k];
        }
        return sum;
    }

    /** Prices the runs of weeks in which a role's stems or its work are not what they were. */
    private void price(Filling filling, boolean all) {
        StemLedger stems = score.stems();
        int cell = filling.role * weeks;
        int first = 0;
        for (int w = 0; w <= weeks; w++) {
            if (w == weeks || !(all || isNewRate[w] || stems.isNew(cell + w))) {
                if (first < w) {
                    stems.price(filling, first, w, rates, MUST, given[filling.role], prices);
                    makeWhole(filling, first, w);
                }
                first = w + 1;
            }
        }
    }

    private void makeWhole(Filling filling, int first, int end) {
        for (int n : given[filling.role]) {
            whole.set(prices, ((filling.firstNode + n) * weeks + first) * seasons, (end - first) * seasons);
        }
    }

    /**
     * What a planting at a place gives less what it takes, grains summed over the seasons as they are weighed; set-up not counted.
     * Looked up where it is known: what stands is asked for again and again, and so is what a move is put together around.
     */
    double of(int place) {
        if (worths.isMissing(place, version)) {
            worths.figures[place] = worth(place);
        }
        return worths.figures[place];
    }

    private double worth(int place) {
        int[] of = figures.of(place);
        int start = figures.start(place);
        double every = figures.material(place) + (facts.restBroken[place] ? facts.restPrice : 0);
        int runs = Figures.runs(of, start);
        int count = of[start + Figures.RUNS];
        return (isWhole ? whole.stems(place, of, runs, count) : stems(of, runs, count))
                - minutes(of, start, Figures.work(start))
                - seasons * every;
    }

    private double stems(int[] of, int runs, int count) {
        Arrays.fill(money, 0);
        int from = runs + count * Figures.A_RUN;
        for (int r = 0, at = runs; r < count; r++, at += Figures.A_RUN) {
            int price = of[at] * seasons;
            for (int w = 0; w < of[at + 2]; w++) {
                earn(money, prices, price, of, from);
                price += seasons;
                from += seasons;
            }
        }
        double sum = 0;
        for (int k = 0; k < seasons; k++) {
            sum += weights[k] * money[k];
        }
        return sum;
    }

    private static void earn(float[] money, float[] prices, int at, int[] stems, int from) {
        for (int k = 0; k < money.length; k++) {
            money[k] += prices[at + k] * stems[from + k];
        }
    }

    /** What the set-up of a place's job costs, likewise. */
    double setUp(int place) {
        if (setUps.isMissing(place, version)) {
            int[] of = figures.of(place);
            int start = figures.start(place);
            setUps.figures[place] = minutes(of, start, Figures.work(start) + of[start + Figures.WORK_WEEKS]);
        }
        return setUps.figures[place];
    }

    /** What the minutes of a place that stand from {@code at} on cost, by the week. */
    private double minutes(int[] of, int start, int at) {
        int week = of[start + Figures.WORK_FROM];
        int count = of[start + Figures.WORK_WEEKS];
        // Two sums, neither of which waits for the other.
        double even = 0;
        double odd = 0;
        for (int i = 0; i + 1 < count; i += 2) {
            even += work[week + i] * of[at + i];
            odd += work[week + i + 1] * of[at + i + 1];
        }
        if (count % 2 == 1) {
            even += work[week + count - 1] * of[at + count - 1];
        }
        return Grains.TICKS_A_MINUTE * (even + odd);
    }
}
