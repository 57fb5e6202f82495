package bedwright.command;

import bedwright.plan.DemandLine;
import bedwright.plan.Grains;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Search;
import bedwright.season.Season;
import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Tells on standard error how a search is coming along: one line drawn again on a terminal, a line every ten seconds
 * elsewhere.
 */
final class Progress implements AutoCloseable {
    private static final int LINE = 100;

    private final PlanFacts facts;
    private final Search search;
    private final PrintWriter err;
    private final boolean terminal;
    private final long began = System.nanoTime();
    private final ScheduledExecutorService clock;
    private double lastMoney = Double.NaN;

    Progress(PlanFacts facts, Search search, PrintWriter err, boolean terminal) {
        this.facts = facts;
        this.search = search;
        this.err = err;
        this.terminal = terminal;
        this.clock = Executors.newSingleThreadScheduledExecutor(
                Thread.ofPlatform().daemon().factory());
        long every = terminal ? 1 : 10;
        var unused = clock.scheduleAtFixedRate(this::tell, every, every, TimeUnit.SECONDS);
    }

    private void tell() {
        Search.@Nullable Found best = search.best();
        if (best == null) {
            return;
        }
        Outcome outcome = Outcomes.of(facts, best.places());
        Season season = facts.season();
        double money = meanMoney(season, outcome);
        String better = Double.isNaN(lastMoney) ? "" : String.format(Locale.ROOT, " (%+.0f)", money - lastMoney);
        lastMoney = money;
        double hours = 0;
        for (int w = 0; w < season.weeks(); w++) {
            for (int k = 0; k < outcome.seasons(); k++) {
                hours += outcome.work().all(w, k);
            }
        }
        String line = String.format(
                Locale.ROOT,
                "%4d s  %,d moves  short %.0f stems  left over %.0f  %.0f hours  %s%s%s",
                TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - began),
                search.moves(),
                shortStems(outcome),
                leftOver(outcome),
                hours / outcome.seasons() / Grains.TICKS_AN_HOUR,
                Words.money(season, money),
                better,
                outcome.broken().isEmpty() ? "" : "  a rule is still broken");
        if (terminal) {
            err.print("\r" + line + " ".repeat(Math.max(0, LINE - line.length())));
            err.flush();
        } else {
            err.println(line);
        }
    }

    /** Money of a plan in the mean of the possible seasons, in main units. */
    static double meanMoney(Season season, Outcome outcome) {
        return Grains.toMoney(
                season, Arrays.stream(outcome.money().season()).average().orElse(0));
    }

    /** Promised stems missing in the mean of the possible seasons. */
    static double shortStems(Outcome outcome) {
        double missing = 0;
        for (DemandLine line : outcome.demand()) {
            if (line.promise() == DemandLine.Promised.NOTHING) {
                continue;
            }
            int[][] served = outcome.served()[line.index()];
            for (int w = 0; w < served.length; w++) {
                for (int got : served[w]) {
                    missing += line.asked()[w] - got;
                }
            }
        }
        return missing / 100 / outcome.seasons();
    }

    private static double leftOver(Outcome outcome) {
        double left = 0;
        for (int[][] role : outcome.leftOver()) {
            for (int[] week : role) {
                for (int stems : week) {
                    left += stems;
                }
            }
        }
        return left / 100 / outcome.seasons();
    }

    @Override
    public void close() {
        clock.shutdownNow();
        if (terminal) {
            err.print("\r" + " ".repeat(LINE) + "\r");
            err.flush();
        }
    }
}
