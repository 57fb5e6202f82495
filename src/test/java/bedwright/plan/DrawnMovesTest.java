package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.growth.ProspectTable;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Which moves are drawn beside a plan of the two beds of a small farm. */
class DrawnMovesTest {
    private static final int DRAWS = 20_000;

    private final PlanFacts facts = Seasons.facts(Seasons.of(Seasons.FIRST_BED));
    private final ProspectTable table = facts.table();
    private final int[] places = Opening.fill(facts, Search.nothingPlaced(facts), () -> false);

    private boolean isDrawn(int[] plan, Map<Integer, Integer> moves) {
        List<Planting> plantings = new SeasonPlan(facts, plan, new Probe()).getPlantings();
        Layout layout = new Layout(facts);
        layout.follow(plantings);
        DrawnMoves drawn = new DrawnMoves(layout, null, null, new SplittableRandom(1));
        for (int i = 0; i < DRAWS; i++) {
            Put put = drawn.next();
            Map<Integer, Integer> changes = new HashMap<>();
            for (int p = 0; p < put.places().size(); p++) {
                changes.put(put.plantings().get(p).getId(), put.places().get(p));
            }
            if (changes.equals(moves)) {
                return true;
            }
        }
        return false;
    }

    /** The same week and method in the other bed. */
    private int across(int planting) {
        int place = places[planting];
        return table.find(facts.stock(planting), 1 - table.bed(place), table.sowWeek(place), table.method(place));
    }

    /** By planting, where it goes if what starts from a week on trades beds. */
    private Map<Integer, Integer> trade(int[] plan, int from) {
        Map<Integer, Integer> moves = new HashMap<>();
        for (int p = 0; p < plan.length; p++) {
            if (plan[p] >= 0 && facts.holds.from(plan[p]) >= from) {
                moves.put(p, across(p));
            }
        }
        return moves;
    }

    /** The first of what was planted in each bed, so that few stand there, with places in both beds. */
    private int[] few() {
        int[] few = Search.nothingPlaced(facts);
        for (int bed = 0; bed < 2; bed++) {
            int its = bed;
            IntStream.range(0, few.length)
                    .filter(p -> places[p] >= 0 && table.bed(places[p]) == its && across(p) >= 0)
                    .limit(2)
                    .forEach(p -> few[p] = places[p]);
        }
        return few;
    }

    @Test
    void twoBedsTradeAllThatStandsInThem() {
        int[] few = few();

        assertThat(trade(few, 0)).hasSize(4);
        assertThat(isDrawn(few, trade(few, 0))).isTrue();
    }

    @Test
    void twoBedsTradeWhatComesFromAWeekOn() {
        int[] few = few();
        int last = Arrays.stream(few)
                .filter(place -> place >= 0)
                .map(place -> facts.holds.from(place))
                .max()
                .orElseThrow();

        assertThat(trade(few, last)).hasSizeBetween(1, 3);
        assertThat(isDrawn(few, trade(few, last))).isTrue();
    }
}
