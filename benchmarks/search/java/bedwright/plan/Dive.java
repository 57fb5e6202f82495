package bedwright.plan;

import ai.timefold.solver.core.config.solver.EnvironmentMode;
import bedwright.climate.PossibleSeasons;
import bedwright.season.Season;
import java.time.Duration;
import java.util.Locale;

/**
 * From the relaxation down to whole lots: prices are looked for, the parts of lots that answer them are made whole lots
 * ({@link LotsToPlan}), the rest is filled up by gain, and the search polishes it from a share of its usual temperature;
 * beside it, the usual search from nothing over the same time, prices and all. (The linear program itself HiGHS does not solve
 * for its parts of lots by the interior point alone, only for its prices.)
 *
 * <p>Arguments: {@code problem} (demo), {@code prices} (seconds to look for prices, of the time; 20), {@code seconds} (60),
 * {@code warmth} (shares of the usual temperature, commas between; 0.2), {@code seeds} (2), {@code first} (1), {@code usual}
 * (whether the usual search runs, too; yes), {@code out} (the folder with the prices of the problem that tell the gap),
 * {@code keep} (yes: adds a row to {@code other-ways.csv} there; no), {@code beside} (what else the machine does; nothing),
 * {@code commit}.
 */
public final class Dive {
    private final BenchArgs given;
    private final String problem;
    private final Season season;
    private final PlanFacts facts;
    private final Ceiling ceiling;

    private Dive(BenchArgs given) {
        this.given = given;
        problem = given.text("problem", "demo");
        season = ProblemFamily.named(problem);
        facts = PlanFacts.of(season, PossibleSeasons.of(season));
        Relaxation relaxed = new Relaxation(facts);
        KeptPrices judge = new KeptPrices(OtherWays.folder(given), problem);
        ceiling = Ceiling.of(facts, relaxed, missing -> judge.of(season, facts, relaxed, missing, 60));
    }

    public static void main(String[] args) {
        BenchArgs given = new BenchArgs(
                args, "problem", "prices", "seconds", "warmth", "seeds", "first", "usual", "out", "keep", "beside",
                "commit");
        System.out.println(DemoFarm.heading(given.text("commit", "not named")));
        new Dive(given).run();
    }

    private void run() {
        int seconds = given.number("seconds", 60);
        int first = given.number("first", 1);
        System.out.println(OtherWays.BEGINS + problem);
        for (int seed = first; seed < first + given.number("seeds", 2); seed++) {
            if (given.text("usual", "yes").equals("yes")) {
                say(
                        "seed " + seed + ", from nothing",
                        new Search(facts, limits(seed, Duration.ofSeconds(seconds))).run(Search.nothingPlaced(facts)));
            }
            for (String warmth : given.list("warmth", "0.2")) {
                down(seed, seconds, given.number("prices", 20), Double.parseDouble(warmth));
            }
        }
    }

    private static Search.Limits limits(int seed, Duration time) {
        return new Search.Limits(seed, time, null);
    }

    private void down(int seed, int seconds, int priceSeconds, double warmth) {
        long began = System.nanoTime();
        PriceSearch prices = new PriceSearch(facts, 0);
        long end = began + Duration.ofSeconds(priceSeconds).toNanos();
        prices.run(Long.MAX_VALUE, () -> System.nanoTime() > end);
        String name = "seed " + seed + ", dived";
        System.out.printf(Locale.ROOT, "%s after %.0f s%n", name, (System.nanoTime() - began) / 1e9);
        LotsToPlan.Made made = LotsToPlan.parts(facts, prices.lots());
        int[] filled = Opening.fill(facts, made.places(), () -> false);
        say(name + ", " + made.leftOut() + " lots left out", Search.Found.of(facts, made.places()));
        say(name + " and filled", Search.Found.of(facts, filled));
        Duration left = Duration.ofMillis(1000L * seconds - (System.nanoTime() - began) / 1_000_000);
        Search search = new Search(facts, limits(seed, left), EnvironmentMode.PHASE_ASSERT, warmth);
        Ended ended = say(name + " and polished from " + warmth, search.run(filled));
        if (given.text("keep", "no").equals("yes")) {
            double took = (System.nanoTime() - began) / 1e9;
            String outcome = ended.outcome() + ", polished from " + warmth + " of the usual temperature, seed " + seed;
            OtherWays.keep(given, problem, OtherWay.Way.DIVE, seconds, took, ended, outcome);
        }
    }

    private Ended say(String what, Search.Found plan) {
        Ended ended = Ended.of(season, facts, ceiling, plan);
        System.out.printf(Locale.ROOT, "%-50s %s%n", what, ended);
        return ended;
    }
}
