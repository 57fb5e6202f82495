package bedwright.plan;

import bedwright.season.Rounding;
import bedwright.season.Season;

/**
 * The exact units of the score. Money is counted in grains, 1/6,000,000 of the currency's smallest unit, and work in
 * ticks, 1/100,000 of a minute, so that a smallest unit an hour is a grain a tick, and every product of a price with
 * hundredths of stems, millimetres or ticks is whole.
 */
public final class Grains {
    /** Ticks in a minute. */
    public static final long TICKS_A_MINUTE = 100_000;
    /** Ticks in an hour. */
    public static final long TICKS_AN_HOUR = 60 * TICKS_A_MINUTE;
    /** Grains in the smallest unit of the currency. */
    public static final long A_SMALLEST_UNIT = 6_000_000;

    private static final long A_HUNDREDTH = A_SMALLEST_UNIT / 100;
    private static final long A_MILLIMETRE = A_SMALLEST_UNIT / 1000;

    private Grains() {}

    /** A price of a whole thing, in main units of the season's currency: grains, to the smallest unit. */
    static long ofThing(Season season, double price) {
        return A_SMALLEST_UNIT * Rounding.halfUp(price * season.currency().smallest());
    }

    /** A price of a stem: grains a hundredth of a stem. */
    static long ofStem(Season season, double price) {
        return Rounding.halfUp(price * season.currency().smallest() * A_HUNDREDTH);
    }

    /** A price of a metre: grains a millimetre. */
    static long ofMetre(Season season, double price) {
        return Rounding.halfUp(price * season.currency().smallest() * A_MILLIMETRE);
    }

    /** A rate of pay an hour: grains a tick. */
    static long ofHour(Season season, double rate) {
        return Rounding.halfUp(rate * season.currency().smallest());
    }

    /** Minutes for 100 stems: ticks a hundredth of a stem, to a tenth of a minute. */
    static long cuttingRate(double minutes) {
        return Rounding.halfUp(10 * minutes);
    }

    /** Grains as main units of the currency, for people. */
    public static double toMoney(Season season, double grains) {
        return grains / A_SMALLEST_UNIT / season.currency().smallest();
    }
}
