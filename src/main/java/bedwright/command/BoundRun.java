package bedwright.command;

import bedwright.plan.BestPossible;
import bedwright.plan.PlanFacts;
import bedwright.plan.PriceSearch;
import bedwright.season.Plan;
import bedwright.season.PriceList;
import java.io.PrintWriter;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/** Looks for prices from which follows how close a plan comes to the best possible, and tells how that goes. */
final class BoundRun {
    private static final int LINE = 100;
    private static final double NANOS = 1e9;
    /** It has settled if so many more steps, a part of all taken, brought less than {@link #LITTLE}. */
    private static final double PART = 0.5;

    private static final long FEWEST = 800;
    /** Part of the bound. */
    private static final double LITTLE = 1e-4;

    private final PlanFacts facts;
    private final Plan.Score score;
    private final BoundOptions.Limits limits;
    private final PrintWriter err;
    private final boolean terminal;
    private final long began = System.nanoTime();
    private final long nothingPlanted;
    private final Deque<Seen> seen = new ArrayDeque<>();
    private double toldAt;

    private record Seen(long steps, double bound) {}

    /** What was found: the prices, and what follows from them. */
    record Found(PriceList prices, Plan.Closeness closeness) {}

    private BoundRun(PlanFacts facts, Plan.Score score, BoundOptions.Limits limits, PrintWriter err, boolean terminal) {
        this.facts = facts;
        this.score = score;
        this.limits = limits;
        this.err = err;
        this.terminal = terminal;
        this.nothingPlanted = BestPossible.nothingPlanted(facts);
    }

    /**
     * Looks for prices until a limit is reached.
     *
     * @param interrupted asked now and then: whether to end before that, with the best prices so far
     */
    static Found of(
            PlanFacts facts,
            Plan.Score score,
            BoundOptions.Limits limits,
            PrintWriter err,
            boolean terminal,
            BooleanSupplier interrupted) {
        return new BoundRun(facts, score, limits, err, terminal).found(interrupted);
    }

    private Found found(BooleanSupplier interrupted) {
        err.println("Looking for what is the best possible …");
        PriceSearch search = new PriceSearch(facts, -score.medium());
        Long steps = limits.steps();
        search.run(steps == null ? Long.MAX_VALUE : steps, () -> {
            tell(search);
            return interrupted.getAsBoolean() || isOver() || (limits.settles() && hasSettled(search));
        });
        if (terminal) {
            err.print("\r" + " ".repeat(LINE) + "\r");
        }
        err.printf(Locale.ROOT, "Prices were looked for in %,d steps, %.1f s.%n", search.steps(), seconds());
        PriceList prices = search.kept();
        return new Found(prices, closeness(prices, search.steps(), limits.seconds()));
    }

    private Plan.Closeness closeness(PriceList prices, long steps, @Nullable Double seconds) {
        return BestPossible.closeness(facts, score, prices, steps, seconds);
    }

    private double seconds() {
        return (System.nanoTime() - began) / NANOS;
    }

    private boolean isOver() {
        Double most = limits.seconds();
        return most != null && seconds() >= most;
    }

    private boolean hasSettled(PriceSearch search) {
        seen.addLast(new Seen(search.steps(), search.nearly()));
        while (seen.size() > 1 && seen.getFirst().steps() < (1 - PART) * search.steps()) {
            seen.removeFirst();
        }
        double brought = seen.getFirst().bound() - search.nearly();
        return search.steps() >= FEWEST && brought <= LITTLE * Math.abs(search.nearly());
    }

    private void tell(PriceSearch search) {
        if (seconds() - toldAt < (terminal ? 1 : 10)) {
            return;
        }
        toldAt = seconds();
        Double within = BestPossible.within(facts, score, search.nearly(), nothingPlanted);
        String line = String.format(
                Locale.ROOT,
                "%4.0f s  %,d steps  %s",
                toldAt,
                search.steps(),
                within == null
                        ? "nothing can be claimed yet"
                        : String.format(Locale.ROOT, "within %.1f %% of the best possible", within));
        if (terminal) {
            err.print("\r" + line + " ".repeat(Math.max(0, LINE - line.length())));
            err.flush();
        } else {
            err.println(line);
        }
    }
}
