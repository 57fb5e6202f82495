package bedwright.sheet;

import bedwright.climate.Shelter;
import bedwright.season.Bed;
import bedwright.season.Compass;
import bedwright.season.Point;
import bedwright.season.RoughGrass;
import bedwright.season.Season;
import bedwright.season.Site;
import bedwright.season.Windbreak;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The beds where they stand, one picture for each side from which storms come, shaded by what is left of the wind. */
final class GroundPlan {
    private static final double WIDTH = 560;
    private static final double MOST_HEIGHT = 620;
    private static final double MARGIN = 30;
    /** Shades from full lee to the open wind, one for each fifth of it that is left. */
    private static final int SHADES = 5;
    /** How far beside a line its name stands. */
    private static final double BESIDE = 5;

    private final Season season;
    private final Say say;
    private final List<Bed> beds;
    private final double west;
    private final double north;
    private final double scale;
    private final double height;

    GroundPlan(Season season) {
        this.season = season;
        this.say = new Say(season);
        this.beds = season.allBeds();
        List<Point> points = new ArrayList<>();
        double widest = 0;
        for (Bed bed : beds) {
            points.add(bed.start());
            points.add(bed.end());
            widest = Math.max(widest, bed.block().width());
        }
        for (Windbreak windbreak : season.windbreaks()) {
            points.add(windbreak.from());
            points.add(windbreak.to());
        }
        for (RoughGrass grass : season.roughGrass()) {
            points.add(grass.from());
            points.add(grass.to());
        }
        double minX = points.stream().mapToDouble(Point::x).min().orElse(0) - widest;
        double maxX = points.stream().mapToDouble(Point::x).max().orElse(1) + widest;
        double minY = points.stream().mapToDouble(Point::y).min().orElse(0) - widest;
        double maxY = points.stream().mapToDouble(Point::y).max().orElse(1) + widest;
        this.scale = Math.min((WIDTH - 2 * MARGIN) / (maxX - minX), (MOST_HEIGHT - 2 * MARGIN - 24) / (maxY - minY));
        this.west = minX - ((WIDTH - 2 * MARGIN) / scale - (maxX - minX)) / 2;
        this.north = maxY;
        this.height = (maxY - minY) * scale + 2 * MARGIN + 24;
    }

    /** One picture for each storm side, or one without wind where there are no storms. */
    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        for (int s = 0; s < season.site().storms().size(); s++) {
            figures.add(figure("ground-" + (s + 1), season.site().storms().get(s)));
        }
        if (figures.isEmpty()) {
            figures.add(figure("ground", null));
        }
        return figures;
    }

    private Figure figure(String id, Site.@Nullable StormSide side) {
        String heading = side == null ? "The ground" : "Wind from " + Compass.name(side.from());
        String caption = side == null
                ? "The beds where they stand."
                : "Storms from " + Compass.name(side.from()) + " (" + Say.whole(side.from())
                        + "°): the darker a bed, the more it is sheltered. The figure is what is left of the open wind.";
        Svg svg = new Svg(Svg.Form.INLINE, id, WIDTH, height, heading, caption + " The table below holds the figures.");
        for (RoughGrass grass : season.roughGrass()) {
            svg.mark("mark", "rough grass")
                    .line(x(grass.from()), y(grass.from()), x(grass.to()), y(grass.to()), "grass")
                    .end();
            Point middle = middle(grass.from(), grass.to());
            label(svg, "rough grass", grass.from(), grass.to(), middle);
        }
        for (Bed bed : beds) {
            draw(svg, bed, side);
        }
        for (Windbreak windbreak : season.windbreaks()) {
            String about = windbreak.name() + ", " + say.lengthWithUnit(1000 * windbreak.height()) + " high, "
                    + density(windbreak);
            svg.mark("mark", about)
                    .line(x(windbreak.from()), y(windbreak.from()), x(windbreak.to()), y(windbreak.to()), "break")
                    .line(x(windbreak.from()), y(windbreak.from()), x(windbreak.to()), y(windbreak.to()), "gap")
                    .end();
            label(svg, about, windbreak.from(), windbreak.to(), middle(windbreak.from(), windbreak.to()));
        }
        if (side != null) {
            wind(svg, side.from());
        }
        compass(svg);
        return new Figure(id, heading, caption, svg.done());
    }

    private static String density(Windbreak windbreak) {
        return switch (windbreak.density()) {
            case SPARSE -> "sparse";
            case MEDIUM -> "medium dense";
            case DENSE -> "dense";
            case SOLID -> "solid";
        };
    }

    private double x(Point point) {
        return MARGIN + (point.x() - west) * scale;
    }

    private double y(Point point) {
        return MARGIN + (north - point.y()) * scale;
    }

    private static Point middle(Point a, Point b) {
        return new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
    }

    /** Writes beside a line, along it and never upside down. */
    private void label(Svg svg, String text, Point from, Point to, Point at) {
        double turn = upright(from, to);
        double radians = Math.toRadians(turn);
        double x = x(at) + BESIDE * StrictMath.sin(radians);
        double y = y(at) - BESIDE * StrictMath.cos(radians);
        svg.turned(x, y, turn, 9, "halo mid", text);
    }

    private double upright(Point from, Point to) {
        double degrees = Math.toDegrees(StrictMath.atan2(y(to) - y(from), x(to) - x(from)));
        return degrees > 90 ? degrees - 180 : degrees <= -90 ? degrees + 180 : degrees;
    }

    private void draw(Svg svg, Bed bed, Site.@Nullable StormSide side) {
        double speed = side == null ? 1 : Shelter.relativeSpeed(season, bed, side.from());
        double half = bed.block().width() / 2 * scale;
        double dx = x(bed.end()) - x(bed.start());
        double dy = y(bed.end()) - y(bed.start());
        double length = Math.hypot(dx, dy);
        double acrossX = -dy / length * half;
        double acrossY = dx / length * half;
        Svg.Outline outline = new Svg.Outline()
                .move(x(bed.start()) + acrossX, y(bed.start()) + acrossY)
                .line(x(bed.end()) + acrossX, y(bed.end()) + acrossY)
                .line(x(bed.end()) - acrossX, y(bed.end()) - acrossY)
                .line(x(bed.start()) - acrossX, y(bed.start()) - acrossY)
                .close();
        boolean tunnel = bed.block().tunnel() != null;
        String figures = bed.name() + (tunnel ? " (tunnel)" : "") + ", "
                + say.lengthWithUnit(1000 * bed.block().length())
                + (side == null ? "" : ": " + Say.percent(speed) + " of the open wind");
        int shade = side == null ? SHADES - 1 : Math.clamp((int) Math.floor(speed * SHADES), 0, SHADES - 1);
        svg.mark("mark", figures).path(outline, "bed shade" + shade).end();
        if (tunnel) {
            svg.path(outline, "tunnel");
        }
        String text = bed.name() + (side == null ? "" : "  " + Say.percent(speed));
        double size = Math.clamp((2 * half + bed.block().path() * scale) * 0.85, 6, 11);
        Point at = bed.at(0.5);
        double turn = upright(bed.start(), bed.end());
        double radians = Math.toRadians(turn);
        double down = size * 0.35;
        svg.turned(
                x(at) - down * StrictMath.sin(radians),
                y(at) + down * StrictMath.cos(radians),
                turn,
                size,
                "halo mid",
                text);
    }

    private void wind(Svg svg, double from) {
        double radians = Math.toRadians(from);
        double centreX = WIDTH - 34;
        double centreY = 34;
        double dx = -StrictMath.sin(radians);
        double dy = StrictMath.cos(radians);
        double tipX = centreX + 18 * dx;
        double tipY = centreY + 18 * dy;
        Svg.Outline head = new Svg.Outline()
                .move(tipX, tipY)
                .line(tipX - 9 * dx + 5 * dy, tipY - 9 * dy - 5 * dx)
                .line(tipX - 9 * dx - 5 * dy, tipY - 9 * dy + 5 * dx)
                .close();
        svg.mark("mark", "wind from " + Compass.name(from))
                .line(centreX - 18 * dx, centreY - 18 * dy, tipX, tipY, "arrow")
                .path(head, "arrow")
                .end();
        svg.text(centreX, centreY + 32, "mid", "wind");
    }

    private void compass(Svg svg) {
        double bottom = height - 8;
        svg.line(14, bottom, 14, bottom - 22, "ink");
        svg.path(
                new Svg.Outline()
                        .move(14, bottom - 28)
                        .line(10, bottom - 18)
                        .line(18, bottom - 18)
                        .close(),
                "arrow");
        svg.text(22, bottom - 16, "bold", "N");
        double unit = say.lengths().metric(BigDecimal.ONE) * scale;
        double length = 1;
        for (double step : new double[] {2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000}) {
            length = step * unit <= WIDTH / 4 ? step : length;
        }
        double end = WIDTH - MARGIN;
        double start = end - length * unit;
        svg.line(start, bottom - 6, end, bottom - 6, "ink");
        svg.line(start, bottom - 9, start, bottom - 3, "ink");
        svg.line(end, bottom - 9, end, bottom - 3, "ink");
        svg.text(
                (start + end) / 2,
                bottom - 10,
                "mid",
                Say.whole(length) + " " + say.lengths().symbol());
    }

    /** Beds with their shelter from each side. */
    Table table() {
        List<Table.Column> columns = new ArrayList<>(
                List.of(Table.Column.text("Bed"), Table.Column.number(say.lengthsHead()), Table.Column.text("Tunnel")));
        for (Site.StormSide side : season.site().storms()) {
            columns.add(Table.Column.number("Wind left, from " + Compass.name(side.from())));
        }
        columns.add(Table.Column.number("To rough grass, " + say.lengths().symbol()));
        List<List<String>> rows = new ArrayList<>();
        for (Bed bed : beds) {
            List<String> row = new ArrayList<>(List.of(
                    bed.name(),
                    say.length(1000 * bed.block().length()),
                    bed.block().tunnel() == null ? "" : "yes"));
            for (Site.StormSide side : season.site().storms()) {
                row.add(Say.percent(Shelter.relativeSpeed(season, bed, side.from())));
            }
            double grass = Shelter.toRoughGrass(season, bed);
            row.add(Double.isInfinite(grass) ? "none" : say.length(1000 * grass));
            rows.add(row);
        }
        double metres = beds.stream().mapToDouble(bed -> bed.block().length()).sum();
        List<String> total = new ArrayList<>(List.of("All beds", say.length(1000 * metres)));
        while (total.size() < columns.size()) {
            total.add("");
        }
        return new Table("ground-table", "Beds and their shelter", columns, rows, List.of(total));
    }
}
