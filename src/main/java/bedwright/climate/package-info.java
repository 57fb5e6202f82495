/**
 * The weather of a season as pure functions: normals to days, degree-days, day length, frost dates, gusts, shelter of a
 * line, and the possible seasons sampled from a seed.
 *
 * <p>In come the facts of the season; out go numbers by day and the {@link bedwright.climate.PossibleSeason possible
 * seasons}. Nothing here knows a crop's development.
 */
@NullMarked
package bedwright.climate;

import org.jspecify.annotations.NullMarked;
