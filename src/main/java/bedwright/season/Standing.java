package bedwright.season;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A planting that already stands or is bought, with what is decided of it. What is in the ground has a bed, a method
 * and either a day of sowing, a clock, or stems written out by week; what is not given is still to be chosen.
 */
public record Standing(
        @Fact("Name of the planting; left out: the crop's") @Nullable
        String name,

        @Fact("Crop") String crop,

        @Fact(value = "Plants", unit = "plants", min = 1, max = 1000000)
        int plants,

        @Fact("Method, if decided") @Nullable String method,
        @Fact("Bed, if decided") @Nullable String bed,

        @Fact("First day of the week in which it was or will be sown or set, if decided") @Nullable
        LocalDate sown,

        @Fact("How far it has come; left out: counted from the day it was sown") @Nullable
        ClockReading clock,

        @Fact(value = "Stems by week, written out, for what is better known than computed", byDefault = "[]")
        List<WrittenStems> stems,

        @Fact("Last day on which it keeps its bed, where stems are written out; left out: the season's last") @Nullable
        LocalDate until,

        @Fact("What has happened to it so far, while the season is under way") @Nullable
        Past past) {

    public Standing {
        stems = List.copyOf(stems);
    }

    /** A standing planting before the season. */
    public Standing(
            @Nullable String name,
            String crop,
            int plants,
            @Nullable String method,
            @Nullable String bed,
            @Nullable LocalDate sown,
            @Nullable ClockReading clock,
            List<WrittenStems> stems,
            @Nullable LocalDate until) {
        this(name, crop, plants, method, bed, sown, clock, stems, until, null);
    }

    /** Degree-days that a planting had behind it at the end of a day. */
    public record ClockReading(
            @Fact("Day") LocalDate on,

            @Fact(value = "Degree-days at its end", unit = "°C·d", min = 0, max = 20000)
            double degreeDays) {}

    /** Stems of one week, as they are. */
    public record WrittenStems(
            @Fact("First day of the week") LocalDate week,

            @Fact("Kind; left out: the crop's kinds in their shares") @Nullable
            String kind,

            @Fact(value = "Stems", unit = "stems", min = 0, max = 10000000)
            double stems) {}

    /** Whether it was pulled. */
    public boolean isPulled() {
        return past != null && past.pulled() != null;
    }

    /** Whether it is raised in trays in a season under way and waits to be planted out. */
    public boolean isInTray() {
        return past != null && bed == null;
    }

    /** Whether the stems are written out. */
    public boolean isWritten() {
        return !stems.isEmpty();
    }
}
