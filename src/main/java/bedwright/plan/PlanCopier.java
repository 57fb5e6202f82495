package bedwright.plan;

import ai.timefold.solver.core.api.domain.solution.cloner.SolutionCloner;

/** Copies a plan for the solver to keep: its plantings anew, all else shared. */
public final class PlanCopier implements SolutionCloner<SeasonPlan> {
    @Override
    public SeasonPlan cloneSolution(SeasonPlan plan) {
        return plan.copy();
    }
}
