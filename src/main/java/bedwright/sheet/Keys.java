package bedwright.sheet;

/** The key of a band: samples of its marks with their meaning, side by side above it. */
final class Keys {
    private static final double WIDTH = 14;
    private static final double HEIGHT = 7;
    private static final double LETTER = 4.35;
    private static final double BASE = 9;

    private final Svg svg;
    private double x;

    Keys(Svg svg, double x) {
        this.svg = svg;
        this.x = x;
    }

    /** A filled sample. */
    Keys box(String classes, String meaning) {
        svg.rect(x, BASE - HEIGHT, WIDTH, HEIGHT, classes);
        return say(meaning);
    }

    /** A sample of a bar with dashes across it. */
    Keys hatched(String classes, String meaning) {
        svg.rect(x, BASE - HEIGHT, WIDTH, HEIGHT, "paper");
        svg.broad(x, BASE - HEIGHT / 2, x + WIDTH, BASE - HEIGHT / 2, HEIGHT, classes);
        return box("edge thin", meaning);
    }

    /** A sample of a role's bar: growing and cutting. */
    Keys both(int role, String meaning) {
        svg.rect(x, BASE - HEIGHT, WIDTH / 2, HEIGHT, "paper");
        svg.broad(x, BASE - HEIGHT / 2, x + WIDTH / 2, BASE - HEIGHT / 2, HEIGHT, "hatch" + role);
        svg.rect(x + WIDTH / 2, BASE - HEIGHT, WIDTH / 2, HEIGHT, "fill" + role);
        return box("edge thin", meaning);
    }

    /** A sample of slanted lines. */
    Keys slanted(String classes, String meaning) {
        svg.slanted(x, BASE - HEIGHT, WIDTH, HEIGHT, 4, classes);
        return say(meaning);
    }

    /** A sample of dots. */
    Keys dots(String meaning) {
        svg.rect(x, BASE - HEIGHT, WIDTH, HEIGHT, "paper");
        svg.line(x + 1.5, BASE - HEIGHT * 0.75, x + WIDTH - 1, BASE - HEIGHT * 0.75, "dot0");
        svg.line(x + 1.5, BASE - HEIGHT * 0.25, x + WIDTH - 1, BASE - HEIGHT * 0.25, "dot0");
        return box("edge thin", meaning);
    }

    /** A line. */
    Keys line(String classes, String meaning) {
        svg.line(x, BASE - 3.5, x + WIDTH, BASE - 3.5, classes);
        return say(meaning);
    }

    private Keys say(String meaning) {
        svg.text(x + WIDTH + 3, BASE, 9, "key", meaning);
        x += WIDTH + 3 + meaning.length() * LETTER + 8;
        return this;
    }
}
