package bedwright.exact;

import bedwright.season.Labour;
import bedwright.season.Rounding;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Hours by week in ticks of 1/100,000 minute: own, hired, fit for cutting, and what standing work takes.
 */
record HoursOfWeeks(long[] own, long[] hired, long[] cutting, long[] chores) {
    /** No limit. */
    static final long UNLIMITED = Long.MAX_VALUE;

    private static final int TICKS_AN_HOUR = 6_000_000;

    static HoursOfWeeks of(Season season) {
        Labour labour = season.labour();
        long[] chores = new long[season.weeks()];
        for (Labour.Chore chore : labour.chores()) {
            for (int w = 0; w < chores.length; w++) {
                chores[w] += holds(season, w, chore.from(), chore.to()) ? ticks(chore.hours()) : 0;
            }
        }
        return new HoursOfWeeks(
                limits(season, labour.own(), Labour.Hours::from, Labour.Hours::to, Labour.Hours::hours, UNLIMITED),
                limits(season, labour.hired(), Labour.Hours::from, Labour.Hours::to, Labour.Hours::hours, 0),
                limits(
                        season,
                        labour.cutting(),
                        Labour.CuttingHours::from,
                        Labour.CuttingHours::to,
                        entry -> entry.hands() * entry.coolHours() * entry.mornings(),
                        UNLIMITED),
                chores);
    }

    private static <T> long[] limits(
            Season season,
            List<T> entries,
            Function<T, @Nullable LocalDate> from,
            Function<T, @Nullable LocalDate> to,
            ToDoubleFunction<T> hours,
            long withoutEntries) {
        long[] limits = new long[season.weeks()];
        Arrays.fill(limits, entries.isEmpty() ? withoutEntries : 0);
        for (T entry : entries) {
            for (int w = 0; w < limits.length; w++) {
                if (holds(season, w, from.apply(entry), to.apply(entry))) {
                    limits[w] = ticks(hours.applyAsDouble(entry));
                }
            }
        }
        return limits;
    }

    private static boolean holds(Season season, int week, @Nullable LocalDate from, @Nullable LocalDate to) {
        LocalDate first = season.weekStart(week);
        return (from == null || !first.isBefore(from)) && (to == null || !first.isAfter(to));
    }

    private static long ticks(double hours) {
        return Rounding.halfUp(hours * TICKS_AN_HOUR);
    }
}
