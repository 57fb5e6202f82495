package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * The least bound that any prices can prove, by a linear solver: a {@link RelaxedModel} over some places is solved, its dual
 * values are taken as prices, and places that could gain at them join, until the bound of those prices is hardly above the
 * optimum over the places there are. The truth lies between the two.
 *
 * <p>Prices to begin with only make it shorter. As the dual values jump about, places are also chosen at prices between the
 * best and the newest.
 */
final class ColumnGeneration {
    /** How far the bound may lie above the optimum, as a part of the bound. */
    private final double close;

    private final Relaxation relaxed;
    private final PlanFacts facts;
    private final ProspectTable table;
    private final RelaxedModel model;
    private final String solver;
    private final String settings;
    private final long missing;
    private final Consumer<String> log;
    private Prices best;
    private double upper;
    private double lower = Double.NEGATIVE_INFINITY;

    /**
     * What was found.
     *
     * @param lower optimum over the places there were: no prices prove a lower bound
     * @param upper the bound that {@code prices} prove
     */
    record Found(double lower, double upper, Prices prices, int rounds, int places) {}

    /**
     * @param start prices to begin with
     * @param settings of the solver's own, empty for none
     * @param close how far apart the two ends may stay, as a part
     */
    ColumnGeneration(
            PlanFacts facts,
            Prices start,
            String solver,
            String settings,
            double close,
            long missing,
            Consumer<String> log) {
        this.facts = facts;
        this.table = facts.table;
        this.relaxed = new Relaxation(facts);
        this.model = new RelaxedModel(relaxed, missing);
        this.solver = solver;
        this.settings = settings;
        this.close = close;
        this.missing = missing;
        this.log = log;
        this.best = start;
        this.upper = Bound.of(relaxed, start, missing);
    }

    /**
     * Begins with places of which there are most lots by a guess. What answers smoothed prices is a far better one than
     * what lacks little at them: there is something of everything that stems which must be ours need.
     *
     * @param lots by place
     * @param most places that join
     */
    ColumnGeneration guess(double[] lots, int most) {
        model.addMost(lots, most);
        return this;
    }

    /**
     * Solves until the two ends meet, or for so many rounds.
     *
     * @param first how many places to begin with, those guessed among them
     * @param each how many more join in a round, at most
     */
    Found run(int first, int each, int rounds) {
        join(best, first - model.columns());
        int round = 0;
        while (round < rounds) {
            round++;
            lower = Math.max(lower, model.solve(solver, settings));
            Prices dual = model.prices();
            look(dual);
            log.accept(String.format(Locale.ROOT, "round %d: %s; %.6g to %.6g", round, model, lower, upper));
            if (upper - lower <= close * Math.abs(upper)) {
                break;
            }
            boolean gains = join(dual, each / 2);
            Prices between = between(best, dual);
            look(between);
            gains |= join(between, each / 2);
            if (!gains) {
                break;
            }
        }
        return new Found(lower, upper, best, round, model.columns());
    }

    private void look(Prices prices) {
        double bound = Bound.of(relaxed, prices, missing);
        if (bound < upper) {
            upper = bound;
            best = prices;
        }
    }

    private Prices between(Prices one, Prices other) {
        double[] some = one.toArray();
        double[] more = other.toArray();
        for (int i = 0; i < some.length; i++) {
            some[i] = (some[i] + more[i]) / 2;
        }
        return new Prices(facts, some);
    }

    /**
     * The places whose best chain lacks least to their bed's best join, those too that would gain nothing yet.
     *
     * @return whether any of them gains
     */
    private boolean join(Prices prices, int count) {
        double[] lacks = lacks(prices);
        int[] joining = IntStream.range(0, lacks.length)
                .filter(place -> relaxed.open[place] && !model.has(place))
                .boxed()
                .sorted(Comparator.comparingDouble(place -> lacks[place]))
                .limit(count)
                .mapToInt(Integer::intValue)
                .toArray();
        for (int place : joining) {
            model.add(place);
        }
        return joining.length > 0 && lacks[joining[0]] < 0;
    }

    /**
     * By place, grains a mm (or a lot without a bed): what the best chain of the places in the model brings, less the best
     * of all chains with this one; below 0 for one that gains, alone or with others.
     */
    private double[] lacks(Prices prices) {
        Bound bound = new Bound(relaxed, prices, missing);
        double[][] all = gains(bound, prices, false);
        double[][] ours = gains(bound, prices, true);
        double[][] until = new double[facts.bench][];
        double[][] after = new double[facts.bench][];
        double[] best = new double[facts.bench];
        for (int bed = 0; bed < facts.bench; bed++) {
            until[bed] = until(all[bed], facts.weeks);
            after[bed] = after(all[bed], facts.weeks);
            best[bed] = until(ours[bed], facts.weeks)[facts.weeks];
        }
        double[] lacks = new double[table.places()];
        Arrays.setAll(lacks, place -> {
            int row = table.row(place);
            if (!relaxed.holdsBed(place)) {
                return -bound.brings(place);
            }
            int bed = table.bed(place);
            return best[bed]
                    - until[bed][table.heldFrom(row)]
                    - after[bed][table.heldTo(row)]
                    - bound.brings(place) / table.millimetres(row);
        });
        return lacks;
    }

    /** By bed, what a mm brings from week to week at best, in all places or in those of the model. */
    private double[][] gains(Bound bound, Prices prices, boolean isModel) {
        int weeks = facts.weeks;
        double[][] gains = new double[facts.bench][weeks * (weeks + 1)];
        for (int place = 0; place < table.places(); place++) {
            if (relaxed.open[place] && relaxed.holdsBed(place) && (!isModel || model.has(place))) {
                gain(gains, place, bound.brings(place) / table.millimetres(table.row(place)));
            }
        }
        for (int p : relaxed.fixed) {
            if (relaxed.holdsBed(facts.fixedPlace[p])) {
                gain(gains, facts.fixedPlace[p], prices.at(prices.layout.standing() + p));
            }
        }
        return gains;
    }

    private void gain(double[][] gains, int place, double each) {
        int row = table.row(place);
        int at = table.heldFrom(row) * (facts.weeks + 1) + table.heldTo(row);
        double[] bed = gains[table.bed(place)];
        bed[at] = Math.max(bed[at], each);
    }

    private static double[] until(double[] gain, int weeks) {
        double[] best = new double[weeks + 1];
        for (int to = 1; to <= weeks; to++) {
            best[to] = best[to - 1];
            for (int from = 0; from < to; from++) {
                best[to] = Math.max(best[to], best[from] + gain[from * (weeks + 1) + to]);
            }
        }
        return best;
    }

    private static double[] after(double[] gain, int weeks) {
        double[] best = new double[weeks + 1];
        for (int from = weeks - 1; from >= 0; from--) {
            best[from] = best[from + 1];
            for (int to = from + 1; to <= weeks; to++) {
                best[from] = Math.max(best[from], best[to] + gain[from * (weeks + 1) + to]);
            }
        }
        return best;
    }
}
