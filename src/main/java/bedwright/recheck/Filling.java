package bedwright.recheck;

import bedwright.season.KindTree;
import java.util.List;

/**
 * How the stems of one week of one possible season fill those who ask (season model, section 7): each in turn as far as
 * every kind around it still has stems and room.
 */
final class Filling {
    /** 1/100 stems that each taker gets, in the order given. */
    final long[] delivered;
    /** 1/100 stems served and left over, by role. */
    final long[] served;

    final long[] left;

    /** @param stems own 1/100 stems by kind */
    Filling(KindTree kinds, List<Demand.Taker> inOrder, int week, long[] stems, int roles) {
        delivered = new long[inOrder.size()];
        served = new long[roles];
        left = new long[roles];
        long[] room = saleable(kinds, stems);
        for (int t = 0; t < inOrder.size(); t++) {
            Demand.Taker taker = inOrder.get(t);
            long amount = taker.asked()[week];
            for (int node = taker.node(); node >= 0; node = kinds.parent(node)) {
                amount = Math.min(amount, room[node]);
            }
            for (int node = taker.node(); node >= 0; node = kinds.parent(node)) {
                room[node] -= amount;
            }
            delivered[t] = amount;
            served[kinds.role(taker.node())] += amount;
        }
        for (int node = 0; node < kinds.size(); node++) {
            left[kinds.role(node)] += stems[node];
        }
        for (int role = 0; role < roles; role++) {
            left[role] -= served[role];
        }
    }

    /**
     * Stems that can be sold from under each kind: its own and what can be sold from under each kind within it, at most
     * its most a week. Demands are met together if for no kind those at it and within it are more than that.
     */
    private static long[] saleable(KindTree kinds, long[] stems) {
        long[] saleable = stems.clone();
        for (int node = kinds.size() - 1; node >= 0; node--) {
            saleable[node] = Math.min(saleable[node], kinds.mostAWeek(node));
            if (kinds.parent(node) >= 0) {
                saleable[kinds.parent(node)] += saleable[node];
            }
        }
        return saleable;
    }
}
