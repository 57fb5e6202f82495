package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which moves are accepted beside a plan that stays as it is. */
class MetropolisTest {
    private static final int DRAWS = 4000;
    private static final long MOVES = 1_000_000_000;

    private static final PlanFacts FACTS = Seasons.facts(Seasons.of(Seasons.DEMO_FARM));
    private static final int[] OPENED = Opening.fill(FACTS, Search.nothingPlaced(FACTS), () -> false);

    private final Probe probe = new Probe();
    private final SeasonPlan plan = new SeasonPlan(FACTS, OPENED, probe);
    private final Layout layout = new Layout(FACTS);
    private final SolverScore live = new SolverScore();

    /** @param dollars a season */
    private Metropolis at(long dollars) {
        probe.cool(new Cooling(dollars * Grains.ofThing(FACTS.season, 1) * FACTS.seasonCount, MOVES, Long.MAX_VALUE));
        live.resetWorkingSolution(plan);
        layout.follow(plan.getPlantings(), probe);
        return new Metropolis(layout, new Glance(layout), probe, live);
    }

    /** What a trial brings, grains over all seasons, if it breaks nothing; else NaN. By a score of its own. */
    private double brings(SeasonScore own, Put put) {
        List<Planting> moved = put.plantings();
        for (int i = 0; i < moved.size(); i++) {
            int id = moved.get(i).getId();
            if (own.place(id) != put.places().get(i)) {
                own.put(id, put.places().get(i));
            }
        }
        own.ask();
        boolean breaks = own.hardAfter() < own.hard() || own.mediumAfter() < own.medium();
        double brings = breaks ? Double.NaN : (double) own.softAfter() - own.soft();
        own.forget();
        return brings;
    }

    /**
     * The expected number is the sum of min(1, exp(−loss / temperature)) over the moves drawn. A glance errs now and then: it may
     * hold hours for broken that are not, and knows nothing of extra stock.
     */
    @ParameterizedTest
    @ValueSource(longs = {3, 10, 40})
    void lossesAreAcceptedAsOftenAsTheTemperatureSays(long dollars) {
        Metropolis metropolis = at(dollars);
        SeasonScore own = Seasons.scoreOf(FACTS, plan.places());
        DrawnMoves moves = new DrawnMoves(layout, null, null, new SplittableRandom(dollars));
        SplittableRandom luck = new SplittableRandom(7);
        double temperature = probe.temperature();
        double expected = 0;
        double variance = 0;
        int accepted = 0;
        for (int i = 0; i < DRAWS; i++) {
            double brings = brings(own, moves.next());
            double chance = Double.isNaN(brings) ? 0 : Math.min(1, Math.exp(brings / temperature));
            expected += chance;
            variance += chance * (1 - chance);
            metropolis.begin();
            if (metropolis.accepts(luck)) {
                accepted++;
                live.forget();
            }
        }
        assertThat(expected).isGreaterThan(100);
        assertThat((double) accepted).isCloseTo(expected, within(4 * Math.sqrt(variance) + 0.03 * expected));
    }

    @Test
    void whenItIsColdNoMoveThatLosesAnythingIsGiven() {
        Metropolis metropolis = at(0);
        SeasonScore own = Seasons.scoreOf(FACTS, plan.places());
        DrawnMoves moves = new DrawnMoves(layout, metropolis, null, new SplittableRandom(5));
        int gains = 0;
        for (int i = 0; i < 100; i++) {
            double brings = brings(own, moves.next());
            assertThat(brings).isNotNegative();
            gains += brings > 0 ? 1 : 0;
            live.forget();
        }
        assertThat(gains).isPositive();
    }

    @Test
    void theSolverIsToldTheScoreThatAFreshOneFindsForAMoveAskedAhead() {
        Metropolis metropolis = at(10);
        DrawnMoves moves = new DrawnMoves(layout, metropolis, null, new SplittableRandom(6));
        for (int i = 0; i < 200; i++) {
            Put put = moves.next();
            for (int p = 0; p < put.plantings().size(); p++) {
                Planting planting = put.plantings().get(p);
                if (planting.place() != put.places().get(p)) {
                    planting.put(put.places().get(p));
                    live.afterVariableChanged(planting, "bed");
                }
            }
            SeasonScore fresh = Seasons.scoreOf(FACTS, plan.places());

            assertThat(live.calculateScore().softScore()).isEqualTo(fresh.soft());
            layout.follow(plan.getPlantings(), probe);
        }
    }

    @Test
    void anAnswerToAMoveThatIsNotMadeIsForgotten() {
        Metropolis metropolis = at(10);
        DrawnMoves moves = new DrawnMoves(layout, metropolis, null, new SplittableRandom(8));
        long before = live.score().soft();
        for (int i = 0; i < 50; i++) {
            moves.next();
            assertThat(live.score().soft()).isEqualTo(before);
        }
        assertThat(live.calculateScore().softScore()).isEqualTo(before);
    }

    @Test
    void aMoveOfNothingCountsToo() {
        Metropolis metropolis = at(10);
        long before = probe.asked();

        metropolis.countNone();

        assertThat(probe.asked()).isEqualTo(before + 1);
    }

    @Test
    void aRoundEndsAfterItsMoves() {
        int[] ended = new int[1];
        probe.cool(new Cooling(1, 3, Long.MAX_VALUE));
        probe.whenOver(() -> ended[0]++);

        probe.count();
        probe.count();
        assertThat(ended[0]).isZero();
        probe.count();

        assertThat(ended[0]).isOne();
    }
}
