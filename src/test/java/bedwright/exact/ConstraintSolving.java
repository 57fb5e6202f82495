package bedwright.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.SatParameters;
import java.util.function.ToLongFunction;

/** By a constraint solver, in whole numbers throughout. */
final class ConstraintSolving implements Solving {
    /** In the solver's own measure, which does not depend on the machine; about a second each. */
    private static final double MOST_EFFORT = 200;

    private final SatParameters parameters;
    private final boolean loose;

    /** For models with few stems, the same on every machine. */
    ConstraintSolving() {
        this.loose = false;
        // The presolve works out every sum that stems can come to, which takes longer than all the rest.
        this.parameters = SatParameters.newBuilder()
                .setCpModelPresolve(false)
                .setNumWorkers(1)
                .setRandomSeed(1)
                .setMaxDeterministicTime(MOST_EFFORT)
                .build();
    }

    /**
     * For larger models: stems may be held back, and linear relaxations are looked at.
     *
     * @param effort at the most for one model, in the solver's own measure
     */
    ConstraintSolving(double effort) {
        this.loose = true;
        this.parameters = SatParameters.newBuilder()
                .setNumWorkers(1)
                .setRandomSeed(1)
                .setLinearizationLevel(2)
                .setMaxDeterministicTime(effort)
                .build();
    }

    @Override
    public boolean isLoose() {
        return loose;
    }

    @Override
    public ToLongFunction<IntVar> solved(CpModel model) {
        CpSolver solver = new CpSolver();
        solver.getParameters().mergeFrom(parameters);
        CpSolverStatus status = solver.solve(model);
        if (status != CpSolverStatus.OPTIMAL) {
            throw new IllegalStateException("Not proven best, but " + status + ": " + model.validate());
        }
        return solver::value;
    }
}
