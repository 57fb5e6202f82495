package bedwright.plan;

import bedwright.growth.ProspectTable;
import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;

/**
 * The relaxation that a {@link Bound} is of, written as a linear program over some of the places: parts of lots at places,
 * stems let through the kinds and sold, hours, stock, and the money of each possible season with caution. Its optimum over
 * all places is the least that any prices can prove; its dual values are those prices.
 *
 * <p>Rows and columns are in stems, metres, hours and money of a mean season, so that a solver sees figures of ordinary
 * size.
 */
final class RelaxedModel {
    private static final double HUNDREDTHS = 100;
    private static final double A_METRE = 1000;

    private final Relaxation relaxed;
    private final PlanFacts facts;
    private final ProspectTable table;
    private final PriceLayout layout;
    private final int weeks;
    private final int seasons;
    /** Grains, summed over the seasons, of one money of a mean season. */
    private final double money;

    private final MPSolver solver;
    private final MPVariable spent;
    private final MPVariable[] work;
    private final MPConstraint spentRow;
    private final MPConstraint[] workRow;
    private final MPConstraint[] bedRow;
    private final MPConstraint[] shelfRow;
    private final MPConstraint[] lotRow;
    private final MPConstraint[] cameRow;
    private final MPConstraint[] askedRow;
    private final MPConstraint[] ownRow;
    private final MPConstraint[] hoursRow;
    private final MPConstraint[] cuttingRow;
    private final MPConstraint[] worstRow;
    private final MPConstraint mustRow;
    private final MPConstraint[] clearedRow;
    private final boolean[] isIn;
    private int columns;

    /**
     * A model without any places.
     *
     * @param solverName a linear solver of OR-Tools
     * @param missing as {@link Bound} has it
     */
    RelaxedModel(Relaxation relaxed, String solverName, long missing) {
        Loader.loadNativeLibraries();
        this.relaxed = relaxed;
        this.facts = relaxed.facts;
        this.table = facts.table;
        this.layout = PriceLayout.of(facts);
        this.weeks = facts.weeks;
        this.seasons = facts.seasonCount;
        this.money = (double) seasons * Grains.A_SMALLEST_UNIT
                * facts.season.currency().smallest();
        this.solver = MPSolver.createSolver(solverName);
        if (solver == null) {
            throw new IllegalArgumentException("OR-Tools has no solver named " + solverName);
        }
        this.isIn = new boolean[table.places()];
        this.work = new MPVariable[weeks];
        this.workRow = new MPConstraint[weeks];
        this.bedRow = new MPConstraint[facts.bench * weeks];
        this.shelfRow = new MPConstraint[facts.shelves.size() * weeks];
        this.lotRow = new MPConstraint[table.stocks()];
        this.cameRow = new MPConstraint[facts.cells.size() * weeks * seasons];
        this.askedRow = new MPConstraint[cameRow.length];
        this.ownRow = new MPConstraint[weeks * seasons];
        this.hoursRow = new MPConstraint[weeks];
        this.cuttingRow = new MPConstraint[weeks];
        this.worstRow = new MPConstraint[seasons];
        this.clearedRow = new MPConstraint[facts.fillings.length * weeks * seasons];
        this.spent = free();
        this.spentRow = solver.makeConstraint(0, 0);
        spentRow.setCoefficient(spent, -1);
        this.mustRow = solver.makeConstraint(-MPSolver.infinity(), missing / HUNDREDTHS);
        objectiveAndHours();
        shelves();
        for (int s = 0; s < lotRow.length; s++) {
            lotRow[s] = atMost(relaxed.lots[s]);
        }
        for (int p : relaxed.fixed) {
            put(facts.fixedPlace[p], 1, fixedOne());
        }
    }

    private MPConstraint atMost(double most) {
        return solver.makeConstraint(-MPSolver.infinity(), most);
    }

    private MPVariable fixedOne() {
        return solver.makeNumVar(1, 1, "");
    }

    private MPVariable free() {
        return solver.makeNumVar(-MPSolver.infinity(), MPSolver.infinity(), "");
    }

    private MPVariable some() {
        return solver.makeNumVar(0, MPSolver.infinity(), "");
    }

    /** Money of a mean season, all of it: what a season of weight 1 counts is its K-th part. */
    private double inMoney(double grains) {
        return grains / money;
    }

    private void objectiveAndHours() {
        MPObjective objective = solver.objective();
        objective.setMaximization();
        for (int w = 0; w < weeks; w++) {
            work[w] = free();
            double fixed = facts.fixedWork[w] / (double) Grains.TICKS_AN_HOUR;
            workRow[w] = solver.makeConstraint(-fixed, -fixed);
            workRow[w].setCoefficient(work[w], -1);
        }
        double low = relaxed.leastWeight();
        double spread = relaxed.greatestWeight() - low;
        MPVariable[] value = new MPVariable[seasons];
        MPConstraint[] valueRow = new MPConstraint[seasons];
        MPVariable threshold = free();
        objective.setCoefficient(threshold, seasons * (1 - low));
        for (int k = 0; k < seasons; k++) {
            value[k] = free();
            objective.setCoefficient(value[k], low);
            valueRow[k] = solver.makeConstraint(0, 0);
            valueRow[k].setCoefficient(value[k], -1);
            valueRow[k].setCoefficient(spent, -1.0 / seasons);
            // What a season lacks to the threshold is counted with the weight of the worst.
            worstRow[k] = atMost(0);
            MPVariable lacks = some();
            worstRow[k].setCoefficient(threshold, 1);
            worstRow[k].setCoefficient(value[k], -1);
            worstRow[k].setCoefficient(lacks, -1);
            objective.setCoefficient(lacks, -spread);
        }
        double must = 0;
        for (int w = 0; w < weeks; w++) {
            if (relaxed.hours(w) < WorkWeeks.UNLIMITED) {
                hoursRow[w] = atMost((double) seasons * relaxed.hours(w) / Grains.TICKS_AN_HOUR);
            }
            if (facts.hours.cutting()[w] < WorkWeeks.UNLIMITED) {
                cuttingRow[w] = atMost((double) seasons * facts.hours.cutting()[w] / Grains.TICKS_AN_HOUR);
            }
            for (int k = 0; k < seasons; k++) {
                must += week(w, k, valueRow[k]);
            }
        }
        mustRow.setUb(mustRow.ub() - must);
    }

    /**
     * Hours and sales of a week in a season.
     *
     * @return weighted stems that must be ours
     */
    private double week(int w, int k, MPConstraint value) {
        int at = w * seasons + k;
        double anHour = Grains.TICKS_AN_HOUR;
        // Work of the season's week: planned, less and more by cutting and clearing.
        MPVariable hours = free();
        MPConstraint sum = solver.makeConstraint(0, 0);
        sum.setCoefficient(hours, -1);
        sum.setCoefficient(work[w], 1);
        value.setCoefficient(hours, -inMoney(relaxed.pay(w) * anHour));
        if (hoursRow[w] != null) {
            hoursRow[w].setCoefficient(hours, 1);
        }
        if (relaxed.extraPay(w) > 0) {
            MPVariable more = some();
            ownRow[at] = atMost(facts.hours.own()[w] / anHour);
            ownRow[at].setCoefficient(hours, 1);
            ownRow[at].setCoefficient(more, -1);
            value.setCoefficient(more, -inMoney(relaxed.extraPay(w) * anHour));
        }
        double none = 0;
        double must = 0;
        for (Filling filling : facts.fillings) {
            none += filling.none[at];
            must += sales(filling, w, at, value, sum);
        }
        value.setBounds(value.lb() - inMoney(none), value.ub() - inMoney(none));
        return must;
    }

    private double sales(Filling filling, int w, int at, MPConstraint value, MPConstraint hours) {
        double ticksAStem = HUNDREDTHS / Grains.TICKS_AN_HOUR;
        if (filling.clearRate != 0) {
            MPVariable all = some();
            MPConstraint row = solver.makeConstraint(0, 0);
            row.setCoefficient(all, -1);
            hours.setCoefficient(all, filling.clearRate * ticksAStem);
            clearedRow[filling.role * weeks * seasons + at] = row;
        }
        MPVariable[] through = new MPVariable[filling.nodes];
        for (int n = 0; n < filling.nodes; n++) {
            int cell = (filling.firstNode + n) * weeks * seasons + at;
            if (!relaxed.comes[(filling.firstNode + n) * weeks + w]) {
                continue;
            }
            double most = filling.most[n] == Integer.MAX_VALUE ? MPSolver.infinity() : filling.most[n] / HUNDREDTHS;
            through[n] = solver.makeNumVar(0, most, "");
            cameRow[cell] = atMost(0);
            cameRow[cell].setCoefficient(through[n], 1);
            askedRow[cell] = atMost(0);
            askedRow[cell].setCoefficient(through[n], -1);
            if (filling.parent[n] >= 0) {
                int above = (filling.firstNode + filling.parent[n]) * weeks * seasons + at;
                cameRow[above].setCoefficient(through[n], -1);
            }
        }
        double must = 0;
        for (Filling.Line line : filling.lines) {
            double amount = line.amount()[at] / HUNDREDTHS;
            must += line.weight() * amount;
            if (amount == 0 || through[line.node()] == null) {
                continue;
            }
            MPVariable sold = solver.makeNumVar(0, amount, "");
            value.setCoefficient(sold, inMoney(line.gain() * HUNDREDTHS));
            hours.setCoefficient(sold, (filling.cutRate - filling.clearRate) * ticksAStem);
            if (cuttingRow[w] != null) {
                cuttingRow[w].setCoefficient(sold, filling.cutRate * ticksAStem);
            }
            if (line.weight() > 0) {
                mustRow.setCoefficient(sold, -line.weight());
            }
            for (int n = line.node(); n >= 0; n = filling.parent[n]) {
                askedRow[(filling.firstNode + n) * weeks * seasons + at].setCoefficient(sold, 1);
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
            MPVariable bought = shelf.price() > 0 ? some() : null;
            if (bought != null) {
                solver.objective().setCoefficient(bought, -inMoney((double) seasons * shelf.price() * unit(s)));
            }
            for (int w = 0; w < weeks; w++) {
                MPConstraint row = atMost(shelf.holds() / unit(s));
                if (bought != null) {
                    row.setCoefficient(bought, -1);
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
        if (!isIn[place]) {
            isIn[place] = true;
            columns++;
            MPVariable lots = some();
            lotRow[table.stock(place)].setCoefficient(lots, 1);
            put(place, relaxed.share[place], lots);
        }
    }

    boolean has(int place) {
        return isIn[place];
    }

    int columns() {
        return columns;
    }

    private void put(int place, double share, MPVariable lots) {
        int row = table.row(place);
        double costs = (double) table.material(row) * Grains.A_SMALLEST_UNIT
                + (facts.restBroken[place] ? facts.restPrice : 0);
        spentRow.setCoefficient(lots, inMoney(seasons * costs));
        for (int i = 0; i < table.work(row).length; i++) {
            double minutes = table.work(row)[i] + share * table.setUp(row)[i];
            workRow[table.workFrom(row) + i].setCoefficient(lots, minutes / 60);
        }
        if (relaxed.holdsBed(place)) {
            for (int w = table.heldFrom(row); w < table.heldTo(row); w++) {
                bedRow[table.bed(place) * weeks + w].setCoefficient(lots, table.millimetres(row) / A_METRE);
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

    private void use(int shelf, int from, int to, double amount, MPVariable lots) {
        for (int w = from; w < to && amount > 0; w++) {
            MPConstraint row = shelfRow[shelf * weeks + w];
            if (row != null) {
                row.setCoefficient(lots, amount / unit(shelf));
            }
        }
    }

    /** Several blocks of a row can come of kinds that are not told apart in the same week, so they are added up first. */
    private void stems(int row, MPVariable lots) {
        int[] stems = table.stems(row);
        for (int b = 0; b < table.blocks(row); b++) {
            int cell = facts.cells.of(table.blockNode(row, b));
            int at = table.blockWeek(row, b) * seasons;
            int role = facts.kinds.role(table.blockNode(row, b));
            for (int k = 0; k < seasons; k++) {
                double all = stems[b * seasons + k] / HUNDREDTHS;
                MPConstraint came = cameRow[cell * weeks * seasons + at + k];
                came.setCoefficient(lots, came.getCoefficient(lots) - all);
                MPConstraint cleared = clearedRow[role * weeks * seasons + at + k];
                if (cleared != null) {
                    cleared.setCoefficient(lots, cleared.getCoefficient(lots) + all);
                }
            }
        }
    }

    /**
     * Solves it.
     *
     * @param settings of the solver's own, empty for none
     * @return the optimum, grains summed over the seasons as the soft score is
     * @throws IllegalStateException if there is none
     */
    double solve(String settings) {
        if (!settings.isEmpty() && !solver.setSolverSpecificParametersAsString(settings)) {
            throw new IllegalArgumentException("The solver does not know the setting " + settings);
        }
        MPSolver.ResultStatus status = solver.solve();
        if (status != MPSolver.ResultStatus.OPTIMAL) {
            throw new IllegalStateException("The linear program was not solved: " + status);
        }
        return solver.objective().value() * money;
    }

    /** The dual values as prices; what is a hair below 0 is 0. */
    Prices prices() {
        double[] each = new double[layout.size()];
        double[] weight = new double[seasons];
        for (int k = 0; k < seasons; k++) {
            weight[k] = relaxed.leastWeight() + dual(worstRow[k]);
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
                each[layout.shelves() + (s - facts.bench) * weeks + w] = dual(shelfRow[s * weeks + w]) * money / unit(s);
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
            if (filling.most[n] != Integer.MAX_VALUE) {
                worth[n] = Math.min(before, perWeight(dual(cameRow[cell]) * aHundredth, weight));
                each[layout.most() + cell] = before - worth[n];
            }
        }
    }

    private static double perWeight(double price, double weight) {
        return weight <= 1e-12 ? 0 : price / weight;
    }

    /** What the optimum gains when a row's limit is raised by one; money of a mean season. */
    private static double dual(MPConstraint row) {
        return row == null ? 0 : Math.max(0, row.dualValue());
    }

    @Override
    public String toString() {
        return solver.numVariables() + " columns, " + solver.numConstraints() + " rows, " + columns + " places of "
                + table.places();
    }
}
