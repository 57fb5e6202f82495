package bedwright.climate;

import bedwright.season.Crop;
import org.jspecify.annotations.Nullable;

/** Degree-days of one day. */
public final class DegreeDays {
    private DegreeDays() {}

    /**
     * Degree-days of a day, °C·d, never negative.
     *
     * <ul>
     *   <li>Single sine with horizontal cut-off: G. L. Baskerville and P. Emin, Rapid estimation of heat accumulation
     *       from maximum and minimum temperatures, Ecology 50 (1969) 514–517; the six cases as in F. G. Zalom and others,
     *       Degree-days: the calculation and use of heat units in pest management, University of California Leaflet
     *       21373 (1983).
     *   <li>Average: (min + max)/2 − base, 0 where that is negative. The published method has no upper threshold: one
     *       that is given is left out of account.
     *   <li>Clamped: minimum and maximum are each held between base and upper threshold before they are averaged; without
     *       an upper threshold they are only raised to the base.
     * </ul>
     *
     * @param min minimum, °C, at most {@code max}
     * @param max maximum, °C
     * @param base lower threshold, °C
     * @param upper upper threshold, °C, above the base; or null for none
     * @throws IllegalArgumentException if the minimum is above the maximum, the upper threshold not above the base, or
     *     any of them not a number
     */
    public static double of(Crop.Convention convention, double min, double max, double base, @Nullable Double upper) {
        if (!(min <= max)) {
            throw new IllegalArgumentException("Minimum " + min + " °C is above maximum " + max + " °C");
        }
        double cut = upper == null ? Double.POSITIVE_INFINITY : upper;
        if (!(base < cut)) {
            throw new IllegalArgumentException("Upper threshold " + cut + " °C is not above the base " + base + " °C");
        }
        return switch (convention) {
            case SINE -> sine(min, max, base, cut);
            case AVERAGE -> Math.max(0, (min + max) / 2 - base);
            case CLAMPED -> (Math.clamp(min, base, cut) + Math.clamp(max, base, cut)) / 2 - base;
        };
    }

    private static double sine(double min, double max, double base, double upper) {
        if (min >= upper) {
            return upper - base;
        }
        if (max <= base) {
            return 0;
        }
        double mean = (min + max) / 2;
        boolean dips = min < base;
        boolean peaks = max > upper;
        if (!dips && !peaks) {
            return mean - base;
        }
        // The course of the day is mean + half × sin θ for θ from −π/2 to π/2; it crosses the thresholds at these θ.
        double half = (max - min) / 2;
        double rises = dips ? StrictMath.asin((base - mean) / half) : -Math.PI / 2;
        double tops = peaks ? StrictMath.asin((upper - mean) / half) : Math.PI / 2;
        double between = (mean - base) * (tops - rises) + half * (StrictMath.cos(rises) - StrictMath.cos(tops));
        double above = peaks ? (upper - base) * (Math.PI / 2 - tops) : 0;
        return Math.max(0, (between + above) / Math.PI);
    }
}
