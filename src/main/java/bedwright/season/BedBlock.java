package bedwright.season;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A bed, or several equal ones side by side. The first starts at {@link #at} and runs along {@link #heading}; each
 * further one lies a bed and a path to the right of the one before, seen along the heading.
 */
public record BedBlock(
        @Fact(value = "Name; with more than one bed a number is put behind it", least = 1)
        String name,

        @Fact(value = "Number of beds", min = 1, max = 500, byDefault = "1")
        int count,

        @Fact(value = "Where the centre line of the first bed starts", byDefault = "{\"x\": 0, \"y\": 0}")
        Point at,

        @Fact(
                value = "Direction in which the beds run: 0 north, 90 east",
                unit = "degrees",
                min = 0,
                max = 360,
                byDefault = "0")
        double heading,

        @Fact(value = "Length of each bed", unit = "m", min = 0.5, max = 2000)
        double length,

        @Fact(value = "Width of each bed", unit = "m", small = true, min = 0.1, max = 20, byDefault = "1.2")
        double width,

        @Fact(
                value = "Width of the path between two beds",
                unit = "m",
                small = true,
                min = 0,
                max = 50,
                byDefault = "0.5")
        double path,

        @Fact("The tunnel or house over these beds, if there is one") @Nullable
        Tunnel tunnel,

        @Fact("Day from which the beds can be worked; left out: from the start") @Nullable
        LocalDate workableFrom,

        @Fact(value = "Times in which beds are taken by something else", byDefault = "[]")
        List<Taken> taken,

        @Fact(value = "Which families grew here in earlier years", byDefault = "[]")
        List<Grown> history) {

    public BedBlock {
        taken = List.copyOf(taken);
        history = List.copyOf(history);
    }

    /** The same beds, taken at other times. */
    public BedBlock with(List<Taken> otherTimes) {
        return new BedBlock(name, count, at, heading, length, width, path, tunnel, workableFrom, otherTimes, history);
    }

    /** A tunnel or house: what it adds and keeps off. */
    public record Tunnel(
            @Fact(
                    value = "Warmth added to each day's minimum and maximum",
                    unit = "°C difference",
                    min = 0,
                    max = 20,
                    byDefault = "2")
            double warmth,

            @Fact(
                    value = "Degrees of frost that it keeps off",
                    unit = "°C difference",
                    min = 0,
                    max = 20,
                    byDefault = "2")
            double protects,

            @Fact(value = "Share of a gust's speed that reaches the plants", min = 0, max = 1, byDefault = "0.2")
            double gusts) {}

    /** A time in which a bed, or every bed of the block, can't be used. */
    public record Taken(
            @Fact("First day") LocalDate from,
            @Fact("Last day") LocalDate to,

            @Fact(value = "Number of the bed in the block; left out: all of them", min = 1, max = 500) @Nullable
            Integer bed) {}

    /** A family that grew in a bed, or in every bed of the block, in some year. */
    public record Grown(
            @Fact("Family") String family,

            @Fact(value = "Calendar year", min = 1900, max = 2200)
            int year,

            @Fact(value = "Number of the bed in the block; left out: all of them", min = 1, max = 500) @Nullable
            Integer bed) {}
}
