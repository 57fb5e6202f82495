package bedwright.underway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.PossibleSeasons;
import bedwright.climate.SiteClimate;
import bedwright.log.SeasonLog;
import bedwright.plan.InForce;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import bedwright.season.BedBlock;
import bedwright.season.KeptPlanting;
import bedwright.season.Labour;
import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.UnderWay;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What notes of orders, beds, hands, stock and weather change of the season that is left. */
class CircumstancesTest {
    private static final Plan PLAN = RandomStates.plan("first-bed.json");
    private static final LocalDate ON = LocalDate.of(2027, 6, 9);

    private static SeasonLog log(String... notes) {
        return SeasonLog.EMPTY.plus(PLAN, String.join("\n", notes) + "\n");
    }

    private static Season left(String... notes) {
        return Remaining.of(PLAN, log(notes), ON).season();
    }

    private static List<Outlet> outlets(Season season, String name) {
        return season.outlets().stream()
                .filter(outlet -> outlet.name().equals(name))
                .toList();
    }

    @Test
    void aNewOrderIsPromised() {
        Outlet outlet = outlets(left("12-May order-new Inn for 5 Jul: 9 focal at 0.80"), "Inn")
                .getFirst();

        assertThat(outlet.kind()).isEqualTo("focal");
        assertThat(outlet.price()).isEqualTo(0.8);
        assertThat(outlet.promise()).isNotNull();
        assertThat(outlet.asks())
                .containsExactly(new Outlet.Ask(LocalDate.of(2027, 7, 5), LocalDate.of(2027, 7, 5), 9));
    }

    @Test
    void aNoteOfALaterDayDoesNotCountYet() {
        assertThat(outlets(left("10-Jun order-new Inn for 5 Jul: 9 focal"), "Inn"))
                .isEmpty();
    }

    @Test
    void aChangedOrderAsksOtherwiseInTheseWeeksAtItsPrice() {
        List<Outlet> stall = outlets(left("1-Jun order-changed Stall, filler for 28 Jun: 20 filler"), "Stall, filler");

        assertThat(stall).extracting(Outlet::price).containsOnly(0.4);
        assertThat(stall.stream().flatMap(outlet -> outlet.asks().stream()))
                .containsExactlyInAnyOrder(
                        new Outlet.Ask(LocalDate.of(2027, 6, 14), LocalDate.of(2027, 6, 21), 60),
                        new Outlet.Ask(LocalDate.of(2027, 7, 5), LocalDate.of(2027, 7, 12), 60),
                        new Outlet.Ask(LocalDate.of(2027, 6, 28), LocalDate.of(2027, 6, 28), 20));
    }

    @Test
    void bouquetsChangeInTheirNumberAndKeepTheirPromise() {
        List<Order> orders =
                left("1-Jun order-changed Porch bouquets for 5 Jul: 4 bouquets").orders();

        assertThat(orders.getLast().asks())
                .containsExactly(new Order.Ask(LocalDate.of(2027, 7, 5), LocalDate.of(2027, 7, 5), 4));
        assertThat(orders.getLast().promise())
                .isEqualTo(PLAN.season().orders().getFirst().promise());
    }

    @Test
    void anOrderThatIsGoneAsksForNothing() {
        assertThat(outlets(left("1-Jun order-gone Stall, focal"), "Stall, focal"))
                .isEmpty();
    }

    @Test
    void whatIsAskedForIsHeldUntilItLapsesAndPromisedToNobody() {
        SeasonLog log = log("1-Jun order-asked Inn until 9-Jun for 5 Jul: 9 focal");

        assertThat(outlets(Remaining.of(PLAN, log, ON).season(), "Inn")).isEmpty();
        assertThat(Remaining.of(PLAN, log, ON).undecided()).hasSize(1);
        assertThat(outlets(Remaining.holding(PLAN, log, ON).season(), "Inn")).hasSize(1);
        assertThat(outlets(Remaining.holding(PLAN, log, ON.plusDays(1)).season(), "Inn"))
                .isEmpty();
    }

    @Test
    void aBedThatIsGoneIsTakenThen() {
        BedBlock fence =
                left("1-Jun bed-gone Fence bed for 14-Jun to 20-Jun").beds().getFirst();

        assertThat(fence.taken())
                .containsExactly(new BedBlock.Taken(LocalDate.of(2027, 6, 14), LocalDate.of(2027, 6, 20), 1));
    }

    @Test
    void aHelperWhoIsGoneForHalfAWeekTakesThatPartOfTheHours() {
        double own = Labour.at(PLAN.season().labour().own(), LocalDate.of(2027, 6, 21));
        List<Labour.Hours> hours = left("1-Jun helper-gone 3.5 hours for 14-Jun to 22-Jun")
                .labour()
                .own();

        assertThat(Labour.at(hours, LocalDate.of(2027, 6, 14))).isCloseTo(own - 3.5, within(1e-9));
        assertThat(Labour.at(hours, LocalDate.of(2027, 6, 21))).isCloseTo(own - 1, within(1e-9));
        assertThat(Labour.at(hours, LocalDate.of(2027, 6, 28))).isCloseTo(own, within(1e-9));
    }

    @Test
    void weatherThatWasSeenIsThatOfAllPossibleSeasons() {
        Season season = left("1-Jun weather min 10 max 30 gust 25 west");
        int day = season.dayOf(LocalDate.of(2027, 6, 1));
        SiteClimate climate = SiteClimate.of(season);

        PossibleSeasons.of(season).forEach(possible -> {
            assertThat(possible.deviation()[day])
                    .isCloseTo(20 - (climate.normalMin(day) + climate.normalMax(day)) / 2, within(1e-9));
            assertThat(possible.gusts().stream().filter(gust -> gust.day() == day))
                    .singleElement()
                    .satisfies(gust -> assertThat(gust.speed()).isEqualTo(25));
        });
    }

    private static Outcome outcome(Season season) {
        PlanFacts facts = InForce.facts(season, PossibleSeasons.of(season), false);
        return Outcomes.of(facts, InForce.places(facts));
    }

    @Test
    void stockThatIsGoneIsMissedWhereItWasInUse() {
        Outcome planned = outcome(left());
        int net = planned.stocks().stream().map(Outcome.StockUse::name).toList().indexOf("Net");
        boolean isUsed =
                java.util.Arrays.stream(planned.stocks().get(net).use()).anyMatch(use -> use > 0);
        Outcome without = outcome(left("1-Jun stock-gone 6 of Net for 1-Jun to 12-Jul"));

        assertThat(isUsed).isTrue();
        assertThat(without.score().hard()).isNegative();
        assertThat(without.stocks().get(net).use())
                .isEqualTo(planned.stocks().get(net).use());
    }

    /** The recheck counts beds, hands, stock and weather that were noted by code of its own. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1-Jun stock-gone 6 of Net for 1-Jun to 12-Jul",
                "1-Jun stock-gone 90 of bench for 9-Jun to 12-Jul",
                "1-Jun bed-gone Fence bed for 14-Jun to 30-Jun",
                "1-Jun helper-gone 4 hours for 9-Jun to 12-Jul",
                "1-Jun weather min 12 max 31 gust 27 west",
                "1-Jun order-new Inn for 14 Jun to 12 Jul: 30 focal at 0.90, 9 filler"
            })
    void theSameIsCountedByOtherCode(String note) {
        Season season = left(note);
        PlanFacts facts = InForce.facts(season, PossibleSeasons.of(season), false);
        Outcome outcome = Outcomes.of(facts, InForce.places(facts));
        Tally tally = Recheck.of(facts.season(), facts.seasons(), outcome.plantings());

        assertThat(tally.faults()).isEmpty();
        assertThat(new Plan.Score(tally.hard(), tally.medium(), tally.soft())).isEqualTo(outcome.score());
    }

    @Test
    void whatWasReallyDoneHasItsBedAndItsPlants() {
        KeptPlanting first = PLAN.plantings().stream()
                .filter(planting -> planting.sown().isBefore(ON) && planting.pool() != null)
                .findFirst()
                .orElseThrow();
        String other = first.bed().equals("Open bed") ? "Fence bed" : "Open bed";
        Season season = left(
                first.sown() + " " + first.number() + " in-bed " + other,
                first.sown() + " " + first.number() + " plants " + (first.plants() - 1));
        UnderWay underWay = Objects.requireNonNull(season.underWay());

        assertThat(underWay.inForce().stream().filter(kept -> kept.number() == first.number()))
                .singleElement()
                .satisfies(kept -> {
                    assertThat(kept.bed()).isEqualTo(other);
                    assertThat(kept.plants()).isEqualTo(first.plants() - 1);
                });
    }

    @Test
    void howMuchCameUpIsACountOnTheDayItWasUp() {
        KeptPlanting sown = PLAN.plantings().stream()
                .filter(planting -> planting.sown().isBefore(ON.minusDays(9))
                        && planting.method().startsWith("sown"))
                .findFirst()
                .orElseThrow();
        Remaining remaining = Remaining.of(PLAN, log(sown.sown().plusDays(8) + " " + sown.number() + " up 60%"), ON);

        assertThat(remaining.states().stream().filter(state -> state.number() == sown.number()))
                .singleElement()
                .satisfies(state -> {
                    assertThat(state.isCounted()).isTrue();
                    assertThat(state.left()).isEqualTo(0.6);
                });
    }
}
