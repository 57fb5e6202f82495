package bedwright.season;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A plan as it is kept in a file: the season it was made for, how it was made, and its plantings. */
public record Plan(
        @Fact(value = "Version of this file's form", min = 1, max = 1)
        int version,

        @Fact("The season it was made for, whole") Season season,
        @Fact("How it was made") Making making,

        @Fact("Its score in the planner's own units, to check it by")
        Score score,

        @Fact(value = "The plantings, by number", byDefault = "[]")
        List<KeptPlanting> plantings) {

    public Plan {
        plantings = List.copyOf(plantings);
    }

    /** Seed and limits with which a plan was made. */
    public record Making(
            @Fact(value = "Seed of the search", min = 0, max = 9007199254740991L)
            long seed,

            @Fact(value = "Limit in seconds, if that was the limit", unit = "s", min = 0) @Nullable
            Double seconds,

            @Fact(value = "Limit in moves of each search, if that was the limit", min = 0) @Nullable
            Long moves,

            @Fact(value = "Whether it was interrupted", byDefault = "false")
            boolean interrupted,

            @Fact(value = "Whether it ended by itself before its limit, since it hardly improved", byDefault = "false")
            boolean settled) {}

    /** Score in whole units: see the contributors' page for the units. */
    public record Score(
            @Fact("Hard rules broken; 0 if none") long hard,

            @Fact("Stems missing that must be ours; 0 if none")
            long medium,

            @Fact("Money, caution included") long soft) {}
}
