package bedwright.compare;

import java.util.Arrays;

/** Means and variances of what was counted. */
final class Means {
    private Means() {}

    static double of(long[] figures) {
        double sum = 0;
        for (long figure : figures) {
            sum += figure;
        }
        return sum / figures.length;
    }

    static double of(double[] figures) {
        return Arrays.stream(figures).sum() / figures.length;
    }

    /** Variance with n − 1 below; 0 of a single figure. */
    static double variance(double[] figures) {
        if (figures.length < 2) {
            return 0;
        }
        double mean = of(figures);
        double sum = 0;
        for (double figure : figures) {
            sum += (figure - mean) * (figure - mean);
        }
        return sum / (figures.length - 1);
    }
}
