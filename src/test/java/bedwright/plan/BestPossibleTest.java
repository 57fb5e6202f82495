package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Caution;
import bedwright.season.Plan;
import bedwright.season.Plan.Worth.Thing;
import bedwright.season.PriceList;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How close a plan comes to the best possible, and what one more would be worth; reckoned by hand. */
class BestPossibleTest {
    private static final int STEPS = 3000;

    private static Plan.Score score(PlanFacts facts, int... sown) {
        SeasonScore score = Seasons.scoreOf(facts, HandSeason.sown(facts, sown));
        return new Plan.Score(score.hard(), score.medium(), score.soft());
    }

    private static Plan.Closeness closeness(PlanFacts facts, Plan.Score score) {
        PriceSearch search = new PriceSearch(facts, -score.medium());
        search.run(STEPS, () -> false);
        return BestPossible.closeness(facts, score, search.kept(), search.steps(), null);
    }

    /** At no prices the bound is the 100 that 50 stems would bring at 2; two lots give 10 stems, which bring 20. */
    @Test
    void theGapIsTheShareOfWhatPlantingCanBringThatIsMissing() {
        PlanFacts facts = new HandSeason().outlet(2, 50, "").facts();
        PriceList none = PriceLists.kept(facts, Prices.none(facts));
        Plan.Closeness closeness = BestPossible.closeness(facts, score(facts, 0, 0), none, 0, null);

        assertThat(closeness.within()).isEqualTo(80.1);
        assertThat(closeness.nothing()).isZero();
    }

    /** A shortage costs 3 × 2 a stem: nothing planted brings −300, two lots −300 + 10 × 8 of at most 100. */
    @Test
    void whatNothingPlantedCostsIsCounted() {
        PlanFacts facts = new HandSeason().outlet(2, 50, "{\"shortage\": 6}").facts();
        PriceList none = PriceLists.kept(facts, Prices.none(facts));
        Plan.Closeness closeness = BestPossible.closeness(facts, score(facts, 0, 0), none, 0, null);

        assertThat(closeness.within()).isEqualTo(80.1);
        assertThat(Grains.toMoney(facts.season, closeness.nothing())).isEqualTo(-300);
    }

    @Test
    void thePlanThatIsBestLiesWithinNearlyNothingOfIt() {
        PlanFacts facts = new HandSeason().outlet(2, 30, "").facts();
        Plan.Closeness closeness = closeness(facts, score(facts, 0, 0, 0, 0, 0, 0));

        assertThat(Optional.ofNullable(closeness.within()))
                .hasValueSatisfying(w -> assertThat(w).isLessThan(1));
    }

    /** Three lots of 10 m in a bed of 20 m. */
    @Test
    void ofAPlanThatBreaksAHardRuleNothingIsClaimed() {
        PlanFacts facts = new HandSeason()
                .with("\"length\": 100", "\"length\": 20")
                .outlet(2, 30, "")
                .facts();

        assertThat(closeness(facts, score(facts, 0, 0, 0)).within()).isNull();
    }

    @Test
    void whereNothingCanBePlantedNothingPlantedIsTheBestPossible() {
        PlanFacts facts = new HandSeason().facts();

        assertThat(closeness(facts, score(facts)).within()).isEqualTo(0);
    }

    /**
     * Ten stems have to be ours; the plan has five of them. Of plans with five or more, the best has as many in money as
     * all plans: so a bound for ten alone would be claimed as wrongly as one for none.
     */
    @Test
    void theBoundIsForPlansThatMissNoMoreOfWhatMustBeOurs() {
        PlanFacts facts = new HandSeason().outlet(2, 10, "{\"must\": 1}").facts();
        Plan.Score five = score(facts, 0);
        Plan.Score ten = score(facts, 0, 0);

        assertThat(five.medium()).isEqualTo(-500);
        assertThat(closeness(facts, five).bound()).isGreaterThanOrEqualTo(ten.soft());
        assertThat(closeness(facts, ten).bound()).isGreaterThanOrEqualTo(ten.soft());
    }

    private static double worth(PlanFacts facts, Thing thing) {
        return closeness(facts, score(facts)).worths().stream()
                .filter(worth -> worth.thing() == thing)
                .mapToDouble(Plan.Worth::season)
                .sum();
    }

    /** A lot of ten metres brings five stems of 2: a metre 1, as long as the bed of 20 m is too short. */
    @ParameterizedTest
    @CsvSource({"20, 1", "60, 1", "100, 0"})
    void aMetreOfBedIsWorthWhatItsStemsBring(int length, double worth) {
        PlanFacts facts = new HandSeason()
                .with("\"length\": 100", "\"length\": " + length)
                .outlet(2, 1000, "")
                .facts();

        assertThat(worth(facts, Thing.BED)).isCloseTo(worth, within(0.02));
    }

    /** Cutting 100 stems takes 60 minutes; 18 of them cut 30 stems in week 3, so at 2 a stem an hour more brings 200. */
    @Test
    void aCuttingHourIsWorthTheStemsThatItCuts() {
        PlanFacts facts = cutting("\"cutting\": [{\"hands\": 1, \"coolHours\": 0.3, \"mornings\": 1}], ");

        assertThat(worth(facts, Thing.CUTTING_HOUR)).isCloseTo(200.0, within(3.0));
    }

    /** The same with three tenths of an hour for all work of a week: 200 less the pay of 10. */
    @Test
    void anHourOfOnesOwnIsWorthTheStemsThatItCutsLessItsPay() {
        PlanFacts facts = cutting("\"own\": [{\"hours\": 0.3}], \"ownRate\": 10, ");

        assertThat(worth(facts, Thing.HOUR)).isCloseTo(190.0, within(3.0));
    }

    /** As many hours as one likes can be hired for 30, so one of one's own saves 20 in the week in which it is short. */
    @Test
    void anOwnHourIsWorthTheHiredOneThatItSaves() {
        PlanFacts facts = cutting(
                "\"own\": [{\"hours\": 0.3}], \"ownRate\": 10, \"hired\": [{\"hours\": 50}], \"hiredRate\": 30, ");

        assertThat(worth(facts, Thing.HOUR)).isCloseTo(20.0, within(0.3));
    }

    private static PlanFacts cutting(String labour) {
        return new HandSeason()
                .with("\"cutting\": 0", "\"cutting\": 60")
                .with("\"labour\": {", "\"labour\": {" + labour)
                .outlet(2, 60, "")
                .facts();
    }

    /**
     * With the prices held, one more of a thing raises the bound by its worth: the worths are no second copy of what the
     * bound does, but read from it.
     */
    @ParameterizedTest
    @CsvSource({
        "'\"bench\": 150', '\"bench\": 40', '\"bench\": 41', BENCH, 1",
        "'\"metres\": 6', '\"metres\": 3', '\"metres\": 4', NET, 1",
        "'\"own\": [{\"hours\": 6}]', '\"own\": [{\"hours\": 2}]', '\"own\": [{\"hours\": 3}]', HOUR, 1",
        "'\"coolHours\": 1.5', '\"coolHours\": 0.2', '\"coolHours\": 0.3', CUTTING_HOUR, 0.3"
    })
    void oneMoreRaisesTheBoundAtThesePricesByItsWorth(String there, String less, String more, Thing thing, double by) {
        PlanFacts facts =
                Seasons.facts(Seasons.edited(Seasons.FIRST_BED, there, less).with(new Caution(33)));
        PlanFacts richer =
                Seasons.facts(Seasons.edited(Seasons.FIRST_BED, there, more).with(new Caution(33)));
        PriceSearch search = new PriceSearch(facts, 0);
        search.run(STEPS, () -> false);
        PriceList prices = search.kept();
        Plan.Score nothing = new Plan.Score(0, 0, 0);
        Plan.Closeness poor = BestPossible.closeness(facts, nothing, prices, 0, null);
        Plan.Closeness rich = BestPossible.closeness(richer, nothing, prices, 0, null);
        Plan.Worth worth = poor.worths().stream()
                .filter(w -> w.thing() == thing)
                .findFirst()
                .orElseThrow();
        double rise = Grains.toMoney(facts.season, (double) (rich.bound() - poor.bound()) / facts.seasonCount);

        assertThat(worth.season()).isGreaterThan(0.05);
        // Weeks are shown to the cent, and those of hardly any worth as none.
        assertThat(rise).isCloseTo(worth.season() * by, within(0.02 * rise + 0.1));
    }
}
