/**
 * Daily records of a weather station, as facts.
 *
 * <p>In comes nothing of ours; a {@link bedwright.weather.StationRecord} is read from a file and made into the climate of
 * a place.
 */
@NullMarked
package bedwright.weather;

import org.jspecify.annotations.NullMarked;
