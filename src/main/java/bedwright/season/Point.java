package bedwright.season;

/** A place on the farm, in metres east and north of a corner of the grower's choice. */
public record Point(
        @Fact(value = "How far east", unit = "m", min = -100000, max = 100000)
        double x,

        @Fact(value = "How far north", unit = "m", min = -100000, max = 100000)
        double y) {}
