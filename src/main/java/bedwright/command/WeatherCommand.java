package bedwright.command;

import bedwright.file.PlainJson;
import bedwright.file.SeasonFile;
import bedwright.file.SitePart;
import bedwright.file.WeatherFile;
import bedwright.season.Season;
import bedwright.season.Site;
import bedwright.season.Units;
import bedwright.station.Judge;
import bedwright.station.StationClimate;
import bedwright.station.TooLittleWeather;
import bedwright.weather.StationRecord;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a climate of a station's record. */
@Command(
        name = "weather",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Reads the daily record of a weather station and makes the climate part of a season file of it.",
            "It takes .dly files and by-station CSV files of GHCN-Daily, and tables with a first line such as: date, min"
                    + " (°C), max (°C), gust (m/s), direction.",
            "",
            "  target/bedwright weather problems/stations/new-york.csv --latitude 40.8",
            "  target/bedwright weather problems/stations/new-york.csv --into problems/first-bed.json --out my-season.json",
            "  target/bedwright weather problems/stations/new-york.csv --judge"
        })
final class WeatherCommand implements Callable<Integer> {
    private static final double WEST = 270;
    /** As far north or south as a season file may lie, degrees. */
    private static final double POLEWARD = 65;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The station's file.")
    private Path file = Path.of("");

    @Option(names = "--from", paramLabel = "YEAR", description = "First year to take; left out: the record's first.")
    private @Nullable Integer from;

    @Option(names = "--to", paramLabel = "YEAR", description = "Last year to take; left out: the record's last.")
    private @Nullable Integer to;

    @Option(
            names = "--latitude",
            paramLabel = "DEGREES",
            description = "Latitude of the place, south negative; left out: to be added by hand.")
    private @Nullable Double latitude;

    @Option(
            names = "--gusts-from",
            paramLabel = "DEGREES",
            description =
                    "Side that gusts come from where the record does not say: 0 north, 90 east; left out: 270, west.")
    private double gustsFrom = WEST;

    @Option(
            names = "--into",
            paramLabel = "SEASON",
            description = "A season file to put the climate into; needs --out.")
    private @Nullable Path into;

    @Option(names = "--out", paramLabel = "FILE", description = "Where the season file with this climate goes.")
    private @Nullable Path out;

    @Option(
            names = "--judge",
            description = "Tell instead how well sampled seasons foretell years that their climate was not made from.")
    private boolean isJudged;

    @Option(names = "--seed", paramLabel = "N", description = "Seed of those sampled seasons; left out: 1.")
    private long seed = 1;

    @Option(
            names = "--units",
            paramLabel = "metres|feet",
            description = "What is told and pasted in: metres and °C, or feet and °F; left out: as --into, or metres.")
    private @Nullable Units units;

    @Option(names = "--format", paramLabel = "text|json", description = "Words and the part to paste, or JSON alone.")
    private PlanCommand.Format format = PlanCommand.Format.TEXT;

    @Override
    public Integer call() {
        check();
        StationRecord record = WeatherFile.read(file, yearOr(from), yearOr(to));
        PrintWriter screen = spec.commandLine().getOut();
        try {
            return isJudged ? judge(record, screen) : make(record, screen);
        } catch (TooLittleWeather e) {
            throw new Refusal(Exit.FAULTY_FILE, file + ": " + e.getMessage());
        }
    }

    private int judge(StationRecord record, PrintWriter screen) {
        Judgement judgement = new Judgement(Judge.of(record, seed, units()), seed, units());
        if (format == PlanCommand.Format.JSON) {
            screen.print(PlainJson.text(judgement.json()));
            screen.flush();
        } else {
            judgement.print(screen);
        }
        return Exit.DONE;
    }

    private int make(StationRecord record, PrintWriter screen) {
        Season before = into == null ? null : SeasonFile.read(into);
        Units told = before != null && units == null ? before.units() : units();
        StationClimate climate = StationClimate.of(record, gustsFrom, told);
        Account account = new Account(file.toString(), record, climate, told);
        if (before != null && out != null) {
            SeasonFile.write(put(before, climate), out);
            account.print(screen);
            screen.println();
            screen.println("The season with this climate lies at " + out);
        } else if (format == PlanCommand.Format.JSON) {
            screen.print(SitePart.json(account.json(), site(climate), told, latitude != null));
            screen.flush();
        } else {
            account.print(screen);
            screen.println();
            screen.println("To paste into a season file"
                    + (latitude == null ? ", with \"latitude\" added (or --latitude given):" : ":"));
            screen.print(SitePart.json(site(climate), told, latitude != null));
            screen.flush();
        }
        return Exit.DONE;
    }

    private void check() {
        if (latitude != null && !(Math.abs(latitude) <= POLEWARD)) {
            throw wrong("--latitude takes -" + POLEWARD + " to " + POLEWARD + " degrees, not " + latitude);
        }
        if (!(gustsFrom >= 0 && gustsFrom <= 360)) {
            throw wrong("--gusts-from takes 0 to 360 degrees, not " + gustsFrom);
        }
        if (from != null && to != null && from > to) {
            throw wrong("--from " + from + " comes after --to " + to + "; write the earlier year first");
        }
        if (isJudged && into != null) {
            throw wrong("--judge tells how good a climate is and makes none: leave --into and --out away");
        }
        if ((into == null) != (out == null)) {
            throw wrong(
                    "--into and --out go together: the season file to take, and where to write it with this climate");
        }
    }

    private ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private Units units() {
        return units == null ? Units.METRES : units;
    }

    private static int yearOr(@Nullable Integer year) {
        return year == null ? WeatherFile.NO_YEAR : year;
    }

    /** The site that a climate makes; what a record does not tell is as usual. */
    private Site site(StationClimate climate) {
        Site site = climate.site(
                latitude == null ? 0 : latitude, StationClimate.USUAL_SEED_BED, StationClimate.USUAL_WINTER);
        return SitePart.rounded(site, units());
    }

    private Season put(Season season, StationClimate climate) {
        Site before = season.site();
        Site site =
                climate.site(latitude == null ? before.latitude() : latitude, before.badSeedBed(), before.hardWinter());
        return season.with(SitePart.rounded(site, season.units()));
    }
}
