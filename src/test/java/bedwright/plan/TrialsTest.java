package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.growth.Barring;
import bedwright.growth.Spot;
import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import bedwright.season.KeptPlanting;
import bedwright.season.Method;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.function.ToLongFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is told of a change is what making it comes to, counted by code that knows nothing of the planner's. */
class TrialsTest {
    private static final Map<String, PlanFacts> COMPILED = new HashMap<>();

    private static PlanFacts facts(String file) {
        return COMPILED.computeIfAbsent(file, name -> Seasons.facts(Seasons.over(3, Seasons.of(name))));
    }

    private static Plan.Score recounted(PlanFacts facts, List<KeptPlanting> plan) {
        Tally tally = Recheck.of(facts.season(), facts.seasons(), plan);
        assertThat(tally.faults()).isEmpty();
        return new Plan.Score(tally.hard(), tally.medium(), tally.soft());
    }

    /** Some lots that stand together, or are left out, drawn from a plan, and a place for them. */
    private record Drawn(Trials trials, int[] places, int[] lots, int to) {
        static Drawn from(PlanFacts facts, Random random) {
            int[] places = Seasons.randomPlan(facts, random, random.nextDouble() / 2);
            return from(facts, random, places, new Trials(facts, places));
        }

        static Drawn from(PlanFacts facts, Random random, int[] places, Trials trials) {
            int one = facts.free[random.nextInt(facts.free.length)];
            int stock = facts.stock(one);
            int[] lots = trials.lotsAt(stock, places[one], 1 + random.nextInt(4));
            int first = facts.table().firstPlace(stock);
            int count = facts.table().firstPlace(stock + 1) - first;
            int to = random.nextInt(5) == 0 ? SeasonScore.NOWHERE : first + random.nextInt(count);
            return new Drawn(trials, places, lots, to);
        }

        int[] changed() {
            int[] changed = places.clone();
            for (int p : lots) {
                changed[p] = to;
            }
            return changed;
        }
    }

    @ParameterizedTest
    @CsvSource({
        "tray-and-bed.json, 250, 5",
        "first-bed.json, 230, 6",
        "farmers-problem.json, 20, 7",
        "demo-farm.json, 6, 8"
    })
    void whatIsToldOfAChangeIsWhatMakingItComesTo(String file, int changes, long seed) {
        PlanFacts facts = facts(file);
        Random random = new Random(seed);
        int[] places = {};
        Trials trials = null;
        Plan.Score before = null;
        for (int i = 0; i < changes; i++) {
            if (trials == null || before == null || i % 10 == 0) {
                places = Seasons.randomPlan(facts, random, random.nextDouble() / 2);
                trials = new Trials(facts, places);
                before = recounted(facts, trials.outcome().plantings());
            }
            Drawn drawn = Drawn.from(facts, random, places, trials);

            Tried tried = drawn.trials.tried(drawn.lots, drawn.to);

            Plan.Score after =
                    recounted(facts, Outcomes.of(facts, drawn.changed()).plantings());
            Plan.Score gain = new Plan.Score(
                    after.hard() - before.hard(), after.medium() - before.medium(), after.soft() - before.soft());
            assertThat(tried.gain()).isEqualTo(gain);
            Search.Found asked = drawn.trials.gain(drawn.lots, drawn.to);
            assertThat(new Plan.Score(asked.hard(), asked.medium(), asked.soft()))
                    .isEqualTo(gain);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tray-and-bed.json", "first-bed.json", "farmers-problem.json"})
    void theRulesOfAChangeAddUpToItsScore(String file) {
        PlanFacts facts = facts(file);
        Random random = new Random(21);
        for (int i = 0; i < 60; i++) {
            Drawn drawn = Drawn.from(facts, random);

            Tried tried = drawn.trials.tried(drawn.lots, drawn.to);

            addsUp(tried.rules(), tried.gain(), seasonMoney(tried.after()) - seasonMoney(tried.before()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tray-and-bed.json", "first-bed.json", "farmers-problem.json", "demo-farm.json"})
    void theRulesOfAPlanAddUpToItsScore(String file) {
        PlanFacts facts = facts(file);
        Trials trials = new Trials(facts, Seasons.randomPlan(facts, new Random(3), 0.4));

        addsUp(trials.bill(), trials.outcome().score(), seasonMoney(trials.outcome()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tray-and-bed.json", "first-bed.json", "farmers-problem.json", "demo-farm.json"})
    void theRulesOfAPlanAreThoseThatTheRecheckCounts(String file) {
        PlanFacts facts = facts(file);
        Trials trials = new Trials(facts, Seasons.randomPlan(facts, new Random(3), 0.4));
        Bill bill = trials.bill();

        Tally tally =
                Recheck.of(facts.season(), facts.seasons(), trials.outcome().plantings());

        assertThat(bill.cost(Rule.BED_ROOM)).isEqualTo(100_000 * tally.over().bedRoom());
        assertThat(bill.cost(Rule.HOURS)).isEqualTo(tally.over().hours());
        assertThat(bill.cost(Rule.CUTTING_HOURS)).isEqualTo(tally.over().cuttingHours());
        assertThat(bill.cost(Rule.BENCH_ROOM)).isEqualTo(100_000 * tally.over().bench());
        assertThat(bill.cost(Rule.TAKINGS)).isEqualTo(-sum(tally, Tally.OneSeason::takings));
        assertThat(bill.cost(Rule.SHORTAGE)).isEqualTo(sum(tally, Tally.OneSeason::shortage));
        assertThat(bill.cost(Rule.BUY_IN)).isEqualTo(sum(tally, Tally.OneSeason::buyIn));
        assertThat(bill.cost(Rule.HOURS_PAID)).isEqualTo(sum(tally, Tally.OneSeason::hoursCost));
        assertThat(bill.cost(Rule.MATERIAL))
                .isEqualTo(facts.seasonCount * tally.constants().material());
        assertThat(bill.cost(Rule.EXTRA_STOCK))
                .isEqualTo(facts.seasonCount * tally.constants().extraStock());
        assertThat(bill.cost(Rule.REST_YEARS))
                .isEqualTo(facts.seasonCount * tally.constants().restBroken());
        assertThat(bill.cost(Rule.FOLLOW_ON))
                .isEqualTo(facts.seasonCount * tally.constants().followOn());
    }

    private static long sum(Tally tally, ToLongFunction<Tally.OneSeason> part) {
        return tally.seasons().stream().mapToLong(part).sum();
    }

    private static void addsUp(Bill bill, Plan.Score score, long money) {
        assertThat(bill.cost(Rule.Level.HARD)).isEqualTo(-score.hard());
        assertThat(bill.cost(Rule.Level.MEDIUM)).isEqualTo(-score.medium());
        assertThat(bill.cost(Rule.Level.SOFT)).isEqualTo(-money);
    }

    private static long seasonMoney(Outcome outcome) {
        return Arrays.stream(outcome.money().season()).sum();
    }

    @ParameterizedTest
    @ValueSource(strings = {"tray-and-bed.json", "first-bed.json"})
    void whatEachLineLosesAddsUpToTheRules(String file) {
        PlanFacts facts = facts(file);
        Random random = new Random(4);
        for (int i = 0; i < 20; i++) {
            Drawn drawn = Drawn.from(facts, random);
            Tried tried = drawn.trials.tried(drawn.lots, SeasonScore.NOWHERE);
            long takings = 0;
            long lacking = 0;
            for (DemandLine line : facts.demand()) {
                for (int w = 0; w < facts.weeks; w++) {
                    for (int k = 0; k < facts.seasonCount; k++) {
                        long with = tried.before().served()[line.index()][w][k];
                        long less = tried.after().served()[line.index()][w][k];
                        takings += line.takings(w, with) - line.takings(w, less);
                        lacking += line.lacking(w, less) - line.lacking(w, with);
                    }
                }
            }

            assertThat(takings).isEqualTo(tried.rules().cost(Rule.TAKINGS));
            assertThat(lacking)
                    .isEqualTo(tried.rules().cost(Rule.SHORTAGE) + tried.rules().cost(Rule.BUY_IN));
        }
    }

    /** The plantings of a drawn plan that may be put elsewhere. */
    @ParameterizedTest
    @ValueSource(strings = {"tray-and-bed.json", "first-bed.json"})
    void everyAlternativeOfAPlantingScoresAsThePlanWithItMade(String file) {
        PlanFacts facts = facts(file);
        int[] places = Seasons.randomPlan(facts, new Random(12), 0.3);
        Outcome plan = Outcomes.of(facts, places);
        for (KeptPlanting planting : plan.plantings()) {
            PlantingReasons reasons = PlantingReasons.of(facts.season(), facts.seasons(), plan.plantings(), planting);
            Spot spot = PlantingReasons.spot(facts.season(), planting);
            int place = facts.table().find(spot.stock(), spot.bed(), spot.sowWeek(), spot.method());
            assertThat(reasons.without().before().score()).isEqualTo(plan.score());
            for (Alternative alternative : reasons.alternatives()) {
                Tried tried = alternative.tried();
                if (tried == null) {
                    continue;
                }
                Spot to = alternative.spot();
                int put = to == null
                        ? SeasonScore.NOWHERE
                        : facts.table().find(to.stock(), to.bed(), to.sowWeek(), to.method());
                int[] changed =
                        Arrays.stream(places).map(at -> at == place ? put : at).toArray();
                assertThat(tried.after().score())
                        .as(planting + " " + alternative.sort())
                        .isEqualTo(Outcomes.of(facts, changed).score());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tray-and-bed.json", "first-bed.json", "from-the-book.json"})
    void aSpotIsBarredJustWhereTheSeasonDoesNotOfferIt(String file) {
        PlanFacts facts = facts(file);
        Season season = facts.season();
        Barring barring = Barring.of(season, facts.seasons());
        int barred = 0;
        for (int stock = 0; stock < facts.table().stocks(); stock++) {
            List<Method> methods = season.crops().get(facts.cropOf[stock]).methods();
            for (int method = 0; method < methods.size(); method++) {
                for (int week = 0; week < season.weeks(); week += 3) {
                    for (int bed = 0; bed < facts.bench; bed++) {
                        boolean offered = facts.table().find(stock, bed, week, method) >= 0;
                        Spot spot = new Spot(stock, bed, week, method);
                        assertThat(barring.why(spot).isEmpty())
                                .as(spot + " offered")
                                .isEqualTo(offered);
                        barred += offered ? 0 : 1;
                    }
                }
            }
        }
        assertThat(barred).isPositive();
    }

    @Test
    void aPlantingPressesOnABedThatHasNoRoomForOneMoreLikeIt() {
        PlanFacts facts =
                new HandSeason().with("\"length\": 100", "\"length\": 25").facts();
        Outcome plan = Outcomes.of(facts, HandSeason.sown(facts, 1, 1));

        PlantingReasons reasons = PlantingReasons.of(
                facts.season(),
                facts.seasons(),
                plan.plantings(),
                plan.plantings().getFirst());

        assertThat(reasons.presses()).containsExactly(new Pressed(Rule.BED_ROOM, "Bed", List.of(1, 2, 3, 4, 5, 6)));
    }

    @Test
    void aBedWithRoomForOneMorePressesOnNobody() {
        PlanFacts facts =
                new HandSeason().with("\"length\": 100", "\"length\": 30").facts();
        Outcome plan = Outcomes.of(facts, HandSeason.sown(facts, 1, 1));

        PlantingReasons reasons = PlantingReasons.of(
                facts.season(),
                facts.seasons(),
                plan.plantings(),
                plan.plantings().getFirst());

        assertThat(reasons.presses()).isEmpty();
    }

    @Test
    void whatStopsAChangeIsToldWithItsPlaceAndAmount() {
        PlanFacts facts =
                new HandSeason().with("\"length\": 100", "\"length\": 15").facts();
        Outcome plan = Outcomes.of(facts, HandSeason.sown(facts, 0, 0));
        assertThat(plan.broken()).isNotEmpty();
        Trials trials = new Trials(facts, HandSeason.sown(facts, 0));
        int place = facts.table().find(0, 0, 0, 0);

        Tried tried = trials.tried(new int[] {1}, place);

        assertThat(tried.isStopped()).isTrue();
        assertThat(tried.stops()).first().isEqualTo(new Outcome.Broken(Rule.BED_ROOM.sentence(), "Bed", 0, 5.0, "m"));
        assertThat(Objects.requireNonNull(tried.steps().getFirst().to()).sowWeek())
                .isZero();
    }
}
