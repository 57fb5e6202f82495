package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Season;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The table as a whole, on seasons drawn from seeds. */
class ProspectTableTest {
    static LongStream seeds() {
        return LongStream.range(0, RandomSeasons.SEEDS);
    }

    private static List<List<Object>> all(ProspectTable table) {
        List<List<Object>> all = new ArrayList<>();
        for (int place = 0; place < table.places(); place++) {
            List<Object> said = RandomSeasons.place(table, place);
            said.add(table.row(place));
            all.add(said);
        }
        return all;
    }

    private static List<List<Object>> madeBy(int processors, SmallSeason season) throws Exception {
        try (ForkJoinPool pool = new ForkJoinPool(processors)) {
            return pool.submit(() -> all(RandomSeasons.table(season))).get();
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theNumberOfProcessorsDoesNotShow(long seed) throws Exception {
        SmallSeason season = RandomSeasons.of(seed);

        assertThat(madeBy(4, season)).isNotEmpty().isEqualTo(madeBy(1, season));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void findAgreesWithTheListing(long seed) {
        ProspectTable table = RandomSeasons.table(RandomSeasons.of(seed));

        assertThat(table.places()).isPositive();
        for (int place = 0; place < table.places(); place++) {
            assertThat(table.find(table.stock(place), table.bed(place), table.sowWeek(place), table.method(place)))
                    .isEqualTo(place);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void placesAlikeAreThoseThatDifferInTheirBedAlone(long seed) {
        ProspectTable table = RandomSeasons.table(RandomSeasons.of(seed));

        for (int place = 0; place < table.places(); place++) {
            for (int other = 0; other < table.places(); other++) {
                boolean isAlike = table.stock(other) == table.stock(place)
                        && table.sowWeek(other) == table.sowWeek(place)
                        && table.way(other) == table.way(place);
                assertThat(table.firstAlike(place) <= other && other < table.endAlike(place))
                        .isEqualTo(isAlike);
            }
        }
    }

    /** Beds are kept in words of 64 bits. */
    @Test
    void findTellsManyBedsApart() {
        SmallSeason season = new SmallSeason();
        season.beds.clear();
        for (int bed = 0; bed < 200; bed++) {
            // Some are workable too late for anything.
            season.beds.add(
                    bed % 7 == 3
                            ? SmallSeason.bed("Bed " + bed, bed, null, season.starts.plusYears(1), List.of(), List.of())
                            : SmallSeason.bed("Bed " + bed, bed));
        }
        ProspectTable table = RandomSeasons.table(season);

        Map<Integer, Integer> found = new HashMap<>();
        int week = table.sowWeek(0);
        for (int bed = 0; bed < 200; bed++) {
            int place = table.find(0, bed, week, 0);
            assertThat(place < 0).isEqualTo(bed % 7 == 3);
            if (place >= 0) {
                found.put(place, table.bed(place));
                assertThat(table.bed(place)).isEqualTo(bed);
                assertThat(table.sowWeek(place)).isEqualTo(week);
            }
        }
        assertThat(found).hasSize(171);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void findFindsNothingThatIsNotListed(long seed) {
        SmallSeason season = RandomSeasons.of(seed);
        ProspectTable table = RandomSeasons.table(season);
        int found = 0;
        for (int stock = 0; stock < table.stocks(); stock++) {
            for (int bed = -1; bed <= season.beds.size(); bed++) {
                for (int week = -2; week <= season.weeks + 2; week++) {
                    for (int method = -1; method < 3; method++) {
                        found += table.find(stock, bed, week, method) < 0 ? 0 : 1;
                    }
                }
            }
        }

        assertThat(found).isEqualTo(table.places());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void placesAreOrderedByStockMethodSowWeekAndBed(long seed) {
        ProspectTable table = RandomSeasons.table(RandomSeasons.of(seed));
        List<Long> order = new ArrayList<>();
        for (int p = 0; p < table.places(); p++) {
            order.add(((table.stock(p) * 100L + table.method(p)) * 100 + table.sowWeek(p)) * 100 + table.bed(p));
        }

        assertThat(order).isSorted().doesNotHaveDuplicates();
    }

    /** Beds 1 and 3 are at the same distance from the grass, in the open; 0 is nearer, 2 is in a house. */
    @ParameterizedTest
    @MethodSource("seeds")
    void onlyEqualBedsShareARow(long seed) {
        ProspectTable table = RandomSeasons.table(RandomSeasons.of(seed));
        Map<Integer, List<Integer>> beds = new HashMap<>();
        for (int place = 0; place < table.places(); place++) {
            beds.computeIfAbsent(table.row(place), row -> new ArrayList<>()).add(table.bed(place));
        }

        assertThat(beds.values())
                .isNotEmpty()
                .allSatisfy(shared -> assertThat(shared).isIn(List.of(0), List.of(2), List.of(1, 3)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsToldOfAPlantingAgreesWithItsRow(long seed) {
        SmallSeason small = RandomSeasons.of(seed);
        Season season = small.build();
        ProspectTable table = RandomSeasons.table(small);
        Prospects prospects = Prospects.of(season, RandomSeasons.sampled(season));

        assertThat(table.places()).isPositive();
        for (int place = 0; place < table.places(); place += 7) {
            Prospect told = prospects.expect(
                    table.stock(place), table.method(place), small.plants, table.bed(place), table.sowWeek(place));
            int row = table.row(place);
            assertThat(List.of(told.millimetres(), told.cells(), told.heldTo(), stems(told)))
                    .isEqualTo(List.of(table.millimetres(row), table.cells(row), table.heldTo(row), stems(table, row)));
        }
    }

    /** Week, season and stems, wherever there are any; each crop here has one kind. */
    private static List<List<Integer>> stems(Prospect told) {
        List<List<Integer>> stems = new ArrayList<>();
        for (int[][] kind : told.stems()) {
            for (int week = 0; week < kind.length; week++) {
                for (int k = 0; k < kind[week].length; k++) {
                    if (kind[week][k] > 0) {
                        stems.add(List.of(week, k, kind[week][k]));
                    }
                }
            }
        }
        return stems;
    }

    private static List<List<Integer>> stems(ProspectTable table, int row) {
        List<List<Integer>> stems = new ArrayList<>();
        for (int b = 0; b < table.blocks(row); b++) {
            for (int k = 0; k < table.seasons(); k++) {
                int given = table.stems(row)[b * table.seasons() + k];
                if (given > 0) {
                    stems.add(List.of(table.blockWeek(row, b), k, given));
                }
            }
        }
        return stems;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyShareThatSurvivesIsAShare(long seed) {
        SmallSeason small = RandomSeasons.of(seed);
        Season season = small.build();
        Prospects prospects = Prospects.of(season, RandomSeasons.sampled(season));

        for (int week = 0; week < small.weeks; week++) {
            Prospect told = prospects.expect(0, 0, small.plants, 0, week);
            assertThat(told.seasons()).allSatisfy(left -> assertThat(left.all()).isBetween(0.0, 1.0));
        }
    }
}
