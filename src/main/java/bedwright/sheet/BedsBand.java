package bedwright.sheet;

import bedwright.season.Bed;
import bedwright.season.BedBlock;
import bedwright.season.Rounding;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** One row a bed, one bar a planting with its number; a bar is as high as its share of the bed's metres. */
final class BedsBand implements Band {
    private static final double KEYS = 12;
    private static final double LEAST_ROW = 11;
    private static final double MOST_ROW = 34;
    /** Height for all rows together that still leaves room for the other bands on one sheet. */
    private static final double ROOM = 430;

    private static final double GAP = 2;

    private final Season season;
    private final Say say;
    private final List<Shown> plantings;
    private final List<Bed> beds;
    private final List<List<Stretches.Stretch>> stretches = new ArrayList<>();
    private final double row;

    BedsBand(Season season, List<Shown> plantings) {
        this.season = season;
        this.say = new Say(season);
        this.plantings = plantings;
        this.beds = season.allBeds();
        for (Bed bed : beds) {
            List<Shown> there =
                    plantings.stream().filter(p -> p.bed() == bed.index()).toList();
            stretches.add(Stretches.layOut(there, length(bed)));
        }
        this.row = Math.clamp(ROOM / beds.size() - GAP, LEAST_ROW, MOST_ROW);
    }

    private static long length(Bed bed) {
        return Rounding.halfUp(1000 * bed.block().length());
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
        return "One row a bed, one bar a planting with its number, as high as the share of the bed's metres that it"
                + " takes. Hatched: growing; full colour: cutting in a usual year; white: kept for a late season and"
                + " cleared. A dotted line leads from the sowing in trays to the bed. Two bars with one number are one"
                + " planting in two stretches.";
    }

    @Override
    public String description() {
        return Say.count(plantings.size(), "planting", "plantings") + " on "
                + Say.count(beds.size(), "bed", "beds")
                + ". The table below names each one's bed, weeks and metres.";
    }

    @Override
    public double height() {
        return KEYS + TimeAxis.MONTHS + beds.size() * (row + GAP) + 2;
    }

    @Override
    public void draw(Svg svg, TimeAxis axis) {
        for (int r = 0; r < Math.min(Look.ROLES, season.roles().size()); r++) {
            svg.lines("grow" + r, Look.turn(r), 3, "hatch" + r);
        }
        svg.lines("taken", 30, 5, "faint");
        svg.text(0, 9, "bold", "Beds");
        Keys keys = new Keys(svg, axis.left());
        keys.line("raise", "in trays");
        for (int r = 0; r < season.roles().size(); r++) {
            keys.box("edge", "grow" + Look.role(r), "").box("fill" + Look.role(r), "", season.roles().get(r).name());
        }
        keys.box("rest", "", "kept and cleared").box("taken", "taken", "not free");
        svg.text(axis.right(), 9, "end small", "hatched growing, full cutting");
        axis.draw(svg, KEYS, height());
        for (Bed bed : beds) {
            double top = KEYS + TimeAxis.MONTHS + bed.index() * (row + GAP);
            drawBed(svg, axis, bed, top);
        }
    }

    private void drawBed(Svg svg, TimeAxis axis, Bed bed, double top) {
        long most = length(bed);
        List<Stretches.Stretch> there = stretches.get(bed.index());
        for (Stretches.Stretch stretch : there) {
            most = Math.max(most, stretch.to());
        }
        svg.rect(axis.left(), top, axis.right() - axis.left(), row, "row");
        drawTaken(svg, axis, bed, top);
        svg.text(axis.left() - 5, top + row / 2 + 3.5, "end", bed.name());
        svg.text(axis.right() + 4, top + row / 2 + 3, "small", Say.metres(length(bed)) + " m");
        double scale = row / most;
        List<Bar> bars = new ArrayList<>();
        for (Shown planting : plantings) {
            List<Stretches.Stretch> its =
                    there.stream().filter(s -> s.planting() == planting).toList();
            if (!its.isEmpty()) {
                svg.mark("mark planting", figures(planting));
                for (Stretches.Stretch stretch : its) {
                    Bar bar = new Bar(planting, top + stretch.from() * scale, stretch.length() * scale);
                    bar.draw(svg, axis);
                    bars.add(bar);
                }
                svg.end();
            }
        }
        Bar.number(svg, axis, bars, top, row);
        if (most > length(bed)) {
            double y = top + length(bed) * scale;
            svg.line(axis.left(), y, axis.right(), y, "limit");
        }
    }

    private void drawTaken(Svg svg, TimeAxis axis, Bed bed, double top) {
        for (BedBlock.Taken taken : bed.taken()) {
            shut(svg, axis, taken.from(), taken.to().plusDays(1), top, bed.name() + " is taken until " + say.date(taken.to()));
        }
        LocalDate workable = bed.block().workableFrom();
        if (workable != null) {
            shut(svg, axis, season.starts(), workable, top, bed.name() + " can be worked from " + say.date(workable));
        }
    }

    private void shut(Svg svg, TimeAxis axis, LocalDate from, LocalDate to, double top, String why) {
        double x = axis.xOfDay(season.dayOf(from));
        double end = axis.xOfDay(season.dayOf(to));
        if (end > x) {
            svg.mark("mark", why)
                    .rect(x, top, end - x, row, "taken", "taken")
                    .end();
        }
    }

    private String figures(Shown planting) {
        String cut = planting.cutFrom() == planting.cutTo()
                ? "not cut in a usual year"
                : "cut " + say.weeks(planting.cutFrom(), planting.cutTo() - 1);
        String start = planting.isWritten() ? "stands" : PlantingWords.started(say, planting);
        return "No. " + planting.number() + ", " + planting.name() + ", " + planting.kept().method() + ": "
                + Say.metres(planting.millimetres()) + " m of " + planting.kept().bed() + ", " + start + ", in the bed "
                + say.weeks(planting.heldFrom(), planting.heldTo() - 1) + ", " + cut + ", "
                + Say.stems(planting.stems().middle()) + " stems in a usual year, "
                + Say.stems(planting.stems().low()) + " to " + Say.stems(planting.stems().high()) + " in 8 years of 10";
    }

    @Override
    public Table table() {
        List<Table.Column> columns = List.of(
                Table.Column.text("Bed"),
                Table.Column.number("No."),
                Table.Column.text("Planting"),
                Table.Column.number("From, m"),
                Table.Column.number("to, m"),
                Table.Column.number("Metres"),
                Table.Column.text("In the bed from"),
                Table.Column.text("Free again"));
        List<List<String>> rows = new ArrayList<>();
        double metreWeeks = 0;
        for (Bed bed : beds) {
            for (Stretches.Stretch stretch : stretches.get(bed.index())) {
                Shown planting = stretch.planting();
                metreWeeks += stretch.length() * (double) (planting.heldTo() - planting.heldFrom());
                rows.add(List.of(
                        bed.name(),
                        Integer.toString(planting.number()),
                        planting.name(),
                        Say.metres(stretch.from()),
                        Say.metres(stretch.to()),
                        Say.metres(stretch.length()),
                        say.week(planting.heldFrom()),
                        planting.heldTo() >= season.weeks() ? "after the season" : say.week(planting.heldTo())));
            }
        }
        List<List<String>> totals = List.of(List.of(
                "All beds", "", "metres × weeks", "", "", Say.metres(metreWeeks), "", ""));
        return new Table("beds-table", "Where along its bed each planting lies, and when", columns, rows, totals);
    }
}
