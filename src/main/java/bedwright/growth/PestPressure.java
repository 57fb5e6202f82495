package bedwright.growth;

import bedwright.season.Pest;
import java.time.LocalDate;
import java.time.MonthDay;

/** The pressure of a pest through the year (season model, section 4). */
public final class PestPressure {
    private static final int WEEKS_OF_THE_YEAR = 53;
    /** Any year of 365 days. */
    private static final int COMMON_YEAR = 2023;

    private PestPressure() {}

    /**
     * Pressure a day in each week of the year, 0 to 52: that of the last entry that holds day of year 7w + 1 (of a year
     * of 365 days), 0 where none does. Entries may wrap the new year.
     */
    public static double[] byWeek(Pest pest) {
        double[] byWeek = new double[WEEKS_OF_THE_YEAR];
        for (int w = 0; w < WEEKS_OF_THE_YEAR; w++) {
            MonthDay day = MonthDay.from(LocalDate.ofYearDay(COMMON_YEAR, 7 * w + 1));
            for (Pest.Pressure entry : pest.pressure()) {
                if (World.isWithin(day, entry.from(), entry.to())) {
                    byWeek[w] = entry.aDay();
                }
            }
        }
        return byWeek;
    }
}
