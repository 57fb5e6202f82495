package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What places need and give, as the ledgers read it: all that belongs to a place lies together, because most of
 * the time of a move goes by waiting for memory.
 *
 * <p>Of a place, {@link #of} is the array in which it lies and {@link #start} where. From there: {@link #WORK_FROM}, {@link
 * #WORK_WEEKS}, {@link #RUNS}, {@link #STOOD_FROM}, {@link #STOOD_TO}, {@link #WEEK_SUMS} are the first week with work, its weeks, how many runs of stems, from when to when it has its bed, be that over or
 * not, and where, from {@link #start} on, the sums over the seasons stand. From {@link #HEAD} on stand minutes of
 * work by week; then those of set-up; then the runs ({@link #A_RUN} figures each: kind told apart × weeks + first week,
 * role × weeks + first week, number of weeks); then the stems of all runs, seasons innermost; then their sums over the
 * seasons, for each week of each run.
 */
final class Figures {
    static final int WORK_FROM = 0;
    static final int WORK_WEEKS = 1;
    static final int RUNS = 2;
    static final int STOOD_FROM = 3;
    static final int STOOD_TO = 4;
    static final int WEEK_SUMS = 5;
    static final int HEAD = 6;
    static final int A_RUN = 3;
    /** Parts that the largest number of a row's stems is told in: see {@link #parts}. */
    static final int PARTS = Byte.MAX_VALUE;

    private final int[][] figures;
    private final byte[][] parts;
    private final int[] partsStart;
    private final float[] part;
    private final int[] stock;
    private final int[] start;
    private final int[] bed;
    private final long[] material;

    Figures(ProspectTable table, Kinds kinds) {
        int places = table.places();
        figures = new int[table.stocks()][];
        stock = new int[places];
        start = new int[places];
        bed = new int[places];
        material = new long[places];
        parts = new byte[figures.length][];
        partsStart = new int[places];
        part = new float[places];
        int[] at = new int[table.rows()];
        int[] partsAt = new int[table.rows()];
        for (int s = 0; s < figures.length; s++) {
            figures[s] = compiled(table, s, at, kinds);
            parts[s] = parts(table, s, partsAt);
        }
    }

    /**
     * How kinds are told apart.
     *
     * @param weeks of the season
     * @param cell of each kind of the season
     * @param role of each kind of the season
     */
    record Kinds(int weeks, int[] cell, int[] role) {}

    /** @param at where each row begins, plus one: 0 for those not yet met; no row belongs to two stocks */
    private int[] compiled(ProspectTable table, int s, int[] at, Kinds kinds) {
        int first = table.firstPlace(s);
        int end = table.firstPlace(s + 1);
        List<int[]> rows = new ArrayList<>();
        int length = 0;
        for (int place = first; place < end; place++) {
            int row = table.row(place);
            if (at[row] == 0) {
                int[] one = row(table, row, kinds);
                rows.add(one);
                at[row] = length + 1;
                length += one.length;
            }
            stock[place] = s;
            start[place] = at[row] - 1;
            bed[place] = table.bed(place);
            material[place] = table.material(row) * Grains.A_SMALLEST_UNIT;
        }
        int[] all = new int[length];
        int to = 0;
        for (int[] one : rows) {
            System.arraycopy(one, 0, all, to, one.length);
            to += one.length;
        }
        return all;
    }

    /**
     * The stems of a stock's rows in parts, one row after the other.
     *
     * @param at where each row begins, plus one: 0 for those not yet met
     */
    private byte[] parts(ProspectTable table, int s, int[] at) {
        int first = table.firstPlace(s);
        int end = table.firstPlace(s + 1);
        int length = 0;
        for (int place = first; place < end; place++) {
            int row = table.row(place);
            if (at[row] == 0) {
                at[row] = length + 1;
                length += table.stems(row).length;
            }
        }
        byte[] all = new byte[length];
        for (int place = first; place < end; place++) {
            int[] stems = table.stems(table.row(place));
            int from = at[table.row(place)] - 1;
            partsStart[place] = from;
            part[place] = Math.max(1, Arrays.stream(stems).max().orElse(0)) / (float) PARTS;
            for (int i = 0; i < stems.length; i++) {
                all[from + i] = (byte) Math.round(stems[i] / part[place]);
            }
        }
        return all;
    }

    private static int[] row(ProspectTable table, int row, Kinds kinds) {
        List<Integer> runs = runs(table, row, kinds);
        int[] work = table.work(row);
        int[] stems = table.stems(row);
        int runWeeks = 0;
        for (int r = 2; r < runs.size(); r += A_RUN) {
            runWeeks += runs.get(r);
        }
        int[] one = new int[HEAD + 2 * work.length + runs.size() + stems.length + runWeeks];
        one[WORK_FROM] = table.workFrom(row);
        one[WORK_WEEKS] = work.length;
        one[RUNS] = runs.size() / A_RUN;
        one[STOOD_FROM] = table.stoodFrom(row);
        one[STOOD_TO] = table.stoodTo(row);
        int at = HEAD;
        System.arraycopy(work, 0, one, at, work.length);
        at += work.length;
        System.arraycopy(table.setUp(row), 0, one, at, work.length);
        at += work.length;
        for (int figure : runs) {
            one[at++] = figure;
        }
        System.arraycopy(stems, 0, one, at, stems.length);
        one[WEEK_SUMS] = at + stems.length;
        int seasons = runWeeks == 0 ? 0 : stems.length / runWeeks;
        for (int i = 0; i < stems.length; i++) {
            one[at + stems.length + i / seasons] += stems[i];
        }
        return one;
    }

    /** Blocks of stems of one kind in weeks that follow one another are a run. */
    private static List<Integer> runs(ProspectTable table, int row, Kinds kinds) {
        List<Integer> runs = new ArrayList<>();
        int b = 0;
        while (b < table.blocks(row)) {
            int node = table.blockNode(row, b);
            int week = table.blockWeek(row, b);
            int length = 1;
            while (b + length < table.blocks(row)
                    && table.blockNode(row, b + length) == node
                    && table.blockWeek(row, b + length) == week + length) {
                length++;
            }
            runs.add(kinds.cell[node] * kinds.weeks + week);
            runs.add(kinds.role[node] * kinds.weeks + week);
            runs.add(length);
            b += length;
        }
        return runs;
    }

    /** The array in which a place's figures lie. */
    int[] of(int place) {
        return figures[stock[place]];
    }

    /** Where they begin in it. */
    int start(int place) {
        return start[place];
    }

    /**
     * The array in which a place's stems lie once more, laid out likewise, in whole parts of {@link #part} each, at most
     * {@link #PARTS}: a quarter of the memory, and a sum of products with prices fits an int.
     */
    byte[] parts(int place) {
        return parts[stock[place]];
    }

    /** Where they begin in it. */
    int partsStart(int place) {
        return partsStart[place];
    }

    /** Hundredths in a part of a place's stems. */
    float part(int place) {
        return part[place];
    }

    int stock(int place) {
        return stock[place];
    }

    int bed(int place) {
        return bed[place];
    }

    /** Cost of seed, plugs and wear, grains. */
    long material(int place) {
        return material[place];
    }

    /** Where the minutes of work begin. */
    static int work(int start) {
        return start + HEAD;
    }

    /** Where the runs begin. */
    static int runs(int[] figures, int start) {
        return work(start) + 2 * figures[start + WORK_WEEKS];
    }
}
