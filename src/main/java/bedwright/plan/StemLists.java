package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.Arrays;

/**
 * The stems of some rows of figures once more, for each kind and week side by side: what comes of a kind in a week from
 * every row that gives any, season after season, rows innermost. So the worth of all rows, and what all of them give
 * together, are sums over long arrays.
 *
 * <p>Stems are kept as floats, which hold hundredths exactly up to 167,000 stems.
 */
final class StemLists {
    /** Number of runs into which the lists are cut, for the processors; fixed, so that sums have an order. */
    static final int PARTS = 4;

    final int cells;
    private final int seasons;
    /** Rows that give stems of cell × weeks + week, from its first on. */
    private final int[] first;

    private final int[] row;
    /** Season k of a list's i-th row: at first × K + k × length + i. */
    private final float[] stems;
    /** Ends of the runs of lists. */
    private final int[] ends = new int[PARTS];

    private final float[][] scratch;

    StemLists(PlanFacts facts, boolean[] isUsed) {
        ProspectTable table = facts.table;
        this.cells = facts.cells.size() * facts.weeks;
        this.seasons = facts.seasonCount;
        this.first = new int[cells + 1];
        int longest = 0;
        for (int r = 0; r < table.rows(); r++) {
            for (int b = 0; isUsed[r] && b < table.blocks(r); b++) {
                first[cell(facts, r, b) + 1]++;
            }
        }
        for (int c = 0; c < cells; c++) {
            longest = Math.max(longest, first[c + 1]);
            first[c + 1] += first[c];
        }
        row = new int[first[cells]];
        stems = new float[Math.multiplyExact(row.length, seasons)];
        int[] next = Arrays.copyOf(first, cells);
        for (int r = 0; r < table.rows(); r++) {
            for (int b = 0; isUsed[r] && b < table.blocks(r); b++) {
                int c = cell(facts, r, b);
                int i = next[c]++;
                row[i] = r;
                int length = first[c + 1] - first[c];
                int at = first[c] * seasons + i - first[c];
                for (int k = 0; k < seasons; k++) {
                    stems[at + k * length] = table.stems(r)[b * seasons + k];
                }
            }
        }
        scratch = new float[PARTS][longest];
        for (int part = 0, c = 0; part < PARTS; part++) {
            long wanted = (long) row.length * (part + 1) / PARTS;
            while (c < cells && first[c + 1] <= wanted) {
                c++;
            }
            ends[part] = part == PARTS - 1 ? cells : c;
        }
    }

    private static int cell(PlanFacts facts, int row, int block) {
        return facts.cells.of(facts.table.blockNode(row, block)) * facts.weeks + facts.table.blockWeek(row, block);
    }

    /** Sets what each row's stems of one part of the lists are worth. */
    void value(int part, float[] worth, float[] values) {
        Arrays.fill(values, 0);
        float[] sums = scratch[part];
        for (int c = part == 0 ? 0 : ends[part - 1]; c < ends[part]; c++) {
            int from = first[c];
            int length = first[c + 1] - from;
            if (length == 0) {
                continue;
            }
            Arrays.fill(sums, 0, length, 0);
            boolean any = false;
            for (int k = 0; k < seasons; k++) {
                float price = worth[c * seasons + k];
                if (price != 0) {
                    any = true;
                    addTimes(sums, stems, from * seasons + k * length, length, price);
                }
            }
            for (int i = 0; any && i < length; i++) {
                values[row[from + i]] += sums[i];
            }
        }
    }

    private static void addTimes(float[] sums, float[] figures, int from, int length, float times) {
        for (int i = 0; i < length; i++) {
            sums[i] += figures[from + i] * times;
        }
    }

    /** Sets what comes of each kind and week of one part, by season, of so many lots of each row. */
    void sum(int part, float[] lots, double[] came) {
        float[] here = scratch[part];
        for (int c = part == 0 ? 0 : ends[part - 1]; c < ends[part]; c++) {
            int from = first[c];
            int length = first[c + 1] - from;
            for (int i = 0; i < length; i++) {
                here[i] = lots[row[from + i]];
            }
            for (int k = 0; k < seasons; k++) {
                came[c * seasons + k] = product(here, stems, from * seasons + k * length, length);
            }
        }
    }

    private static double product(float[] lots, float[] figures, int from, int length) {
        float a = 0;
        float b = 0;
        float c = 0;
        float d = 0;
        int i = 0;
        for (; i + 3 < length; i += 4) {
            a += lots[i] * figures[from + i];
            b += lots[i + 1] * figures[from + i + 1];
            c += lots[i + 2] * figures[from + i + 2];
            d += lots[i + 3] * figures[from + i + 3];
        }
        for (; i < length; i++) {
            a += lots[i] * figures[from + i];
        }
        return (double) a + b + c + d;
    }
}
