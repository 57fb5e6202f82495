package bedwright.sheet;

import bedwright.compare.Comparison;
import bedwright.compare.Judged;
import bedwright.compare.Way;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/** A figure of each way of growing week by week, over the first way's as an outline. */
final class WaysBand implements Band {
    private static final double TITLE = 13;
    private static final double STRIP = 24;
    private static final double GAP = 4;
    /** Ways that are drawn; all stand in the table. */
    private static final int DRAWN = 12;

    private static final int LETTERS = 21;

    private final Comparison comparison;
    private final Say say;
    private final String id;
    private final String heading;
    private final String marks;
    private final DoubleFunction<String> word;
    private final double[][] figures;

    private WaysBand(
            Comparison comparison,
            String id,
            String heading,
            String marks,
            DoubleFunction<String> word,
            double[][] figures) {
        this.comparison = comparison;
        this.say = new Say(comparison.season());
        this.id = id;
        this.heading = heading;
        this.marks = marks;
        this.word = word;
        this.figures = figures;
    }

    /** Stems of each role, and hours. */
    static List<Band> all(Comparison comparison) {
        Season season = comparison.season();
        List<Band> bands = new ArrayList<>();
        for (int r = 0; r < season.roles().size(); r++) {
            int role = r;
            bands.add(new WaysBand(
                    comparison,
                    "stems-" + r,
                    "Stems a week: " + season.roles().get(r).name(),
                    "tint" + Look.role(r),
                    Say::stems,
                    byWeek(comparison, (plan, w) -> plan.stems()[role][w])));
        }
        bands.add(new WaysBand(
                comparison, "hours", "Hours a week", "plain", Say::hours, byWeek(comparison, (p, w) -> p.hours()[w])));
        return bands;
    }

    private interface OfPlan {
        double in(Judged plan, int week);
    }

    private static double[][] byWeek(Comparison comparison, OfPlan figure) {
        int weeks = comparison.season().weeks();
        return comparison.ways().stream()
                .map(way -> IntStream.range(0, weeks)
                        .mapToDouble(w -> way.plans().stream()
                                .mapToDouble(plan -> figure.in(plan, w))
                                .average()
                                .orElse(0))
                        .toArray())
                .toArray(double[][]::new);
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String heading() {
        return heading;
    }

    @Override
    public String caption() {
        String more = figures.length > DRAWN ? " Only the first " + DRAWN + " ways are drawn; the table has all." : "";
        return "In the mean of plans and seasons, all ways on one scale; the broken line is “"
                + comparison.first().name() + "”." + more;
    }

    @Override
    public String description() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < figures.length; i++) {
            double sum = 0;
            for (double week : figures[i]) {
                sum += week;
            }
            text.append(i == 0 ? "" : " ")
                    .append(comparison.ways().get(i).name())
                    .append(": ")
                    .append(word.apply(sum))
                    .append(" in the season.");
        }
        return text.toString();
    }

    private int drawn() {
        return Math.min(DRAWN, figures.length);
    }

    @Override
    public double height() {
        return TITLE + TimeAxis.MONTHS + drawn() * (STRIP + GAP);
    }

    @Override
    public void draw(Svg svg, TimeAxis axis) {
        svg.text(0, 9, "bold", heading);
        axis.draw(svg, TITLE, height());
        double most = 1;
        for (double[] way : figures) {
            for (double week : way) {
                most = Math.max(most, week);
            }
        }
        for (int i = 0; i < drawn(); i++) {
            double top = TITLE + TimeAxis.MONTHS + i * (STRIP + GAP);
            Way way = comparison.ways().get(i);
            String name =
                    way.name().length() <= LETTERS ? way.name() : way.name().substring(0, LETTERS - 1) + "…";
            Strip strip = Strip.of(axis, top, STRIP, most).frame(svg, name, word.apply(most));
            double[] its = figures[i];
            for (int w = 0; w < its.length; w++) {
                if (its[w] > 0) {
                    svg.rect(axis.x(w), strip.y(its[w]), axis.week(), strip.bottom() - strip.y(its[w]), marks);
                }
                strip.hover(svg, w, way.name() + ", " + say.week(w) + ": " + word.apply(its[w]));
            }
            if (i > 0) {
                svg.path(strip.steps(w -> figures[0][w]), "asked");
            }
        }
    }

    @Override
    public Table table() {
        List<Table.Column> columns = new ArrayList<>(List.of(Table.Column.text("Week")));
        comparison.ways().forEach(way -> columns.add(Table.Column.number(way.name())));
        List<List<String>> rows = new ArrayList<>();
        for (int w = 0; w < comparison.season().weeks(); w++) {
            List<String> row = new ArrayList<>(List.of(say.shortWeek(w)));
            for (double[] way : figures) {
                row.add(word.apply(way[w]));
            }
            rows.add(row);
        }
        return new Table(id + "-table", heading, columns, rows);
    }
}
