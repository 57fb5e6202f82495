/**
 * A second way to the best plan of a small season: the season model's sections 5, 7 and 8 written as one system of
 * whole-number equations and handed to an exact solver. It shares with the planner what places give and take, and no
 * rule.
 */
@NullMarked
package bedwright.exact;

import org.jspecify.annotations.NullMarked;
