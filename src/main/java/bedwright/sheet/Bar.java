package bedwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A planting's bar in the row of its bed.
 *
 * @param y upper edge
 * @param height height
 */
record Bar(Shown planting, double y, double height) {
    private static final double LEAST_LETTER = 5;
    private static final double MOST_LETTER = 8.5;
    private static final double LETTER_WIDTH = 0.54;

    void draw(Svg svg, TimeAxis axis) {
        int role = Look.role(planting.role());
        int cutFrom = Math.clamp(planting.cutFrom(), planting.heldFrom(), planting.heldTo());
        int cutTo = Math.clamp(planting.cutTo(), cutFrom, planting.heldTo());
        boolean cut = planting.cutFrom() < planting.cutTo();
        double start = axis.x(planting.heldFrom());
        double end = axis.x(planting.heldTo());
        if (planting.trayFrom() < planting.trayTo()) {
            double middle = y + height / 2;
            svg.line(axis.x(planting.trayFrom()), middle, axis.x(planting.trayTo()), middle, "raise");
        }
        double growing = cut ? axis.x(cutFrom) : end;
        if (growing > start) {
            svg.rect(start, y, growing - start, height, "grow", "grow" + role);
        }
        if (cut) {
            svg.rect(axis.x(cutFrom), y, axis.x(cutTo) - axis.x(cutFrom), height, "fill" + role);
            svg.rect(axis.x(cutTo), y, end - axis.x(cutTo), height, "rest");
        }
        svg.rect(start, y, end - start, height, "edge");
    }

    /** Numbers all bars of a row, with the name where there is room; numbers never lie over one another. */
    static void number(Svg svg, TimeAxis axis, List<Bar> bars, double top, double row) {
        List<double[]> written = new ArrayList<>();
        List<Bar> ordered = new ArrayList<>(bars);
        ordered.sort(Comparator.comparingDouble((Bar bar) -> -bar.height)
                .thenComparingInt(bar -> bar.planting.number())
                .thenComparingDouble(Bar::y));
        for (Bar bar : ordered) {
            bar.name(svg, axis, written, top, row);
        }
    }

    private void name(Svg svg, TimeAxis axis, List<double[]> written, double top, double row) {
        double size = Math.clamp(height * 0.92, LEAST_LETTER, MOST_LETTER);
        double start = axis.x(planting.heldFrom()) + 1.5;
        double end = axis.x(planting.heldTo());
        String number = Integer.toString(planting.number());
        String text = height >= LEAST_LETTER + 0.5
                ? fit(number + " " + planting.name(), number, end - start, size)
                : number;
        double width = text.length() * size * LETTER_WIDTH;
        double middle = Math.clamp(y + height / 2, top + size / 2, Math.max(top + size / 2, top + row - size / 2));
        double x = start;
        boolean moved = true;
        while (moved) {
            moved = false;
            for (double[] other : written) {
                boolean meets = x < other[2]
                        && other[0] < x + width
                        && middle - size / 2 < other[3]
                        && other[1] < middle + size / 2;
                if (meets) {
                    x = other[2] + 1;
                    moved = true;
                }
            }
        }
        if (x + width > end && !text.equals(number)) {
            text = number;
            width = text.length() * size * LETTER_WIDTH;
        }
        written.add(new double[] {x, middle - size / 2 + 0.4, x + width, middle + size / 2 - 0.4});
        svg.text(x, middle + size * 0.35, size, "halo", text);
    }

    /** As much of the text as there is room for, but at least its beginning. */
    private static String fit(String text, String least, double room, double size) {
        int letters = (int) Math.floor(room / (size * LETTER_WIDTH));
        if (text.length() <= letters) {
            return text;
        }
        // A name of less than three letters says nothing.
        return letters < least.length() + 4 ? least : text.substring(0, letters - 1).stripTrailing() + "…";
    }
}
