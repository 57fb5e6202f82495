package bedwright.sheet;

import bedwright.season.Bed;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;

/** One row a bed, and one for the trays; one bar a planting, as high as its share of the bed's length. */
final class BedsBand implements Band {
    private static final double KEYS = 12;
    private static final double LEAST_ROW = 10;
    private static final double MOST_ROW = 34;
    /** Height for all rows together that still leaves room for the other bands on one sheet. */
    private static final double ROOM = 430;

    private static final double GAP = 2;
    /** How many rows of beds the row of trays is high. */
    private static final int TRAYS = 2;

    private final Season season;
    private final List<Shown> plantings;
    private final List<BedRow> rows = new ArrayList<>();
    private final double row;

    BedsBand(Season season, List<Shown> plantings) {
        this.season = season;
        this.plantings = plantings;
        for (Bed bed : season.allBeds()) {
            rows.add(BedRow.of(season, bed, plantings));
        }
        BedRow trays = BedRow.trays(season, plantings);
        boolean raised = !trays.stretches().isEmpty();
        this.row = Math.clamp(ROOM / (rows.size() + (raised ? TRAYS : 0)) - GAP, LEAST_ROW, MOST_ROW);
        if (raised) {
            rows.add(trays);
        }
    }

    @Override
    public String id() {
        return "beds";
    }

    @Override
    public String heading() {
        return "Beds";
    }

    @Override
    public String caption() {
        return "One row a bed, one bar a planting, as high as the share of the bed's length that it takes. Hatched:"
                + " growing; full colour: cutting in a usual year; white: kept for a late season and cleared. The last row"
                + " holds what stands in trays, dotted, by its share of the cells. Two bars with one number are one"
                + " planting in two stretches."
                + (isCrowded() ? " Where bars are too thin for their numbers, see bed by bed below." : "");
    }

    @Override
    public String description() {
        return Say.count(plantings.size(), "planting", "plantings") + " on "
                + Say.count(season.allBeds().size(), "bed", "beds")
                + ". The table names each one's bed, weeks and "
                + season.units().several() + ".";
    }

    private double height(BedRow bedRow) {
        return bedRow.bed() == null ? TRAYS * row : row;
    }

    /** Whether some bar is too thin for its number. */
    boolean isCrowded() {
        return rows.stream().anyMatch(each -> each.thinnest(height(each)) < Bar.LEAST_LETTER);
    }

    @Override
    public double height() {
        double height = KEYS + TimeAxis.MONTHS;
        for (BedRow each : rows) {
            height += height(each) + GAP;
        }
        return height;
    }

    @Override
    public void draw(Svg svg, TimeAxis axis) {
        svg.text(0, 9, "bold", "Beds");
        Keys keys = new Keys(svg, axis.left());
        keys.dots("in trays").hatched("hatch0", "growing").box("fill0", "cutting:");
        for (int r = 0; r < season.roles().size(); r++) {
            keys.both(Look.role(r), season.roles().get(r).name());
        }
        keys.box("rest", "kept and cleared").slanted("taken", "not free");
        axis.draw(svg, KEYS, height());
        double top = KEYS + TimeAxis.MONTHS;
        for (BedRow each : rows) {
            each.draw(svg, axis, top, height(each), false);
            top += height(each) + GAP;
        }
    }

    @Override
    public Table table() {
        Say say = new Say(season);
        List<Table.Column> columns = List.of(
                Table.Column.text("Bed"),
                Table.Column.number("No."),
                Table.Column.text("Planting"),
                Table.Column.number("From, " + say.lengths().symbol()),
                Table.Column.number("to, " + say.lengths().symbol()),
                Table.Column.number(say.lengthsHead()),
                Table.Column.text("In the bed from"),
                Table.Column.text("Free again"));
        List<List<String>> texts = new ArrayList<>();
        double metreWeeks = 0;
        for (BedRow each : rows) {
            if (each.bed() == null) {
                continue;
            }
            for (Stretches.Stretch stretch : each.stretches()) {
                Stretches.Piece piece = stretch.piece();
                metreWeeks += stretch.length() * (double) (piece.to() - piece.from());
                texts.add(List.of(
                        each.name(),
                        Integer.toString(stretch.planting().number()),
                        stretch.planting().name(),
                        say.length(stretch.start()),
                        say.length(stretch.end()),
                        say.length(stretch.length()),
                        say.shortWeek(piece.from()),
                        piece.to() >= season.weeks() ? "after the season" : say.shortWeek(piece.to())));
            }
        }
        List<List<String>> totals = List.of(
                List.of("All beds", "", season.units().several() + " × weeks", "", "", say.length(metreWeeks), "", ""));
        return new Table("beds-table", "Where along its bed each planting lies, and when", columns, texts, totals);
    }
}
