package bedwright.climate;

import bedwright.season.Site;
import java.util.OptionalDouble;

/** Strength of gusts and what they lay flat. */
public final class Gusts {
    /** Number of equally likely speeds over which an expectation is taken. */
    public static final int SPEEDS = 50;

    /** −ln(−ln p) at the middles p of {@link #SPEEDS} equal shares. */
    private static final double[] REDUCED = reduced();

    /** Days of the months of a year of 365 days. */
    private static final int[] MONTHS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    private Gusts() {}

    private static double[] reduced() {
        double[] reduced = new double[SPEEDS];
        for (int i = 0; i < SPEEDS; i++) {
            reduced[i] = quantile(0, 1, (i + 0.5) / SPEEDS);
        }
        return reduced;
    }

    /**
     * Speed not exceeded with probability p by a gust with a Gumbel distribution: mode − scale × ln(−ln p), m/s.
     *
     * @param mode m/s
     * @param scale above 0, m/s
     * @param p above 0 and below 1
     */
    public static double quantile(double mode, double scale, double p) {
        requireFinite("A Gumbel mode", mode);
        requireAboveZero("A Gumbel scale", scale);
        if (!(p > 0 && p < 1)) {
            throw new IllegalArgumentException("A probability of a quantile lies between 0 and 1, not at " + p);
        }
        return mode - scale * StrictMath.log(-StrictMath.log(p));
    }

    /**
     * Speed in m/s that the strongest damaging gust from a side stays below in a share of the years. Gusts come with
     * the expected number N a year, each with the distribution F of its speed, so that the year's strongest is below v
     * with probability exp(−N(1 − F(v))).
     *
     * @param aYear gusts from that side in a year, expected number
     * @param share above 0 and below 1
     * @return nothing where a year without any damaging gust from that side is likelier than the share
     */
    public static OptionalDouble strongest(Site.StormSide side, double aYear, double share) {
        double below = 1 + Math.log(share) / aYear;
        return aYear > 0 && below > 0
                ? OptionalDouble.of(quantile(side.mode(), side.scale(), below))
                : OptionalDouble.empty();
    }

    /** The strongest of a side's damaging gusts in a year of 365 days: see {@link #strongest}. */
    public static OptionalDouble strongestOfAYear(Site.StormSide side, double share) {
        double aYear = 0;
        for (int m = 0; m < MONTHS.length; m++) {
            aYear += side.gustsAWeek().get(m) * MONTHS[m] / 7;
        }
        return strongest(side, aYear, share);
    }

    /**
     * Share laid flat by a gust: 1 / (1 + exp(−(v − v50)/s)).
     *
     * @param speed of the gust at the bed, m/s
     * @param half speed that lays half of the plants flat, above 0, m/s; infinite for plants that nothing lays flat
     * @param spread above 0, m/s
     */
    public static double flattened(double speed, double half, double spread) {
        requireFinite("A speed", speed);
        requireAboveZero("A speed that lays half flat", half);
        requireAboveZero("A spread of standing", spread);
        return 1 / (1 + StrictMath.exp((half - speed) / spread));
    }

    /**
     * Expected share laid flat by one gust: mean of {@link #flattened} over {@link #SPEEDS} equally likely speeds
     * relative × quantile((i + ½)/SPEEDS), i from 0.
     *
     * @param relative relative speed at the bed, 0 to 1
     * @param half as for {@link #flattened}
     */
    public static double expectedFlattened(double mode, double scale, double relative, double half, double spread) {
        requireFinite("A Gumbel mode", mode);
        requireAboveZero("A speed that lays half flat", half);
        requireAboveZero("A Gumbel scale", scale);
        requireAboveZero("A spread of standing", spread);
        if (!(relative >= 0 && relative <= 1)) {
            throw new IllegalArgumentException("A relative speed lies between 0 and 1, not at " + relative);
        }
        double sum = 0;
        for (double reduced : REDUCED) {
            double speed = relative * (mode + scale * reduced);
            sum += 1 / (1 + StrictMath.exp((half - speed) / spread));
        }
        return sum / SPEEDS;
    }

    private static void requireFinite(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " is a number of m/s, not " + value);
        }
    }

    private static void requireAboveZero(String what, double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(what + " is above 0 m/s, not " + value);
        }
    }
}
