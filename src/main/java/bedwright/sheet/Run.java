package bedwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;

/**
 * Weeks on end that are alike.
 *
 * @param from first week
 * @param to last week
 * @param sort what they have in common
 */
record Run(int from, int to, int sort) {

    /** The runs of weeks whose sort is not 0, in order. */
    static List<Run> of(int weeks, IntUnaryOperator sort) {
        List<Run> runs = new ArrayList<>();
        int start = 0;
        for (int w = 1; w <= weeks; w++) {
            int was = sort.applyAsInt(start);
            if (w == weeks || sort.applyAsInt(w) != was) {
                if (was != 0) {
                    runs.add(new Run(start, w - 1, was));
                }
                start = w;
            }
        }
        return runs;
    }

    int weeks() {
        return to - from + 1;
    }
}
