package bedwright.plan;

import ai.timefold.solver.core.api.score.HardMediumSoftScore;
import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * Looks for the best plan: two searches with seeds of their own, by simulated annealing in rounds. Each round begins
 * with the best plan so far and is longer than the one before; the better plan is kept, the first search's where they
 * score alike. One use only.
 */
public final class Search {
    private static final int SEARCHES = 2;
    /**
     * Moves of the first round for each planting that may move and each other that there is: long enough that a minute on a
     * large farm is one round, since one long cooling ends better there than several short ones; short enough for a small
     * season, whose plantings stand in fewer ways, to be tried many times.
     */
    private static final long MOVES_A_PAIR = 40;

    /**
     * Moves of the first round for each planting where the search is to end by itself: fewer, so that there are rounds to
     * compare.
     */
    private static final long MOVES_A_PLANTING_TO_SETTLE = 1000;

    private static final long FEWEST_MOVES = 20_000;

    /**
     * A round brought little if it gained no more than this share of what the plan is worth beyond nothing placed.
     */
    private static final double LITTLE = 0.005;

    private final PlanFacts facts;
    private final Limits limits;
    private final EnvironmentMode mode;
    private final double warmth;
    private final List<Probe> probes = new ArrayList<>();
    private final List<Solver<SeasonPlan>> solvers = new CopyOnWriteArrayList<>();
    private final AtomicReference<@Nullable Found> best = new AtomicReference<>();
    private volatile boolean stopped;
    private volatile boolean settled;

    /**
     * How long to search.
     *
     * @param seed from which every round of each search has a seed of its own
     * @param time for which both search, or null
     * @param moves that each search tries, or null; with moves alone the result depends on nothing but seed and season
     * @param settle whether to end before the limit after a round, twice as long as the one before, that brought little
     */
    public record Limits(
            long seed, @Nullable Duration time, @Nullable Long moves, boolean settle) {
        /** Searches right up to the limit. */
        public Limits(long seed, @Nullable Duration time, @Nullable Long moves) {
            this(seed, time, moves, false);
        }

        public Limits {
            if (time == null && moves == null) {
                throw new IllegalArgumentException("A search needs a limit: a time or a number of moves");
            }
        }
    }

    /**
     * A plan that was found.
     *
     * @param places where each planting is, by its number; −1 where it is left out
     */
    public record Found(int[] places, long hard, long medium, long soft) {
        static Found of(int[] places, HardMediumSoftScore score) {
            return new Found(places, score.hardScore(), score.mediumScore(), score.softScore());
        }

        /** A plan with its score, computed afresh; what is fixed stands where it stands. */
        static Found of(PlanFacts facts, int[] places) {
            SeasonScore score = new SeasonScore(facts);
            int[] all = places.clone();
            for (int p = 0; p < all.length; p++) {
                all[p] = facts.isFixed(p) ? facts.fixedPlace[p] : all[p];
            }
            score.settleAll(all);
            return new Found(all, score.hard(), score.medium(), score.soft());
        }

        /** Whether it scores better than another, which may be missing. */
        public boolean isBetterThan(@Nullable Found other) {
            return other == null || compare(other) > 0;
        }

        private int compare(Found other) {
            int byHard = Long.compare(hard, other.hard);
            int byMedium = byHard != 0 ? byHard : Long.compare(medium, other.medium);
            return byMedium != 0 ? byMedium : Long.compare(soft, other.soft);
        }
    }

    public Search(PlanFacts facts, Limits limits) {
        this(facts, limits, EnvironmentMode.PHASE_ASSERT);
    }

    /** For tests: with the solver's own assertions. */
    Search(PlanFacts facts, Limits limits, EnvironmentMode mode) {
        this(facts, limits, mode, 1);
    }

    /**
     * For a plan to begin with that is not to be forgotten.
     *
     * @param warmth share of the usual temperature to begin at
     */
    Search(PlanFacts facts, Limits limits, EnvironmentMode mode, double warmth) {
        this.facts = facts;
        this.limits = limits;
        this.mode = mode;
        this.warmth = warmth;
        for (int s = 0; s < SEARCHES; s++) {
            probes.add(new Probe());
        }
    }

    /** Where nothing is placed but what is fixed. */
    public static int[] nothingPlaced(PlanFacts facts) {
        return facts.unplanted.clone();
    }

    /**
     * Searches until the limit, or until {@link #stop}.
     *
     * @param start a plan to begin with (a warm start), filled up before the search; the result is never worse
     */
    public Found run(int[] start) {
        int[] opening = Opening.fill(facts, start, () -> stopped);
        Found opened = Found.of(facts, opening);
        note(opened);
        Found given = Found.of(facts, start);
        note(given);
        if (!stopped && facts.plantings() > 0 && facts.table().places() > 0) {
            Found from = given.isBetterThan(opened) ? given : opened;
            searchAll(List.of(from, from), System.nanoTime());
        }
        return Objects.requireNonNull(best.get());
    }

    /**
     * The same with a plan for each of the two searches to begin with, as they are; later rounds begin with the best. Where
     * there is time for one search only, that begins with the better.
     *
     * @param since when what belongs to the search's time began, as {@link System#nanoTime}: at least half of its time is
     *     left for the search itself
     * @return a plan that is not worse than either
     */
    Found run(int[] one, int[] other, long since) {
        Found first = Found.of(facts, one);
        Found second = Found.of(facts, other);
        note(first);
        note(second);
        if (!stopped && facts.plantings() > 0 && facts.table().places() > 0) {
            searchAll(second.isBetterThan(first) ? List.of(second, first) : List.of(first, second), since);
        }
        return Objects.requireNonNull(best.get());
    }

    /**
     * @param begin what each search begins with, the best first
     * @param since when its time began
     */
    private void searchAll(List<Found> begin, long since) {
        Found from = begin.getFirst();
        boolean together = Runtime.getRuntime().availableProcessors() > 1;
        int count = limits.moves() != null || together ? SEARCHES : 1;
        long end = limits.time() == null
                ? Long.MAX_VALUE
                : Math.max(
                        since + limits.time().toNanos(),
                        System.nanoTime() + limits.time().toNanos() / 2);
        long movesLeft = limits.moves() == null ? Long.MAX_VALUE : limits.moves();
        long each = limits.settle() ? MOVES_A_PLANTING_TO_SETTLE : MOVES_A_PAIR * facts.free.length;
        long length = Math.max(FEWEST_MOVES, each * facts.free.length);
        Found nothing = Found.of(facts, nothingPlaced(facts));
        SolverSetup setup = new SolverSetup(mode, Temperature.of(nothing, from).times(warmth));
        Random seeds = new Random(limits.seed());
        try (ExecutorService threads = Executors.newFixedThreadPool(together ? count : 1)) {
            int round = 0;
            while (!stopped && movesLeft > 0) {
                Duration time = limits.time() == null ? null : wholeMillis(end - System.nanoTime());
                if (time != null && !time.isPositive()) {
                    break;
                }
                // A last round that would be shorter than this one becomes part of it.
                long moves = movesLeft / 2 < length ? movesLeft : length;
                Found before = Objects.requireNonNull(best.get());
                List<Found> starts = round == 0 ? begin : List.of(before, before);
                searchOnce(starts, setup.round(round, moves, time), count, seeds, threads);
                if (limits.settle() && round > 0 && broughtLittle(nothing, before)) {
                    settled = !stopped;
                    return;
                }
                round++;
                movesLeft -= moves;
                length *= 2;
            }
        }
    }

    private boolean broughtLittle(Found nothing, Found before) {
        Found now = Objects.requireNonNull(best.get());
        boolean sameLevels = now.hard() == before.hard() && now.medium() == before.medium();
        double worth = Math.max(1, (double) now.soft() - nothing.soft());
        return sameLevels && now.soft() - before.soft() <= LITTLE * worth;
    }

    /** The solver takes no finer times. */
    private static Duration wholeMillis(long nanos) {
        return Duration.ofNanos(nanos).truncatedTo(ChronoUnit.MILLIS);
    }

    /** One round of all searches. */
    private void searchOnce(List<Found> starts, SolverSetup setup, int count, Random seeds, ExecutorService threads) {
        List<Callable<Found>> searches = new ArrayList<>();
        solvers.clear();
        for (int s = 0; s < count; s++) {
            Solver<SeasonPlan> solver = setup.solver(seeds.nextLong());
            Probe probe = probes.get(s);
            solver.addEventListener(event -> note(found(event.getNewBestSolution())));
            // A solver that only now begins has forgotten that it was told to end.
            probe.whenLooking(() -> {
                if (stopped) {
                    solver.terminateEarly();
                }
            });
            probe.whenOver(solver::terminateEarly);
            int[] from = starts.get(s).places();
            solvers.add(solver);
            searches.add(() -> {
                probe.cool(setup.cooling());
                return found(solver.solve(new SeasonPlan(facts, from, probe)));
            });
        }
        if (stopped) {
            return;
        }
        try {
            List<Found> ends = new ArrayList<>();
            for (Future<Found> end : threads.invokeAll(searches)) {
                ends.add(end.get());
            }
            // In the order of the seeds, so that of equal plans the first one's is kept.
            Found first = ends.getFirst();
            for (Found end : ends) {
                first = end.isBetterThan(first) ? end : first;
            }
            Found known = best.get();
            best.set(known != null && known.isBetterThan(first) ? known : first);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            stop();
        } catch (ExecutionException e) {
            throw new IllegalStateException("The search failed: " + e.getCause(), e.getCause());
        }
    }

    private static Found found(SeasonPlan plan) {
        return Found.of(plan.places(), Objects.requireNonNull(plan.getScore()));
    }

    private void note(Found found) {
        best.accumulateAndGet(found, (known, one) -> one != null && one.isBetterThan(known) ? one : known);
    }

    /** Ends the search soon; {@link #run} then returns the best plan so far. From any thread. */
    public void stop() {
        stopped = true;
        solvers.forEach(Solver::terminateEarly);
    }

    /** Whether {@link #stop} was called. */
    public boolean isStopped() {
        return stopped;
    }

    /** Whether the search ended by itself before its limit. */
    public boolean isSettled() {
        return settled;
    }

    /** The best plan so far, if there is one yet; from any thread. */
    public @Nullable Found best() {
        return best.get();
    }

    /** Moves tried so far, by all searches; from any thread. */
    public long moves() {
        return probes.stream().mapToLong(Probe::asked).sum();
    }

    @Override
    public String toString() {
        return "search with " + limits + ", best " + (best() == null ? "none" : Arrays.toString(best().places()));
    }
}
