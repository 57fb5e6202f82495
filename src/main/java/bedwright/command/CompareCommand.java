package bedwright.command;

import bedwright.compare.Comparison;
import bedwright.compare.FreshSeasons;
import bedwright.compare.OneMore;
import bedwright.compare.Question;
import bedwright.file.SeasonFile;
import bedwright.file.StrategiesFile;
import bedwright.season.Season;
import bedwright.season.Strategies;
import bedwright.sheet.ComparisonData;
import bedwright.sheet.ComparisonSheet;
import bedwright.sheet.ComparisonWords;
import bedwright.sheet.OneMoreWords;
import bedwright.sheet.Summary;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares ways of growing. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Compares ways of growing: plans a season with each strategy's changes, several times with the same effort,"
                    + " and judges all plans on the same possible seasons, for none of which a plan was made. It says"
                    + " what one brings more than another, and how much of that may be chance.",
            "Every plan is kept as it is made: after Ctrl-C the same command goes on where it was broken off.",
            "",
            "  target/bedwright compare problems/first-bed.json benchmarks/strategies/first-bed.json --moves 20000",
            "  target/bedwright compare problems/first-bed.json --worth --moves 20000",
            "",
            "What a file of strategies can say: target/bedwright schema strategies"
        })
final class CompareCommand implements Callable<Integer> {

    /** Letters on a line of the summary. */
    private static final int WIDTH = 100;

    private static final double USUAL_SECONDS = 30;
    /** Steps in which prices are looked for. */
    private static final long PRICE_STEPS = 1500;

    private static final int MOST_SEASONS = 5000;
    private static final int MOST_SEARCHES = 50;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "SEASON", description = "The season file.")
    private Path file = Path.of("");

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "STRATEGIES",
            description = "The file of strategies; left out with --question, --without or --worth.")
    private @Nullable Path strategyFile;

    @Option(
            names = "--question",
            paramLabel = "QUESTION",
            description =
                    "Instead of strategies of a file: raising (sown, in trays or both), pinching, nets, caution (bold,"
                            + " steady, careful), seasons (planned over 1, 4, 16 or 64 possible ones), doubt (in the figures),"
                            + " bouquets (half to one and a half times the weekly ones), thumb (planned or by rule of thumb).")
    private @Nullable Question question;

    @Option(
            names = "--without",
            paramLabel = "CROP",
            description = "Instead of strategies of a file: the season as it stands against the same without a crop;"
                    + " once for each crop.")
    private List<String> without = List.of();

    @Option(
            names = "--worth",
            description = "Instead of strategies of a file: the season with one bed more of each kind, some more net,"
                    + " bench, hours or windbreak, and with each crop left out, ranked by what that is worth. It plans"
                    + " the season once for each, several times: take a long pause, or a short --time.")
    private boolean worth;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for plans and results; left out: comparisons/ and the two files' names.")
    private @Nullable Path out;

    @Option(
            names = "--time",
            paramLabel = "SECONDS",
            description = "How long each search takes; left out, and without --moves: 30.")
    private @Nullable Double seconds;

    @Option(
            names = "--moves",
            paramLabel = "N",
            description = "How many moves each search tries: with it the same seed gives the same results everywhere.")
    private @Nullable Long moves;

    @Option(names = "--seed", paramLabel = "N", description = "Seed of all searches; left out: 1.")
    private long seed = 1;

    @Option(
            names = "--searches",
            paramLabel = "N",
            description =
                    "How many times each strategy is planned, each with a seed of its own: from how far these plans lie"
                            + " apart follows how much is the searches' luck. Left out: 3.")
    private int searches = 3;

    @Option(
            names = "--judge-on",
            paramLabel = "N",
            description = "On how many fresh seasons all plans are judged, 200 to 5000; left out: 1000.")
    private int fresh = 1000;

    @Option(
            names = "--format",
            paramLabel = "text|json",
            description = "What goes to the screen: a summary, or results.json.")
    private PlanCommand.Format format = PlanCommand.Format.TEXT;

    @Override
    public Integer call() {
        Season season = SeasonFile.read(file);
        Comparison.Effort effort = effort();
        if (fresh < FreshSeasons.FEWEST || fresh > MOST_SEASONS) {
            throw usage("--judge-on takes " + FreshSeasons.FEWEST + " to " + MOST_SEASONS + " seasons, not " + fresh);
        }
        List<OneMore> more = worth ? OneMore.of(season) : List.of();
        Asked asked = asked(season, more);
        Path named = out == null ? Path.of("comparisons", name(file) + "-" + asked.folder()) : out;
        Strategies strategies = asked.strategies();
        ComparisonFolder folder = new ComparisonFolder(named, strategies);
        folder.mustBeWritable();
        PrintWriter err = spec.commandLine().getErr();
        CompareRun run = new CompareRun(season, strategies, effort, folder, err, System.console() != null);
        run.mustHaveSomethingToPlant();
        try (OnInterrupt interrupt = new OnInterrupt(err)) {
            interrupt.stops(run::stop);
            run.plan();
            return run.made() < run.all() ? broken(run, err) : finish(run, strategies, more, folder);
        }
    }

    /** What is compared, and how the folder of it ends where none is named. */
    private record Asked(Strategies strategies, String folder) {}

    private Asked asked(Season season, List<OneMore> more) {
        Path known = strategyFile;
        Question usual = question;
        int ways = (known == null ? 0 : 1) + (usual == null ? 0 : 1) + (without.isEmpty() ? 0 : 1) + (worth ? 1 : 0);
        if (ways != 1) {
            throw usage(
                    ways == 0
                            ? "What is to be compared? Name a file of strategies after the season, or say --question,"
                                    + " --without or --worth"
                            : "A file of strategies, --question, --without and --worth each have strategies of their"
                                    + " own: keep one of them");
        }
        if (known != null) {
            return new Asked(StrategiesFile.read(known, season), name(known));
        }
        if (worth) {
            return new Asked(OneMore.strategies(season, more), "worth");
        }
        try {
            return usual == null
                    ? new Asked(Question.without(without, season), "without")
                    : new Asked(usual.of(season), usual.name().toLowerCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            String option =
                    usual == null ? "--without" : "--question " + usual.name().toLowerCase(Locale.ROOT);
            throw usage(option + ": " + e.getMessage());
        }
    }

    private static int broken(CompareRun run, PrintWriter err) {
        err.println("Interrupted: " + run.made() + " of " + run.all()
                + " plans are made and kept. The same command goes on with the next.");
        return Exit.INTERRUPTED;
    }

    private int finish(CompareRun run, Strategies strategies, List<OneMore> more, ComparisonFolder folder) {
        Comparison comparison = run.judged(fresh);
        List<Summary.Part> parts = more.isEmpty()
                ? List.of()
                : OneMoreWords.of(comparison, more, run.prices(PRICE_STEPS), run.earnings(fresh));
        Map<String, String> results = new LinkedHashMap<>();
        String json = ComparisonData.json(comparison);
        results.put("seasons.csv", ComparisonData.seasonsCsv(comparison));
        results.put("strategies.csv", ComparisonData.strategiesCsv(comparison));
        results.put("comparison.html", ComparisonSheet.html(comparison, parts));
        results.put("results.json", json);
        folder.write(strategies, results);
        PrintWriter screen = spec.commandLine().getOut();
        if (format == PlanCommand.Format.JSON) {
            screen.print(json);
            screen.flush();
        } else {
            List<Summary.Part> all = new ArrayList<>(parts);
            all.addAll(ComparisonWords.of(comparison));
            screen.println(Summary.text(all, WIDTH));
            screen.println("The comparison sheet lies at " + folder.sheet());
        }
        return run.breaksARule() ? Exit.RULE_BROKEN : Exit.DONE;
    }

    private Comparison.Effort effort() {
        SearchOptions.check(seconds, moves, seed, spec);
        if (seconds != null && moves != null) {
            throw usage("--time and --moves are two limits of the same searches: keep one of them");
        }
        if (searches < 2 || searches > MOST_SEARCHES) {
            throw usage("--searches takes 2 to " + MOST_SEARCHES + ", not " + searches
                    + ": from one plan alone nothing follows about its luck");
        }
        Double time = seconds;
        if (time == null && moves == null) {
            time = USUAL_SECONDS;
        }
        return new Comparison.Effort(time, moves, seed, searches);
    }

    private ParameterException usage(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private static String name(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(".json") ? name.substring(0, name.length() - ".json".length()) : name;
    }
}
