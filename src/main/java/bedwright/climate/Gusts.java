package bedwright.climate;

/** Strength of gusts and what they lay flat. */
public final class Gusts {
    private Gusts() {}

    /** Number of equally likely speeds over which an expectation is taken. */
    public static final int SPEEDS = 50;

    /** Speed not exceeded with probability p by a gust with a Gumbel distribution: mode − scale × ln(−ln p), m/s. */
    public static double quantile(double mode, double scale, double p) {
        throw new UnsupportedOperationException();
    }

    /** Share laid flat by a gust: 1 / (1 + exp(−(v − v50)/s)). */
    public static double flattened(double speed, double half, double spread) {
        throw new UnsupportedOperationException();
    }

    /**
     * Expected share laid flat by one gust: mean of {@link #flattened} over {@link #SPEEDS} equally likely speeds
     * relative × quantile((i + ½)/SPEEDS), i from 0.
     *
     * @param relative relative speed at the bed, 0 to 1
     */
    public static double expectedFlattened(double mode, double scale, double relative, double half, double spread) {
        throw new UnsupportedOperationException();
    }
}
