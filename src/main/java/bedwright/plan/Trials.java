package bedwright.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Tries changes of a plan. Each question goes to a score that measures from the plan; what is told of a change comes
 * from an outcome of the plan with the change made.
 */
public final class Trials {
    private final PlanFacts facts;
    private final int[] places;
    private final SeasonScore score;
    private final Outcome outcome;
    private final Bill bill;

    /**
     * Of a plan.
     *
     * @param places where each planting is, by its number in the facts; −1 where it is left out
     */
    public Trials(PlanFacts facts, int[] places) {
        this.facts = facts;
        this.places = places.clone();
        this.score = new SeasonScore(facts);
        for (int p = 0; p < places.length; p++) {
            this.places[p] = facts.isFixed(p) ? facts.fixedPlace[p] : places[p];
            score.settle(p, this.places[p]);
        }
        this.outcome = Outcomes.exactly(facts, this.places);
        this.bill = Bill.of(score, outcome);
    }

    /** What the plan brings as it is. */
    public Outcome outcome() {
        return outcome;
    }

    /** What each rule costs in the plan as it is. */
    public Bill bill() {
        return bill;
    }

    PlanFacts facts() {
        return facts;
    }

    /** Where a planting is. */
    int place(int planting) {
        return places[planting];
    }

    /** The first so many lots of a stock that stand at a place, or are left out; fewer if there are no more. */
    int[] lotsAt(int stock, int place, int most) {
        List<Integer> lots = new ArrayList<>();
        for (int p = facts.firstPlanting(stock); p < facts.firstPlanting(stock + 1) && lots.size() < most; p++) {
            if (places[p] == place) {
                lots.add(p);
            }
        }
        return lots.stream().mapToInt(Integer::intValue).toArray();
    }

    /** By how much the score would be better with some plantings put at a place, or left out. */
    Search.Found gain(int[] plantings, int to) {
        ask(plantings, to);
        Search.Found gain = new Search.Found(
                new int[0],
                score.hardAfter() - score.hard(),
                score.mediumAfter() - score.medium(),
                score.softAfter() - score.soft());
        score.forget();
        return gain;
    }

    /** Tries to put some plantings of one stock that stand together at a place, or to leave them out. */
    Tried tried(int[] plantings, int to) {
        int[] changed = places.clone();
        for (int p : plantings) {
            changed[p] = to;
        }
        Outcome after = Outcomes.exactly(facts, changed);
        Bill more = Bill.of(ask(plantings, to), outcome, after);
        score.forget();
        int from = places[plantings[0]];
        Step step = new Step(
                facts.stock(plantings[0]),
                plantings.length,
                from < 0 ? null : facts.table().spot(from),
                to < 0 ? null : facts.table().spot(to));
        return new Tried(List.of(step), outcome, after, more);
    }

    private Answer ask(int[] plantings, int to) {
        for (int p : plantings) {
            score.put(p, to);
        }
        return score.ask();
    }
}
