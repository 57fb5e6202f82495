package bedwright.command;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.file.PlainJson;
import bedwright.plan.NotThere;
import bedwright.plan.Outcome;
import bedwright.plan.PlantingReasons;
import bedwright.plan.WeekReasons;
import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.KindTree;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.sheet.SheetFacts;
import bedwright.sheet.WhyNotThere;
import bedwright.sheet.WhyPlanting;
import bedwright.sheet.WhyWeek;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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
                    + " change. With --week and --kind: why a week is short of a kind of stems or has too many, and the"
                    + " three cheapest ways to mend it. With --not, --bed and --week: why a crop is not sown or set there"
                    + " then. Every change is really tried on the whole plan; nothing is written.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright why plans/first-bed 2",
            "  target/bedwright why plans/first-bed --week 2027-07-05 --kind focal",
            "  target/bedwright why plans/first-bed --not dill --bed \"Open bed\" --week 2027-05-17"
        })
final class WhyCommand implements Callable<Integer> {
    /** Letters on a line of a sentence. */
    private static final int WIDTH = 100;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "N",
            description = "The number of a planting, as on the sheet.")
    private @Nullable Integer number;

    @Option(names = "--week", paramLabel = "DATE", description = "A day of the week meant, as 2027-07-05.")
    private @Nullable LocalDate week;

    @Option(names = "--kind", paramLabel = "K", description = "The kind of stems, as \"focal\" or \"focal/warm\".")
    private @Nullable String kind;

    @Option(names = "--not", paramLabel = "CROP", description = "The crop that is not there.")
    private @Nullable String not;

    @Option(names = "--bed", paramLabel = "B", description = "The bed in which it is not.")
    private @Nullable String bed;

    @Option(names = "--format", paramLabel = "text|json", description = "Words, or JSON.")
    private PlanCommand.Format format = PlanCommand.Format.TEXT;

    @Override
    public Integer call() {
        LocalDate day = week;
        String crop = not;
        String inBed = bed;
        String stems = kind;
        boolean aPlanting = number != null && day == null && crop == null && inBed == null && stems == null;
        boolean aWeek = number == null && day != null && stems != null && crop == null && inBed == null;
        boolean notThere = number == null && day != null && crop != null && inBed != null && stems == null;
        if (!aPlanting && !aWeek && !notThere) {
            throw new ParameterException(
                    spec.commandLine(),
                    "why takes one of three after the plan: the number of a planting; --week and --kind; or --not, --bed"
                            + " and --week");
        }
        PlanFolder plans = named.folder();
        Plan plan = plans.read();
        String answer;
        try {
            answer = aPlanting
                    ? planting(plans, plan)
                    : aWeek && day != null && stems != null
                            ? week(plans, plan, day, stems)
                            : day != null && crop != null && inBed != null ? notThere(plan, crop, inBed, day) : "";
        } catch (IllegalArgumentException e) {
            throw new Refusal(Exit.FAULTY_FILE, plans.plan() + ": " + e.getMessage() + ". Make the plan anew.");
        }
        PrintWriter out = spec.commandLine().getOut();
        out.print(answer);
        out.flush();
        return Exit.DONE;
    }

    private String planting(PlanFolder plans, Plan plan) {
        KeptPlanting planting = planting(plan);
        PlantingReasons reasons =
                PlantingReasons.of(plan.season(), PossibleSeasons.of(plan.season()), plan.plantings(), planting);
        mustScoreAsItSays(plans, plan, reasons.without().before());
        return format == PlanCommand.Format.JSON
                ? PlainJson.text(new WhyJson(plan.season()).planting(reasons))
                : WhyPlanting.text(plan.season(), reasons, WIDTH);
    }

    private String week(PlanFolder plans, Plan plan, LocalDate day, String path) {
        Season season = plan.season();
        List<PossibleSeason> possible = PossibleSeasons.of(season);
        int node = kind(season, path);
        WeekReasons reasons = WeekReasons.of(season, possible, plan.plantings(), weekOf(season, day), node);
        mustScoreAsItSays(plans, plan, reasons.outcome());
        if (format == PlanCommand.Format.JSON) {
            return PlainJson.text(new WhyJson(season).week(reasons));
        }
        return WhyWeek.text(
                new SheetFacts(season, reasons.outcome(), possible, reasons.prospects(), plan.making()),
                reasons,
                WIDTH);
    }

    private String notThere(Plan plan, String crop, String inBed, LocalDate day) {
        Season season = plan.season();
        int cropIndex =
                index("crop", crop, season.crops().stream().map(Crop::name).toList());
        int bedIndex =
                index("bed", inBed, season.allBeds().stream().map(Bed::name).toList());
        int sowWeek = weekOf(season, day);
        List<NotThere> ways =
                NotThere.of(season, PossibleSeasons.of(season), plan.plantings(), cropIndex, bedIndex, sowWeek);
        return format == PlanCommand.Format.JSON
                ? PlainJson.text(new WhyJson(season).notThere(ways))
                : WhyNotThere.text(season, cropIndex, bedIndex, sowWeek, ways, WIDTH);
    }

    private int weekOf(Season season, LocalDate day) {
        int number = season.weekOf(day);
        if (number < 0 || number >= season.weeks()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--week " + day + " lies outside the season, which runs from " + season.starts() + " to "
                            + season.dateOf(season.days() - 1));
        }
        return number;
    }

    private int kind(Season season, String path) {
        KindTree kinds = KindTree.of(season.roles());
        List<String> paths =
                IntStream.range(0, kinds.size()).mapToObj(kinds::path).toList();
        return index("kind", path, paths);
    }

    private int index(String what, String name, List<String> names) {
        int index = names.indexOf(name);
        if (index < 0) {
            throw new ParameterException(
                    spec.commandLine(),
                    "No " + what + " is named \"" + name + "\"; there are: \"" + String.join("\", \"", names) + "\"");
        }
        return index;
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
