package bedwright.plan;

/**
 * Prices of stems in whole numbers, each season's as caution weighs it, so that what a place brings is one sum of products
 * over each of its runs and not a sum for each season, in loops as short as there are seasons. What is lost by rounding
 * prices and stems ({@link Figures#parts}) is one part in some hundreds of what a planting brings: a small part of the
 * temperature of a search wherever that still accepts losses.
 */
final class WholePrices {
    /** A dearest price of fewer units would be too coarse. */
    private static final int FEWEST_UNITS = 1000;

    private static final int MOST_UNITS = 1 << 14;

    private final Figures figures;
    private final int seasons;
    private final int[] prices;
    /** The dearest price, units: with it all stems that a run can have still fit an int. */
    private final int most;
    /** Grains in a unit. */
    private final double unit;
    /** Units in a grain of each season, repeated for every week: one long loop is made wide, many short ones are not. */
    private final float[] units;

    WholePrices(PlanFacts facts) {
        this.figures = facts.figures;
        this.seasons = facts.seasonCount;
        this.prices = new int[facts.weeks * facts.cells.size() * seasons];
        this.units = new float[facts.weeks * seasons];
        this.most = mostUnits(facts.weeks, seasons);
        this.unit = Math.max(1, dearest(facts)) / most;
    }

    static int mostUnits(int weeks, int seasons) {
        return (int) Math.min(MOST_UNITS, Integer.MAX_VALUE / ((long) Figures.PARTS * weeks * seasons));
    }

    /** No stem is worth more than what a line gives for it, in a season that caution weighs most. */
    private static double dearest(PlanFacts facts) {
        double gain = 0;
        for (Filling filling : facts.fillings) {
            for (Filling.Line line : filling.lines) {
                gain = Math.max(gain, line.gain());
            }
        }
        return gain * facts.greatestWeight();
    }

    /** Whether they are fine enough to be of use; not with so many possible seasons that sums would grow too large. */
    boolean areFine() {
        return most >= FEWEST_UNITS;
    }

    /** Takes over what each season counts; all prices have to be set again. */
    void weigh(double[] weights) {
        for (int i = 0; i < units.length; i++) {
            units[i] = (float) (weights[i % seasons] / unit);
        }
    }

    /**
     * Sets prices of a run of weeks.
     *
     * @param grains of all kinds told apart: (kind × weeks + week) × K + season
     * @param at where the run begins
     * @param wide weeks × K
     */
    void set(float[] grains, int at, int wide) {
        // Never negative before it is cut off, so that is rounded half up.
        float upwards = most + 0.5f;
        for (int i = 0; i < wide; i++) {
            float within = Math.max(-most, Math.min(most, grains[at + i] * units[i]));
            prices[at + i] = (int) (within + upwards) - most;
        }
    }

    /** What a place's stems bring, grains summed over the seasons; its runs stand in its figures from {@code runs} on. */
    double stems(int place, int[] of, int runs, int count) {
        byte[] parts = figures.parts(place);
        int from = figures.partsStart(place);
        double sum = 0;
        for (int r = 0, at = runs; r < count; r++, at += Figures.A_RUN) {
            int wide = of[at + 2] * seasons;
            sum += products(prices, of[at] * seasons, parts, from, wide);
            from += wide;
        }
        return sum * figures.part(place) * unit;
    }

    private static int products(int[] prices, int at, byte[] parts, int from, int wide) {
        int sum = 0;
        for (int i = 0; i < wide; i++) {
            sum += prices[at + i] * parts[from + i];
        }
        return sum;
    }
}
