package bedwright.command;

import bedwright.file.Fault;
import bedwright.file.FaultyFile;
import bedwright.file.FileTrouble;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Where the program starts. */
@Command(
        name = "bedwright",
        mixinStandardHelpOptions = true,
        version = "bedwright 0.1.0",
        sortOptions = false,
        description = {
            "Plans a season of cut flowers: what goes in which bed, in which week, by which method.",
            "",
            "Make a plan of a season file, or begin a season of your own by answering questions:",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright new my-season.json",
            "Each command explains itself: target/bedwright plan --help"
        },
        footer = {
            "",
            "Exit codes: 0 done; 1 the plan breaks a rule that has to hold; 2 wrong usage; 3 a faulty input file;"
                    + " 4 a file that can't be read or written; 70 a fault of ours; 130 interrupted, with the best plan"
                    + " kept."
        })
public final class Main implements Runnable {
    /** Letters on a line of the help. */
    private static final int WIDTH = 110;

    /** In the order of the help. */
    private static final List<Class<?>> COMMANDS = List.of(
            PlanCommand.class,
            CheckCommand.class,
            CompareCommand.class,
            ExpectCommand.class,
            NewCommand.class,
            CropsCommand.class,
            WeatherCommand.class,
            NoteCommand.class,
            SofarCommand.class,
            ReplanCommand.class,
            StormCommand.class,
            EatenCommand.class,
            PromiseCommand.class,
            StillCommand.class,
            WhyCommand.class,
            RecheckCommand.class,
            SheetCommand.class,
            CalendarCommand.class,
            TablesCommand.class,
            WeekCommand.class,
            BuyingCommand.class,
            TagsCommand.class,
            SchemaCommand.class);

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private Main() {}

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /**
     * Runs the command and ends the process with its exit code.
     *
     * @param args what was typed after the program's name
     */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int code = run(out, err, args);
        out.flush();
        err.flush();
        System.exit(code);
    }

    /** Runs the command and returns its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = new CommandLine(new Main());
        asked(args).forEach(line::addSubcommand);
        line.setOut(out).setErr(err);
        settle(line);
        return line.execute(args);
    }

    /** Only the command that was typed, if it is one: to make them all takes longer than many a command's work. */
    private static List<Class<?>> asked(String... args) {
        List<Class<?>> typed = COMMANDS.stream()
                .filter(command -> args.length > 0
                        && command.getAnnotation(Command.class).name().equals(args[0]))
                .toList();
        return typed.isEmpty() ? COMMANDS : typed;
    }

    /** Neither exit codes nor handlers are handed down to subcommands: they are set on each. */
    private static void settle(CommandLine line) {
        line.getCommandSpec().exitCodeOnInvalidInput(Exit.USAGE).exitCodeOnExecutionException(Exit.OUR_FAULT);
        line.setExecutionExceptionHandler((trouble, command, parsed) -> tell(trouble, command.getErr()));
        line.setParameterExceptionHandler((wrong, args) -> usage(wrong));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpWidth(WIDTH);
        CommandLine.Model.UsageMessageSpec help = line.getCommandSpec().usageMessage();
        help.description(Stream.of(help.description()).map(Called::in).toArray(String[]::new));
        help.footer(Stream.of(help.footer()).map(Called::in).toArray(String[]::new));
        Typed.register(line);
        line.getSubcommands().values().forEach(Main::settle);
    }

    /** The whole help would push the message off the screen. */
    private static int usage(CommandLine.ParameterException wrong) {
        PrintWriter err = wrong.getCommandLine().getErr();
        err.println(
                wrong instanceof CommandLine.UnmatchedArgumentException unmatched
                        ? "Not understood: " + String.join(" ", unmatched.getUnmatched())
                        : wrong.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(wrong, err);
        err.println("How it is used: " + wrong.getCommandLine().getCommandSpec().qualifiedName() + " --help");
        return Exit.USAGE;
    }

    private static int tell(Exception trouble, PrintWriter err) {
        if (trouble instanceof FaultyFile faulty) {
            for (Fault fault : faulty.faults()) {
                err.println(fault);
            }
            int count = faulty.count();
            if (count > faulty.faults().size()) {
                err.println("… and " + (count - faulty.faults().size()) + " more like these.");
            }
            err.println(count == 1 ? "1 fault; nothing was written." : count + " faults; nothing was written.");
            return Exit.FAULTY_FILE;
        }
        if (trouble instanceof FileTrouble file) {
            err.println(file.getMessage());
            return Exit.FILE_TROUBLE;
        }
        if (trouble instanceof Refusal refusal) {
            err.println(refusal.getMessage());
            return refusal.code();
        }
        err.println("This is a fault of Bedwright's own, not of your files: " + trouble);
        if (trouble.getStackTrace().length > 0) {
            err.println("It happened at " + trouble.getStackTrace()[0] + ". Please report it with the season file.");
        }
        return Exit.OUR_FAULT;
    }
}
