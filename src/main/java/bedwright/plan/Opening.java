package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * A good plan to begin with: always the planting that gains most, until none gains. A place's gain mostly falls as
 * others are taken, so the gain it last had stands as the most it may have, and only the first in the queue is asked
 * again (the lazy greedy of M. Minoux, 1978, from memory; here a rule of thumb, since gains may also rise).
 */
final class Opening {
    private final PlanFacts facts;
    private final ProspectTable table;
    private final SeasonScore score;
    private final int[] left;

    private record Candidate(int place, long medium, long soft) implements Comparable<Candidate> {
        @Override
        public int compareTo(Candidate other) {
            int byMedium = Long.compare(other.medium, medium);
            int bySoft = byMedium != 0 ? byMedium : Long.compare(other.soft, soft);
            return bySoft != 0 ? bySoft : Integer.compare(place, other.place);
        }

        boolean gains() {
            return medium > 0 || (medium == 0 && soft > 0);
        }
    }

    private Opening(PlanFacts facts, int[] start) {
        this.facts = facts;
        this.table = facts.table();
        this.score = new SeasonScore(facts);
        this.left = new int[table.stocks()];
        for (int p = 0; p < start.length; p++) {
            int at = facts.isFixed(p) ? facts.fixedPlace[p] : start[p];
            score.settle(p, at);
            if (at < 0) {
                left[facts.stock(p)]++;
            }
        }
    }

    /**
     * Fills up a plan.
     *
     * @param start where each planting is to begin with; {@link SeasonScore#NOWHERE} for those still to be placed
     * @param stop asked now and then: whether to leave it at what there is
     * @return where each planting is
     */
    static int[] fill(PlanFacts facts, int[] start, BooleanSupplier stop) {
        return new Opening(facts, start).run(stop);
    }

    private int[] run(BooleanSupplier stop) {
        PriorityQueue<Candidate> queue = new PriorityQueue<>();
        for (int place = 0; place < table.places() && !stop.getAsBoolean(); place++) {
            Candidate candidate = ask(place);
            if (candidate != null && candidate.gains()) {
                queue.add(candidate);
            }
        }
        while (!queue.isEmpty() && !stop.getAsBoolean()) {
            Candidate first = queue.remove();
            int planting = leftOut(table.stock(first.place));
            if (planting < 0) {
                continue;
            }
            Candidate now = ask(first.place);
            if (now == null || !now.gains()) {
                continue;
            }
            Candidate next = queue.peek();
            if (next == null || now.compareTo(next) <= 0) {
                score.settle(planting, first.place);
                left[table.stock(first.place)]--;
            }
            queue.add(now);
        }
        int[] places = new int[facts.plantings()];
        for (int p = 0; p < places.length; p++) {
            places[p] = score.place(p);
        }
        return places;
    }

    private int leftOut(int stock) {
        if (left[stock] == 0) {
            return -1;
        }
        for (int p = facts.firstPlanting(stock); p < facts.firstPlanting(stock + 1); p++) {
            if (score.place(p) < 0) {
                return p;
            }
        }
        return -1;
    }

    /** What one more planting at a place would gain; null if it would break a hard rule (more). */
    private @Nullable Candidate ask(int place) {
        int planting = leftOut(table.stock(place));
        if (planting < 0 || facts.isRefused(planting, place)) {
            return null;
        }
        long hard = score.hard();
        long medium = score.medium();
        long soft = score.soft();
        score.put(planting, place);
        score.ask();
        Candidate candidate = score.hardAfter() < hard
                ? null
                : new Candidate(place, score.mediumAfter() - medium, score.softAfter() - soft);
        score.forget();
        return candidate;
    }
}
