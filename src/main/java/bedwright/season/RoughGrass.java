package bedwright.season;

/** An edge of rough grass, as a line. */
public record RoughGrass(
        @Fact("One end") Point from, @Fact("Other end") Point to) {}
