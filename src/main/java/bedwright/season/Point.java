package bedwright.season;

/** A place on the farm, in metres east and north of a corner of the grower's choice. */
public record Point(
        @Fact(value = "Metres east", unit = "m", min = -100000, max = 100000)
        double x,

        @Fact(value = "Metres north", unit = "m", min = -100000, max = 100000)
        double y) {}
