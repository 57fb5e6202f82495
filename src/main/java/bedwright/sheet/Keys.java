package bedwright.sheet;

/** The key of a band: samples of its marks with their meaning, side by side above it. */
final class Keys {
    private static final double SAMPLE = 16;
    private static final double LETTER = 4.35;
    private static final double BASE = 9;

    private final Svg svg;
    private double x;

    Keys(Svg svg, double x) {
        this.svg = svg;
        this.x = x;
    }

    /** A filled sample. */
    Keys box(String classes, String pattern, String meaning) {
        svg.rect(x, BASE - 7, SAMPLE - 4, 7, classes, pattern);
        return say(meaning);
    }

    /** A line. */
    Keys line(String classes, String meaning) {
        svg.line(x, BASE - 3.5, x + SAMPLE - 4, BASE - 3.5, classes);
        return say(meaning);
    }

    private Keys say(String meaning) {
        svg.text(x + SAMPLE - 1, BASE, 9, "key", meaning);
        x += SAMPLE + meaning.length() * LETTER + 8;
        return this;
    }
}
