/**
 * An independent recheck of a plan: the season model written a second time, slowly and plainly, from the season's facts
 * alone. It knows nothing of how the planner computes; where both come to the same whole numbers, both are believed.
 *
 * <p>In come the season, its possible seasons and the plantings of a plan; out goes a {@link bedwright.recheck.Tally}:
 * the score, and what it is made of.
 */
@NullMarked
package bedwright.recheck;

import org.jspecify.annotations.NullMarked;
