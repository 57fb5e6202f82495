package bedwright.plan;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.season.KeptPlanting;
import bedwright.season.KindTree;
import bedwright.season.Outlet;
import bedwright.season.Promise;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** What an order could be if what is left of a season were planned again with the order put in front. */
public final class PutInFront {
    /** The least weight: others that must be had, too, go first. */
    private static final int WEIGHT = 1;

    private PutInFront() {}

    /**
     * The plan made again, judged.
     *
     * @param answer what can then be said of the order
     * @param money what the season then brings more, the order's own takings not counted, grains in the mean of the seasons
     *     judged over; less where it is negative
     * @param changes plantings that are not where the plan in force has them
     */
    public record Result(Promises.Answer answer, double money, int changes) {}

    /**
     * Plans again from the plan in force on and judges what is found.
     *
     * @param remaining a season under way
     * @param fresh seasons to judge over
     * @param before the plan in force judged over these
     * @param week week of the order
     * @param order the order
     * @param limits of the search
     */
    public static Result of(
            Season remaining,
            List<PossibleSeason> fresh,
            Promises before,
            int week,
            List<Promises.Line> order,
            Search.Limits limits) {
        Season asked = with(remaining, week, order);
        PlanFacts facts = InForce.facts(asked, PossibleSeasons.of(asked), true);
        int[] inForce = InForce.places(facts);
        int[] found = facts.free.length == 0
                ? inForce
                : new Search(facts, limits).run(inForce).places();
        List<KeptPlanting> plantings = Outcomes.of(facts, found).plantings();
        Season without = facts.season()
                .begun(
                        Objects.requireNonNull(facts.season().underWay()),
                        facts.season().beds(),
                        facts.season().labour(),
                        facts.season().pool(),
                        facts.season().standing(),
                        remaining.outlets(),
                        facts.season().orders());
        PlanFacts judged = PlanFacts.ofPlan(without, fresh, plantings);
        Promises promises = Promises.of(judged, Outcomes.places(judged, plantings));
        int changes = 0;
        for (int p = 0; p < inForce.length; p++) {
            changes += found[p] == inForce[p] ? 0 : 1;
        }
        return new Result(promises.ask(week, order), money(promises) - money(before), changes);
    }

    /** The season with the order among what must be had. */
    private static Season with(Season remaining, int week, List<Promises.Line> order) {
        KindTree kinds = KindTree.of(remaining.roles());
        LocalDate start = remaining.weekStart(week);
        List<Outlet> outlets = new ArrayList<>(remaining.outlets());
        for (Promises.Line line : order) {
            outlets.add(new Outlet(
                    "the order that is asked about",
                    kinds.path(line.node()),
                    0,
                    List.of(new Outlet.Ask(start, null, line.stems() / 100.0)),
                    new Promise(WEIGHT, null, null),
                    0));
        }
        return remaining.begun(
                Objects.requireNonNull(remaining.underWay()),
                remaining.beds(),
                remaining.labour(),
                remaining.pool(),
                remaining.standing(),
                outlets,
                remaining.orders());
    }

    private static double money(Promises promises) {
        Outcome.Money money = promises.outcome().money();
        // Nobody pays the price on changes.
        return Arrays.stream(money.season()).average().orElse(0) + money.changes();
    }
}
