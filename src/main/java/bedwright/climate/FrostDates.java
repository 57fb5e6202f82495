package bedwright.climate;

import bedwright.season.Rounding;
import bedwright.season.Season;
import bedwright.season.Site;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;

/**
 * Last spring and first autumn frosts by threshold. A year's frosts are named by the index of the year, in which the
 * spring and the autumn date lie in the calendar year {@code starts.year − 1 + index}.
 *
 * <p>Each date is normal in halves: above the usual date with the spread that puts a tenth of the years after the late
 * date, below it with the one that puts a tenth before the early date. Of the early and the late date those nearest to
 * the usual one are meant, over the new year if need be, in a year of 365 days.
 */
public final class FrostDates {
    /** Standard normal deviate beyond which a tenth lies. */
    private static final double TENTH = 1.2815515655446004;
    /** Spread of a half without width, days: next to nothing, but no division by zero. */
    private static final double NO_SPREAD = 1e-6;
    /** The dates' straight lines over the threshold hold between these, °C. */
    private static final double COLDEST = -6;

    private static final double WARMEST = 3;

    private final Half spring;
    private final Half autumn;

    private FrostDates(Season season, Site.Frost frost) {
        int first = season.starts().getYear() - 1;
        int years = season.dateOf(season.days() - 1).getYear() + 1 - first + 1;
        spring = new Half("last spring", frost.lastSpring(), season, first, years, frost.springDaysPerDegree());
        autumn = new Half("first autumn", frost.firstAutumn(), season, first, years, -frost.autumnDaysPerDegree());
    }

    /**
     * The frost dates of the season's site, or nothing where it has no frost.
     *
     * @throws IllegalArgumentException if an early date lies after the usual one or a late one before it
     */
    public static Optional<FrostDates> of(Season season) {
        return Optional.ofNullable(season.site().frost()).map(frost -> new FrostDates(season, frost));
    }

    /** Number of calendar years covered: from the year before the season's first to the year after its last. */
    public int years() {
        return spring.medians.length;
    }

    /** Day of the median last spring frost at 0 °C in a year. */
    public int springMedian(int year) {
        return spring.median(year);
    }

    /** Day of the median first autumn frost at 0 °C in a year. */
    public int autumnMedian(int year) {
        return autumn.median(year);
    }

    /**
     * Day of the last spring frost at a threshold in a year, for a standard normal deviate: the median, less the site's
     * days per °C below 0 (more for a threshold above 0), plus the deviate times the spread of its half; then rounded
     * half up to a whole day. Thresholds below −6 °C are taken as −6 °C.
     *
     * @param threshold °C, at most 3
     */
    public int spring(int year, double threshold, double deviate) {
        return spring.day(year, threshold, deviate);
    }

    /** Day of the first autumn frost, likewise; a colder threshold makes it later. */
    public int autumn(int year, double threshold, double deviate) {
        return autumn.day(year, threshold, deviate);
    }

    /**
     * The deviate at and beyond which the last spring frost of a threshold falls on or after a day: (day − ½ − μ)/σ with
     * the σ of its half.
     */
    public double springDeviate(int year, double threshold, int day) {
        return spring.deviate(spring.centre(year, threshold), day - 0.5);
    }

    /** Likewise for the first autumn frost. */
    public double autumnDeviate(int year, double threshold, int day) {
        return autumn.deviate(autumn.centre(year, threshold), day - 0.5);
    }

    /** The deviate of a spring whose last frost at 0 °C is on a day. */
    double springDeviateOn(int day) {
        return spring.deviate(spring.nearestMedian(day), day);
    }

    /** The deviate of an autumn whose first frost at 0 °C is on a day. */
    double autumnDeviateOn(int day) {
        return autumn.deviate(autumn.nearestMedian(day), day);
    }

    /** One half of the year: the last frost of its spring or the first of its autumn. */
    private static final class Half {
        private final int[] medians;
        /** Days that the date comes later for each °C that the threshold is warmer. */
        private final double laterPerDegree;

        private final double earlySpread;
        private final double lateSpread;

        Half(String what, Site.FrostDate date, Season season, int firstYear, int years, double laterPerDegree) {
            this.laterPerDegree = laterPerDegree;
            earlySpread = spread(what, date, daysBetween(date.early(), date.usual()));
            lateSpread = spread(what, date, daysBetween(date.usual(), date.late()));
            medians = new int[years];
            for (int year = 0; year < years; year++) {
                LocalDate median = date.usual().atYear(firstYear + year);
                medians[year] = season.dayOf(median);
            }
        }

        private static double spread(String what, Site.FrostDate date, int width) {
            if (width < 0) {
                throw new IllegalArgumentException("The dates of the " + what + " frost are not in order: early "
                        + date.early() + ", usual " + date.usual() + ", late " + date.late());
            }
            return width == 0 ? NO_SPREAD : width / TENTH;
        }

        /** Days from one date to another, the shorter way round a year of 365 days: −182 to 182. */
        private static int daysBetween(MonthDay from, MonthDay to) {
            int half = MonthlyNormals.YEAR / 2;
            return Math.floorMod(dayOfYear(to) - dayOfYear(from) + half, MonthlyNormals.YEAR) - half;
        }

        private static int dayOfYear(MonthDay date) {
            return MonthlyNormals.dayOfYear(date.getMonthValue() - 1, date.getDayOfMonth());
        }

        int median(int year) {
            if (year < 0 || year >= medians.length) {
                throw new IndexOutOfBoundsException(
                        "Frosts are known for years 0 to " + (medians.length - 1) + ", not for year " + year);
            }
            return medians[year];
        }

        int nearestMedian(int day) {
            int nearest = medians[0];
            for (int median : medians) {
                if (Math.abs(median - day) < Math.abs(nearest - day)) {
                    nearest = median;
                }
            }
            return nearest;
        }

        double centre(int year, double threshold) {
            if (!(threshold <= WARMEST)) {
                throw new IllegalArgumentException(
                        "Frost dates are known for thresholds up to " + WARMEST + " °C, not for " + threshold + " °C");
            }
            return median(year) + laterPerDegree * Math.max(COLDEST, threshold);
        }

        int day(int year, double threshold, double deviate) {
            if (Double.isNaN(deviate)) {
                throw new IllegalArgumentException("A deviate is a number, not " + deviate);
            }
            double spread = deviate < 0 ? earlySpread : lateSpread;
            return Math.toIntExact(Rounding.halfUp(centre(year, threshold) + deviate * spread));
        }

        double deviate(double centre, double at) {
            double from = at - centre;
            return from / (from < 0 ? earlySpread : lateSpread);
        }
    }
}
