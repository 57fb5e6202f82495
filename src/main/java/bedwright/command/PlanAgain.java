package bedwright.command;

import bedwright.climate.PossibleSeasons;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.season.Plan;
import bedwright.sheet.SheetFacts;
import java.util.function.Function;

/**
 * A kept plan, worked out again.
 *
 * @param plan as it was kept
 * @param facts of its season
 * @param places where each planting of the facts is
 * @param outcome what it brings
 */
record PlanAgain(Plan plan, PlanFacts facts, int[] places, Outcome outcome) {

    /**
     * Reads a plan and works it out.
     *
     * @param compiling makes the facts of a plan
     * @throws Refusal if it is not a plan of its season, or does not score what it says of itself
     */
    static PlanAgain read(PlanFolder plans, Function<Plan, PlanFacts> compiling) {
        return read(plans, plans.read(), compiling);
    }

    /** The same of a plan that was read from there already. */
    static PlanAgain read(PlanFolder plans, Plan plan, Function<Plan, PlanFacts> compiling) {
        PlanFacts facts;
        int[] places;
        try {
            facts = compiling.apply(plan);
            places = Outcomes.places(facts, plan.plantings());
        } catch (IllegalArgumentException e) {
            throw new Refusal(Exit.FAULTY_FILE, plans.plan() + ": " + e.getMessage() + ". Make the plan anew.");
        }
        Outcome outcome = Outcomes.of(facts, places);
        if (!outcome.score().equals(plan.score())) {
            throw new Refusal(
                    Exit.FAULTY_FILE,
                    plans.plan() + ": the plan does not score what the file says of it (" + outcome.score() + ", not "
                            + plan.score() + "), so it was changed by hand or made by another version. Make it anew.");
        }
        return new PlanAgain(plan, facts, places, outcome);
    }

    /** Works out a plan that has no score of its own yet: what is left of one by what was noted. */
    static PlanAgain of(Plan plan, Function<Plan, PlanFacts> compiling) {
        PlanFacts facts = compiling.apply(plan);
        int[] places = Outcomes.places(facts, plan.plantings());
        return new PlanAgain(plan, facts, places, Outcomes.of(facts, places));
    }

    /** The same, only as far as the plan goes. */
    static PlanAgain read(PlanFolder plans) {
        return read(
                plans, plan -> PlanFacts.ofPlan(plan.season(), PossibleSeasons.of(plan.season()), plan.plantings()));
    }

    /** Facts of its sheets, of which nothing is said of how close it comes to the best possible. */
    SheetFacts sheet() {
        return new SheetFacts(plan.season(), outcome, facts.seasons(), facts.table(), plan.making());
    }
}
