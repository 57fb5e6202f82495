package bedwright.climate;

import java.util.List;

/**
 * All that chance brings in one season.
 *
 * <p>The arrays are shared, not copied: they are not to be written to.
 *
 * @param normal whether this is the normal season: frost, storm, seed-bed and winter are then taken by probability, and
 *     the other components are neutral (deviates 0, factors 1; deviations and gusts as seen, else 0 and none)
 * @param deviation °C added to both the normal minimum and maximum of each day of the season (length 7 × weeks); days
 *     before the season are as normal
 * @param gusts damaging gusts by day, ascending
 * @param pestYear multiplier of each pest, in the order of the season file
 * @param springFrost standard normal deviate of the last spring frosts
 * @param autumnFrost standard normal deviate of the first autumn frosts
 * @param badSeedBed for each week of the season, whether its seed-bed is bad
 * @param hardWinter whether the winter is a hard one
 * @param firstCutFactor factor on the first cut's degree-days of each crop, in the order of the season file
 * @param stemsFactor factor on the stems of each crop, in the order of the season file
 */
public record PossibleSeason(
        boolean normal,
        double[] deviation,
        List<Gust> gusts,
        double[] pestYear,
        double springFrost,
        double autumnFrost,
        boolean[] badSeedBed,
        boolean hardWinter,
        double[] firstCutFactor,
        double[] stemsFactor) {}
