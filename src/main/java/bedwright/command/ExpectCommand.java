package bedwright.command;

import bedwright.climate.PossibleSeasons;
import bedwright.file.PlainJson;
import bedwright.file.SeasonFile;
import bedwright.file.WeatherFile;
import bedwright.growth.Prospect;
import bedwright.growth.Prospects;
import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.station.PlayedYear;
import bedwright.station.TooLittleWeather;
import bedwright.weather.StationRecord;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
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

/** Says what to expect of one planting. */
@Command(
        name = "expect",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Says what one planting would give and take, week by week, over the possible seasons, and what is lost to what.",
            "",
            "  target/bedwright expect problems/first-bed.json --crop dill --bed \"Open bed\" --week 2027-05-17"
        })
final class ExpectCommand implements Callable<Integer> {
    /** As many as a lot of a season file may have. */
    private static final int MOST_PLANTS = 1_000_000;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "SEASON", description = "The season file.")
    private Path file = Path.of("");

    @Option(names = "--crop", required = true, paramLabel = "C", description = "The crop.")
    private String crop = "";

    @Option(names = "--method", paramLabel = "M", description = "The method; left out: the crop's first.")
    private @Nullable String method;

    @Option(names = "--bed", paramLabel = "B", description = "The bed; left out: the first.")
    private @Nullable String bed;

    @Option(
            names = "--week",
            required = true,
            paramLabel = "DATE",
            description = "A day of the week of sowing, as 2027-04-19.")
    private LocalDate week = LocalDate.EPOCH;

    @Option(names = "--plants", paramLabel = "N", description = "Plants; left out: those of a lot, or 100.")
    private @Nullable Integer plants;

    @Option(
            names = "--weather",
            paramLabel = "FILE",
            description = "The record of a weather station, of which years are played instead of possible seasons.")
    private @Nullable Path weather;

    @Option(names = "--year", paramLabel = "YEAR", description = "A year of that record; may be given several times.")
    private List<Integer> years = List.of();

    @Option(names = "--format", paramLabel = "text|json", description = "Words, or JSON.")
    private PlanCommand.Format format = PlanCommand.Format.TEXT;

    @Override
    public Integer call() {
        if ((weather == null) != years.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "--weather and --year go together: a station's file and a year of it to play");
        }
        Season season = weather == null ? SeasonFile.read(file) : played(SeasonFile.read(file), weather);
        int cropIndex =
                index("crop", crop, season.crops().stream().map(Crop::name).toList());
        Crop grown = season.crops().get(cropIndex);
        List<String> methods = grown.methods().stream().map(Method::name).toList();
        int methodIndex = method == null ? 0 : index("method", method, methods);
        List<String> beds = season.allBeds().stream().map(Bed::name).toList();
        int bedIndex = bed == null ? 0 : index("bed", bed, beds);
        int sowWeek = season.weekOf(week);
        if (sowWeek < 0 || sowWeek >= season.weeks()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--week " + week + " lies outside the season, which runs from " + season.starts() + " to "
                            + season.dateOf(season.days() - 1));
        }
        int count = plants == null ? lot(season) : plants;
        if (count < 1 || count > MOST_PLANTS) {
            throw new ParameterException(
                    spec.commandLine(), "--plants takes 1 to " + MOST_PLANTS + " plants, not " + count);
        }
        Prospect prospect = Prospects.of(season, PossibleSeasons.of(season))
                .expect(cropIndex, methodIndex, count, bedIndex, sowWeek);
        PrintWriter out = spec.commandLine().getOut();
        if (format == PlanCommand.Format.JSON) {
            out.print(PlainJson.text(json(season, prospect)));
            out.flush();
        } else {
            new Expectation(season, grown.name(), methods.get(methodIndex), beds.get(bedIndex), prospect).print(out);
        }
        return Exit.DONE;
    }

    /** The season judged over years that were. */
    private Season played(Season season, Path station) {
        StationRecord record = WeatherFile.read(station);
        try {
            List<Sampling.GivenSeason> given = years.stream()
                    .map(year -> PlayedYear.of(record, season, year))
                    .toList();
            Sampling possible = season.possible();
            return season.with(new Sampling(possible.count(), possible.seed(), possible.doubt(), given));
        } catch (TooLittleWeather e) {
            throw new Refusal(Exit.FAULTY_FILE, station + ": " + e.getMessage());
        }
    }

    private int lot(Season season) {
        return season.pool().stream()
                .filter(lots -> lots.crop().equals(crop))
                .mapToInt(Lots::plants)
                .findFirst()
                .orElse(100);
    }

    private int index(String what, String name, List<String> names) {
        int index = names.indexOf(name);
        if (index < 0) {
            throw new ParameterException(
                    spec.commandLine(),
                    "No " + what + " is named \"" + name + "\"; there are: \"" + String.join("\", \"", names) + "\"");
        }
        return index;
    }

    private static Map<String, Object> json(Season season, Prospect prospect) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("version", 1);
        json.put("plants", prospect.plants());
        json.put(season.units().several(), season.units().length().of(prospect.millimetres() / 1000.0));
        json.put("cells", prospect.cells());
        putDay(json, "sown", season, prospect.sowDay());
        putDay(json, "inTheBed", season, prospect.groundDay());
        putDay(json, "emergence", season, prospect.emergence());
        putDay(json, "pinch", season, prospect.pinch());
        putDay(json, "firstCut", season, prospect.firstCut());
        json.put(
                "firstCuts",
                Arrays.stream(prospect.firstCuts())
                        .mapToObj(day -> day == Prospect.NONE
                                ? "never"
                                : season.dateOf(day).toString())
                        .toList());
        Map<String, Object> kinds = new LinkedHashMap<>();
        for (int n = 0; n < prospect.kinds().size(); n++) {
            Map<String, Object> weeks = new LinkedHashMap<>();
            for (int w = 0; w < season.weeks(); w++) {
                int[] stems = prospect.stems()[n][w];
                if (Arrays.stream(stems).anyMatch(s -> s != 0)) {
                    weeks.put(
                            season.weekStart(w).toString(),
                            Arrays.stream(stems).mapToObj(s -> s / 100.0).toList());
                }
            }
            kinds.put(prospect.kinds().get(n), weeks);
        }
        json.put("stems", kinds);
        json.put("surviving", surviving(prospect.usual()));
        json.put(
                "survivingBySeason",
                prospect.seasons().stream().map(ExpectCommand::surviving).toList());
        json.put(
                "work",
                prospect.tasks().stream()
                        .map(task -> {
                            Map<String, Object> job = new LinkedHashMap<>();
                            job.put(
                                    "job",
                                    task.job().name().toLowerCase(Locale.ROOT).replace('_', '-'));
                            job.put("week", season.weekStart(task.week()).toString());
                            job.put("minutes", task.minutes());
                            job.put("setUp", task.setUp());
                            return job;
                        })
                        .toList());
        Map<String, Object> costs = new LinkedHashMap<>();
        prospect.costs().forEach(cost -> costs.put(cost.item(), cost.money()));
        json.put("costs", costs);
        return json;
    }

    private static void putDay(Map<String, Object> json, String key, Season season, int day) {
        if (day != Prospect.NONE) {
            json.put(key, season.dateOf(day).toString());
        }
    }

    private static Map<String, Object> surviving(Prospect.Surviving left) {
        Map<String, Object> shares = new LinkedHashMap<>();
        shares.put("stand", left.stand());
        shares.putAll(left.pests());
        shares.put("springFrostOrWinter", left.springOrWinter());
        shares.put("autumnFrost", left.autumn());
        shares.put("storms", left.storms());
        return shares;
    }
}
