package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The relaxation that a {@link Bound} is of, written as a linear program over some of the places: parts of lots at places,
 * stems let through the kinds and sold, hours, stock, and the money of each possible season with caution. Its optimum over
 * all places is the least that any prices can prove; its dual values are those prices.
 *
 * <p>Rows and columns are in stems, metres, hours and money of a mean season, so that a solver sees figures of ordinary
 * size.
 */
final class RelaxedModel {
    /** Settings of HiGHS with which it solves it soonest: without going on to a corner, which would take far longer. */
    static final String INTERIOR = "solver=ipm,run_crossover=off";

    private static final int NONE = -1;
    private static final double HUNDREDTHS = 100;
    private static final double A_METRE = 1000;
    /**
     * Money of a mean season for each weighted stem that must be ours, beyond those that may be missing. Far more than any
     * stem is worth, but not without limit: an interior point would take the price of what is easily met to where sums lose
     * their last digits, and a solver for whole lots would have no plan to begin with.
     */
    private static final double MUST = 100;

    private final Relaxation relaxed;
    private final PlanFacts facts;
    private final ProspectTable table;
    private final PriceLayout layout;
    private final int weeks;
    private final int seasons;
    /** Grains, summed over the seasons, of one money of a mean season. */
    private final double money;

    private final SparseProgram program = new SparseProgram();
    private double[] prices = new double[0];
    private final int spent;
    private final int[] work;
    private final int spentRow;
    private final int[] workRow;
    private final int[] bedRow;
    private final int[] shelfRow;
    private final int[] lotRow;
    private final int[] cameRow;
    private final int[] askedRow;
    private final int[] ownRow;
    private final int[] hoursRow;
    private final int[] cuttingRow;
    private final int[] worstRow;
    private final int mustRow;
    private final int[] clearedRow;
    private final int[] lotColumn;
    private int columns;

    /**
     * A model without any places.
     *
     * @param missing as {@link Bound} has it
     */
    RelaxedModel(Relaxation relaxed, long missing) {
        this.relaxed = relaxed;
        this.facts = relaxed.facts;
        this.table = facts.table;
        this.layout = PriceLayout.of(facts);
        this.weeks = facts.weeks;
        this.seasons = facts.seasonCount;
        this.money = (double) seasons
                * Grains.A_SMALLEST_UNIT
                * facts.season.currency().smallest();
        this.lotColumn = none(table.places());
        this.work = new int[weeks];
        this.workRow = none(weeks);
        this.bedRow = none(facts.bench * weeks);
        this.shelfRow = none(facts.shelves.size() * weeks);
        this.lotRow = none(table.stocks());
        this.cameRow = none(facts.cells.size() * weeks * seasons);
        this.askedRow = none(cameRow.length);
        this.ownRow = none(weeks * seasons);
        this.hoursRow = none(weeks);
        this.cuttingRow = none(weeks);
        this.worstRow = none(seasons);
        this.clearedRow = none(facts.fillings.length * weeks * seasons);
        this.spent = program.free();
        this.spentRow = program.exactly(0);
        program.add(spentRow, spent, -1);
        this.mustRow = program.atMost(missing / HUNDREDTHS);
        int lacking = program.some();
        program.add(mustRow, lacking, -1);
        program.gains(lacking, -MUST);
        objectiveAndHours();
        shelves();
        for (int s = 0; s < lotRow.length; s++) {
            lotRow[s] = program.atMost(relaxed.lots[s]);
        }
        for (int p : relaxed.fixed) {
            put(facts.fixedPlace[p], 1, program.column(1, 1));
        }
    }

    private static int[] none(int count) {
        int[] rows = new int[count];
        Arrays.fill(rows, NONE);
        return rows;
    }

    /** Money of a mean season, all of it: what a season of weight 1 counts is its K-th part. */
    private double inMoney(double grains) {
        return grains / money;
    }

    private void objectiveAndHours() {
        for (int w = 0; w < weeks; w++) {
            work[w] = program.free();
            double fixed = facts.fixedWork[w] / (double) Grains.TICKS_AN_HOUR;
            workRow[w] = program.exactly(-fixed);
            program.add(workRow[w], work[w], -1);
        }
        double low = relaxed.facts.leastWeight();
        double spread = relaxed.facts.greatestWeight() - low;
        int[] value = new int[seasons];
        int[] valueRow = none(seasons);
        int threshold = program.free();
        program.gains(threshold, seasons * (1 - low));
        for (int k = 0; k < seasons; k++) {
            value[k] = program.free();
            program.gains(value[k], low);
            valueRow[k] = program.exactly(0);
            program.add(valueRow[k], value[k], -1);
            program.add(valueRow[k], spent, -1.0 / seasons);
            // What a season lacks to the threshold is counted with the weight of the worst.
            worstRow[k] = program.atMost(0);
            int lacks = program.some();
            program.add(worstRow[k], threshold, 1);
            program.add(worstRow[k], value[k], -1);
            program.add(worstRow[k], lacks, -1);
            program.gains(lacks, -spread);
        }
        double must = 0;
        for (int w = 0; w < weeks; w++) {
            if (relaxed.hours(w) < WorkWeeks.UNLIMITED) {
                hoursRow[w] = program.atMost((double) seasons * relaxed.hours(w) / Grains.TICKS_AN_HOUR);
            }
            if (facts.hours.cutting()[w] < WorkWeeks.UNLIMITED) {
                cuttingRow[w] = program.atMost((double) seasons * facts.hours.cutting()[w] / Grains.TICKS_AN_HOUR);
            }
            for (int k = 0; k < seasons; k++) {
                must += week(w, k, valueRow[k]);
            }
        }
        program.raise(mustRow, -must);
    }

    /**
     * Hours and sales of a week in a season.
     *
     * @return weighted stems that must be ours
     */
    private double week(int w, int k, int value) {
        int at = w * seasons + k;
        double anHour = Grains.TICKS_AN_HOUR;
        // Work of the season's week: planned, less and more by cutting and clearing.
        int hours = program.free();
        int sum = program.exactly(0);
        program.add(sum, hours, -1);
        program.add(sum, work[w], 1);
        program.add(value, hours, -inMoney(relaxed.pay(w) * anHour));
        if (hoursRow[w] != NONE) {
            program.add(hoursRow[w], hours, 1);
        }
        if (relaxed.extraPay(w) > 0) {
            int more = program.some();
            ownRow[at] = program.atMost(facts.hours.own()[w] / anHour);
            program.add(ownRow[at], hours, 1);
            program.add(ownRow[at], more, -1);
            program.add(value, more, -inMoney(relaxed.extraPay(w) * anHour));
        }
        double none = 0;
        double must = 0;
        for (Filling filling : facts.fillings) {
            none += filling.none[at];
            must += sales(filling, w, at, value, sum);
        }
        program.raise(value, -inMoney(none));
        return must;
    }

    private double sales(Filling filling, int w, int at, int value, int hours) {
        double ticksAStem = HUNDREDTHS / Grains.TICKS_AN_HOUR;
        if (filling.clearRate != 0) {
            int all = program.some();
            int row = program.exactly(0);
            program.add(row, all, -1);
            program.add(hours, all, filling.clearRate * ticksAStem);
            clearedRow[filling.role * weeks * seasons + at] = row;
        }
        int[] through = none(filling.nodes);
        for (int n = 0; n < filling.nodes; n++) {
            int cell = (filling.firstNode + n) * weeks * seasons + at;
            if (!relaxed.comes[(filling.firstNode + n) * weeks + w]) {
                continue;
            }
            double most =
                    filling.most[n] == Integer.MAX_VALUE ? Double.POSITIVE_INFINITY : filling.most[n] / HUNDREDTHS;
            through[n] = program.column(0, most);
            cameRow[cell] = program.atMost(0);
            program.add(cameRow[cell], through[n], 1);
            askedRow[cell] = program.atMost(0);
            program.add(askedRow[cell], through[n], -1);
            if (filling.parent[n] >= 0) {
                int above = (filling.firstNode + filling.parent[n]) * weeks * seasons + at;
                program.add(cameRow[above], through[n], -1);
            }
        }
        double must = 0;
        for (Filling.Line line : filling.lines) {
            double amount = line.asked()[at / seasons] / HUNDREDTHS;
            must += line.weight() * amount;
            if (amount == 0 || through[line.node()] == NONE) {
                continue;
            }
            int sold = program.column(0, amount);
            program.add(value, sold, inMoney(line.gain() * HUNDREDTHS));
            program.add(hours, sold, (filling.cutRate - filling.clearRate) * ticksAStem);
            if (cuttingRow[w] != NONE) {
                program.add(cuttingRow[w], sold, filling.cutRate * ticksAStem);
            }
            if (line.weight() > 0) {
                program.add(mustRow, sold, -line.weight());
            }
            for (int n = line.node(); n >= 0; n = filling.parent[n]) {
                program.add(askedRow[(filling.firstNode + n) * weeks * seasons + at], sold, 1);
            }
        }
        return must;
    }

    private void shelves() {
        for (int s = 0; s < facts.shelves.size(); s++) {
            Shelf shelf = facts.shelves.get(s);
            if (shelf.holds() >= WorkWeeks.UNLIMITED) {
                continue;
            }
            int bought = shelf.price() > 0 ? program.some() : NONE;
            if (bought != NONE) {
                program.gains(bought, -inMoney((double) seasons * shelf.price() * unit(s)));
            }
            for (int w = 0; w < weeks; w++) {
                int row = program.atMost(shelf.holds() / unit(s));
                if (bought != NONE) {
                    program.add(row, bought, -1);
                }
                (s < facts.bench ? bedRow : shelfRow)[s * weeks + w] = row;
            }
        }
    }

    private double unit(int shelf) {
        return facts.shelves.get(shelf).unit().equals("mm") ? A_METRE : 1;
    }

    /** Adds a place, unless it is there already. */
    void add(int place) {
        if (!has(place)) {
            columns++;
            int lots = program.some();
            lotColumn[place] = lots;
            program.add(lotRow[table.stock(place)], lots, 1);
            put(place, relaxed.share[place], lots);
        }
    }

    /**
     * Adds the places of which there are most lots.
     *
     * @param lots by place
     * @param most places that are added
     */
    void addMost(double[] lots, int most) {
        IntStream.range(0, lots.length)
                .filter(place -> relaxed.open[place] && lots[place] > 0)
                .boxed()
                .sorted(Comparator.comparingDouble(place -> -lots[place]))
                .limit(most)
                .forEach(this::add);
    }

    boolean has(int place) {
        return lotColumn[place] != NONE;
    }

    int columns() {
        return columns;
    }

    private void put(int place, double share, int lots) {
        int row = table.row(place);
        double costs =
                (double) table.material(row) * Grains.A_SMALLEST_UNIT + (facts.restBroken[place] ? facts.restPrice : 0);
        program.add(spentRow, lots, inMoney(seasons * costs));
        for (int i = 0; i < table.work(row).length; i++) {
            double minutes = table.work(row)[i] + share * table.setUp(row)[i];
            program.add(workRow[table.workFrom(row) + i], lots, minutes / 60);
        }
        if (relaxed.holdsBed(place)) {
            for (int w = table.heldFrom(row); w < table.heldTo(row); w++) {
                program.add(bedRow[table.bed(place) * weeks + w], lots, table.millimetres(row) / A_METRE);
            }
        }
        use(facts.bench, table.benchFrom(row), table.benchTo(row), table.cells(row), lots);
        use(facts.trays, table.trayFrom(row), table.trayTo(row), table.cells(row), lots);
        if (table.net(row) >= 0) {
            int net = facts.firstNet + table.net(row);
            use(net, table.netFrom(row), table.netTo(row), table.netMillimetres(row), lots);
        }
        use(facts.cover, table.coverFrom(row), table.coverTo(row), table.millimetres(row), lots);
        stems(row, lots);
    }

    private void use(int shelf, int from, int to, double amount, int lots) {
        for (int w = from; w < to && amount > 0; w++) {
            int row = shelfRow[shelf * weeks + w];
            if (row != NONE) {
                program.add(row, lots, amount / unit(shelf));
            }
        }
    }

    private void stems(int row, int lots) {
        int[] stems = table.stems(row);
        for (int b = 0; b < table.blocks(row); b++) {
            int cell = facts.cells.of(table.blockNode(row, b));
            int at = table.blockWeek(row, b) * seasons;
            int role = facts.kinds.role(table.blockNode(row, b));
            for (int k = 0; k < seasons; k++) {
                double all = stems[b * seasons + k] / HUNDREDTHS;
                program.add(cameRow[cell * weeks * seasons + at + k], lots, -all);
                int cleared = clearedRow[role * weeks * seasons + at + k];
                if (cleared != NONE) {
                    program.add(cleared, lots, all);
                }
            }
        }
    }

    /**
     * Solves it.
     *
     * @param solver a linear solver of OR-Tools
     * @param settings of the solver's own, empty for none
     * @return the optimum, grains summed over the seasons as the soft score is
     */
    double solve(String solver, String settings) {
        SparseProgram.Solved solved = program.solve(solver, settings);
        prices = solved.prices();
        return solved.optimum() * money;
    }

    /**
     * Solves it for lots.
     *
     * @param wanted in which form and for how long
     * @return lots by place, 0 for places that are not in it; empty if the solver came to none in its time
     */
    Optional<Lots> lots(SparseProgram.Wanted wanted) {
        boolean[] isWhole = new boolean[program.columns()];
        for (int column : lotColumn) {
            if (column != NONE) {
                isWhole[column] = true;
            }
        }
        return program.values(wanted, isWhole).map(found -> {
            double[] each = new double[lotColumn.length];
            Arrays.setAll(each, place -> has(place) ? found.values()[lotColumn[place]] : 0);
            return new Lots(each, found.objective() * money, found.bound() * money, found.isProven());
        });
    }

    /**
     * Lots by place.
     *
     * @param each lots, parts of lots among them
     * @param value what the model says they are worth, grains summed over the seasons
     * @param bound what no lots can be worth more than, by the solver; the value itself where it knows none
     * @param isProven whether they are the best there are in the model
     */
    record Lots(double[] each, double value, double bound, boolean isProven) {}

    /** The dual values as prices; what is a hair below 0 is 0. */
    Prices prices() {
        double[] each = new double[layout.size()];
        double[] weight = new double[seasons];
        for (int k = 0; k < seasons; k++) {
            weight[k] = relaxed.facts.leastWeight() + dual(worstRow[k]);
            each[layout.seasons() + k] = weight[k];
        }
        double aTick = money / Grains.TICKS_AN_HOUR;
        double aHundredth = money / HUNDREDTHS;
        for (int w = 0; w < weeks; w++) {
            each[layout.hours() + w] = dual(hoursRow[w]) * aTick;
            each[layout.cutting() + w] = dual(cuttingRow[w]) * aTick;
            for (int k = 0; k < seasons; k++) {
                int at = w * seasons + k;
                each[layout.hired() + at] = perWeight(dual(ownRow[at]) * aTick, weight[k]);
            }
        }
        for (Filling filling : facts.fillings) {
            for (int at = 0; at < weeks * seasons; at++) {
                stems(filling, at, weight[at % seasons], aHundredth, each);
            }
        }
        for (int s = facts.bench; s < facts.shelves.size(); s++) {
            for (int w = 0; w < weeks; w++) {
                each[layout.shelves() + (s - facts.bench) * weeks + w] =
                        dual(shelfRow[s * weeks + w]) * money / unit(s);
            }
        }
        for (int s = 0; s < lotRow.length; s++) {
            each[layout.lots() + s] = dual(lotRow[s]) * money;
        }
        for (int p : relaxed.fixed) {
            int row = table.row(facts.fixedPlace[p]);
            for (int w = table.heldFrom(row); relaxed.holdsBed(facts.fixedPlace[p]) && w < table.heldTo(row); w++) {
                int bed = table.bed(facts.fixedPlace[p]);
                each[layout.standing() + p] += dual(bedRow[bed * weeks + w]) * money / A_METRE;
            }
        }
        each[layout.must()] = dual(mustRow) * aHundredth;
        return new Prices(facts, each);
    }

    private void stems(Filling filling, int at, double weight, double aHundredth, double[] each) {
        double[] worth = new double[filling.nodes];
        for (int n = 0; n < filling.nodes; n++) {
            int cell = (filling.firstNode + n) * weeks * seasons + at;
            double asked = perWeight(dual(askedRow[cell]) * aHundredth, weight);
            double before = (filling.parent[n] < 0 ? 0 : worth[filling.parent[n]]) + asked;
            each[layout.asked() + cell] = asked;
            worth[n] = before;
            if (filling.most[n] != Integer.MAX_VALUE && cameRow[cell] != NONE) {
                worth[n] = Math.min(before, perWeight(dual(cameRow[cell]) * aHundredth, weight));
                each[layout.most() + cell] = before - worth[n];
            }
        }
    }

    private static double perWeight(double price, double weight) {
        return weight <= 1e-12 ? 0 : price / weight;
    }

    /** What the optimum gains when a row's limit is raised by one; money of a mean season. */
    private double dual(int row) {
        return row == NONE ? 0 : Math.max(0, prices[row]);
    }

    @Override
    public String toString() {
        return program + ", " + columns + " places of " + table.places();
    }
}
