package bedwright.growth;

import bedwright.season.Past;
import bedwright.season.Season;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a planting that stands while its season is under way, in days of the season (season model, section 9).
 *
 * @param up day on which it was seen above ground, or {@link #NOT}
 * @param pinch day on which it was ready to be pinched, or {@link #NOT}
 * @param last day of the last stage seen, or {@link #NOT}
 * @param stage that stage, or null
 * @param counted day of the last count, which replaces what is lost up to then, or {@link #NOT}
 * @param storms day up to which gusts are known
 * @param pests day up to which pests are known
 * @param alive last day on which it was seen alive, or {@link #NOT}
 * @param left share that is left
 * @param factor on the stems still to come
 * @param pulled day on which it was pulled, or {@link #NOT}
 */
record Noted(
        int up,
        int pinch,
        int last,
        Past.@Nullable Stage stage,
        int counted,
        int storms,
        int pests,
        int alive,
        double left,
        double factor,
        int pulled) {
    /** Stands for a day that is not known. */
    static final int NOT = Integer.MIN_VALUE / 2;

    /** Nothing. */
    static final Noted NOTHING = new Noted(NOT, NOT, NOT, null, NOT, NOT, NOT, NOT, 1, 1, NOT);

    static Noted of(Season season, @Nullable Past past) {
        if (past == null) {
            return NOTHING;
        }
        Past.StageSeen last = past.last();
        int counted = day(season, past.counted());
        return new Noted(
                day(season, past.seen(Past.Stage.UP)),
                day(season, past.seen(Past.Stage.PINCH)),
                last == null ? NOT : day(season, last.on()),
                last == null ? null : last.stage(),
                counted,
                Math.max(counted, day(season, past.storms())),
                Math.max(counted, day(season, past.pests())),
                day(season, past.alive()),
                past.left(),
                past.factor(),
                day(season, past.pulled()));
    }

    private static int day(Season season, @Nullable LocalDate date) {
        return date == null ? NOT : season.dayOf(date);
    }
}
