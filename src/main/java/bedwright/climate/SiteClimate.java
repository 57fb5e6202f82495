package bedwright.climate;

import bedwright.season.Season;
import java.time.LocalDate;
import java.util.Arrays;

/**
 * The normal climate of a season's days. Days may be negative (before the season) down to −400, and go up to 7 × weeks
 * + 30; any other throws.
 *
 * <p>Normals are straight lines between knots on the 15th of each month of a year of 365 days, such that each month's
 * mean is its normal; 29 February has the values of 28 February. Should minimum and maximum cross on a day (monthly
 * ranges that leap from next to nothing to a lot and back), both are their mean on that day.
 */
public final class SiteClimate {
    private static final int BEFORE = 400;
    private static final int AFTER = 30;
    /** Two days count as equally cold within this, °C: the normals are the solution of equations. */
    private static final double EQUALLY_COLD = 1e-9;

    private final double[] min;
    private final double[] max;
    private final double[] dayLength;
    private final int[] weekOfYear;
    private final int[] month;
    private final int[] coldest;

    private SiteClimate(Season season) {
        double[] yearMin = MonthlyNormals.byDay(season.site().meanMin());
        double[] yearMax = MonthlyNormals.byDay(season.site().meanMax());
        uncross(yearMin, yearMax);
        double latitude = season.site().latitude();
        int coldestDay = coldest(yearMin, yearMax);

        int days = BEFORE + season.days() + AFTER + 1;
        min = new double[days];
        max = new double[days];
        dayLength = new double[days];
        weekOfYear = new int[days];
        month = new int[days];
        int[] found = new int[days];
        int count = 0;
        for (int i = 0; i < days; i++) {
            LocalDate date = season.dateOf(i - BEFORE);
            int inYear = MonthlyNormals.dayOfYear(date.getMonthValue() - 1, date.getDayOfMonth());
            min[i] = yearMin[inYear];
            max[i] = yearMax[inYear];
            dayLength[i] = DayLength.hours(latitude, date.getDayOfYear());
            weekOfYear[i] = (date.getDayOfYear() - 1) / 7;
            month[i] = date.getMonthValue() - 1;
            // A knot, or the first of the year: never 28 February, which a leap year would give twice.
            if (inYear == coldestDay) {
                found[count++] = i - BEFORE;
            }
        }
        coldest = Arrays.copyOf(found, count);
    }

    private static void uncross(double[] min, double[] max) {
        for (int d = 0; d < min.length; d++) {
            if (min[d] > max[d]) {
                min[d] = (min[d] + max[d]) / 2;
                max[d] = min[d];
            }
        }
    }

    private static int coldest(double[] min, double[] max) {
        int coldest = 0;
        for (int d = 1; d < min.length; d++) {
            if (min[d] + max[d] < min[coldest] + max[coldest] - 2 * EQUALLY_COLD) {
                coldest = d;
            }
        }
        return coldest;
    }

    /** The normal climate of a season's site. */
    public static SiteClimate of(Season season) {
        return new SiteClimate(season);
    }

    private int index(int day) {
        int index = day + BEFORE;
        if (index < 0 || index >= min.length) {
            throw new IndexOutOfBoundsException("The climate is known from day " + -BEFORE + " to day "
                    + (min.length - 1 - BEFORE) + " of the season, not on day " + day);
        }
        return index;
    }

    /** Normal minimum of a day in the open, °C. */
    public double normalMin(int day) {
        return min[index(day)];
    }

    /** Normal maximum of a day in the open, °C, not below the minimum. */
    public double normalMax(int day) {
        return max[index(day)];
    }

    /** Hours from sunrise to sunset (Forsythe and others 1995, the CBM model, 0.8333°). */
    public double dayLength(int day) {
        return dayLength[index(day)];
    }

    /** Week of the year, 0 to 52: (day of year − 1) div 7. */
    public int weekOfYear(int day) {
        return weekOfYear[index(day)];
    }

    /** Month, 0 for January. */
    public int month(int day) {
        return month[index(day)];
    }

    /**
     * The days (ascending, possibly negative) on which the coldest day of the normal year falls, in all years touched:
     * the day with the lowest mean of minimum and maximum, of equally cold ones the first in the calendar year.
     */
    public int[] coldestDays() {
        return coldest.clone();
    }
}
