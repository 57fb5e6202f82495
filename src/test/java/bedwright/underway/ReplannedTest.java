package bedwright.underway;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeasons;
import bedwright.file.PlanFile;
import bedwright.log.SeasonLog;
import bedwright.plan.InForce;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Replan;
import bedwright.plan.Search;
import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.UnderWay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans made anew in the middle of a season, from random plans, logs and days. */
class ReplannedTest {
    private static final long MOVES = 60;
    /** So many are made once for all tests. */
    private static final int KEPT = 20;

    private static final Map<String, Made> MADE = new HashMap<>();

    /** A new plan: what it was made from, and itself both as what is left of the season and over the whole of it. */
    private record Made(SeasonLog log, LocalDate on, Remaining remaining, PlanFacts facts, int[] places, Plan plan) {
        Outcome before() {
            return Outcomes.of(facts, InForce.places(facts));
        }

        Outcome after() {
            return Outcomes.of(facts, places);
        }
    }

    private static Made made(Plan plan, SeasonLog log, LocalDate on, long seed) {
        Remaining remaining = Remaining.of(plan, log, on);
        PlanFacts facts = InForce.facts(remaining.season(), PossibleSeasons.of(remaining.season()), true);
        int[] places = new Replan(facts, new Search.Limits(seed, null, MOVES)).run();
        Outcome outcome = Outcomes.of(facts, places);
        Plan left = new Plan(
                1,
                facts.season(),
                new Plan.Making(seed, null, MOVES, false, false),
                outcome.score(),
                outcome.plantings());
        return new Made(
                log,
                on,
                remaining,
                facts,
                places,
                Onward.of(plan, remaining, left, List.of(), new Onward.Known(log.lines(), "log", "plan")));
    }

    private static Made random(String file, long seed) {
        return seed > KEPT ? anew(file, seed) : MADE.computeIfAbsent(file + seed, name -> anew(file, seed));
    }

    private static Made anew(String file, long seed) {
        Plan plan = RandomStates.quickPlan(file);
        Random random = new Random(seed);
        LocalDate on = RandomStates.day(plan, random);
        return made(plan, RandomStates.log(plan, on, 12, random), on, seed);
    }

    private static UnderWay underWay(Season season) {
        return Objects.requireNonNull(season.underWay());
    }

    private static boolean isWorse(Plan.Score one, Plan.Score other) {
        return one.hard() != other.hard()
                ? one.hard() < other.hard()
                : one.medium() != other.medium() ? one.medium() < other.medium() : one.soft() < other.soft();
    }

    /** 200 states; and what other code counts agrees on each. */
    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json"})
    void itIsNeverWorseThanThePlanInForce(String file) {
        for (int seed = 1; seed <= 100; seed++) {
            Made made = random(file, seed);
            Outcome after = made.after();
            Tally tally = Recheck.of(made.facts().season(), made.facts().seasons(), after.plantings());

            assertThat(isWorse(after.score(), made.before().score()))
                    .as("seed " + seed)
                    .isFalse();
            assertThat(tally.faults()).as("seed " + seed).isEmpty();
            assertThat(new Plan.Score(tally.hard(), tally.medium(), tally.soft()))
                    .as("seed " + seed)
                    .isEqualTo(after.score());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json"})
    void whatEachChangeBuysAddsUpToWhatTheNewPlanBrings(String file) {
        for (int seed = 1; seed <= 10; seed++) {
            Made made = random(file, seed);
            Plan.Score before = made.before().score();
            Plan.Score after = made.after().score();
            long hard = 0;
            long medium = 0;
            long soft = 0;
            for (Replan.Bought bought : Replan.bought(made.facts(), made.places())) {
                Plan.Score gain = bought.made().gain();
                assertThat(gain.hard()).as("seed " + seed).isNotNegative();
                hard += gain.hard();
                medium += gain.medium();
                soft += gain.soft();
            }
            assertThat(new Plan.Score(before.hard() + hard, before.medium() + medium, before.soft() + soft))
                    .as("seed " + seed)
                    .isEqualTo(after);
        }
    }

    /** What was begun before the day stands where and since when it stood, whatever was noted and planned anew. */
    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json"})
    void whatWasDecidedBeforeKeepsItsPlaceAndDay(String file) {
        for (int seed = 1; seed <= KEPT; seed++) {
            Made made = random(file, seed);
            Map<Integer, KeptPlanting> whole = new HashMap<>();
            made.plan().plantingsThroughout().forEach(planting -> whole.put(planting.number(), planting));
            for (PlantingState state : made.remaining().states()) {
                Standing standing = state.standing();
                if (standing == null || standing.past() == null) {
                    continue;
                }
                KeptPlanting now = whole.get(state.number());
                if (now == null) {
                    throw new AssertionError("seed " + seed + ": planting " + state.number() + " is lost");
                }
                LocalDate sown = standing.past().sown();
                assertThat(now.sown()).isEqualTo(sown == null ? state.planned().sown() : sown);
                if (standing.bed() != null) {
                    assertThat(now.bed()).isEqualTo(standing.bed());
                }
                if (standing.past().out() != null) {
                    assertThat(now.out()).isEqualTo(standing.past().out());
                }
            }
        }
    }

    /** Once it is accepted, the season is on that day where the new plan had it, by the same notes. */
    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json"})
    void acceptedItIsThePlanThatWasShown(String file) {
        for (int seed = 1; seed <= KEPT; seed++) {
            Made made = random(file, seed);
            SeasonLog log = made.log();
            LocalDate on = made.on();
            Plan accepted = PlanFile.parse("plan.json", PlanFile.bytes(made.plan()));
            Remaining again = Remaining.of(accepted, log, on);
            PlanFacts facts = InForce.facts(again.season(), PossibleSeasons.of(again.season()), true);
            Outcome outcome = Outcomes.of(facts, InForce.places(facts));

            assertThat(accepted).isEqualTo(made.plan());
            assertThat(outcome.score().hard())
                    .as("seed " + seed)
                    .isEqualTo(made.after().score().hard());
            assertThat(outcome.score().medium())
                    .as("seed " + seed)
                    .isEqualTo(made.after().score().medium());
            assertThat(outcome.money().season())
                    .as("seed " + seed + " on " + on + " " + log.entries())
                    .isEqualTo(withoutChanges(made.after()));
        }
    }

    private static long[] withoutChanges(Outcome outcome) {
        long[] money = outcome.money().season().clone();
        for (int k = 0; k < money.length; k++) {
            money[k] += outcome.money().changes();
        }
        return money;
    }

    /** A plan changed again and again: no number is used twice, the notes before stay readable, and those after. */
    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json"})
    void changedSeveralTimesItKeepsItsNumbersAndItsLog(String file) {
        for (int seed = 1; seed <= 3; seed++) {
            Plan plan = RandomStates.quickPlan(file);
            Random random = new Random(seed);
            Map<Integer, String> cropOf = new HashMap<>();
            plan.plantings().forEach(planting -> cropOf.put(planting.number(), planting.crop()));
            StringBuilder text = new StringBuilder();
            Set<Integer> gone = new HashSet<>();
            for (int time = 1; time <= 3; time++) {
                LocalDate on = plan.season().starts().plusDays(plan.season().days() / 5L * time + random.nextInt(7));
                SeasonLog log = RandomStates.more(plan, SeasonLog.EMPTY.plus(plan, text.toString()), on, 6, random);
                text.setLength(0);
                log.entries().forEach(entry -> text.append(entry.line()).append('\n'));
                Made made = made(plan, log, on, seed);
                Plan before = plan;
                plan = made.plan();

                assertThat(SeasonLog.EMPTY.plus(plan, text.toString()).entries())
                        .isEqualTo(log.entries());
                Set<Integer> numbers = new HashSet<>();
                for (KeptPlanting planting : plan.plantingsThroughout()) {
                    int number = planting.number();
                    assertThat(numbers.add(number)).as("number " + number).isTrue();
                    assertThat(gone).doesNotContain(number);
                    assertThat(cropOf.computeIfAbsent(number, n -> planting.crop()))
                            .isEqualTo(planting.crop());
                }
                for (KeptPlanting planting : before.everyPlanting()) {
                    if (!numbers.contains(planting.number())) {
                        gone.add(planting.number());
                    }
                }
                assertThat(plan.nextNumber())
                        .isGreaterThan(
                                cropOf.keySet().stream().mapToInt(n -> n).max().orElse(0));
            }
        }
    }

    @Test
    void aKeptPlantingStaysAndARefusedOneIsNotPutIn() {
        int looked = 0;
        for (int seed = 1; seed <= KEPT; seed++) {
            Made made = random("tray-and-bed.json", seed);
            Set<Integer> kept = new HashSet<>();
            List<KeptPlanting> refused = new ArrayList<>();
            for (Replan.Bought bought : Replan.bought(made.facts(), made.places())) {
                for (Replan.Changed part : bought.parts()) {
                    KeptPlanting before = part.before();
                    if (before != null) {
                        kept.add(before.number());
                    } else if (part.after() != null) {
                        refused.add(part.after());
                    }
                }
            }
            if (kept.isEmpty() && refused.isEmpty()) {
                continue;
            }
            looked++;
            int[] places = new Replan(made.facts(), new Search.Limits(seed, null, MOVES), kept, refused).run();
            Map<Integer, KeptPlanting> now = new HashMap<>();
            List<KeptPlanting> after = Outcomes.of(made.facts(), places).plantings();
            after.forEach(planting -> now.put(planting.number(), planting));
            for (KeptPlanting planned : underWay(made.facts().season()).inForce()) {
                if (kept.contains(planned.number())) {
                    KeptPlanting stays = Objects.requireNonNull(now.get(planned.number()));
                    assertThat(stays.with(0, null)).isEqualTo(planned.with(0, null));
                }
            }
            for (KeptPlanting one : refused) {
                assertThat(after)
                        .noneMatch(planting -> planting.was() == null
                                && planting.crop().equals(one.crop())
                                && planting.bed().equals(one.bed()));
            }
        }
        assertThat(looked).isPositive();
    }
}
