package bedwright.sheet;

import bedwright.climate.FrostDates;
import bedwright.climate.SiteClimate;
import bedwright.growth.PestPressure;
import bedwright.season.Pest;
import bedwright.season.Season;
import bedwright.season.Site;
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
}
