package bedwright.command;

import bedwright.file.WeatherFile;
import bedwright.log.Entry;
import bedwright.log.Note;
import bedwright.log.SeasonLog;
import bedwright.season.Season;
import bedwright.season.Unit;
import bedwright.weather.StationRecord;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** The record of a weather station as notes, a line a day. */
final class WeatherLines {
    private WeatherLines() {}

    /** Notes of the days of a season that have temperatures and whose weather is not noted yet. */
    static List<String> of(Season season, SeasonLog log, Path file) {
        Set<LocalDate> noted = log.inForce().stream()
                .filter(entry -> entry.note() instanceof Note.Weather)
                .map(Entry::on)
                .collect(Collectors.toSet());
        StationRecord record = WeatherFile.read(file);
        List<String> lines = new ArrayList<>();
        for (int day = 0; day < season.days(); day++) {
            LocalDate date = season.dateOf(day);
            int at = record.dayOf(date);
            if (at >= 0 && at < record.days() && record.hasTemperatures(at) && !noted.contains(date)) {
                lines.add(line(season, record, date, at));
            }
        }
        return lines;
    }

    private static String line(Season season, StationRecord record, LocalDate date, int at) {
        Unit warmth = season.units().temperature();
        String line =
                date + " weather min " + figure(warmth, record.min()[at]) + " max " + figure(warmth, record.max()[at]);
        boolean hasGust =
                record.kind() == StationRecord.Wind.GUST && record.wind()[at] >= 1 && !Double.isNaN(record.from()[at]);
        return hasGust
                ? line + " gust " + figure(season.units().speed(), record.wind()[at]) + " "
                        + Math.round(record.from()[at])
                : line;
    }

    private static String figure(Unit unit, double metric) {
        return String.format(Locale.ROOT, "%.1f", unit.of(metric));
    }
}
