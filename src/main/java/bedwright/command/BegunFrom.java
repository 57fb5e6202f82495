package bedwright.command;

import bedwright.file.SeasonDifferences;
import bedwright.plan.Draft;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;

/** A plan to begin with, which may have been made for another season file or for an older state of this one. */
final class BegunFrom {
    /** Differences told one by one. */
    private static final int TOLD = 12;

    private BegunFrom() {}

    /**
     * The places of a plan's plantings in a season. If the plan was made for a season that differs from it, that is said.
     *
     * @param from the plan's folder, or the plan.json in it
     * @param instead its plantings, those that are held elsewhere from now on where they are held; empty if there are none
     * @throws Refusal if a planting has no place in the season
     */
    static int[] places(PlanFacts facts, Path from, List<KeptPlanting> instead, PrintWriter err) {
        PlanFolder folder = PlanFolder.at(from);
        Plan plan = folder.read();
        Season season = instead.isEmpty()
                ? facts.season()
                : facts.season().withHeld(plan.season().held());
        List<String> differences = SeasonDifferences.of(season, plan.season());
        if (!differences.isEmpty()) {
            tell(folder.plan() + ": " + whose(facts.season(), plan.season()), differences, err);
        }
        int[] places;
        try {
            List<KeptPlanting> plantings = instead.isEmpty() ? plan.plantings() : instead;
            places = facts.season().held().isEmpty()
                    ? Outcomes.places(facts, plantings)
                    : Draft.beside(facts, plantings).places();
        } catch (IllegalArgumentException e) {
            throw new Refusal(
                    Exit.FAULTY_FILE,
                    folder.plan() + ": " + e.getMessage()
                            + (differences.isEmpty()
                                    ? ". It was changed by hand or made by another version; plan without --from."
                                    : ". So the search can't begin with it; plan without --from, or with the season file"
                                            + " that it was made for."));
        }
        if (!differences.isEmpty() && facts.season().held().isEmpty()) {
            err.println("Every planting of it has its place here too: the search begins with them.");
        }
        return places;
    }

    private static String whose(Season season, Season of) {
        return season.name().equals(of.name())
                ? "This plan was made for an older state of this season file."
                : "This plan was made for another season file, \"" + of.name() + "\", not for \"" + season.name()
                        + "\".";
    }

    private static void tell(String whose, List<String> differences, PrintWriter err) {
        err.println(whose + " What differs:");
        differences.stream().limit(TOLD).forEach(difference -> err.println("  " + difference));
        if (differences.size() > TOLD) {
            err.println("  … and " + (differences.size() - TOLD) + " more.");
        }
    }
}
