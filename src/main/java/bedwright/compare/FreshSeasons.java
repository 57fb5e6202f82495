package bedwright.compare;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.season.Season;
import java.util.List;

/** Possible seasons to judge plans on: none that any plan was made for. */
public final class FreshSeasons {
    /** The least number that says something of the bad years, by which one in ten is meant. */
    public static final int FEWEST = 200;

    /** The seeds of season files end below this, so that no plan is ever made for what is drawn from one above it. */
    private static final long BEYOND_ALL_FILES = 1L << 53;

    private FreshSeasons() {}

    /** The seed from which they are drawn: one that no season file can have. */
    static long seed(Season season) {
        return BEYOND_ALL_FILES + season.possible().seed();
    }

    /**
     * So many fresh seasons. A season that gives its possible seasons outright has no others: those are taken, however
     * many are asked for.
     *
     * @param count at least 2
     */
    public static List<PossibleSeason> of(Season season, int count) {
        if (count < 2) {
            throw new IllegalArgumentException("Plans are judged on at least 2 seasons, not " + count);
        }
        return areGiven(season) ? PossibleSeasons.of(season) : PossibleSeasons.fresh(season, count, seed(season));
    }

    /** Whether the season says outright what seasons there are, so that none is fresh. */
    public static boolean areGiven(Season season) {
        return !season.possible().given().isEmpty();
    }
}
