package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.KindTree;
import bedwright.season.Role;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One role with two kinds, of the first of which at most 10 stems can be sold in a week. */
class FillingTest {
    private static final KindTree KINDS = KindTree.of(
            List.of(TestSeason.role("focal", 0, 0, TestSeason.kind("warm", 10), TestSeason.kind("cool", null))));
    private static final int FOCAL = 0;
    private static final int WARM = 1;
    private static final int COOL = 2;

    private static Demand.Taker taker(int node, long price, long asked) {
        return new Demand.Taker("t", node, price, Demand.Promised.NOTHING, 0, new long[] {asked});
    }

    private static Filling fill(long warm, long cool, Demand.Taker... takers) {
        return new Filling(KINDS, List.of(takers), 0, new long[] {0, warm, cool}, 1);
    }

    @Test
    void firstInOrderIsFilledFirst() {
        assertThat(fill(0, 500, taker(COOL, 2, 400), taker(COOL, 1, 400)).delivered)
                .containsExactly(400, 100);
    }

    @Test
    void outletTakesAnyKindWithinItsOwn() {
        assertThat(fill(200, 300, taker(FOCAL, 1, 1_000)).delivered).containsExactly(500);
    }

    @Test
    void outletTakesNoKindOutsideItsOwn() {
        assertThat(fill(200, 300, taker(COOL, 1, 1_000)).delivered).containsExactly(300);
    }

    @Test
    void mostAWeekHoldsForAllWhoTakeTheKind() {
        assertThat(fill(2_000, 0, taker(WARM, 2, 600), taker(FOCAL, 1, 600)).delivered)
                .containsExactly(600, 400);
    }

    @Test
    void mostAWeekLeavesOtherKindsTheirRoom() {
        assertThat(fill(2_000, 500, taker(WARM, 2, 1_000), taker(FOCAL, 1, 600)).delivered)
                .containsExactly(1_000, 500);
    }

    @Test
    void wideOutletLeavesTheNarrowOneWhatItNeeds() {
        assertThat(fill(300, 300, taker(FOCAL, 2, 300), taker(WARM, 1, 300)).delivered)
                .containsExactly(300, 300);
    }

    @Test
    void whatNobodyTakesIsLeft() {
        assertThat(fill(2_000, 100, taker(FOCAL, 1, 600)).left).containsExactly(1_500);
    }

    /** Every way of giving each stem to one taker, or to none, tried one by one. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void noOtherWayBringsMore(int seed) {
        Random random = new Random(seed);
        KindTree kinds = KindTree.of(List.of(tree(random)));
        int[] stemKinds = random.ints(6, 0, kinds.size()).toArray();
        List<Demand.Taker> takers = new ArrayList<>();
        for (int t = 0; t < 4; t++) {
            takers.add(taker(random.nextInt(kinds.size()), 1 + random.nextInt(9), 100L * (1 + random.nextInt(3))));
        }
        takers.sort(Comparator.comparingLong(Demand.Taker::price).reversed());
        long[] stems = new long[kinds.size()];
        for (int kind : stemKinds) {
            stems[kind] += 100;
        }

        Filling filling = new Filling(kinds, takers, 0, stems, 1);
        long value = 0;
        for (int t = 0; t < takers.size(); t++) {
            value += filling.delivered[t] * takers.get(t).price();
        }

        assertThat(value)
                .isEqualTo(100 * best(kinds, takers, stemKinds, 0, new int[takers.size()], new int[kinds.size()]));
    }

    private static Role tree(Random random) {
        return new Role(
                "role",
                0,
                0,
                most(random),
                List.of(
                        TestSeason.kind(
                                "a", most(random), TestSeason.kind("c", most(random)), TestSeason.kind("d", null)),
                        TestSeason.kind("b", most(random), TestSeason.kind("e", most(random)))));
    }

    private static Integer most(Random random) {
        return 1 + random.nextInt(4);
    }

    private static long best(
            KindTree kinds, List<Demand.Taker> takers, int[] stemKinds, int next, int[] given, int[] sold) {
        if (next == stemKinds.length) {
            long value = 0;
            for (int t = 0; t < given.length; t++) {
                value += given[t] * takers.get(t).price();
            }
            return value;
        }
        long best = best(kinds, takers, stemKinds, next + 1, given, sold);
        int[] path = path(kinds, stemKinds[next]);
        boolean room = Arrays.stream(path).allMatch(node -> 100L * (sold[node] + 1) <= kinds.mostAWeek(node));
        for (int t = 0; room && t < given.length; t++) {
            int node = takers.get(t).node();
            boolean takes = Arrays.stream(path).anyMatch(within -> within == node);
            if (takes && 100L * (given[t] + 1) <= takers.get(t).asked()[0]) {
                given[t]++;
                Arrays.stream(path).forEach(n -> sold[n]++);
                best = Math.max(best, best(kinds, takers, stemKinds, next + 1, given, sold));
                given[t]--;
                Arrays.stream(path).forEach(n -> sold[n]--);
            }
        }
        return best;
    }

    private static int[] path(KindTree kinds, int node) {
        List<Integer> path = new ArrayList<>();
        for (int n = node; n >= 0; n = kinds.parent(n)) {
            path.add(n);
        }
        return path.stream().mapToInt(Integer::intValue).toArray();
    }
}
