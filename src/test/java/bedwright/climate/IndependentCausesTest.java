package bedwright.climate;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Sampling;
import bedwright.season.Site;
import bedwright.season.Sureness;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Season model, section 6: all seasons from one seed, each cause from its own stream. */
class IndependentCausesTest {
    private static final int COUNT = 20;
    private static final long SEED = 4;

    private static List<PossibleSeason> sample(Farm farm) {
        return PossibleSeasons.sample(farm.season(), COUNT, SEED);
    }

    /** A season's draws by cause, as something that can be compared. */
    private static Map<String, Object> draws(PossibleSeason season) {
        Map<String, Object> draws = new LinkedHashMap<>();
        draws.put("temperature", boxed(season.deviation()));
        draws.put("gusts", season.gusts());
        draws.put("pests", boxed(season.pestYear()));
        draws.put("spring frost", season.springFrost());
        draws.put("autumn frost", season.autumnFrost());
        List<Boolean> bad = new ArrayList<>();
        for (boolean week : season.badSeedBed()) {
            bad.add(week);
        }
        draws.put("seed-bed", bad);
        draws.put("winter", season.hardWinter());
        draws.put("first cut", boxed(season.firstCutFactor()));
        draws.put("stems", boxed(season.stemsFactor()));
        return draws;
    }

    private static List<Double> boxed(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }

    /** The causes that differ in any of the seasons. */
    private static Set<String> differing(Farm changed) {
        List<PossibleSeason> before = sample(new Farm());
        List<PossibleSeason> after = sample(changed);
        Set<String> differing = new TreeSet<>();
        for (int k = 0; k < COUNT; k++) {
            Map<String, Object> was = draws(before.get(k));
            Map<String, Object> is = draws(after.get(k));
            was.forEach((cause, draw) -> {
                if (!draw.equals(is.get(cause))) {
                    differing.add(cause);
                }
            });
        }
        return differing;
    }

    private static Arguments change(String what, Set<String> changes, Consumer<Farm> change) {
        return Arguments.of(what, changes, change);
    }

    static Stream<Arguments> changes() {
        return Stream.of(
                change("year's shift", Set.of("temperature"), f -> f.spread = new Site.TemperatureSpread(2, 3.2, 0.8)),
                change("day's spread", Set.of("temperature"), f -> f.spread = new Site.TemperatureSpread(0.8, 5, 0.8)),
                change("memory", Set.of("temperature"), f -> f.spread = new Site.TemperatureSpread(0.8, 3.2, 0.5)),
                change("no storms", Set.of("gusts"), f -> f.storms = List.of()),
                change("more storms", Set.of("gusts"), f -> f.storms = List.of(Farm.side(270, 2), Farm.side(0, 1))),
                change("no pests", Set.of("pests"), f -> f.pests = List.of()),
                change(
                        "pests' spread",
                        Set.of("pests"),
                        f -> f.pests = List.of(Farm.pest("slugs", 1), Farm.pest("grasshoppers", 0.1))),
                change(
                        "frost dates",
                        Set.of(),
                        f -> f.frost = Farm.frost("--03-24", "--04-05", "--04-17", "--10-20", "--11-02", "--11-15")),
                change("no frost", Set.of(), f -> f.frost = null),
                change("seed-beds", Set.of("seed-bed"), f -> f.badSeedBed = new Site.BadSeedBed(0.6, 0.5)),
                change("winters", Set.of("winter"), f -> f.hardWinter = new Site.HardWinter(0.8, 0.5)),
                change(
                        "doubt of first cuts",
                        Set.of("first cut"),
                        f -> f.doubt = new Sampling.Doubt(new Sampling.BySureness(0.3, 0.4, 0.5), f.doubt.stems())),
                change(
                        "doubt of stems",
                        Set.of("stems"),
                        f -> f.doubt = new Sampling.Doubt(f.doubt.firstCut(), new Sampling.BySureness(0.3, 0.4, 0.5))),
                change(
                        "sureness of first cuts",
                        Set.of("first cut"),
                        f -> f.crops = List.of(
                                Farm.crop("zinnia", Sureness.WEAK, Sureness.FAIR),
                                Farm.crop("celosia", Sureness.WEAK, Sureness.WEAK))),
                change("no crops", Set.of("first cut", "stems"), f -> f.crops = List.of()),
                change("normals", Set.of(), f -> f.meanMax = Collections.nCopies(12, 40.0)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("changes")
    void changingOneCauseLeavesTheOthersAsTheyWere(String what, Set<String> expected, Consumer<Farm> change) {
        Farm changed = new Farm();
        change.accept(changed);
        assertThat(differing(changed)).isEqualTo(new TreeSet<>(expected));
    }

    /** Gusts of one side without its number, which may shift. */
    private static List<List<Gust>> gustsFrom(Farm farm, double from) {
        return sample(farm).stream()
                .map(s -> s.gusts().stream().filter(g -> g.from() == from).toList())
                .toList();
    }

    @Test
    void oneMoreSideLeavesTheGustsOfTheOthers() {
        Farm more = new Farm();
        more.storms = List.of(Farm.side(270, 0.2), Farm.side(0, 0.1), Farm.side(200, 1));
        assertThat(gustsFrom(more, 270)).isEqualTo(gustsFrom(new Farm(), 270));
    }

    @Test
    void aMonthsRateLeavesTheGustsOfOtherMonths() {
        List<Double> rates = new ArrayList<>(Collections.nCopies(12, 0.2));
        rates.set(6, 3.0);
        Farm stormyJuly = new Farm();
        stormyJuly.storms = List.of(new Site.StormSide(270, rates, 21, 2), Farm.side(0, 0.1));
        int endOfJuly = 7 * 22;
        assertThat(sample(stormyJuly))
                .map(s -> s.gusts().stream().filter(g -> g.day() >= endOfJuly).toList())
                .isEqualTo(sample(new Farm()).stream()
                        .map(s -> s.gusts().stream()
                                .filter(g -> g.day() >= endOfJuly)
                                .toList())
                        .toList());
    }

    @Test
    void oneMorePestLeavesTheOthersYears() {
        Farm more = new Farm();
        more.pests = List.of(Farm.pest("aphids", 0.7), Farm.pest("slugs", 0.5), Farm.pest("grasshoppers", 0.8));
        assertThat(sample(more))
                .map(s -> List.of(s.pestYear()[1], s.pestYear()[2]))
                .isEqualTo(sample(new Farm()).stream()
                        .map(s -> List.of(s.pestYear()[0], s.pestYear()[1]))
                        .toList());
    }

    @Test
    void oneMoreCropLeavesTheOthersDoubts() {
        Farm more = new Farm();
        more.crops = List.of(Farm.crop("statice", Sureness.WEAK, Sureness.WEAK), more.crops.get(0), more.crops.get(1));
        assertThat(sample(more))
                .map(s -> List.of(s.firstCutFactor()[1], s.stemsFactor()[2]))
                .isEqualTo(sample(new Farm()).stream()
                        .map(s -> List.of(s.firstCutFactor()[0], s.stemsFactor()[1]))
                        .toList());
    }

    @Test
    void aLongerSeasonStartsAsTheShorterOne() {
        Farm longer = new Farm();
        longer.weeks = 50;
        assertThat(sample(longer))
                .map(s -> boxed(Arrays.copyOf(s.deviation(), 280)))
                .isEqualTo(sample(new Farm()).stream()
                        .map(s -> boxed(s.deviation()))
                        .toList());
    }

    @Test
    void theFirstSeasonsAreTheSameWhateverTheCount() {
        assertThat(PossibleSeasons.sample(new Farm().season(), 50, SEED).subList(0, COUNT))
                .usingRecursiveComparison()
                .isEqualTo(sample(new Farm()));
    }

    @Test
    void anotherSeedChangesEveryCause() {
        List<PossibleSeason> other = PossibleSeasons.sample(new Farm().season(), COUNT, SEED + 1);
        Map<String, List<Object>> was = new LinkedHashMap<>();
        Map<String, List<Object>> is = new LinkedHashMap<>();
        sample(new Farm())
                .forEach(s -> draws(s).forEach((cause, draw) ->
                        was.computeIfAbsent(cause, c -> new ArrayList<>()).add(draw)));
        other.forEach(s -> draws(s).forEach((cause, draw) ->
                is.computeIfAbsent(cause, c -> new ArrayList<>()).add(draw)));
        assertThat(was).allSatisfy((cause, draws) -> assertThat(is.get(cause)).isNotEqualTo(draws));
    }
}
