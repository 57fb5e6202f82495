package bedwright.underway;

import bedwright.season.KeptPlanting;
import bedwright.season.Past;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.UnderWay;
import bedwright.underway.PlantingState.Stage;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A plan of what is left of a season, carried over to the whole of it: what was done stands in it as it was done, the rest
 * as it is planned now.
 */
public final class Onward {
    private final Remaining remaining;
    private final Season season;
    /** By number, the entry among what stands that a planting has in what is left of the season, and the other way round. */
    private final Map<Integer, Integer> entries = new HashMap<>();

    private final Map<Integer, Integer> numbers = new HashMap<>();
    /** As it is planned now, by that entry. */
    private final Map<Integer, KeptPlanting> begun = new HashMap<>();

    private final List<KeptPlanting> toCome = new ArrayList<>();

    /**
     * What a plan is made from.
     *
     * @param notes lines of the log
     * @param log fingerprint of these lines
     * @param plan fingerprint of the file of the plan in force until then
     */
    public record Known(int notes, String log, String plan) {}

    private Onward(Remaining remaining, Season season) {
        this.remaining = remaining;
        this.season = season;
        UnderWay underWay = remaining.season().underWay();
        for (KeptPlanting kept : underWay == null ? List.<KeptPlanting>of() : underWay.inForce()) {
            if (kept.standing() != null) {
                entries.put(kept.number(), kept.standing());
                numbers.put(kept.standing(), kept.number());
            }
        }
    }

    /**
     * The plan with what it is over the whole season.
     *
     * @param before the plan in force until then
     * @param remaining where the season was when it was made
     * @param plan a plan of what was left of the season, whose plantings have the numbers of those in force
     * @param refused new plantings that were proposed and refused
     * @param known what was known when it was made
     */
    public static Plan of(Plan before, Remaining remaining, Plan plan, List<KeptPlanting> refused, Known known) {
        Onward onward = new Onward(remaining, plan.season());
        List<KeptPlanting> numbered =
                plan.plantings().stream().map(onward::sorted).toList();
        List<KeptPlanting> whole = onward.whole();
        Set<Integer> numbers = new HashSet<>();
        whole.forEach(planting -> numbers.add(planting.number()));
        List<KeptPlanting> gone = before.everyPlanting().stream()
                .filter(planting -> !numbers.contains(planting.number()))
                .toList();
        return new Plan(
                plan.version(),
                plan.season(),
                plan.making(),
                plan.score(),
                numbered,
                null,
                new Plan.Throughout(before.began(), whole, gone, refused, known.notes(), known.log(), known.plan()));
    }

    /** Tells what was begun, by its entry among what stands, from what is to come; what was begun has its old number. */
    private KeptPlanting sorted(KeptPlanting planting) {
        Integer entry = planting.standing();
        if (entry == null || season.standing().get(entry - 1).past() == null) {
            toCome.add(planting.with(planting.number(), null));
            return planting;
        }
        begun.put(entry, planting);
        Integer number = numbers.get(entry);
        return number == null ? planting : planting.with(number, planting.was());
    }

    private List<KeptPlanting> whole() {
        List<KeptPlanting> whole = new ArrayList<>();
        for (PlantingState state : remaining.states()) {
            Standing standing = state.standing();
            if (state.stage() != Stage.LEFT_OUT && standing != null) {
                whole.add(
                        standing.past() == null
                                ? state.planned()
                                : begun(state, standing.past(), begun.get(entries.get(state.number()))));
            }
        }
        Set<Integer> written = new HashSet<>();
        whole.forEach(planting -> written.add(planting.number()));
        toCome.stream().filter(planting -> !written.contains(planting.number())).forEach(whole::add);
        return whole;
    }

    /**
     * @param now as it is planned now; null if what is in trays is thrown away
     */
    private KeptPlanting begun(PlantingState state, Past past, @Nullable KeptPlanting now) {
        KeptPlanting planned = state.planned();
        LocalDate sown = past.sown();
        LocalDate out = past.out();
        LocalDate week = season.weekStart(season.firstWeek());
        return new KeptPlanting(
                planned.number(),
                planned.crop(),
                now == null ? planned.method() : now.method(),
                now == null ? planned.bed() : now.bed(),
                sown == null ? planned.sown() : sown,
                planned.pool(),
                planned.standing(),
                planned.lots(),
                state.plants(),
                out != null ? out : now != null && now.out() != null ? now.out() : planned.out(),
                now == null ? week.minusWeeks(1) : past.pulled() != null ? planned.until() : now.until(),
                null);
    }
}
