package bedwright.plan;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.Arrays;
import java.util.Optional;

/**
 * A linear program to be made greatest, kept apart from any solver, and solved by way of its dual: so the prices of its
 * rows come back as the values of variables. (Of a row's dual value OR-Tools' way to HiGHS gives what the row uses.)
 */
final class SparseProgram {
    private double[] cost = new double[1024];
    private double[] least = new double[1024];
    private double[] most = new double[1024];
    private int columns;
    private double[] rowLeast = new double[1024];
    private double[] rowMost = new double[1024];
    private int rows;
    private int[] entryRow = new int[4096];
    private int[] entryColumn = new int[4096];
    private double[] entry = new double[4096];
    private int entries;

    /**
     * The optimum, and what it gains when the limit of a row is raised by one.
     *
     * @param prices by row
     */
    record Solved(double optimum, double[] prices) {}

    /** A column from 0 up. */
    int some() {
        return column(0, Double.POSITIVE_INFINITY);
    }

    /** A column without limits. */
    int free() {
        return column(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** A column: either without limits, or from 0 up, or from 0 to a limit, or of one value alone. */
    int column(double from, double to) {
        if (columns == cost.length) {
            cost = Arrays.copyOf(cost, 2 * columns);
            least = Arrays.copyOf(least, 2 * columns);
            most = Arrays.copyOf(most, 2 * columns);
        }
        least[columns] = from;
        most[columns] = to;
        return columns++;
    }

    void gains(int column, double each) {
        cost[column] += each;
    }

    /** A row of at most so much. */
    int atMost(double limit) {
        return row(Double.NEGATIVE_INFINITY, limit);
    }

    /** A row of exactly so much. */
    int exactly(double amount) {
        return row(amount, amount);
    }

    private int row(double from, double to) {
        if (rows == rowLeast.length) {
            rowLeast = Arrays.copyOf(rowLeast, 2 * rows);
            rowMost = Arrays.copyOf(rowMost, 2 * rows);
        }
        rowLeast[rows] = from;
        rowMost[rows] = to;
        return rows++;
    }

    /** Raises what a row is limited to. */
    void raise(int row, double by) {
        rowLeast[row] += by;
        rowMost[row] += by;
    }

    /** Adds to what a column counts in a row. */
    void add(int row, int column, double each) {
        if (entries == entry.length) {
            entryRow = Arrays.copyOf(entryRow, 2 * entries);
            entryColumn = Arrays.copyOf(entryColumn, 2 * entries);
            entry = Arrays.copyOf(entry, 2 * entries);
        }
        entryRow[entries] = row;
        entryColumn[entries] = column;
        entry[entries++] = each;
    }

    /**
     * Solves it.
     *
     * @param solverName a linear solver of OR-Tools
     * @param settings of the solver's own, empty for none
     * @throws IllegalStateException if there is no optimum, or it was not found
     */
    Solved solve(String solverName, String settings) {
        MPSolver solver = solver(solverName);
        tell(solver, settings);
        double endless = MPSolver.infinity();
        MPVariable[] price = new MPVariable[rows];
        solver.objective().setMinimization();
        for (int r = 0; r < rows; r++) {
            price[r] = solver.makeNumVar(rowLeast[r] == rowMost[r] ? -endless : 0, endless, "");
            solver.objective().setCoefficient(price[r], rowMost[r]);
        }
        int[] first = new int[columns + 1];
        for (int e = 0; e < entries; e++) {
            first[entryColumn[e] + 1]++;
        }
        for (int c = 0; c < columns; c++) {
            first[c + 1] += first[c];
        }
        int[] next = Arrays.copyOf(first, columns);
        int[] sorted = new int[entries];
        for (int e = 0; e < entries; e++) {
            sorted[next[entryColumn[e]]++] = e;
        }
        double[] sums = new double[rows];
        for (int c = 0; c < columns; c++) {
            boolean isFree = least[c] == Double.NEGATIVE_INFINITY;
            MPConstraint pays = solver.makeConstraint(cost[c], isFree ? cost[c] : endless);
            for (int i = first[c]; i < first[c + 1]; i++) {
                sums[entryRow[sorted[i]]] += entry[sorted[i]];
            }
            for (int i = first[c]; i < first[c + 1]; i++) {
                int row = entryRow[sorted[i]];
                if (sums[row] != 0) {
                    pays.setCoefficient(price[row], sums[row]);
                    sums[row] = 0;
                }
            }
            if (most[c] != Double.POSITIVE_INFINITY) {
                MPVariable surplus = solver.makeNumVar(least[c] == most[c] ? -endless : 0, endless, "");
                pays.setCoefficient(surplus, 1);
                solver.objective().setCoefficient(surplus, most[c]);
            }
        }
        MPSolver.ResultStatus status = solver.solve();
        if (status != MPSolver.ResultStatus.OPTIMAL) {
            throw new IllegalStateException("The linear program was not solved: " + status);
        }
        double[] prices = new double[rows];
        for (int r = 0; r < rows; r++) {
            prices[r] = price[r].solutionValue();
        }
        double optimum = solver.objective().value();
        solver.delete();
        return new Solved(optimum, prices);
    }

    int columns() {
        return columns;
    }

    /**
     * In which form a solver is given it.
     *
     * @param solver of OR-Tools
     * @param settings of the solver's own, empty for none
     * @param isWhole whether those columns that stand for whole things have to be whole
     * @param seconds it has at most
     * @param threads it may use
     */
    record Wanted(String solver, String settings, boolean isWhole, double seconds, int threads) {}

    /**
     * What a solver came to.
     *
     * @param bound that it proves, or the objective again where it knows none
     * @param isProven whether it is the optimum
     */
    record Values(double[] values, double objective, double bound, boolean isProven) {}

    /**
     * Solves it as it stands, for the values of its columns.
     *
     * @param whole columns that stand for whole things
     * @return empty if there are none after that time
     */
    Optional<Values> values(Wanted wanted, boolean[] whole) {
        MPSolver solver = solver(wanted.solver());
        MPVariable[] column = primal(solver, wanted.isWhole() ? whole : new boolean[columns]);
        solver.setTimeLimit(Math.round(1000 * wanted.seconds()));
        // Some solvers can't be told, and answer so.
        var unused = solver.setNumThreads(wanted.threads());
        tell(solver, wanted.settings());
        try {
            MPSolver.ResultStatus status = run(solver);
            if (status != MPSolver.ResultStatus.OPTIMAL && status != MPSolver.ResultStatus.FEASIBLE) {
                return Optional.empty();
            }
            double[] values =
                    Arrays.stream(column).mapToDouble(MPVariable::solutionValue).toArray();
            double objective = solver.objective().value();
            double bound = wanted.isWhole() ? solver.objective().bestBound() : objective;
            return Optional.of(new Values(values, objective, bound, status == MPSolver.ResultStatus.OPTIMAL));
        } finally {
            solver.delete();
        }
    }

    /** Not solved, too, for what OR-Tools has no name for in Java: that the time of HiGHS was over before it had a plan. */
    private static MPSolver.ResultStatus run(MPSolver solver) {
        try {
            return solver.solve();
        } catch (IllegalArgumentException nameless) {
            return MPSolver.ResultStatus.NOT_SOLVED;
        }
    }

    private static MPSolver solver(String name) {
        Loader.loadNativeLibraries();
        MPSolver solver = MPSolver.createSolver(name);
        if (solver == null) {
            throw new IllegalArgumentException("OR-Tools has no solver named " + name);
        }
        return solver;
    }

    private static void tell(MPSolver solver, String settings) {
        if (!settings.isEmpty()) {
            // What it answers means nothing: that of HiGHS says no, and takes them.
            var unused = solver.setSolverSpecificParametersAsString(settings);
        }
    }

    private MPVariable[] primal(MPSolver solver, boolean[] isWhole) {
        double endless = MPSolver.infinity();
        MPVariable[] column = new MPVariable[columns];
        solver.objective().setMaximization();
        for (int c = 0; c < columns; c++) {
            column[c] = solver.makeVar(limit(least[c]), limit(most[c]), isWhole[c], "");
            solver.objective().setCoefficient(column[c], cost[c]);
        }
        MPConstraint[] row = new MPConstraint[rows];
        for (int r = 0; r < rows; r++) {
            row[r] =
                    solver.makeConstraint(rowLeast[r] == Double.NEGATIVE_INFINITY ? -endless : rowLeast[r], rowMost[r]);
        }
        // What stands twice for a column in a row counts together.
        for (int e = 0; e < entries; e++) {
            MPVariable of = column[entryColumn[e]];
            row[entryRow[e]].setCoefficient(of, row[entryRow[e]].getCoefficient(of) + entry[e]);
        }
        return column;
    }

    private static double limit(double value) {
        return Double.isInfinite(value) ? Math.copySign(MPSolver.infinity(), value) : value;
    }

    @Override
    public String toString() {
        return columns + " columns, " + rows + " rows, " + entries + " entries";
    }
}
