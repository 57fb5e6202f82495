package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The best chain of places over the weeks of each bed, for a mm of it, or a soft maximum over all chains: the logarithm of
 * the sum of their exponentials, which is no smaller, and smooth. Lots that take up no bed stand in a bed of their stock's
 * own, of one week and a metre for each of its lots.
 */
final class BedChains {
    /** A lot without a bed counts as so many mm. */
    private static final double BEDLESS = 1000;
    /** Chains so much worse, in units of the smoothing, don't count. */
    private static final double FAR = 30;

    final int beds;
    private final int weeks;
    private final double[] length;
    /** Arcs of each bed, by the week they end. */
    private final int[] first;

    /** Place of an arc, or −1 − number of a fixed planting. */
    private final int[] what;

    private final int[] from;
    private final int[] to;
    private final double[] mm;
    private final double[] weightOfArc;

    private record Arc(int what, int from, int to, double mm) {}

    /** Chains of some places. */
    BedChains(Relaxation relaxed, boolean[] some) {
        PlanFacts facts = relaxed.facts;
        ProspectTable table = facts.table;
        this.beds = facts.bench + table.stocks();
        this.weeks = facts.weeks;
        this.length = new double[beds];
        List<List<Arc>> arcs = new ArrayList<>();
        for (int b = 0; b < beds; b++) {
            arcs.add(new ArrayList<>());
            length[b] = b < facts.bench ? facts.shelves.get(b).holds() : 0;
        }
        for (int p = 0; p < facts.plantings(); p++) {
            length[facts.bench + facts.stockOf[p]] += facts.isFixed(p) ? 0 : BEDLESS;
        }
        for (int place = 0; place < table.places(); place++) {
            if (some[place]) {
                boolean holds = relaxed.holdsBed(place);
                arcs.get(holds ? table.bed(place) : facts.bench + table.stock(place))
                        .add(arc(table, place, place, holds));
            }
        }
        for (int i = 0; i < relaxed.fixed.length; i++) {
            int place = facts.fixedPlace[relaxed.fixed[i]];
            if (relaxed.holdsBed(place)) {
                arcs.get(table.bed(place)).add(arc(table, -1 - i, place, true));
            }
        }
        int count = arcs.stream().mapToInt(List::size).sum();
        first = new int[beds + 1];
        what = new int[count];
        from = new int[count];
        to = new int[count];
        mm = new double[count];
        weightOfArc = new double[count];
        int at = 0;
        for (int b = 0; b < beds; b++) {
            arcs.get(b).sort(Comparator.comparingInt(Arc::to));
            for (Arc arc : arcs.get(b)) {
                what[at] = arc.what;
                from[at] = arc.from;
                to[at] = arc.to;
                mm[at++] = arc.mm;
            }
            first[b + 1] = at;
        }
    }

    private static Arc arc(ProspectTable table, int what, int place, boolean holds) {
        int row = table.row(place);
        return holds
                ? new Arc(what, table.heldFrom(row), table.heldTo(row), table.millimetres(row))
                : new Arc(what, 0, 1, BEDLESS);
    }

    /**
     * The value of a bed's best chain, or of the soft maximum of all.
     *
     * @param soft how much is smoothed, grains a mm; 0 for the best alone
     * @param values of places, grains a lot
     * @param fixedValues of fixed plantings, grains a mm
     * @param lots set: lots of each place in the chain
     * @param fixedMm set: mm of each fixed planting in the chain
     */
    double solve(int bed, double soft, double[] values, double[] fixedValues, double[] lots, double[] fixedMm) {
        double[] best = new double[weeks + 1];
        double[] idle = new double[weeks + 1];
        int arc = first[bed];
        int end = first[bed + 1];
        if (arc == end || length[bed] == 0) {
            return 0;
        }
        for (int w = 1; w <= weeks; w++) {
            int begin = arc;
            double top = best[w - 1];
            for (; arc < end && to[arc] == w; arc++) {
                double value = what[arc] >= 0 ? values[what[arc]] / mm[arc] : fixedValues[-1 - what[arc]];
                weightOfArc[arc] = best[from[arc]] + value;
                top = Math.max(top, weightOfArc[arc]);
            }
            best[w] = top;
            idle[w] = soft > 0 ? share(best[w - 1] - top, soft) : best[w - 1] == top ? 1 : 0;
            double sum = idle[w];
            for (int a = begin; a < arc; a++) {
                weightOfArc[a] = soft > 0 ? share(weightOfArc[a] - top, soft) : weightOfArc[a] == top ? 1 - sum : 0;
                sum += weightOfArc[a];
            }
            if (soft > 0 && sum > 1) {
                best[w] += soft * Math.log(sum);
                idle[w] /= sum;
                for (int a = begin; a < arc; a++) {
                    weightOfArc[a] /= sum;
                }
            }
        }
        spread(bed, idle, lots, fixedMm);
        return best[weeks] * length[bed];
    }

    private static double share(double below, double soft) {
        return below < -FAR * soft ? 0 : Math.exp(below / soft);
    }

    /** From the last week back: how much of the bed runs through each arc. */
    private void spread(int bed, double[] idle, double[] lots, double[] fixedMm) {
        double[] through = new double[weeks + 1];
        through[weeks] = length[bed];
        int arc = first[bed + 1] - 1;
        for (int w = weeks; w > 0; w--) {
            double here = through[w];
            through[w - 1] += idle[w] * here;
            for (; arc >= first[bed] && to[arc] == w; arc--) {
                double mms = weightOfArc[arc] * here;
                through[from[arc]] += mms;
                if (what[arc] >= 0) {
                    lots[what[arc]] = mms / mm[arc];
                } else {
                    fixedMm[-1 - what[arc]] = mms;
                }
            }
        }
    }
}
