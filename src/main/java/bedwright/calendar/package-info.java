/**
 * The jobs and events of a plan as an iCalendar file (RFC 5545), for a calendar program.
 *
 * <p>In come a plan and, where there is one, the calendar that was written before; out goes text. An entry keeps its
 * identity from one plan to the next, so that the later file updates and cancels what the earlier one brought.
 */
@NullMarked
package bedwright.calendar;

import org.jspecify.annotations.NullMarked;
