package bedwright.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Seeds of the searches. */
class SearchSeedsTest {
    @Test
    void everySearchOfEveryStrategyHasItsOwnSeedThatAPlanFileHolds() {
        Set<Long> seeds = new HashSet<>();
        for (int base = 0; base < 20; base++) {
            for (String name : new String[] {"a", "b", "ab", "ba", "as it stands"}) {
                for (int search = 1; search <= 10; search++) {
                    seeds.add(SearchSeeds.of(base, name, search));
                }
            }
        }

        assertThat(seeds.size()).isEqualTo(20 * 5 * 10);
        assertThat(seeds).allMatch(seed -> seed >= 0 && seed < (1L << 52));
    }
}
