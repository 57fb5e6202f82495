package bedwright.plan;

import bedwright.growth.Barred;
import bedwright.growth.Spot;
import org.jspecify.annotations.Nullable;

/**
 * What might be done with a planting instead.
 *
 * @param sort what would be different
 * @param spot where and how it would stand; null where it is left out, or where there is no such spot at all
 * @param tried what came of it; null where the season does not offer the spot
 * @param barred why the season does not offer it; null where it does, or where there is no such spot
 * @param fitting how many of those of this sort keep every hard rule
 * @param offered how many of this sort the season offers
 */
public record Alternative(
        Sort sort,
        @Nullable Spot spot,
        @Nullable Tried tried,
        @Nullable Barred barred,
        int fitting,
        int offered) {

    /** What would be different. */
    public enum Sort {
        /** Sown a week earlier. */
        WEEK_EARLIER,
        /** Sown a week later. */
        WEEK_LATER,
        /** In the best other bed. */
        OTHER_BED,
        /** By the best other method, in its best week. */
        OTHER_METHOD,
        /** Left out. */
        LEFT_OUT
    }
}
