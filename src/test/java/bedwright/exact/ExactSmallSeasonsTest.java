package bedwright.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedwright.climate.PossibleSeasons;
import bedwright.growth.ProspectTable;
import bedwright.plan.PlanFacts;
import bedwright.plan.PriceSearch;
import bedwright.plan.Rule;
import bedwright.plan.Search;
import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import bedwright.season.Caution;
import bedwright.season.Season;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The planner and the recheck against an exact solver, on a season of two beds and variants of it. */
class ExactSmallSeasonsTest {
    /** By seed: tried in turn, so that a best plan that is found soon costs little time. */
    private static final List<Long> MOVES = List.of(5_000L, 20_000L, 20_000L, 20_000L, 300_000L);

    @BeforeAll
    static void solveOnAllCores() {
        Judged.all().parallelStream().forEach(Judged::best);
    }

    @ParameterizedTest
    @MethodSource("bedwright.exact.Judged#all")
    void theRecheckScoresTheBestPlanAsTheExactModelDoes(Judged judged) {
        ExactModel.Best best = judged.best();
        assertThat(recheck(judged.season(), best)).isEqualTo(List.of(0L, best.medium(), best.soft()));
    }

    private static List<Long> recheck(Season season, ExactModel.Best best) {
        Tally tally = Recheck.of(season, PossibleSeasons.of(season), best.plantings());
        return List.of(tally.hard(), tally.medium(), tally.soft());
    }

    @ParameterizedTest
    @MethodSource("bedwright.exact.Judged#all")
    void thePlannerReachesTheBestThereIs(Judged judged) {
        ExactModel.Best best = judged.best();
        Search.Found known = new Search.Found(new int[0], 0, best.medium(), best.soft());
        PlanFacts facts = judged.facts();
        Search.Found found = search(facts, 0, MOVES.getFirst());
        for (int i = 1; i < MOVES.size() && known.isBetterThan(found); i++) {
            found = search(facts, i, MOVES.get(i));
        }
        assertThat(List.of(found.hard(), found.medium(), found.soft()))
                .isEqualTo(List.of(0L, best.medium(), best.soft()));
    }

    @ParameterizedTest
    @MethodSource("bedwright.exact.Judged#all")
    void theBestThereIsIsNotBeyondTheBound(Judged judged) {
        ExactModel.Best best = judged.best();
        PriceSearch prices = new PriceSearch(judged.facts(), -best.medium());
        prices.run(500, () -> false);
        assertThat((double) best.soft()).isLessThanOrEqualTo(prices.best());
    }

    private static Search.Found search(PlanFacts facts, long seed, long moves) {
        return new Search(facts, new Search.Limits(seed, null, moves)).run(Search.nothingPlaced(facts));
    }

    /**
     * A limit decides if there is something better without it; a price, if without it there is something better than
     * the plan that is best with it. What the planner finds is a plan, so something better need not be proven best.
     */
    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "CHANGES")
    void eachRuleDecidesAboutTheBestPlanOfSomeVariant(Rule rule) {
        Binding binding = Binding.of(rule);
        Judged judged = new Judged(binding.small(), 4, Caution.STEADY);
        ExactModel.Best best = judged.best();
        boolean isLimit = rule.level() == Rule.Level.HARD;
        List<Long> chosen =
                isLimit ? List.of(0L, best.medium(), best.soft()) : recheck(judged.season(binding.loosened()), best);
        Search.Found without =
                search(isLimit ? judged.factsWith(binding.loosened()) : judged.factsAt(binding.loosened()), 1, 30_000);
        assertThat(without.isBetterThan(new Search.Found(new int[0], 0, chosen.get(1), chosen.get(2))))
                .as("without %s %s, as with it %s", rule, without, chosen)
                .isTrue();
    }

    /** What places give is that of the shorter beds, since shelter depends on length. */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '\'', delimiter = '|', textBlock = """
                    "length": 12     | "length": 12.5
                    "length": 12     | "length": 14
                    [{"hours": 6}]   | [{"hours": 6.3}]
                    [{"hours": 6}]   | [{"hours": 7}]
                    [{"hours": 2}]   | [{"hours": 3}]
                    "coolHours": 1.5 | "coolHours": 1.6
                    "coolHours": 1.5 | "coolHours": 2
                    "bench": 150     | "bench": 170
                    "bench": 150     | "bench": 300
                    "metres": 6      | "metres": 7
                    "metres": 6      | "metres": 9
                    "lots": 2        | "lots": 3
                    """)
    void moreRoomHoursStockOrLotsMakesNoPlanWorse(String before, String after) {
        Judged judged = new Judged(SmallSeason.AS_IT_IS, 4, Caution.STEADY);
        assertThat(judged.bestWith(before, after).soft())
                .isGreaterThanOrEqualTo(judged.best().soft());
    }

    /** So that telling the solver of a plan can't prove a best that there is not. */
    @Test
    void aKnownPlanThatIsSaidToBeBetterThanTheBestLeavesNoSolution() {
        Judged judged = new Judged(SmallSeason.AS_IT_IS, 1, Caution.BOLD);
        ProspectTable table = judged.facts().table();
        long dollar = 600_000_000;
        ExactModel.Known known =
                new ExactModel.Known(judged.best().medium(), judged.best().soft() + dollar, new int[table.places()]);
        assertThatThrownBy(() -> ExactModel.solve(judged.season(), table, new ConstraintSolving(), known))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("INFEASIBLE");
    }

    @Test
    void theBestIsTheSameWhetherTheSolverIsToldOfAPlanOrNot() {
        Judged judged = new Judged(SmallSeason.AS_IT_IS, 1, Caution.BOLD);
        ProspectTable table = judged.facts().table();
        ExactModel.Best best = judged.best();
        ExactModel.Known known = new ExactModel.Known(best.medium(), best.soft(), new int[table.places()]);
        assertThat(ExactModel.solve(judged.season(), table, new ConstraintSolving(200), known)
                        .soft())
                .isEqualTo(best.soft());
    }
}
