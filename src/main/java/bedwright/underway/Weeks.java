package bedwright.underway;

import bedwright.growth.Prospect;
import java.util.Arrays;

/** Stems that a planting may still give. */
public final class Weeks {
    private Weeks() {}

    /**
     * Stems from a week on, of all kinds, in the mean of the possible seasons.
     *
     * @param from first week that counts
     * @param factor on them, from what was cut
     */
    public static double mean(Prospect expected, int from, double factor) {
        return Arrays.stream(bySeason(expected, from)).average().orElse(0) * factor;
    }

    /** The same by possible season, without a factor. */
    public static double[] bySeason(Prospect expected, int from) {
        double[] sums = new double[expected.firstCuts().length];
        for (int[][] kind : expected.stems()) {
            for (int w = Math.max(0, from); w < kind.length; w++) {
                for (int k = 0; k < sums.length; k++) {
                    sums[k] += kind[w][k] / 100.0;
                }
            }
        }
        return sums;
    }
}
