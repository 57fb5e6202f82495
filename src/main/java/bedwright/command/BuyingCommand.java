package bedwright.command;

import bedwright.season.Crop;
import bedwright.season.Season;
import bedwright.sheet.Buying;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Lists what has to be bought for a plan. */
@Command(
        name = "buying",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Lists what has to be bought for a plan, by the date to order it: on the screen, and as a page to print in"
                    + " buying.html beside the plan.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright buying plans/first-bed --have dill=200 --packet dill=500"
        })
final class BuyingCommand implements Callable<Integer> {
    private static final int WIDTH = 110;
    private static final int MOST_PER_CENT = 1000;
    private static final int MOST_WEEKS = 104;
    private static final int MOST_MILLILITRES = 100_000;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Option(
            names = "--have",
            paramLabel = "CROP=N",
            description = "Seeds, plugs or tubers of a crop that are in stock; once for each crop.")
    private Map<String, Integer> have = Map.of();

    @Option(
            names = "--packet",
            paramLabel = "CROP=N",
            description = "How many a packet of a crop holds; once for each crop.")
    private Map<String, Integer> packets = Map.of();

    @Option(
            names = "--margin",
            paramLabel = "PERCENT",
            defaultValue = "10",
            description = "Seed beyond what is sown, for gaps and spilling (${DEFAULT-VALUE}).")
    private Integer margin = 10;

    @Option(
            names = "--seed-weeks",
            paramLabel = "N",
            defaultValue = "6",
            description = "Weeks from ordering seed to sowing it (${DEFAULT-VALUE}).")
    private Integer seedWeeks = 6;

    @Option(
            names = "--plug-weeks",
            paramLabel = "N",
            defaultValue = "16",
            description = "The same for plugs (${DEFAULT-VALUE}).")
    private Integer plugWeeks = 16;

    @Option(
            names = "--tuber-weeks",
            paramLabel = "N",
            defaultValue = "20",
            description = "The same for tubers, corms and bulbs (${DEFAULT-VALUE}).")
    private Integer tuberWeeks = 20;

    @Option(
            names = "--mix",
            paramLabel = "ML",
            defaultValue = "40",
            description = "Potting mix for a tray cell, millilitres (${DEFAULT-VALUE}).")
    private Integer mix = 40;

    @Override
    public Integer call() {
        within("--margin", margin, MOST_PER_CENT);
        within("--seed-weeks", seedWeeks, MOST_WEEKS);
        within("--plug-weeks", plugWeeks, MOST_WEEKS);
        within("--tuber-weeks", tuberWeeks, MOST_WEEKS);
        within("--mix", mix, MOST_MILLILITRES);
        PlanFolder plans = named.folder();
        PlanAgain again = PlanAgain.read(plans);
        known("--have", have, 0, again.plan().season());
        known("--packet", packets, 1, again.plan().season());
        Buying buying = new Buying(
                again.sheet(), new Buying.Wishes(margin, have, packets, seedWeeks, plugWeeks, tuberWeeks, mix));
        Path page = plans.writePage("buying.html", buying.html());
        PrintWriter out = spec.commandLine().getOut();
        out.print(buying.text(WIDTH));
        out.println();
        out.println("To print: " + page);
        out.flush();
        return Exit.DONE;
    }

    private void within(String option, int value, int most) {
        if (value < 0 || value > most) {
            throw new ParameterException(
                    spec.commandLine(), option + " takes a whole number from 0 to " + most + ", not " + value);
        }
    }

    private void known(String option, Map<String, Integer> amounts, int least, Season season) {
        List<String> crops = season.crops().stream().map(Crop::name).toList();
        amounts.forEach((crop, amount) -> {
            if (!crops.contains(crop)) {
                throw new ParameterException(
                        spec.commandLine(),
                        option + " names \"" + crop + "\", which is no crop of this season; there are: \""
                                + String.join("\", \"", crops) + "\"");
            }
            if (amount < least) {
                throw new ParameterException(
                        spec.commandLine(),
                        option + " " + crop + " takes a whole number of at least " + least + ", not " + amount);
            }
        });
    }
}
