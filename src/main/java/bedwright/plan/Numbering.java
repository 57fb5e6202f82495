package bedwright.plan;

import bedwright.season.KeptPlanting;
import bedwright.season.UnderWay;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Numbers the plantings of a plan made during a season: who was there keeps its number, and none is used again. */
final class Numbering {
    private Numbering() {}

    /**
     * The same plantings by their numbers. Of a planting whose lots went different ways those that stay as they were keep
     * its number, else the most.
     */
    static List<KeptPlanting> of(List<KeptPlanting> plantings, UnderWay underWay) {
        Map<Integer, KeptPlanting> before = new HashMap<>();
        underWay.inForce().forEach(kept -> before.put(kept.number(), kept));
        Map<Integer, Integer> keeper = new HashMap<>();
        for (int i = 0; i < plantings.size(); i++) {
            Integer was = plantings.get(i).was();
            KeptPlanting former = was == null ? null : before.get(was);
            if (was == null || former == null) {
                continue;
            }
            Integer best = keeper.get(was);
            if (best == null || weight(plantings.get(i), former) > weight(plantings.get(best), former)) {
                keeper.put(was, i);
            }
        }
        List<KeptPlanting> numbered = new ArrayList<>();
        int next = underWay.nextNumber();
        for (int i = 0; i < plantings.size(); i++) {
            Integer was = plantings.get(i).was();
            if (was != null && Integer.valueOf(i).equals(keeper.get(was))) {
                numbered.add(plantings.get(i).with(was, was));
            } else {
                numbered.add(plantings.get(i).with(next, was));
                next++;
            }
        }
        return List.copyOf(numbered);
    }

    private static int weight(KeptPlanting planting, KeptPlanting former) {
        return (isSame(planting, former) ? 1_000_000 : 0) + planting.lots();
    }

    /** Whether two kept plantings stand at the same place in the same way. */
    static boolean isSame(KeptPlanting one, KeptPlanting other) {
        return one.method().equals(other.method())
                && one.bed().equals(other.bed())
                && one.sown().equals(other.sown())
                && Objects.equals(one.out(), other.out())
                && Objects.equals(one.until(), other.until());
    }
}
