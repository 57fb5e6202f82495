package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Beds, bench, stocks and families of a plan, the plain way: what changed is added up again over all its weeks. */
final class NaiveGround {
    private final PlanFacts facts;
    private final ProspectTable table;
    private final long[][] used;
    private final long[] hardOfShelf;
    private final long[] extraOfShelf;
    private final BitSet touchedShelves = new BitSet();
    /** Places of the plantings in each bed of each family. */
    private final List<List<Integer>> together = new ArrayList<>();

    private final long[] followers;
    private final BitSet touchedFamilies = new BitSet();
    /** Hard units beyond what beds, bench and stocks hold. */
    long hard;
    /** Grains that count in every season: material, extra stock, rest years, followers. */
    long cost;

    NaiveGround(PlanFacts facts) {
        this.facts = facts;
        this.table = facts.table;
        this.used = new long[facts.shelves.size()][facts.weeks];
        this.hardOfShelf = new long[used.length];
        this.extraOfShelf = new long[used.length];
        for (int i = 0; i < facts.bench * facts.families; i++) {
            together.add(new ArrayList<>());
        }
        this.followers = new long[together.size()];
    }

    void post(int place, int sign) {
        int row = table.row(place);
        int length = table.millimetres(row);
        take(table.bed(place), table.heldFrom(row), table.heldTo(row), sign * length);
        take(facts.bench, table.benchFrom(row), table.benchTo(row), sign * table.cells(row));
        take(facts.trays, table.trayFrom(row), table.trayTo(row), sign * table.cells(row));
        if (table.net(row) >= 0) {
            int net = facts.firstNet + table.net(row);
            take(net, table.netFrom(row), table.netTo(row), sign * table.netMillimetres(row));
        }
        take(facts.cover, table.coverFrom(row), table.coverTo(row), sign * length);
        cost += sign * table.material(row) * Grains.A_SMALLEST_UNIT;
        int family = facts.familyOf[table.stock(place)];
        if (family < 0) {
            return;
        }
        cost += facts.restBroken[place] ? sign * facts.restPrice : 0;
        int cell = table.bed(place) * facts.families + family;
        if (sign > 0) {
            together.get(cell).add(place);
        } else {
            together.get(cell).remove(Integer.valueOf(place));
        }
        touchedFamilies.set(cell);
    }

    private void take(int shelf, int from, int to, int amount) {
        for (int week = from; week < to; week++) {
            used[shelf][week] += amount;
        }
        touchedShelves.set(shelf);
    }

    void recount() {
        for (int s = touchedShelves.nextSetBit(0); s >= 0; s = touchedShelves.nextSetBit(s + 1)) {
            recountShelf(s);
        }
        touchedShelves.clear();
        for (int c = touchedFamilies.nextSetBit(0); c >= 0; c = touchedFamilies.nextSetBit(c + 1)) {
            long now = followers(together.get(c)) * facts.followOnPrice;
            cost += now - followers[c];
            followers[c] = now;
        }
        touchedFamilies.clear();
    }

    private void recountShelf(int s) {
        Shelf shelf = facts.shelves.get(s);
        long sum = 0;
        long peak = 0;
        for (long inWeek : used[s]) {
            long over = Math.max(0, inWeek - shelf.holds());
            sum += over;
            peak = Math.max(peak, over);
        }
        // A stock is either exceeded or bought: one of the two prices is 0.
        hard += sum * shelf.hard() - hardOfShelf[s];
        hardOfShelf[s] = sum * shelf.hard();
        cost += peak * shelf.price() - extraOfShelf[s];
        extraOfShelf[s] = peak * shelf.price();
    }

    private long followers(List<Integer> places) {
        long count = 0;
        for (int place : places) {
            for (int other : places) {
                if (isHeld(place) && isHeld(other) && heldTo(other) <= table.heldFrom(table.row(place))) {
                    count++;
                    break;
                }
            }
        }
        return count;
    }

    private boolean isHeld(int place) {
        return table.heldFrom(table.row(place)) < heldTo(place);
    }

    private int heldTo(int place) {
        return table.heldTo(table.row(place));
    }
}
