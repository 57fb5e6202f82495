package bedwright.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes back what a new plan changes for nothing: equal lots that trade places, and every change without which the plan
 * scores no worse.
 */
final class FewestChanges {
    private final PlanFacts facts;
    private final int[] inForce;
    private final SeasonScore score;
    private final Together together;

    private FewestChanges(PlanFacts facts, int[] places) {
        this.facts = facts;
        this.inForce = facts.changes.inForce;
        this.score = new SeasonScore(facts);
        for (int p = 0; p < places.length; p++) {
            score.settle(p, places[p]);
        }
        this.together = new Together(facts, score, false);
    }

    /** The same plan with fewer changes: it scores no worse. */
    static int[] of(PlanFacts facts, int[] places) {
        FewestChanges fewest = new FewestChanges(facts, alike(facts, places));
        fewest.takeBack();
        int[] result = new int[places.length];
        for (int p = 0; p < result.length; p++) {
            result[p] = fewest.score.place(p);
        }
        return result;
    }

    /** Equal lots put so that as many as can be stay where they are, and those of one planting go the same way. */
    static int[] alike(PlanFacts facts, int[] places) {
        int[] alike = places.clone();
        for (int stock = 0; stock < facts.table.stocks(); stock++) {
            List<Integer> lots = new ArrayList<>();
            List<Integer> wanted = new ArrayList<>();
            for (int p = facts.firstPlanting(stock); p < facts.firstPlanting(stock + 1); p++) {
                if (!facts.isFixed(p)) {
                    lots.add(p);
                    wanted.add(places[p]);
                }
            }
            // Nobody who can stay goes.
            for (int i = 0; i < lots.size(); i++) {
                int p = lots.get(i);
                if (wanted.remove(Integer.valueOf(facts.changes.inForce[p]))) {
                    alike[p] = facts.changes.inForce[p];
                    lots.remove(i);
                    i--;
                }
            }
            cheapest(facts, lots, wanted, alike);
        }
        return alike;
    }

    /** Always the lot and the place that cost least to bring together, whole plantings after one another. */
    private static void cheapest(PlanFacts facts, List<Integer> lots, List<Integer> wanted, int[] alike) {
        wanted.sort(null);
        while (!lots.isEmpty()) {
            int lot = 0;
            int to = 0;
            long least = Long.MAX_VALUE;
            for (int i = 0; i < lots.size(); i++) {
                for (int j = 0; j < wanted.size(); j++) {
                    long cost = facts.changes.cost(lots.get(i), wanted.get(j));
                    if (cost < least) {
                        least = cost;
                        lot = i;
                        to = j;
                    }
                }
            }
            alike[lots.remove(lot)] = wanted.remove(to);
        }
    }

    private void takeBack() {
        boolean isFewer = true;
        while (isFewer) {
            isFewer = false;
            for (LotsMoved unit : LotsMoved.of(facts, places())) {
                if (takeBack(List.of(unit))) {
                    isFewer = true;
                    continue;
                }
                for (LotsMoved one : unit.oneByOne()) {
                    isFewer |= takeBack(List.of(one));
                }
            }
            List<LotsMoved> left = LotsMoved.of(facts, places());
            for (LotsMoved unit : left) {
                if (score.place(unit.lots().getFirst()) == unit.to()) {
                    List<LotsMoved> all = together.with(left, unit);
                    isFewer |= all.size() > 1 && takeBack(all);
                }
            }
        }
    }

    private int[] places() {
        int[] places = new int[inForce.length];
        for (int p = 0; p < places.length; p++) {
            places[p] = score.place(p);
        }
        return places;
    }

    /** Whether they were taken back, since the plan scores no worse without them. */
    private boolean takeBack(List<LotsMoved> units) {
        if (together.tried(units).isWorse()) {
            return false;
        }
        units.forEach(unit -> unit.lots().forEach(p -> score.settle(p, unit.from())));
        return true;
    }
}
