package bedwright.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import java.util.function.ToLongFunction;

/** A way to solve whole-number models to proven optimality. */
interface Solving {
    /** Whether the model is easier for it if stems may be held back. */
    boolean isLoose();

    /**
     * The values of the variables in a best solution.
     *
     * @throws IllegalStateException if there is no solution, or none is proven best
     */
    ToLongFunction<IntVar> solved(CpModel model);
}
