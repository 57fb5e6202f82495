package bedwright.plan;

import bedwright.climate.PossibleSeasons;
import bedwright.exact.ProvenBest;
import bedwright.season.Season;
import java.util.Arrays;
import java.util.Locale;

/**
 * What it costs that lots are whole: how far the proven best plan of a small season lies below the best that parts of lots
 * could do, which is the least that any prices can prove. No search, however good, comes closer to the bound than that.
 *
 * <p>The bound also takes of a job's set-up the least part that a lot may carry, and lets any crop follow any other for
 * nothing: what that is worth is in the figure.
 *
 * <p>Arguments: {@code solver} (GLOP), {@code settings} of its own, {@code commit}. Prints CSV: the season, from 1 as in
 * {@code small/proven.csv}; possible seasons; caution; the gap, per cent of what lies between the bound and nothing planted.
 */
public final class WholeLots {
    /** How far apart the two ends of the least bound may lie, as a part of what lies between it and nothing planted. */
    private static final double CLOSE = 1e-5;

    private WholeLots() {}

    public static void main(String[] args) {
        BenchArgs given = new BenchArgs(args, "solver", "settings", "commit");
        System.out.println(DemoFarm.heading(given.text("commit", "not named")));
        System.out.println("season,possible seasons,caution,gap %");
        double[] gaps = new double[ProvenBest.count()];
        for (int i = 0; i < gaps.length; i++) {
            ProvenBest proven = ProvenBest.at(i + 1);
            Season season = proven.season();
            PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));
            gaps[i] = gap(facts, proven.best(), given);
            System.out.printf(
                    Locale.ROOT,
                    "%d,%d,%d,%.3f%n",
                    i + 1,
                    facts.seasonCount,
                    season.caution().percent(),
                    gaps[i]);
        }
        Arrays.sort(gaps);
        System.out.printf(
                Locale.ROOT,
                "%d seasons: %.2f to %.2f %%, in the median %.2f %%%n",
                gaps.length,
                gaps[0],
                gaps[gaps.length - 1],
                gaps[gaps.length / 2]);
    }

    private static double gap(PlanFacts facts, Search.Found best, BenchArgs given) {
        ColumnGeneration.Found least = new ColumnGeneration(
                        facts,
                        Prices.none(facts),
                        given.text("solver", "GLOP"),
                        given.text("settings", ""),
                        0,
                        -best.medium(),
                        line -> {})
                .run(facts.table.places(), 0, 1);
        if (least.upper() - least.lower() > CLOSE * (least.upper() - BestPossible.nothingPlanted(facts))) {
            throw new IllegalStateException("The ends of the least bound did not meet: " + least);
        }
        Double gap = new Ceiling(facts, missing -> least.upper()).gap(best);
        if (gap == null) {
            throw new IllegalStateException("No gap is known: planting brings nothing");
        }
        return gap;
    }
}
