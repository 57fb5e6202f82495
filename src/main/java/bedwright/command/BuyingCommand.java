package bedwright.command;

import bedwright.sheet.Buying;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Lists what has to be bought for a plan. */
@Command(
        name = "buying",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Lists what has to be bought for a plan, by the date to order it: on the screen, and as a page to print in"
                    + " buying.html beside the plan. Where something was noted, or with --on, only what is still to be"
                    + " sown and set is bought.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright buying plans/first-bed --have dill=200 --packet dill=500"
        })
final class BuyingCommand implements Callable<Integer> {
    private static final int WIDTH = 110;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Mixin
    private OnDay onDay = new OnDay();

    @Mixin
    private BuyingOptions options = new BuyingOptions();

    @Override
    public Integer call() {
        options.mustBeInRange();
        PlanFolder plans = named.folder();
        PlanAgain again = onDay.again(plans);
        Buying buying = new Buying(again.sheet(), options.of(again.plan().season()));
        Path page = plans.writePage("buying.html", buying.html());
        PrintWriter out = spec.commandLine().getOut();
        out.print(buying.text(WIDTH));
        out.println();
        out.println("To print: " + page);
        out.flush();
        return Exit.DONE;
    }
}
