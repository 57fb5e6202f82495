package bedwright.plan;

import bedwright.growth.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

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
        this(facts, places, false);
    }

    /** @param exactly whether even what is fixed is where it is said to be, or left out */
    Trials(PlanFacts facts, int[] places, boolean exactly) {
        this.facts = facts;
        this.places = places.clone();
        this.score = new SeasonScore(facts);
        for (int p = 0; p < places.length; p++) {
            this.places[p] = facts.isFixed(p) && !exactly ? facts.fixedPlace[p] : places[p];
        }
        score.settleAll(this.places);
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

    /** So many lots of a stock that stand at a place, or are left out, held ones last; fewer if there are no more. */
    int[] lotsAt(int stock, int place, int most) {
        return IntStream.range(facts.firstPlanting(stock), facts.firstPlanting(stock + 1))
                .filter(p -> places[p] == place)
                .boxed()
                .sorted(Comparator.comparing(facts::isHeld))
                .limit(most)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** By how much the score would be better with some plantings put at a place, or left out. */
    Search.Found gain(int[] plantings, int to) {
        return gain(List.of(new Shift(plantings, to)));
    }

    /** The same for changes made together; no planting is in two of them. */
    Search.Found gain(List<Shift> shifts) {
        ask(shifts);
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
        return tried(List.of(new Shift(plantings, to)));
    }

    /** Tries changes made together; no planting is in two of them. */
    Tried tried(List<Shift> shifts) {
        int[] changed = places.clone();
        List<Step> steps = new ArrayList<>();
        for (Shift shift : shifts) {
            int first = shift.plantings()[0];
            int from = places[first];
            steps.add(new Step(facts.stock(first), shift.plantings().length, spot(from), spot(shift.to())));
            for (int p : shift.plantings()) {
                changed[p] = shift.to();
            }
        }
        Outcome after = Outcomes.exactly(facts, changed);
        Bill more = Bill.of(ask(shifts), outcome, after);
        score.forget();
        return new Tried(steps, outcome, after, more);
    }

    private @Nullable Spot spot(int place) {
        return place < 0 ? null : facts.table().spot(place);
    }

    private Answer ask(List<Shift> shifts) {
        for (Shift shift : shifts) {
            for (int p : shift.plantings()) {
                score.put(p, shift.to());
            }
        }
        return score.ask();
    }
}
