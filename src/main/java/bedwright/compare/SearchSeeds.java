package bedwright.compare;

import org.apache.commons.rng.simple.RandomSource;

/**
 * Seeds of the searches: each strategy has its own, by its name, so that two strategies never share their luck, and none
 * of them changes when another is added.
 */
public final class SearchSeeds {
    /** Seeds have no more bits than a plan's file holds exactly, and are less than its greatest one. */
    private static final int BITS = 52;

    private SearchSeeds() {}

    /**
     * The seed of a search.
     *
     * @param base the seed of the comparison
     * @param strategy name of the strategy
     * @param number number of the search, from 1
     */
    public static long of(long base, String strategy, int number) {
        long name = mixed(base);
        for (int i = 0; i < strategy.length(); i++) {
            name = mixed(name ^ strategy.charAt(i));
        }
        return mixed(name ^ ((long) number << Integer.SIZE)) >>> (Long.SIZE - BITS);
    }

    private static long mixed(long seed) {
        return RandomSource.SPLIT_MIX_64.create(seed).nextLong();
    }
}
