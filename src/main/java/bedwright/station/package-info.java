/**
 * The climate of a place from the record of a weather station: normals, spread, frost dates, gusts; a year of the record
 * as a season; and how well sampled seasons foretell the years that they were not made from.
 *
 * <p>In come facts of days; out go the facts of a season's site. Nothing here knows a file, nor a crop's development.
 */
@NullMarked
package bedwright.station;

import org.jspecify.annotations.NullMarked;
