package bedwright.sheet;

import bedwright.season.Bed;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;

/** The beds' rows so high that every planting has its number, some beds a picture. */
final class BedsClosely {
    private static final double THINNEST = 7;
    private static final double LEAST_ROW = 14;
    private static final double MOST_ROW = 90;
    private static final double MOST_TRAYS = 260;
    /** Height that a printed sheet has room for. */
    private static final double ROOM = 760;

    private static final double GAP = 4;

    private final TimeAxis axis;
    private final List<Figure> figures = new ArrayList<>();

    private BedsClosely(TimeAxis axis) {
        this.axis = axis;
    }

    static List<Figure> figures(Season season, List<Shown> plantings, TimeAxis axis) {
        BedsClosely closely = new BedsClosely(axis);
        List<BedRow> together = new ArrayList<>();
        double height = 0;
        for (Bed bed : season.allBeds()) {
            BedRow row = BedRow.of(season, bed, plantings);
            if (!together.isEmpty() && height + height(row) > ROOM) {
                closely.add(together);
                together.clear();
                height = 0;
            }
            together.add(row);
            height += height(row);
        }
        closely.add(together);
        BedRow trays = BedRow.trays(season, plantings);
        if (!trays.stretches().isEmpty()) {
            closely.add(List.of(trays));
        }
        return List.copyOf(closely.figures);
    }

    private static double height(BedRow row) {
        double most = row.bed() == null ? MOST_TRAYS : MOST_ROW;
        return Math.clamp(row.heightFor(THINNEST), LEAST_ROW, most) + GAP;
    }

    private void add(List<BedRow> rows) {
        String id = "closely-" + (figures.size() + 1);
        String first = rows.getFirst().name();
        String last = rows.getLast().name();
        String heading = rows.getFirst().bed() == null ? "In trays" : rows.size() == 1 ? first : first + " to " + last;
        double height = TimeAxis.MONTHS + 2;
        for (BedRow row : rows) {
            height += height(row);
        }
        Svg svg = new Svg(
                Svg.Form.INLINE,
                id,
                TimeAxis.WIDTH,
                height,
                heading,
                "Each planting of these beds with its number; the table of plantings names them all.");
        axis.draw(svg, 0, height);
        double top = TimeAxis.MONTHS;
        for (BedRow row : rows) {
            row.draw(svg, axis, top, height(row) - GAP, true);
            top += height(row);
        }
        figures.add(new Figure(id, heading, "", svg.done()));
    }
}
