package bedwright.command;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.compare.Comparison;
import bedwright.compare.CropEarnings;
import bedwright.compare.FreshSeasons;
import bedwright.compare.Judge;
import bedwright.compare.Judged;
import bedwright.compare.RuleOfThumb;
import bedwright.compare.SearchSeeds;
import bedwright.compare.Way;
import bedwright.plan.BestPossible;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.PriceSearch;
import bedwright.plan.Search;
import bedwright.season.Changes;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.Strategies;
import bedwright.season.Strategies.Strategy;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Plans every strategy with every seed, keeping each plan as it is made, and judges them all. */
final class CompareRun {
    private static final double NANOS = 1e9;

    private final Season season;
    private final Strategies strategies;
    private final Comparison.Effort effort;
    private final ComparisonFolder folder;
    private final PrintWriter err;
    private final boolean terminal;
    private final List<Season> seasons;
    private final List<List<Plan>> plans = new ArrayList<>();
    private volatile boolean stopped;
    private volatile @Nullable Search search;
    private int made;

    CompareRun(
            Season season,
            Strategies strategies,
            Comparison.Effort effort,
            ComparisonFolder folder,
            PrintWriter err,
            boolean terminal) {
        this.season = season;
        this.strategies = strategies;
        this.effort = effort;
        this.folder = folder;
        this.err = err;
        this.terminal = terminal;
        this.seasons = strategies.strategies().stream()
                .map(strategy -> Changes.of(season, strategy))
                .toList();
    }

    /** Ends the run soon, with all plans kept that are whole; from any thread. */
    void stop() {
        stopped = true;
        Search running = search;
        if (running != null) {
            running.stop();
        }
    }

    boolean isStopped() {
        return stopped;
    }

    /** How many plans are whole. */
    int made() {
        return made;
    }

    /** How many plans there are to be. */
    int all() {
        return strategies.strategies().stream().mapToInt(this::searches).sum();
    }

    /** A season by rule of thumb is not searched for, so there is one of it. */
    private int searches(Strategy strategy) {
        return strategy.ruleOfThumb() ? 1 : effort.searches();
    }

    /**
     * Refuses strategies that leave nothing to plant, before anything is planned: a crop may be left, but no bed, week
     * and method in which it gives a stem.
     */
    void mustHaveSomethingToPlant() {
        for (int i = 0; i < seasons.size(); i++) {
            Season changed = seasons.get(i);
            if (!hasPlaces(changed, List.of(PossibleSeasons.normal(changed)))
                    && !hasPlaces(changed, PossibleSeasons.of(changed))) {
                throw new Refusal(
                        Exit.FAULTY_FILE,
                        "Strategy " + (i + 1) + ", \""
                                + strategies.strategies().get(i).name()
                                + "\": With its changes nothing is left to plant: no crop of the pool gives a stem in"
                                + " any bed and week. Bar less, or leave more beds. Nothing was planned.");
            }
        }
    }

    private static boolean hasPlaces(Season changed, List<PossibleSeason> possible) {
        return PlanFacts.of(changed, possible).table().firstPlace(changed.pool().size()) > 0;
    }

    /** Plans all that is not planned yet; ends early if it is stopped. */
    void plan() {
        for (int i = 0; i < seasons.size() && !stopped; i++) {
            Strategy strategy = strategies.strategies().get(i);
            List<Plan> its = new ArrayList<>();
            PlanFacts facts = null;
            for (int number = 1; number <= searches(strategy) && !stopped; number++) {
                Plan.Making making = making(strategy, number);
                Optional<Plan> kept = folder.kept(strategy, number, seasons.get(i), making);
                if (kept.isEmpty() && facts == null) {
                    facts = PlanFacts.of(seasons.get(i), PossibleSeasons.of(seasons.get(i)));
                }
                Optional<Plan> plan =
                        kept.isPresent() || facts == null ? kept : planned(facts, strategy, number, making);
                if (plan.isPresent()) {
                    its.add(plan.get());
                    made++;
                    err.printf(
                            Locale.ROOT,
                            "Plan %d of %d: %s, search %d of %d%s%n",
                            made,
                            all(),
                            strategy.name(),
                            number,
                            searches(strategy),
                            kept.isPresent() ? ", was made before" : "");
                }
            }
            plans.add(its);
        }
    }

    private Plan.Making making(Strategy strategy, int number) {
        return strategy.ruleOfThumb()
                ? new Plan.Making(0, null, 0L, false, false)
                : new Plan.Making(
                        SearchSeeds.of(effort.seed(), strategy.name(), number),
                        effort.seconds(),
                        effort.moves(),
                        false,
                        false);
    }

    private Optional<Plan> planned(PlanFacts facts, Strategy strategy, int number, Plan.Making making) {
        int[] places = strategy.ruleOfThumb() ? RuleOfThumb.places(facts) : searched(facts, making);
        if (stopped) {
            return Optional.empty();
        }
        Outcome outcome = Outcomes.of(facts, places);
        PlanCommand.recheck(facts.season(), facts, outcome);
        Plan plan = new Plan(1, facts.season(), making, outcome.score(), outcome.plantings());
        folder.keep(strategy, number, plan);
        return Optional.of(plan);
    }

    private int[] searched(PlanFacts facts, Plan.Making making) {
        Double seconds = making.seconds();
        Duration time = seconds == null ? null : Duration.ofMillis(Math.round(1000 * seconds));
        Search one = new Search(facts, new Search.Limits(making.seed(), time, making.moves()));
        search = one;
        if (stopped) {
            one.stop();
        }
        try (Progress progress = new Progress(facts, one, err, terminal)) {
            return one.run(Search.nothingPlaced(facts)).places();
        } finally {
            search = null;
        }
    }

    /**
     * Judges all plans on the same seasons.
     *
     * @param count how many fresh ones, where the season does not give them
     */
    Comparison judged(int count) {
        long began = System.nanoTime();
        List<PossibleSeason> fresh = FreshSeasons.of(season, count);
        List<Way> ways = new ArrayList<>();
        for (int i = 0; i < seasons.size(); i++) {
            Season changed = seasons.get(i);
            List<PossibleSeason> own = PossibleSeasons.of(changed);
            List<Judged> judged = plans.get(i).parallelStream()
                    .map(plan -> Judge.of(changed, plan.plantings(), own, fresh))
                    .toList();
            ways.add(new Way(strategies.strategies().get(i), changed, judged));
        }
        err.printf(
                Locale.ROOT,
                "Judged %d plans on %,d seasons in %.1f s.%n",
                made,
                fresh.size(),
                (System.nanoTime() - began) / NANOS);
        return new Comparison(season, strategies, effort, ways);
    }

    /** What the prices of the season as it stands estimate; looked for anew, in so many steps. */
    List<Plan.Worth> prices(long steps) {
        err.println("Looking for prices …");
        Plan first = plans.getFirst().getFirst();
        PlanFacts facts = PlanFacts.of(seasons.getFirst(), PossibleSeasons.of(seasons.getFirst()));
        PriceSearch prices = new PriceSearch(facts, -first.score().medium());
        prices.run(steps, this::isStopped);
        return BestPossible.closeness(facts, first.score(), prices.kept(), prices.steps(), null)
                .worths();
    }

    /** What crops earn in the first plan of the first strategy. */
    List<CropEarnings> earnings(int count) {
        return CropEarnings.of(
                seasons.getFirst(), plans.getFirst().getFirst().plantings(), FreshSeasons.of(season, count));
    }

    /** Whether some plan breaks a hard rule. */
    boolean breaksARule() {
        return IntStream.range(0, plans.size())
                .anyMatch(
                        i -> plans.get(i).stream().anyMatch(plan -> plan.score().hard() < 0));
    }
}
