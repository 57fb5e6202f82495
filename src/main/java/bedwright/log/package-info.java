/**
 * What happened in a season, a line a note, beside its plan: reading, checking and adding notes. A plan's plantings come
 * in; notes as records go out. Silence means done as planned.
 *
 * <p>Nothing here knows a terminal.
 */
@NullMarked
package bedwright.log;

import org.jspecify.annotations.NullMarked;
