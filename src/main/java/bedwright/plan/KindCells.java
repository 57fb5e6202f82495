package bedwright.plan;

import bedwright.season.KindTree;
import java.util.Arrays;
import java.util.List;

/**
 * The kinds that filling has to tell apart: roles, kinds that some line asks for, and kinds of which only so many can be
 * sold. Stems of any other kind count as of the nearest such kind above it, which changes nothing of where they may go.
 * Numbered in the order of the season's tree, so each comes after the one that holds it.
 */
final class KindCells {
    private final int[] cellOf;
    private final int[] node;
    private final int[] parent;

    KindCells(KindTree kinds, List<DemandLine> lines) {
        boolean[] told = new boolean[kinds.size()];
        for (DemandLine line : lines) {
            told[line.node()] = true;
        }
        cellOf = new int[told.length];
        int[] nodes = new int[told.length];
        int count = 0;
        for (int n = 0; n < told.length; n++) {
            if (told[n] || kinds.parent(n) < 0 || kinds.mostAWeek(n) != KindTree.UNLIMITED) {
                nodes[count] = n;
                cellOf[n] = count++;
            } else {
                cellOf[n] = cellOf[kinds.parent(n)];
            }
        }
        node = Arrays.copyOf(nodes, count);
        parent = new int[count];
        for (int c = 0; c < count; c++) {
            int above = kinds.parent(node[c]);
            parent[c] = above < 0 ? -1 : cellOf[above];
        }
    }

    int size() {
        return node.length;
    }

    /** The kind told apart that a node of the tree counts as. */
    int of(int node) {
        return cellOf[node];
    }

    /** The node of the tree. */
    int node(int cell) {
        return node[cell];
    }

    /** The kind told apart above, or −1 for a role. */
    int parent(int cell) {
        return parent[cell];
    }

    /** End of the kinds within this one, which begin with itself. */
    int endWithin(int cell) {
        int end = cell + 1;
        while (end < parent.length && parent[end] >= cell) {
            end++;
        }
        return end;
    }
}
