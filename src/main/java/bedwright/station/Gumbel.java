package bedwright.station;

import java.util.Arrays;

/**
 * A Gumbel distribution of the speeds of gusts.
 *
 * @param mode most frequent speed, m/s
 * @param scale spread, above 0, m/s
 */
record Gumbel(double mode, double scale) {
    /** Euler's constant. */
    private static final double EULER = 0.5772156649015329;
    /** So many speeds at least, or their spread says nothing. */
    static final int LEAST = 10;

    /**
     * The distribution with the mean and the standard deviation of the speeds: scale = SD × √6/π, mode = mean − 0.5772 ×
     * scale (method of moments; worked example in Wind Energy Engineering, p. 150, Valentine, Nebraska).
     *
     * @param speeds at least two, not all equal
     */
    static Gumbel byMoments(double[] speeds) {
        double mean = Arrays.stream(speeds).average().orElse(Double.NaN);
        double squares = Arrays.stream(speeds).map(v -> (v - mean) * (v - mean)).sum();
        double sd = Math.sqrt(squares / (speeds.length - 1));
        if (!(sd > 0)) {
            throw new IllegalArgumentException(
                    "No Gumbel distribution fits " + speeds.length + " speeds without spread");
        }
        return ofMoments(mean, sd);
    }

    /** Likewise from the mean and the standard deviation. */
    static Gumbel ofMoments(double mean, double sd) {
        double scale = sd * Math.sqrt(6) / Math.PI;
        return new Gumbel(mean - EULER * scale, scale);
    }
}
