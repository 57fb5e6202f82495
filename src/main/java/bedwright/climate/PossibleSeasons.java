package bedwright.climate;

import bedwright.season.Crop;
import bedwright.season.Pest;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.UnderWay;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Draws the possible seasons of a season file. */
public final class PossibleSeasons {
    /** Number of the first fresh season; those planned on are at most a thousand, numbered from 0. */
    public static final int FIRST_FRESH = 1_000_000;

    private PossibleSeasons() {}

    /**
     * The seasons that a plan is judged over: those given outright if there are any, in their order; else the normal
     * season alone if the count is 1; else so many sampled from the seed.
     */
    public static List<PossibleSeason> of(Season season) {
        Sampling possible = season.possible();
        if (!possible.given().isEmpty()) {
            return possible.given().stream().map(given -> given(season, given)).toList();
        }
        return possible.count() == 1 ? List.of(normal(season)) : sample(season, possible.count(), possible.seed());
    }

    /** The normal season: as usual but for the weather that was seen. */
    public static PossibleSeason normal(Season season) {
        return new PossibleSeason(
                true,
                seen(season, new double[season.days()]),
                seen(season, List.of()),
                ones(season.pests().size()),
                0,
                0,
                new boolean[season.weeks()],
                false,
                ones(season.crops().size()),
                ones(season.crops().size()));
    }

    /**
     * Samples seasons, each cause from a stream of its own, so that changing one cause (or its parameters) leaves the
     * draws of the others as they were, and the first n seasons are the same whatever the count. Each pest and each
     * crop, told apart by its name, and each storm side, by its place in the list, has a stream of its own too. A seed
     * gives the same seasons on every JVM.
     *
     * @param count at least 1; unlike {@link #of}, 1 samples one season
     */
    public static List<PossibleSeason> sample(Season season, int count, long seed) {
        if (count < 1) {
            throw new IllegalArgumentException("At least 1 season is sampled, not " + count);
        }
        SeasonSampler sampler = new SeasonSampler(season, seed);
        return IntStream.range(0, count).mapToObj(sampler::sample).toList();
    }

    /**
     * Samples seasons that no plan was made on, to judge plans by: as {@link #sample} does, but numbered from {@link
     * #FIRST_FRESH} on, where those planned on never come, whatever their seed.
     */
    public static List<PossibleSeason> fresh(Season season, int count, long seed) {
        if (count < 1) {
            throw new IllegalArgumentException("At least 1 season is sampled, not " + count);
        }
        SeasonSampler sampler = new SeasonSampler(season, seed);
        return IntStream.range(0, count)
                .mapToObj(k -> sampler.sample(FIRST_FRESH + k))
                .toList();
    }

    /** A season as usual, but for gusts that blow on days of it. */
    public static PossibleSeason usualWith(Season season, List<Sampling.GivenGust> gusts) {
        return given(
                season,
                new Sampling.GivenSeason(
                        null, 0, List.of(), gusts, Map.of(), null, null, List.of(), false, Map.of(), Map.of()));
    }

    /** What is not said is as normal; gusts outside the season's days don't count. */
    private static PossibleSeason given(Season season, Sampling.GivenSeason given) {
        Optional<FrostDates> frost = FrostDates.of(season);
        return new PossibleSeason(
                false,
                deviation(season, given),
                gusts(season, given.gusts()),
                factors(season.pests().stream().map(Pest::name), given.pests()),
                deviate(season, frost, given.lastSpringFrost(), FrostDates::springDeviateOn),
                deviate(season, frost, given.firstAutumnFrost(), FrostDates::autumnDeviateOn),
                badSeedBeds(season, given.badSeedBeds()),
                given.hardWinter(),
                factors(season.crops().stream().map(Crop::name), given.firstCut()),
                factors(season.crops().stream().map(Crop::name), given.yields()));
    }

    private static double[] deviation(Season season, Sampling.GivenSeason given) {
        double[] deviation = new double[season.days()];
        for (int d = 0; d < deviation.length; d++) {
            deviation[d] =
                    given.warmer() + (d < given.days().size() ? given.days().get(d) : 0);
        }
        return seen(season, deviation);
    }

    /** Writes the weather that was seen over what is drawn or usual. */
    static double[] seen(Season season, double[] deviation) {
        UnderWay underWay = season.underWay();
        if (underWay != null) {
            for (UnderWay.DaySeen day : underWay.weather()) {
                int d = season.dayOf(day.on());
                if (d >= 0 && d < deviation.length) {
                    deviation[d] = day.warmer();
                }
            }
        }
        return deviation;
    }

    private static List<Gust> gusts(Season season, List<Sampling.GivenGust> given) {
        return seen(season, of(season, given));
    }

    /** Lets the gusts that were seen blow on their days instead of those that are drawn or given. */
    static List<Gust> seen(Season season, List<Gust> gusts) {
        UnderWay underWay = season.underWay();
        if (underWay == null || underWay.gusts().isEmpty()) {
            return gusts;
        }
        List<Gust> seen = of(season, underWay.gusts());
        Set<Integer> days = seen.stream().map(Gust::day).collect(Collectors.toSet());
        return Stream.concat(gusts.stream().filter(gust -> !days.contains(gust.day())), seen.stream())
                .sorted(Comparator.comparingInt(Gust::day))
                .toList();
    }

    private static List<Gust> of(Season season, List<Sampling.GivenGust> given) {
        return given.stream()
                .map(gust -> new Gust(season.dayOf(gust.on()), -1, gust.from(), gust.speed()))
                .filter(gust -> gust.day() >= 0 && gust.day() < season.days())
                .sorted(Comparator.comparingInt(Gust::day))
                .toList();
    }

    private static double deviate(
            Season season,
            Optional<FrostDates> frost,
            @Nullable LocalDate date,
            ToDoubleBiFunction<FrostDates, Integer> deviateOn) {
        return date == null || frost.isEmpty() ? 0 : deviateOn.applyAsDouble(frost.get(), season.dayOf(date));
    }

    private static boolean[] badSeedBeds(Season season, List<LocalDate> weeks) {
        boolean[] bad = new boolean[season.weeks()];
        for (LocalDate date : weeks) {
            int week = season.weekOf(date);
            if (week >= 0 && week < bad.length) {
                bad[week] = true;
            }
        }
        return bad;
    }

    private static double[] factors(Stream<String> names, Map<String, Double> given) {
        return names.mapToDouble(name -> given.getOrDefault(name, 1.0)).toArray();
    }

    private static double[] ones(int count) {
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        return ones;
    }
}
