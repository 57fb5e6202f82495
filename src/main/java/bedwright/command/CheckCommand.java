package bedwright.command;

import bedwright.file.SeasonFile;
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
            "Reads a season file: tells every fault with its place and how to mend it, or what the file holds and",
            "what is odd about it.",
            "",
            "  bedwright check problems/first-bed.json"
        })
final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "SEASON", description = "The season file.")
    private Path file = Path.of("");

    @Override
    public Integer call() {
        Season season = SeasonFile.read(file);
        PrintWriter out = spec.commandLine().getOut();
        int methods =
                season.crops().stream().mapToInt(crop -> crop.methods().size()).sum();
        int lots = season.pool().stream().mapToInt(Lots::lots).sum();
        double metres = season.allBeds().stream()
                .mapToDouble(bed -> bed.block().length())
                .sum();
        out.printf(Locale.ROOT, "%s: no fault.%n", season.name());
        out.printf(
                Locale.ROOT,
                "%d weeks from %s; %d beds, %s m; %d crops by %d methods; %d lots to choose from; %d standing; %d outlets,"
                        + " %d orders.%n",
                season.weeks(),
                season.starts(),
                season.allBeds().size(),
                Words.number(metres),
                season.crops().size(),
                methods,
                lots,
                season.standing().size(),
                season.outlets().size(),
                season.orders().size());
        SeasonFile.remarks(file).forEach(remark -> out.println("Worth a look: " + remark));
        return Exit.DONE;
    }
}
