package bedwright.growth;

import bedwright.season.Season;
import bedwright.season.UnderWay;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/** Nights whose minimum was noted, by the day of the season in whose early hours it was that cold. */
final class NotedNights {
    private static final double UNKNOWN = Double.NaN;

    /** Minimum by day of the season, up to the last one that was noted, or {@link #UNKNOWN}. */
    private final double[] least;
    /** The coldest of the nights from a day on. */
    private final double[] coldest;

    private final int[] firstUnknown;
    private final int[] knownSince;

    private NotedNights(double[] least) {
        this.least = least;
        int days = least.length;
        coldest = new double[days + 1];
        firstUnknown = new int[days + 1];
        knownSince = new int[days + 1];
        coldest[days] = Double.POSITIVE_INFINITY;
        firstUnknown[days] = days;
        for (int day = days - 1; day >= 0; day--) {
            boolean isKnown = !Double.isNaN(least[day]);
            coldest[day] = isKnown ? Math.min(least[day], coldest[day + 1]) : coldest[day + 1];
            firstUnknown[day] = isKnown ? firstUnknown[day + 1] : day;
        }
        for (int day = 1; day <= days; day++) {
            knownSince[day] = Double.isNaN(least[day - 1]) ? day : knownSince[day - 1];
        }
    }

    static NotedNights of(Season season) {
        double[] least = new double[season.days()];
        Arrays.fill(least, UNKNOWN);
        int days = 0;
        UnderWay underWay = season.underWay();
        if (underWay != null) {
            for (UnderWay.DaySeen seen : underWay.weather()) {
                int day = season.dayOf(seen.on());
                Double minimum = seen.least();
                if (minimum != null && day >= 0 && day < least.length) {
                    least[day] = minimum;
                    days = Math.max(days, day + 1);
                }
            }
        }
        return new NotedNights(Arrays.copyOf(least, days));
    }

    /** Minimum of a noted night in the open, °C. */
    double least(int day) {
        if (!isNoted(day)) {
            throw new IllegalArgumentException("Nothing was noted of the night of day " + day);
        }
        return least[day];
    }

    private boolean isNoted(int day) {
        return day >= 0 && day < least.length && !Double.isNaN(least[day]);
    }

    /** Whether none was noted from a day on. */
    boolean isEmptyFrom(int day) {
        return day >= least.length;
    }

    /** The first day, from one on, whose night was not noted. */
    int firstUnknown(int from) {
        return from >= 0 && from < firstUnknown.length ? firstUnknown[from] : from;
    }

    /** The day from which on all nights before a day were noted; the day itself where the one before it was not. */
    int knownSince(int day) {
        return day >= 0 && day < knownSince.length ? knownSince[day] : day;
    }

    /**
     * The first night, from a day on, that was as cold as something does not stand or colder.
     *
     * @param most the warmest temperature at which it may die, °C
     * @param dies the temperature of each day at which it dies, °C
     * @return {@link Development#NEVER} if there was none
     */
    int firstAsColdAs(int from, double most, IntToDoubleFunction dies) {
        for (int day = Math.max(0, from); day < least.length && coldest[day] <= most; day++) {
            // What was not noted is not a number, which is no colder than any.
            if (least[day] <= most && least[day] <= dies.applyAsDouble(day)) {
                return day;
            }
        }
        return Development.NEVER;
    }
}
