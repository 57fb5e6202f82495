package bedwright.season;

/**
 * How figures enter the whole-number world: half up, as decimals. A value within a ten-millionth of a half (or of a
 * whole number, for {@link #up}) counts as being there, so that 63 / 0.7 is 90 and not a hair more.
 */
public final class Rounding {
    private static final double HAIR = 1e-7;

    private Rounding() {}

    /** The nearest whole number, halves up. */
    public static long halfUp(double value) {
        return (long) Math.floor(value + 0.5 + HAIR);
    }

    /** The least whole number that is not below the value. */
    public static long up(double value) {
        return (long) Math.ceil(value - HAIR);
    }
}
