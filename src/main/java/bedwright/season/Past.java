package bedwright.season;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What has happened so far to a planting that already stands, while its season is under way. */
public record Past(
        @Fact("Day on which it was sown, set or started in trays; left out: as the planting itself says") @Nullable
        LocalDate sown,

        @Fact("Day on which it was planted out; left out: not yet, or it is not raised in trays") @Nullable
        LocalDate out,

        @Fact(
                value = "Ways in which it may still be grown, the one in force first; none: only as it says",
                byDefault = "[]")
        List<String> ways,

        @Fact(value = "Stages seen, by day", byDefault = "[]")
        List<StageSeen> stages,

        @Fact("Day on which its stand was last counted, which replaces the losses that were expected up to then")
        @Nullable
        LocalDate counted,

        @Fact(
                value = "Share that is left: of all its plants where it was counted, else of those expected",
                min = 0,
                max = 1,
                byDefault = "1")
        double left,

        @Fact("Day up to which the losses to storms are in that share") @Nullable
        LocalDate storms,

        @Fact("Day up to which the losses to pests are in that share") @Nullable
        LocalDate pests,

        @Fact("Last day on which it was seen alive") @Nullable
        LocalDate alive,

        @Fact(value = "Factor on the stems still to come, from what was cut", min = 0, max = 1000, byDefault = "1")
        double factor,

        @Fact("Day on which it was pulled; left out: it stands") @Nullable
        LocalDate pulled,

        @Fact(value = "Entry of the season's pool that its lots came from, from 1", min = 1, max = 100000) @Nullable
        Integer pool,

        @Fact(value = "Lots that it is made of", min = 1, max = 100000, byDefault = "1")
        int lots) {

    public Past {
        ways = List.copyOf(ways);
        stages = List.copyOf(stages);
    }

    /** A stage seen on a day. */
    public record StageSeen(
            @Fact("Day") LocalDate on,
            @Fact("Stage: up, pinch, colour or first-stem") Stage stage) {}

    /** Stages that can be seen, in the order in which they come. */
    public enum Stage {
        /** Above ground. */
        UP,
        /** Ready to be pinched. */
        PINCH,
        /** Colour showing. */
        COLOUR,
        /** First stem cut. */
        FIRST_STEM
    }

    /** The last stage seen, if any was. */
    public @Nullable StageSeen last() {
        return stages.isEmpty() ? null : stages.getLast();
    }

    /** The day on which a stage was seen, if it was. */
    public @Nullable LocalDate seen(Stage stage) {
        for (StageSeen one : stages) {
            if (one.stage() == stage) {
                return one.on();
            }
        }
        return null;
    }
}
