package bedwright.command;

import bedwright.file.HeldFolder;
import bedwright.log.Entry;
import bedwright.log.FaultyNotes;
import bedwright.log.LogFile;
import bedwright.log.SaidDay;
import bedwright.log.SeasonLog;
import bedwright.log.Understood;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Notes what happened. */
@Command(
        name = "note",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Notes what happened, a line a note, in season.log beside the plan; what is not noted was done as planned."
                    + " Shows what it understood before it writes.",
            "",
            "  target/bedwright note plans/demo-farm 14 lost half wind --on 20-Jul",
            "",
            "A note is a day (left out: that of --on) and one of these; 14 stands for a planting's number on the sheet:",
            "  14 up, 14 pinch-stage, 14 colour, 14 first-stem    a stage seen that day",
            "  14 up 80%%                      up, and so much of what was sown came up",
            "  14 stands 80%%                  plants counted, of all that were planted (40, 1/3, 30%%, half, all)",
            "  14 lost half wind              lost, of what stood; wind, frost, pest, disease, other or nothing",
            "  14 cut 140 all                 stems cut, and all that was ready; or: cut 90 left 40; or: cut 90",
            "  14 moved 26-Apr                done on another day",
            "  14 in-bed B2, 14 plants 120    done in another bed; with another number of plants",
            "  14 not-done, 14 pulled         never sown or set; pulled, so that the bed is free",
            "  week 12-Apr done               the week's work was done; or: done except 14 17",
            "  weather min 4 max 15           a day's weather, in the season file's units; or: gust 21 west; or both",
            "  order-new Inn for 12 Sep: 120 focal, 60 spike at 0.50     promised; without \"at\" at the best price;",
            "                                 also: for 1 Jul to 2 Sep: 9 bouquets of RECIPE (each week)",
            "  order-changed Inn for 12 Sep: 80 focal        so much instead in these weeks",
            "  order-gone Inn                 gone from that day on; or: for 12 Sep to 3 Oct",
            "  order-asked Inn until 20-Aug for 12 Sep: 120 focal        undecided, held for them up to a day",
            "  bed-gone B2 for 12 Jul to 2 Aug               nothing can be planted there",
            "  helper-gone 20 hours 1 hand for 12 Jul to 2 Aug              fewer hours a week; or: 20 hired hours;",
            "                                 hands are those on cutting mornings",
            "  stock-gone 40 of bench for 12 Jul to 2 Aug    bench, trays, row cover or a net's name",
            "  say the gate was left open     free words",
            "  take-back 3                    note 3 no longer counts; it stays in the file",
            "Days are 26-Apr, 26 Apr or 2027-04-26. Several notes stand one a line on standard input, or on the command"
                    + " line with a / between them; all are written or none. With --yes nobody is asked."
        })
final class NoteCommand implements Callable<Integer> {
    /** What stands between notes on the command line. */
    private static final String NEXT = "/";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "NOTE", description = "The note's words.")
    private List<String> words = List.of();

    @Option(
            names = "--on",
            paramLabel = "DAY",
            description = "Day of notes that name none; left out: the day on which this is run.")
    private @Nullable String on;

    @Option(
            names = "--weather",
            paramLabel = "FILE",
            description =
                    "Notes the weather of all days of the season that the record of a weather station has and that"
                            + " are not noted yet.")
    private @Nullable Path weather;

    @Option(names = "--yes", description = "Writes without asking.")
    private boolean isSure;

    @Option(names = "--list", description = "Lists the notes so far with their numbers, and writes nothing.")
    private boolean isListing;

    @Override
    public Integer call() {
        PlanFolder plans = named.folder();
        Plan plan = plans.read();
        try {
            SeasonLog log = read(plans, plan);
            if (isListing) {
                list(plan, log);
                return Exit.DONE;
            }
            return note(plans, plan, log);
        } catch (IOException e) {
            throw new Refusal(Exit.FILE_TROUBLE, plans.log() + ": " + e.getMessage() + "; nothing was written.");
        }
    }

    private SeasonLog read(PlanFolder plans, Plan plan) throws IOException {
        SeasonLog log;
        try {
            log = LogFile.read(plans.log(), plan);
        } catch (FaultyNotes e) {
            throw refused(plans.log().toString(), 0, e);
        }
        if (!log.cutOff().isEmpty()) {
            spec.commandLine()
                    .getErr()
                    .println(plans.log() + ":" + (log.lines() + 1) + ":1: This line was cut off while it was being"
                            + " written and does not count: \"" + log.cutOff() + "\". Note it again if it is true.");
        }
        return log;
    }

    private int note(PlanFolder plans, Plan plan, SeasonLog log) throws IOException {
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        boolean isTyped = !words.isEmpty() || weather != null;
        List<String> lines = weather != null
                ? WeatherLines.of(plan.season(), log, weather)
                : (words.isEmpty() ? in.lines() : typed().stream().flatMap(String::lines))
                        .map(line -> line.isBlank() ? "" : dated(plan.season(), line))
                        .toList();
        if (lines.stream().allMatch(String::isEmpty)) {
            throw new Refusal(
                    Exit.USAGE,
                    weather == null
                            ? "There is no note. Write one, like: 14 lost half wind"
                            : weather + ": It has no day of the season with temperatures that is not noted yet.");
        }
        SeasonLog after;
        try {
            after = log.plus(plan, String.join("\n", lines) + "\n");
        } catch (FaultyNotes e) {
            throw refused(isTyped ? "note" : "standard input", log.lines(), e);
        }
        PrintWriter out = spec.commandLine().getOut();
        List<Entry> fresh =
                after.entries().subList(log.entries().size(), after.entries().size());
        fresh.forEach(entry -> out.println(Understood.sentence(plan, entry)));
        if (!isSure && !isTyped) {
            out.println("Nothing is written yet. If that is right, run it again with --yes.");
            return Exit.DONE;
        }
        if (!isSure) {
            out.print("Write it down? (y/n) ");
            out.flush();
            String answer = in.readLine();
            if (answer == null || !answer.strip().equalsIgnoreCase("y")) {
                out.println("Nothing was written.");
                return Exit.DONE;
            }
        }
        if (!append(plans, plan, log, lines)) {
            throw new Refusal(
                    Exit.FILE_TROUBLE,
                    plans.log() + ": Somebody else wrote into the log meanwhile; nothing was written. Note it again.");
        }
        out.println("Written to " + plans.log());
        return Exit.DONE;
    }

    /**
     * Not while a plan is written there, whose plantings may have other numbers. One note is added to the file; several are
     * saved as one with those before, so that a loss of power leaves all or none of them.
     */
    static boolean append(PlanFolder plans, Plan plan, SeasonLog log, List<String> lines) throws IOException {
        try (HeldFolder held = plans.hold()) {
            if (!plans.read().equals(plan)) {
                throw new Refusal(
                        Exit.FILE_TROUBLE,
                        plans.plan() + ": Another plan was written meanwhile; nothing was noted. Look at it first.");
            }
            if (lines.size() == 1) {
                return LogFile.append(plans.log(), plan, log, lines);
            }
            Optional<byte[]> joined = LogFile.joined(plans.log(), plan, log, lines);
            joined.ifPresent(whole -> held.save(Map.of(plans.log().getFileName().toString(), whole), List.of()));
            return joined.isPresent();
        }
    }

    private void list(Plan plan, SeasonLog log) {
        PrintWriter out = spec.commandLine().getOut();
        List<Entry> counting = log.inForce();
        for (Entry entry : log.entries()) {
            out.println(Understood.sentence(plan, entry) + (counting.contains(entry) ? "" : " (taken back)"));
        }
        if (log.entries().isEmpty()) {
            out.println("No notes: all was done as planned.");
        }
    }

    /** The notes on the command line. */
    private List<String> typed() {
        List<String> notes = new ArrayList<>();
        StringBuilder note = new StringBuilder();
        for (String word : words) {
            if (word.equals(NEXT)) {
                notes.add(note.toString());
                note.setLength(0);
            } else {
                note.append(note.isEmpty() ? "" : " ").append(word);
            }
        }
        notes.add(note.toString());
        return notes;
    }

    private String dated(Season season, String line) {
        return SaidDay.begins(line) ? line.strip() : SofarCommand.day(season, on, spec) + " " + line.strip();
    }

    /** @param before lines of the log before those that are at fault */
    private static Refusal refused(String where, int before, FaultyNotes faulty) {
        StringBuilder told = new StringBuilder();
        faulty.faults()
                .forEach(fault -> told.append(where)
                        .append(':')
                        .append(fault.line() - before)
                        .append(':')
                        .append(fault.column())
                        .append(": ")
                        .append(fault.message())
                        .append(System.lineSeparator()));
        return new Refusal(Exit.FAULTY_FILE, told + "Nothing was written.");
    }
}
