package bedwright.command;

import bedwright.plan.HeldPlaces;
import bedwright.plan.Outcome;
import bedwright.plan.PlanFacts;
import bedwright.season.Season;
import bedwright.sheet.HeldWords;
import java.util.List;

/** Tells of what is held in place, before a plan is made and after it. */
final class HeldInPlace {
    private HeldInPlace() {}

    /**
     * Looks whether all that is held can stand where it is held.
     *
     * @param width letters on a line
     * @throws Refusal if something can't, with what would mend it
     */
    static void mustStand(PlanFacts facts, int width) {
        List<HeldPlaces.Trouble> troubles = HeldPlaces.troubles(facts);
        if (troubles.isEmpty()) {
            return;
        }
        HeldWords words = new HeldWords(facts.season());
        StringBuilder told = new StringBuilder();
        troubles.forEach(trouble -> told.append(words.trouble(trouble, width)));
        throw new Refusal(
                Exit.RULE_BROKEN,
                told + "Nothing was planned or written. What is held stands under \"held\" in the season file.");
    }

    /** What holding costs in a plan, as lines of text; empty where nothing is held. */
    static String costs(PlanFacts facts, Outcome outcome, int[] places, int width) {
        Season season = facts.season();
        return season.held().isEmpty()
                ? ""
                : new HeldWords(season).costs(HeldPlaces.costs(facts, places), outcome.plantings(), width);
    }
}
