package bedwright.plan;

import bedwright.climate.PossibleSeasons;
import bedwright.season.Season;
import java.util.Locale;
import java.util.Optional;

/**
 * The whole problem given to an exact solver: the {@link RelaxedModel} over all places, with whole lots, on two threads and
 * for so many seconds, building it not counted. What it comes to is made a plan ({@link LotsToPlan}), which is scored as
 * any other; set-up that lots of a job share, rest and what follows on what is there a little cheaper than in the score.
 *
 * <p>Arguments: {@code problem} (demo), {@code solver} (SAT, SCIP or HIGHS), {@code seconds} (600), {@code settings} of the
 * solver's own, {@code out} (the folder with the prices of the problem that tell the gap), {@code keep} (yes: adds a row to
 * {@code other-ways.csv} there; no), {@code beside} (what else the machine does; nothing), {@code commit}.
 */
public final class WholeModel {
    private WholeModel() {}

    public static void main(String[] args) {
        BenchArgs given =
                new BenchArgs(args, "problem", "solver", "seconds", "settings", "out", "keep", "beside", "commit");
        System.out.println(DemoFarm.heading(given.text("commit", "not named")));
        String problem = given.text("problem", "demo");
        String solver = given.text("solver", "SAT");
        int seconds = given.number("seconds", 600);
        Season season = ProblemFamily.named(problem);
        PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));
        Relaxation relaxed = new Relaxation(facts);
        KeptPrices judge = new KeptPrices(OtherWays.folder(given), problem);
        Ceiling ceiling = Ceiling.of(facts, relaxed, missing -> judge.of(season, facts, relaxed, missing, 60));
        RelaxedModel model = new RelaxedModel(relaxed, 0);
        for (int place = 0; place < facts.table.places(); place++) {
            if (relaxed.open[place]) {
                model.add(place);
            }
        }
        System.out.println(OtherWays.BEGINS + problem + ", " + model);
        long clock = System.nanoTime();
        Optional<RelaxedModel.Lots> lots =
                model.lots(new SparseProgram.Wanted(solver, given.text("settings", ""), true, seconds, 2));
        double took = (System.nanoTime() - clock) / 1e9;
        Ended ended =
                lots.map(found -> told(season, facts, ceiling, solver, found)).orElse(null);
        if (ended == null) {
            System.out.printf(Locale.ROOT, "%s: no plan%n", solver);
        }
        System.out.printf(Locale.ROOT, "Came back after %.0f s%n", took);
        if (given.text("keep", "no").equals("yes")) {
            OtherWay.Way way = OtherWay.Way.valueOf(solver);
            String outcome = ended == null ? "no plan" : ended.outcome();
            OtherWays.keep(given, problem, way, seconds, took, ended, outcome);
        }
    }

    private static Ended told(Season season, PlanFacts facts, Ceiling ceiling, String solver, RelaxedModel.Lots lots) {
        LotsToPlan.Made made = LotsToPlan.whole(facts, lots.each());
        Ended ended = Ended.of(season, facts, ceiling, Search.Found.of(facts, made.places()));
        System.out.printf(
                Locale.ROOT,
                "%s: by the model %.2f, at most %.2f%s; the plan %s, %d lots left out%n",
                solver,
                Grains.toMoney(season, lots.value() / facts.seasonCount),
                Grains.toMoney(season, lots.bound() / facts.seasonCount),
                lots.isProven() ? " (proven best)" : "",
                ended,
                made.leftOut());
        return ended;
    }
}
