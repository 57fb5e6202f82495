package bedwright.underway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.log.Entry;
import bedwright.log.SeasonLog;
import bedwright.plan.InForce;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Search;
import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import bedwright.season.Held;
import bedwright.season.KeptPlanting;
import bedwright.season.Past;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.UnderWay;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is left of a season under way. */
class RemainingTest {

    private static PlanFacts facts(Season season) {
        return PlanFacts.of(season, PossibleSeasons.of(season));
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json"})
    void whatIsStillToComeIsAsPlannedWhereNothingWasNoted(String file) {
        Plan plan = RandomStates.plan(file);
        Outcome planned = Outcomes.of(facts(plan.season()), Outcomes.places(facts(plan.season()), plan.plantings()));
        for (int week = 0; week < plan.season().weeks(); week += 3) {
            Remaining remaining =
                    Remaining.of(plan, SeasonLog.EMPTY, plan.season().weekStart(week));
            PlanFacts facts = facts(remaining.season());
            Outcome now = Outcomes.of(
                    facts, Outcomes.places(facts, underWay(remaining.season()).inForce()));

            for (int w = week; w < plan.season().weeks(); w++) {
                for (int node = 0; node < planned.stems().length; node++) {
                    for (int k = 0; k < now.seasons(); k++) {
                        // Lots that stand together are rounded to 1/100 stem once instead of one by one.
                        assertThat(now.stems()[node][w][k])
                                .as("week " + w)
                                .isCloseTo(planned.stems()[node][w][k], within(20));
                    }
                }
            }
        }
    }

    private static int[] anyPlaces(PlanFacts facts, Random random) {
        int[] places = Search.nothingPlaced(facts);
        for (int p = 0; p < places.length; p++) {
            int stock = facts.stock(p);
            int first = facts.table().firstPlace(stock);
            int count = facts.table().firstPlace(stock + 1) - first;
            if (count > 0 && random.nextInt(3) > 0) {
                places[p] = first + random.nextInt(count);
            }
        }
        return places;
    }

    /** Whatever is decided from now on, what was done of the plantings stays as it was done. */
    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json"})
    void whatWasDoneBeforeTheDateKeepsItsPlaceAndDay(String file) {
        Plan plan = RandomStates.plan(file);
        for (int seed = 1; seed <= 8; seed++) {
            Random random = new Random(seed);
            LocalDate on = RandomStates.day(plan, random);
            Remaining remaining = Remaining.of(plan, RandomStates.log(plan, on, 12, random), on);
            Season season = remaining.season();
            PlanFacts facts = facts(season);
            List<KeptPlanting> any =
                    Outcomes.of(facts, anyPlaces(facts, random)).plantings();
            for (KeptPlanting before : underWay(season).inForce()) {
                Integer entry = before.standing();
                Past past =
                        entry == null ? null : season.standing().get(entry - 1).past();
                if (entry == null || past == null) {
                    continue;
                }
                for (KeptPlanting now : any) {
                    if (entry.equals(now.standing())) {
                        boolean isInTray = season.standing().get(entry - 1).isInTray();
                        assertThat(now.number()).isEqualTo(before.number());
                        assertThat(now.sown()).isEqualTo(before.sown());
                        assertThat(isInTray || now.bed().equals(before.bed())).isTrue();
                        assertThat(isInTray || Objects.equals(now.out(), before.out()))
                                .isTrue();
                    }
                }
            }
            for (KeptPlanting now : any) {
                assertThat(now.standing() == null && now.sown().isBefore(on)).isFalse();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json"})
    void aLogReadInTwoHalvesSaysTheSame(String file) {
        Plan plan = RandomStates.plan(file);
        for (int seed = 1; seed <= 10; seed++) {
            Random random = new Random(seed);
            LocalDate on = RandomStates.day(plan, random);
            SeasonLog whole = RandomStates.log(plan, on, 12, random);
            List<String> lines = whole.entries().stream().map(Entry::line).toList();
            int half = random.nextInt(lines.size() + 1);
            SeasonLog halves = SeasonLog.EMPTY
                    .plus(plan, text(lines.subList(0, half)))
                    .plus(plan, text(lines.subList(half, lines.size())));

            assertThat(Remaining.of(plan, halves, on).season())
                    .isEqualTo(Remaining.of(plan, whole, on).season());
        }
    }

    private static String text(List<String> lines) {
        return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    /** Plans at random places after random logs, by the planner's ledgers and by the recheck. */
    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json"})
    void theSameIsCountedByOtherCode(String file) {
        for (int seed = 1; seed <= 8; seed++) {
            Random random = new Random(seed);
            Plan plan = seed % 2 == 0 ? RandomStates.plan(file) : held(RandomStates.plan(file));
            LocalDate on = RandomStates.day(plan, random);
            SeasonLog log = RandomStates.log(plan, on, 12, random);
            Season season = Remaining.of(plan, log, on).season();
            List<PossibleSeason> possible = PossibleSeasons.of(season);
            PlanFacts facts = facts(season);
            Outcome outcome = Outcomes.of(facts, anyPlaces(facts, random));
            Tally tally = Recheck.of(season, possible, outcome.plantings());

            assertThat(tally.faults()).as("seed " + seed + " on " + on).isEmpty();
            assertThat(tally.constants().changes())
                    .as("changes, seed " + seed)
                    .isEqualTo(outcome.money().changes());
            assertThat(tally.constants().followOn()
                            + tally.constants().extraStock()
                            + tally.constants().material())
                    .as("constants, seed " + seed)
                    .isEqualTo(outcome.money().followOn()
                            + outcome.money().extraStock()
                            + outcome.money().material());
            assertThat(new Plan.Score(tally.hard(), tally.medium(), tally.soft()))
                    .as("seed " + seed + " on " + on + log.entries())
                    .isEqualTo(outcome.score());
        }
    }

    /** A plan of which all that comes from the pool is held in place. */
    private static Plan held(Plan plan) {
        List<Held> held = plan.plantings().stream()
                .filter(kept -> kept.standing() == null)
                .map(kept -> new Held(kept.crop(), kept.lots(), kept.bed(), kept.sown(), kept.method(), kept.pool()))
                .toList();
        return new Plan(1, plan.season().withHeld(held), plan.making(), plan.score(), plan.plantings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json"})
    void whatIsHeldAndStillToComeIsHeldInWhatIsLeft(String file) {
        Plan plan = held(RandomStates.plan(file));
        for (int week = 0; week < plan.season().weeks(); week += 4) {
            LocalDate on = plan.season().weekStart(week);

            Season season = Remaining.of(plan, SeasonLog.EMPTY, on).season();

            assertThat(season.held())
                    .containsExactlyElementsOf(plan.season().held().stream()
                            .filter(one -> !one.sown().isBefore(on))
                            .toList());
        }
    }

    private static UnderWay underWay(Season season) {
        return Objects.requireNonNull(season.underWay());
    }

    /** What is quicker is the same season; and what has to be pulled in time does not hang on the possible seasons. */
    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json"})
    void whatIsLeftIsTheSameWithoutAskingWhatEachPlantingHasBecome(String file) {
        for (int seed = 1; seed <= 30; seed++) {
            Plan plan = RandomStates.quickPlan(file);
            Random random = new Random(seed);
            LocalDate on = RandomStates.day(plan, random);
            SeasonLog log = RandomStates.log(plan, on, 12, random);
            Season brief = Remaining.brief(plan, log, on).season();

            assertThat(brief)
                    .as("seed " + seed)
                    .isEqualTo(Remaining.holding(plan, log, on).season());
            assertThat(InForce.facts(brief, List.of(PossibleSeasons.usualWith(brief, List.of())), false)
                            .season())
                    .as("seed " + seed)
                    .isEqualTo(InForce.facts(brief, PossibleSeasons.of(brief), false)
                            .season());
        }
    }

    /** A tray that was noted to wait longer than it can is planted out in the nearest week there is, and keeps its number. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aTrayThatWaitsTooLongStaysInThePlanInForce(boolean all) {
        Plan plan = RandomStates.quickPlan("tray-and-bed.json");
        int looked = 0;
        for (KeptPlanting planting : plan.plantings()) {
            LocalDate on = planting.sown().plusDays(10);
            Season before = Remaining.of(plan, SeasonLog.EMPTY, on).season();
            LocalDate out = underWay(before).inForce().stream()
                    .filter(kept -> kept.number() == planting.number() && kept.standing() != null)
                    .map(KeptPlanting::out)
                    .filter(Objects::nonNull)
                    .findFirst()
                    .orElse(null);
            if (out == null || !out.isAfter(on)) {
                continue;
            }
            SeasonLog log =
                    SeasonLog.EMPTY.plus(plan, on + " " + planting.number() + " moved " + out.plusWeeks(9) + "\n");
            Season late = Remaining.of(plan, log, on).season();

            Season possible = InForce.facts(late, PossibleSeasons.of(late), all).season();

            assertThat(underWay(possible).inForce())
                    .filteredOn(kept -> kept.number() == planting.number())
                    .singleElement()
                    .satisfies(kept -> assertThat(kept.out()).isBefore(out.plusWeeks(9)));
            looked++;
        }
        assertThat(looked).isPositive();
    }
}
