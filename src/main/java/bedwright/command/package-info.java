/**
 * The command line: what is typed comes in, words and files go out. Nothing here that someone who uses Bedwright as a
 * library would miss.
 */
@NullMarked
package bedwright.command;

import org.jspecify.annotations.NullMarked;
