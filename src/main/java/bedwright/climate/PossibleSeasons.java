package bedwright.climate;

import bedwright.season.Season;
import java.util.List;

/** Draws the possible seasons of a season file. */
public final class PossibleSeasons {
    private PossibleSeasons() {}

    /**
     * The seasons that a plan is judged over: those given outright if there are any; else the normal season alone if
     * the count is 1; else so many sampled from the seed.
     */
    public static List<PossibleSeason> of(Season season) {
        throw new UnsupportedOperationException();
    }

    /** The normal season. */
    public static PossibleSeason normal(Season season) {
        throw new UnsupportedOperationException();
    }

    /**
     * Samples seasons, each cause from a stream of its own, so that changing one cause (or its parameters) leaves the
     * draws of the others as they were, and the first n seasons are the same whatever the count.
     *
     * @param count at least 1; unlike {@link #of}, 1 samples one season
     */
    public static List<PossibleSeason> sample(Season season, int count, long seed) {
        throw new UnsupportedOperationException();
    }
}
