package bedwright.climate;

import bedwright.season.Season;
import java.util.Optional;

/**
 * Last spring and first autumn frosts by threshold. A year's frosts are named by the index of the year, in which the
 * spring and the autumn date lie in the calendar year {@code starts.year − 1 + index}.
 */
public final class FrostDates {
    private FrostDates() {}

    /** The frost dates of the season's site, or nothing where it has no frost. */
    public static Optional<FrostDates> of(Season season) {
        throw new UnsupportedOperationException();
    }

    /** Number of calendar years covered: from the year before the season's first to the year after its last. */
    public int years() {
        throw new UnsupportedOperationException();
    }

    /** Day of the median last spring frost at 0 °C in a year. */
    public int springMedian(int year) {
        throw new UnsupportedOperationException();
    }

    /** Day of the median first autumn frost at 0 °C in a year. */
    public int autumnMedian(int year) {
        throw new UnsupportedOperationException();
    }

    /**
     * Day of the last spring frost at a threshold in a year, for a standard normal deviate: the median, less the site's
     * days per °C below 0 (more for a threshold above 0), plus the deviate times the spread of its half; then rounded
     * half up to a whole day. Thresholds below −6 °C are taken as −6 °C.
     */
    public int spring(int year, double threshold, double deviate) {
        throw new UnsupportedOperationException();
    }

    /** Day of the first autumn frost, likewise; a colder threshold makes it later. */
    public int autumn(int year, double threshold, double deviate) {
        throw new UnsupportedOperationException();
    }

    /**
     * The deviate at and beyond which the last spring frost of a threshold falls on or after a day: (day − ½ − μ)/σ with
     * the σ of its half.
     */
    public double springDeviate(int year, double threshold, int day) {
        throw new UnsupportedOperationException();
    }

    /** Likewise for the first autumn frost. */
    public double autumnDeviate(int year, double threshold, int day) {
        throw new UnsupportedOperationException();
    }
}
