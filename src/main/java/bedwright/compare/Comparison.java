package bedwright.compare;

import bedwright.season.Season;
import bedwright.season.Strategies;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Ways of growing compared.
 *
 * @param season the season that all of them change
 * @param strategies what was to be compared
 * @param effort what each plan was given
 * @param ways with their plans judged, in the order of the strategies
 */
public record Comparison(Season season, Strategies strategies, Effort effort, List<Way> ways) {
    public Comparison {
        ways = List.copyOf(ways);
        int seasons = ways.getFirst().seasons();
        for (Way way : ways) {
            if (way.seasons() != seasons) {
                throw new IllegalArgumentException(
                        way.name() + " was judged on " + way.seasons() + " seasons, others on " + seasons);
            }
        }
    }

    /**
     * What each plan was given.
     *
     * @param seconds limit of each search in seconds, or null
     * @param moves limit in moves, or null
     * @param seed from which each search has a seed of its own
     * @param searches searches of each strategy
     */
    public record Effort(@Nullable Double seconds, @Nullable Long moves, long seed, int searches) {}

    /** The way against which the others are set: the first. */
    public Way first() {
        return ways.getFirst();
    }

    /** Number of seasons on which all were judged. */
    public int seasons() {
        return first().seasons();
    }
}
