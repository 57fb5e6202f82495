package bedwright.sheet;

import bedwright.season.Season;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Locale;

/** The plantings as comma-separated values, for a spreadsheet. */
public final class PlantingsCsv {
    private static final String MARKS_OF_FORMULAS = "=+-@\t\r";

    private PlantingsCsv() {}

    /**
     * A line a planting under a line of heads: dates as in 2027-05-31, metres or feet with a point, stems whole. A text that a
     * spreadsheet would take for a formula has an apostrophe put before it.
     */
    public static String of(SheetFacts facts) {
        StringWriter text = new StringWriter();
        String lengths = facts.season().units().several();
        try (CsvWriter csv =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(
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
            for (Shown planting : Shown.of(facts)) {
                csv.writeRecord(row(facts.season(), planting));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static String[] row(Season season, Shown planting) {
        boolean cut = planting.cutFrom() < planting.cutTo();
        boolean covered = planting.coverFrom() < planting.coverTo();
        String net = planting.net();
        return new String[] {
            Integer.toString(planting.number()),
            safe(planting.crop().name()),
            safe(planting.name()),
            safe(planting.kept().method()),
            safe(planting.kept().bed()),
            planting.isWritten() ? "" : planting.kept().sown().toString(),
            date(season, planting.heldFrom()),
            date(season, planting.heldTo()),
            cut ? date(season, planting.cutFrom()) : "",
            cut ? date(season, planting.cutTo() - 1) : "",
            Integer.toString(planting.kept().plants()),
            length(season, planting.millimetres()),
            Long.toString(planting.cells()),
            net == null ? "" : safe(net),
            length(season, planting.netMillimetres()),
            covered ? date(season, planting.coverFrom()) : "",
            covered ? date(season, planting.coverTo()) : "",
            stems(planting.stems().middle()),
            stems(planting.stems().low()),
            stems(planting.stems().high())
        };
    }

    private static String date(Season season, int week) {
        LocalDate date = season.weekStart(week);
        return date.toString();
    }

    private static String length(Season season, long millimetres) {
        return String.format(Locale.ROOT, "%.3f", season.units().length().of(millimetres / 1000.0));
    }

    private static String stems(long hundredths) {
        return Long.toString(Math.round(hundredths / 100.0));
    }

    /** A text that no spreadsheet takes for a formula. */
    static String safe(String text) {
        return !text.isEmpty() && MARKS_OF_FORMULAS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
