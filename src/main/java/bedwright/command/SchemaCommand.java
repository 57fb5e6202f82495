package bedwright.command;

import bedwright.file.Schema;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the JSON Schema of a file. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        description = {
            "Prints the JSON Schema of season files, plan files, prices, the crop book, the answers that a new season is"
                    + " made of or strategies to compare: point an editor at it and it completes and checks.",
            "",
            "  target/bedwright schema season > season.schema.json"
        })
final class SchemaCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "season|plan|prices|book|answers|strategies",
            description = "Which file's schema: season, plan, prices, book, answers or strategies.")
    private Which which = Which.SEASON;

    enum Which {
        SEASON,
        PLAN,
        PRICES,
        BOOK,
        ANSWERS,
        STRATEGIES;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Override
    public Integer call() {
        spec.commandLine()
                .getOut()
                .print(
                        switch (which) {
                            case SEASON -> Schema.season();
                            case PLAN -> Schema.plan();
                            case PRICES -> Schema.prices();
                            case BOOK -> Schema.book();
                            case ANSWERS -> Schema.answers();
                            case STRATEGIES -> Schema.strategies();
                        });
        spec.commandLine().getOut().flush();
        return Exit.DONE;
    }
}
