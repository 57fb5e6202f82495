package bedwright.growth;

import bedwright.climate.FrostDates;
import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.climate.SiteClimate;
import bedwright.season.KindTree;
import bedwright.season.Season;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What all plantings of a season share: its weather in every possible season, its frosts, pests and ground. */
final class World {
    final Season season;
    final List<PossibleSeason> seasons;
    final PossibleSeason normalSeason;
    final SiteClimate climate;
    final @Nullable FrostDates frost;
    final Ground ground;
    final NotedNights nights;
    final KindTree kinds;
    final int days;
    final int weeks;
    private final double[][] pressure;
    private final Map<Double, List<BedWeather>> weather = new ConcurrentHashMap<>();

    World(Season season, List<PossibleSeason> seasons) {
        this.season = season;
        this.seasons = List.copyOf(seasons);
        this.normalSeason = PossibleSeasons.normal(season);
        this.climate = SiteClimate.of(season);
        this.frost = FrostDates.of(season).orElse(null);
        this.ground = Ground.of(
                season, Stream.concat(seasons.stream(), Stream.of(normalSeason)).toList());
        this.nights = NotedNights.of(season);
        this.kinds = KindTree.of(season.roles());
        this.days = season.days();
        this.weeks = season.weeks();
        this.pressure = new double[season.pests().size()][];
        for (int p = 0; p < pressure.length; p++) {
            pressure[p] = PestPressure.byWeek(season.pests().get(p));
        }
    }

    /** Whether a day of the year lies in a span that may wrap the new year; both ends belong to it. */
    static boolean isWithin(MonthDay day, MonthDay from, MonthDay to) {
        boolean after = day.compareTo(from) >= 0;
        boolean before = day.compareTo(to) <= 0;
        return from.compareTo(to) <= 0 ? after && before : after || before;
    }

    /** Pressure of a pest on a day, for each day. */
    double pressure(int pest, int day) {
        return pressure[pest][climate.weekOfYear(day)];
    }

    /** The weather in beds of a warmth: one for each possible season, then the normal season. */
    List<BedWeather> weather(double warmth) {
        return weather.computeIfAbsent(warmth, w -> {
            List<BedWeather> all = new ArrayList<>();
            for (PossibleSeason possible : seasons) {
                all.add(new BedWeather(climate, possible, w));
            }
            all.add(new BedWeather(climate, normalSeason, w));
            return List.copyOf(all);
        });
    }
}
