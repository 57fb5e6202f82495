/**
 * A season of one's own, begun from a few answers: the questions, what each takes and why it is asked, and the season
 * file that the answers make.
 *
 * <p>Nothing here knows a terminal.
 */
@NullMarked
package bedwright.start;

import org.jspecify.annotations.NullMarked;
