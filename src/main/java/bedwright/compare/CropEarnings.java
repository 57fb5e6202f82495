package bedwright.compare;

import bedwright.climate.PossibleSeason;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;

/**
 * What a crop's plantings from the pool earn in a plan: what the plan brings with them more than with just them left out,
 * all costs of theirs taken off.
 *
 * @param crop the crop
 * @param money grains a season
 * @param room bed room that they hold, mm·weeks
 * @param work hours that they take, cutting among them, ticks a season
 */
public record CropEarnings(String crop, double money, double room, double work) {

    /** Of each crop in a plan, in the order of the pool. */
    public static List<CropEarnings> of(Season season, List<KeptPlanting> plan, List<PossibleSeason> seasons) {
        PlanFacts facts = PlanFacts.ofPlan(season, seasons, plan);
        int[] places = Outcomes.places(facts, plan);
        Outcome whole = Outcomes.of(facts, places);
        List<CropEarnings> all = new ArrayList<>();
        for (String crop :
                season.pool().stream().map(lots -> lots.crop()).distinct().toList()) {
            int[] without = places.clone();
            boolean isPlanted = false;
            for (int p = 0; p < without.length; p++) {
                int stock = facts.stock(p);
                if (stock < season.pool().size()
                        && season.pool().get(stock).crop().equals(crop)
                        && without[p] >= 0) {
                    without[p] = -1;
                    isPlanted = true;
                }
            }
            if (isPlanted) {
                Outcome rest = Outcomes.of(facts, without);
                all.add(new CropEarnings(
                        crop,
                        Means.of(whole.money().season()) - Means.of(rest.money().season()),
                        room(whole) - room(rest),
                        work(season, whole) - work(season, rest)));
            }
        }
        return all;
    }

    private static double room(Outcome outcome) {
        double sum = 0;
        for (int[] bed : outcome.bedUse()) {
            for (int week : bed) {
                sum += week;
            }
        }
        return sum;
    }

    private static double work(Season season, Outcome outcome) {
        double sum = 0;
        for (int w = 0; w < season.weeks(); w++) {
            for (int k = 0; k < outcome.seasons(); k++) {
                sum += (double) outcome.work().all(w, k) / outcome.seasons();
            }
        }
        return sum;
    }
}
