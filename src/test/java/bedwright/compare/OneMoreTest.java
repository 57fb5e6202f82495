package bedwright.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.file.SeasonFile;
import bedwright.file.StrategiesFile;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Search;
import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import bedwright.season.Caution;
import bedwright.season.KeptPlanting;
import bedwright.season.Lots;
import bedwright.season.Season;
import bedwright.season.Strategies;
import bedwright.season.Units;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One more of each thing, and what crops earn. */
class OneMoreTest {
    private static final Season FIRST = SeasonFile.read(Path.of("problems/first-bed.json"));

    @ParameterizedTest
    @ValueSource(strings = {"first-bed", "tray-and-bed", "farmers-problem", "from-the-book", "demo-farm"})
    void whatIsTriedPassesTheCheckOfStrategyFiles(String name) {
        Season season = SeasonFile.read(Path.of("problems", name + ".json"));
        Strategies tried = OneMore.strategies(season, OneMore.of(season));

        assertThat(StrategiesFile.parse("worth", StrategiesFile.bytes(tried), season))
                .isEqualTo(tried);
    }

    @Test
    void everyCropAndEveryBlockOfBedsIsTried() {
        List<String> names =
                OneMore.of(FIRST).stream().map(one -> one.strategy().name()).toList();

        assertThat(names).contains("one bed more of Fence bed", "one bed more of Open bed");
        assertThat(names)
                .containsAll(FIRST.pool().stream()
                        .map(Lots::crop)
                        .map(crop -> "without " + crop)
                        .toList());
    }

    @Test
    void inAFileInFeetMoreIsARoundNumberOfFeet() {
        List<OneMore> nets = OneMore.of(
                        SeasonFile.read(Path.of("problems/demo-farm.json")).with(Units.FEET))
                .stream()
                .filter(one -> one.strategy().name().contains("mesh"))
                .toList();

        assertThat(nets).extracting(one -> one.strategy().name()).contains("60 ft more of fine mesh");
        assertThat(nets).extracting(OneMore::amount).containsOnly(60 * 0.3048);
        assertThat(nets).extracting(OneMore::of).containsOnly(60.0);
    }

    /** Caution is bold, so the recheck's score is the sum of the seasons' money: it counts with and without a crop. */
    @Test
    void aCropEarnsWhatOtherCodeCountsWithItMoreThanWithout() {
        Season season = FIRST.with(Caution.BOLD);
        List<PossibleSeason> possible = PossibleSeasons.of(season);
        PlanFacts facts = PlanFacts.of(season, possible);
        int[] places = new Search(facts, new Search.Limits(5, null, 3000L))
                .run(Search.nothingPlaced(facts))
                .places();
        Outcome outcome = Outcomes.of(facts, places);
        CropEarnings dill = CropEarnings.of(season, outcome.plantings(), possible).stream()
                .filter(crop -> crop.crop().equals("dill"))
                .findFirst()
                .orElseThrow();

        List<KeptPlanting> without = outcome.plantings().stream()
                .filter(planting -> !planting.crop().equals("dill"))
                .toList();
        Tally with = Recheck.of(season, possible, outcome.plantings());
        Tally rest = Recheck.of(season, possible, without);

        assertThat(dill.money()).isCloseTo((double) (with.soft() - rest.soft()) / possible.size(), within(1.0));
        assertThat(dill.room()).isPositive();
        assertThat(dill.work()).isPositive();
    }
}
