package bedwright.sheet;

import bedwright.climate.FrostDates;
import bedwright.climate.Gusts;
import bedwright.climate.SiteClimate;
import bedwright.growth.PestPressure;
import bedwright.season.Pest;
import bedwright.season.Season;
import bedwright.season.Site;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.jspecify.annotations.Nullable;

/** What the weather and the pests of a site threaten in the open, week by week. */
final class Risks {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final int DAYS = 7;

    private final SiteClimate climate;
    private final @Nullable FrostDates frost;

    Risks(Season season) {
        this.climate = SiteClimate.of(season);
        this.frost = FrostDates.of(season).orElse(null);
    }

    boolean hasFrost() {
        return frost != null;
    }

    /**
     * Chance that a day lies in the frosty part of the year: in spring that the last frost (0 °C, in the open) is yet to
     * come on it or after, in autumn that the first has come by it. Spring or autumn is whichever median is nearer.
     */
    double frost(int day) {
        FrostDates dates = frost;
        if (dates == null) {
            return 0;
        }
        int nearest = Integer.MAX_VALUE;
        double chance = 0;
        for (int year = 0; year < dates.years(); year++) {
            int spring = Math.abs(dates.springMedian(year) - day);
            if (spring < nearest) {
                nearest = spring;
                chance = NORMAL.survivalProbability(dates.springDeviate(year, 0, day));
            }
            int autumn = Math.abs(dates.autumnMedian(year) - day);
            if (autumn < nearest) {
                nearest = autumn;
                chance = NORMAL.cumulativeProbability(dates.autumnDeviate(year, 0, day + 1));
            }
        }
        return chance;
    }

    /** Chance of frost in the middle of a week. */
    double frostInWeek(int week) {
        return frost(DAYS * week + DAYS / 2);
    }

    /** Chance of at least one damaging gust from a side in a week. */
    double gust(Site.StormSide side, int week) {
        double expected = 0;
        for (int day = DAYS * week; day < DAYS * (week + 1); day++) {
            expected += side.gustsAWeek().get(climate.month(day)) / DAYS;
        }
        return -Math.expm1(-expected);
    }

    /**
     * Share of the plants of a crop that a pest loves which it takes in a week, near its rough grass and uncovered: 1 −
     * exp(−Σ pressure).
     */
    double pest(Pest pest, int week) {
        double[] pressure = PestPressure.byWeek(pest);
        double sum = 0;
        for (int day = DAYS * week; day < DAYS * (week + 1); day++) {
            sum += pressure[climate.weekOfYear(day)];
        }
        return -Math.expm1(-sum);
    }

    /** The strongest of a side's damaging gusts in a year of 365 days: see {@link Gusts#strongest}. */
    static OptionalDouble strongest(Site.StormSide side, double share) {
        double expected = 0;
        int[] days = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
        for (int m = 0; m < days.length; m++) {
            expected += side.gustsAWeek().get(m) * days[m] / DAYS;
        }
        return Gusts.strongest(side, expected, share);
    }

    /** "west", "south-east": the nearest of eight, for degrees clockwise from north. */
    static String side(double degrees) {
        String[] names = {"north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"};
        return names[Math.floorMod(Math.round(degrees / 45), 8)];
    }
}
