package bedwright.plan;

import bedwright.climate.PossibleSeasons;
import bedwright.season.Season;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * The whole problem given to an exact solver: the {@link RelaxedModel} over all places, with whole lots, on two threads and
 * for so many seconds, building it not counted. What it comes to is made a plan ({@link LotsToPlan}), which is scored as
 * any other; set-up that lots of a job share, rest and what follows on what is there a little cheaper than in the score.
 *
 * <p>Arguments: {@code problem} (demo), {@code solver} (SAT, SCIP or HIGHS), {@code seconds} (600), {@code settings} of the
 * solver's own, {@code out} (the folder with the prices of the problem that tell the gap), {@code commit}.
 */
public final class WholeModel {
    private WholeModel() {}

    public static void main(String[] args) {
        BenchArgs given = new BenchArgs(args, "problem", "solver", "seconds", "settings", "out", "commit");
        System.out.println(DemoFarm.heading(given.text("commit", "not named")));
        String problem = given.text("problem", "demo");
        String solver = given.text("solver", "SAT");
        int seconds = given.number("seconds", 600);
        Season season = ProblemFamily.named(problem);
        PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));
        Relaxation relaxed = new Relaxation(facts);
        KeptPrices judge = new KeptPrices(Path.of(given.text("out", "benchmarks/search/results")), problem);
        Ceiling ceiling = Ceiling.of(facts, relaxed, missing -> judge.of(season, facts, relaxed, missing, 60));
        RelaxedModel model = new RelaxedModel(relaxed, 0);
        for (int place = 0; place < facts.table.places(); place++) {
            if (relaxed.open[place]) {
                model.add(place);
            }
        }
        System.out.println(problem + ": " + model);
        long clock = System.nanoTime();
        Optional<RelaxedModel.Lots> lots =
                model.lots(new SparseProgram.Wanted(solver, given.text("settings", ""), true, seconds, 2));
        double took = (System.nanoTime() - clock) / 1e9;
        if (lots.isEmpty()) {
            System.out.printf(Locale.ROOT, "%s: no plan after %.0f s%n", solver, took);
            return;
        }
        LotsToPlan.Made made = LotsToPlan.whole(facts, lots.get().each());
        Search.Found plan = Search.Found.of(facts, made.places());
        System.out.printf(
                Locale.ROOT,
                "%s after %.0f s: by the model %.2f, at most %.2f%s; the plan %.2f, gap %.2f %%, hard %d, missing %d,"
                        + " %d lots left out%n",
                solver,
                took,
                Grains.toMoney(season, lots.get().value() / facts.seasonCount),
                Grains.toMoney(season, lots.get().bound() / facts.seasonCount),
                lots.get().isProven() ? " (proven best)" : "",
                Grains.toMoney(season, (double) plan.soft() / facts.seasonCount),
                ceiling.gap(plan),
                plan.hard(),
                -plan.medium(),
                made.leftOut());
    }
}
