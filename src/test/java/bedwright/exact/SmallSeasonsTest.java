package bedwright.exact;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeasons;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Rule;
import bedwright.plan.Search;
import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import bedwright.season.Lots;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The small seasons drawn from seeds whose best plans were proven, and what is kept of them. */
class SmallSeasonsTest {
    private static final long MOVES = 100_000;
    private static final long MOVES_WITHOUT_A_RULE = 20_000;

    static Stream<Proven> all() {
        return Proven.all().stream();
    }

    /** Those over most possible seasons. */
    static List<Proven> tried() {
        return all().sorted(Comparator.comparing(
                        (Proven proven) -> -season(proven).possible().count()))
                .limit(3)
                .toList();
    }

    /** Of the first one's second best plan two beds have to trade all that stands in them. */
    static Stream<Proven> searched() {
        return Stream.concat(all().filter(proven -> proven.seed() == 1), tried().stream());
    }

    static List<Rule> felt() {
        return Felt.all().entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .map(Map.Entry::getKey)
                .toList();
    }

    private static Season season(Proven proven) {
        return SmallSeasons.season(SmallSeasons.tree(proven.seed()));
    }

    @ParameterizedTest
    @MethodSource("all")
    void aSeedStillGivesTheSeasonThatWasSolved(Proven proven) {
        assertThat(SmallSeasons.hash(proven.seed())).isEqualTo(proven.hash());
    }

    @ParameterizedTest
    @ValueSource(
            longs = {1, 2, 3, 4, 5, 6, 7, 8, 101, 102, 103, 104, 105, 106, 107, 108, 100_001, 100_002, 100_003, 100_004
            })
    void eachIsSmall(long seed) {
        Season season = SmallSeasons.season(SmallSeasons.tree(seed));
        assertThat(season.weeks()).isBetween(12, 20);
        assertThat(season.allBeds().size()).isBetween(3, 6);
        assertThat(season.pool().stream().mapToInt(Lots::lots).sum()).isBetween(12, 24);
    }

    @Test
    void theyAreOverOneToEightPossibleSeasons() {
        assertThat(LongStream.rangeClosed(1, 32)
                        .mapToObj(seed -> SmallSeasons.season(SmallSeasons.tree(seed))
                                .possible()
                                .count())
                        .distinct()
                        .sorted())
                .containsExactly(1, 2, 3, 4, 5, 6, 7, 8);
    }

    @ParameterizedTest
    @MethodSource("all")
    void thePlannerScoresTheBestPlanAsItWasProven(Proven proven) {
        Season season = season(proven);
        PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));
        Plan.Score score = Outcomes.of(facts, Outcomes.places(facts, proven.plantings(season)))
                .score();
        assertThat(List.of(score.hard(), score.medium(), score.soft()))
                .isEqualTo(List.of(0L, proven.medium(), proven.soft()));
    }

    @ParameterizedTest
    @MethodSource("tried")
    void theRecheckScoresTheBestPlanAsItWasProven(Proven proven) {
        Season season = season(proven);
        Tally tally = Recheck.of(season, PossibleSeasons.of(season), proven.plantings(season));
        assertThat(List.of(tally.hard(), tally.medium(), tally.soft()))
                .isEqualTo(List.of(0L, proven.medium(), proven.soft()));
    }

    @ParameterizedTest
    @MethodSource("searched")
    void thePlannerReachesTheBestPlan(Proven proven) {
        Season season = season(proven);
        PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));
        Search.Found found = new Search(facts, new Search.Limits(1, null, MOVES)).run(Search.nothingPlaced(facts));
        assertThat(List.of(found.hard(), found.medium(), found.soft()))
                .isEqualTo(List.of(0L, proven.medium(), proven.soft()));
    }

    @Test
    void everyRuleDecidesSomewhereButThatOfChangesWhichNoNewSeasonHas() {
        assertThat(EnumSet.complementOf(EnumSet.copyOf(felt()))).containsExactly(Rule.CHANGES);
    }

    @ParameterizedTest
    @MethodSource("felt")
    void aRuleDecidesAboutTheBestPlanWhereItIsSaidTo(Rule rule) {
        long seed = Felt.all().getOrDefault(rule, List.of()).getFirst();
        Proven proven = all().filter(one -> one.seed() == seed).findFirst().orElseThrow();
        assertThat(Loosened.isFelt(rule, proven, MOVES_WITHOUT_A_RULE)).isTrue();
    }
}
