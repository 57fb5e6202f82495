package bedwright.command;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Where the program starts. */
@Command(
        name = "bedwright",
        mixinStandardHelpOptions = true,
        version = "bedwright 0.1.0",
        description = "Plans a season of cut flowers.")
public final class Main implements Runnable {

    private Main() {}

    @Override
    public void run() {
        CommandLine.usage(this, System.out);
    }

    /**
     * Runs the command and ends the process with its exit code.
     *
     * @param args what was typed after the program's name
     */
    public static void main(String[] args) {
        System.exit(new CommandLine(new Main()).execute(args));
    }
}
