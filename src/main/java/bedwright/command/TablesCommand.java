package bedwright.command;

import bedwright.climate.PossibleSeasons;
import bedwright.file.FaultyTables;
import bedwright.file.SeasonFile;
import bedwright.file.SeasonTables;
import bedwright.file.Writing;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.sheet.ResultTables;
import bedwright.sheet.SheetFacts;
import bedwright.table.BadTable;
import bedwright.table.Cell;
import bedwright.table.Csv;
import bedwright.table.Grid;
import bedwright.table.Spreadsheet;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes a plan and its season as tables, and reads a season back from them. */
@Command(
        name = "tables",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Writes a plan as tables: one workbook, tables.xlsx, and the same as CSV in the folder tables, beside the"
                    + " plan. The sheets with a green tab are the season's own (beds, figures of crops and methods,"
                    + " what stands, what is held in place, outlets): change them in a spreadsheet and read them back into a season file.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright tables plans/first-bed",
            "  target/bedwright tables plans/first-bed --margin 15 --packet dill=500",
            "  target/bedwright tables plans/first-bed --read plans/first-bed/tables.xlsx --into my-season.json",
            "",
            "Reading back: a table or column that you took away leaves all as it was; an empty cell stands for the"
                    + " usual; beds, outlets, what stands and what is held are those that have a row; of crops and methods the figures change, and"
                    + " what has no row stays. Every fault is told by sheet, row and column, and then nothing is written."
        })
final class TablesCommand implements Callable<Integer> {
    private static final String WORKBOOK = "tables.xlsx";
    private static final String FOLDER = "tables";
    private static final String CSV = ".csv";
    private static final String ABOUT = "About";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Option(names = "--out", paramLabel = "DIR", description = "Folder for the tables; left out: beside the plan.")
    private @Nullable Path out;

    @Option(
            names = "--bom",
            description = "Begins each CSV file with a byte order mark, without which some spreadsheets show letters"
                    + " such as ü wrongly.")
    private boolean isMarked;

    @Option(
            names = "--read",
            paramLabel = "FILE",
            description = "Reads changed tables: a workbook (.xlsx), one CSV file, or a folder of CSV files.")
    private @Nullable Path read;

    @Option(names = "--into", paramLabel = "SEASON", description = "The season file to write what was read into.")
    private @Nullable Path into;

    @Mixin
    private BuyingOptions buying = new BuyingOptions();

    @Override
    public Integer call() {
        buying.mustBeInRange();
        if ((read == null) != (into == null)) {
            throw new ParameterException(
                    spec.commandLine(),
                    read == null
                            ? "--into says where to write the season; say with --read what to read it from."
                            : "--read needs --into: the season file to write what was read into.");
        }
        PlanFolder plans = named.folder();
        Plan plan = plans.read();
        if (read != null && into != null) {
            readBack(plan.season(), read, into);
        } else {
            write(plans, plan);
        }
        return Exit.DONE;
    }

    private void write(PlanFolder plans, Plan plan) {
        PlanFacts facts = PlanFacts.ofPlan(plan.season(), PossibleSeasons.of(plan.season()), plan.plantings());
        SheetFacts shown;
        try {
            shown = new SheetFacts(
                    plan.season(),
                    Outcomes.of(facts, Outcomes.places(facts, plan.plantings())),
                    facts.seasons(),
                    facts.table(),
                    plan.making());
        } catch (IllegalArgumentException e) {
            throw new Refusal(Exit.FAULTY_FILE, plans.plan() + ": " + e.getMessage() + ". Make the plan anew.");
        }
        List<Grid> grids = new ArrayList<>(ResultTables.of(shown, buying.of(plan.season())));
        grids.addAll(SeasonTables.of(plan.season()));
        Path to = out == null ? plans.folder() : out;
        Map<String, byte[]> tables = new LinkedHashMap<>();
        grids.forEach(grid -> tables.put(file(grid.name()), Csv.bytes(grid, isMarked)));
        Writing.saveAll(to.resolve(FOLDER), tables);
        List<Grid> sheets = new ArrayList<>(List.of(about(plan)));
        sheets.addAll(grids);
        Writing.save(to.resolve(WORKBOOK), Spreadsheet.bytes(sheets, SeasonTables.names()));
        spec.commandLine()
                .getOut()
                .println("The workbook lies at " + to.resolve(WORKBOOK) + ", the same as "
                        + Words.count(grids.size(), "CSV file") + " in " + to.resolve(FOLDER));
    }

    /** A first sheet that says what the others are for. */
    private static Grid about(Plan plan) {
        Season season = plan.season();
        List<String> lines = new ArrayList<>();
        if (season.about() != null) {
            lines.add(season.about());
        }
        lines.addAll(List.of(
                "What the plan brings: " + String.join(", ", ResultTables.NAMES)
                        + ". Changes in these sheets are not read" + " back.",
                "The season itself, with a green tab: " + String.join(", ", SeasonTables.names())
                        + ". Change them, save the workbook, and read it back with: bedwright tables PLAN --read"
                        + " tables.xlsx --into my-season.json",
                "Weeks are named by their first day. An empty cell stands for the usual. Beds, outlets, what stands and what is held are those that"
                        + " have a row; of crops and methods the figures can be changed, and new ones are added in the"
                        + " season file.",
                "Plans are advice from figures, many of them uncertain. Where work can hurt, local rules, the label and"
                        + " licensed practice come first."));
        return Grid.of(
                ABOUT,
                List.of(season.name()),
                lines.stream().map(line -> List.of(Cell.of(line))).toList());
    }

    private static String file(String name) {
        return name.toLowerCase(Locale.ROOT).replace(' ', '-') + CSV;
    }

    private void readBack(Season season, Path from, Path to) {
        List<Grid> grids = grids(from);
        List<String> names = SeasonTables.names();
        if (grids.stream().noneMatch(grid -> SeasonTables.isRead(grid.name()))) {
            throw new Refusal(
                    Exit.FAULTY_FILE,
                    from + ": None of the tables that are read back is in it (" + String.join(", ", names)
                            + "). Nothing was written. Give a sheet, or a file, one of these names.");
        }
        PrintWriter err = spec.commandLine().getErr();
        Season changed;
        try {
            changed = SeasonTables.read(season, grids);
        } catch (FaultyTables e) {
            StringBuilder told = new StringBuilder();
            e.faults()
                    .forEach(fault ->
                            told.append(from).append(": ").append(fault).append(System.lineSeparator()));
            throw new Refusal(Exit.FAULTY_FILE, told + "Nothing was written.");
        }
        List<String> others = grids.stream()
                .map(Grid::name)
                .filter(name -> !SeasonTables.isRead(name) && !ResultTables.NAMES.contains(name) && !name.equals(ABOUT))
                .toList();
        if (!others.isEmpty()) {
            err.println("Left alone, since no table of the season has such a name: " + String.join(", ", others) + ".");
        }
        SeasonFile.write(changed, to);
        List<String> what = new ArrayList<>();
        if (!changed.beds().equals(season.beds())) {
            what.add("beds");
        }
        if (!changed.crops().equals(season.crops())) {
            what.add("crops");
        }
        if (!changed.standing().equals(season.standing())) {
            what.add("standing plantings");
        }
        if (!changed.held().equals(season.held())) {
            what.add("plantings held in place");
        }
        if (!changed.outlets().equals(season.outlets())) {
            what.add("outlets");
        }
        spec.commandLine()
                .getOut()
                .println("The season lies at " + to + ". "
                        + (what.isEmpty()
                                ? "Nothing in it differs from the plan's."
                                : "What differs from the plan's: " + String.join(", ", what) + "."));
    }

    private static List<Grid> grids(Path from) {
        if (!Files.exists(from)) {
            throw new Refusal(
                    Exit.FILE_TROUBLE,
                    from
                            + ": There is no such file or folder. Name a workbook, a CSV file or a folder of CSV files with"
                            + " --read.");
        }
        try {
            if (!Files.isDirectory(from)) {
                return one(from);
            }
            List<Path> files;
            try (var all = Files.list(from)) {
                files = all.filter(file -> file.toString().endsWith(CSV))
                        .sorted()
                        .toList();
            }
            List<Grid> grids = new ArrayList<>();
            for (Path file : files) {
                grids.addAll(one(file));
            }
            return grids;
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE_TROUBLE,
                    from + ": The tables can't be read (" + e.getMessage() + "). Nothing was written.");
        }
    }

    private static List<Grid> one(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        try {
            byte[] bytes = Files.readAllBytes(file);
            return name.endsWith(CSV) ? List.of(Csv.read(title(name), bytes)) : Spreadsheet.read(bytes);
        } catch (BadTable e) {
            throw new Refusal(Exit.FAULTY_FILE, file + ": " + e.getMessage() + " Nothing was written.");
        }
    }

    /** The table that a file is called after. */
    private static String title(String file) {
        List<String> known = new ArrayList<>(SeasonTables.names());
        known.addAll(ResultTables.NAMES);
        return known.stream()
                .filter(name -> file(name).equals(file))
                .findFirst()
                .orElse(file);
    }
}
