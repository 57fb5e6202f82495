package bedwright.station;

import bedwright.file.WeatherFile;
import bedwright.season.Season;
import bedwright.season.Site;
import bedwright.weather.InventedStation;
import bedwright.weather.StationRecord;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;

/** Records to test with. */
final class Stations {
    /** Days of a season that starts on the first of a year of 365 days. */
    static final LocalDate NEW_YEAR = LocalDate.of(2027, 1, 1);

    private Stations() {}

    /** Observations of NOAA 2012–2015, from the npm package vega-datasets 3.2.1 (problems/stations/README.md). */
    static StationRecord newYork() {
        return WeatherFile.read(Path.of("problems/stations/new-york.csv"));
    }

    /** Likewise. */
    static StationRecord seattle() {
        return WeatherFile.read(Path.of("problems/stations/seattle.csv"));
    }

    static StationRecord of(InventedStation station) {
        byte[] table = InventedStation.table(station.days()).getBytes(StandardCharsets.UTF_8);
        return WeatherFile.parse("invented", table, WeatherFile.NO_YEAR, WeatherFile.NO_YEAR);
    }

    static Season season(StationClimate climate, double latitude, LocalDate starts, int weeks) {
        Site site = climate.site(latitude, StationClimate.USUAL_SEED_BED, StationClimate.USUAL_WINTER);
        return BareSeason.of(site, starts, weeks);
    }
}
