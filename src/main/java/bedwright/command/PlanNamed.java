package bedwright.command;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** The plan that a command is about, as its first word: mixed into every command that has one. */
final class PlanNamed {
    @Parameters(index = "0", paramLabel = "PLAN", description = "The plan's folder, or the plan.json in it.")
    private Path named = Path.of("");

    /** Its folder. */
    PlanFolder folder() {
        return PlanFolder.at(named);
    }

    /** As it was typed, to be said in a command that can be pasted. */
    String typed() {
        return named.toString();
    }
}
