package bedwright.sheet;

import bedwright.season.Season;
import bedwright.table.Cell;
import bedwright.table.Csv;
import bedwright.table.Grid;
import java.util.ArrayList;
import java.util.List;

/** The plantings as comma-separated values, for a spreadsheet. */
public final class PlantingsCsv {
    private PlantingsCsv() {}

    /**
     * A line a planting under a line of heads: dates as in 2027-05-31, metres or feet with a point, stems whole. A text that a
     * spreadsheet would take for a formula has an apostrophe put before it.
     */
    public static String of(SheetFacts facts) {
        return Csv.text(grid(facts));
    }

    /** The same as cells. */
    static Grid grid(SheetFacts facts) {
        String lengths = facts.season().units().several();
        List<String> heads = List.of(
                "number",
                "crop",
                "name",
                "method",
                "bed",
                "sown",
                "in bed from",
                "free again",
                "first cut week",
                "last cut week",
                "plants",
                lengths,
                "cells",
                "net",
                "net " + lengths,
                "cover from",
                "cover to",
                "stems usual year",
                "stems one year in ten",
                "stems nine years in ten");
        List<List<Cell>> rows = new ArrayList<>();
        for (Shown planting : Shown.of(facts)) {
            rows.add(row(facts.season(), planting));
        }
        return Grid.of("Plantings", heads, rows);
    }

    private static List<Cell> row(Season season, Shown planting) {
        boolean cut = planting.cutFrom() < planting.cutTo();
        boolean covered = planting.coverFrom() < planting.coverTo();
        String net = planting.net();
        return List.of(
                Cell.of(planting.number()),
                Cell.of(planting.crop().name()),
                Cell.of(planting.name()),
                Cell.of(planting.kept().method()),
                Cell.of(planting.kept().bed()),
                planting.isWritten() ? Cell.EMPTY : Cell.of(planting.kept().sown()),
                date(season, planting.heldFrom()),
                date(season, planting.heldTo()),
                cut ? date(season, planting.cutFrom()) : Cell.EMPTY,
                cut ? date(season, planting.cutTo() - 1) : Cell.EMPTY,
                Cell.of(planting.kept().plants()),
                length(season, planting.millimetres()),
                Cell.of(planting.cells()),
                net == null ? Cell.EMPTY : Cell.of(net),
                length(season, planting.netMillimetres()),
                covered ? date(season, planting.coverFrom()) : Cell.EMPTY,
                covered ? date(season, planting.coverTo()) : Cell.EMPTY,
                stems(planting.stems().middle()),
                stems(planting.stems().low()),
                stems(planting.stems().high()));
    }

    private static Cell date(Season season, int week) {
        return Cell.of(season.weekStart(week));
    }

    private static Cell length(Season season, long millimetres) {
        return Cell.of(season.units().length().of(millimetres / 1000.0), 3);
    }

    private static Cell stems(long hundredths) {
        return Cell.of(Math.round(hundredths / 100.0));
    }
}
