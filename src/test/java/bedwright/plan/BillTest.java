package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeasons;
import bedwright.file.SeasonFile;
import bedwright.season.Season;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What changes cost, by rule, over all possible seasons. */
class BillTest {
    private static final Season FIRST = SeasonFile.read(Path.of("problems/first-bed.json"));

    @ParameterizedTest
    @EnumSource(names = {"MATERIAL", "EXTRA_STOCK", "REST_YEARS", "FOLLOW_ON", "CHANGES"})
    void whatCostsTheSameInEverySeasonIsBilledForEach(Rule rule) {
        PlanFacts facts = PlanFacts.of(FIRST, PossibleSeasons.of(FIRST));
        Outcome nothing = Outcomes.of(facts, Search.nothingPlaced(facts));
        Answer answer = new Answer(nothing.seasons());
        answer.add(rule, 5);

        assertThat(Bill.of(answer, nothing, nothing).cost(rule)).isEqualTo(5L * nothing.seasons());
    }
}
