package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.growth.Barred;
import bedwright.recheck.Recheck;
import bedwright.season.Held;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeldPlacesTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 3, 1);

    private static Held held(int lots, int week) {
        return new Held("zinnia", lots, "Bed", FIRST.plusWeeks(week), "plain", null);
    }

    private static PlanFacts facts(HandSeason season, Held... held) {
        return Seasons.facts(season.build().withHeld(List.of(held)));
    }

    private static int[] search(PlanFacts facts, long moves) {
        return new Search(facts, new Search.Limits(1, null, moves))
                .run(Search.nothingPlaced(facts))
                .places();
    }

    private static int lotsAt(PlanFacts facts, int[] places, Held held) {
        return Outcomes.of(facts, places).plantings().stream()
                .filter(planting -> held.isAt(planting, facts.season()))
                .mapToInt(KeptPlanting::lots)
                .sum();
    }

    /** Only stems of week 3 are paid for: sown in week 1 a lot brings nothing, in week 0 five stems. */
    @Test
    void theSearchLeavesLotsWhereTheyAreHeld() {
        PlanFacts facts = facts(new HandSeason().outlet(1, 45, ""), held(3, 1));

        int[] places = search(facts, 2000);

        assertThat(lotsAt(facts, places, held(3, 1))).isEqualTo(3);
        assertThat(lotsAt(facts, places, held(6, 0))).isEqualTo(6);
    }

    @Test
    void holdingCostsWhatTheSameLotsWouldBringElsewhere() {
        PlanFacts facts = facts(new HandSeason().outlet(1, 45, ""), held(2, 1));

        List<HeldPlaces.Cost> costs = HeldPlaces.costs(facts, search(facts, 2000));

        assertThat(costs).singleElement().satisfies(cost -> {
            // Two lots of five stems at 1 each.
            assertThat(Grains.toMoney(facts.season(), cost.grains())).isEqualTo(10);
            assertThat(cost.to())
                    .isNotNull()
                    .satisfies(to -> assertThat(to.sowWeek()).isZero());
        });
    }

    /** They stand where they are best: five stems each, and nothing else brings as much. */
    @Test
    void holdingThemWhereTheyAreBestCostsLessThanNothing() {
        PlanFacts facts = facts(new HandSeason().outlet(1, 45, ""), held(2, 0));

        assertThat(HeldPlaces.costs(facts, search(facts, 2000)))
                .singleElement()
                .satisfies(cost -> assertThat(Grains.toMoney(facts.season(), cost.grains()))
                        .isEqualTo(-10));
    }

    @Test
    void lotsHeldAtOnePlaceInSeveralEntriesAreToldTogether() {
        PlanFacts facts = facts(new HandSeason(), held(2, 1), held(1, 2), held(3, 1));

        assertThat(HeldPlaces.costs(facts, Search.nothingPlaced(facts)))
                .extracting(cost -> cost.held().lots())
                .containsExactly(5, 1);
    }

    /** The bed has 100 m and a lot takes ten for six weeks. */
    @Test
    void whatComesTogetherInABedIsTroubleWithWhatWouldMendIt() {
        PlanFacts facts =
                facts(new HandSeason().with("\"lots\": 9", "\"lots\": 12"), held(7, 0), held(2, 1), held(2, 3));
        PlanFacts more = facts(new HandSeason().with("\"lots\": 9", "\"lots\": 12"), held(8, 0), held(3, 2));

        assertThat(HeldPlaces.troubles(more)).singleElement().satisfies(trouble -> {
            assertThat(trouble.held()).isEqualTo(held(3, 2));
            assertThat(trouble.barred()).isNull();
            assertThat(trouble.broken()).extracting(Outcome.Broken::week).containsExactly(2, 3, 4, 5);
            assertThat(trouble.broken()).extracting(Outcome.Broken::by).containsOnly(10.0);
            assertThat(trouble.fits()).isEqualTo(2);
            assertThat(trouble.earlier()).isNull();
            assertThat(trouble.later()).isEqualTo(6);
            assertThat(trouble.beds()).isEmpty();
        });
        assertThat(HeldPlaces.troubles(facts))
                .singleElement()
                .satisfies(trouble -> assertThat(trouble.held()).isEqualTo(held(2, 3)));
    }

    @Test
    void anotherBedWithRoomIsNamed() {
        PlanFacts facts = Seasons.facts(new HandSeason()
                .with("\"length\": 100}", "\"length\": 20}, {\"name\": \"Other\", \"length\": 30}")
                .build()
                .withHeld(List.of(held(1, 0), held(2, 1))));

        assertThat(HeldPlaces.troubles(facts))
                .singleElement()
                .satisfies(trouble -> assertThat(trouble.beds()).containsExactly(1));
    }

    @Test
    void whatTheSeasonDoesNotOfferIsTroubleWithTheNearestWeekThatItOffers() {
        PlanFacts facts = facts(new HandSeason(), held(1, 9));

        assertThat(HeldPlaces.troubles(facts)).singleElement().satisfies(trouble -> {
            assertThat(trouble.barred()).isEqualTo(Barred.GIVES_NOTHING);
            assertThat(trouble.earlier()).isEqualTo(6);
            assertThat(trouble.later()).isNull();
        });
    }

    @Test
    void aPlanWithoutThemIsRefusedByTheRecheck() {
        PlanFacts facts = facts(new HandSeason(), held(3, 1));
        List<KeptPlanting> plan =
                Outcomes.of(facts, Search.nothingPlaced(facts)).plantings();
        KeptPlanting whole = plan.getFirst();
        KeptPlanting fewer = new KeptPlanting(1, "zinnia", "plain", "Bed", whole.sown(), 1, null, 2, 20);

        assertThat(Recheck.of(facts.season(), facts.seasons(), plan).faults()).isEmpty();
        assertThat(Recheck.of(facts.season(), facts.seasons(), List.of(fewer)).faults())
                .singleElement()
                .asString()
                .contains("3 lots are held in Bed from 2027-03-08", "the plan has 2 there");
    }

    @Test
    void aPlanToBeginWithMakesRoomForWhatIsHeld() {
        PlanFacts free = facts(new HandSeason());
        List<KeptPlanting> plan = Outcomes.of(free, HandSeason.sown(free, 0, 0, 0, 0, 0, 0, 0, 0, 0))
                .plantings();
        PlanFacts facts = facts(new HandSeason(), held(4, 3));

        int[] places = Draft.beside(facts, plan).places();

        assertThat(lotsAt(facts, places, held(4, 3))).isEqualTo(4);
        assertThat(lotsAt(facts, places, held(5, 0))).isEqualTo(5);
        assertThat(Outcomes.of(facts, places).score().hard()).isZero();
    }

    /** Any plantings of a plan, held: the next plan has them there, and counted again it comes to the same. */
    @ParameterizedTest
    @CsvSource({"first-bed.json, 10", "tray-and-bed.json, 5"})
    void whateverIsHeldStaysAndIsCountedTheSame(String file, int drawn) {
        Season season = Seasons.of(file);
        PlanFacts free = Seasons.facts(season);
        List<KeptPlanting> plan = Outcomes.of(free, search(free, 1000)).plantings();
        for (int seed = 0; seed < drawn; seed++) {
            Random random = new Random(seed);
            List<Held> held = new ArrayList<>();
            for (KeptPlanting one : plan) {
                Integer pool = one.pool();
                if (pool != null && random.nextInt(3) == 0) {
                    held.add(new Held(
                            one.crop(),
                            1 + random.nextInt(one.lots()),
                            one.bed(),
                            one.sown(),
                            one.method(),
                            random.nextBoolean() ? pool : null));
                }
            }
            PlanFacts facts = PlanFacts.of(season.withHeld(held), free.seasons(), free.table());
            assertThat(HeldPlaces.troubles(facts)).isEmpty();

            int[] places = search(facts, 100);

            held.forEach(one -> assertThat(lotsAt(facts, places, one)).isGreaterThanOrEqualTo(one.lots()));
            Outcome outcome = Outcomes.of(facts, places);
            var tally = Recheck.of(facts.season(), facts.seasons(), outcome.plantings());
            assertThat(tally.faults()).isEmpty();
            assertThat(tally.soft()).isEqualTo(outcome.score().soft());
            for (HeldPlaces.Cost cost : HeldPlaces.costs(facts, places)) {
                int[] released = places.clone();
                int to = cost.to() == null
                        ? SeasonScore.NOWHERE
                        : facts.table()
                                .find(
                                        cost.to().stock(),
                                        cost.to().bed(),
                                        cost.to().sowWeek(),
                                        cost.to().method());
                for (int p = 0; p < released.length; p++) {
                    if (facts.isHeld(p) && facts.fixedPlace[p] == facts.placeOf(cost.held())) {
                        released[p] = to;
                    }
                }
                long difference = Outcomes.of(free, released).score().soft()
                        - outcome.score().soft();
                assertThat(cost.grains() * facts.seasonCount).isEqualTo((double) difference);
            }
        }
    }
}
