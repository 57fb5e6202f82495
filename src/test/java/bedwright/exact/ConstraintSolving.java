package bedwright.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import java.util.function.ToLongFunction;

/** By a constraint solver, in whole numbers throughout. */
final class ConstraintSolving implements Solving {
    /** In the solver's own measure, which does not depend on the machine; about a second each. */
    private static final double MOST_EFFORT = 200;

    @Override
    public boolean isLoose() {
        return false;
    }

    @Override
    public ToLongFunction<IntVar> solved(CpModel model) {
        CpSolver solver = new CpSolver();
        // The presolve works out every sum that stems can come to, which takes longer than all the rest.
        solver.getParameters()
                .setCpModelPresolve(false)
                .setNumWorkers(1)
                .setRandomSeed(1)
                .setMaxDeterministicTime(MOST_EFFORT);
        CpSolverStatus status = solver.solve(model);
        if (status != CpSolverStatus.OPTIMAL) {
            throw new IllegalStateException("Not proven best, but " + status + ": " + model.validate());
        }
        return solver::value;
    }
}
