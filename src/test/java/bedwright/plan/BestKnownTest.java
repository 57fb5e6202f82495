package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedwright.climate.PossibleSeasons;
import bedwright.file.PlanFile;
import bedwright.file.SeasonFile;
import bedwright.recheck.Recheck;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The best plan known of the demo farm, kept beside the results of the search. */
class BestKnownTest {
    private static final Path FOLDER = Path.of("benchmarks/search/results");

    @Test
    void theKeptPlanIsOneOfTheDemoFarmAndScoresAsItSays() {
        Plan kept = PlanFile.read(BestKnown.file(FOLDER, "demo"));
        Season season = ProblemFamily.named("demo");
        PlanFacts facts = PlanFacts.ofPlan(season, PossibleSeasons.of(season), kept.plantings(), List.of());

        Search.Found found = BestKnown.of(FOLDER, "demo", season, facts).orElseThrow();

        assertThat(new Plan.Score(found.hard(), found.medium(), found.soft())).isEqualTo(kept.score());
    }

    /** The recheck shares no rule with the planner. */
    @Test
    void theRecheckCountsItAlikeAndFindsNoFault() {
        Plan kept = PlanFile.read(BestKnown.file(FOLDER, "demo"));

        var counted = Recheck.of(kept.season(), PossibleSeasons.of(kept.season()), kept.plantings());

        assertThat(counted.faults()).isEmpty();
        assertThat(new Plan.Score(counted.hard(), counted.medium(), counted.soft()))
                .isEqualTo(kept.score());
    }

    @Test
    void aProblemOfWhichNoneIsKeptHasNone(@TempDir Path folder) {
        Season season = SeasonFile.read(Path.of("problems/first-bed.json"));
        PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));

        assertThat(BestKnown.of(folder, "first-bed", season, facts)).isEmpty();
    }

    @Test
    void aPlanOfAnotherSeasonIsRefused(@TempDir Path folder) throws IOException {
        Season season = SeasonFile.read(Path.of("problems/first-bed.json"));
        PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));
        Files.copy(BestKnown.file(FOLDER, "demo"), BestKnown.file(folder, "first-bed"));

        assertThatThrownBy(() -> BestKnown.of(folder, "first-bed", season, facts))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("best-first-bed.json", "another season");
    }
}
