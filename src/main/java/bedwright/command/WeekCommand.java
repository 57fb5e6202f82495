package bedwright.command;

import bedwright.climate.PossibleSeasons;
import bedwright.log.SeasonLog;
import bedwright.plan.Delays;
import bedwright.plan.PlanFacts;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.sheet.WeekSheets;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the sheet of a week, or of all weeks. */
@Command(
        name = "week",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Tells what to cut, to do and to look for in a week of a plan: on the screen, and to print in a file"
                    + " week-DATE.html beside the plan. Without a date, all weeks in weeks.html. A week prints on one page.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright week plans/first-bed 2027-05-17"
        })
final class WeekCommand implements Callable<Integer> {
    /** Letters on a line of the screen. */
    private static final int WIDTH = 110;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "DATE",
            description = "A day of the week, as 2027-04-19; left out: all weeks.")
    private @Nullable LocalDate date;

    @Override
    public Integer call() {
        PlanFolder plans = named.folder();
        LocalDate day = date;
        PlanAgain again = again(plans, day);
        WeekSheets sheets = new WeekSheets(again.sheet(), Delays.of(again.facts(), again.places()));
        PrintWriter out = spec.commandLine().getOut();
        if (day == null) {
            List<Integer> weeks = sheets.weeks();
            Path file = plans.writePage("weeks.html", sheets.html(weeks));
            out.println("The sheets of " + Words.count(weeks.size(), "week") + " lie at " + file);
            return Exit.DONE;
        }
        Season season = again.plan().season();
        int week = season.weekOf(day);
        out.print(sheets.text(week, WIDTH));
        out.println();
        Path file = plans.writePage("week-" + season.weekStart(week) + ".html", sheets.html(List.of(week)));
        out.println("To print: " + file);
        out.flush();
        return Exit.DONE;
    }

    /** The plan as it was made; where there are notes, what they make of it by the week's beginning. */
    private PlanAgain again(PlanFolder plans, @Nullable LocalDate day) {
        Plan plan = plans.read();
        Season season = plan.season();
        if (day != null && (season.weekOf(day) < 0 || season.weekOf(day) >= season.weeks())) {
            throw new ParameterException(
                    spec.commandLine(),
                    "DATE " + day + " lies outside the season, which runs from " + season.starts() + " to "
                            + season.dateOf(season.days() - 1));
        }
        if (day != null && season.weekOf(day) < season.firstWeek()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "DATE " + day + ": the plan in force was made for what was left of the season from "
                            + season.weekStart(season.firstWeek())
                            + " on. What was planned before stands in the former plan, plan-1.json and so on beside it.");
        }
        SeasonLog log = SofarCommand.log(plans, plan);
        int notes = log.inForce().size();
        int week = day == null ? -1 : season.weekOf(day);
        if (notes == 0) {
            return PlanAgain.read(plans, plan, some -> facts(some, week));
        }
        spec.commandLine()
                .getErr()
                .println("By the plan and " + Words.count(notes, "note") + " in " + plans.log() + ".");
        String monday = day == null ? null : season.weekStart(week).toString();
        return PlanAgain.of(PlanNow.of(plan, log, monday, spec).plan(), some -> facts(some, week));
    }

    private static PlanFacts facts(Plan plan, int week) {
        return Delays.facts(plan.season(), PossibleSeasons.of(plan.season()), plan.plantings(), week);
    }
}
