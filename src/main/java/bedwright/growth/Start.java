package bedwright.growth;

import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Past;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * How and when a planting begins.
 *
 * @param sowDay day of sowing, of setting, or of starting in trays
 * @param groundDay day from which it is in the bed
 * @param firstDay first day that adds to its clock
 * @param clock degree-days behind it before that day
 * @param emergence day of emergence where that is known beforehand, or {@link #UNKNOWN}
 * @param daysCountFrom first day whose length counts where that is known beforehand, or {@link #UNKNOWN}: from the day
 *     after emergence
 */
record Start(int sowDay, int groundDay, int firstDay, double clock, int emergence, int daysCountFrom) {
    static final int UNKNOWN = Integer.MIN_VALUE;

    /** A planting by this method, sown, set or started in trays in a week. */
    static Start of(Method method, int sowWeek) {
        int sowDay = 7 * sowWeek;
        double ahead = Math.max(0, method.headStart() - method.check());
        return switch (method.start()) {
            case SOWN, SET -> new Start(sowDay, sowDay, sowDay, 0, UNKNOWN, UNKNOWN);
            case PLUGS -> new Start(sowDay, sowDay, sowDay, ahead, sowDay, sowDay);
            case TRAY -> {
                int out = sowDay + 7 * method.trayWeeks();
                yield new Start(sowDay, out, out, ahead, out, sowDay);
            }
        };
    }

    /** A planting of a season under way, sown on a day of its own; in trays it waits until it is planted out. */
    private static Start of(Season season, Method method, int sowWeek, Past past, LocalDate sown) {
        int sowDay = season.dayOf(sown);
        double ahead = Math.max(0, method.headStart() - method.check());
        LocalDate out = past.out();
        return switch (method.start()) {
            case SOWN, SET -> new Start(sowDay, sowDay, sowDay, 0, UNKNOWN, UNKNOWN);
            case PLUGS -> new Start(sowDay, sowDay, sowDay, ahead, sowDay, sowDay);
            case TRAY -> {
                int ground = out == null ? 7 * (sowWeek + method.trayWeeks()) : season.dayOf(out);
                yield new Start(sowDay, ground, ground, ahead, ground, sowDay);
            }
        };
    }

    /** A standing planting in the ground with the clock that was read of it. */
    static Start read(Season season, Crop crop, Standing.ClockReading reading, int sowWeek) {
        int on = season.dayOf(reading.on());
        boolean up = reading.degreeDays() >= crop.clock().emergence() - Development.HAIR;
        int ground = Math.min(7 * sowWeek, -1);
        return new Start(ground, ground, on + 1, reading.degreeDays(), up ? Math.max(on, 0) : UNKNOWN, UNKNOWN);
    }

    /** The start of a standing planting, or of one from the pool where {@code standing} is null. */
    static Start of(Season season, Crop crop, Method method, int sowWeek, @Nullable Standing standing) {
        Standing.ClockReading reading = standing == null ? null : standing.clock();
        Past past = standing == null ? null : standing.past();
        LocalDate sown = past == null ? null : past.sown();
        if (past != null && sown != null) {
            return of(season, method, sowWeek, past, sown);
        }
        return reading == null ? of(method, sowWeek) : read(season, crop, reading, sowWeek);
    }
}
