package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.Arrays;
import java.util.List;

/**
 * What plantings take up by the week of beds, bench and stocks, with the rules {@link Rule#BED_ROOM}, {@link
 * Rule#BENCH_ROOM}, {@link Rule#STOCK_ROOM} and {@link Rule#EXTRA_STOCK}.
 *
 * <p>Holds what is used by the plan it measures from; a trial posts changes, asks what they cost and takes them back.
 */
final class RoomLedger {
    private final PlanFacts facts;
    private final ProspectTable table;
    private final int weeks;
    private final Shelf[] shelves;
    private final int[] used;
    private final int[] change;
    private final int[] touched;
    private final int[] from;
    private final int[] to;
    private int touchedCount;

    RoomLedger(PlanFacts facts) {
        this.facts = facts;
        this.table = facts.table;
        this.weeks = facts.weeks;
        List<Shelf> all = facts.shelves;
        this.shelves = all.toArray(Shelf[]::new);
        this.used = new int[shelves.length * weeks];
        this.change = new int[used.length];
        this.touched = new int[shelves.length];
        this.from = new int[shelves.length];
        this.to = new int[shelves.length];
    }

    /** Adds (sign 1) or takes away (sign −1) what a place takes up. */
    void post(int place, int sign) {
        int row = table.row(place);
        put(table.bed(place), table.heldFrom(row), table.heldTo(row), sign * table.millimetres(row));
        int cells = table.cells(row);
        if (cells > 0) {
            put(facts.bench, table.benchFrom(row), table.benchTo(row), sign * cells);
            put(facts.trays, table.trayFrom(row), table.trayTo(row), sign * cells);
        }
        int net = table.net(row);
        if (net >= 0) {
            put(facts.firstNet + net, table.netFrom(row), table.netTo(row), sign * table.netMillimetres(row));
        }
        put(facts.cover, table.coverFrom(row), table.coverTo(row), sign * table.millimetres(row));
    }

    private void put(int shelf, int first, int end, int amount) {
        if (first >= end) {
            return;
        }
        if (to[shelf] == 0) {
            touched[touchedCount++] = shelf;
            from[shelf] = first;
            to[shelf] = end;
        } else {
            from[shelf] = Math.min(from[shelf], first);
            to[shelf] = Math.max(to[shelf], end);
        }
        int at = shelf * weeks;
        for (int w = first; w < end; w++) {
            change[at + w] += amount;
        }
    }

    /** Adds to an answer what the posted changes cost more, or less. */
    void ask(Answer answer) {
        for (int t = 0; t < touchedCount; t++) {
            Shelf shelf = shelves[touched[t]];
            int at = touched[t] * weeks;
            long more = shelf.price() > 0
                    ? overPeak(shelf, at, 1) - overPeak(shelf, at, 0)
                    : overSum(shelf, at, from[touched[t]], to[touched[t]]);
            if (more != 0) {
                answer.add(shelf.rule(), more * (shelf.price() > 0 ? shelf.price() : shelf.hard()));
            }
        }
    }

    /** Whether a shelf has room for so much more in all weeks of a stretch, beside what the plan measured from uses. */
    boolean has(int shelf, int first, int end, int amount) {
        long most = shelves[shelf].holds() - amount;
        int at = shelf * weeks;
        for (int w = at + first; w < at + end; w++) {
            if (used[w] > most) {
                return false;
            }
        }
        return true;
    }

    /** Whether the posted changes go (further) beyond what there is of a shelf that can't be added to. */
    boolean isWorse() {
        for (int t = 0; t < touchedCount; t++) {
            int index = touched[t];
            Shelf shelf = shelves[index];
            if (shelf.price() == 0 && isWorse(shelf.holds(), index * weeks, from[index], to[index])) {
                return true;
            }
        }
        return false;
    }

    private boolean isWorse(long holds, int at, int first, int end) {
        for (int w = at + first; w < at + end; w++) {
            if (change[w] > 0 && used[w] + change[w] > holds) {
                return true;
            }
        }
        return false;
    }

    private long overSum(Shelf shelf, int at, int first, int end) {
        long holds = shelf.holds();
        long more = 0;
        for (int w = first; w < end; w++) {
            int before = used[at + w];
            more += Math.max(0, before + change[at + w] - holds) - Math.max(0, before - holds);
        }
        return more;
    }

    private long overPeak(Shelf shelf, int at, int withChange) {
        long peak = shelf.holds();
        for (int w = 0; w < weeks; w++) {
            peak = Math.max(peak, used[at + w] + withChange * change[at + w]);
        }
        return peak - shelf.holds();
    }

    /** Makes the posted changes part of what is used. */
    void commit() {
        for (int t = 0; t < touchedCount; t++) {
            int at = touched[t] * weeks;
            for (int w = from[touched[t]]; w < to[touched[t]]; w++) {
                used[at + w] += change[at + w];
            }
        }
        forget();
    }

    /** Takes the posted changes back. */
    void forget() {
        for (int t = 0; t < touchedCount; t++) {
            int shelf = touched[t];
            int at = shelf * weeks;
            Arrays.fill(change, at + from[shelf], at + to[shelf], 0);
            to[shelf] = 0;
        }
        touchedCount = 0;
    }

    /** What is used of a shelf in a week: mm or cells. */
    int used(int shelf, int week) {
        return used[shelf * weeks + week];
    }
}
