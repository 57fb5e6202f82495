package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.PriceList;
import bedwright.season.Season;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Prices as they are kept. */
class PriceListsTest {
    private static PriceSearch searched(PlanFacts facts) {
        PriceSearch search = new PriceSearch(facts, 0);
        search.run(100, () -> false);
        return search;
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json", "demo-farm.json"})
    void readBackTheyAreKeptAsBefore(String file) {
        PlanFacts facts = Seasons.facts(Seasons.over(3, Seasons.of(file)));
        PriceList kept = searched(facts).kept();

        assertThat(PriceLists.kept(facts, PriceLists.of(facts, kept))).isEqualTo(kept);
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json", "demo-farm.json"})
    void theyBoundAsCloselyAsBeforeTheyWereRounded(String file) {
        PlanFacts facts = Seasons.facts(Seasons.over(3, Seasons.of(file)));
        PriceSearch search = searched(facts);
        double kept = Bound.of(facts, PriceLists.of(facts, search.kept()), 0);

        assertThat(kept).isCloseTo(search.best(), within(1e-4 * Math.abs(search.best())));
    }

    @Test
    void thoseOfMoreSeasonsAreRefused() {
        Season season = Seasons.of(Seasons.FIRST_BED);
        PriceList kept = searched(Seasons.facts(Seasons.over(3, season))).kept();
        PlanFacts others = Seasons.facts(Seasons.over(2, season));

        assertThatThrownBy(() -> PriceLists.of(others, kept))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("\"weights\" has 3 entries")
                .hasMessageContaining("2 possible seasons");
    }
}
