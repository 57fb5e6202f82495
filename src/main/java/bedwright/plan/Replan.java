package bedwright.plan;

import bedwright.season.KeptPlanting;
import bedwright.season.UnderWay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Plans what is left of a season anew: begins with the plan in force, looks for a better one by the same score, in which
 * every change has its price, takes back what changes nothing for the better, and tells what each change buys. Never worse
 * than the plan in force. One use only.
 */
public final class Replan {
    private final PlanFacts facts;
    private final Search search;

    /**
     * @param facts of what is left of the season, with the plan in force as it can still be carried out: see
     *     {@link InForce#facts}
     */
    public Replan(PlanFacts facts, Search.Limits limits) {
        this(facts, limits, Set.of(), List.of());
    }

    /**
     * Likewise, with changes refused.
     *
     * @param kept numbers of plantings that stay as the plan in force has them
     * @param refused plantings that are not put in: their crops are not put newly into their beds
     */
    public Replan(PlanFacts facts, Search.Limits limits, Set<Integer> kept, List<KeptPlanting> refused) {
        this.facts = kept.isEmpty() && refused.isEmpty() ? facts : facts.keeping(kept, refused);
        this.search = new Search(this.facts, limits);
    }

    /** The search, to be watched and to be stopped. */
    public Search search() {
        return search;
    }

    /**
     * Where each planting is in the new plan; searches until the limit. One search begins with the plan in force, filled up;
     * the other with a plan filled up from nothing that then takes back what it can: where what must be ours is missing, the
     * plan in force stands in the way of what would give it.
     */
    public int[] run() {
        long began = System.nanoTime();
        Search.Found inForce = Search.Found.of(facts, InForce.places(facts));
        Search.Found filled = filled(inForce.places());
        Search.Found anew = filled(Search.nothingPlaced(facts));
        Search.Found found =
                search.run(filled.isBetterThan(inForce) ? filled.places() : inForce.places(), anew.places(), began);
        Search.Found best = found.isBetterThan(inForce) ? found : inForce;
        return FewestChanges.of(facts, best.places());
    }

    private Search.Found filled(int[] places) {
        return Search.Found.of(facts, FewestChanges.of(facts, Opening.fill(facts, places, search::isStopped)));
    }

    /**
     * Lots of one planting that go the same way.
     *
     * @param before the planting in the plan in force, null if the lots are put in
     * @param after in the new plan, null if they are left out
     * @param lots how many
     * @param plants of these lots
     */
    public record Changed(
            @Nullable KeptPlanting before, @Nullable KeptPlanting after, int lots, int plants) {}

    /**
     * Changes that go together, and what they buy.
     *
     * @param parts the changes: one, or several of which one can't be made without the others
     * @param made what they bring on top of those before them, really tried
     */
    public record Bought(List<Changed> parts, Tried made) {
        public Bought {
            parts = List.copyOf(parts);
        }

        /** Whether they mend what breaks a rule that has to hold, with the plan in force as things are. */
        public boolean isNeeded() {
            return made.gain().hard() > 0;
        }
    }

    /**
     * What each change of a plan buys: made one after the other in the plan in force, always those that bring most then. So
     * what they bring adds up to what the new plan brings.
     *
     * @param places of the new plan, as {@link #run} gives them
     */
    public static List<Bought> bought(PlanFacts facts, int[] places) {
        List<KeptPlanting> plantings = Outcomes.of(facts, places).plantings();
        List<LotsMoved> left = new ArrayList<>(LotsMoved.of(facts, places));
        int[] now = InForce.places(facts);
        List<Bought> bought = new ArrayList<>();
        while (!left.isEmpty()) {
            List<LotsMoved> next = best(facts, now, left);
            List<Changed> parts = next.stream()
                    .map(change -> changed(facts, plantings, change))
                    .sorted(Comparator.comparingInt(Replan::number))
                    .toList();
            bought.add(new Bought(parts, made(facts, now, next)));
            next.forEach(change -> change.lots().forEach(p -> now[p] = change.to()));
            left.removeAll(next);
        }
        return List.copyOf(bought);
    }

    /** What all changes of a plan bring. */
    public static Tried allTogether(PlanFacts facts, int[] places) {
        return made(facts, InForce.places(facts), LotsMoved.of(facts, places));
    }

    private static Tried made(PlanFacts facts, int[] places, List<LotsMoved> changes) {
        return new Trials(facts, places)
                .tried(changes.stream()
                        .map(change -> new Shift(
                                change.lots().stream()
                                        .mapToInt(Integer::intValue)
                                        .toArray(),
                                change.to()))
                        .toList());
    }

    /** The change, with those that it needs, that brings most; all of them if none can be made without breaking a rule. */
    private static List<LotsMoved> best(PlanFacts facts, int[] places, List<LotsMoved> left) {
        SeasonScore score = new SeasonScore(facts);
        for (int p = 0; p < places.length; p++) {
            score.settle(p, places[p]);
        }
        Together together = new Together(facts, score, true);
        List<LotsMoved> best = left;
        Together.More most = null;
        for (LotsMoved change : left) {
            List<LotsMoved> changes = together.with(left, change);
            Together.More more = together.tried(changes);
            if (more.hard() >= 0 && (most == null || more.isMoreThan(most))) {
                best = changes;
                most = more;
            }
        }
        return best;
    }

    private static int number(Changed changed) {
        KeptPlanting known = changed.before() == null ? changed.after() : changed.before();
        return Objects.requireNonNull(known).number();
    }

    private static Changed changed(PlanFacts facts, List<KeptPlanting> plantings, LotsMoved unit) {
        int first = unit.lots().getFirst();
        int number = facts.changes.number[first];
        UnderWay underWay = facts.season().underWay();
        KeptPlanting before = number == 0 || underWay == null
                ? null
                : underWay.inForce().stream()
                        .filter(kept -> kept.number() == number)
                        .findFirst()
                        .orElse(null);
        KeptPlanting after = unit.to() < 0
                ? null
                : plantings.stream()
                        .filter(kept -> Objects.requireNonNullElse(kept.was(), 0) == number
                                && Outcomes.placeOf(facts, kept) == unit.to())
                        .findFirst()
                        .orElse(null);
        int stock = facts.stock(first);
        int pool = facts.season().pool().size();
        int plants = stock < pool
                ? facts.season().pool().get(stock).plants() * unit.lots().size()
                : facts.season().standing().get(stock - pool).plants();
        return new Changed(before, after, unit.lots().size(), plants);
    }
}
