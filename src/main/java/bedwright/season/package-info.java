/**
 * What the grower has and knows, as records: the season, its site, beds, crops, methods, outlets, hands and stock.
 *
 * <p>In comes nothing; out go facts for every other package. The component names of these records are the keys of the
 * season file, and {@link bedwright.season.Fact} says of each what it means, its unit, its range and its default; the
 * reader and the JSON Schema are made from that.
 */
@NullMarked
package bedwright.season;

import org.jspecify.annotations.NullMarked;
