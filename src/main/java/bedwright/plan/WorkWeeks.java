package bedwright.plan;

import bedwright.season.Labour;
import bedwright.season.Rounding;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Hours of the season by week, in ticks.
 *
 * @param chores standing work
 * @param own own hours, {@link #UNLIMITED} where nothing is said
 * @param hired hours that can be hired
 * @param cutting hours fit for cutting, {@link #UNLIMITED} where nothing is said
 */
record WorkWeeks(long[] chores, long[] own, long[] hired, long[] cutting) {
    static final long UNLIMITED = Long.MAX_VALUE / 4;

    static WorkWeeks of(Season season) {
        Labour labour = season.labour();
        int weeks = season.weeks();
        long[] chores = new long[weeks];
        long[] own = new long[weeks];
        long[] hired = new long[weeks];
        long[] cutting = new long[weeks];
        Arrays.fill(own, labour.own().isEmpty() ? UNLIMITED : 0);
        Arrays.fill(cutting, labour.cutting().isEmpty() ? UNLIMITED : 0);
        for (int w = 0; w < weeks; w++) {
            LocalDate first = season.weekStart(w);
            for (Labour.Chore chore : labour.chores()) {
                if (holds(chore.from(), chore.to(), first)) {
                    chores[w] += ticks(chore.hours());
                }
            }
            for (Labour.Hours hours : labour.own()) {
                own[w] = holds(hours.from(), hours.to(), first) ? ticks(hours.hours()) : own[w];
            }
            for (Labour.Hours hours : labour.hired()) {
                hired[w] = holds(hours.from(), hours.to(), first) ? ticks(hours.hours()) : hired[w];
            }
            for (Labour.CuttingHours hours : labour.cutting()) {
                if (holds(hours.from(), hours.to(), first)) {
                    cutting[w] = ticks(hours.hands() * hours.coolHours() * hours.mornings());
                }
            }
        }
        return new WorkWeeks(chores, own, hired, cutting);
    }

    private static boolean holds(@Nullable LocalDate from, @Nullable LocalDate to, LocalDate day) {
        return (from == null || !day.isBefore(from)) && (to == null || !day.isAfter(to));
    }

    private static long ticks(double hours) {
        return Rounding.halfUp(hours * Grains.TICKS_AN_HOUR);
    }
}
