package bedwright.command;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.file.HeldEdit;
import bedwright.file.HeldFolder;
import bedwright.file.PlanFile;
import bedwright.file.SeasonFile;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Search;
import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import bedwright.season.Caution;
import bedwright.season.Plan;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.sheet.SheetFacts;
import bedwright.sheet.Summary;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans a season. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Plans a season: decides what goes in which bed, in which week, by which method.",
            "It writes plan.json, season.html (the season sheet), plantings.csv and stems.svg into a folder. Ctrl-C ends"
                    + " the search and keeps the best plan so far.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright plan problems/demo-farm.json --out plans/careful --caution careful"
        })
final class PlanCommand implements Callable<Integer> {
    /** How long a search that is to end by itself may take. */
    private static final Duration LONGEST = Duration.ofSeconds(300);

    /** Letters on a line of the summary. */
    private static final int WIDTH = 100;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "SEASON", description = "The season file.")
    private Path file = Path.of("");

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the plan; left out: plans/ and the file's name.")
    private @Nullable Path out;

    @Option(
            names = "--time",
            paramLabel = "SECONDS",
            description =
                    "How long to search, after an opening that takes some seconds on a large farm. Left out, and without"
                            + " --moves, the search ends by itself when it hardly improves any more, after 300 at the"
                            + " latest.")
    private @Nullable Double seconds;

    @Option(
            names = "--moves",
            paramLabel = "N",
            description =
                    "How many moves each of the two searches tries: with it the plan depends on nothing but the season"
                            + " and the seed.")
    private @Nullable Long moves;

    @Option(names = "--seed", paramLabel = "N", description = "Seed of the search; left out: 1.")
    private long seed = 1;

    @Option(
            names = "--caution",
            paramLabel = "WORD",
            description =
                    "Weight of the bad seasons: bold, steady, careful, or 0 to 100 per cent; left out: the file's.")
    private @Nullable String caution;

    @Option(
            names = "--seasons",
            paramLabel = "N",
            description =
                    "How many possible seasons to plan over, 1 for the normal season alone; left out: the file's.")
    private @Nullable Integer seasons;

    @Option(
            names = "--from",
            paramLabel = "PLAN",
            description = "Folder of a plan of this season to begin with (or its plan.json).")
    private @Nullable Path from;

    @Option(
            names = "--format",
            paramLabel = "text|json",
            description = "What goes to the screen: a summary, or plan.json.")
    private Format format = Format.TEXT;

    @Mixin
    private HoldOptions hold = new HoldOptions();

    @Mixin
    private BoundOptions bound = new BoundOptions();

    enum Format {
        TEXT,
        JSON
    }

    @Override
    public Integer call() {
        PlanFolder folder = new PlanFolder(out == null ? Path.of("plans", name()) : out);
        HoldOptions.Holding holding = hold.in(file, SeasonFile.read(file), from == null ? folder : PlanFolder.at(from));
        Season season = season(holding.season());
        Search.Limits limits = limits();
        Optional<BoundOptions.Limits> closeness = bound.limits(moves != null && seconds == null);
        folder.mustBeWritable();
        try (OnInterrupt interrupt = new OnInterrupt(spec.commandLine().getErr());
                HeldFolder held = folder.hold()) {
            return plan(season, holding, limits, closeness, new Place(folder, held), interrupt);
        }
    }

    /** Where the plan goes, held from before the search until the plan is written. */
    private record Place(PlanFolder folder, HeldFolder held) {}

    /** @param interrupt which waits until the plan so far is written and nothing is left over */
    private int plan(
            Season season,
            HoldOptions.Holding holding,
            Search.Limits limits,
            Optional<BoundOptions.Limits> closeness,
            Place place,
            OnInterrupt interrupt) {
        PrintWriter err = spec.commandLine().getErr();
        List<PossibleSeason> possible = PossibleSeasons.of(season);
        err.printf(
                Locale.ROOT,
                "Working out what each planting would give in %d possible season%s …%n",
                possible.size(),
                possible.size() == 1 ? "" : "s");
        PlanFacts facts = PlanFacts.of(season, possible);
        HeldInPlace.mustStand(facts, WIDTH);
        int[] start = start(facts, holding);
        HeldEdit.Edited edit = holding.edit();
        if (edit != null) {
            edit.write(file);
            err.println("Held from now on in " + file + ", under \"held\"; what it said before is beside it as "
                    + file.getFileName() + "~.");
        }
        Search search = new Search(facts, limits);
        interrupt.stops(search::stop);
        Search.Found found;
        try (Progress progress = new Progress(facts, search, err, System.console() != null)) {
            found = search.run(start);
        }
        return finish(season, facts, found, search, limits, closeness, place);
    }

    private Season season(Season read) {
        Season season = read;
        if (caution != null) {
            Caution wanted = Caution.of(caution)
                    .orElseThrow(() -> usage(
                            "--caution takes bold, steady, careful or a whole number from 0 to 100, not " + caution));
            season = season.with(wanted);
        }
        if (seasons != null) {
            if (seasons < 1 || seasons > 1000) {
                throw usage("--seasons takes 1 to 1000, not " + seasons);
            }
            Sampling known = season.possible();
            season = season.with(new Sampling(seasons, known.seed(), known.doubt(), List.of()));
        }
        return season;
    }

    private Search.Limits limits() {
        SearchOptions.check(seconds, moves, seed, spec);
        if (seconds == null && moves == null) {
            return new Search.Limits(seed, LONGEST, null, true);
        }
        return new Search.Limits(seed, seconds == null ? null : Duration.ofMillis(Math.round(1000 * seconds)), moves);
    }

    private ParameterException usage(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private int[] start(PlanFacts facts, HoldOptions.Holding holding) {
        Path plan = from == null ? holding.plan() : from;
        return plan == null
                ? Search.nothingPlaced(facts)
                : BegunFrom.places(
                        facts, plan, holding.begin(), spec.commandLine().getErr());
    }

    private int finish(
            Season season,
            PlanFacts facts,
            Search.Found found,
            Search search,
            Search.Limits limits,
            Optional<BoundOptions.Limits> wanted,
            Place place) {
        PrintWriter err = spec.commandLine().getErr();
        boolean interrupted = search.isStopped();
        Outcome outcome = Outcomes.of(facts, found.places());
        recheck(season, facts, outcome);
        Duration time = limits.time();
        Plan.Making making = new Plan.Making(
                limits.seed(),
                time == null ? null : time.toMillis() / 1000.0,
                limits.moves(),
                interrupted,
                search.isSettled());
        Optional<BoundRun.Found> best = interrupted
                ? Optional.empty()
                : wanted.map(
                        w -> BoundRun.of(facts, outcome.score(), w, err, System.console() != null, search::isStopped));
        Plan.Closeness closeness = best.map(BoundRun.Found::closeness).orElse(null);
        Plan plan = new Plan(1, season, making, outcome.score(), outcome.plantings(), closeness, null);
        SheetFacts shown = new SheetFacts(season, outcome, facts.seasons(), facts.table(), making, closeness);
        place.folder()
                .write(
                        place.held(),
                        plan,
                        shown,
                        best.map(BoundRun.Found::prices).orElse(null));
        PrintWriter screen = spec.commandLine().getOut();
        if (format == Format.JSON) {
            screen.print(new String(PlanFile.bytes(plan), StandardCharsets.UTF_8));
            screen.flush();
        } else {
            screen.println(Summary.text(shown, WIDTH));
            screen.print(HeldInPlace.costs(facts, outcome, found.places(), WIDTH));
            screen.println(ByHand.sentence(facts, outcome));
            screen.println("The season sheet lies at " + place.folder().sheet());
        }
        if (search.isStopped()) {
            err.println(
                    !interrupted
                            ? "Interrupted after the plan was made: the best possible is known no closer."
                            : wanted.isEmpty()
                                    ? "Interrupted: this is the best plan so far."
                                    : "Interrupted: this is the best plan so far. How close it comes to the best"
                                            + " possible was not worked out.");
            return Exit.INTERRUPTED;
        }
        return outcome.broken().isEmpty() ? Exit.DONE : Exit.RULE_BROKEN;
    }

    private String name() {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(".json") ? name.substring(0, name.length() - ".json".length()) : name;
    }

    /** Counts the plan again from the season file alone, by other code, and refuses it if the two differ. */
    static void recheck(Season season, PlanFacts facts, Outcome outcome) {
        Tally tally = Recheck.of(season, facts.seasons(), outcome.plantings());
        Plan.Score counted = new Plan.Score(tally.hard(), tally.medium(), tally.soft());
        if (!counted.equals(outcome.score()) || !tally.faults().isEmpty()) {
            throw new Refusal(
                    Exit.OUR_FAULT,
                    "The plan was refused: counted again from the season file alone it comes to " + counted
                            + ", not to "
                            + outcome.score() + ". " + String.join("; ", tally.faults())
                            + " This is a fault of Bedwright's own; please report it with the season file.");
        }
    }
}
