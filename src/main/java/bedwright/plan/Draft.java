package bedwright.plan;

import bedwright.season.KeptPlanting;
import java.util.List;

/** A plan made planting by planting, by the same rules that the search keeps. */
public final class Draft {
    private final PlanFacts facts;
    private final SeasonScore score;

    /** Nothing placed but what is fixed. */
    public Draft(PlanFacts facts) {
        this.facts = facts;
        this.score = new SeasonScore(facts);
        for (int p = 0; p < facts.plantings(); p++) {
            score.settle(p, facts.unplanted[p]);
        }
    }

    /**
     * The plantings of a kept plan as far as they have room beside what is fixed: of lots that are held elsewhere, or for
     * which there is no room, none is placed.
     *
     * @throws IllegalArgumentException if the season does not offer such a place: the message says which
     */
    public static Draft beside(PlanFacts facts, List<KeptPlanting> kept) {
        Draft draft = new Draft(facts);
        boolean[] isTaken = new boolean[facts.plantings()];
        for (KeptPlanting planting : kept) {
            int place = Outcomes.placeOf(facts, planting);
            if (place < 0) {
                throw Outcomes.noSuchPlace(planting);
            }
            int stock = facts.table().stock(place);
            int lots = planting.lots();
            for (int p = facts.firstPlanting(stock); p < facts.firstPlanting(stock + 1) && lots > 0; p++) {
                if (facts.fixedPlace[p] == place && !isTaken[p]) {
                    isTaken[p] = true;
                    lots--;
                }
            }
            for (; lots > 0 && draft.leftOut(stock) >= 0; lots--) {
                draft.putIfItFits(draft.leftOut(stock), place);
            }
        }
        return draft;
    }

    /**
     * Puts a planting at a place if that breaks no hard rule (more than it is broken already).
     *
     * @return whether it was put there
     */
    public boolean putIfItFits(int planting, int place) {
        score.put(planting, place);
        score.ask();
        boolean fits = score.hardAfter() >= score.hard();
        score.forget();
        if (fits) {
            score.settle(planting, place);
        }
        return fits;
    }

    /** A planting of a stock that is left out so far, or −1. */
    public int leftOut(int stock) {
        for (int p = facts.firstPlanting(stock); p < facts.firstPlanting(stock + 1); p++) {
            if (score.place(p) < 0) {
                return p;
            }
        }
        return -1;
    }

    /** Where each planting is, by number; −1 where it is left out. */
    public int[] places() {
        int[] places = new int[facts.plantings()];
        for (int p = 0; p < places.length; p++) {
            places[p] = score.place(p);
        }
        return places;
    }
}
