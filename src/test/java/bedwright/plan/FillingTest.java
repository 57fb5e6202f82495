package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.KindTree;
import bedwright.season.Outlet;
import bedwright.season.Promise;
import bedwright.season.Role;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Filling in order of worth brings the most: on small random trees of kinds, compared with every way of giving whole
 * stems to the outlets, each found possible or not by handing the stems out one by one.
 */
class FillingTest {
    private static final int TREES = 100;
    private static final int MOST = 3;
    private static final int PLENTY = 1000;
    private static final long GRAINS_A_CENT_STEM = Grains.A_SMALLEST_UNIT;

    private final Season template = new HandSeason().build();

    /** A week's worth: what is missing that must be ours, by weight, comes before all money. */
    private record Worth(long missing, long money) {
        boolean isBetterThan(Worth other) {
            return missing < other.missing || (missing == other.missing && money > other.money);
        }
    }

    @RepeatedTest(10)
    void fillingInOrderIsAsGoodAsTheBestOfAllFillings(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        for (int trial = 0; trial < TREES; trial++) {
            Role role = randomRole(random);
            KindTree kinds = KindTree.of(List.of(role));
            List<Outlet> outlets = randomOutlets(random, kinds);
            int[] stems = random.ints(kinds.size(), 0, MOST + 1).toArray();
            int[][] hundredths =
                    Arrays.stream(stems).mapToObj(n -> new int[] {100 * n}).toArray(int[][]::new);

            Filling.Result result = fill(role, outlets, 0, hundredths, random);

            assertThat(new Worth(result.missing[0], (long) result.money[0]))
                    .as("%s, %s, stems %s", role, outlets, Arrays.toString(stems))
                    .isEqualTo(best(kinds, outlets, stems));
        }
    }

    private static Role randomRole(Random random) {
        List<Role.Kind> kinds = new ArrayList<>();
        for (int i = random.nextInt(3); i >= 0; i--) {
            List<Role.Kind> within = new ArrayList<>();
            for (int j = random.nextInt(3); j > 0; j--) {
                within.add(new Role.Kind("inner" + j, cap(random), List.of()));
            }
            kinds.add(new Role.Kind("kind" + i, cap(random), within));
        }
        return new Role("focal", 0, 0, cap(random), kinds);
    }

    private static @Nullable Integer cap(Random random) {
        return random.nextBoolean() ? null : (Integer) random.nextInt(6);
    }

    private List<Outlet> randomOutlets(Random random, KindTree kinds) {
        List<Outlet> outlets = new ArrayList<>();
        for (int i = random.nextInt(4); i >= 0; i--) {
            @Nullable
            Promise promise = switch (random.nextInt(5)) {
                case 0 -> new Promise(1 + random.nextInt(3), null, null);
                case 1 -> new Promise(null, random.nextInt(5) / 100.0, null);
                case 2 -> new Promise(null, null, random.nextInt(5) / 100.0);
                case 3 -> new Promise(null, null, null);
                default -> null;
            };
            outlets.add(new Outlet(
                    "outlet " + i,
                    kinds.path(random.nextInt(kinds.size())),
                    (1 + random.nextInt(5)) / 100.0,
                    List.of(new Outlet.Ask(template.starts(), null, random.nextInt(MOST + 1))),
                    promise,
                    0));
        }
        return outlets;
    }

    private Season season(Role role, List<Outlet> outlets) {
        return new Season(
                template.name(),
                template.about(),
                template.starts(),
                template.weeks(),
                template.currency(),
                template.site(),
                template.beds(),
                template.windbreaks(),
                template.roughGrass(),
                template.pests(),
                template.stock(),
                template.labour(),
                List.of(role),
                template.families(),
                template.rotation(),
                List.of(),
                List.of(),
                List.of(),
                outlets,
                List.of(),
                List.of(),
                template.caution(),
                template.possible());
    }

    /** Fills the first week with hundredths of stems by kind and season, some of which are there and some come besides. */
    private Filling.Result fill(Role role, List<Outlet> outlets, long ownRate, int[][] stems, Random random) {
        Season season = season(role, outlets);
        KindTree kinds = KindTree.of(season.roles());
        Demand demand = Demand.of(season, kinds);
        KindCells cells = new KindCells(kinds, demand.lines());
        int seasons = stems[0].length;
        int weeks = season.weeks();
        Filling filling = Filling.of(season, kinds, cells, 0, demand, ownRate, seasons);
        Filling.Result result = new Filling.Result(weeks, seasons);
        int[] sums = new int[cells.size() * weeks * seasons];
        int[] besides = new int[sums.length];
        boolean[] isTouched = new boolean[cells.size() * weeks];
        for (int n = 0; n < stems.length; n++) {
            int cell = cells.of(n);
            int at = cell * weeks * seasons;
            int[] there = new int[sums.length];
            for (int k = 0; k < seasons; k++) {
                there[at + k] = random.nextInt(stems[n][k] + 1);
                besides[at + k] += stems[n][k] - there[at + k];
            }
            filling.add(sums, there, cell, 0, result);
            isTouched[cell * weeks] = true;
        }
        filling.fill(0, 1, sums, besides, isTouched, result);
        return result;
    }

    private static Worth best(KindTree kinds, List<Outlet> outlets, int[] stems) {
        int[] delivered = new int[outlets.size()];
        Worth best = worth(outlets, delivered);
        while (next(delivered, outlets)) {
            Worth worth = worth(outlets, delivered);
            if (worth.isBetterThan(best) && isPossible(kinds, outlets, stems, delivered)) {
                best = worth;
            }
        }
        return best;
    }

    private static int asked(Outlet outlet) {
        return (int) outlet.asks().get(0).stems();
    }

    private static boolean next(int[] delivered, List<Outlet> outlets) {
        for (int i = 0; i < delivered.length; i++) {
            if (delivered[i] < asked(outlets.get(i))) {
                delivered[i]++;
                return true;
            }
            delivered[i] = 0;
        }
        return false;
    }

    /** Season model, sections 7 and 8, in the words of its formulas. */
    private static Worth worth(List<Outlet> outlets, int[] delivered) {
        long missing = 0;
        long cents = 0;
        for (int i = 0; i < delivered.length; i++) {
            Outlet outlet = outlets.get(i);
            long price = Math.round(100 * outlet.price());
            int lacking = asked(outlet) - delivered[i];
            Promise promise = outlet.promise();
            Integer must = promise == null ? null : promise.must();
            Double buyIn = promise == null ? null : promise.buyIn();
            Double shortage = promise == null ? null : promise.shortage();
            if (must != null) {
                missing += 100L * must * lacking;
                cents += price * delivered[i];
            } else if (buyIn != null) {
                cents += price * asked(outlet) - Math.round(100 * buyIn) * lacking;
            } else if (promise != null) {
                long lack = shortage == null ? 3 * price : Math.round(100 * shortage);
                cents += price * delivered[i] - lack * lacking;
            } else {
                cents += price * delivered[i];
            }
        }
        return new Worth(missing, cents * GRAINS_A_CENT_STEM);
    }

    /**
     * Whether there are stems to hand out so: each wanted stem goes from its outlet down the tree to a kind that has one
     * left, and from there up to the role, through every kind that holds it, no more than may be sold of each.
     */
    private static boolean isPossible(KindTree kinds, List<Outlet> outlets, int[] stems, int[] delivered) {
        int nodes = kinds.size();
        int source = 3 * nodes + delivered.length;
        int sink = source + 1;
        int[][] left = new int[sink + 1][sink + 1];
        for (int n = 0; n < nodes; n++) {
            int entry = nodes + 2 * n;
            int exit = entry + 1;
            left[n][entry] = stems[n];
            left[entry][exit] = (int) Math.min(kinds.mostAWeek(n) / 100, PLENTY);
            int above = kinds.parent(n);
            if (above >= 0) {
                left[above][n] = PLENTY;
                left[exit][nodes + 2 * above] = PLENTY;
            } else {
                left[exit][sink] = PLENTY;
            }
        }
        int wanted = 0;
        for (int i = 0; i < delivered.length; i++) {
            int outlet = 3 * nodes + i;
            left[source][outlet] = delivered[i];
            left[outlet][kinds.node(outlets.get(i).kind())] = PLENTY;
            wanted += delivered[i];
        }
        int carried = 0;
        while (carryOne(left, source, sink, new boolean[left.length])) {
            carried++;
        }
        return carried == wanted;
    }

    /** One stem more by a path that is not full, which may send another stem elsewhere (Ford and Fulkerson's way). */
    private static boolean carryOne(int[][] left, int from, int sink, boolean[] seen) {
        if (from == sink) {
            return true;
        }
        seen[from] = true;
        for (int to = 0; to < left.length; to++) {
            if (!seen[to] && left[from][to] > 0 && carryOne(left, to, sink, seen)) {
                left[from][to]--;
                left[to][from]++;
                return true;
            }
        }
        return false;
    }

    /** Seasons lie side by side and do not mix: each is filled as it is alone. */
    @Test
    void severalSeasonsAtOnceAreFilledAsEachAlone() {
        Random random = new Random(77);
        for (int trial = 0; trial < 100; trial++) {
            Role role = randomRole(random);
            KindTree kinds = KindTree.of(List.of(role));
            List<Outlet> outlets = randomOutlets(random, kinds);
            int[][] stems = new int[kinds.size()][];
            Arrays.setAll(stems, n -> random.ints(3, 0, 400).toArray());

            Filling.Result together = fill(role, outlets, 0, stems, random);

            long missing = 0;
            for (int k = 0; k < 3; k++) {
                int season = k;
                int[][] own =
                        Arrays.stream(stems).map(all -> new int[] {all[season]}).toArray(int[][]::new);
                Filling.Result alone = fill(role, outlets, 0, own, random);
                missing += alone.missing[0];
                assertThat(List.of((long) together.money[k], (long) together.served[k]))
                        .containsExactly((long) alone.money[0], (long) alone.served[0]);
            }
            assertThat(together.missing[0]).isEqualTo(missing);
        }
    }

    /** Season model, section 7: cutting 100 stems in 60 minutes at 10.00 an hour makes 0.10 a stem. */
    @ParameterizedTest
    @CsvSource({"0.10, 0", "0.11, 300"})
    void anOutletIsServedOnlyIfItPaysMoreThanItsCutting(double price, int served) {
        Role role = new Role("focal", 60, 0, null, List.of());
        Outlet outlet =
                new Outlet("shop", "focal", price, List.of(new Outlet.Ask(template.starts(), null, 5)), null, 0);

        Filling.Result result = fill(role, List.of(outlet), 1000, new int[][] {{300}}, new Random(1));

        assertThat(result.served).startsWith(served);
    }

    /** Stems of one role in some weeks and seasons, filled again and again with the same arrays. */
    private final class Several {
        final Filling filling;
        final Filling.Result result;
        final int weeks = template.weeks();
        final int seasons;
        final int cells;
        final int[] sums;
        final int[] besides;
        final boolean[] isTouched;

        Several(Role role, List<Outlet> outlets, long ownRate, int seasons) {
            Season season = season(role, outlets);
            KindTree kinds = KindTree.of(season.roles());
            Demand demand = Demand.of(season, kinds);
            KindCells told = new KindCells(kinds, demand.lines());
            this.seasons = seasons;
            cells = told.size();
            filling = Filling.of(season, kinds, told, 0, demand, ownRate, seasons);
            result = new Filling.Result(weeks, seasons);
            sums = new int[cells * weeks * seasons];
            besides = new int[sums.length];
            isTouched = new boolean[cells * weeks];
        }

        /** Adds stems to what is there of a kind in a week and season, hundredths; less than none takes away. */
        void add(int kind, int week, int k, int stems) {
            int[] some = new int[sums.length];
            some[at(kind, week, k)] = stems;
            filling.add(sums, some, kind, week, result);
        }

        void addBesides(int kind, int week, int k, int stems) {
            besides[at(kind, week, k)] += stems;
            isTouched[kind * weeks + week] = true;
        }

        int at(int kind, int week, int k) {
            return (kind * weeks + week) * seasons + k;
        }

        Filling.Result fill(int first, int end) {
            filling.fill(first, end, sums, besides, isTouched, result);
            return result;
        }
    }

    private Several drawnWeeks(Random random, long ownRate) {
        Role drawn = randomRole(random);
        Role role = new Role("focal", random.nextInt(30), random.nextInt(20), drawn.mostAWeek(), drawn.kinds());
        KindTree kinds = KindTree.of(List.of(role));
        List<Outlet> outlets = randomOutlets(random, kinds).stream()
                .map(one -> new Outlet(
                        one.name(),
                        one.kind(),
                        one.price(),
                        IntStream.range(0, template.weeks())
                                .filter(w -> random.nextInt(3) > 0)
                                .mapToObj(w -> new Outlet.Ask(template.weekStart(w), null, random.nextInt(MOST + 1)))
                                .toList(),
                        one.promise(),
                        0))
                .toList();
        Several all = new Several(role, outlets, ownRate, 1 + random.nextInt(3));
        for (int n = 0; n < all.cells; n++) {
            for (int w = 0; w < all.weeks; w++) {
                for (int k = 0; k < all.seasons; k++) {
                    all.add(n, w, k, 1 + random.nextInt(500));
                }
            }
        }
        return all;
    }

    /** Weeks lie side by side and do not mix, whatever was filled before with the same arrays. */
    @Test
    void severalWeeksAtOnceAreFilledAsEachAlone() {
        Random random = new Random(5);
        for (int trial = 0; trial < 100; trial++) {
            Several all = drawnWeeks(random, 0);
            for (int n = 0; n < all.cells; n++) {
                for (int w = random.nextInt(2); w < all.weeks; w += 1 + random.nextInt(3)) {
                    all.addBesides(n, w, random.nextInt(all.seasons), 1 + random.nextInt(300));
                }
            }
            int first = trial % 2 == 0 ? 0 : random.nextInt(all.weeks);
            int end = trial % 2 == 0 ? all.weeks : random.nextInt(first, all.weeks) + 1;

            Filling.Result together = all.fill(first, end);

            int wide = (end - first) * all.seasons;
            double[] money = Arrays.copyOf(together.money, wide);
            int[] served = Arrays.copyOf(together.served, wide);
            int[] came = Arrays.copyOf(together.came, wide);
            long[] missing = Arrays.copyOf(together.missing, end - first);
            for (int w = first; w < end; w++) {
                Filling.Result alone = all.fill(w, w + 1);
                int at = (w - first) * all.seasons;
                assertThat(Arrays.copyOfRange(money, at, at + all.seasons))
                        .isEqualTo(Arrays.copyOf(alone.money, all.seasons));
                assertThat(Arrays.copyOfRange(served, at, at + all.seasons))
                        .isEqualTo(Arrays.copyOf(alone.served, all.seasons));
                for (int k = 0; k < all.seasons; k++) {
                    int besides = 0;
                    for (int n = 0; n < all.cells; n++) {
                        besides += all.besides[all.at(n, w, k)];
                    }
                    assertThat(came[at + k]).isEqualTo(besides);
                }
                assertThat(missing[w - first]).isEqualTo(alone.missing[0]);
            }
        }
    }

    @Test
    void whatEachLineGetsMakesUpWhatIsServed() {
        Random random = new Random(6);
        for (int trial = 0; trial < 100; trial++) {
            Several all = drawnWeeks(random, 0);
            Filling.Result result = all.fill(0, all.weeks);
            int lines = Arrays.stream(all.filling.lines)
                    .mapToInt(Filling.Line::line)
                    .max()
                    .orElse(-1);
            int[][][] byLine = new int[lines + 1][all.weeks][all.seasons];
            for (int w = 0; w < all.weeks; w++) {
                all.filling.fillByLine(w, all.sums, byLine);
                for (int k = 0; k < all.seasons; k++) {
                    int served = 0;
                    double money = all.filling.none[w * all.seasons + k];
                    for (Filling.Line line : all.filling.lines) {
                        served += byLine[line.line()][w][k];
                        money += (double) line.gain() * byLine[line.line()][w][k];
                    }
                    assertThat(served).isEqualTo(result.served[w * all.seasons + k]);
                    assertThat(money).isEqualTo(result.money[w * all.seasons + k]);
                }
            }
        }
    }

    /**
     * What filling brings is concave in the stems, so the price of a kind lies between what a hundredth less of it loses
     * and what a hundredth more of it gains; these are the same but where something is just used up.
     */
    @Test
    void thePriceOfAKindIsWhatALittleMoreOfItBrings() {
        Random random = new Random(7);
        int alike = 0;
        for (int trial = 0; trial < 150; trial++) {
            long rate = random.nextInt(3);
            Several all = drawnWeeks(random, rate);
            double must = 1e6;
            int first = trial % 2 == 0 ? 0 : random.nextInt(all.weeks);
            int end = trial % 2 == 0 ? all.weeks : random.nextInt(first, all.weeks) + 1;
            double[] rates = new double[all.weeks * all.seasons];
            Arrays.fill(rates, rate);
            float[] prices = new float[all.sums.length];
            all.filling.price(
                    first,
                    end,
                    all.sums,
                    rates,
                    must,
                    IntStream.range(0, all.cells).toArray(),
                    prices,
                    all.result);

            for (int tries = 0; tries < 20; tries++) {
                int n = random.nextInt(all.cells);
                int w = random.nextInt(first, end);
                int k = random.nextInt(all.seasons);
                double now = worth(all, w, rate, must);
                all.add(n, w, k, 1);
                double gain = worth(all, w, rate, must) - now - (double) rate * all.filling.clearRate;
                all.add(n, w, k, -2);
                double loss = now - worth(all, w, rate, must) - (double) rate * all.filling.clearRate;
                all.add(n, w, k, 1);
                double price = prices[all.at(n, w, k)];
                assertThat(price).isGreaterThan(gain - 1);
                if (isWorthIts(all, rate, must)) {
                    assertThat(price).isLessThan(loss + 1);
                    alike += gain == loss ? 1 : 0;
                }
            }
        }
        assertThat(alike).as("prices that are exact").isGreaterThan(1000);
    }

    /** Whether cutting costs no line more than it brings: what is promised is served at a loss, too. */
    private static boolean isWorthIts(Several all, double rate, double must) {
        double work = rate * (all.filling.cutRate - all.filling.clearRate);
        return Arrays.stream(all.filling.lines).allMatch(line -> line.gain() + must * line.weight() >= work);
    }

    /** What a week brings in all seasons less the work of it, but for clearing all that came. */
    private double worth(Several all, int week, double rate, double must) {
        Filling.Result result = all.fill(week, week + 1);
        double worth = -must * result.missing[0];
        for (int k = 0; k < all.seasons; k++) {
            worth += result.money[k] - rate * (all.filling.cutRate - all.filling.clearRate) * result.served[k];
        }
        return worth;
    }
}
