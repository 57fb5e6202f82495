package bedwright.command;

import bedwright.climate.PossibleSeasons;
import bedwright.file.PriceFile;
import bedwright.plan.BestPossible;
import bedwright.plan.PlanFacts;
import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import bedwright.season.Plan;
import bedwright.season.PriceList;
import bedwright.sheet.BestWords;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Counts a plan again, and how close it comes to the best possible. */
@Command(
        name = "recheck",
        mixinStandardHelpOptions = true,
        description = {
            "Counts a plan again from its plan.json alone, by code that shares no formula with the planner; and works"
                    + " out again from prices.json beside it, if there is one, how close it comes to the best possible."
                    + " Nothing is searched for, and nothing that the files claim is taken on trust.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5 --bound",
            "  target/bedwright recheck plans/first-bed"
        })
final class RecheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Option(
            names = "--prices",
            paramLabel = "FILE",
            description = "Prices to judge it by; left out: prices.json beside the plan, if there is one.")
    private @Nullable Path file;

    @Override
    public Integer call() {
        PlanFolder plans = named.folder();
        Plan plan = plans.read();
        PlanFacts facts = PlanFacts.of(plan.season(), PossibleSeasons.of(plan.season()));
        Tally tally = Recheck.of(plan.season(), facts.seasons(), plan.plantings());
        Plan.Score counted = new Plan.Score(tally.hard(), tally.medium(), tally.soft());
        PrintWriter out = spec.commandLine().getOut();
        if (!tally.faults().isEmpty() || !counted.equals(plan.score())) {
            throw new Refusal(
                    Exit.FAULTY_FILE,
                    plans.plan() + ": counted again, the plan comes to " + counted + ", but the file says "
                            + plan.score() + ". " + String.join("; ", tally.faults())
                            + " It was changed by hand or made by another version: make it anew.");
        }
        out.println("Counted again by other code, the plan scores what its file says.");
        Path prices = file == null ? plans.prices() : file;
        if (file == null && !Files.exists(prices)) {
            out.println(
                    "No prices lie beside it, so nothing is said of the best possible: plan with --bound for that.");
        } else {
            BestWords.sentences(
                            plan.season(),
                            plan.score(),
                            closeness(facts, plan, prices),
                            facts.seasons().size())
                    .forEach(out::println);
        }
        return counted.hard() == 0 ? Exit.DONE : Exit.RULE_BROKEN;
    }

    /** How close a plan comes to the best possible by the prices of a file. */
    static Plan.Closeness closeness(PlanFacts facts, Plan plan, Path file) {
        PriceList prices = PriceFile.read(file, plan.season(), facts.seasons().size());
        Plan.Closeness said = plan.closeness();
        try {
            return BestPossible.closeness(
                    facts, plan.score(), prices, said == null ? 0 : said.steps(), said == null ? null : said.seconds());
        } catch (IllegalArgumentException e) {
            throw new Refusal(
                    Exit.FAULTY_FILE,
                    file + ": " + e.getMessage() + ". Are these the prices of another season? Look for them anew with"
                            + " plan --bound.");
        }
    }
}
