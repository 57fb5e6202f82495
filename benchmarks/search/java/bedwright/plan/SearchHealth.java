package bedwright.plan;

import org.jspecify.annotations.Nullable;

/** What is suspect of a plan that a search found. */
final class SearchHealth {
    private SearchHealth() {}

    /**
     * What is suspect, or {@value SearchRow#SOUND}.
     *
     * @param found the plan
     * @param countedAlike whether the recheck counts it alike
     * @param bound of plans that miss no more than this one, grains, or null if there is none
     * @param thumb the rule-of-thumb season
     */
    static String of(Search.Found found, boolean countedAlike, @Nullable Double bound, Search.Found thumb) {
        if (found.hard() != 0) {
            return "breaks a hard rule";
        }
        if (!countedAlike) {
            return "counted differently by the recheck: suspect";
        }
        if (bound != null && found.soft() > bound) {
            return "better than the bound: suspect";
        }
        return thumb.isBetterThan(found) ? "worse than the rule of thumb: suspect" : SearchRow.SOUND;
    }
}
