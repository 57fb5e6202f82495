package bedwright.season;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How a kind of figure is written: a length in feet, a temperature in °F, … Inside, a figure is always metric. Read as
 * decimals, so that 1 in is 0.0254 m and not a little more or less.
 *
 * @param symbol as in {@code ft}; empty where a figure has no unit
 * @param times metric figure = (written figure − zero) × times / over
 * @param over likewise
 * @param zero likewise: what stands for 0, as 32 for 0 °C in °F
 */
public record Unit(String symbol, BigDecimal times, BigDecimal over, BigDecimal zero) {
    /** Digits of which a double holds no more than half. */
    private static final MathContext EXACT = new MathContext(40, RoundingMode.HALF_EVEN);
    /** Digits with which a range is told. */
    private static final int TOLD = 4;

    /** A unit in which a figure is written as it is kept. */
    public static Unit plain(String symbol) {
        return of(symbol, "1", "1", "0");
    }

    static Unit of(String symbol, String times, String over, String zero) {
        return new Unit(symbol, new BigDecimal(times), new BigDecimal(over), new BigDecimal(zero));
    }

    /** Whether figures are written as they are kept. */
    public boolean isPlain() {
        return times.compareTo(over) == 0 && zero.signum() == 0;
    }

    /** The metric figure of a written one. */
    public double metric(BigDecimal written) {
        return isPlain() ? written.doubleValue() : exactly(written).doubleValue();
    }

    private BigDecimal exactly(BigDecimal written) {
        return written.round(EXACT).subtract(zero).multiply(times).divide(over, EXACT);
    }

    /** A metric figure as it is written, for a person: not to be read back. */
    public double of(double metric) {
        return isPlain() ? metric : back(metric).doubleValue();
    }

    private BigDecimal back(double metric) {
        return BigDecimal.valueOf(metric).multiply(over).divide(times, EXACT).add(zero);
    }

    /** The shortest figure that {@link #metric} makes exactly this one of. */
    public BigDecimal written(double metric) {
        BigDecimal all = back(metric);
        for (int digits = 1; digits < EXACT.getPrecision(); digits++) {
            BigDecimal rounded = all.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (metric(rounded) == metric) {
                return rounded;
            }
        }
        return all;
    }

    /** A least metric figure that is allowed, as it is told: rounded to a few digits, downwards. */
    public double least(double metric) {
        return limit(metric, RoundingMode.FLOOR);
    }

    /** A greatest metric figure that is allowed, as it is told: rounded to a few digits, upwards. */
    public double most(double metric) {
        return limit(metric, RoundingMode.CEILING);
    }

    private double limit(double metric, RoundingMode outwards) {
        return isPlain() || Double.isInfinite(metric)
                ? metric
                : back(metric).round(new MathContext(TOLD, outwards)).doubleValue();
    }
}
