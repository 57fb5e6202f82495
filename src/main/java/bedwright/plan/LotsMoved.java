package bedwright.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lots of one planting in force that a new plan puts elsewhere, all to the same place.
 *
 * @param lots their numbers among the plantings
 * @param from where the plan in force has them, or {@link SeasonScore#NOWHERE}
 * @param to where they go, or nowhere
 */
record LotsMoved(List<Integer> lots, int from, int to) {
    LotsMoved {
        lots = List.copyOf(lots);
    }

    /** What a plan changes of the plan in force. */
    static List<LotsMoved> of(PlanFacts facts, int[] places) {
        int[] inForce = facts.changes.inForce;
        Map<List<Integer>, List<Integer>> lots = new LinkedHashMap<>();
        for (int p = 0; p < places.length; p++) {
            if (places[p] != inForce[p]) {
                lots.computeIfAbsent(
                                List.of(facts.stock(p), inForce[p], places[p], facts.changes.number[p]),
                                key -> new ArrayList<>())
                        .add(p);
            }
        }
        List<LotsMoved> moved = new ArrayList<>();
        lots.forEach((key, of) -> moved.add(new LotsMoved(of, key.get(1), key.get(2))));
        return moved;
    }

    /** Each lot by itself, if there are several. */
    List<LotsMoved> oneByOne() {
        return lots.size() == 1
                ? List.of()
                : lots.stream()
                        .map(lot -> new LotsMoved(List.of(lot), from, to))
                        .toList();
    }
}
