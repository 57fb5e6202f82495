package bedwright.plan;

import bedwright.growth.Spot;
import org.jspecify.annotations.Nullable;

/**
 * Equal lots put elsewhere together.
 *
 * @param stock what they are lots of, as {@link bedwright.growth.ProspectTable} numbers it
 * @param lots how many, at least 1
 * @param from where they stand; null for lots that are left out so far
 * @param to where they would stand; null for leaving them out
 */
public record Step(
        int stock, int lots, @Nullable Spot from, @Nullable Spot to) {}
