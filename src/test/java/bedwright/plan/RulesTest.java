package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.Arrays;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each rule costs what it should, reckoned by hand from the season model, sections 5, 7 and 8. */
class RulesTest {
    private static final long HARD_UNIT = 100_000;
    private static final long CENT = Grains.A_SMALLEST_UNIT;

    /** The rule that a test is of. */
    @Retention(RetentionPolicy.RUNTIME)
    @Target(ElementType.METHOD)
    private @interface Of {
        Rule value();
    }

    @ParameterizedTest
    @EnumSource
    void everyRuleHasATestOfItsOwn(Rule rule) {
        assertThat(Arrays.stream(RulesTest.class.getDeclaredMethods())
                        .filter(method -> method.isAnnotationPresent(Test.class))
                        .map(method -> method.getAnnotation(Of.class))
                        .filter(Objects::nonNull)
                        .map(Of::value))
                .contains(rule);
    }

    @ParameterizedTest
    @EnumSource
    void everyRuleHasASentenceAndAUnit(Rule rule) {
        assertThat(rule.sentence()).matches("[A-Z].* .*\\.");
        assertThat(rule.unit()).isNotBlank();
    }

    private static SeasonScore score(HandSeason season, int... sown) {
        PlanFacts facts = season.facts();
        return Seasons.scoreOf(facts, HandSeason.sown(facts, sown));
    }

    private static Outcome outcome(HandSeason season, int... sown) {
        PlanFacts facts = season.facts();
        return Outcomes.of(facts, HandSeason.sown(facts, sown));
    }

    private static void assertHard(HandSeason season, Rule rule, long units, int... sown) {
        SeasonScore score = score(season, sown);
        assertThat(score.cost(rule)).isEqualTo(units * HARD_UNIT);
        assertThat(score.hard()).isEqualTo(-units * HARD_UNIT);
    }

    private static void assertSoft(HandSeason season, Rule rule, long cents, int... sown) {
        SeasonScore score = score(season, sown);
        assertThat(score.cost(rule)).isEqualTo(cents * CENT);
        assertThat(score.soft()).isEqualTo(-cents * CENT);
        assertThat(score.hard()).isZero();
    }

    /** Two lots take 20 m of 15 m for six weeks. */
    @Test
    @Of(Rule.BED_ROOM)
    void bedRoomCostsTheMillimetresBeyondForEachWeek() {
        assertHard(new HandSeason().with("\"length\": 100", "\"length\": 15"), Rule.BED_ROOM, 5000 * 6, 0, 0);
    }

    /** Ten metres at a minute a metre in the sow week, six minutes at hand. */
    @Test
    @Of(Rule.HOURS)
    void hoursCostTheMinutesBeyondOwnAndHired() {
        HandSeason season = new HandSeason()
                .with("\"sow\": {\"minutes\": 0}", "\"sow\": {\"minutes\": 1}")
                .with("\"labour\": {", "\"labour\": {\"own\": [{\"hours\": 0.1}],");
        assertHard(season, Rule.HOURS, 4, 0);
    }

    /** Five stems at a minute each, and three minutes for it, in the one week in which they are asked for. */
    @Test
    @Of(Rule.CUTTING_HOURS)
    void cuttingHoursCostTheMinutesBeyond() {
        HandSeason season = new HandSeason()
                .outlet(10, 20, "")
                .with("\"cutting\": 0", "\"cutting\": 100")
                .with(
                        "\"labour\": {",
                        "\"labour\": {\"cutting\": [{\"hands\": 1, \"coolHours\": 0.05, \"mornings\": 1}],");
        assertHard(season, Rule.CUTTING_HOURS, 2, 0);
    }

    /** ⌈10 / 0.8⌉ = 13 cells on a bench of 10, for the one of two tray weeks that is not outside. */
    @Test
    @Of(Rule.BENCH_ROOM)
    void benchRoomCostsTheCellsBeyondForEachWeek() {
        HandSeason season = new HandSeason()
                .with(
                        "\"start\": \"sown\"",
                        "\"start\": \"tray\", \"trayWeeks\": 2, \"hardeningWeeks\": 1, \"emergence\": 0.8")
                .with("\"stock\": {}", "\"stock\": {\"bench\": 10}");
        assertHard(season, Rule.BENCH_ROOM, 3, 0);
    }

    /** Ten metres of net where there are four, in the weeks 0 (up) to 5 (last grace week). */
    @Test
    @Of(Rule.STOCK_ROOM)
    void stockThatCannotBeBoughtCostsTheCentimetresBeyondForEachWeek() {
        assertHard(netted(""), Rule.STOCK_ROOM, 600 * 6, 0);
    }

    /** Six metres more than there are, at 3.00. */
    @Test
    @Of(Rule.EXTRA_STOCK)
    void stockThatCanBeBoughtCostsTheSeasonsPeakBeyond() {
        assertSoft(netted(", \"buy\": 3"), Rule.EXTRA_STOCK, 1800, 0);
    }

    private static HandSeason netted(String buy) {
        return new HandSeason()
                .with("\"stock\": {}", "\"stock\": {\"nets\": [{\"name\": \"Net\", \"metres\": 4" + buy + "}]}")
                .with("\"stems\": 1}", "\"stems\": 1, \"net\": {\"net\": \"Net\"}}");
    }

    /** Eight asked for, five come: three missing at weight 4, in hundredths. */
    @Test
    @Of(Rule.MUST_BE_OURS)
    void whatMustBeOursCostsTheMissingStemsTimesTheirWeight() {
        SeasonScore score = score(new HandSeason().outlet(0.01, 8, "{\"must\": 4}"), 0);
        assertThat(score.cost(Rule.MUST_BE_OURS)).isEqualTo(1200);
        assertThat(score.medium()).isEqualTo(-1200);
    }

    /** Four of the five stems of the week are asked for, at 2.00. */
    @Test
    @Of(Rule.TAKINGS)
    void stemsThatGoSomewhereAreTaken() {
        Outcome outcome = outcome(new HandSeason().outlet(2, 4, ""), 0);
        assertThat(outcome.money().takings()).containsExactly(800 * CENT);
        assertThat(outcome.score().soft()).isEqualTo(800 * CENT);
    }

    /** Five delivered at 2.00; three missing at 1.50. */
    @Test
    @Of(Rule.SHORTAGE)
    void missingStemsCostTheirShortagePrice() {
        Outcome outcome = outcome(new HandSeason().outlet(2, 8, "{\"shortage\": 1.5}"), 0);
        assertThat(outcome.money().shortage()).containsExactly(450 * CENT);
        assertThat(outcome.score().soft()).isEqualTo((1000 - 450) * CENT);
    }

    /** A promise that says no more: three missing at three times 2.00. */
    @Test
    @Of(Rule.SHORTAGE)
    void missingStemsCostThreeTimesTheirPriceIfNothingIsSaid() {
        Outcome outcome = outcome(new HandSeason().outlet(2, 8, "{}"), 0);
        assertThat(outcome.money().shortage()).containsExactly(1800 * CENT);
        assertThat(outcome.score().soft()).isEqualTo((1000 - 1800) * CENT);
    }

    /** All eight are paid at 2.00; three are bought at 3.00. */
    @Test
    @Of(Rule.BUY_IN)
    void missingStemsAreBoughtAndTheOrderIsPaidInFull() {
        Outcome outcome = outcome(new HandSeason().outlet(2, 8, "{\"buyIn\": 3}"), 0);
        assertThat(outcome.money().buyIn()).containsExactly(900 * CENT);
        assertThat(outcome.score().soft()).isEqualTo((1600 - 900) * CENT);
    }

    /** Ten minutes: six of one's own at 10.00 an hour, four hired at 15.00. */
    @Test
    @Of(Rule.HOURS_PAID)
    void hoursArePaidOwnOnesFirst() {
        HandSeason season = new HandSeason()
                .with("\"sow\": {\"minutes\": 0}", "\"sow\": {\"minutes\": 1}")
                .with(
                        "\"labour\": {",
                        "\"labour\": {\"ownRate\": 10, \"hiredRate\": 15, \"own\": [{\"hours\": 0.1}],"
                                + " \"hired\": [{\"hours\": 1}],");
        assertSoft(season, Rule.HOURS_PAID, 100 + 100, 0);
    }

    /** Two lots at once are one job: its set-up of seven minutes counts once, at 60.00 an hour. */
    @Test
    @Of(Rule.HOURS_PAID)
    void lotsOfOneJobAreSetUpOnce() {
        HandSeason season = new HandSeason()
                .with("\"sow\": {\"minutes\": 0}", "\"sow\": {\"minutes\": 1, \"setUp\": 7}")
                .with("\"labour\": {", "\"labour\": {\"ownRate\": 60,");
        assertSoft(season, Rule.HOURS_PAID, 100 * (7 + 20), 0, 0);
    }

    /** Ten plant places at 0.25. */
    @Test
    @Of(Rule.MATERIAL)
    void seedIsPaidByThePlantPlace() {
        assertSoft(new HandSeason().with("\"height\": 1,", "\"height\": 1, \"price\": 0.25,"), Rule.MATERIAL, 250, 0);
    }

    /** In the bed in 2026 and again in 2027, where two years are to pass: 5.00 a planting. */
    @Test
    @Of(Rule.REST_YEARS)
    void restYearsBrokenCostTheirPriceForEachPlanting() {
        HandSeason season = family().with(
                        "\"length\": 100", "\"length\": 100, \"history\": [{\"family\": \"daisies\", \"year\": 2026}]");
        assertSoft(season, Rule.REST_YEARS, 1000, 0, 0);
    }

    /** Two years, 2025 and 2026, have passed since 2024. */
    @Test
    @Of(Rule.REST_YEARS)
    void restYearsKeptCostNothing() {
        HandSeason season = family().with(
                        "\"length\": 100", "\"length\": 100, \"history\": [{\"family\": \"daisies\", \"year\": 2024}]");
        assertSoft(season, Rule.REST_YEARS, 0, 0, 0);
    }

    /** One in the weeks 0 to 5, one that overlaps it, one from week 6 on: only the last follows, at 7.00. */
    @Test
    @Of(Rule.FOLLOW_ON)
    void followingOnesOwnFamilyCostsItsPrice() {
        assertSoft(family(), Rule.FOLLOW_ON, 700, 0, 5, 6);
    }

    /**
     * Monday 15 March is the first day of week 2. Of two lots in force for weeks 4 and 6 one is put in week 5 instead and
     * one is left out: 3.00 two weeks ahead is 1 + 3 × 6/8 = 3.25 times as dear, 5.00 four weeks ahead 1 + 3 × 4/8.
     */
    @Test
    @Of(Rule.CHANGES)
    void changesOfThePlanInForceCostTheirPricesTheMoreTheNearerTheyAre() {
        HandSeason season = new HandSeason()
                .with(
                        "\"outlets\": []",
                        "\"outlets\": [], \"changes\": {\"week\": 3, \"leftOut\": 5},"
                                + " \"underWay\": {\"on\": \"2027-03-15\", \"nextNumber\": 3, \"inForce\": ["
                                + inForce(1, "2027-03-29") + ", " + inForce(2, "2027-04-12") + "]}");

        assertSoft(season, Rule.CHANGES, 975 + 1250, 5);
    }

    private static String inForce(int number, String sown) {
        return "{\"number\": " + number
                + ", \"crop\": \"zinnia\", \"method\": \"plain\", \"bed\": \"Bed\", \"sown\": \"" + sown
                + "\", \"pool\": 1, \"plants\": 10}";
    }

    private static HandSeason family() {
        return new HandSeason()
                .with("\"name\": \"zinnia\",", "\"name\": \"zinnia\", \"family\": \"daisies\",")
                .with(
                        "\"outlets\": []",
                        "\"outlets\": [], \"families\": [{\"name\": \"daisies\", \"restYears\": 2}],"
                                + " \"rotation\": {\"restBroken\": 5, \"followOn\": 7}");
    }
}
