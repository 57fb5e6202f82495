package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.Arrays;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * A {@link Bound} that is smoothed, and how it changes with each price: for looking for good ones. The best chain of a bed
 * becomes a soft maximum, and a line's surplus bends where it begins instead of having a kink. Both lie above what they
 * stand for, so this lies above the bound.
 *
 * <p>The change with a price is what its limit leaves: limit less use. Sums are added up in a fixed order, whatever the
 * number of processors, so the same prices always give the same. Most places are hopeless at any prices near the good
 * ones; only those that {@link #look} found near are counted until it looks again.
 */
final class SmoothBound {
    /** Places that hold less of their bed than this don't count until the next look. */
    private static final double NEAR = 1e-6;
    /** Values may move by so much more than they did from look to look, or part of it. */
    private static final double DRIFTS = 3;

    final Relaxation relaxed;
    final PriceLayout layout;
    private final PlanFacts facts;
    private final ProspectTable table;
    private final LotCosts costs;
    private final SmoothSales sales;
    private final BedChains allChains;
    private final int seasons;
    /** Worth of a row's stems by part of the lists. */
    private final float[][] stemValues;

    private final double[] values;
    /** Values at the last look. */
    private final double[] seen;

    private final double[] lots;
    private final float[] rowLots;
    private final double[] came;
    private final double[] fixedValues;
    private final double[] fixedMm;
    private final double[] bedValues;
    private final double[] change;
    private BedChains chains;
    private StemLists lists;
    private int[] near;

    SmoothBound(Relaxation relaxed) {
        this.relaxed = relaxed;
        this.facts = relaxed.facts;
        this.table = facts.table;
        this.seasons = facts.seasonCount;
        this.layout = PriceLayout.of(facts);
        this.costs = new LotCosts(facts);
        this.sales = new SmoothSales(relaxed, layout);
        this.allChains = new BedChains(relaxed, relaxed.open);
        this.chains = allChains;
        this.lists = new StemLists(facts, new boolean[table.rows()]);
        this.near = new int[0];
        this.stemValues = new float[StemLists.PARTS][table.rows()];
        this.values = new double[table.places()];
        this.seen = new double[table.places()];
        this.lots = new double[table.places()];
        this.rowLots = new float[table.rows()];
        this.came = new double[facts.cells.size() * facts.weeks * seasons];
        this.fixedValues = new double[relaxed.fixed.length];
        this.fixedMm = new double[relaxed.fixed.length];
        this.bedValues = new double[allChains.beds];
        this.change = new double[layout.size()];
    }

    /** Lots of each place as last worked out, parts of lots among them; not to be written to. */
    double[] lots() {
        return lots;
    }

    private static void inParts(IntConsumer work) {
        IntStream.range(0, StemLists.PARTS).parallel().forEach(work);
    }

    /** What changes with each price, as last worked out; not to be written to. */
    double[] change() {
        return change;
    }

    /**
     * Looks which places are near the best ones at these prices, all others being left out until the next look.
     *
     * @param soft smoothing of the chains, grains a mm
     * @return the bound itself at these prices, without any smoothing
     */
    double look(double[] prices, double soft, long missing) {
        double sum = outside(prices, 0, missing);
        inParts(part -> {
            int end = part(table.rows(), part + 1);
            for (int row = part(table.rows(), part); row < end; row++) {
                stemValues[0][row] = (float) stems(row);
            }
        });
        for (int part = 1; part < StemLists.PARTS; part++) {
            Arrays.fill(stemValues[part], 0);
        }
        inParts(part -> {
            int end = part(table.places(), part + 1);
            for (int place = part(table.places(), part); place < end; place++) {
                value(place, prices);
            }
        });
        double drift = drift();
        sum += fixed() + chains(allChains, soft + drift / DRIFTS);
        // Of what the soft maximum gave only the lots are wanted; the bound has the best chains alone.
        boolean[] isNear = new boolean[lots.length];
        boolean[] isRow = new boolean[table.rows()];
        near = IntStream.range(0, lots.length)
                .filter(place -> relaxed.open[place] && lots[place] > NEAR)
                .toArray();
        for (int place : near) {
            isNear[place] = true;
            isRow[table.row(place)] = true;
        }
        for (int p : relaxed.fixed) {
            isRow[table.row(facts.fixedPlace[p])] = true;
        }
        for (double value : bedValues) {
            sum -= value;
        }
        sum += chains(allChains, 0);
        chains = new BedChains(relaxed, isNear);
        lists = new StemLists(facts, isRow);
        return sum;
    }

    /** How far the values of places have moved since the last look, mean, grains a mm. */
    private double drift() {
        double sum = 0;
        int count = 0;
        for (int place = 0; place < values.length; place++) {
            if (relaxed.holdsBed(place)) {
                sum += Math.abs(values[place] - seen[place]) / table.millimetres(table.row(place));
                count++;
            }
            seen[place] = values[place];
        }
        return count == 0 ? 0 : sum / count;
    }

    private static int part(int count, int part) {
        return (int) ((long) count * part / StemLists.PARTS);
    }

    private double stems(int row) {
        float[] worth = sales.worth();
        int[] stems = table.stems(row);
        double sum = 0;
        for (int b = 0; b < table.blocks(row); b++) {
            int at = (facts.cells.of(table.blockNode(row, b)) * facts.weeks + table.blockWeek(row, b)) * seasons;
            for (int k = 0; k < seasons; k++) {
                sum += worth[at + k] * stems[b * seasons + k];
            }
        }
        return sum;
    }

    /**
     * The smoothed bound at prices within their ranges, and the {@link #change} with each of them.
     *
     * @param soft smoothing of the chains, grains a mm
     * @param bend smoothing of a line's surplus, as a part of what a stem gains
     * @param missing weighted hundredths of stems that must be ours and may be missing
     */
    double at(double[] prices, double soft, double bend, long missing) {
        double sum = outside(prices, bend, missing);
        inParts(part -> lists.value(part, sales.worth(), stemValues[part]));
        for (int place : near) {
            value(place, prices);
        }
        sum += fixed() + chains(chains, soft);
        changes(prices, missing);
        return sum;
    }

    /** What is not the plantings': limits, sales, standing plantings' prices; sets what things cost. */
    private double outside(double[] prices, double bend, long missing) {
        sales.begin(prices);
        inParts(part -> sales.sell(part, prices, bend));
        costs.price(prices, layout.shelves(), sales.payOfWeek());
        double sum = sales.value() + prices[layout.must()] * missing;
        for (int s = facts.bench; s < facts.shelves.size(); s++) {
            int from = layout.shelves() + (s - facts.bench) * facts.weeks;
            for (int w = 0; w < facts.weeks; w++) {
                double price = prices[from + w];
                sum += price > 0 ? price * facts.shelves.get(s).holds() : 0;
            }
        }
        for (int i = 0; i < fixedValues.length; i++) {
            int place = facts.fixedPlace[relaxed.fixed[i]];
            if (relaxed.holdsBed(place)) {
                fixedValues[i] = prices[layout.standing() + relaxed.fixed[i]];
                sum -= fixedValues[i] * table.millimetres(table.row(place));
            }
        }
        for (int s = 0; s < relaxed.lots.length; s++) {
            sum += relaxed.lots[s] * prices[layout.lots() + s];
        }
        return sum;
    }

    private double stemsOf(int row) {
        double sum = 0;
        for (float[] part : stemValues) {
            sum += part[row];
        }
        return sum;
    }

    private void value(int place, double[] prices) {
        int row = table.row(place);
        double rest = facts.restBroken[place] ? (double) seasons * facts.restPrice : 0;
        double cost = costs.of(row, relaxed.share[place]) + prices[layout.lots() + table.stock(place)];
        values[place] = stemsOf(row) - cost - rest;
    }

    private double fixed() {
        double sum = 0;
        for (int p : relaxed.fixed) {
            int row = table.row(facts.fixedPlace[p]);
            sum += stemsOf(row) - costs.of(row, 1);
        }
        return sum;
    }

    private double chains(BedChains some, double soft) {
        inParts(part -> {
            for (int bed = part; bed < some.beds; bed += StemLists.PARTS) {
                bedValues[bed] = some.solve(bed, soft, values, fixedValues, lots, fixedMm);
            }
        });
        double sum = 0;
        for (double value : bedValues) {
            sum += value;
        }
        return sum;
    }

    private void changes(double[] prices, long missing) {
        Arrays.fill(rowLots, 0);
        costs.clear();
        for (int s = 0; s < relaxed.lots.length; s++) {
            change[layout.lots() + s] = relaxed.lots[s];
        }
        for (int place : near) {
            int row = table.row(place);
            rowLots[row] += (float) lots[place];
            costs.count(row, lots[place], relaxed.share[place]);
            change[layout.lots() + table.stock(place)] -= lots[place];
        }
        for (int i = 0; i < fixedMm.length; i++) {
            int p = relaxed.fixed[i];
            int row = table.row(facts.fixedPlace[p]);
            rowLots[row] += 1;
            costs.count(row, 1, 1);
            change[layout.standing() + p] =
                    relaxed.holdsBed(facts.fixedPlace[p]) ? fixedMm[i] - table.millimetres(row) : 0;
        }
        costs.sum();
        for (int s = facts.bench; s < facts.shelves.size(); s++) {
            for (int w = 0; w < facts.weeks; w++) {
                change[layout.shelves() + (s - facts.bench) * facts.weeks + w] =
                        facts.shelves.get(s).holds() - costs.use(s, w);
            }
        }
        inParts(part -> lists.sum(part, rowLots, came));
        inParts(part -> sales.changes(part, prices, came, costs.work(), change));
        Arrays.fill(change, layout.seasons(), layout.must(), 0);
        sales.sumChanges(missing, change);
    }
}
