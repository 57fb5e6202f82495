package bedwright.compare;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeasons;
import bedwright.file.SeasonFile;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Search;
import bedwright.season.Sampling;
import bedwright.season.Season;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The grower with pencil and paper, on the demo farm over four possible seasons. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RuleOfThumbTest {
    private final PlanFacts facts = facts();
    private int[] places = new int[0];

    private static PlanFacts facts() {
        Season farm = SeasonFile.read(Path.of("problems", "demo-farm.json"));
        Season four = farm.with(new Sampling(4, 1, farm.possible().doubt(), List.of()));
        return PlanFacts.of(four, PossibleSeasons.of(four));
    }

    @BeforeAll
    void plan() {
        places = RuleOfThumb.places(facts);
    }

    @Test
    void breaksNoHardRuleThatTheEmptyFarmKeeps() {
        Outcome empty = Outcomes.of(facts, Search.nothingPlaced(facts));

        assertThat(Outcomes.of(facts, places).score().hard())
                .isEqualTo(empty.score().hard())
                .isZero();
    }

    @Test
    void plantsALargePartOfTheFarm() {
        long planted = Arrays.stream(places).filter(place -> place >= 0).count();

        assertThat(planted).isGreaterThan(facts.plantings() / 10);
    }

    @Test
    void earnsMoreThanLeavingTheBedsEmpty() {
        Outcome empty = Outcomes.of(facts, Search.nothingPlaced(facts));

        assertThat(Outcomes.of(facts, places).score().soft())
                .isGreaterThan(empty.score().soft());
    }

    @Test
    void aShortSearchBringsMore() {
        Search.Found found = new Search(facts, new Search.Limits(1, null, 2000L)).run(Search.nothingPlaced(facts));
        Outcome thumb = Outcomes.of(facts, places);

        assertThat(found.hard()).isEqualTo(thumb.score().hard());
        assertThat(found.medium()).isGreaterThanOrEqualTo(thumb.score().medium());
        assertThat(found.soft()).isGreaterThan(thumb.score().soft());
    }

    @Test
    void twiceTheSameFarmIsTwiceTheSamePlan() {
        assertThat(RuleOfThumb.places(facts)).containsExactly(places);
    }
}
