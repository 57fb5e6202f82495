package bedwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * A scale of gaps up a picture.
 *
 * @param least per cent at its lower edge
 * @param most per cent at its upper edge
 * @param top upper edge
 * @param bottom lower edge
 */
record GapScale(double least, double most, double top, double bottom) {
    private static final int LINES = 6;
    private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20};
    /** Below this width, per cent, gaps would be drawn farther apart than they matter. */
    private static final double NARROWEST = 1;

    /** A scale that holds all given gaps with some room; it need not begin at 0. */
    static GapScale of(double[] gaps, double top, double bottom) {
        double least = DoubleStream.of(gaps).min().orElse(0);
        double most = DoubleStream.of(gaps).max().orElse(NARROWEST);
        double lacking = Math.max(0, NARROWEST - (most - least)) / 2;
        double room = 0.06 * Math.max(NARROWEST, most - least);
        return new GapScale(least - lacking - room, most + lacking + room, top, bottom);
    }

    double y(double gap) {
        return bottom - (bottom - top) * (gap - least) / (most - least);
    }

    /** Round gaps within the scale. */
    List<Double> round() {
        double step = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0 && STEPS[i] * LINES >= most - least; i--) {
            step = STEPS[i];
        }
        List<Double> round = new ArrayList<>();
        for (long n = (long) Math.ceil(least / step); n * step <= most; n++) {
            round.add(n * step);
        }
        return round;
    }
}
