package bedwright.climate;

import java.util.List;

/**
 * Turns twelve monthly means into a course over the days of a year of 365 days: straight lines between knots on the
 * 15th of each month, the knots chosen so that the mean over the days of each month is that month's mean.
 */
public final class MonthlyNormals {
    /** Days of the year that the course runs over. */
    public static final int YEAR = 365;

    static final int MONTHS = 12;
    private static final int[] LENGTH = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    private static final int KNOT = 15;
    private static final int[] STARTS = starts();

    private MonthlyNormals() {}

    private static int[] starts() {
        int[] starts = new int[MONTHS];
        for (int m = 1; m < MONTHS; m++) {
            starts[m] = starts[m - 1] + LENGTH[m - 1];
        }
        return starts;
    }

    /**
     * Day of the year from 0 to 364; 29 February is taken as 28 February.
     *
     * @param month from 0
     * @param dayOfMonth from 1
     */
    public static int dayOfYear(int month, int dayOfMonth) {
        return STARTS[month] + Math.min(dayOfMonth, LENGTH[month]) - 1;
    }

    /** The value of each of the 365 days, from the mean of each month. */
    public static double[] byDay(List<Double> means) {
        if (means.size() != MONTHS) {
            throw new IllegalArgumentException("Normals are 12 monthly means, not " + means.size());
        }
        double[][] equations = new double[MONTHS][MONTHS + 1];
        for (int m = 0; m < MONTHS; m++) {
            for (int d = 1; d <= LENGTH[m]; d++) {
                int left = leftKnot(m, d);
                double share = shareOfNext(m, d);
                equations[m][left] += (1 - share) / LENGTH[m];
                equations[m][(left + 1) % MONTHS] += share / LENGTH[m];
            }
            equations[m][MONTHS] = means.get(m);
        }
        double[] knots = solve(equations);
        double[] values = new double[YEAR];
        for (int m = 0; m < MONTHS; m++) {
            for (int d = 1; d <= LENGTH[m]; d++) {
                int left = leftKnot(m, d);
                double share = shareOfNext(m, d);
                values[dayOfYear(m, d)] = (1 - share) * knots[left] + share * knots[(left + 1) % MONTHS];
            }
        }
        return values;
    }

    /** The month whose 15th is the last on or before a day. */
    private static int leftKnot(int month, int dayOfMonth) {
        return dayOfMonth >= KNOT ? month : (month + MONTHS - 1) % MONTHS;
    }

    /** How far a day has come from the knot on its left to the one on its right, 0 to 1. */
    private static double shareOfNext(int month, int dayOfMonth) {
        int left = leftKnot(month, dayOfMonth);
        int since = left == month ? dayOfMonth - KNOT : LENGTH[left] - KNOT + dayOfMonth;
        return (double) since / LENGTH[left];
    }

    /** Gaussian elimination with row exchange; the last column is the right-hand side. */
    private static double[] solve(double[][] rows) {
        int n = rows.length;
        for (int c = 0; c < n; c++) {
            int pivot = c;
            for (int r = c + 1; r < n; r++) {
                if (Math.abs(rows[r][c]) > Math.abs(rows[pivot][c])) {
                    pivot = r;
                }
            }
            double[] kept = rows[pivot];
            rows[pivot] = rows[c];
            rows[c] = kept;
            for (int r = c + 1; r < n; r++) {
                double times = rows[r][c] / kept[c];
                for (int k = c; k <= n; k++) {
                    rows[r][k] -= times * kept[k];
                }
            }
        }
        double[] solution = new double[n];
        for (int r = n - 1; r >= 0; r--) {
            double rest = rows[r][n];
            for (int k = r + 1; k < n; k++) {
                rest -= rows[r][k] * solution[k];
            }
            solution[r] = rest / rows[r][r];
        }
        return solution;
    }
}
