package bedwright.command;

import bedwright.climate.PossibleSeasons;
import bedwright.plan.Outcome;
import bedwright.plan.PlanFacts;
import bedwright.season.Plan;
import bedwright.sheet.SheetFacts;
import java.nio.file.Files;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Draws the sheet of a plan anew. */
@Command(
        name = "sheet",
        mixinStandardHelpOptions = true,
        description = {
            "Draws the season sheet and the table of plantings of a plan anew, from its plan.json.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright sheet plans/first-bed"
        })
final class SheetCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Override
    public Integer call() {
        PlanFolder plans = named.folder();
        PlanAgain again = PlanAgain.read(plans, kept -> PlanFacts.of(kept.season(), PossibleSeasons.of(kept.season())));
        Plan plan = again.plan();
        PlanFacts facts = again.facts();
        Outcome outcome = again.outcome();
        Plan.Closeness closeness = null;
        if (plan.closeness() != null) {
            if (Files.exists(plans.prices())) {
                closeness = RecheckCommand.closeness(facts, plan, plans.prices());
            } else {
                spec.commandLine()
                        .getErr()
                        .println("How close the plan comes to the best possible is left out, since " + plans.prices()
                                + " is gone, which proves it.");
            }
        }
        plans.writePictures(
                new SheetFacts(plan.season(), outcome, facts.seasons(), facts.table(), plan.making(), closeness));
        spec.commandLine().getOut().println("The season sheet lies at " + plans.sheet());
        return outcome.broken().isEmpty() ? Exit.DONE : Exit.RULE_BROKEN;
    }
}
