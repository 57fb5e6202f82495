package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.Gust;
import bedwright.climate.PossibleSeason;
import bedwright.season.Crop;
import bedwright.season.Point;
import bedwright.season.Windbreak;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of growth in any season. */
class GrowthPropertiesTest {
    static LongStream seeds() {
        return LongStream.range(0, RandomSeasons.SEEDS);
    }

    /** Unrounded stems of the sown crop in all beds, sow weeks, sampled seasons and weeks, in this order. */
    private static List<Double> stems(SmallSeason season) {
        World world = new World(season.build(), RandomSeasons.sampled(season.build()));
        List<Double> stems = new ArrayList<>();
        for (Ground.BedClass bed : world.ground.classes()) {
            for (int sowWeek = 0; sowWeek < season.weeks; sowWeek++) {
                Grown grown = grown(world, sowWeek, bed.warmth());
                for (int k = 0; k < world.seasons.size(); k++) {
                    for (double week : Row.stemsByWeek(grown, bed, season.plants, k)) {
                        stems.add(week);
                    }
                }
            }
        }
        return stems;
    }

    private static Grown grown(World world, int sowWeek, double warmth) {
        Crop crop = world.season.crops().getFirst();
        return Grown.of(world, 0, crop.methods().getFirst(), sowWeek, null, warmth);
    }

    private static void assertNoneIsLess(List<Double> stems, List<Double> than) {
        assertThat(stems).hasSameSizeAs(than);
        assertThat(than.stream().mapToDouble(d -> d).sum())
                .as("something grows")
                .isPositive();
        for (int i = 0; i < stems.size(); i++) {
            assertThat(stems.get(i)).isGreaterThanOrEqualTo(than.get(i));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void moreThatComesUpNeverMeansFewerStems(long seed) {
        SmallSeason season = RandomSeasons.of(seed);
        List<Double> before = stems(season);
        season.crop.emergenceShare = Math.min(1, 1.1 * season.crop.emergenceShare);

        assertNoneIsLess(stems(season), before);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aWindbreakNeverAddsLossInItsLee(long seed) {
        SmallSeason season = RandomSeasons.of(seed);
        List<Double> before = stems(season);
        season.windbreaks.add(new Windbreak(
                "belt",
                new Point(-10, -50),
                new Point(-10, 150),
                2 + seed,
                Windbreak.Density.values()[(int) (seed % 4)]));

        assertNoneIsLess(stems(season), before);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aStrongerGustNeverLeavesMore(long seed) {
        Random random = new Random(seed);
        SmallSeason season = RandomSeasons.of(seed);
        season.frost = null;
        season.gusts = List.of(new Gust(70, -1, 270, 15 + random.nextInt(20)));
        double[] weaker = season.stems(0);
        season.gusts = List.of(new Gust(70, -1, 270, season.gusts.getFirst().speed() + 5));
        double[] stronger = season.stems(0);

        assertThat(Arrays.stream(weaker).sum()).as("something grows").isPositive();
        for (int w = 0; w < weaker.length; w++) {
            assertThat(stronger[w]).isLessThanOrEqualTo(weaker[w]);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aWarmerSeasonNeverPutsOffTheFirstCut(long seed) {
        SmallSeason season = RandomSeasons.of(seed);
        season.deviation = SmallSeason.filled(7 * season.weeks, 0);
        List<Integer> usual = firstCuts(season);
        season.deviation = SmallSeason.filled(7 * season.weeks, 1.5);
        List<Integer> warmer = firstCuts(season);

        assertThat(usual).as("one is cut").anyMatch(day -> day != Development.NEVER);
        for (int week = 0; week < season.weeks; week++) {
            assertThat(warmer.get(week)).isLessThanOrEqualTo(usual.get(week));
        }
    }

    /** Day of the first cut for each sow week, in the season that the fields describe. */
    private static List<Integer> firstCuts(SmallSeason season) {
        List<PossibleSeason> possible = List.of(season.possible());
        World world = new World(season.build(), possible);
        List<Integer> days = new ArrayList<>();
        for (int week = 0; week < season.weeks; week++) {
            days.add(grown(world, week, 0).developments.getFirst().firstCut);
        }
        return days;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void threeTimesThePlantsGiveThreeTimesTheStemsButForRounding(long seed) {
        SmallSeason season = RandomSeasons.of(seed);
        ProspectTable one = RandomSeasons.table(season);
        season.plants *= 3;
        ProspectTable three = RandomSeasons.table(season);

        assertThat(one.places()).isPositive();
        for (int place = 0; place < one.places(); place++) {
            int same = three.find(one.stock(place), one.bed(place), one.sowWeek(place), one.method(place));
            long stems = sum(one.stems(one.row(place)));
            int blocks = three.stems(three.row(same)).length;
            // Each figure is off by half a hundredth at most: three halves where it is multiplied, a half where not.
            assertThat(Math.abs(sum(three.stems(three.row(same))) - 3 * stems)).isLessThanOrEqualTo(2L * blocks);
        }
    }

    private static long sum(int[] numbers) {
        long sum = 0;
        for (int number : numbers) {
            sum += number;
        }
        return sum;
    }
}
