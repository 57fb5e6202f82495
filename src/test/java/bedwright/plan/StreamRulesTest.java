package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThatCode;

import ai.timefold.solver.core.config.solver.EnvironmentMode;
import bedwright.climate.PossibleSeasons;
import bedwright.season.Season;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The calculators that the benchmarks compare with: they have to keep the very rules that the planner keeps. */
class StreamRulesTest {
    private static PlanFacts facts(String file) {
        Season season = Seasons.of(file);
        return PlanFacts.of(season, PossibleSeasons.of(season));
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json", "farmers-problem.json", "demo-farm.json"})
    void streamsPlainCalculatorLedgersAndRecheckScoreRandomPlansAlike(String file) {
        assertThatCode(() -> new SameScores(facts(file), 7).demand(20, 10, 5)).doesNotThrowAnyException();
    }

    @Test
    void streamsStandTheSolversOwnChecks() {
        var search = new CountedSearch(facts("tray-and-bed.json"));
        assertThatCode(() -> search.run(CountedSearch.Calculator.STREAMS, 200, EnvironmentMode.TRACKED_FULL_ASSERT))
                .doesNotThrowAnyException();
    }
}
