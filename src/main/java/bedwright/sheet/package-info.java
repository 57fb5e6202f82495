/**
 * What a person reads of a plan: the season sheet as one HTML file with its pictures, the same words for a terminal, and
 * tables as files.
 *
 * <p>In come a season, what its plan brings, its possible seasons and its prospects; out goes text. Nothing here decides.
 */
@NullMarked
package bedwright.sheet;

import org.jspecify.annotations.NullMarked;
