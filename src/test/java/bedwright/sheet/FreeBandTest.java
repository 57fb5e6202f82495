package bedwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeasons;
import bedwright.file.SeasonFile;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Promises;
import bedwright.plan.Search;
import bedwright.season.KindTree;
import bedwright.season.Season;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is free to promise, as the season sheet shows it. */
class FreeBandTest {
    private static final Season SEASON = SeasonFile.read(Path.of("problems/first-bed.json"));
    private static final Outcome OUTCOME = outcome();

    private static Outcome outcome() {
        PlanFacts facts = PlanFacts.of(SEASON, PossibleSeasons.of(SEASON));
        Search search = new Search(facts, new Search.Limits(1, null, 2000L));
        return Outcomes.of(facts, search.run(Search.nothingPlaced(facts)).places());
    }

    @Test
    void itsFiguresAreThoseThatCanBePromised() {
        PlanFacts facts = PlanFacts.ofPlan(SEASON, PossibleSeasons.fresh(SEASON, 128, 1), OUTCOME.plantings());
        Promises promises = Promises.of(facts, Outcomes.places(facts, OUTCOME.plantings()));
        List<List<String>> expected = new ArrayList<>();
        KindTree kinds = KindTree.of(SEASON.roles());
        for (int w = 0; w < SEASON.weeks(); w++) {
            for (String role : List.of("focal", "filler", "foliage")) {
                int[] free = promises.free(kinds.node(role), w);
                if (Promises.most(free, 0.5) > 0) {
                    expected.add(List.of(
                            String.valueOf(Promises.most(free, 0.9)),
                            String.valueOf(Promises.most(free, 0.8)),
                            String.valueOf(Promises.most(free, 0.5))));
                }
            }
        }

        assertThat(expected).isNotEmpty();
        assertThat(new FreeBand(SEASON, OUTCOME).table().rows())
                .extracting(row -> row.subList(2, 5))
                .isEqualTo(expected);
    }

    @Test
    void whatIsThereMoreSeldomIsNeverLess() {
        assertThat(new FreeBand(SEASON, OUTCOME).table().rows())
                .isNotEmpty()
                .allSatisfy(row -> assertThat(List.of(
                                Integer.valueOf(row.get(2)), Integer.valueOf(row.get(3)), Integer.valueOf(row.get(4))))
                        .isSorted());
    }

    @Test
    void itSaysForThoseWhoDoNotSeeItWhenMostIsFree() {
        assertThat(new FreeBand(SEASON, OUTCOME).description()).contains("focal: ", "in 9 years of 10");
    }
}
