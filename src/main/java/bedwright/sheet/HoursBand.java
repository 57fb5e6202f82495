package bedwright.sheet;

import bedwright.plan.Outcome;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;

/** Hours of work against own and hired hands, and cutting against the cool hours. */
final class HoursBand implements Band {
    private static final double KEYS = 12;
    private static final double STRIP = 52;
    private static final double GAP = 5;
    private static final double CUTTING = 24;
    /** Limits at or above this are none: a quarter of the greatest number, as the outcome has it. */
    private static final long NO_LIMIT = Long.MAX_VALUE / 4;

    private final Say say;
    private final Outcome.Work work;
    private final int weeks;
    private final int seasons;
    private final Spread[] all;
    private final Spread[] cutting;
    private final Spread[] clearing;

    HoursBand(Season season, Outcome outcome) {
        this.say = new Say(season);
        this.work = outcome.work();
        this.weeks = season.weeks();
        this.seasons = outcome.seasons();
        this.all = new Spread[weeks];
        this.cutting = new Spread[weeks];
        this.clearing = new Spread[weeks];
        for (int w = 0; w < weeks; w++) {
            int week = w;
            all[w] = Spread.of(seasons, k -> work.all(week, k));
            cutting[w] = Spread.of(work.cutting()[w]);
            clearing[w] = Spread.of(work.clearing()[w]);
        }
    }

    @Override
    public String id() {
        return "hours";
    }

    @Override
    public String heading() {
        return "Hours";
    }

    @Override
    public String caption() {
        return "Mean hours a week: standing work, making up and serving at the bottom, then work on the plantings, then"
                + " cutting. The stroke through each bar reaches over 8 years of 10. The thick line is what own hands"
                + " have, the broken one own and hired together. Below: cutting alone against the hours fit for it.";
    }

    @Override
    public String description() {
        double sum = 0;
        double peak = 0;
        int at = 0;
        for (int w = 0; w < weeks; w++) {
            sum += all[w].mean();
            if (all[w].mean() > peak) {
                peak = all[w].mean();
                at = w;
            }
        }
        return Say.hours(sum) + " hours in the season in the mean, most in the week of " + say.week(at) + ": "
                + Say.hours(peak) + ".";
    }

    @Override
    public double height() {
        return KEYS + TimeAxis.MONTHS + STRIP + GAP + CUTTING + 2;
    }

    private static boolean isLimit(long hours) {
        return hours < NO_LIMIT;
    }

    private long hands(int week) {
        return isLimit(work.own()[week]) ? work.own()[week] + work.hired()[week] : NO_LIMIT;
    }

    @Override
    public void draw(Svg svg, TimeAxis axis) {
        svg.text(0, 9, "bold", "Hours a week");
        new Keys(svg, axis.left())
                .box("plain", "standing work, making up, serving")
                .hatched("tend", "plantings")
                .box("cut", "cutting")
                .line("limit", "own hours; below: hours fit for cutting")
                .line("limit2", "own and hired")
                .line("whisker", "8 years in 10");
        axis.draw(svg, KEYS, height());
        double most = 1;
        double mostCutting = 1;
        for (int w = 0; w < weeks; w++) {
            most = Math.max(most, Math.max(all[w].high(), isLimit(hands(w)) ? hands(w) : 0));
            long limit = work.cuttingLimit()[w];
            mostCutting = Math.max(mostCutting, Math.max(cutting[w].high(), isLimit(limit) ? limit : 0));
        }
        double top = KEYS + TimeAxis.MONTHS;
        Strip strip = Strip.of(axis, top, STRIP, most).frame(svg, "all work", Say.hours(most));
        Strip cool =
                Strip.of(axis, top + STRIP + GAP, CUTTING, mostCutting).frame(svg, "cutting", Say.hours(mostCutting));
        for (int w = 0; w < weeks; w++) {
            drawWeek(svg, axis, strip, cool, w);
        }
        svg.path(strip.steps(w -> isLimit(work.own()[w]) ? work.own()[w] : 0), "limit");
        svg.path(strip.steps(w -> isLimit(hands(w)) && work.hired()[w] > 0 ? hands(w) : 0), "limit2");
        svg.path(cool.steps(w -> isLimit(work.cuttingLimit()[w]) ? work.cuttingLimit()[w] : 0), "limit");
    }

    private void drawWeek(Svg svg, TimeAxis axis, Strip strip, Strip cool, int w) {
        double x = axis.x(w) + axis.week() * 0.1;
        double width = axis.week() * 0.8;
        double middle = axis.x(w) + axis.week() / 2;
        double fixed = standing(w);
        double tending = fixed + work.plantings()[w] + clearing[w].mean();
        bar(svg, strip, x, width, 0, fixed, "plain");
        bar(svg, strip, x, width, fixed, tending, "tendbox");
        if (tending > fixed) {
            double at = x + width / 2;
            svg.broad(at, strip.y(fixed), at, strip.y(tending), width, "tend");
        }
        bar(svg, strip, x, width, tending, tending + cutting[w].mean(), "cut");
        svg.line(middle, strip.y(all[w].low()), middle, strip.y(all[w].high()), "whisker");
        strip.hover(svg, w, figures(w));
        bar(svg, cool, x, width, 0, cutting[w].mean(), "cut");
        if (cutting[w].high() > 0) {
            svg.line(middle, cool.y(cutting[w].low()), middle, cool.y(cutting[w].high()), "whisker");
        }
    }

    private static void bar(Svg svg, Strip strip, double x, double width, double from, double to, String look) {
        if (to > from) {
            svg.rect(x, strip.y(to), width, strip.y(from) - strip.y(to), look);
        }
    }

    private double standing(int w) {
        return work.chores()[w] + work.making()[w] + work.service()[w];
    }

    private double hiredUsed(int w) {
        double sum = 0;
        for (int k = 0; k < seasons && isLimit(work.own()[w]); k++) {
            sum += Math.max(0, work.all(w, k) - work.own()[w]);
        }
        return sum / seasons;
    }

    private static String limit(long hours) {
        return isLimit(hours) ? Say.hours(hours) : "no limit";
    }

    private String figures(int w) {
        return say.week(w) + ": " + Say.hours(all[w].mean()) + " hours in the mean, " + Say.hours(all[w].low()) + " to "
                + Say.hours(all[w].high()) + " in 8 years of 10 (standing work, making up and serving "
                + Say.hours(standing(w)) + ", plantings " + Say.hours(work.plantings()[w]) + ", cutting "
                + Say.hours(cutting[w].mean()) + "); own " + limit(work.own()[w]) + ", hired up to "
                + Say.hours(work.hired()[w]) + ", fit for cutting " + limit(work.cuttingLimit()[w]);
    }

    @Override
    public Table table() {
        List<Table.Column> columns = List.of(
                Table.Column.text("Week"),
                Table.Column.number("Standing work"),
                Table.Column.number("Making up, serving"),
                Table.Column.number("Plantings"),
                Table.Column.number("Cutting (mean)"),
                Table.Column.number("Clearing left-overs (mean)"),
                Table.Column.number("All (mean)"),
                Table.Column.number("1 year in 10"),
                Table.Column.number("9 years in 10"),
                Table.Column.number("Own hours"),
                Table.Column.number("Hired, up to"),
                Table.Column.number("beyond own (mean)"),
                Table.Column.number("Fit for cutting"));
        List<List<String>> rows = new ArrayList<>();
        double[] sums = new double[7];
        for (int w = 0; w < weeks; w++) {
            double[] figures = {
                work.chores()[w],
                work.making()[w] + work.service()[w],
                work.plantings()[w],
                cutting[w].mean(),
                clearing[w].mean(),
                all[w].mean(),
                hiredUsed(w)
            };
            for (int i = 0; i < sums.length; i++) {
                sums[i] += figures[i];
            }
            rows.add(List.of(
                    say.shortWeek(w),
                    Say.hours(figures[0]),
                    Say.hours(figures[1]),
                    Say.hours(figures[2]),
                    Say.hours(figures[3]),
                    Say.hours(figures[4]),
                    Say.hours(figures[5]),
                    Say.hours(all[w].low()),
                    Say.hours(all[w].high()),
                    limit(work.own()[w]),
                    Say.hours(work.hired()[w]),
                    Say.hours(figures[6]),
                    limit(work.cuttingLimit()[w])));
        }
        List<List<String>> totals = List.of(List.of(
                "Season",
                Say.hours(sums[0]),
                Say.hours(sums[1]),
                Say.hours(sums[2]),
                Say.hours(sums[3]),
                Say.hours(sums[4]),
                Say.hours(sums[5]),
                "",
                "",
                "",
                "",
                Say.hours(sums[6]),
                ""));
        return new Table("hours-table", "Hours a week", columns, rows, totals);
    }
}
