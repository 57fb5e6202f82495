package bedwright.command;

import bedwright.sheet.Tags;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Makes tags for trays and beds. */
@Command(
        name = "tags",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Makes tags to print and cut out, for trays and for the stretches of beds: number, crop, method, date. They lie"
                    + " in tags.html beside the plan. Where something was noted, or with --on, they are those of what"
                    + " stands by then and is still to come.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright tags plans/first-bed"
        })
final class TagsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Mixin
    private OnDay onDay = new OnDay();

    @Override
    public Integer call() {
        PlanFolder plans = named.folder();
        PlanAgain again = onDay.again(plans);
        Tags tags = new Tags(again.sheet());
        Path page = plans.writePage("tags.html", tags.html());
        spec.commandLine()
                .getOut()
                .println(Words.count(tags.trays().size(), "tag") + " for trays and "
                        + Words.count(tags.beds().size(), "tag") + " for beds lie at "
                        + page);
        return Exit.DONE;
    }
}
