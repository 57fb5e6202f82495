package bedwright.log;

import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.Method;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * When a planting is begun and planted out.
 *
 * @param sown day of sowing, setting or starting in trays
 * @param out day of planting out, of what is raised in trays during the season, or null
 * @param goTogether whether a sowing on another day brings its planting out along
 */
public record Beginning(LocalDate sown, @Nullable LocalDate out, boolean goTogether) {

    /**
     * As planned.
     *
     * @param season the season before it began
     */
    public static Beginning of(Season season, KeptPlanting kept) {
        LocalDate out = kept.out();
        if (out != null) {
            return new Beginning(kept.sown(), out, false);
        }
        for (Crop crop : season.crops()) {
            if (crop.name().equals(kept.crop())) {
                Method method = crop.methods().stream()
                        .filter(one -> one.name().equals(kept.method()))
                        .findFirst()
                        .orElse(crop.methods().getFirst());
                if (method.start() == Method.Start.TRAY && !isInTheGround(season, kept)) {
                    return new Beginning(kept.sown(), kept.sown().plusWeeks(method.trayWeeks()), true);
                }
            }
        }
        return new Beginning(kept.sown(), null, false);
    }

    /** Whether it stood in its bed before the season began. */
    private static boolean isInTheGround(Season season, KeptPlanting kept) {
        Integer entry = kept.standing();
        if (kept.pool() != null || entry == null || entry > season.standing().size()) {
            return false;
        }
        Standing before = season.standing().get(entry - 1);
        LocalDate sown = before.sown();
        return before.isWritten()
                || before.clock() != null
                || (sown != null && sown.isBefore(season.starts()) && before.bed() != null);
    }

    /** After a note, if that speaks of it. */
    public Beginning after(int planting, Note note) {
        return switch (note) {
            case Note.Moved moved when moved.planting() == planting -> movedTo(moved.to());
            case Note.WeekDone week when week.except().contains(planting) -> putOff(week.week());
            default -> this;
        };
    }

    /** What was moved is the sowing or the planting out, whichever is nearer to the day that is said. */
    private Beginning movedTo(LocalDate to) {
        if (out != null
                && Math.abs(out.toEpochDay() - to.toEpochDay()) < Math.abs(sown.toEpochDay() - to.toEpochDay())) {
            return new Beginning(sown, to, goTogether);
        }
        return sownOn(to);
    }

    private Beginning sownOn(LocalDate day) {
        LocalDate planting = out != null && goTogether ? out.plusDays(day.toEpochDay() - sown.toEpochDay()) : out;
        return new Beginning(day, planting, goTogether);
    }

    /** What was due in a week and was not done is due in the next. */
    private Beginning putOff(LocalDate week) {
        if (isWithin(sown, week)) {
            return sownOn(sown.plusWeeks(1));
        }
        return out != null && isWithin(out, week) ? new Beginning(sown, out.plusWeeks(1), goTogether) : this;
    }

    private static boolean isWithin(LocalDate day, LocalDate week) {
        return !day.isBefore(week) && day.isBefore(week.plusWeeks(1));
    }
}
