/** Tests of the season files in {@code problems/}: that they open, hold what is said of them and come into cut. */
@NullMarked
package bedwright.problems;

import org.jspecify.annotations.NullMarked;
