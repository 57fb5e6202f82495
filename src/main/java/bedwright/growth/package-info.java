/**
 * How plantings grow, as pure functions: crop, method, bed, sow week and possible seasons to the prospect of such a
 * planting: what it would give and take, week by week.
 *
 * <p>In come the facts of the season and its climate; out go {@link bedwright.growth.ProspectTable prospects} for the
 * planner and, in detail, for people. Nothing here searches, and nothing changes.
 */
@NullMarked
package bedwright.growth;

import org.jspecify.annotations.NullMarked;
