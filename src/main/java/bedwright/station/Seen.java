package bedwright.station;

import bedwright.climate.MonthlyNormals;
import bedwright.station.FrostSeasons.Turn;
import bedwright.weather.StationRecord;
import java.time.LocalDate;
import java.time.MonthDay;

/** What a record saw of what is foretold of a year, counted in years of 365 days. */
final class Seen {
    /** A year of 365 days, with another behind it. */
    private static final int COMMON_YEAR = 2025;

    private final StationRecord record;
    private final boolean isNorthern;
    private final FrostSeasons frosts;

    Seen(StationRecord record, boolean isNorthern) {
        this.record = record;
        this.isNorthern = isNorthern;
        this.frosts = new FrostSeasons(record, isNorthern);
    }

    /** First day of a year from winter to winter: 1 January, in the south 1 July. */
    LocalDate begins(int year) {
        return LocalDate.of(year, isNorthern ? 1 : 7, 1);
    }

    /** Likewise of a year that has 365 days. */
    LocalDate beginsCommonYear() {
        return begins(COMMON_YEAR);
    }

    /** NaN where the record lacks too much; infinite for a frost that did not come. */
    double of(Measure measure, int year) {
        if (measure.turn() != null) {
            return frost(measure.turn(), year);
        }
        return measure.of(new Measure.Temperatures() {
            @Override
            public double min(int day) {
                return at(record.min(), year, day);
            }

            @Override
            public double max(int day) {
                return at(record.max(), year, day);
            }
        });
    }

    private double frost(Turn turn, int year) {
        FrostSeasons.Found found = frosts.find(turn, frosts.yearOf(turn, begins(year)), 0);
        if (!found.counts()) {
            return Double.NaN;
        }
        double none = turn == Turn.SPRING ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        return found.date().map(date -> inYear(year, date)).orElse(none);
    }

    /** Days from a year's first, 29 February not counted. */
    private double inYear(int year, LocalDate date) {
        LocalDate begins = begins(year);
        int later = date.getYear() - begins.getYear();
        return dayOfYear(date) - dayOfYear(begins) + later * MonthlyNormals.YEAR;
    }

    private static int dayOfYear(LocalDate date) {
        return MonthlyNormals.dayOfYear(date.getMonthValue() - 1, date.getDayOfMonth());
    }

    private double at(double[] values, int year, int day) {
        LocalDate common = begins(COMMON_YEAR).plusDays(day);
        int at = record.dayOf(MonthDay.from(common).atYear(common.getYear() + year - COMMON_YEAR));
        return at < 0 || at >= values.length ? Double.NaN : values[at];
    }
}
