package bedwright.sheet;

import java.util.Arrays;
import java.util.function.IntToLongFunction;

/**
 * How a figure differs between the possible seasons. Each of the three is the figure of one of them: the one below or at
 * which a tenth, a half and nine tenths of them lie, so that what is whole stays whole.
 *
 * @param low one year in ten is at or below it
 * @param middle a usual year
 * @param high nine years in ten are at or below it
 * @param mean mean of all
 */
record Spread(long low, long middle, long high, double mean) {

    static Spread of(int seasons, IntToLongFunction figure) {
        long[] sorted = new long[seasons];
        double sum = 0;
        for (int k = 0; k < seasons; k++) {
            sorted[k] = figure.applyAsLong(k);
            sum += sorted[k];
        }
        Arrays.sort(sorted);
        return new Spread(at(sorted, 1), at(sorted, 5), at(sorted, 9), sum / seasons);
    }

    static Spread of(int[] figures) {
        return of(figures.length, k -> figures[k]);
    }

    static Spread of(long[] figures) {
        return of(figures.length, k -> figures[k]);
    }

    /** The least of sorted figures at or below which so many tenths of them lie. */
    private static long at(long[] sorted, int tenths) {
        return sorted[(sorted.length * tenths + 9) / 10 - 1];
    }
}
