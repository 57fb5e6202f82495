package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What lots cost at prices: seed, work and stock. A planting needs the same in all beds that are equally warm, so what it
 * costs is worked out once for all rows of figures that need the same.
 */
final class LotCosts {
    private final PlanFacts facts;
    private final ProspectTable table;
    private final int weeks;
    /** Which need a row of figures has. */
    private final int[] needOfRow;
    /** A row of each need. */
    private final int[] rowOfNeed;
    /** Cost of a need without set-up, and of its whole set-up, grains. */
    private final double[] plain;

    private final double[] setUp;
    private final double[] lots;
    private final double[] shares;
    private final double[] shelfCost;
    private final double[] shelfUse;
    private final double[] work;

    LotCosts(PlanFacts facts) {
        this.facts = facts;
        this.table = facts.table;
        this.weeks = facts.weeks;
        this.needOfRow = new int[table.rows()];
        Map<IntBuffer, Integer> known = new HashMap<>();
        List<Integer> rows = new ArrayList<>();
        for (int row = 0; row < needOfRow.length; row++) {
            IntBuffer need = need(row);
            Integer number = known.putIfAbsent(need, rows.size());
            if (number == null) {
                number = rows.size();
                rows.add(row);
            }
            needOfRow[row] = number;
        }
        this.rowOfNeed = rows.stream().mapToInt(Integer::intValue).toArray();
        this.plain = new double[rowOfNeed.length];
        this.setUp = new double[rowOfNeed.length];
        this.lots = new double[rowOfNeed.length];
        this.shares = new double[rowOfNeed.length];
        this.shelfCost = new double[facts.shelves.size() * (weeks + 1)];
        this.shelfUse = new double[shelfCost.length];
        this.work = new double[weeks];
    }

    private IntBuffer need(int row) {
        int[] minutes = table.work(row);
        int[] begin = table.setUp(row);
        IntBuffer need = IntBuffer.allocate(14 + minutes.length + begin.length);
        need.put(table.millimetres(row)).put(table.cells(row));
        need.put(table.benchFrom(row))
                .put(table.benchTo(row))
                .put(table.trayFrom(row))
                .put(table.trayTo(row));
        need.put(table.net(row))
                .put(table.netMillimetres(row))
                .put(table.netFrom(row))
                .put(table.netTo(row));
        need.put(table.coverFrom(row)).put(table.coverTo(row)).put(table.workFrom(row));
        need.put(Math.toIntExact(table.material(row))).put(minutes).put(begin);
        return need.flip();
    }

    /** Sets the prices: those of shelves as laid out by {@link PriceLayout}, and what a tick of work costs by week. */
    void price(double[] prices, int shelves, double[] payOfWeek) {
        for (int s = facts.bench; s < facts.shelves.size(); s++) {
            for (int w = 0; w < weeks; w++) {
                shelfCost[s * (weeks + 1) + w + 1] =
                        shelfCost[s * (weeks + 1) + w] + prices[shelves + (s - facts.bench) * weeks + w];
            }
        }
        for (int need = 0; need < plain.length; need++) {
            int row = rowOfNeed[need];
            double all = facts.seasonCount * (double) table.material(row) * Grains.A_SMALLEST_UNIT;
            double begin = 0;
            int[] minutes = table.work(row);
            int[] setUps = table.setUp(row);
            int from = table.workFrom(row);
            for (int i = 0; i < minutes.length; i++) {
                double minute = payOfWeek[from + i] * Grains.TICKS_A_MINUTE;
                all += minute * minutes[i];
                begin += minute * setUps[i];
            }
            all += cost(facts.bench, table.benchFrom(row), table.benchTo(row)) * table.cells(row);
            all += cost(facts.trays, table.trayFrom(row), table.trayTo(row)) * table.cells(row);
            if (table.net(row) >= 0) {
                int net = facts.firstNet + table.net(row);
                all += cost(net, table.netFrom(row), table.netTo(row)) * table.netMillimetres(row);
            }
            all += cost(facts.cover, table.coverFrom(row), table.coverTo(row)) * table.millimetres(row);
            plain[need] = all;
            setUp[need] = begin;
        }
    }

    private double cost(int shelf, int from, int to) {
        return from >= to ? 0 : shelfCost[shelf * (weeks + 1) + to] - shelfCost[shelf * (weeks + 1) + from];
    }

    /** What a lot with such a row of figures costs, with a share of its job's set-up. */
    double of(int row, double share) {
        return plain[needOfRow[row]] + share * setUp[needOfRow[row]];
    }

    /** Forgets all lots counted. */
    void clear() {
        Arrays.fill(lots, 0);
        Arrays.fill(shares, 0);
    }

    /** Counts some lots with such a row of figures, each with a share of its job's set-up. */
    void count(int row, double more, double share) {
        lots[needOfRow[row]] += more;
        shares[needOfRow[row]] += more * share;
    }

    /** Adds up what the lots counted take. */
    void sum() {
        Arrays.fill(work, 0);
        Arrays.fill(shelfUse, 0);
        for (int need = 0; need < lots.length; need++) {
            double count = lots[need];
            if (count == 0) {
                continue;
            }
            int row = rowOfNeed[need];
            int[] minutes = table.work(row);
            int[] setUps = table.setUp(row);
            int from = table.workFrom(row);
            for (int i = 0; i < minutes.length; i++) {
                work[from + i] += (count * minutes[i] + shares[need] * setUps[i]) * Grains.TICKS_A_MINUTE;
            }
            double cells = count * table.cells(row);
            use(facts.bench, table.benchFrom(row), table.benchTo(row), cells);
            use(facts.trays, table.trayFrom(row), table.trayTo(row), cells);
            if (table.net(row) >= 0) {
                int net = facts.firstNet + table.net(row);
                use(net, table.netFrom(row), table.netTo(row), count * table.netMillimetres(row));
            }
            use(facts.cover, table.coverFrom(row), table.coverTo(row), count * table.millimetres(row));
        }
        for (int s = facts.bench; s < facts.shelves.size(); s++) {
            for (int w = 1; w < weeks; w++) {
                shelfUse[s * (weeks + 1) + w] += shelfUse[s * (weeks + 1) + w - 1];
            }
        }
    }

    private void use(int shelf, int from, int to, double amount) {
        if (from < to) {
            shelfUse[shelf * (weeks + 1) + from] += amount;
            shelfUse[shelf * (weeks + 1) + to] -= amount;
        }
    }

    /** Work of the lots counted by week, ticks. */
    double[] work() {
        return work;
    }

    /** What the lots counted take up of a shelf in a week. */
    double use(int shelf, int week) {
        return shelfUse[shelf * (weeks + 1) + week];
    }
}
