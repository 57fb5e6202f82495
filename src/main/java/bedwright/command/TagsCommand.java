package bedwright.command;

import bedwright.file.Writing;
import bedwright.sheet.Tags;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes tags for trays and beds. */
@Command(
        name = "tags",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Makes tags to print and cut out, for trays and for the stretches of beds: number, crop, method, date. They lie"
                    + " in tags.html beside the plan.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright tags plans/first-bed"
        })
final class TagsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", description = "The plan's folder, or the plan.json in it.")
    private Path folder = Path.of("");

    @Override
    public Integer call() {
        PlanFolder plans = PlanFolder.at(folder);
        PlanAgain again = PlanAgain.read(plans);
        Tags tags = new Tags(again.sheet());
        Writing.saveAll(plans.folder(), Map.of("tags.html", tags.html().getBytes(StandardCharsets.UTF_8)));
        spec.commandLine()
                .getOut()
                .println(Words.count(tags.trays().size(), "tag") + " for trays and "
                        + Words.count(tags.beds().size(), "tag") + " for beds lie at "
                        + plans.folder().resolve("tags.html"));
        return Exit.DONE;
    }
}
