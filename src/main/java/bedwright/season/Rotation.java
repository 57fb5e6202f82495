package bedwright.season;

/** What it costs to break the rotation, for each planting. */
public record Rotation(
        @Fact(
                value = "Price of a planting whose family was in the bed too few years ago",
                unit = "money",
                min = 0,
                byDefault = "0")
        double restBroken,

        @Fact(
                value = "Price of a planting that follows another of its family in the same bed and season",
                unit = "money",
                min = 0,
                byDefault = "0")
        double followOn) {}
