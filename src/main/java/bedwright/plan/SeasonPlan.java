package bedwright.plan;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.ProblemFactProperty;
import ai.timefold.solver.core.api.domain.valuerange.ValueRange;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeFactory;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.score.HardMediumSoftScore;
import bedwright.growth.ProspectTable;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The whole plan as the solver sees it: all plantings, what it needs to judge them, and its score. */
@PlanningSolution(solutionCloner = PlanCopier.class)
public class SeasonPlan {
    /** Weeks before the season in which a standing planting may have been sown. */
    private static final int WEEKS_BEFORE = 60;

    private @Nullable PlanFacts facts;
    private @Nullable Probe probe;
    private List<Planting> plantings = new ArrayList<>();
    private @Nullable HardMediumSoftScore score;

    /** For the solver, which copies plans. */
    public SeasonPlan() {}

    /** A plan with every planting at the place given for it, by its number; fixed plantings stand where they stand. */
    SeasonPlan(PlanFacts facts, int[] places, Probe probe) {
        this.facts = facts;
        this.probe = probe;
        for (int p = 0; p < places.length; p++) {
            Planting planting = new Planting(p, facts.stock(p), facts.isFixed(p), facts.table());
            planting.put(facts.isFixed(p) ? facts.fixedPlace[p] : places[p]);
            plantings.add(planting);
        }
    }

    /** The same plan with plantings of its own. */
    SeasonPlan copy() {
        SeasonPlan copy = new SeasonPlan();
        copy.facts = facts;
        copy.probe = probe;
        copy.score = score;
        copy.plantings = new ArrayList<>(plantings.size());
        for (Planting planting : plantings) {
            copy.plantings.add(planting.copy());
        }
        return copy;
    }

    @ProblemFactProperty
    public @Nullable PlanFacts getFacts() {
        return facts;
    }

    public void setFacts(@Nullable PlanFacts facts) {
        this.facts = facts;
    }

    /** Shared by all copies of one search's plan: what the search tells of itself. */
    @ProblemFactProperty
    public @Nullable Probe getProbe() {
        return probe;
    }

    public void setProbe(@Nullable Probe probe) {
        this.probe = probe;
    }

    @PlanningEntityCollectionProperty
    public List<Planting> getPlantings() {
        return plantings;
    }

    public void setPlantings(List<Planting> plantings) {
        this.plantings = plantings;
    }

    @PlanningScore
    public @Nullable HardMediumSoftScore getScore() {
        return score;
    }

    public void setScore(@Nullable HardMediumSoftScore score) {
        this.score = score;
    }

    @ValueRangeProvider(id = "beds")
    public ValueRange<Integer> beds() {
        return ValueRangeFactory.createIntValueRange(0, knownFacts().bench);
    }

    @ValueRangeProvider(id = "sowWeeks")
    public ValueRange<Integer> sowWeeks() {
        return ValueRangeFactory.createIntValueRange(-WEEKS_BEFORE, knownFacts().weeks);
    }

    @ValueRangeProvider(id = "methods")
    public ValueRange<Integer> methods() {
        if (knownFacts().season.underWay() != null) {
            return ValueRangeFactory.createIntValueRange(0, ProspectTable.way(0, knownFacts().weeks + 1));
        }
        int most = knownFacts().season.crops().stream()
                .mapToInt(crop -> crop.methods().size())
                .max()
                .orElse(1);
        return ValueRangeFactory.createIntValueRange(0, most);
    }

    PlanFacts knownFacts() {
        PlanFacts known = facts;
        if (known == null) {
            throw new IllegalStateException("A plan without its facts can't be judged");
        }
        return known;
    }

    /** Where each planting is, by number. */
    int[] places() {
        return plantings.stream().mapToInt(Planting::place).toArray();
    }
}
