/**
 * Where a season under way is: a plan and its log, on a date, to what each planting has become and to the season that is
 * left of it. Pure functions; nothing here searches.
 */
@NullMarked
package bedwright.underway;

import org.jspecify.annotations.NullMarked;
