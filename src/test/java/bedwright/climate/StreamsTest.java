package bedwright.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class StreamsTest {

    /** First three numbers of SplitMix64 from seed 1234567, as widely printed (Rosetta Code); from memory. */
    @Test
    void namesAreMixedBySplitMix64() {
        long golden = 0x9e3779b97f4a7c15L;
        assertThat(new long[] {
                    Streams.mix(1234567 + golden), Streams.mix(1234567 + 2 * golden), Streams.mix(1234567 + 3 * golden)
                })
                .containsExactly(
                        6457827717110365317L, 3203168211198807973L, Long.parseUnsignedLong("9817491932198370423"));
    }

    @Test
    void aNameAlwaysGivesTheSameNumbers() {
        assertThat(new Streams(5).of("wind", 1, 2).nextLong())
                .isEqualTo(new Streams(5).of("wind", 1, 2).nextLong());
    }

    @Test
    void differentNamesGiveDifferentNumbers() {
        Set<Long> seen = new HashSet<>();
        int streams = 0;
        for (long seed = -3; seed < 3; seed++) {
            for (String cause : new String[] {"wind", "wine", "w", ""}) {
                for (long a = -5; a < 15; a++) {
                    for (long b = -5; b < 15; b++) {
                        seen.add(new Streams(seed).of(cause, a, b).nextLong());
                        streams++;
                    }
                    seen.add(new Streams(seed).of(cause, a).nextLong());
                    streams++;
                }
            }
        }
        assertThat(seen).hasSize(streams);
    }
}
