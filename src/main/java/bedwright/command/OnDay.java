package bedwright.command;

import bedwright.climate.PossibleSeasons;
import bedwright.log.SeasonLog;
import bedwright.plan.PlanFacts;
import bedwright.season.Plan;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The day on which something is asked of a plan and its notes: mixed into the commands that need it. */
final class OnDay {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--on",
            paramLabel = "DAY",
            description = "The day it is, as 1 July or 2027-07-01: what is left of the season by then, by the plan and"
                    + " the notes. Left out: today, or where nothing was noted the season as it was planned.")
    private @Nullable String on;

    /** The plan in a folder, as it was made or what is left of it by the notes, which is told. */
    PlanNow of(PlanFolder plans, Plan plan) {
        SeasonLog log = SofarCommand.log(plans, plan);
        PlanNow now = PlanNow.of(plan, log, on, spec);
        if (now.on() != null) {
            int notes = log.inForce().size();
            spec.commandLine()
                    .getErr()
                    .println("On " + Words.date(now.on()) + ", by the plan"
                            + (notes == 0 ? "" : " and " + Words.count(notes, "note") + " in " + plans.log()) + ".");
        }
        return now;
    }

    /** The same worked out. */
    PlanAgain again(PlanFolder plans) {
        Plan plan = plans.read();
        PlanNow now = of(plans, plan);
        return now.on() == null ? PlanAgain.read(plans, plan, OnDay::facts) : PlanAgain.of(now.plan(), OnDay::facts);
    }

    private static PlanFacts facts(Plan plan) {
        return PlanFacts.ofPlan(plan.season(), PossibleSeasons.of(plan.season()), plan.plantings());
    }
}
