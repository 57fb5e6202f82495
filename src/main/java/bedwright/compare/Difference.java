package bedwright.compare;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * What one way of growing brings more than another, season by season, with what chance may have done to it.
 *
 * <p>Two things are left to chance: the seasons, and the searches, which with other seeds find other plans. For plans r =
 * 1 … R of each way in seasons k = 1 … N, let S be the variance between the plans' means, and D_k the difference in
 * season k of the means over the plans. The variance of the mean difference is then that of the searches, S_a/R_a +
 * S_b/R_b, and that of the seasons, var(D)/N; the second has a part of the first in it, since plans also differ in what
 * each season does to them, and that part (the interaction's mean squares over R·N) is taken away. The interval is
 * Student's, with degrees of freedom by Welch and Satterthwaite (B. L. Welch, Biometrika 34, 1947, from memory).
 *
 * @param mean mean difference, grains a season
 * @param low lower end of the 95 % interval
 * @param high upper end
 * @param luck half of the 95 % interval that the searches alone would leave
 * @param findable a true difference that nine such comparisons in ten would tell apart: the sum of Student's quantiles at
 *     97.5 and 90 % times the standard error
 * @param won share of the seasons in which the first brings more; seasons alike count half
 */
public record Difference(double mean, double low, double high, double luck, double findable, double won) {
    private static final double TAIL = 0.975;
    private static final double POWER = 0.9;

    /** The 95 % interval of what one way brings more than another. */
    public static Difference of(Way one, Way other) {
        return of(money(one), money(other));
    }

    private static double[][] money(Way way) {
        return way.plans().stream()
                .map(plan -> Arrays.stream(plan.money()).asDoubleStream().toArray())
                .toArray(double[][]::new);
    }

    /**
     * Likewise, of money by plan and season.
     *
     * @throws IllegalArgumentException if they were not judged on equally many seasons
     */
    static Difference of(double[][] one, double[][] other) {
        int seasons = one[0].length;
        if (other[0].length != seasons) {
            throw new IllegalArgumentException(
                    "One was judged on " + seasons + " seasons, the other on " + other[0].length);
        }
        Side a = Side.of(one);
        Side b = Side.of(other);
        double[] differences = new double[seasons];
        double won = 0;
        for (int k = 0; k < seasons; k++) {
            differences[k] = a.seasons[k] - b.seasons[k];
            won += differences[k] > 0 ? 1 : differences[k] == 0 ? 0.5 : 0;
        }
        double mean = Means.of(differences);
        double ofSeasons =
                Math.max(0, Means.variance(differences) / seasons - a.interaction / seasons - b.interaction / seasons);
        double ofSearches = a.searches + b.searches;
        double half = times(TAIL, ofSearches + ofSeasons, a, b, ofSeasons, seasons);
        double luck = times(TAIL, ofSearches, a, b, 0, seasons);
        double findable = half + times(POWER, ofSearches + ofSeasons, a, b, ofSeasons, seasons);
        return new Difference(mean, mean - half, mean + half, luck, findable, won / seasons);
    }

    /** Student's quantile times the standard error. */
    private static double times(double quantile, double variance, Side a, Side b, double ofSeasons, int seasons) {
        double below = square(a.searches) / Math.max(1, a.plans - 1)
                + square(b.searches) / Math.max(1, b.plans - 1)
                + square(ofSeasons) / (seasons - 1);
        if (variance <= 0 || below <= 0) {
            return 0;
        }
        double freedom = Math.max(1, square(variance) / below);
        return TDistribution.of(freedom).inverseCumulativeProbability(quantile) * Math.sqrt(variance);
    }

    private static double square(double value) {
        return value * value;
    }

    /** Whether chance alone would hardly do this: the interval excludes 0. */
    public boolean isTold() {
        return low > 0 || high < 0;
    }

    /**
     * One way's part.
     *
     * @param seasons money of each season in the mean of the plans
     * @param searches variance of the mean due to the searches, S/R
     * @param interaction mean square of what seasons do to one plan more than to others, over R
     */
    @SuppressWarnings("ArrayRecordComponent") // lives within one calculation
    private record Side(double[] seasons, double searches, double interaction, int plans) {
        static Side of(double[][] money) {
            int plans = money.length;
            int count = money[0].length;
            double[] seasons = new double[count];
            double[] means = new double[plans];
            for (int r = 0; r < plans; r++) {
                means[r] = Means.of(money[r]);
                for (int k = 0; k < count; k++) {
                    seasons[k] += money[r][k] / plans;
                }
            }
            double mean = Means.of(means);
            double squares = 0;
            for (int r = 0; r < plans; r++) {
                for (int k = 0; k < count; k++) {
                    squares += square(money[r][k] - means[r] - seasons[k] + mean);
                }
            }
            double interaction = plans < 2 ? 0 : squares / (plans - 1) / (count - 1) / plans;
            return new Side(seasons, Means.variance(means) / plans, interaction, plans);
        }
    }
}
