package bedwright.recheck;

import bedwright.season.Currency;
import bedwright.season.Rounding;

/**
 * The whole-number world: hundredths of a stem, millimetres, ticks (1/100,000 minute) and grains (1/6,000,000 of the
 * smallest unit of the currency), chosen so that every product below is a whole number.
 */
final class Units {
    static final long TICKS_A_MINUTE = 100_000;
    static final long TICKS_AN_HOUR = 60 * TICKS_A_MINUTE;

    /** Grains in the smallest unit of money; as many as ticks in an hour, so that money an hour is grains a tick. */
    static final long GRAINS = 6_000_000;

    /** No limit on hours. */
    static final long UNLIMITED = Long.MAX_VALUE / 4;

    private final double smallest;

    Units(Currency currency) {
        smallest = currency.smallest();
    }

    static long hundredths(double stems) {
        return Rounding.halfUp(stems * 100);
    }

    static long millimetres(double metres) {
        return Rounding.halfUp(metres * 1000);
    }

    /** Hours that are given, in ticks. */
    static long ticks(double hours) {
        return Rounding.halfUp(hours * TICKS_AN_HOUR);
    }

    /** Work, which is rounded to whole minutes, in ticks. */
    static long wholeMinutes(double minutes) {
        return Rounding.halfUp(minutes) * TICKS_A_MINUTE;
    }

    /** Minutes per 100 stems to ticks per hundredth of a stem: tenths of a minute per 100 stems. */
    static long ticksAHundredth(double minutesPer100) {
        return Rounding.halfUp(minutesPer100 * 10);
    }

    /** A rate of pay, rounded to whole smallest units an hour: grains a tick. */
    long grainsATick(double moneyAnHour) {
        return Rounding.halfUp(moneyAnHour * smallest);
    }

    long grainsAHundredth(double moneyAStem) {
        return Rounding.halfUp(moneyAStem * smallest * (GRAINS / 100));
    }

    long grainsAMillimetre(double moneyAMetre) {
        return Rounding.halfUp(moneyAMetre * smallest * (GRAINS / 1000));
    }

    /** A price of a cell or of a planting, in grains. */
    long grains(double money) {
        return Rounding.halfUp(money * smallest * GRAINS);
    }

    /** What a planting takes in material, rounded to the smallest unit of money, in grains. */
    long material(double money) {
        return Rounding.halfUp(money * smallest) * GRAINS;
    }
}
