package bedwright.log;

import java.time.LocalDate;

/**
 * A line of the log.
 *
 * @param number its number, from 1: the line it stands on
 * @param on the day it is about
 * @param note what it says
 * @param line the line as it is written, without its end
 */
public record Entry(int number, LocalDate on, Note note, String line) {}
