package bedwright.sheet;

import java.util.function.IntToDoubleFunction;

/**
 * A stretch of a band with a scale of its own from 0 upwards, in which each week is a step.
 *
 * @param axis the weeks
 * @param top upper edge
 * @param height height
 * @param most value at the upper edge, above 0
 */
record Strip(TimeAxis axis, double top, double height, double most) {

    static Strip of(TimeAxis axis, double top, double height, double most) {
        return new Strip(axis, top, height, most > 0 ? most : 1);
    }

    double bottom() {
        return top + height;
    }

    /** Where a value lies, held within the strip. */
    double y(double value) {
        return top + height * (1 - Math.clamp(value / most, 0, 1));
    }

    /** Name to the left, greatest value to the right, and the line of 0. */
    Strip frame(Svg svg, String name, String greatest) {
        svg.text(axis.left() - 5, top + height / 2 + 3.5, "end", name);
        svg.text(axis.right() + 4, top + 7, "small", greatest);
        svg.line(axis.left(), bottom(), axis.right(), bottom(), "base");
        return this;
    }

    /** A line of steps over the weeks where the value is above 0. */
    Svg.Outline steps(IntToDoubleFunction value) {
        Svg.Outline outline = new Svg.Outline();
        for (Run run : Run.of(axis.weeks(), w -> value.applyAsDouble(w) > 0 ? 1 : 0)) {
            outline.move(axis.x(run.from()), y(value.applyAsDouble(run.from())));
            for (int w = run.from(); w <= run.to(); w++) {
                outline.line(axis.x(w), y(value.applyAsDouble(w))).line(axis.x(w + 1), y(value.applyAsDouble(w)));
            }
        }
        return outline;
    }

    /** The area between two values, in steps. */
    Svg.Outline between(IntToDoubleFunction low, IntToDoubleFunction high) {
        Svg.Outline outline = new Svg.Outline();
        for (Run run : Run.of(axis.weeks(), w -> high.applyAsDouble(w) > 0 ? 1 : 0)) {
            outline.move(axis.x(run.from()), y(low.applyAsDouble(run.from())));
            for (int w = run.from(); w <= run.to(); w++) {
                outline.line(axis.x(w), y(high.applyAsDouble(w))).line(axis.x(w + 1), y(high.applyAsDouble(w)));
            }
            for (int w = run.to(); w >= run.from(); w--) {
                outline.line(axis.x(w + 1), y(low.applyAsDouble(w))).line(axis.x(w), y(low.applyAsDouble(w)));
            }
            outline.close();
        }
        return outline;
    }

    /** A place over the whole week that shows its figures on hover. */
    void hover(Svg svg, int week, String figures) {
        svg.mark("mark", figures)
                .rect(axis.x(week), top, axis.week(), height, "hit")
                .end();
    }
}
