package bedwright.command;

import bedwright.log.Note;
import bedwright.log.SeasonLog;
import bedwright.season.Nearest;
import bedwright.season.Pest;
import bedwright.season.Plan;
import bedwright.season.Season;
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
import picocli.CommandLine.Spec;

/** Says where to look first after insects, slugs or other pests came. */
@Command(
        name = "eaten",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "After insects, slugs or others came: where they likely ate, the most threatened first, as a round to walk. By"
                    + " what the season file says of them, what each crop is to them, how tender it is that day, row cover and"
                    + " the rough grass they come from, and by what was noted so far.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright eaten plans/first-bed --on \"20 May\"",
            "  target/bedwright eaten plans/first-bed --on \"20 May\" --walk"
        })
final class EatenCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Option(
            names = "--on",
            required = true,
            paramLabel = "DAY",
            description = "The day it was seen, as 20 May or 2027-05-20.")
    private String on = "";

    @Option(
            names = "--by",
            paramLabel = "PEST",
            description = "Who ate, by its name in the season file; left out: all that are there.")
    private @Nullable String by;

    @Mixin
    private RoundWalked walked = new RoundWalked();

    @Override
    public Integer call() {
        if (!walked.wrong().isEmpty()) {
            throw usage(walked.wrong());
        }
        PlanFolder plans = named.folder();
        Plan plan = plans.read();
        SeasonLog log = SofarCommand.log(plans, plan);
        List<Integer> pests = pests(plan.season());
        LocalDate day = SofarCommand.saidDay(plan.season(), on, spec);
        RoundWalked.About about = RoundWalked.About.of(plans, plan, log, named.typed(), day, Note.Cause.PEST);
        Plan then = about.was().plan();
        EatenRound round = EatenRound.of(then.season(), then.plantings(), pests, day);
        PrintWriter out = spec.commandLine().getOut();
        round.print(out);
        return walked.follow(
                about, new RoundWalked.Round(round.damaged(), "planned", harm -> round.first(out, harm.gone())), out);
    }

    private List<Integer> pests(Season season) {
        List<String> names = season.pests().stream().map(Pest::name).toList();
        if (names.isEmpty()) {
            throw usage("The season file names no pests, so nothing can be said of where they ate. Note what is lost: "
                    + Called.name() + " note " + named.typed() + " 14 lost half pest");
        }
        String pest = by;
        if (pest == null) {
            return IntStream.range(0, names.size()).boxed().toList();
        }
        int index = names.indexOf(pest.strip());
        if (index < 0) {
            throw usage("--by: the season file names no pest \"" + pest.strip() + "\"."
                    + Nearest.of(pest.strip(), names)
                            .map(near -> " Did you mean \"" + near + "\"?")
                            .orElse("")
                    + " There are " + String.join(", ", names) + ".");
        }
        return List.of(index);
    }

    private ParameterException usage(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
