package bedwright.recheck;

import bedwright.season.Labour;
import bedwright.season.Season;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Hours that there are by week, in ticks, and the chores that come every week (season model, section 5). */
final class HourLimits {
    final long[] own;
    final long[] hired;
    final long[] cutting;
    final long[] chores;

    HourLimits(Season season) {
        int weeks = season.weeks();
        Labour labour = season.labour();
        own = new long[weeks];
        hired = new long[weeks];
        cutting = new long[weeks];
        chores = new long[weeks];
        for (int week = 0; week < weeks; week++) {
            LocalDate day = season.weekStart(week);
            own[week] = labour.own().isEmpty() ? Units.UNLIMITED : 0;
            for (Labour.Hours entry : labour.own()) {
                if (holds(day, entry.from(), entry.to())) {
                    own[week] = Units.ticks(entry.hours());
                }
            }
            for (Labour.Hours entry : labour.hired()) {
                if (holds(day, entry.from(), entry.to())) {
                    hired[week] = Units.ticks(entry.hours());
                }
            }
            cutting[week] = labour.cutting().isEmpty() ? Units.UNLIMITED : 0;
            for (Labour.CuttingHours entry : labour.cutting()) {
                if (holds(day, entry.from(), entry.to())) {
                    cutting[week] = Units.ticks(entry.hands() * entry.coolHours() * entry.mornings());
                }
            }
            for (Labour.Chore chore : labour.chores()) {
                if (holds(day, chore.from(), chore.to())) {
                    chores[week] += Units.ticks(chore.hours());
                }
            }
        }
    }

    private static boolean holds(LocalDate day, @Nullable LocalDate from, @Nullable LocalDate to) {
        return (from == null || !day.isBefore(from)) && (to == null || !day.isAfter(to));
    }
}
