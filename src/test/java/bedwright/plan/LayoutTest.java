package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a layout says fits is what the score says fits. */
class LayoutTest {
    private final PlanFacts facts = Seasons.facts(Seasons.of(Seasons.FIRST_BED));

    private SeasonPlan plan(int[] places) {
        return new SeasonPlan(facts, places, new Probe());
    }

    /** Cost of the rules that a layout looks at. */
    private long overfull(int[] places) {
        SeasonScore score = Seasons.scoreOf(facts, places);
        return score.cost(Rule.BED_ROOM) + score.cost(Rule.BENCH_ROOM) + score.cost(Rule.STOCK_ROOM);
    }

    /** From a plan in which everything fits, a trial fits if and only if the score finds nothing overfull after it. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void aTrialFitsWhereTheScoreFindsRoom(int seed) {
        Random random = new Random(seed);
        int[] places = Opening.fill(facts, Search.nothingPlaced(facts), () -> false);
        SeasonPlan plan = plan(places);
        Layout layout = new Layout(facts);
        layout.follow(plan.getPlantings());
        List<Boolean> said = new ArrayList<>();
        List<Boolean> found = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            int planting = layout.free(random.nextInt(layout.free()));
            int first = facts.table.firstPlace(facts.stockOf[planting]);
            int to = first + random.nextInt(facts.table.firstPlace(facts.stockOf[planting] + 1) - first);
            int[] moved = places.clone();
            moved[planting] = to;
            layout.begin();
            layout.move(planting, to);
            said.add(layout.fits());
            found.add(overfull(moved) == 0);
        }

        assertThat(found).contains(true, false);
        assertThat(said).isEqualTo(found);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void aLayoutThatFollowedManyPlansIsLikeAFreshOne(int seed) {
        Random random = new Random(seed);
        Layout old = new Layout(facts);
        SeasonPlan plan = plan(Search.nothingPlaced(facts));
        for (int i = 0; i < 10; i++) {
            plan = plan(Seasons.randomPlan(facts, random, random.nextDouble()));
            old.follow(plan.getPlantings());
        }
        Layout fresh = new Layout(facts);
        fresh.follow(plan.getPlantings());

        assertThat(old.placed()).isEqualTo(fresh.placed());
        assertThat(numbers(old)).containsExactlyInAnyOrderElementsOf(numbers(fresh));
    }

    /** Where only what was noted as moved is looked at, all is known as where everything is. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void followingWhatWasNotedIsLikeFollowingAll(int seed) {
        Random random = new Random(seed);
        SeasonPlan plan = plan(Seasons.randomPlan(facts, random, 0.5));
        Probe probe = new Probe();
        probe.noteMoved(facts.plantings());
        Layout noted = new Layout(facts);
        noted.follow(plan.getPlantings(), probe);
        int[] other = Seasons.randomPlan(facts, random, 0.5);
        for (int p = 0; p < other.length; p += 2) {
            plan.getPlantings().get(p).put(other[p]);
            probe.moved(p);
        }
        noted.follow(plan.getPlantings(), probe);
        Layout fresh = new Layout(facts);
        fresh.follow(plan.getPlantings());

        assertThat(numbers(noted)).containsExactlyInAnyOrderElementsOf(numbers(fresh));
        for (int bed = 0; bed < facts.bench; bed++) {
            assertThat(inBed(noted, bed)).containsExactlyInAnyOrderElementsOf(inBed(fresh, bed));
        }
    }

    /** One planting moved alone is looked at without summing anything up, with the same answer. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void onePlantingMovesWhereATrialFits(int seed) {
        Random random = new Random(seed);
        int[] places = Opening.fill(facts, Search.nothingPlaced(facts), () -> false);
        Layout layout = new Layout(facts);
        layout.follow(plan(places).getPlantings());
        List<Boolean> alone = new ArrayList<>();
        List<Boolean> summedUp = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            int planting = layout.free(random.nextInt(layout.free()));
            int first = facts.table.firstPlace(facts.stockOf[planting]);
            int to = first + random.nextInt(facts.table.firstPlace(facts.stockOf[planting] + 1) - first);
            layout.begin();
            alone.add(layout.moveIfFits(planting, to));
            layout.begin();
            layout.move(planting, to);
            summedUp.add(layout.fits());
        }

        assertThat(alone).contains(true, false).isEqualTo(summedUp);
    }

    private static List<Integer> inBed(Layout layout, int bed) {
        return IntStream.range(0, layout.inBed(bed))
                .mapToObj(i -> layout.inBed(bed, i))
                .toList();
    }

    private static List<Integer> numbers(Layout layout) {
        return IntStream.range(0, layout.placed()).mapToObj(i -> layout.free(i)).toList();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void whatIsTakenBackLeavesRoomAsItWas(int seed) {
        Random random = new Random(seed);
        int[] places = Opening.fill(facts, Search.nothingPlaced(facts), () -> false);
        Layout layout = new Layout(facts);
        layout.follow(plan(places).getPlantings());
        for (int i = 0; i < 50; i++) {
            int planting = layout.free(random.nextInt(layout.free()));
            int first = facts.table.firstPlace(facts.stockOf[planting]);
            layout.move(planting, first + random.nextInt(facts.table.firstPlace(facts.stockOf[planting] + 1) - first));
            layout.takeBack();
        }

        assertThat(layout.fits()).isTrue();
        assertThat(layout.moved()).isZero();
    }
}
