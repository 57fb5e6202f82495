package bedwright.sheet;

import bedwright.plan.Grains;
import bedwright.season.Season;

/** A scale of money across a picture, with round figures on it; grains. */
record MoneyScale(Season season, double least, double most, double left, double right) {
    private static final int STEPS = 8;

    /** A scale that holds two figures and 0 if it lies near. */
    static MoneyScale of(Season season, double least, double most, double left, double right) {
        double span = Math.max(most - least, 1);
        double margin = 0.04 * span;
        return new MoneyScale(season, least - margin, most + margin, left, right);
    }

    double x(double grains) {
        return left + (right - left) * (grains - least) / (most - least);
    }

    /** Round figures above a picture and lines down through it. */
    void draw(Svg svg, double top, double bottom) {
        Say say = new Say(season);
        double one = 1 / Grains.toMoney(season, 1);
        double step = one * step(Grains.toMoney(season, most - least) / STEPS);
        svg.group("axis");
        for (double at = Math.ceil(least / step) * step; at <= most; at += step) {
            double figure = Math.abs(at) < step / 2 ? 0 : at;
            svg.line(x(figure), top + 12, x(figure), bottom, figure == 0 ? "ink" : "month");
            svg.text(x(figure), top + 9, "mid", say.money(figure));
        }
        svg.end();
    }

    /** 1, 2 or 5 times a power of ten, whole, not below a figure. */
    private static double step(double least) {
        double power = 1;
        while (power * 10 <= least) {
            power *= 10;
        }
        return least <= power ? power : least <= 2 * power ? 2 * power : least <= 5 * power ? 5 * power : 10 * power;
    }
}
