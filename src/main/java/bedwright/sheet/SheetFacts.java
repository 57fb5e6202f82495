package bedwright.sheet;

import bedwright.climate.PossibleSeason;
import bedwright.growth.ProspectTable;
import bedwright.plan.Outcome;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All that a sheet is made from. They belong together: the outcome is that of a plan of this season, over these possible
 * seasons, from these prospects.
 *
 * @param season what the grower has and knows
 * @param outcome what the plan brings
 * @param seasons the possible seasons, in the order of the outcome's index k
 * @param prospects what plantings give and take
 * @param making how the plan was made
 * @param closeness how close the plan comes to the best possible, or null if nothing is said of that
 */
public record SheetFacts(
        Season season,
        Outcome outcome,
        List<PossibleSeason> seasons,
        ProspectTable prospects,
        Plan.Making making,
        Plan.@Nullable Closeness closeness) {

    /** A plan of which nothing is said of how close it comes to the best possible. */
    public SheetFacts(
            Season season, Outcome outcome, List<PossibleSeason> seasons, ProspectTable prospects, Plan.Making making) {
        this(season, outcome, seasons, prospects, making, null);
    }

    public SheetFacts {
        seasons = List.copyOf(seasons);
        if (outcome.seasons() != seasons.size() || prospects.seasons() != seasons.size()) {
            throw new IllegalArgumentException(
                    "A sheet of " + seasons.size() + " possible seasons can't show an outcome of " + outcome.seasons()
                            + " and prospects of " + prospects.seasons());
        }
    }
}
