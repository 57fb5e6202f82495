package bedwright.plan;

import bedwright.season.KindTree;
import java.util.Arrays;

/**
 * What of a week's stems is still there of every kind, in each possible season, as takers take them one after the other:
 * plainly, for all kinds of the tree, and as exactly as {@link Filling} does for those that the season's demand names.
 */
final class KindRoom {
    private final KindTree kinds;
    /** Hundredths, {@code [node][season]}. */
    private final int[][] room;

    private KindRoom(KindTree kinds, int[][] room) {
        this.kinds = kinds;
        this.room = room;
    }

    /**
     * All stems of a week.
     *
     * @param stems hundredths of each kind with all within it, {@code [node][week][season]}
     */
    static KindRoom of(KindTree kinds, int[][][] stems, int week) {
        int[][] room = new int[kinds.size()][];
        int[][] within = new int[room.length][stems[0][week].length];
        int[][] sold = new int[room.length][stems[0][week].length];
        // Kinds come after the one that holds them, so from the end on all within a kind is known.
        for (int n = room.length - 1; n >= 0; n--) {
            room[n] = new int[within[n].length];
            for (int k = 0; k < room[n].length; k++) {
                long own = (long) stems[n][week][k] - within[n][k];
                room[n][k] = (int) Math.min(own + sold[n][k], kinds.mostAWeek(n));
            }
            int above = kinds.parent(n);
            if (above >= 0) {
                for (int k = 0; k < room[n].length; k++) {
                    within[above][k] += stems[n][week][k];
                    sold[above][k] += room[n][k];
                }
            }
        }
        return new KindRoom(kinds, room);
    }

    KindRoom copy() {
        return new KindRoom(kinds, Arrays.stream(room).map(int[]::clone).toArray(int[][]::new));
    }

    /** What one taker of a kind could have, by season. */
    int[] free(int node) {
        int[] free = room[node].clone();
        for (int above = kinds.parent(node); above >= 0; above = kinds.parent(above)) {
            for (int k = 0; k < free.length; k++) {
                free[k] = Math.min(free[k], room[above][k]);
            }
        }
        return free;
    }

    /** Takes so many of a kind, in each season as many of them as there are, and says how many. */
    int[] take(int node, long wanted) {
        int[] taken = free(node);
        for (int k = 0; k < taken.length; k++) {
            taken[k] = (int) Math.min(taken[k], wanted);
        }
        for (int n = node; n >= 0; n = kinds.parent(n)) {
            for (int k = 0; k < taken.length; k++) {
                room[n][k] -= taken[k];
            }
        }
        return taken;
    }
}
