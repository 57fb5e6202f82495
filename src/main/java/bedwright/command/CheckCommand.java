package bedwright.command;

import bedwright.file.SeasonFile;
import bedwright.season.Held;
import bedwright.season.Lots;
import bedwright.season.Season;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads a season file and says what is wrong with it, or what it holds. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = {
            "Reads a season file and tells every fault with its place, or what the file holds and what is odd about it.",
            "",
            "  target/bedwright check problems/first-bed.json"
        })
final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "SEASON", description = "The season file.")
    private Path file = Path.of("");

    @Override
    public Integer call() {
        SeasonFile.Checked checked = SeasonFile.check(file);
        Season season = checked.season();
        PrintWriter out = spec.commandLine().getOut();
        int methods =
                season.crops().stream().mapToInt(crop -> crop.methods().size()).sum();
        int lots = season.pool().stream().mapToInt(Lots::lots).sum();
        int held = season.held().stream().mapToInt(Held::lots).sum();
        double metres = season.allBeds().stream()
                .mapToDouble(bed -> bed.block().length())
                .sum();
        out.printf(Locale.ROOT, "%s: no fault.%n", season.name());
        out.printf(
                Locale.ROOT,
                "%s from %s; %s, %s; %s with %s; %s to choose from%s, %d standing; %s, %s.%n",
                Words.count(season.weeks(), "week"),
                season.starts(),
                Words.count(season.allBeds().size(), "bed"),
                Words.length(season, metres),
                Words.count(season.crops().size(), "crop"),
                Words.count(methods, "method"),
                Words.count(lots, "lot"),
                held == 0 ? "" : " (" + held + " held in place)",
                season.standing().size(),
                Words.count(season.outlets().size(), "outlet"),
                Words.count(season.orders().size(), "order"));
        checked.remarks().forEach(remark -> out.println("Worth a look: " + remark));
        return Exit.DONE;
    }
}
