package bedwright.exact;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.plan.BenchArgs;
import bedwright.plan.DemoFarm;
import bedwright.plan.PlanFacts;
import bedwright.plan.Search;
import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import bedwright.season.Season;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;

/**
 * Proves the best plans of the small seasons, each once, by the exact model and a constraint solver in whole numbers, and
 * keeps them. Seasons that are kept already are left as they are; one that takes too long is named and not kept.
 */
final class ProveSmallSeasons {
    private static final long MOVES = 30_000;
    private static final String PROVER = "CP-SAT 9.15";

    private ProveSmallSeasons() {}

    /** Arguments: {@code from}, {@code to} (seeds, 1 to 40), {@code effort} for each model, in the solver's own measure (100), {@code commit}. */
    public static void main(String[] args) {
        BenchArgs given = new BenchArgs(args, "from", "to", "effort", "commit");
        String commit = given.text("commit", "not named");
        int effort = given.number("effort", 100);
        System.out.println(DemoFarm.heading(commit));
        for (long seed = given.number("from", 1); seed <= given.number("to", 40); seed++) {
            long number = seed;
            if (Proven.all().stream().noneMatch(one -> one.seed() == number)) {
                prove(seed, effort, commit);
            }
        }
    }

    /** What the planner finds, below which nothing has to be looked at. */
    private static ExactModel.Known found(PlanFacts facts) {
        Search.Found found = new Search(facts, new Search.Limits(1, null, MOVES)).run(Search.nothingPlaced(facts));
        int[] lots = new int[facts.table().places()];
        for (int place : found.places()) {
            if (place >= 0) {
                lots[place]++;
            }
        }
        return new ExactModel.Known(found.medium(), found.soft(), lots);
    }

    private static void prove(long seed, double effort, String commit) {
        Season season = SmallSeasons.season(SmallSeasons.tree(seed));
        List<PossibleSeason> possible = PossibleSeasons.of(season);
        PlanFacts facts = PlanFacts.of(season, possible);
        ExactModel.Known known = found(facts);
        long clock = System.nanoTime();
        ExactModel.Best best;
        try {
            best = ExactModel.solve(season, facts.table(), new ConstraintSolving(effort), known);
        } catch (IllegalStateException e) {
            System.out.printf(Locale.ROOT, "%d: %s%n", seed, e.getMessage());
            return;
        }
        double seconds = (System.nanoTime() - clock) / 1e9;
        Tally tally = Recheck.of(season, possible, best.plantings());
        if (tally.hard() != 0 || tally.medium() != best.medium() || tally.soft() != best.soft()) {
            throw new IllegalStateException("Season " + seed + ": the model says " + best + ", the recheck " + tally);
        }
        new Proven(
                        seed,
                        SmallSeasons.hash(seed),
                        best.medium(),
                        best.soft(),
                        PROVER,
                        seconds,
                        LocalDate.now(ZoneId.systemDefault()).toString(),
                        commit,
                        Proven.numbers(season, best.plantings()))
                .keep();
        System.out.printf(
                Locale.ROOT,
                "%d: %d %d in %.1f s; the plan it was told of had %d %d%n",
                seed,
                best.medium(),
                best.soft(),
                seconds,
                known.medium(),
                known.soft());
    }
}
