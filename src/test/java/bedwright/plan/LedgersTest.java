package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the ledgers keep of a plan, whatever way it came about: counted plainly, and by the recheck, on random farms. */
class LedgersTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, Math.min(24, Integer.getInteger("bedwright.farms", 100)));
    }

    /** A random farm with a plan that came about by many changes, some asked about and forgotten. */
    private static final class Wandered {
        final Season season;
        final PlanFacts facts;
        final Random random;
        final SeasonScore score;
        int[] places;

        Wandered(long seed) {
            season = RandomFarms.of(seed);
            facts = Seasons.facts(season);
            random = new Random(seed);
            score = new SeasonScore(facts);
            places = Search.nothingPlaced(facts);
            for (int steps = 0; steps < 4; steps++) {
                wander();
            }
        }

        /** Asks about a plan and forgets it, asks about another and takes it. */
        void wander() {
            put(draw());
            score.ask();
            score.forget();
            places = draw();
            put(places);
            score.ask();
            score.take();
            for (int p = 0; p < places.length; p++) {
                score.moved(p, places[p]);
            }
        }

        /** A plan in which what is fixed stands; now and then one near to the last. */
        int[] draw() {
            int[] next = Seasons.randomPlan(facts, random, random.nextDouble());
            boolean isNear = random.nextBoolean();
            for (int p = 0; p < next.length; p++) {
                if (facts.isFixed(p)) {
                    next[p] = facts.fixedPlace[p];
                } else if (isNear && random.nextInt(4) > 0) {
                    next[p] = score.place(p);
                }
            }
            return next;
        }

        void put(int[] next) {
            for (int p = 0; p < next.length; p++) {
                if (next[p] != score.place(p)) {
                    score.put(p, next[p]);
                }
            }
        }

        Tally tally() {
            return Recheck.of(
                    season, facts.seasons(), Outcomes.of(facts, places).plantings());
        }

        int shelves() {
            return facts.shelves.size();
        }

        /** What a place takes up of a shelf in a week, as the table has it. */
        int use(int place, int shelf, int week) {
            return new ProspectTableRow(facts, place).use(shelf, week);
        }

        boolean canGrow(int shelf) {
            return facts.shelves.get(shelf).price() > 0;
        }
    }

    /** The uses of a place, read off the table. */
    private record ProspectTableRow(PlanFacts facts, int place) {
        int use(int shelf, int week) {
            var table = facts.table;
            int row = table.row(place);
            int sum = 0;
            if (shelf == table.bed(place)) {
                sum += table.heldFrom(row) <= week && week < table.heldTo(row) ? table.millimetres(row) : 0;
            }
            if (shelf == facts.bench) {
                sum += table.benchFrom(row) <= week && week < table.benchTo(row) ? table.cells(row) : 0;
            }
            if (shelf == facts.trays) {
                sum += table.trayFrom(row) <= week && week < table.trayTo(row) ? table.cells(row) : 0;
            }
            if (table.net(row) >= 0 && shelf == facts.firstNet + table.net(row)) {
                sum += table.netFrom(row) <= week && week < table.netTo(row) ? table.netMillimetres(row) : 0;
            }
            if (shelf == facts.cover) {
                sum += table.coverFrom(row) <= week && week < table.coverTo(row) ? table.millimetres(row) : 0;
            }
            return sum;
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void eachRuleCostsWhatTheRecheckCounts(long seed) {
        Wandered farm = new Wandered(seed);
        for (int steps = 0; steps < 3; steps++) {
            farm.wander();
            Tally tally = farm.tally();
            SeasonScore score = farm.score;
            Tally.Constants same = tally.constants();

            assertThat(List.of(score.hard(), score.medium(), score.soft()))
                    .containsExactly(tally.hard(), tally.medium(), tally.soft());
            assertThat(score.seasonMoney())
                    .containsExactly(tally.seasons().stream()
                            .mapToLong(Tally.OneSeason::money)
                            .toArray());
            assertThat(List.of(
                            score.cost(Rule.MATERIAL),
                            score.cost(Rule.EXTRA_STOCK),
                            score.cost(Rule.REST_YEARS),
                            score.cost(Rule.FOLLOW_ON)))
                    .containsExactly(same.material(), same.extraStock(), same.restBroken(), same.followOn());
            assertThat(List.of(
                            score.cost(Rule.BED_ROOM),
                            score.cost(Rule.BENCH_ROOM),
                            score.cost(Rule.HOURS),
                            score.cost(Rule.CUTTING_HOURS)))
                    .containsExactly(
                            tally.over().bedRoom() * Shelf.ONE,
                            tally.over().bench() * Shelf.ONE,
                            tally.over().hours(),
                            tally.over().cuttingHours());
        }
    }

    /** The question that the score answers before any change is taken. */
    @ParameterizedTest
    @MethodSource("seeds")
    void whatWouldBeIsAnsweredAsItIsOnceItIsSo(long seed) {
        Wandered farm = new Wandered(seed);
        for (int steps = 0; steps < 10; steps++) {
            int[] next = farm.draw();
            farm.put(next);
            farm.score.ask();
            List<Long> asked = List.of(farm.score.hardAfter(), farm.score.mediumAfter(), farm.score.softAfter());
            farm.score.forget();

            SeasonScore fresh = Seasons.scoreOf(farm.facts, next);
            assertThat(asked).containsExactly(fresh.hard(), fresh.medium(), fresh.soft());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsUsedOfAShelfIsTheSumOfItsPlantings(long seed) {
        Wandered farm = new Wandered(seed);
        for (int shelf = 0; shelf < farm.shelves(); shelf++) {
            for (int w = 0; w < farm.facts.weeks; w++) {
                int sum = 0;
                for (int place : farm.places) {
                    sum += place < 0 ? 0 : farm.use(place, shelf, w);
                }
                assertThat(farm.score.room().used(shelf, w)).isEqualTo(sum);
            }
        }
    }

    /** Beside the others, one left for it: of what can't be added to, in no week more than there is, if it takes more. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aPlaceFitsIfNoWeekOfWhatItTakesIsTooFull(long seed) {
        Wandered farm = new Wandered(seed);
        for (int i = 0; i < 300; i++) {
            int place = farm.random.nextInt(farm.facts.table.places());
            int without = farm.random.nextInt(4) == 0
                    ? SeasonScore.NOWHERE
                    : farm.places[farm.random.nextInt(farm.places.length)];
            boolean fits = fits(farm, place, without);
            assertThat(farm.score.room().fits(place, without)).isEqualTo(fits);
        }
    }

    private static boolean fits(Wandered farm, int place, int without) {
        for (int shelf = 0; shelf < farm.shelves(); shelf++) {
            for (int w = 0; !farm.canGrow(shelf) && w < farm.facts.weeks; w++) {
                int use = farm.use(place, shelf, w);
                int more = use - (without < 0 ? 0 : farm.use(without, shelf, w));
                long used = farm.score.room().used(shelf, w);
                if (use > 0
                        && more > 0
                        && used + more > farm.facts.shelves.get(shelf).holds()) {
                    return false;
                }
            }
        }
        return true;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void postedChangesAreWorseIfTheyFillAWeekFurtherThanThereIs(long seed) {
        Wandered farm = new Wandered(seed);
        RoomLedger room = farm.score.room();
        for (int i = 0; i < 300; i++) {
            List<int[]> posted = post(farm, room, farm.random.nextInt(4));
            int mark = room.posted();
            boolean worse = isWorse(farm, posted);
            if (farm.random.nextBoolean()) {
                assertThat(room.isWorse()).isEqualTo(worse);
            }
            List<int[]> more = new ArrayList<>(posted);
            more.addAll(post(farm, room, 1 + farm.random.nextInt(30)));
            if (farm.random.nextBoolean()) {
                assertThat(room.isWorse()).isEqualTo(isWorse(farm, more));
            }
            room.backTo(mark);
            assertThat(room.isWorse()).isEqualTo(worse);
            room.forget();
            assertThat(room.isWorse()).isFalse();
        }
    }

    /** Posts changes of some plantings: places with a sign. */
    private static List<int[]> post(Wandered farm, RoomLedger room, int count) {
        List<int[]> posted = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int from = farm.places[farm.random.nextInt(farm.places.length)];
            if (from >= 0 && farm.random.nextBoolean()) {
                posted.add(new int[] {from, -1});
            }
            if (farm.random.nextInt(3) > 0) {
                posted.add(new int[] {farm.random.nextInt(farm.facts.table.places()), 1});
            }
        }
        posted.forEach(one -> room.post(one[0], one[1]));
        return posted;
    }

    private static boolean isWorse(Wandered farm, List<int[]> posted) {
        for (int shelf = 0; shelf < farm.shelves(); shelf++) {
            for (int w = 0; !farm.canGrow(shelf) && w < farm.facts.weeks; w++) {
                int more = 0;
                for (int[] one : posted) {
                    more += one[1] * farm.use(one[0], shelf, w);
                }
                if (more > 0
                        && farm.score.room().used(shelf, w) + more
                                > farm.facts.shelves.get(shelf).holds()) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Set-up once a job, by the week; standing work besides. */
    @ParameterizedTest
    @MethodSource("seeds")
    void workOfAWeekIsTheSumOfItsPlantingsAndJobs(long seed) {
        Wandered farm = new Wandered(seed);
        var table = farm.facts.table;
        long[] work = farm.facts.fixedWork.clone();
        Set<Integer> jobs = new HashSet<>();
        int[] lots = new int[farm.facts.placeOfJob.length];
        for (int place : farm.places) {
            if (place < 0) {
                continue;
            }
            int row = table.row(place);
            int job = farm.facts.jobOf[place];
            lots[job]++;
            boolean isNew = jobs.add(job);
            for (int i = 0; i < table.work(row).length; i++) {
                int minutes = table.work(row)[i] + (isNew ? table.setUp(row)[i] : 0);
                work[table.workFrom(row) + i] += minutes * Grains.TICKS_A_MINUTE;
            }
        }
        for (int w = 0; w < work.length; w++) {
            assertThat(farm.score.hours().work(w)).isEqualTo(work[w]);
        }
        for (int job = 0; job < lots.length; job++) {
            assertThat(farm.score.hours().lotsOfJob(job)).isEqualTo(lots[job]);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void hoursCostWhatTheRecheckCounts(long seed) {
        Wandered farm = new Wandered(seed);
        Tally tally = farm.tally();
        HoursLedger hours = farm.score.hours();
        long over = 0;
        long cuttingOver = 0;
        for (int w = 0; w < farm.facts.weeks; w++) {
            over += hours.over(w);
            cuttingOver += hours.cuttingOver(w);
        }
        for (int k = 0; k < farm.facts.seasonCount; k++) {
            long paid = 0;
            for (int w = 0; w < farm.facts.weeks; w++) {
                paid += hours.paid(w, k);
            }
            assertThat(paid).isEqualTo(tally.seasons().get(k).hoursCost());
        }
        assertThat(List.of(over, cuttingOver))
                .containsExactly(tally.over().hours(), tally.over().cuttingHours());
    }

    /** What is left of a week is what it goes beyond, below nothing; and the rate that of the hours which come next. */
    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsLeftOfAWeekAndItsRateAgreeWithWhatItCosts(long seed) {
        Wandered farm = new Wandered(seed);
        HoursLedger hours = farm.score.hours();
        PlanFacts facts = farm.facts;
        for (int w = 0; w < facts.weeks; w++) {
            long own = facts.hours.own()[w];
            assertThat((double) hours.over(w)).isEqualTo(Math.max(0, -hours.left(w)));
            assertThat((double) hours.cuttingOver(w)).isEqualTo(Math.max(0, -hours.cuttingLeft(w)));
            double all = 0;
            for (int k = 0; k < facts.seasonCount; k++) {
                double paid = hours.paid(w, k);
                boolean isHired = paid > (double) own * facts.ownRate;
                assertThat(hours.rate(w, k)).isEqualTo(isHired ? facts.hiredRate : facts.ownRate);
                all += isHired ? own + (paid - (double) own * facts.ownRate) / facts.hiredRate : paid / facts.ownRate;
            }
            assertThat(hours.allWork(w)).isCloseTo(all, within(1e-9 * all));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void cuttingOfAWeekIsThatOfTheStemsServed(long seed) {
        Wandered farm = new Wandered(seed);
        int[][][] served = Outcomes.of(farm.facts, farm.places).served();
        for (int w = 0; w < farm.facts.weeks; w++) {
            long ticks = 0;
            for (Filling filling : farm.facts.fillings) {
                for (Filling.Line line : filling.lines) {
                    ticks += filling.cutRate
                            * Arrays.stream(served[line.line()][w]).sum();
                }
            }
            assertThat(farm.score.hours().cuttingWork(w)).isEqualTo(ticks);
        }
    }

    /** A kind of which only so many can be sold lets no more through to the kind that holds it. */
    @ParameterizedTest
    @MethodSource("seeds")
    void stemsOfAKindAreItsOwnAndWhatCanBeSoldOfThoseWithin(long seed) {
        Wandered farm = new Wandered(seed);
        PlanFacts facts = farm.facts;
        var table = facts.table;
        int cells = facts.cells.size();
        long[][][] own = new long[facts.seasonCount][facts.weeks][cells];
        for (int place : farm.places) {
            for (int b = 0; place >= 0 && b < table.blocks(table.row(place)); b++) {
                int row = table.row(place);
                for (int k = 0; k < facts.seasonCount; k++) {
                    own[k][table.blockWeek(row, b)][facts.cells.of(table.blockNode(row, b))] +=
                            table.stems(row)[b * facts.seasonCount + k];
                }
            }
        }
        for (int w = 0; w < facts.weeks; w++) {
            long[] all = new long[cells];
            for (int k = 0; k < facts.seasonCount; k++) {
                long[] sums = own[k][w].clone();
                for (int c = cells - 1; c >= 0; c--) {
                    all[c] += sums[c];
                    if (facts.cells.parent(c) >= 0) {
                        sums[facts.cells.parent(c)] += Math.min(sums[c], facts.kinds.mostAWeek(facts.cells.node(c)));
                    }
                }
            }
            for (int c = 0; c < cells; c++) {
                assertThat(farm.score.stems().stems(c, w)).isEqualTo(all[c]);
            }
        }
    }

    /** By them a search knows where to look again. */
    @ParameterizedTest
    @MethodSource("seeds")
    void whatAPlantingThatMovedTouchesIsNewAndNothingElse(long seed) {
        Wandered farm = new Wandered(seed);
        PlanFacts facts = farm.facts;
        var table = facts.table;
        StemLedger stems = farm.score.stems();
        HoursLedger hours = farm.score.hours();
        stems.forgetNew();
        hours.forgetNew();
        int planting = farm.random.nextInt(farm.places.length);
        int from = farm.places[planting];
        int stock = facts.stock(planting);
        int first = table.firstPlace(stock);
        int to = first == table.firstPlace(stock + 1)
                ? SeasonScore.NOWHERE
                : first + farm.random.nextInt(table.firstPlace(stock + 1) - first);
        farm.score.settle(planting, to);

        Set<Integer> cells = new HashSet<>();
        Set<Integer> weeks = new HashSet<>();
        for (int place : from == to ? new int[0] : new int[] {from, to}) {
            for (int b = 0; place >= 0 && b < table.blocks(table.row(place)); b++) {
                int week = table.blockWeek(table.row(place), b);
                cells.add(facts.kinds.role(table.blockNode(table.row(place), b)) * facts.weeks + week);
                weeks.add(week);
            }
        }
        for (int cell = 0; cell < facts.weeks * facts.fillings.length; cell++) {
            assertThat(stems.isNew(cell)).isEqualTo(cells.contains(cell));
        }
        for (int w = 0; w < facts.weeks; w++) {
            boolean isWork = isWorkIn(table, from, w) || isWorkIn(table, to, w);
            if (weeks.contains(w)) {
                assertThat(hours.isNew(w)).isTrue();
            } else if (!isWork) {
                assertThat(hours.isNew(w)).isFalse();
            }
        }
    }

    private static boolean isWorkIn(bedwright.growth.ProspectTable table, int place, int week) {
        if (place < 0) {
            return false;
        }
        int row = table.row(place);
        return week >= table.workFrom(row) && week < table.workFrom(row) + table.work(row).length;
    }

    /** The weights make the same of the seasons' money as caution does. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theSeasonsWeighedByCautionMakeTheScore(long seed) {
        Wandered farm = new Wandered(seed);
        double[] weights = farm.score.weights();
        long[] money = farm.score.seasonMoney();
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            sum += weights[k] * money[k];
        }

        assertThat(Arrays.stream(weights).sum()).isCloseTo(weights.length, within(1e-9));
        assertThat(sum).isCloseTo(farm.score.soft(), within(2 + 1e-12 * Math.abs(sum)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void onlyAPlanThatIsTakenIsAnotherVersion(long seed) {
        Wandered farm = new Wandered(seed);
        long version = farm.score.version();
        farm.put(farm.draw());
        farm.score.ask();
        farm.score.forget();
        assertThat(farm.score.version()).isEqualTo(version);
        farm.score.settleAll(farm.draw());
        assertThat(farm.score.version()).isNotEqualTo(version);
    }
}
