/**
 * The plan: plantings with bed, sow week and method as planning variables, the rules as ledgers, the moves and the
 * search, and what a plan brings.
 *
 * <p>In come a season and the {@link bedwright.growth.ProspectTable prospects} of all places; out goes an {@link
 * bedwright.plan.Outcome outcome}. Nothing here prints or knows a file.
 */
@NullMarked
package bedwright.plan;

import org.jspecify.annotations.NullMarked;
