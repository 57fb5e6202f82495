package bedwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A planting's bar in a row.
 *
 * @param piece what it stands for
 * @param raising whether the row is that of the trays
 * @param y upper edge
 * @param height height
 */
record Bar(Stretches.Piece piece, boolean raising, double y, double height) {
    /** Letters smaller than this can't be read on paper. */
    static final double LEAST_LETTER = 5.5;

    /** Outlines would hide the colour of bars thinner than this. */
    private static final double LEAST_OUTLINED = 3.2;

    /** Height of a line of dots. */
    private static final double DOTS = 3;

    private static final double MOST_LETTER = 8.5;
    /** Mean width of a letter, by its size. */
    private static final double LETTER_WIDTH = 0.54;

    void draw(Svg svg, TimeAxis axis) {
        Shown planting = piece.planting();
        int role = Look.role(planting.role());
        double start = axis.x(piece.from());
        double end = axis.x(piece.to());
        if (raising) {
            dots(svg, start, end, role);
        } else if (planting.cutFrom() < planting.cutTo()) {
            int cutFrom = Math.clamp(planting.cutFrom(), piece.from(), piece.to());
            int cutTo = Math.clamp(planting.cutTo(), cutFrom, piece.to());
            double cut = axis.x(cutFrom);
            double over = axis.x(cutTo);
            if (cut > start) {
                growing(svg, start, cut, role);
            }
            svg.rect(cut, y, over - cut, height, "fill" + role);
            if (end > over) {
                svg.rect(over, y, end - over, height, height < LEAST_OUTLINED ? "paper" : "rest");
            }
        } else {
            growing(svg, start, end, role);
        }
        if (height >= LEAST_OUTLINED) {
            svg.rect(start, y, end - start, height, height < LEAST_LETTER ? "edge thin" : "edge");
        }
    }

    private void growing(Svg svg, double from, double to, int role) {
        svg.rect(from, y, to - from, height, "paper");
        svg.broad(from, y + height / 2, to, y + height / 2, height, "hatch" + role);
    }

    private void dots(Svg svg, double from, double to, int role) {
        svg.rect(from, y, to - from, height, "paper");
        int lines = Math.max(1, (int) Math.floor(height / DOTS));
        for (int i = 0; i < lines; i++) {
            double middle = y + height * (i + 0.5) / lines;
            svg.line(from + 1.5, middle, to - 1, middle, "dot" + role);
        }
    }

    /**
     * Numbers the bars of a row, with the name where there is room; no two of them lie over one another.
     *
     * @param all whether bars too thin for letters are numbered too, a little over their neighbours
     */
    static void number(Svg svg, TimeAxis axis, List<Bar> bars, double top, double row, boolean all) {
        List<double[]> written = new ArrayList<>();
        List<Bar> ordered = new ArrayList<>(bars);
        ordered.sort(Comparator.comparingDouble((Bar bar) -> -bar.height)
                .thenComparingInt(bar -> bar.piece.planting().number())
                .thenComparingDouble(Bar::y));
        for (Bar bar : ordered) {
            if (all || bar.height >= LEAST_LETTER) {
                bar.name(svg, axis, written, top, row);
            }
        }
    }

    private void name(Svg svg, TimeAxis axis, List<double[]> written, double top, double row) {
        double size = Math.clamp(height * 0.92, LEAST_LETTER, MOST_LETTER);
        String number = Integer.toString(piece.planting().number());
        double x = axis.x(piece.from()) + 1.5;
        double room = axis.x(piece.to()) - x;
        String text =
                height >= LEAST_LETTER ? fit(number + " " + piece.planting().name(), number, room, size) : number;
        double least = top + size / 2;
        double middle = Math.clamp(y + height / 2, least, Math.max(least, top + row - size / 2));
        double[] box = {x, middle - size / 2 + 0.4, x + width(text, size), middle + size / 2 - 0.4};
        double[] other = meeting(box, written);
        while (other != null) {
            text = number;
            box[0] = other[2] + 1;
            box[2] = box[0] + width(text, size);
            other = meeting(box, written);
        }
        written.add(box);
        svg.text(box[0], middle + size * 0.35, size, "halo", text);
    }

    private static double width(String text, double size) {
        return text.length() * size * LETTER_WIDTH;
    }

    private static double @Nullable [] meeting(double[] box, List<double[]> written) {
        for (double[] other : written) {
            if (box[0] < other[2] && other[0] < box[2] && box[1] < other[3] && other[1] < box[3]) {
                return other;
            }
        }
        return null;
    }

    /** As much of the text as there is room for, but at least its beginning. */
    private static String fit(String text, String least, double room, double size) {
        int letters = (int) Math.floor(room / (size * LETTER_WIDTH));
        if (text.length() <= letters) {
            return text;
        }
        // A name of less than three letters says nothing.
        return letters < least.length() + 5
                ? least
                : text.substring(0, letters - 1).stripTrailing() + "…";
    }
}
