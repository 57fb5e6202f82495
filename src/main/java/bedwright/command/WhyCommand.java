package bedwright.command;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.file.PlainJson;
import bedwright.plan.Outcome;
import bedwright.plan.PlantingReasons;
import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import bedwright.sheet.WhyPlanting;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says why a plan is as it is. */
@Command(
        name = "why",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Says why a planting is in a plan: what it gives and to whom, what it costs, what threatens it, which limits it"
                    + " presses on, and what a week earlier or later, another bed, another method or leaving it out would"
                    + " change: each really tried on the whole plan. Nothing is written.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright why plans/first-bed 2"
        })
final class WhyCommand implements Callable<Integer> {
    /** Letters on a line of a sentence. */
    private static final int WIDTH = 100;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "PLAN", description = "The plan's folder, or the plan.json in it.")
    private Path folder = Path.of("");

    @Parameters(index = "1", paramLabel = "N", description = "The number of a planting, as on the sheet.")
    private @Nullable Integer number;

    @Option(names = "--format", paramLabel = "text|json", description = "Words, or JSON.")
    private PlanCommand.Format format = PlanCommand.Format.TEXT;

    @Override
    public Integer call() {
        PlanFolder plans = PlanFolder.at(folder);
        Plan plan = plans.read();
        KeptPlanting planting = planting(plan);
        List<PossibleSeason> possible = PossibleSeasons.of(plan.season());
        PlantingReasons reasons;
        try {
            reasons = PlantingReasons.of(plan.season(), possible, plan.plantings(), planting);
        } catch (IllegalArgumentException e) {
            throw new Refusal(Exit.FAULTY_FILE, plans.plan() + ": " + e.getMessage() + ". Make the plan anew.");
        }
        mustScoreAsItSays(plans, plan, reasons.without().before());
        PrintWriter out = spec.commandLine().getOut();
        out.print(
                format == PlanCommand.Format.JSON
                        ? PlainJson.text(new WhyJson(plan.season()).planting(reasons))
                        : WhyPlanting.text(plan.season(), reasons, WIDTH));
        out.flush();
        return Exit.DONE;
    }

    private KeptPlanting planting(Plan plan) {
        return plan.plantings().stream()
                .filter(planting -> number != null && planting.number() == number)
                .findFirst()
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        plan.plantings().isEmpty()
                                ? "The plan has no plantings, so there is no No. " + number
                                : "The plan has no planting No. " + number + "; its plantings have the numbers "
                                        + plan.plantings().getFirst().number() + " to "
                                        + plan.plantings().getLast().number() + ", as on its season sheet"));
    }

    private static void mustScoreAsItSays(PlanFolder plans, Plan plan, Outcome outcome) {
        if (!outcome.score().equals(plan.score())) {
            throw new Refusal(
                    Exit.FAULTY_FILE,
                    plans.plan() + ": the plan does not score what the file says of it (" + outcome.score() + ", not "
                            + plan.score() + "), so it was changed by hand or made by another version. Make it anew.");
        }
    }
}
