/**
 * Ways of growing side by side: the rule-of-thumb season that a plan has to beat.
 *
 * <p>In come the facts of a plan; out go plans made by other means and judged by the same score.
 */
@NullMarked
package bedwright.compare;

import org.jspecify.annotations.NullMarked;
