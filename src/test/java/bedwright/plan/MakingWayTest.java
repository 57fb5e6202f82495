package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.growth.ProspectTable;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Plantings put into the full beds of the demo farm. */
class MakingWayTest {
    private static final int DRAWS = 4000;
    private static final PlanFacts FACTS = Seasons.facts(Seasons.of(Seasons.DEMO_FARM));
    private static final ProspectTable TABLE = FACTS.table();
    private static final int[] OPENED = Opening.fill(FACTS, Search.nothingPlaced(FACTS), () -> false);

    private final Probe probe = new Probe();
    private final SeasonPlan plan = new SeasonPlan(FACTS, OPENED, probe);
    private final Layout layout = new Layout(FACTS);

    private interface Seen {
        /** Called with a trial that was found, and where its first planting was to go. */
        void trial(int planting, int to);
    }

    /** Tries to put plantings anywhere; how many trials of two plantings were found. */
    private int put(@Nullable Metropolis metropolis, Seen seen) {
        layout.follow(plan.getPlantings(), probe);
        SplittableRandom random = new SplittableRandom(3);
        MakingWay makingWay = new MakingWay(layout, metropolis, random);
        int two = 0;
        for (int i = 0; i < DRAWS; i++) {
            layout.begin();
            if (metropolis != null) {
                metropolis.begin();
            }
            int planting = layout.free(random.nextInt(layout.free()));
            int stock = FACTS.stock(planting);
            int to = random.nextInt(TABLE.firstPlace(stock), TABLE.firstPlace(stock + 1));
            if (makingWay.put(planting, to)) {
                two += layout.moved() == 2 ? 1 : 0;
                seen.trial(planting, to);
            }
        }
        return two;
    }

    @Test
    void whatIsPutFitsAndIsWhereItWasToGo() {
        int two = put(null, (planting, to) -> {
            assertThat(layout.fits()).isTrue();
            assertThat(layout.movedPlanting(0)).isEqualTo(planting);
            assertThat(layout.movedTo(0)).isEqualTo(to);
        });

        assertThat(two).isGreaterThan(DRAWS / 50);
    }

    @Test
    void whatGivesWayChangesItsBedAlone() {
        int two = put(null, (planting, to) -> {
            if (layout.moved() == 2) {
                int from = layout.movedFrom(1);
                int there = layout.movedTo(1);
                assertThat(TABLE.bed(from)).isEqualTo(TABLE.bed(to));
                assertThat(TABLE.bed(there)).isNotEqualTo(TABLE.bed(from));
                assertThat(TABLE.sowWeek(there)).isEqualTo(TABLE.sowWeek(from));
                assertThat(TABLE.way(there)).isEqualTo(TABLE.way(from));
            }
        });

        assertThat(two).isPositive();
    }

    @Test
    void nothingGivesWayWhereThereIsRoom() {
        int two = put(null, (planting, to) -> {
            if (layout.moved() == 2) {
                layout.takeBack();
                assertThat(layout.fits()).isFalse();
            }
        });

        assertThat(two).isPositive();
    }

    @Test
    void whenItIsColdNothingIsPutThatAGlanceSeesLosing() {
        probe.cool(new Cooling(1, 1_000_000, Long.MAX_VALUE));
        SolverScore live = new SolverScore();
        live.resetWorkingSolution(plan);
        layout.follow(plan.getPlantings(), probe);
        Glance glance = new Glance(layout);
        int[] found = new int[1];
        put(new Metropolis(layout, glance, probe, live), (planting, to) -> {
            assertThat(glance.canJudge(live.score())).isTrue();
            assertThat(glance.atMost()).isGreaterThan(-Grains.ofThing(FACTS.season, 0.01));
            found[0]++;
        });

        assertThat(found[0]).isBetween(1, DRAWS / 4);
    }
}
