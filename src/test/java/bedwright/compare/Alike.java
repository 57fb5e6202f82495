package bedwright.compare;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.file.SeasonFile;
import bedwright.plan.Grains;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Search;
import bedwright.season.Sampling;
import bedwright.season.Season;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Whether a comparison tells apart what does not differ, no more often than it says, and what does differ, as often as is
 * to be hoped: a small season planned again and again under two names, with other seeds of everything each time.
 *
 * <p>Arguments: repetitions, moves of each search, searches of each name, fresh seasons.
 */
final class Alike {
    private Alike() {}

    private record Repeat(double[][] one, double[][] other) {}

    public static void main(String[] args) {
        int repeats = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        long moves = args.length > 1 ? Long.parseLong(args[1]) : 300;
        int searches = args.length > 2 ? Integer.parseInt(args[2]) : 5;
        int fresh = args.length > 3 ? Integer.parseInt(args[3]) : 200;
        Season season = SeasonFile.read(Path.of("problems/first-bed.json"));
        List<Repeat> all = new ArrayList<>();
        for (int i = 0; i < repeats; i++) {
            Sampling known = season.possible();
            Season its = season.with(new Sampling(known.count(), 1000L + i, known.doubt(), List.of()));
            all.add(new Repeat(
                    plans(its, i, "the one", moves, searches, fresh),
                    plans(its, i, "the other", moves, searches, fresh)));
        }
        int told = 0;
        double squares = 0;
        for (Repeat repeat : all) {
            Difference found = Difference.of(repeat.one(), repeat.other());
            told += found.isTold() ? 1 : 0;
            squares += found.mean() * found.mean();
        }
        double error = Math.sqrt(squares / repeats);
        System.out.printf(
                Locale.ROOT,
                "Alike, told apart all the same: %d of %d (the difference strays by %.2f)%n",
                told,
                repeats,
                Grains.toMoney(season, error));
        long found = all.stream()
                .filter(repeat -> isToldToBeWorse(
                        repeat, Difference.of(repeat.one(), repeat.other()).findable()))
                .count();
        System.out.printf(
                Locale.ROOT, "Worsened by what is said to be found nine times in ten: %d of %d%n", found, repeats);
        for (int times : new int[] {2, 3, 4, 5}) {
            System.out.printf(
                    Locale.ROOT,
                    "Worsened by %d times that, told apart: %d of %d%n",
                    times,
                    all.stream()
                            .filter(repeat -> isToldToBeWorse(repeat, times * error))
                            .count(),
                    repeats);
        }
    }

    private static boolean isToldToBeWorse(Repeat repeat, double by) {
        double[][] worse = new double[repeat.other().length][];
        for (int r = 0; r < worse.length; r++) {
            worse[r] = repeat.other()[r].clone();
            for (int k = 0; k < worse[r].length; k++) {
                worse[r][k] -= by;
            }
        }
        return Difference.of(repeat.one(), worse).low() > 0;
    }

    private static double[][] plans(Season season, int seed, String name, long moves, int searches, int fresh) {
        List<PossibleSeason> own = PossibleSeasons.of(season);
        List<PossibleSeason> others = FreshSeasons.of(season, fresh);
        PlanFacts facts = PlanFacts.of(season, own);
        double[][] money = new double[searches][fresh];
        for (int r = 0; r < searches; r++) {
            Search search = new Search(facts, new Search.Limits(SearchSeeds.of(seed, name, r + 1), null, moves));
            int[] places = search.run(Search.nothingPlaced(facts)).places();
            long[] each = Judge.outcome(season, Outcomes.of(facts, places).plantings(), others)
                    .money()
                    .season();
            for (int k = 0; k < fresh; k++) {
                money[r][k] = each[k];
            }
        }
        return money;
    }
}
