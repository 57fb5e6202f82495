package bedwright.exact;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeasons;
import bedwright.plan.PlanFacts;
import bedwright.plan.PriceSearch;
import bedwright.plan.Search;
import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The planner and the recheck against an exact solver, on a season of two beds and variants of it. */
class ExactSmallSeasonsTest {
    private static final long MOVES = 300_000;

    @ParameterizedTest
    @EnumSource
    void theRecheckScoresTheBestPlanAsTheExactModelDoes(SmallSeason small) {
        Tally tally = Recheck.of(
                small.season(), PossibleSeasons.of(small.season()), small.best().plantings());
        assertThat(List.of(tally.hard(), tally.medium(), tally.soft()))
                .containsExactly(0L, small.best().medium(), small.best().soft());
    }

    @ParameterizedTest
    @EnumSource
    void thePlannerClaimsNoMoreThanTheBestThereIs(SmallSeason small) {
        PlanFacts facts = small.facts();
        Search.Found found = new Search(facts, new Search.Limits(1, null, MOVES)).run(Search.nothingPlaced(facts));
        assertThat(found.isBetterThan(new Search.Found(
                        new int[0], 0, small.best().medium(), small.best().soft())))
                .as(
                        "found %d hard, %d medium, %d soft; best %s",
                        found.hard(), found.medium(), found.soft(), small.best())
                .isFalse();
    }

    @ParameterizedTest
    @EnumSource
    void theBestThereIsIsNotBeyondTheBound(SmallSeason small) {
        PriceSearch prices = new PriceSearch(small.facts(), -small.best().medium());
        prices.run(500, () -> false);
        assertThat((double) small.best().soft()).isLessThanOrEqualTo(prices.best());
    }

    /** Else the variant would try nothing that the others do not. */
    @ParameterizedTest
    @EnumSource(
            value = SmallSeason.class,
            names = {
                "TIGHT_BEDS",
                "FEW_HOURS",
                "FEW_CUTTING_HOURS",
                "SMALL_BENCH",
                "SHORT_NET",
                "FEW_LARGE_A_WEEK",
                "REST_YEARS",
                "CLEARING_COSTS"
            })
    void whatIsShortOrDearIsFelt(SmallSeason small) {
        assertThat(small.best().soft()).isLessThan(SmallSeason.AS_IT_IS.best().soft());
    }

    @Test
    void followingOnIsFelt() {
        assertThat(SmallSeason.FOLLOW_ON.best().soft())
                .isLessThan(SmallSeason.LONGER.best().soft());
    }

    @Test
    void buyingNetIsBetterThanDoingWithout() {
        assertThat(SmallSeason.NET_THAT_CAN_BE_BOUGHT.best().soft())
                .isGreaterThan(SmallSeason.SHORT_NET.best().soft());
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '\'', delimiter = '|', textBlock = """
                    "length": 12     | "length": 14
                    [{"hours": 6}]   | [{"hours": 7}]
                    [{"hours": 2}]   | [{"hours": 3}]
                    "coolHours": 1.5 | "coolHours": 2
                    "bench": 150     | "bench": 170
                    "metres": 6      | "metres": 9
                    """)
    void moreRoomHoursOrStockMakesNoPlanWorse(String before, String after) {
        // What places give is that of the shorter beds, since shelter depends on length.
        ExactModel.Best roomier = ExactModel.solve(
                SmallSeason.edited(before, after), SmallSeason.AS_IT_IS.facts().table());
        assertThat(roomier.soft())
                .isGreaterThanOrEqualTo(SmallSeason.AS_IT_IS.best().soft());
    }
}
