package bedwright.station;

import bedwright.season.Site;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The climate of a place from what any grower knows: the usual frosts, how warm the warmest month gets and how cold the
 * coldest. Rough: the months between run on
 * a cosine that lags a little, and so does what lies between a day's minimum and maximum.
 */
public final class RoughClimate {
    /** Between a day's minimum and maximum in the warmest and in the coldest month, °C: assumed, temperate. */
    static final double SUMMER_RANGE = 10.5;

    static final double WINTER_RANGE = 7.5;
    /** Months by which the warmest time lies behind the middle of July: assumed; the year's warmth lags behind the sun. */
    static final double LAG = 0.35;
    /** From the usual date to that of one year in ten, days: assumed, from memory of published tables of frost dates. */
    static final int FROST_WIDTH = 14;

    private static final int JULY = 6;
    private static final int YEAR = 2027;

    private RoughClimate() {}

    /**
     * A site with a rough climate.
     *
     * @param latitude degrees, south negative
     * @param warmest mean daily maximum of the warmest month, taken to be July (January in the south), °C
     * @param coldest mean daily minimum of the coldest month, half a year away, °C
     * @param lastFrost usual last frost of spring, or null where none comes
     * @param firstFrost usual first frost of autumn, or null likewise
     * @param stormsFrom side that storms come from, degrees, or null for none
     */
    public static Site site(
            double latitude,
            double warmest,
            double coldest,
            @Nullable MonthDay lastFrost,
            @Nullable MonthDay firstFrost,
            @Nullable Double stormsFrom) {
        double warm = warmest - SUMMER_RANGE / 2;
        double cold = coldest + WINTER_RANGE / 2;
        int warmestMonth = latitude < 0 ? (JULY + 6) % 12 : JULY;
        double full = Math.cos(2 * Math.PI * LAG / 12);
        List<Double> min = new ArrayList<>();
        List<Double> max = new ArrayList<>();
        for (int m = 0; m < 12; m++) {
            // 1 in the warmest month, −1 in the coldest.
            double course = Math.cos(2 * Math.PI * (m - warmestMonth - LAG) / 12) / full;
            double of = (warm + cold) / 2 + course * (warm - cold) / 2;
            double range = (SUMMER_RANGE + WINTER_RANGE) / 2 + course * (SUMMER_RANGE - WINTER_RANGE) / 2;
            min.add(rounded(of - range / 2));
            max.add(rounded(of + range / 2));
        }
        Site.Frost frost = lastFrost == null || firstFrost == null
                ? null
                : new Site.Frost(
                        about(lastFrost), about(firstFrost), StationClimate.SPRING_DAYS, StationClimate.AUTUMN_DAYS);
        return new Site(
                latitude,
                min,
                max,
                new Site.TemperatureSpread(0.8, 3.2, 0.8),
                frost,
                StationClimate.USUAL_SEED_BED,
                StationClimate.USUAL_WINTER,
                stormsFrom == null ? List.of() : List.of(StormFit.assumed(stormsFrom)));
    }

    private static double rounded(double value) {
        return Math.round(value * 10) / 10.0;
    }

    private static Site.FrostDate about(MonthDay usual) {
        LocalDate day = usual.atYear(YEAR);
        return new Site.FrostDate(
                MonthDay.from(day.minusDays(FROST_WIDTH)),
                MonthDay.from(day),
                MonthDay.from(day.plusDays(FROST_WIDTH)));
    }
}
