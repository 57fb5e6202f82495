package bedwright.plan;

import bedwright.climate.PossibleSeason;
import bedwright.growth.Prospect;
import bedwright.growth.Prospects;
import bedwright.growth.Spot;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Why a planting is in a plan.
 *
 * @param planting the planting
 * @param without the plan without it: what it brings is what would then be missing
 * @param prospect what to expect of one lot of it by itself; null where its stems are written out in the season file
 * @param presses limits that it presses on
 * @param isFixed whether it can't be put elsewhere, since it stands already
 * @param alternatives the best of each sort; none where it is fixed
 */
public record PlantingReasons(
        KeptPlanting planting,
        Tried without,
        @Nullable Prospect prospect,
        List<Pressed> presses,
        boolean isFixed,
        List<Alternative> alternatives) {
    public PlantingReasons {
        presses = List.copyOf(presses);
        alternatives = List.copyOf(alternatives);
    }

    /**
     * Works them out.
     *
     * @param plan all plantings of the plan
     * @param planting one of them
     * @throws IllegalArgumentException if the season does not offer such a plan: the message says why
     */
    public static PlantingReasons of(
            Season season, List<PossibleSeason> seasons, List<KeptPlanting> plan, KeptPlanting planting) {
        PlanFacts facts = PlanFacts.ofPlan(season, seasons, plan, Alternatives.spots(season, planting));
        Trials trials = new Trials(facts, Outcomes.places(facts, plan));
        Alternatives alternatives = new Alternatives(trials, planting);
        Tried without = alternatives.without();
        return new PlantingReasons(
                planting,
                without,
                prospect(season, seasons, planting),
                Pressed.of(facts, without, alternatives.lots()),
                alternatives.isFixed(),
                alternatives.all(seasons));
    }

    /**
     * Where and how the lots of a planting stand.
     *
     * @throws IllegalArgumentException if the season has no such pool, crop, bed or method
     */
    public static Spot spot(Season season, KeptPlanting planting) {
        return Outcomes.spot(season, planting);
    }

    private static @Nullable Prospect prospect(Season season, List<PossibleSeason> seasons, KeptPlanting planting) {
        Integer number = planting.standing();
        Standing standing = number == null ? null : season.standing().get(number - 1);
        if (standing != null && standing.isWritten()) {
            return null;
        }
        return Prospects.of(season, seasons).expect(planting);
    }
}
