package bedwright.command;

import bedwright.file.AnswersFile;
import bedwright.file.FaultyFile;
import bedwright.file.FileTrouble;
import bedwright.file.SeasonFile;
import bedwright.file.WeatherFile;
import bedwright.file.Writing;
import bedwright.season.Answers;
import bedwright.season.Season;
import bedwright.season.Site;
import bedwright.season.Units;
import bedwright.start.FirstSeason;
import bedwright.start.Interview;
import bedwright.station.RoughClimate;
import bedwright.station.StationClimate;
import bedwright.station.TooLittleWeather;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Begins a season of one's own. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Asks some questions, each with a usual answer, and writes a season file that plans at once; says what it"
                    + " assumed. Crops come from the crop book, the climate from a weather station's file or, roughly, from"
                    + " frosts and temperatures.",
            "Nothing is written before the last answer.",
            "",
            "  target/bedwright new my-season.json",
            "  target/bedwright new my-season.json --answers problems/answers/new-garden.json"
        })
final class NewCommand implements Callable<Integer> {
    private static final double WEST = 270;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "SEASON", description = "The season file to write.")
    private Path file = Path.of("");

    @Option(
            names = "--answers",
            paramLabel = "FILE",
            description = "Takes the answers from a file instead of asking; \"schema answers\" tells its form.")
    private @Nullable Path answersFile;

    @Option(
            names = "--keep-answers",
            paramLabel = "FILE",
            description = "Writes the answers into a file, to be changed and taken with --answers.")
    private @Nullable Path keptAnswers;

    @Option(names = "--replace", description = "Writes over a season file that is there; the former is kept as NAME~.")
    private boolean isReplacing;

    @Option(
            names = "--today",
            paramLabel = "DAY",
            description = "Day from which the usual start is reckoned; left out: the day on which this is run.")
    private @Nullable LocalDate today;

    @Override
    public Integer call() {
        if (Files.exists(file) && !isReplacing) {
            throw new Refusal(
                    Exit.FILE_TROUBLE,
                    file + " is there already. Name another file, or write over it with --replace (it is kept as "
                            + file + "~).");
        }
        PrintWriter out = spec.commandLine().getOut();
        Answers answers = answersFile != null ? AnswersFile.read(answersFile) : asked(out);
        List<String> said = new ArrayList<>();
        FirstSeason first = new FirstSeason(answers, site(answers, said));
        byte[] bytes = first.bytes(file.toString());
        if (keptAnswers != null) {
            Writing.save(keptAnswers, AnswersFile.bytes(answers));
        }
        Writing.save(file, bytes);
        tell(out, SeasonFile.check(file), first, said);
        return Exit.DONE;
    }

    private void tell(PrintWriter out, SeasonFile.Checked checked, FirstSeason first, List<String> said) {
        Season season = checked.season();
        out.println();
        out.println(file + ": " + Words.count(season.weeks(), "week") + " from " + season.starts() + ", "
                + Words.count(season.allBeds().size(), "bed") + ", "
                + Words.count(season.crops().size(), "crop") + ".");
        out.println();
        out.println("Assumed, to be mended in the file where it is otherwise with you:");
        said.forEach(sentence -> out.println("- " + sentence));
        first.assumed().forEach(sentence -> out.println("- " + sentence));
        checked.remarks().forEach(remark -> out.println("Worth a look: " + remark));
        out.println();
        out.println("Make a plan of it:  " + Called.name() + " plan " + file);
    }

    private Answers asked(PrintWriter out) {
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        Interview interview = new Interview(StartDay.or(today), this::stationTrouble, () -> line(in), words -> {
            out.print(words);
            out.flush();
        });
        return interview
                .answers()
                .orElseThrow(() ->
                        new Refusal(Exit.USAGE, "The input ended before the last question; nothing was written."));
    }

    private static @Nullable String line(BufferedReader in) {
        try {
            return in.readLine();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is wrong with a station's file, in one message, if anything is. */
    private Optional<String> stationTrouble(String typed) {
        try {
            climate(Path.of(typed), WEST, Units.METRES);
            return Optional.empty();
        } catch (FaultyFile faulty) {
            return Optional.of(faulty.faults().getFirst()
                    + (faulty.count() > 1 ? " And " + (faulty.count() - 1) + " more faults." : ""));
        } catch (FileTrouble | TooLittleWeather | InvalidPathException e) {
            return Optional.of(Objects.requireNonNull(e.getMessage()));
        }
    }

    private static StationClimate climate(Path station, double gustsFrom, Units units) {
        return StationClimate.of(WeatherFile.read(station), gustsFrom, units);
    }

    /** @param said takes what the climate rests on */
    private static Site site(Answers answers, List<String> said) {
        Double side = answers.stormsFrom();
        String station = answers.station();
        if (station == null) {
            return RoughClimate.site(
                    answers.latitude(),
                    answers.warmest(),
                    answers.coldest(),
                    answers.lastFrost(),
                    answers.firstFrost(),
                    side);
        }
        try {
            StationClimate climate = climate(Path.of(station), side == null ? WEST : side, answers.units());
            said.add("The climate is that of " + station + ", "
                    + Words.count(climate.basis().years(), "year") + ".");
            said.addAll(climate.notes());
            return climate.site(answers.latitude(), StationClimate.USUAL_SEED_BED, StationClimate.USUAL_WINTER);
        } catch (TooLittleWeather e) {
            throw new Refusal(Exit.FAULTY_FILE, station + ": " + e.getMessage());
        }
    }
}
