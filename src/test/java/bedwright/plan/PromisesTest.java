package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.growth.ProspectTable;
import bedwright.growth.Spot;
import bedwright.season.KeptPlanting;
import bedwright.season.KindTree;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What can still be promised of a plan. */
class PromisesTest {
    private static final int JUDGED = 256;

    private static final Supplier<Drawn> DEMO = Once.of(PromisesTest::demo);
    /** A thousand seasons that none of the judges has seen. */
    private static final Supplier<Promises> TRUTH =
            Once.of(() -> DEMO.get().over(fresh(Seasons.DEMO_FARM, 1000, 1000)));

    private static final Supplier<List<Promises>> JUDGES = Once.of(() -> LongStream.rangeClosed(1, 10)
            .mapToObj(seed -> DEMO.get().over(fresh(Seasons.DEMO_FARM, JUDGED, seed)))
            .toList());

    /** Works something out when it is first asked for. */
    private static final class Once<T> implements Supplier<T> {
        private final Supplier<T> work;
        private @Nullable T done;

        private Once(Supplier<T> work) {
            this.work = work;
        }

        static <T> Once<T> of(Supplier<T> work) {
            return new Once<>(work);
        }

        @Override
        public T get() {
            T known = done;
            if (known == null) {
                known = work.get();
                done = known;
            }
            return known;
        }
    }

    private record Drawn(Season season, List<KeptPlanting> plan) {
        Promises over(List<PossibleSeason> seasons) {
            PlanFacts facts = PlanFacts.ofPlan(season, seasons, plan);
            return Promises.of(facts, Outcomes.places(facts, plan));
        }
    }

    private static Drawn drawn(String file, long seed) {
        Season season = Seasons.of(file);
        PlanFacts facts = Seasons.facts(season);
        return new Drawn(
                season,
                Outcomes.of(facts, Seasons.randomPlan(facts, new Random(seed), 0.8))
                        .plantings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-bed.json", "tray-and-bed.json", "farmers-problem.json"})
    void takersGetFromTheRoomOfAKindWhatTheOutcomeSaysTheyGet(String file) {
        PlanFacts facts = Seasons.facts(Seasons.of(file));
        for (long seed = 1; seed <= 10; seed++) {
            Outcome outcome = Outcomes.of(facts, Seasons.randomPlan(facts, new Random(seed), 0.7));
            for (int w = 0; w < facts.weeks; w++) {
                KindRoom room = KindRoom.of(facts.kinds, outcome.stems(), w);
                for (Filling filling : facts.fillings) {
                    for (Filling.Line line : filling.lines) {
                        DemandLine asked = facts.demand.get(line.line());
                        assertThat(room.take(asked.node(), asked.asked()[w]))
                                .as("%s, week %d, %s", file, w, asked.name())
                                .isEqualTo(outcome.served()[line.line()][w]);
                    }
                }
            }
        }
    }

    @Test
    void oneStemMoreThanCanBePromisedIsThereInTooFewSeasons() {
        Promises promises = drawn("first-bed.json", 4).over(fresh("first-bed.json", JUDGED, 3));
        int looked = 0;
        for (int node = 0; node < 4; node++) {
            for (int w = 0; w < 10; w++) {
                int[] free = promises.free(node, w);
                for (double share : new double[] {0.5, 0.8, 0.9}) {
                    int most = Promises.most(free, share);
                    int week = w;
                    if (most > 0) {
                        assertThat(filled(promises, week, node, most)).isGreaterThanOrEqualTo(share);
                        assertThat(filled(promises, week, node, most + 1)).isLessThan(share);
                        looked++;
                    }
                }
            }
        }
        assertThat(looked).isGreaterThan(10);
    }

    private static double filled(Promises promises, int week, int node, int stems) {
        return promises.ask(week, List.of(new Promises.Line(node, 100L * stems)))
                .filled();
    }

    private static List<PossibleSeason> fresh(String file, int count, long seed) {
        return PossibleSeasons.fresh(Seasons.of(file), count, seed);
    }

    /** By hand: of 1, 2, … 10 stems, 2 are there in nine seasons of ten, 3 in eight, 6 in five. */
    @Test
    void theMostIsTheGreatestThatIsThereInEnoughSeasons() {
        int[] free = {100, 1000, 200, 900, 300, 800, 400, 700, 500, 600};

        assertThat(List.of(
                        Promises.most(free, 0.9),
                        Promises.most(free, 0.8),
                        Promises.most(free, 0.5),
                        Promises.most(free, 1)))
                .containsExactly(2, 3, 6, 1);
    }

    @Test
    void partsOfAStemAreNotPromised() {
        assertThat(Promises.most(new int[] {299, 299}, 0.9)).isEqualTo(2);
    }

    /** An order by hand: in 3 stems of a kind within 4 of its role there is no room for 3 and 2 at once. */
    @Test
    void linesOfAnOrderHaveToFindTheirStemsAtOnce() {
        Season season = Seasons.of("first-bed.json");
        KindTree kinds = KindTree.of(season.roles());
        int child = 1;
        assertThat(kinds.parent(child)).isZero();
        int[][][] stems = new int[kinds.size()][1][1];
        stems[0][0][0] = 400;
        stems[child][0][0] = 300;
        KindRoom room = KindRoom.of(kinds, stems, 0);

        assertThat(room.free(child)[0]).isEqualTo(300);
        assertThat(room.free(0)[0]).isEqualTo(400);
        room.take(child, 300);
        assertThat(room.free(0)[0]).isEqualTo(100);
    }

    /**
     * The farmer's problem of Birge and Louveaux, Introduction to Stochastic Programming, chapter 1, with its best plan: 170
     * acres of wheat yield 340, 425 and 510 t, of which 200 are feed and the rest is sold at 170; 250 acres of beets yield
     * 4,000 to 6,000 t, which are sold at 36.
     */
    private static Promises farmer() {
        PlanFacts facts = Seasons.facts(Seasons.of(Seasons.FARMERS_PROBLEM));
        int[] places = Search.nothingPlaced(facts);
        int[] lots = {17, 8, 25};
        for (int stock = 0; stock < lots.length; stock++) {
            for (int l = 0; l < lots[stock]; l++) {
                places[facts.firstPlanting(stock) + l] = facts.table().firstPlace(stock);
            }
        }
        return Promises.of(facts, places);
    }

    @Test
    void whatIsFreeIsWhatComesLessWhatIsPromised() {
        assertThat(farmer().free(0, 1)).containsExactlyInAnyOrder(14_000, 22_500, 31_000);
    }

    @ParameterizedTest
    @CsvSource({"0, 140, 3, 23800", "0, 200, 2, 34000", "2, 100, 3, 3600"})
    void anOrderTakesFromOthersWhatTheyWouldHavePaid(int node, int tonnes, int filled, double takes) {
        Promises promises = farmer();
        Promises.Answer answer = promises.ask(1, List.of(new Promises.Line(node, 100L * tonnes)));

        assertThat(answer.filled()).isEqualTo(filled / 3.0);
        assertThat(Grains.toMoney(Seasons.of(Seasons.FARMERS_PROBLEM), answer.takings()))
                .isCloseTo(takes, within(1e-6));
    }

    @Test
    void nothingOrderedCostsNothingAndIsAlwaysThere() {
        Promises promises = drawn("first-bed.json", 4).over(fresh("first-bed.json", 16, 3));

        Promises.Answer answer = promises.ask(5, List.of());

        assertThat(answer.filled()).isOne();
        assertThat(answer.takings()).isZero();
        assertThat(answer.work()).isZero();
    }

    /** The demo farm with all lots of its pool at drawn places, three for each entry: many stems in many weeks. */
    private static Drawn demo() {
        Season season = Seasons.of(Seasons.DEMO_FARM);
        Random random = new Random(8);
        int beds = season.allBeds().size();
        List<Spot> spots = new ArrayList<>();
        for (int stock = 0; stock < season.pool().size(); stock++) {
            for (int i = 0; i < 40; i++) {
                spots.add(new Spot(stock, random.nextInt(beds), random.nextInt(season.weeks()), random.nextInt(2)));
            }
        }
        List<PossibleSeason> one = PossibleSeasons.fresh(season, 1, 5);
        PlanFacts facts = PlanFacts.of(season, one, ProspectTable.at(season, one, spots));
        int[] places = Search.nothingPlaced(facts);
        for (int p : facts.free) {
            int first = facts.table().firstPlace(facts.stock(p));
            places[p] = first + p % Math.min(3, facts.table().firstPlace(facts.stock(p) + 1) - first);
        }
        return new Drawn(season, Outcomes.of(facts, places).plantings());
    }

    /**
     * Promises hold in a thousand other seasons as often as they say: the mean over all kinds, weeks and ten sets of judged
     * seasons.
     */
    @Test
    void promisesHoldAsOftenAsTheySay() {
        KindTree kinds = KindTree.of(DEMO.get().season().roles());
        Mean atNine = new Mean();
        Mean atFive = new Mean();
        for (Promises promises : JUDGES.get()) {
            for (int w = 0; w < DEMO.get().season().weeks(); w++) {
                for (int node = 0; node < kinds.size(); node++) {
                    int[] free = promises.free(node, w);
                    atNine.addIfAny(TRUTH.get(), w, node, free, 0.9);
                    atFive.addIfAny(TRUTH.get(), w, node, free, 0.5);
                }
            }
        }

        assertThat(atNine.count).isGreaterThan(500);
        assertThat(atNine.value()).isBetween(0.885, 0.915);
        assertThat(atFive.value()).isBetween(0.48, 0.52);
    }

    /**
     * How often promises were kept, in the mean of those that are worth making and that the season limits: where it is how
     * much can be sold in a week that does, the most is there in more years than asked for.
     */
    private static final class Mean {
        private static final int WORTH_MAKING = 20;
        private int count;
        private double sum;

        void addIfAny(Promises truth, int week, int node, int[] free, double share) {
            int stems = Promises.most(free, share);
            long there = IntStream.of(free).filter(one -> one >= 100 * stems).count();
            if (stems >= WORTH_MAKING && there <= (share + 0.01) * free.length) {
                count++;
                sum += filled(truth, week, node, stems);
            }
        }

        double value() {
            return sum / count;
        }
    }

    /**
     * An order for two kinds at once that is filled in nine years of ten of the judged seasons is so in a thousand others
     * too: the mean over all pairs of roles and weeks.
     */
    @Test
    void ordersForTwoKindsHoldAsOftenAsTheySay() {
        KindTree kinds = KindTree.of(DEMO.get().season().roles());
        int[] roles = IntStream.range(0, kinds.size())
                .filter(node -> kinds.parent(node) < 0)
                .toArray();
        int count = 0;
        double sum = 0;
        for (Promises promises : JUDGES.get().subList(0, 3)) {
            for (int w = 0; w < DEMO.get().season().weeks(); w++) {
                for (int r = 0; r + 1 < roles.length; r++) {
                    List<Promises.Line> order = largest(promises, w, roles[r], roles[r + 1]);
                    if (!order.isEmpty()) {
                        count++;
                        sum += TRUTH.get().ask(w, order).filled();
                    }
                }
            }
        }

        assertThat(count).isGreaterThan(50);
        assertThat(sum / count).isBetween(0.885, 0.915);
    }

    /** So many of two kinds, as parts of what each could have alone, that nine years in ten just fill both. */
    private static List<Promises.Line> largest(Promises promises, int week, int one, int other) {
        int ofOne = Promises.most(promises.free(one, week), 0.5);
        int ofOther = Promises.most(promises.free(other, week), 0.5);
        List<Promises.Line> best = List.of();
        for (int share = 1; share <= 100 && ofOne > 50 && ofOther > 50; share++) {
            List<Promises.Line> order = List.of(
                    new Promises.Line(one, ofOne * (long) share), new Promises.Line(other, ofOther * (long) share));
            if (promises.ask(week, order).filled() < 0.9) {
                break;
            }
            best = order;
        }
        return best;
    }
}
