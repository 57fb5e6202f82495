package bedwright.season;

/** Equal small lots of one crop in the pool; each becomes one planting or is left out. */
public record Lots(
        @Fact("Crop") String crop,

        @Fact(
                value = "Plants of one lot: about three metres of bed, or a tray",
                unit = "plants",
                min = 1,
                max = 1000000)
        int plants,

        @Fact(value = "How many such lots", min = 0, max = 10000)
        int lots) {}
