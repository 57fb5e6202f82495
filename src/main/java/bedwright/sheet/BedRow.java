package bedwright.sheet;

import bedwright.season.Bed;
import bedwright.season.BedBlock;
import bedwright.season.Rounding;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The row of a bed, or of all trays together, with the stretches that lie in it.
 *
 * @param bed the bed, or null for the trays
 * @param length what it holds, millimetres or cells
 * @param stretches what lies where
 */
record BedRow(Season season, @Nullable Bed bed, long length, List<Stretches.Stretch> stretches) {

    static BedRow of(Season season, Bed bed, List<Shown> plantings) {
        long length = Rounding.halfUp(1000 * bed.block().length());
        List<Stretches.Piece> pieces = plantings.stream()
                .filter(p -> p.bed() == bed.index())
                .map(Stretches.Piece::inBed)
                .toList();
        return new BedRow(season, bed, length, WholeStretches.layOut(pieces, length));
    }

    /** The trays of all plantings; as long as the most that stand there at once. */
    static BedRow trays(Season season, List<Shown> plantings) {
        List<Stretches.Piece> pieces =
                plantings.stream().map(Stretches.Piece::inTrays).toList();
        long most = 1;
        for (int w = 0; w < season.weeks(); w++) {
            int week = w;
            long there = pieces.stream()
                    .filter(p -> p.from() <= week && week < p.to())
                    .mapToLong(Stretches.Piece::amount)
                    .sum();
            most = Math.max(most, there);
        }
        return new BedRow(season, null, most, Stretches.layOut(pieces, most));
    }

    String name() {
        return bed == null ? "in trays" : bed.name();
    }

    private String holds() {
        return bed == null ? Say.whole(length) + " cells" : new Say(season).lengthWithUnit(length);
    }

    private long most() {
        return Math.max(
                length,
                stretches.stream().mapToLong(Stretches.Stretch::end).max().orElse(0));
    }

    /** Height at which the thinnest bar is so high. */
    double heightFor(double thinnest) {
        long least =
                stretches.stream().mapToLong(Stretches.Stretch::length).min().orElse(length);
        return thinnest * most() / Math.max(1, least);
    }

    /** Height of the thinnest bar of a row so high. */
    double thinnest(double height) {
        return height / heightFor(1);
    }

    /** Draws the row. Numbers are written where they fit, or, seen closely, everywhere. */
    void draw(Svg svg, TimeAxis axis, double top, double height, boolean closely) {
        Say say = new Say(season);
        svg.rect(axis.left(), top, axis.right() - axis.left(), height, "row");
        drawShut(svg, axis, say, top, height);
        svg.text(axis.left() - 5, top + height / 2 + 3.5, "end", name());
        svg.text(axis.right() + 4, top + height / 2 + 3, "small", holds());
        double scale = height / most();
        List<Bar> bars = new ArrayList<>();
        for (List<Stretches.Stretch> same : byPlanting()) {
            Stretches.Piece piece = same.getFirst().piece();
            svg.mark(bed == null ? "mark raising" : "mark planting", figures(say, piece));
            for (Stretches.Stretch stretch : same) {
                Bar bar = new Bar(piece, bed == null, top + stretch.start() * scale, stretch.length() * scale);
                bar.draw(svg, axis);
                bars.add(bar);
            }
            svg.end();
        }
        Bar.number(svg, axis, bars, top, height, closely);
        if (most() > length) {
            double y = top + length * scale;
            svg.line(axis.left(), y, axis.right(), y, "limit");
        }
    }

    private List<List<Stretches.Stretch>> byPlanting() {
        Map<Integer, List<Stretches.Stretch>> together = new LinkedHashMap<>();
        stretches.stream()
                .sorted(Comparator.comparingInt(s -> s.planting().number()))
                .forEach(s -> together.computeIfAbsent(s.planting().number(), n -> new ArrayList<>())
                        .add(s));
        return List.copyOf(together.values());
    }

    private void drawShut(Svg svg, TimeAxis axis, Say say, double top, double height) {
        if (bed == null) {
            return;
        }
        for (BedBlock.Taken taken : bed.taken()) {
            String why = bed.name() + " is taken until " + say.date(taken.to());
            shut(svg, axis, taken.from(), taken.to().plusDays(1), top, height, why);
        }
        LocalDate workable = bed.block().workableFrom();
        if (workable != null) {
            String why = bed.name() + " can be worked from " + say.date(workable);
            shut(svg, axis, season.starts(), workable, top, height, why);
        }
    }

    private void shut(Svg svg, TimeAxis axis, LocalDate from, LocalDate to, double top, double height, String why) {
        double x = axis.xOfDay(season.dayOf(from));
        double end = axis.xOfDay(season.dayOf(to));
        if (end > x) {
            svg.mark("mark", why)
                    .rect(x, top, end - x, height, "hit")
                    .slanted(x, top, end - x, height, 7, "taken")
                    .end();
        }
    }

    private String figures(Say say, Stretches.Piece piece) {
        Shown planting = piece.planting();
        String head = "No. " + planting.number() + ", " + planting.name() + ", "
                + planting.kept().method() + ": ";
        if (bed == null) {
            return head + Say.whole(planting.cells()) + " cells, in trays "
                    + say.weeks(planting.trayFrom(), planting.trayTo() - 1) + ", then in "
                    + planting.kept().bed();
        }
        String cut = planting.cutFrom() == planting.cutTo()
                ? "not cut in a usual year"
                : "cut " + say.weeks(planting.cutFrom(), planting.cutTo() - 1);
        return head + say.lengthWithUnit(planting.millimetres()) + " of " + bed.name() + ", "
                + PlantingsTable.started(say, planting) + ", in the bed "
                + say.weeks(planting.heldFrom(), planting.heldTo() - 1) + ", " + cut + ", "
                + Say.stems(planting.stems().middle()) + " stems in a usual year, "
                + Say.stems(planting.stems().low()) + " to "
                + Say.stems(planting.stems().high()) + " in 8 years of 10";
    }
}
