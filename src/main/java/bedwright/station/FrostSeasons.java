package bedwright.station;

import bedwright.weather.StationRecord;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The frosts of a record, season by season: last ones of spring between 1 January and 31 July, first ones of autumn between
 * 1 August and 31 December; where the warmest month lies in the other half of the year, half a year on (July to January,
 * February to June). A season counts if no more than ten days are missing on its warm side, up to the frost itself: the
 * rule of the freeze tables of the Utah Climate Center.
 */
final class FrostSeasons {
    static final int MISSING = 10;

    private final StationRecord record;
    private final int springMonth;
    private final int autumnMonth;

    FrostSeasons(StationRecord record, boolean isNorthern) {
        this.record = record;
        springMonth = isNorthern ? 1 : 7;
        autumnMonth = isNorthern ? 8 : 2;
    }

    /** Which of a year's two turns. */
    enum Turn {
        SPRING,
        AUTUMN
    }

    /**
     * The frost of one season.
     *
     * @param counts whether the record has enough of its days
     * @param date the frost; empty if there was none
     */
    record Found(boolean counts, Optional<LocalDate> date) {}

    /** The first day of the season in which a year's last spring or first autumn frost is looked for. */
    LocalDate begins(Turn turn, int year) {
        return LocalDate.of(year, turn == Turn.SPRING ? springMonth : autumnMonth, 1);
    }

    /** The last day of that season. */
    LocalDate ends(Turn turn, int year) {
        return begins(turn, year).plusMonths(turn == Turn.SPRING ? 7 : 5).minusDays(1);
    }

    /** The first year whose season ends on a day or after it. */
    int yearOf(Turn turn, LocalDate day) {
        int year = day.getYear() - 1;
        while (ends(turn, year).isBefore(day)) {
            year++;
        }
        return year;
    }

    /**
     * The last spring or first autumn day whose minimum is at or below a temperature.
     *
     * @param year the year in which the season begins
     * @param threshold °C
     */
    Found find(Turn turn, int year, double threshold) {
        LocalDate begins = begins(turn, year);
        LocalDate ends = ends(turn, year);
        LocalDate day = turn == Turn.SPRING ? ends : begins;
        int step = turn == Turn.SPRING ? -1 : 1;
        int missing = 0;
        while (!day.isBefore(begins) && !day.isAfter(ends)) {
            int at = record.dayOf(day);
            double min = at < 0 || at >= record.days() ? Double.NaN : record.min()[at];
            if (Double.isNaN(min)) {
                missing++;
            } else if (min <= threshold) {
                return new Found(missing <= MISSING, Optional.of(day));
            }
            day = day.plusDays(step);
        }
        return new Found(missing <= MISSING, Optional.empty());
    }
}
