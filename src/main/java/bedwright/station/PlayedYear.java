package bedwright.station;

import bedwright.climate.SiteClimate;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.Site;
import bedwright.station.FrostSeasons.Turn;
import bedwright.weather.StationRecord;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A year of a record as a season given outright: its temperatures, frosts and gusts on the same days of the year. Pests,
 * seed-bed, winter and yields are as usual.
 *
 * <p>A day's deviation is that of its mean of minimum and maximum; how far the two lie apart is the normal's.
 */
public final class PlayedYear {
    /** Days on end without temperatures that are bridged by a straight line. */
    private static final int BRIDGED = 5;

    private static final double OTHERWISE_FROM = 270;

    private PlayedYear() {}

    /**
     * The season as it would have been in a year.
     *
     * @param year the calendar year of the season's first day
     * @throws TooLittleWeather if the record lacks the days
     */
    public static Sampling.GivenSeason of(StationRecord record, Season season, int year) {
        int later = year - season.starts().getYear();
        FrostSeasons frosts = new FrostSeasons(record, season.site().latitude() >= 0);
        Site.Frost frost = season.site().frost();
        return new Sampling.GivenSeason(
                String.valueOf(year),
                0,
                deviations(record, season, later),
                gusts(record, season, later),
                Map.of(),
                frost == null ? null : frostDay(frosts, Turn.SPRING, season, later),
                frost == null ? null : frostDay(frosts, Turn.AUTUMN, season, later),
                List.of(),
                false,
                Map.of(),
                Map.of());
    }

    /** The same day of the calendar so many years later; 28 February for a 29th that the year does not have. */
    private static LocalDate moved(LocalDate date, int years) {
        return MonthDay.from(date).atYear(date.getYear() + years);
    }

    private static List<Double> deviations(StationRecord record, Season season, int later) {
        SiteClimate climate = SiteClimate.of(season);
        double[] deviations = new double[season.days()];
        for (int day = 0; day < deviations.length; day++) {
            int at = record.dayOf(moved(season.dateOf(day), later));
            deviations[day] = record.hasTemperatures(at)
                    ? record.mean(at) - (climate.normalMin(day) + climate.normalMax(day)) / 2
                    : Double.NaN;
        }
        bridge(deviations, record, season, later);
        List<Double> rounded = new ArrayList<>();
        for (double deviation : deviations) {
            rounded.add(Math.round(deviation * 100) / 100.0);
        }
        return rounded;
    }

    private static void bridge(double[] deviations, StationRecord record, Season season, int later) {
        for (int day = 0; day < deviations.length; day++) {
            if (!Double.isNaN(deviations[day])) {
                continue;
            }
            int end = day;
            while (end < deviations.length && Double.isNaN(deviations[end])) {
                end++;
            }
            if (end - day > BRIDGED || day == 0 || end == deviations.length) {
                LocalDate from = moved(season.dateOf(day), later);
                LocalDate to = moved(season.dateOf(end - 1), later);
                throw new TooLittleWeather("The season would run from " + moved(season.starts(), later) + " to "
                        + moved(season.dateOf(season.days() - 1), later) + ", but the record, from " + record.first()
                        + " to " + record.last() + ", lacks " + (from.equals(to) ? from : from + " to " + to)
                        + ". Take another year.");
            }
            double before = deviations[day - 1];
            double step = (deviations[end] - before) / (end - day + 1);
            for (int i = day; i < end; i++) {
                deviations[i] = before + step * (i - day + 1);
            }
        }
    }

    /** The day of the season on which that year's frost fell; the edge of the frosts' time if there was none. */
    private static @Nullable LocalDate frostDay(FrostSeasons frosts, Turn turn, Season season, int later) {
        int year = frosts.yearOf(turn, moved(season.starts(), later));
        FrostSeasons.Found found = frosts.find(turn, year, 0);
        if (!found.counts()) {
            return null;
        }
        LocalDate none = turn == Turn.SPRING ? frosts.begins(turn, year) : frosts.ends(turn, year);
        return moved(found.date().orElse(none), -later);
    }

    private static List<Sampling.GivenGust> gusts(StationRecord record, Season season, int later) {
        List<Site.StormSide> sides = season.site().storms();
        double otherwise = sides.isEmpty() ? OTHERWISE_FROM : sides.getFirst().from();
        List<Sampling.GivenGust> gusts = new ArrayList<>();
        for (int day = 0; day < season.days(); day++) {
            int at = record.dayOf(moved(season.dateOf(day), later));
            if (at < 0 || at >= record.days()) {
                continue;
            }
            double gust = StormFit.gust(record, at);
            if (gust >= StormFit.DAMAGING) {
                double from = record.from()[at];
                gusts.add(new Sampling.GivenGust(
                        season.dateOf(day), Double.isNaN(from) ? otherwise : from, Math.round(gust * 10) / 10.0));
            }
        }
        return gusts;
    }
}
