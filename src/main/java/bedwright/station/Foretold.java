package bedwright.station;

import bedwright.climate.FrostDates;
import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.climate.SiteClimate;
import bedwright.season.Season;
import bedwright.season.Site;
import bedwright.station.FrostSeasons.Turn;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What sampled seasons of a climate foretell of a year. */
final class Foretold {
    private static final int WEEKS = 53;
    private static final int HALFWAY = 45;

    private final SiteClimate climate;
    private final @Nullable FrostDates frost;
    private final List<PossibleSeason> sampled;

    /**
     * @param begins the year's first day
     */
    Foretold(StationClimate made, LocalDate begins, boolean isNorthern, int count, long seed) {
        Site site = new Site(
                isNorthern ? HALFWAY : -HALFWAY,
                made.meanMin(),
                made.meanMax(),
                made.spread(),
                made.frost(),
                StationClimate.USUAL_SEED_BED,
                StationClimate.USUAL_WINTER,
                List.of());
        Season season = BareSeason.of(site, begins, WEEKS);
        climate = SiteClimate.of(season);
        frost = FrostDates.of(season).orElse(null);
        sampled = PossibleSeasons.sample(season, count, seed);
    }

    /** What each season foretells, in order; without those in which it does not come about. */
    double[] of(Measure measure) {
        return sampled.stream()
                .mapToDouble(possible -> of(measure, possible))
                .filter(value -> !Double.isNaN(value))
                .sorted()
                .toArray();
    }

    private double of(Measure measure, PossibleSeason possible) {
        if (measure.turn() != null) {
            return frost == null ? Double.NaN : frost(frost, measure.turn(), possible);
        }
        return measure.of(temperatures(climate, possible));
    }

    /** What the days of a sampled season are like. */
    static Measure.Temperatures temperatures(SiteClimate climate, PossibleSeason possible) {
        return new Measure.Temperatures() {
            @Override
            public double min(int day) {
                return climate.normalMin(day) + possible.deviation()[day];
            }

            @Override
            public double max(int day) {
                return climate.normalMax(day) + possible.deviation()[day];
            }
        };
    }

    /** That of the calendar year in which the season starts, or of the next one if it is past by then. */
    private static double frost(FrostDates frost, Turn turn, PossibleSeason possible) {
        int year = 1;
        if (turn == Turn.SPRING) {
            return frost.spring(frost.springMedian(year) < 0 ? year + 1 : year, 0, possible.springFrost());
        }
        return frost.autumn(frost.autumnMedian(year) < 0 ? year + 1 : year, 0, possible.autumnFrost());
    }
}
