/**
 * Ways of growing side by side: plans judged on seasons that they were not made for, what one brings more than another
 * and how much of that may be chance, and the rule-of-thumb season that a plan has to beat.
 *
 * <p>In come seasons with changes and the plans made of them; out go figures of each and of their differences.
 */
@NullMarked
package bedwright.compare;

import org.jspecify.annotations.NullMarked;
