package bedwright.season;

/** A hedge, belt or fence along a line, which slows the wind on both of its sides. */
public record Windbreak(
        @Fact(value = "Name", least = 1) String name,
        @Fact("One end") Point from,
        @Fact("Other end") Point to,

        @Fact(value = "Height", unit = "m", min = 0.5, max = 60)
        double height,

        @Fact("How dense it is: sparse, medium, dense or solid")
        Density density) {

    /** Density classes of the published shelter table. */
    public enum Density {
        /** A single row of broad-leaved trees, 25 to 35 % of the view closed. */
        SPARSE,
        /** A single row of conifers, 40 to 60 %. */
        MEDIUM,
        /** Several rows of conifers, 60 to 80 %. */
        DENSE,
        /** A closed fence or wall, 100 %. */
        SOLID
    }
}
