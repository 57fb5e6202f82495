package bedwright.exact;

import bedwright.plan.Search;
import bedwright.season.Season;
import java.util.List;

/**
 * A small season and its proven best plan's score, for those who search it.
 *
 * @param season one of {@link SmallSeasons}
 * @param best the best score; the plan itself is not told
 */
public record ProvenBest(Season season, Search.Found best) {

    /**
     * One of those whose proof is kept.
     *
     * @param number from 1, in the order of the file
     * @throws IllegalArgumentException if fewer are proven
     */
    public static ProvenBest at(long number) {
        List<Proven> all = Proven.all();
        if (number < 1 || number > all.size()) {
            throw new IllegalArgumentException("Small season " + number + ": expected 1 to " + all.size());
        }
        Proven proven = all.get((int) number - 1);
        Season season = SmallSeasons.season(SmallSeasons.tree(proven.seed()));
        return new ProvenBest(season, new Search.Found(new int[0], 0, proven.medium(), proven.soft()));
    }

    /** How many are proven. */
    public static int count() {
        return Proven.all().size();
    }
}
