package bedwright.plan;

import bedwright.climate.PossibleSeason;
import bedwright.growth.Barred;
import bedwright.growth.Barring;
import bedwright.growth.Spot;
import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Why a crop does not stand in a bed from a week on: what one lot of it there would come to.
 *
 * @param spot the place, by one of the crop's methods, of one of its entries in the pool or one that is bought
 * @param barred why the season does not offer it; null where it does
 * @param tried what a lot there would come to; null where it is not offered, or there is no lot that could go there
 * @param inPlaceOfOthers the same with lots left out of up to three plantings that make room for it; null where it fits
 *     without, or that is not enough
 */
public record NotThere(
        Spot spot,
        @Nullable Barred barred,
        @Nullable Tried tried,
        @Nullable Tried inPlaceOfOthers) {

    /**
     * Tries a crop at a bed and week by each of its methods.
     *
     * @param plan all plantings of the plan
     * @param crop index of the crop in the season
     * @param bed number of the bed
     * @param week week of sowing, setting or starting in trays
     * @return one for each method and entry of the crop; none where the season has no lots of it
     * @throws IllegalArgumentException if the season does not offer such a plan: the message says why
     */
    public static List<NotThere> of(
            Season season, List<PossibleSeason> seasons, List<KeptPlanting> plan, int crop, int bed, int week) {
        List<Spot> spots = spots(season, season.crops().get(crop), bed, week);
        PlanFacts facts = PlanFacts.ofPlan(season, seasons, plan, new HashSet<>(spots));
        Trials trials = new Trials(facts, Outcomes.places(facts, plan));
        Room room = new Room(trials);
        Barring barring = Barring.of(season, seasons);
        List<NotThere> all = new ArrayList<>();
        for (Spot spot : spots) {
            Barred barred = barring.why(spot).orElse(null);
            int place = facts.table().find(spot.stock(), bed, week, spot.method());
            Shift put = barred != null || place < 0 ? null : room.put(place, 1);
            Tried tried = put == null ? null : trials.tried(List.of(put));
            List<Shift> both = put == null || tried == null || !tried.isStopped() ? null : room.inPlaceOfOthers(put);
            all.add(new NotThere(spot, barred, tried, both == null ? null : trials.tried(both)));
        }
        return List.copyOf(all);
    }

    private static List<Spot> spots(Season season, Crop crop, int bed, int week) {
        List<Spot> inOrder = new ArrayList<>();
        for (int stock = 0; stock < season.pool().size() + season.standing().size(); stock++) {
            Standing stands = season.standingOf(stock);
            if (!season.cropOf(stock).equals(crop) || (stands != null && isInTheGround(stands))) {
                continue;
            }
            for (int method = 0; method < crop.methods().size(); method++) {
                inOrder.add(new Spot(stock, bed, week, method));
            }
        }
        return inOrder;
    }

    private static boolean isInTheGround(Standing one) {
        return one.isWritten() || one.clock() != null || one.sown() != null;
    }
}
