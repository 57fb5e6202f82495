/**
 * Season and plan files: reading them with every fault at its place, checking that what they say holds together,
 * writing them back, saving safely, and the JSON Schema.
 *
 * <p>In come bytes and the records of {@link bedwright.season}, whose {@link bedwright.season.Fact facts} drive reader,
 * writer and schema alike; out go seasons, plans, or faults in a grower's words. No rule of growing lives here.
 */
@NullMarked
package bedwright.file;

import org.jspecify.annotations.NullMarked;
