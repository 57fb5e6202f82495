package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.Arrays;

/**
 * No plan of a season that breaks no hard rule, and misses no more weighted stems that must be ours than was said, has a
 * soft score beyond this. Any {@link Prices} give such a bound; how close it is depends on them.
 *
 * <p><b>Why it is one</b> (Lagrangian relaxation; nothing is solved). Take any such plan.
 *
 * <ol>
 *   <li>Caution: the soft score is the floor of Σ w·v over the seasons' money v, with the weights w of [least, greatest]
 *       that add up to K for which this is least. With any others of them it is no smaller; weights given otherwise are
 *       moved to the nearest such ({@link Relaxation#weights}).
 *   <li>Hours: a season pays for all work of a week at the own rate, and the difference to the hired rate for what goes
 *       beyond the own hours. With a price p of at most that difference it pays at least (own rate + p) × work − p × own
 *       hours. (Were hired hours cheaper than own ones, see {@link Relaxation#pay}.)
 *   <li>What is limited is not overstepped, so limit less use, times a price, may be added: hours and cutting hours summed
 *       over the seasons, cells and metres of stock by week. For stock that can be bought the season's peak beyond what is
 *       owned costs at least as much as the weeks' excesses at prices that add up to no more than its price; prices that
 *       add up to more are all made smaller alike.
 *   <li>Stems: what is let through a kind is no more than came of it and was let through the kinds within, and no more than
 *       can be sold of it; lines within a kind get no more than is let through it. Where the filling sends the stems keeps
 *       both, so the differences may be added at prices: {@code asked} for the second, and for the first the stem's worth:
 *       that of the kind above + asked − {@code most}, 0 at least. What remains is, for each line, its surplus: the amount
 *       asked for × max(0, what a stem gains − what it pays), and for each limited kind the limit × the worth that it takes
 *       away. Lines for whose kind no stem can come get none.
 *   <li>What must be ours: the weighted stems that may be missing less those that are, at a price.
 *   <li>What is left depends on each lot alone: stems at their worth, less work, stock, seed and rest years. Less the price
 *       of its lot ({@code lots} × their number is added) it is, per mm of bed, the value of a stretch of weeks of that bed;
 *       a mm of bed holds one planting at a time, so all of them in a bed bring no more than its length × the best chain of
 *       such stretches. A fixed planting stands in the chain with a price that is then taken off for its own mm. Lots that
 *       take up no bed bring no more than the number of lots × the best of their places.
 * </ol>
 *
 * <p><b>What makes it looser</b> than the best plan: parts of lots are allowed; each lot carries only the least part of its
 * job's set-up that it could ({@link Relaxation}), and following on costs nothing.
 *
 * <p><b>Rounding.</b> Worked out in doubles. The result is raised by 10⁻⁹ of the sum of the sizes of all terms; as fewer
 * than 10⁶ additions stand behind any of them, each at fault by 2⁻⁵³ of its size at most, that is more than all could
 * come to.
 */
final class Bound {
    private static final double MARGIN = 1e-9;

    private final PlanFacts facts;
    private final ProspectTable table;
    private final Relaxation relaxed;
    private final Prices prices;
    private final PriceLayout layout;
    private final int weeks;
    private final int seasons;
    private final double[] weight;
    /** What a tick of work costs in a week and season, all counted: week × K + season; and in all seasons together. */
    private final double[] pay;

    private final double[] payOfWeek;
    /** Worth of a stem less clearing it: (cell × weeks + week) × K + season. */
    private final double[] worth;
    /** By shelf, what the weeks before a week cost together: shelf × (weeks + 1) + week. */
    private final double[] shelfCost;

    /** What a lot at a place brings, and the sizes of all that this is added up from. */
    private final double[] value;

    private final double[] gross;
    /** What the weeks of each bed bring, a mm of it: bed × weeks + week. */
    private final double[] bedWeeks;

    private double sum;
    private double size;

    Bound(Relaxation relaxed, Prices prices, long missing) {
        this.relaxed = relaxed;
        this.facts = relaxed.facts;
        this.table = facts.table;
        this.prices = prices;
        this.layout = prices.layout;
        this.weeks = facts.weeks;
        this.seasons = facts.seasonCount;
        this.weight =
                relaxed.weights(Arrays.copyOfRange(prices.toArray(), layout.seasons(), layout.seasons() + seasons));
        this.pay = new double[weeks * seasons];
        this.payOfWeek = new double[weeks];
        this.worth = new double[facts.cells.size() * weeks * seasons];
        this.shelfCost = new double[facts.shelves.size() * (weeks + 1)];
        this.value = new double[table.places()];
        this.gross = new double[table.places()];
        this.bedWeeks = new double[facts.bench * weeks];
        hours();
        shelves();
        add(prices.at(layout.must()) * missing);
        for (Filling filling : facts.fillings) {
            stems(filling);
        }
        plantings();
        for (int bed = 0; bed < facts.bench; bed++) {
            bed(bed);
        }
    }

    /**
     * The bound, in grains summed over the seasons as the soft score is.
     *
     * @param missing weighted hundredths of stems that must be ours and may be missing: a plan's medium score without its
     *     sign
     */
    static double of(PlanFacts facts, Prices prices, long missing) {
        return of(new Relaxation(facts), prices, missing);
    }

    static double of(Relaxation relaxed, Prices prices, long missing) {
        return new Bound(relaxed, prices, missing).value();
    }

    double value() {
        return sum + MARGIN * size;
    }

    /** What a tick more of one's own hours in a week takes away, all possible seasons together: grains. */
    double hour(int week) {
        double worth = 0;
        if (facts.hours.own()[week] < WorkWeeks.UNLIMITED) {
            for (int k = 0; k < seasons; k++) {
                worth += pay[week * seasons + k] - weight[k] * relaxed.pay(week);
            }
        }
        return worth;
    }

    /** What a mm or cell more of a shelf that is no bed would be worth in a week: grains. */
    double ofShelf(int shelf, int week) {
        return cost(shelf, week, week + 1);
    }

    /** What a lot at a place brings at the prices, its lot paid and its bed not: grains. */
    double brings(int place) {
        return value[place];
    }

    /** What the weeks of a bed are worth, grains a mm: they add up to what a mm of it brings. */
    double[] weeksOfBed(int bed) {
        return Arrays.copyOfRange(bedWeeks, bed * weeks, (bed + 1) * weeks);
    }

    private void add(double term) {
        sum += term;
        size += Math.abs(term);
    }

    private void hours() {
        for (int w = 0; w < weeks; w++) {
            double all = relaxed.hours(w) >= WorkWeeks.UNLIMITED ? 0 : prices.hour(w);
            double own = facts.hours.own()[w];
            for (int k = 0; k < seasons; k++) {
                double more = Math.min(prices.at(layout.hired() + w * seasons + k), relaxed.extraPay(w));
                pay[w * seasons + k] = weight[k] * (relaxed.pay(w) + more) + all;
                payOfWeek[w] += pay[w * seasons + k];
                add(more > 0 ? weight[k] * more * own : 0);
            }
            add(all > 0 ? all * seasons * relaxed.hours(w) : 0);
            add(cutting(w) > 0 ? cutting(w) * seasons * facts.hours.cutting()[w] : 0);
            add(-payOfWeek[w] * facts.fixedWork[w]);
        }
    }

    /** What a tick of cutting costs in a week, beyond its pay and what any hour does: grains. */
    double cutting(int week) {
        return facts.hours.cutting()[week] >= WorkWeeks.UNLIMITED ? 0 : prices.at(layout.cutting() + week);
    }

    private void shelves() {
        for (int s = facts.bench; s < facts.shelves.size(); s++) {
            Shelf shelf = facts.shelves.get(s);
            int from = layout.shelves() + (s - facts.bench) * weeks;
            double all = 0;
            for (int w = 0; w < weeks; w++) {
                all += prices.at(from + w);
            }
            double most = (double) shelf.price() * seasons;
            double part = shelf.price() > 0 && all > most ? most / all : 1;
            for (int w = 0; w < weeks; w++) {
                double price = shelf.holds() >= WorkWeeks.UNLIMITED ? 0 : part * prices.at(from + w);
                shelfCost[s * (weeks + 1) + w + 1] = shelfCost[s * (weeks + 1) + w] + price;
                add(price > 0 ? price * shelf.holds() : 0);
            }
        }
    }

    private void stems(Filling filling) {
        double must = prices.at(layout.must());
        double[] above = new double[filling.nodes];
        double[] pays = new double[filling.nodes];
        for (int at = 0; at < weeks * seasons; at++) {
            int w = at / seasons;
            double each = weight[at % seasons];
            add(each * filling.none[at]);
            for (int n = 0; n < filling.nodes; n++) {
                int cell = (filling.firstNode + n) * weeks * seasons + at;
                int parent = filling.parent[n];
                double asked = prices.at(layout.asked() + cell);
                double before = (parent < 0 ? 0 : above[parent]) + asked;
                pays[n] = (parent < 0 ? 0 : pays[parent]) + asked;
                above[n] = before;
                if (filling.most[n] != Integer.MAX_VALUE) {
                    above[n] = Math.max(0, before - prices.at(layout.most() + cell));
                    add(each * (before - above[n]) * filling.most[n]);
                }
                worth[cell] = each * above[n] - pay[at] * filling.clearRate;
            }
            double serving = pay[at] * (filling.cutRate - filling.clearRate) + cutting(w) * filling.cutRate;
            for (Filling.Line line : filling.lines) {
                add(-must * line.weight() * line.asked()[w]);
                double gain = each * (line.gain() - pays[line.node()]) + must * line.weight() - serving;
                if (relaxed.comes[(filling.firstNode + line.node()) * weeks + w]) {
                    add(Math.max(0, gain) * line.asked()[w]);
                }
            }
        }
    }

    private void plantings() {
        for (int place = 0; place < value.length; place++) {
            value[place] = value(place, relaxed.share[place]);
        }
        for (int p : relaxed.fixed) {
            add(value(facts.fixedPlace[p], 1));
        }
        int[] lots = relaxed.lots;
        for (int s = 0; s < lots.length; s++) {
            double price = prices.at(layout.lots() + s);
            double bedless = 0;
            double largest = 0;
            for (int place = table.firstPlace(s); place < table.firstPlace(s + 1); place++) {
                value[place] -= price;
                bedless = relaxed.holdsBed(place) ? bedless : Math.max(bedless, value[place]);
                largest = Math.max(largest, gross[place] + price);
            }
            add(lots[s] * price);
            add(lots[s] * bedless);
            size += lots[s] * largest;
        }
    }

    /** What a lot at a place brings at the prices, its lot and its bed not paid. */
    private double value(int place, double share) {
        int row = table.row(place);
        double takes = takes(row, share) + (facts.restBroken[place] ? (double) seasons * facts.restPrice : 0);
        double gives = 0;
        double cleared = 0;
        int[] stems = table.stems(row);
        for (int b = 0; b < table.blocks(row); b++) {
            int cell = facts.cells.of(table.blockNode(row, b)) * weeks + table.blockWeek(row, b);
            for (int k = 0; k < seasons; k++) {
                double all = worth[cell * seasons + k] * stems[b * seasons + k];
                gives += all;
                cleared += Math.abs(all) - all;
            }
        }
        gross[place] = gives + cleared + takes;
        return gives - takes;
    }

    /** What a lot costs that the same row of figures stands for: seed, work and stock. */
    private double takes(int row, double share) {
        double all = seasons * (double) table.material(row) * Grains.A_SMALLEST_UNIT;
        for (int i = 0; i < table.work(row).length; i++) {
            double minutes = table.work(row)[i] + share * table.setUp(row)[i];
            all += payOfWeek[table.workFrom(row) + i] * minutes * Grains.TICKS_A_MINUTE;
        }
        all += cost(facts.bench, table.benchFrom(row), table.benchTo(row)) * table.cells(row);
        all += cost(facts.trays, table.trayFrom(row), table.trayTo(row)) * table.cells(row);
        if (table.net(row) >= 0) {
            int net = facts.firstNet + table.net(row);
            all += cost(net, table.netFrom(row), table.netTo(row)) * table.netMillimetres(row);
        }
        return all + cost(facts.cover, table.coverFrom(row), table.coverTo(row)) * table.millimetres(row);
    }

    private double cost(int shelf, int from, int to) {
        return from >= to ? 0 : shelfCost[shelf * (weeks + 1) + to] - shelfCost[shelf * (weeks + 1) + from];
    }

    /** The best chain of a bed: at each week the most that a mm of bed can have brought until then. */
    private void bed(int bed) {
        double[] gain = new double[weeks * (weeks + 1)];
        double largest = 0;
        for (int place = 0; place < value.length; place++) {
            if (table.bed(place) == bed && relaxed.open[place] && relaxed.holdsBed(place)) {
                int row = table.row(place);
                int at = table.heldFrom(row) * (weeks + 1) + table.heldTo(row);
                gain[at] = Math.max(gain[at], value[place] / table.millimetres(row));
                largest = Math.max(largest, gross[place] / table.millimetres(row));
            }
        }
        for (int p : relaxed.fixed) {
            int place = facts.fixedPlace[p];
            if (table.bed(place) == bed && relaxed.holdsBed(place)) {
                int row = table.row(place);
                int at = table.heldFrom(row) * (weeks + 1) + table.heldTo(row);
                double price = prices.at(layout.standing() + p);
                gain[at] = Math.max(gain[at], price);
                add(-price * table.millimetres(row));
            }
        }
        double[] best = new double[weeks + 1];
        double[] left = new double[weeks + 1];
        for (int w = 1; w <= weeks; w++) {
            best[w] = best[w - 1];
            left[weeks - w] = left[weeks - w + 1];
            for (int other = 0; other < w; other++) {
                best[w] = Math.max(best[w], best[other] + gain[other * (weeks + 1) + w]);
                int end = weeks - other;
                left[weeks - w] = Math.max(left[weeks - w], left[end] + gain[(weeks - w) * (weeks + 1) + end]);
            }
        }
        for (int w = 0; w < weeks; w++) {
            bedWeeks[bed * weeks + w] = (best[w + 1] - best[w] + left[w] - left[w + 1]) / 2;
        }
        add(best[weeks] * facts.shelves.get(bed).holds());
        size += largest * weeks * facts.shelves.get(bed).holds();
    }
}
