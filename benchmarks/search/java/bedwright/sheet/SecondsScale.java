package bedwright.sheet;

import java.util.List;

/** Seconds of search across a picture, on a logarithmic scale, with room around each time for the marks of its searches. */
final class SecondsScale {
    /** Room that the marks of a time would have at best. */
    static final double SLOT = 215;

    private final List<Integer> times;
    private final double left;
    private final double right;
    private final double first;
    private final double last;

    /**
     * A scale for some times.
     *
     * @param times in rising order, two or more
     */
    SecondsScale(List<Integer> times, double left, double right) {
        this.times = times;
        this.left = left;
        this.right = right;
        double before = 0.65 * Math.log((double) times.get(1) / times.get(0));
        this.first = Math.log(times.getFirst()) - Math.max(before, 1.2);
        this.last = Math.log(times.getLast()) + 0.55;
    }

    double x(int seconds) {
        return left + (right - left) * (Math.log(seconds) - first) / (last - first);
    }

    /** By how much marks have to be pushed together so that neighbouring times keep apart: 1 or less. */
    double squeeze() {
        double least = SLOT;
        for (int i = 1; i < times.size(); i++) {
            least = Math.min(least, x(times.get(i)) - x(times.get(i - 1)));
        }
        return least / SLOT;
    }
}
