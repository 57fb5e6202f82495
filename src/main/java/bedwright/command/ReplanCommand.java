package bedwright.command;

import bedwright.climate.PossibleSeasons;
import bedwright.file.PlainJson;
import bedwright.log.Entry;
import bedwright.log.SeasonLog;
import bedwright.plan.InForce;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Replan;
import bedwright.plan.Search;
import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.UnderWay;
import bedwright.sheet.NewPlanWords;
import bedwright.underway.Onward;
import bedwright.underway.Remaining;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Plans what is left of a season anew. */
@Command(
        name = "replan",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Plans what is left of the season anew, from the plan in force and what was noted; shows what the new plan"
                    + " changes and what each change buys. The new plan is only proposed, in proposal.json beside the plan,"
                    + " until it is accepted; Ctrl-C ends the search and keeps the best so far.",
            "",
            "  target/bedwright replan plans/first-bed --on 2027-06-20",
            "  target/bedwright replan plans/first-bed --on 2027-06-20 --keep 3 --keep 5",
            "  target/bedwright replan plans/first-bed --accept",
            "",
            "With --accept the plan that was shown becomes the plan in force, and the former one stays beside it as"
                    + " plan-1.json, plan-2.json and so on. Plantings keep their numbers, and the notes go on."
        })
final class ReplanCommand implements Callable<Integer> {
    private static final double USUAL_SECONDS = 5;
    private static final int DEAREST = 100;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Option(
            names = "--on",
            paramLabel = "DAY",
            description =
                    "The day it is, as 1 July or 2027-07-01; left out: the day on which this is run. What is due on"
                            + " it can still be changed.")
    private @Nullable String on;

    @Option(
            names = "--keep",
            paramLabel = "N",
            description = "A planting that stays as the plan in force has it, by its number; or a new one of the last"
                    + " proposal, whose crop is then not put into that bed. Can be given several times.")
    private List<Integer> keep = List.of();

    @Option(names = "--accept", description = "Makes the plan that was last proposed the plan in force.")
    private boolean isAccepting;

    @Option(
            names = "--time",
            paramLabel = "SECONDS",
            description = "How long to search; left out, and without --moves: 5.")
    private @Nullable Double seconds;

    @Option(
            names = "--moves",
            paramLabel = "N",
            description =
                    "How many moves each of the two searches tries: with it the new plan depends on nothing but the"
                            + " plan, the notes, the day and the seed.")
    private @Nullable Long moves;

    @Option(names = "--seed", paramLabel = "N", description = "Seed of the search; left out: 1.")
    private long seed = 1;

    @Option(
            names = "--dear",
            paramLabel = "N",
            description =
                    "How many times as dear a change is as the season file's \"changes\" say: with 0.2 many changes"
                            + " that each buy little, with 3 only those that buy much; left out: 1.")
    private double dear = 1;

    @Option(
            names = "--format",
            paramLabel = "text|json",
            description = "How the changes are told: as text, or as JSON for programs.")
    private PlanCommand.Format format = PlanCommand.Format.TEXT;

    @Override
    public Integer call() {
        PlanFolder plans = named.folder();
        if (isAccepting) {
            return accept(plans);
        }
        Search.Limits limits = limits();
        Plan plan = plans.read();
        Proposal proposal = new Proposal(plans);
        Onward.Known known = proposal.known();
        SeasonLog log = SofarCommand.log(plans, plan);
        LocalDate day = day(plan, log);
        List<KeptPlanting> refused = new ArrayList<>();
        Set<Integer> kept = new HashSet<>();
        for (int number : keep) {
            if (plan.has(number)) {
                kept.add(number);
            } else {
                refused.add(proposal.proposed(number));
            }
        }
        Remaining remaining = Remaining.of(plan, log, day);
        Season priced = remaining.season().with(remaining.season().changes().dearer(dear));
        Season season = numberedAfter(priced, refused);
        spec.commandLine().getErr().println("Working out what is left of the season, and what might be changed …");
        PlanFacts facts = InForce.facts(season, PossibleSeasons.of(season), true);
        mustBePossible(kept, remaining, facts);
        Replan replan = new Replan(facts, limits, kept, refused);
        PrintWriter err = spec.commandLine().getErr();
        try (OnInterrupt interrupt = new OnInterrupt(err)) {
            interrupt.stops(replan.search()::stop);
            int[] places;
            try (Progress progress = new Progress(facts, replan.search(), err, System.console() != null)) {
                places = replan.run();
            }
            return propose(
                    plan,
                    remaining,
                    new Made(facts, places, limits, replan.search().isStopped()),
                    refused,
                    proposal,
                    known);
        }
    }

    /** A new plan and how it was made. */
    private record Made(PlanFacts facts, int[] places, Search.Limits limits, boolean isInterrupted) {
        Plan plan(Outcome outcome) {
            Duration time = limits.time();
            Plan.Making making = new Plan.Making(
                    limits.seed(),
                    time == null ? null : time.toMillis() / 1000.0,
                    limits.moves(),
                    isInterrupted,
                    false);
            return new Plan(1, facts.season(), making, outcome.score(), outcome.plantings());
        }
    }

    private int propose(
            Plan before,
            Remaining remaining,
            Made made,
            List<KeptPlanting> refused,
            Proposal proposal,
            Onward.Known known) {
        PlanFacts facts = made.facts();
        Outcome outcome = Outcomes.of(facts, made.places());
        PlanCommand.recheck(facts.season(), facts, outcome);
        List<Replan.Bought> bought = Replan.bought(facts, made.places());
        NewPlanWords words = new NewPlanWords(facts.season());
        List<String> impossible = words.noLongerPossible(
                underWay(remaining.season()).inForce(), underWay(facts.season()).inForce());
        boolean isAny = !bought.isEmpty() || !impossible.isEmpty();
        if (isAny) {
            proposal.write(Onward.of(before, remaining, made.plan(outcome), refused, known));
        } else {
            proposal.withdraw();
        }
        PrintWriter out = spec.commandLine().getOut();
        if (format == PlanCommand.Format.JSON) {
            out.println(PlainJson.text(new NewPlanJson(facts.season())
                    .of(
                            underWay(facts.season()).on(),
                            impossible,
                            bought,
                            bought.isEmpty() ? null : Replan.allTogether(facts, made.places()))));
        } else {
            tell(facts, made.places(), bought, impossible, words);
            tellBroken(words.broken(outcome));
        }
        if (made.isInterrupted()) {
            spec.commandLine().getErr().println("Interrupted: this is the best new plan so far.");
            return Exit.INTERRUPTED;
        }
        return outcome.broken().isEmpty() ? Exit.DONE : Exit.RULE_BROKEN;
    }

    private void tell(
            PlanFacts facts, int[] places, List<Replan.Bought> bought, List<String> impossible, NewPlanWords words) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(facts.season().name() + ", a new plan from "
                + Words.date(underWay(facts.season()).on()) + " on");
        out.println();
        if (!impossible.isEmpty()) {
            out.println("What can't be done any more as planned, whatever is decided:");
            impossible.forEach(line -> out.println("- " + line));
            out.println();
        }
        if (bought.isEmpty()) {
            out.println("Nothing was found that is worth changing"
                    + (impossible.isEmpty() ? ": the plan in force stays as it is." : " beside that."));
        } else {
            words.lines(bought, Replan.allTogether(facts, places)).forEach(out::println);
            out.println();
            out.println(words.key());
        }
        if (!bought.isEmpty() || !impossible.isEmpty()) {
            out.println();
            out.println("To make it the plan in force: " + Called.name() + " replan " + named.typed() + " --accept");
            out.println("To refuse a change: the same command with --keep and the planting's number.");
        }
    }

    private void tellBroken(List<String> broken) {
        PrintWriter out = spec.commandLine().getOut();
        if (!broken.isEmpty()) {
            out.println();
            out.println("No way was found to keep every rule from now on:");
            broken.forEach(line -> out.println("- " + line));
        }
    }

    private int accept(PlanFolder plans) {
        plans.read();
        Path former = new Proposal(plans).accept();
        Plan plan = plans.read();
        spec.commandLine()
                .getOut()
                .println("The plan from " + Words.date(underWay(plan.season()).on())
                        + " on is in force. The former one lies at " + former + "; the season sheet is drawn anew at "
                        + plans.sheet());
        return Exit.DONE;
    }

    /** New plantings don't get the numbers of refused ones, so that these can be named again. */
    private static Season numberedAfter(Season season, List<KeptPlanting> refused) {
        int next = refused.stream()
                .mapToInt(planting -> planting.number() + 1)
                .max()
                .orElse(1);
        return season.with(underWay(season).numberedFrom(next));
    }

    private static UnderWay underWay(Season season) {
        return Objects.requireNonNull(season.underWay());
    }

    private void mustBePossible(Set<Integer> kept, Remaining remaining, PlanFacts facts) {
        for (int number : kept) {
            boolean isPossible = underWay(facts.season()).inForce().stream().anyMatch(one -> one.number() == number);
            if (!isPossible) {
                String stage = remaining.states().stream()
                        .filter(state -> state.number() == number)
                        .map(state -> SofarCommand.stage(state.stage()))
                        .findFirst()
                        .orElse("gone");
                throw usage("--keep " + number + ": this planting can't be had any more as the plan in force has it ("
                        + stage + "). Leave it away.");
            }
        }
    }

    private LocalDate day(Plan plan, SeasonLog log) {
        LocalDate day = SofarCommand.day(plan.season(), on, spec);
        UnderWay last = plan.season().underWay();
        if (last != null && day.isBefore(last.on())) {
            throw usage("--on: the plan in force was made on " + Words.date(last.on()) + ", after " + Words.date(day)
                    + ". Say that day or a later one.");
        }
        for (Entry entry : log.inForce()) {
            if (entry.on().isAfter(day)) {
                throw usage("--on: note " + entry.number() + " is of " + Words.date(entry.on()) + ", after "
                        + Words.date(day) + ". Say that day or a later one.");
            }
        }
        return day;
    }

    private Search.Limits limits() {
        SearchOptions.check(seconds, moves, seed, spec);
        if (!(dear >= 0 && dear <= DEAREST)) {
            throw usage("--dear takes a number from 0 to " + DEAREST + ", like 0.2 for many changes or 3 for few, not "
                    + dear);
        }
        Double limit = seconds == null && moves == null ? Double.valueOf(USUAL_SECONDS) : seconds;
        return new Search.Limits(seed, limit == null ? null : Duration.ofMillis(Math.round(1000 * limit)), moves);
    }

    private ParameterException usage(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
