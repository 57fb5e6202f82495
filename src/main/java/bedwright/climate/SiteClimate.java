package bedwright.climate;

import bedwright.season.Season;

/**
 * The normal climate of a season's days. Days may be negative (before the season) down to −400, and go up to 7 × weeks
 * + 30.
 */
public final class SiteClimate {
    private SiteClimate() {}

    public static SiteClimate of(Season season) {
        throw new UnsupportedOperationException();
    }

    /** Normal minimum of a day in the open, °C. */
    public double normalMin(int day) {
        throw new UnsupportedOperationException();
    }

    /** Normal maximum of a day in the open, °C. */
    public double normalMax(int day) {
        throw new UnsupportedOperationException();
    }

    /** Hours from sunrise to sunset. */
    public double dayLength(int day) {
        throw new UnsupportedOperationException();
    }

    /** Week of the year, 0 to 52: (day of year − 1) div 7. */
    public int weekOfYear(int day) {
        throw new UnsupportedOperationException();
    }

    /** Month, 0 for January. */
    public int month(int day) {
        throw new UnsupportedOperationException();
    }

    /** The days (ascending, possibly negative) on which the coldest day of the normal year falls, in all years touched. */
    public int[] coldestDays() {
        throw new UnsupportedOperationException();
    }
}
