/**
 * The command line: what is typed to what is done.
 *
 * <p>In come words and files; out go files, a summary and an exit code. Nothing here is missed by one who uses the
 * packages to its left as a library.
 */
@NullMarked
package bedwright.command;

import org.jspecify.annotations.NullMarked;
