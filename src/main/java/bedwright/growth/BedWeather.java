package bedwright.growth;

import bedwright.climate.DegreeDays;
import bedwright.climate.PossibleSeason;
import bedwright.climate.SiteClimate;
import bedwright.season.Crop;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The temperatures of one possible season in beds of one warmth, and the degree-day sums of the crops that ask for
 * them. Safe for several threads.
 */
final class BedWeather {
    /** Days before the season that a clock may reach back to. */
    static final int BEFORE = 400;

    private final SiteClimate climate;
    private final double[] deviation;
    private final double warmth;
    private final int days;
    private final double[] weekMean;
    private final Map<Thermometer, Sums> sums = new ConcurrentHashMap<>();

    private record Thermometer(Crop.Convention convention, double base, double upper, double leastDayLength) {}

    /**
     * Running sums of degree-days: entry i is the sum of all days before day i − {@link #BEFORE}.
     *
     * @param all of all days
     * @param lit of days that are long enough
     */
    record Sums(double[] all, double[] lit) {}

    BedWeather(SiteClimate climate, PossibleSeason season, double warmth) {
        this.climate = climate;
        this.deviation = season.deviation();
        this.warmth = warmth;
        this.days = deviation.length;
        this.weekMean = new double[days / 7];
        for (int w = 0; w < weekMean.length; w++) {
            double sum = 0;
            for (int d = 7 * w; d < 7 * w + 7; d++) {
                sum += (min(d) + max(d)) / 2;
            }
            weekMean[w] = sum / 7;
        }
    }

    private double min(int day) {
        return climate.normalMin(day) + shift(day);
    }

    private double max(int day) {
        return climate.normalMax(day) + shift(day);
    }

    private double shift(int day) {
        return (day >= 0 ? deviation[day] : 0) + warmth;
    }

    /** Mean temperature of a week of the season at the bed, °C. */
    double weekMean(int week) {
        return weekMean[week];
    }

    /** The sums for a crop's clock. */
    Sums sums(Crop.Clock clock) {
        Double upper = clock.upper();
        Thermometer thermometer = new Thermometer(
                clock.convention(), clock.base(), upper == null ? Double.NaN : upper, clock.leastDayLength());
        return sums.computeIfAbsent(thermometer, t -> add(clock));
    }

    private Sums add(Crop.Clock clock) {
        double[] all = new double[BEFORE + days + 1];
        double[] lit = new double[all.length];
        for (int i = 0; i + 1 < all.length; i++) {
            int day = i - BEFORE;
            double today = DegreeDays.of(clock.convention(), min(day), max(day), clock.base(), clock.upper());
            boolean isLong = climate.dayLength(day) >= clock.leastDayLength();
            all[i + 1] = all[i] + today;
            lit[i + 1] = lit[i] + (isLong ? today : 0);
        }
        return new Sums(all, lit);
    }
}
