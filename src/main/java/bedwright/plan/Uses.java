package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What places take up of beds, bench, trays, nets and cover. What is alike is kept once, so that all of it stays near the
 * processor: a search asks for it at random, many times for each score.
 *
 * <p>From {@link #start} of a place on stand in {@link #all} the number of its uses and then, {@link #A_USE} figures each, the
 * shelf, the first week, the end (not included), how much (mm or cells) and the number of that amount among all there are.
 * The first use is that of the bed, whose number is the place's own and stands here as −1.
 */
final class Uses {
    static final int A_USE = 5;
    /** Of a use, where its figures stand. */
    static final int SHELF = 0;

    static final int FIRST = 1;
    static final int END = 2;
    static final int AMOUNT = 3;
    static final int SIZE = 4;

    /** Numbers of the shelves after the beds. */
    record Shelves(int bench, int trays, int firstNet, int cover) {}

    final int[] all;
    private final int[] start;
    private final int[] amounts;

    Uses(ProspectTable table, Shelves shelves) {
        start = new int[table.places()];
        Map<Integer, Integer> sizes = new HashMap<>();
        Map<List<Integer>, Integer> known = new HashMap<>();
        int[] ofRow = new int[table.rows()];
        Arrays.fill(ofRow, -1);
        List<Integer> figures = new ArrayList<>();
        for (int place = 0; place < start.length; place++) {
            int row = table.row(place);
            if (ofRow[row] < 0) {
                ofRow[row] = known.computeIfAbsent(uses(table, row, shelves, sizes), uses -> {
                    figures.add(uses.size() / A_USE);
                    figures.addAll(uses);
                    return figures.size() - uses.size() - 1;
                });
            }
            start[place] = ofRow[row];
        }
        all = figures.stream().mapToInt(Integer::intValue).toArray();
        amounts = new int[sizes.size()];
        sizes.forEach((amount, size) -> amounts[size] = amount);
    }

    private static List<Integer> uses(ProspectTable table, int row, Shelves shelves, Map<Integer, Integer> sizes) {
        Listed uses = new Listed(new ArrayList<>(), sizes);
        uses.take(-1, table.heldFrom(row), table.heldTo(row), table.millimetres(row));
        uses.takeIfAny(shelves.bench(), table.benchFrom(row), table.benchTo(row), table.cells(row));
        uses.takeIfAny(shelves.trays(), table.trayFrom(row), table.trayTo(row), table.cells(row));
        if (table.net(row) >= 0) {
            int net = shelves.firstNet() + table.net(row);
            uses.takeIfAny(net, table.netFrom(row), table.netTo(row), table.netMillimetres(row));
        }
        uses.takeIfAny(shelves.cover(), table.coverFrom(row), table.coverTo(row), table.millimetres(row));
        return uses.figures;
    }

    /**
     * The uses of a row.
     *
     * @param sizes the number of each amount met
     */
    private record Listed(List<Integer> figures, Map<Integer, Integer> sizes) {
        void take(int shelf, int from, int to, int amount) {
            Integer next = sizes.size();
            Integer size = sizes.putIfAbsent(amount, next);
            figures.addAll(List.of(shelf, from, to, amount, size == null ? next : size));
        }

        void takeIfAny(int shelf, int from, int to, int amount) {
            if (from < to && amount > 0) {
                take(shelf, from, to, amount);
            }
        }
    }

    /** Where the uses of a place begin. */
    int start(int place) {
        return start[place];
    }

    /** How many different amounts there are. */
    int sizes() {
        return amounts.length;
    }

    /** One of the amounts: mm or cells. */
    int amount(int size) {
        return amounts[size];
    }

    /** The number of the amount that a place takes up of its bed. */
    int sizeInBed(int place) {
        return all[start[place] + 1 + SIZE];
    }
}
