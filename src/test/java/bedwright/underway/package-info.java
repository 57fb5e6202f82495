@NullMarked
package bedwright.underway;

import org.jspecify.annotations.NullMarked;
