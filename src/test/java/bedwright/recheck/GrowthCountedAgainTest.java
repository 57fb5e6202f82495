package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.PossibleSeason;
import bedwright.growth.Barring;
import bedwright.growth.Course;
import bedwright.growth.Courses;
import bedwright.growth.Prospect;
import bedwright.growth.ProspectTable;
import bedwright.growth.Prospects;
import bedwright.growth.Spot;
import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What growth tells of single places against the recheck, which works it out again by other formulas: in drawn seasons,
 * of every crop, way, bed and week.
 */
class GrowthCountedAgainTest {
    private static final int SEEDS = Integer.getInteger("bedwright.drawn", 30);
    private static final double CLOSE = 1e-9;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, SEEDS);
    }

    /** A drawn season, its table, and the recheck's way to the same figures. */
    private static final class Both {
        final Season season;
        final List<PossibleSeason> possible;
        final ProspectTable table;
        final Facts facts;
        final Stems stems;

        Both(long seed) {
            this(new DrawnSeason(seed));
        }

        Both(DrawnSeason drawn) {
            season = drawn.season;
            possible = drawn.possible;
            table = ProspectTable.of(season, possible);
            facts = new Facts(season);
            stems = new Stems(facts);
        }

        int beds() {
            return facts.beds.size();
        }

        int methods(int stock) {
            return season.crops().get(stock).methods().size();
        }

        /** A lot of a stock of the pool, which here is numbered as its crop. */
        Placed lot(int stock, int bed, int week, int method) {
            Crop crop = season.crops().get(stock);
            Lots lots = season.pool().get(stock);
            return new Placed(
                    1, stock, crop, crop.methods().get(method), facts.beds.get(bed), week, null, 1, lots.plants());
        }

        /** What stands or is to stand at a place of the table. */
        Placed at(int place) {
            int stock = table.stock(place);
            int pool = season.pool().size();
            int week = table.sowWeek(place);
            if (stock < pool) {
                return lot(stock, table.bed(place), week, table.method(place));
            }
            Standing standing = season.standing().get(stock - pool);
            int crop = facts.cropIndex(standing.crop());
            return new Placed(
                    1,
                    crop,
                    season.crops().get(crop),
                    season.crops().get(crop).methods().get(table.method(place)),
                    facts.beds.get(table.bed(place)),
                    week,
                    standing,
                    table.until(place) == ProspectTable.TO_ITS_END ? Facts.NEVER : table.until(place),
                    1,
                    standing.plants());
        }

        double[] ofAPlant(Placed placed, PossibleSeason possible) {
            return placed.isWritten()
                    ? new double[facts.weeks()]
                    : stems.ofAPlant(placed, possible, new Calendar(facts, placed));
        }

        /** Hundredths by possible season, kind and week. */
        List<long[][]> stems(Placed placed) {
            return possible.stream()
                    .map(one -> stems.ofALot(placed, ofAPlant(placed, one)))
                    .toList();
        }
    }

    /** Else the tests below would hold for want of places. */
    @Test
    void mostOfTheDrawnSeasonsOfferPlaces() {
        assertThat(seeds().filter(seed -> new Both(seed).table.places() > 50).count())
                .isGreaterThan(SEEDS / 2);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyPlaceTakesAndGivesWhatTheRecheckCounts(long seed) {
        Both both = new Both(seed);

        for (int place = 0; place < both.table.places(); place++) {
            int row = both.table.row(place);
            Placed placed = both.at(place);
            String where = both.table.spot(place).toString();
            assertThat(use(both, row)).as(where).isEqualTo(use(both, placed));
            assertThat(stems(both, row)).as(where).isDeepEqualTo(stems(both, placed));
        }
    }

    /** Kept to its end, or pulled in any week before. */
    @ParameterizedTest
    @MethodSource("seeds")
    void whatStandsInASeasonUnderWayTakesAndGivesWhatTheRecheckCounts(long seed) {
        Both both = new Both(new DrawnSeason(seed, true));

        int pool = both.season.pool().size();
        int last = both.table.firstPlace(pool + both.season.standing().size());
        for (int place = both.table.firstPlace(pool); place < last; place++) {
            int row = both.table.row(place);
            Placed placed = both.at(place);
            String where = both.table.spot(place).toString();
            assertThat(use(both, row)).as(where).isEqualTo(use(both, placed));
            assertThat(stems(both, row)).as(where).isDeepEqualTo(stems(both, placed));
        }
    }

    /** By week: bed, bench, trays, each net, cover, minutes of work and of set-up; and the material. */
    private static List<List<Long>> use(Both both, int row) {
        ProspectTable table = both.table;
        List<List<Long>> all = new ArrayList<>();
        for (int w = 0; w < both.facts.weeks(); w++) {
            List<Long> week = new ArrayList<>();
            week.add(inWeeks(w, table.heldFrom(row), table.heldTo(row)) * table.millimetres(row));
            week.add(inWeeks(w, table.benchFrom(row), table.benchTo(row)) * table.cells(row));
            week.add(inWeeks(w, table.trayFrom(row), table.trayTo(row)) * table.cells(row));
            for (int net = 0; net < both.season.stock().nets().size(); net++) {
                boolean itIs = table.net(row) == net;
                week.add(itIs ? inWeeks(w, table.netFrom(row), table.netTo(row)) * table.netMillimetres(row) : 0);
            }
            week.add(inWeeks(w, table.coverFrom(row), table.coverTo(row)) * table.millimetres(row));
            int at = w - table.workFrom(row);
            boolean isWork = at >= 0 && at < table.work(row).length;
            week.add(isWork ? table.work(row)[at] : 0L);
            week.add(isWork ? table.setUp(row)[at] : 0L);
            all.add(week);
        }
        all.add(List.of(table.material(row)));
        return all;
    }

    private static long inWeeks(int week, int from, int to) {
        return from <= week && week < to ? 1 : 0;
    }

    private static List<List<Long>> use(Both both, Placed placed) {
        Calendar calendar = new Calendar(both.facts, placed);
        Use use = new Use(both.facts, placed, calendar);
        Work work = new Work(both.facts, placed, calendar);
        List<List<Long>> all = new ArrayList<>();
        for (int w = 0; w < both.facts.weeks(); w++) {
            List<Long> week = new ArrayList<>(List.of(use.bed(w), use.bench(w), use.trays(w)));
            for (var net : both.season.stock().nets()) {
                week.add(use.net(net.name(), w));
            }
            week.add(use.cover(w));
            week.add(work.ofALot(w) / Units.TICKS_A_MINUTE);
            week.add(work.settingUp(w) / Units.TICKS_A_MINUTE);
            all.add(week);
        }
        all.add(List.of(use.material() / Units.GRAINS));
        return all;
    }

    /** Hundredths by possible season, kind and week. */
    private static long[][][] stems(Both both, int row) {
        ProspectTable table = both.table;
        long[][][] stems = new long[both.possible.size()][both.facts.kinds.size()][both.facts.weeks()];
        for (int k = 0; k < stems.length; k++) {
            for (int b = 0; b < table.blocks(row); b++) {
                stems[k][table.blockNode(row, b)][table.blockWeek(row, b)] +=
                        table.stems(row)[b * both.possible.size() + k];
            }
        }
        return stems;
    }

    private static long[][][] stems(Both both, Placed placed) {
        return both.stems(placed).toArray(long[][][]::new);
    }

    /** One that the recheck refuses is not offered; one that it accepts is, if any season gives a stem there. */
    @ParameterizedTest
    @MethodSource("seeds")
    void exactlyThePlacesThatTheRecheckAcceptsAreOfferedIfTheyGiveAStem(long seed) {
        Both both = new Both(seed);
        Barring barring = Barring.of(both.season, both.possible);
        for (int stock = 0; stock < both.season.pool().size(); stock++) {
            for (int method = 0; method < both.methods(stock); method++) {
                for (int bed = 0; bed < both.beds(); bed++) {
                    for (int week = -1; week < both.facts.weeks(); week++) {
                        boolean isOffered = isAccepted(both, stock, bed, week, method)
                                && givesAStem(both, both.lot(stock, bed, week, method));
                        Spot spot = new Spot(stock, bed, week, method);
                        assertThat(both.table.find(stock, bed, week, method) >= 0)
                                .as(spot.toString())
                                .isEqualTo(isOffered);
                        assertThat(barring.why(spot).isEmpty())
                                .as(spot.toString())
                                .isEqualTo(isOffered);
                    }
                }
            }
        }
    }

    private static boolean isAccepted(Both both, int stock, int bed, int week, int method) {
        Placed placed = both.lot(stock, bed, week, method);
        KeptPlanting kept = new KeptPlanting(
                1,
                placed.crop().name(),
                placed.method().name(),
                placed.bed().name(),
                both.season.weekStart(week),
                stock + 1,
                null,
                1,
                placed.plants());
        return !new Offer(both.facts).accept(List.of(kept)).isEmpty();
    }

    private static boolean givesAStem(Both both, Placed placed) {
        for (long[][] kinds : both.stems(placed)) {
            for (long[] weeks : kinds) {
                if (Arrays.stream(weeks).anyMatch(stems -> stems != 0)) {
                    return true;
                }
            }
        }
        return false;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsToldOfAPlantingIsWhatTheRecheckFinds(long seed) {
        Both both = new Both(seed);
        Prospects prospects = Prospects.of(both.season, both.possible);
        for (int stock = 0; stock < both.season.pool().size(); stock++) {
            for (int method = 0; method < both.methods(stock); method++) {
                for (int week = 0; week < both.facts.weeks(); week++) {
                    int bed = week % both.beds();
                    Placed placed = both.lot(stock, bed, week, method);
                    Prospect told = prospects.expect(stock, method, placed.plants(), bed, week);
                    assertThat(days(told)).as(both.table + " " + placed).isEqualTo(days(both, placed));
                    assertSurvives(both, placed, told.usual(), both.facts.normal());
                    for (int k = 0; k < both.possible.size(); k++) {
                        assertSurvives(both, placed, told.seasons().get(k), both.possible.get(k));
                    }
                }
            }
        }
    }

    private static List<Integer> days(Prospect told) {
        List<Integer> days = new ArrayList<>(List.of(
                told.sowDay(),
                told.groundDay(),
                told.emergence(),
                told.pinch(),
                told.firstCut(),
                told.lastCutWeek(),
                told.heldTo()));
        Arrays.stream(told.firstCuts()).forEach(days::add);
        return days;
    }

    private static List<Integer> days(Both both, Placed placed) {
        Calendar calendar = new Calendar(both.facts, placed);
        var normal = calendar.normal;
        List<Integer> days = new ArrayList<>(List.of(
                placed.sowDay(both.season),
                placed.groundDay(both.season),
                orNone(normal.emergence),
                placed.method().pinched() ? orNone(normal.pinch) : Prospect.NONE,
                orNone(normal.firstCut),
                orNone(calendar.lastCut),
                calendar.lastHeld + 1));
        both.possible.forEach(one -> days.add(orNone(new bedwright.recheck.Course(both.facts, placed, one).firstCut)));
        return days;
    }

    private static int orNone(int day) {
        return day == Facts.NEVER ? Prospect.NONE : day;
    }

    /** Weekly shares are weighed by what each week would give. */
    private static void assertSurvives(Both both, Placed placed, Prospect.Surviving told, PossibleSeason season) {
        if (season.normal() && placed.crop().heat() != null) {
            // How heat cuts the cutting short is not in the weights of the normal season.
            return;
        }
        Calendar calendar = new Calendar(both.facts, placed);
        var course = new bedwright.recheck.Course(both.facts, placed, season);
        if (course.emergence == Facts.NEVER) {
            assertThat(told.all()).isZero();
            return;
        }
        Frosts frosts = new Frosts(both.facts, placed, season, course, calendar);
        Pests pests = new Pests(both.facts, placed, season, course, calendar);
        double[] standing = new Storms(both.facts, placed, season, course).standing();
        double[] shares = Cutting.shares(both.facts, placed, season, course);
        int last = season.normal() ? both.facts.weeks() - 1 : calendar.lastStems;
        IntStream.range(last + 1, shares.length).forEach(w -> shares[w] = 0);
        double all = Arrays.stream(shares).sum();
        double autumn = 0;
        double storms = 0;
        double blooms = 0;
        for (int w = 0; w < shares.length; w++) {
            autumn += shares[w] * frosts.autumn(w);
            storms += shares[w] * standing[w];
            blooms += shares[w] * pests.blooms(w);
        }
        boolean isCut = all > 0;
        assertThat(told.springOrWinter()).as("%s", placed).isCloseTo(frosts.winterAndSpring(), within(CLOSE));
        if (isCut) {
            assertThat(told.autumn()).as("%s", placed).isCloseTo(autumn / all, within(CLOSE));
            assertThat(told.storms()).as("%s", placed).isCloseTo(storms / all, within(CLOSE));
        }
        double eaten = told.pests().values().stream().reduce(1.0, (a, b) -> a * b);
        if (both.season.pests().stream()
                        .filter(p -> p.takes().contains(bedwright.season.Pest.Takes.BLOOMS))
                        .count()
                <= 1) {
            assertThat(eaten)
                    .as("%s", placed)
                    .isCloseTo(pests.seedAndSeedlings() * (isCut ? blooms / all : 1), within(CLOSE));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theCourseOfALotIsWhatTheRecheckFinds(long seed) {
        Both both = new Both(seed);
        Courses courses = Courses.of(both.season);
        for (int place = 0; place < both.table.places(); place += 3) {
            Placed placed = both.at(place);
            if (placed.isWritten()) {
                continue;
            }
            Course told = courses.course(both.table.spot(place));
            Calendar calendar = new Calendar(both.facts, placed);
            var normal = calendar.normal;
            Method method = placed.method();
            assertThat(List.of(told.emergence(), told.pinch(), told.firstCut()))
                    .as("%s", placed)
                    .containsExactly(
                            orNone(normal.emergence),
                            method.pinched() ? orNone(normal.pinch) : Prospect.NONE,
                            orNone(normal.firstCut));
            assertThat(minutes(both, told)).as("%s", placed).isEqualTo(minutes(both, placed));
        }
    }

    /** Whole minutes of work by week. */
    private static List<Long> minutes(Both both, Course told) {
        double[] minutes = new double[both.facts.weeks()];
        told.tasks().forEach(task -> minutes[task.week()] += task.minutes());
        return Arrays.stream(minutes).mapToObj(Units::wholeMinutes).toList();
    }

    private static List<Long> minutes(Both both, Placed placed) {
        Work work = new Work(both.facts, placed, new Calendar(both.facts, placed));
        return IntStream.range(0, both.facts.weeks()).mapToObj(work::ofALot).toList();
    }
}
