package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.config.solver.EnvironmentMode;
import bedwright.season.Caution;
import bedwright.season.Season;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The solver's own checks: after every move, and after undoing it, it counts the score afresh and compares; they fail by
 * throwing. A search's result is compared once more with a score that no solver has seen.
 */
class SolverAssertionsTest {
    private static final long MOVES = 3000;
    private static final long MOVES_TRACKED = 300;

    static Stream<Arguments> variants() {
        Season plain = Seasons.of(Seasons.FIRST_BED);
        return Stream.of(
                Arguments.of("as it is", plain),
                Arguments.of("one possible season", Seasons.over(1, plain)),
                Arguments.of("bold", plain.with(Caution.BOLD)),
                Arguments.of("careful", plain.with(Caution.CAREFUL)),
                Arguments.of("net short", Seasons.edited(Seasons.FIRST_BED, "\"metres\": 6", "\"metres\": 1")),
                Arguments.of(
                        "net that can be bought",
                        Seasons.edited(Seasons.FIRST_BED, "\"metres\": 6", "\"metres\": 1, \"buy\": 3")),
                Arguments.of("tight beds", Seasons.edited(Seasons.FIRST_BED, "\"length\": 12", "\"length\": 3")),
                Arguments.of("no bench", Seasons.edited(Seasons.FIRST_BED, "\"bench\": 150", "\"bench\": 0")),
                Arguments.of("must be ours", Seasons.edited(Seasons.FIRST_BED, "\"buyIn\": 1.6", "\"must\": 3")),
                Arguments.of(
                        "shortage price", Seasons.edited(Seasons.FIRST_BED, "\"buyIn\": 1.6", "\"shortage\": 2.5")),
                Arguments.of("no spare hours", Seasons.edited(Seasons.FIRST_BED, "\"hours\": 6", "\"hours\": 1.5")),
                Arguments.of("families", withFamilies()));
    }

    private static Season withFamilies() {
        return Seasons.edited(
                Seasons.FIRST_BED,
                "\"crops\": [\n    {\n      \"name\": \"sunflower, once-cut\",",
                "\"families\": [{\"name\": \"daisies\", \"restYears\": 2}],"
                        + " \"rotation\": {\"restBroken\": 5, \"followOn\": 7},"
                        + " \"crops\": [{\"name\": \"sunflower, once-cut\", \"family\": \"daisies\",",
                "\"name\": \"sunflower, branching\",",
                "\"name\": \"sunflower, branching\", \"family\": \"daisies\",",
                "{\"name\": \"Open bed\",",
                "{\"name\": \"Open bed\", \"history\": [{\"year\": 2026, \"family\": \"daisies\"}],");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("variants")
    void everyMoveIsCountedAsTheWholePlanIs(String name, Season season) {
        assertResultIsTrue(season, MOVES, EnvironmentMode.FULL_ASSERT);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("variants")
    void everyChangeIsToldToTheScore(String name, Season season) {
        assertResultIsTrue(season, MOVES_TRACKED, EnvironmentMode.TRACKED_FULL_ASSERT);
    }

    private static void assertResultIsTrue(Season season, long moves, EnvironmentMode mode) {
        PlanFacts facts = Seasons.facts(season);
        Search search = new Search(facts, new Search.Limits(5, null, moves), mode);

        Search.Found found = search.run(Search.nothingPlaced(facts));

        SeasonScore fresh = Seasons.scoreOf(facts, found.places());
        assertThat(new long[] {found.hard(), found.medium(), found.soft()})
                .containsExactly(fresh.hard(), fresh.medium(), fresh.soft());
        assertThat(search.moves()).isGreaterThan(moves);
    }
}
