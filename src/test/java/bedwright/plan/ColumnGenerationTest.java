package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Caution;
import bedwright.season.Plan;
import bedwright.season.Plan.Worth.Thing;
import bedwright.season.Season;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The bound against a linear program of the same relaxation, written apart from it and solved by OR-Tools. */
class ColumnGenerationTest {
    private static final double CLOSE = 1e-7;

    static Stream<Season> seasons() {
        Season first = Seasons.of(Seasons.FIRST_BED);
        return Stream.of(
                Seasons.over(1, first).with(Caution.BOLD),
                first.with(Caution.BOLD),
                first.with(Caution.CAREFUL),
                first.with(new Caution(100)),
                Seasons.over(7, first).with(Caution.STEADY),
                Seasons.of("tray-and-bed.json"),
                Seasons.of(Seasons.FARMERS_PROBLEM),
                Seasons.edited(Seasons.FIRST_BED, "\"metres\": 6", "\"metres\": 1, \"buy\": 1.5"),
                Seasons.edited(Seasons.FIRST_BED, "\"mostAWeek\": 150", "\"mostAWeek\": 30"),
                Seasons.edited(Seasons.FIRST_BED, "\"cutting\": 40", "\"cutting\": 40, \"clearing\": 25"),
                Seasons.edited(Seasons.FIRST_BED, "\"coolHours\": 1.5", "\"coolHours\": 0.2"),
                Seasons.edited(Seasons.FIRST_BED, "\"own\": [{\"hours\": 6}]", "\"own\": [{\"hours\": 2}]"));
    }

    private static ColumnGeneration.Found whole(PlanFacts facts, long missing) {
        return new ColumnGeneration(facts, Prices.none(facts), "GLOP", "", CLOSE, missing, line -> {})
                .run(facts.table.places(), 0, 1);
    }

    /** Duality, on models that share no code but their figures: an error in either would leave a gap, or cross. */
    @ParameterizedTest
    @MethodSource("seasons")
    void theDualValuesOfTheWholeProgramBoundAtItsOptimum(Season season) {
        ColumnGeneration.Found whole = whole(Seasons.facts(season), 0);

        assertThat(whole.upper()).isCloseTo(whole.lower(), within(1e-6 * Math.abs(whole.lower())));
    }

    @ParameterizedTest
    @MethodSource("seasons")
    void generatedFromAFewPlacesItEndsAtTheSame(Season season) {
        PlanFacts facts = Seasons.facts(season);
        ColumnGeneration.Found whole = whole(facts, 0);
        ColumnGeneration.Found generated =
                new ColumnGeneration(facts, Prices.none(facts), "GLOP", "", CLOSE, 0, line -> {}).run(5, 20, 200);

        assertThat(generated.upper()).isCloseTo(whole.upper(), within(1e-6 * Math.abs(whole.upper())));
    }

    @ParameterizedTest
    @MethodSource("seasons")
    void thePricesThatTheProductFindsAreNearlyAsGood(Season season) {
        PlanFacts facts = Seasons.facts(season);
        PriceSearch search = new PriceSearch(facts, 0);
        search.run(3000, () -> false);
        double least = whole(facts, 0).lower();
        Search.Found nothing = Search.Found.of(facts, Search.nothingPlaced(facts));

        assertThat(search.best()).isBetween(least, least + 0.005 * Math.max(Math.abs(least), least - nothing.soft()));
    }

    /** With stems that must be ours, and some of them allowed to be missing. */
    @ParameterizedTest
    @CsvSource({"0", "2000", "100000"})
    void stemsThatMustBeOursBoundAlike(long missing) {
        Season season =
                Seasons.edited(Seasons.FIRST_BED, "\"promise\": {\"buyIn\": 1.6}", "\"promise\": {\"must\": 2}");
        PlanFacts facts = Seasons.facts(season);
        // With none missing at all there may be no such plan: then some are allowed that the best plan lacks.
        long allowed = missing + 400_000;
        ColumnGeneration.Found whole = whole(facts, allowed);

        assertThat(whole.upper()).isCloseTo(whole.lower(), within(1e-6 * Math.abs(whole.lower())));
    }

    /**
     * What one more would be worth, from prices, against the optimum of the linear program with a little more and with a
     * little less of it: the worth lies between what a little more gains and what a little less loses.
     */
    @ParameterizedTest
    @CsvSource({
        "'\"bench\": 150', '\"bench\": 50', '\"bench\": 49', '\"bench\": 51', BENCH, 1",
        "'\"metres\": 6', '\"metres\": 3', '\"metres\": 2.9', '\"metres\": 3.1', NET, 0.1",
        "'\"own\": [{\"hours\": 6}]', '\"own\": [{\"hours\": 2}]', '\"own\": [{\"hours\": 1.9}]',"
                + " '\"own\": [{\"hours\": 2.1}]', HOUR, 0.1",
        "'\"mornings\": 3', '\"mornings\": 0.4', '\"mornings\": 0.36', '\"mornings\": 0.44', CUTTING_HOUR, 0.06"
    })
    void aWorthLiesBetweenWhatALittleMoreGainsAndALittleLessLoses(
            String there, String now, String less, String more, Thing thing, double by) {
        PlanFacts facts = Seasons.facts(Seasons.edited(Seasons.FIRST_BED, there, now));
        double here = optimum(facts);
        double loses = here - optimum(Seasons.facts(Seasons.edited(Seasons.FIRST_BED, there, less)));
        double gains = optimum(Seasons.facts(Seasons.edited(Seasons.FIRST_BED, there, more))) - here;
        PriceSearch search = new PriceSearch(facts, 0);
        search.run(10_000, () -> false);
        Plan.Closeness closeness =
                BestPossible.closeness(facts, new Plan.Score(0, 0, 0), search.kept(), search.steps(), null);
        double worth = by
                * closeness.worths().stream()
                        .filter(w -> w.thing() == thing)
                        .mapToDouble(Plan.Worth::season)
                        .sum();

        assertThat(gains).as("what a little more gains").isGreaterThan(0.001);
        // The prices are near the best, not the best: a tenth is left for that.
        assertThat(worth).isBetween(0.9 * gains - 0.01, 1.1 * loses + 0.01);
    }

    private static double optimum(PlanFacts facts) {
        return Grains.toMoney(facts.season, whole(facts, 0).lower() / facts.seasonCount);
    }

    @Test
    void noPlanOfTheTextbookBringsMoreThanItsOptimum() {
        PlanFacts facts = Seasons.facts(Seasons.of(Seasons.FARMERS_PROBLEM).with(Caution.BOLD));

        assertThat(optimum(facts)).isCloseTo(108_390, within(1.0));
    }
}
