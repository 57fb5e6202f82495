package bedwright.table;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.jspecify.annotations.Nullable;

/**
 * Tables as the sheets of one workbook (Office Open XML, ISO/IEC 29500). Texts are texts there whatever they begin with:
 * none is taken for a formula. The archive holds the time of its making, so two are compared by what they hold.
 */
public final class Spreadsheet {
    private static final double WIDEST = 40;
    private static final double NARROWEST = 7;
    /** Height of a line, points. */
    private static final double A_LINE = 15;
    /** How much broader bold letters are than those that widths are counted in. */
    private static final double BOLD = 1.15;
    /** So many columns can be read on a page across. */
    private static final int ON_A_PAGE = 16;

    private static final int LOOKED_AT = 200;
    /** Digits beyond which a number is none that anybody wrote. */
    private static final int LONGEST = 400;

    private Spreadsheet() {}

    /**
     * A workbook's bytes.
     *
     * @param marked names of the sheets whose tabs are coloured
     */
    public static byte[] bytes(List<Grid> grids, Collection<String> marked) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(bytes, "Bedwright", "1.0")) {
            for (Grid grid : grids) {
                try (Worksheet sheet = workbook.newWorksheet(grid.name())) {
                    if (marked.contains(grid.name())) {
                        // Bluish green of the Okabe-Ito palette.
                        sheet.setTabColor("009E73");
                    }
                    write(grid, sheet);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static void write(Grid grid, Worksheet sheet) {
        int lines = 1;
        for (int c = 0; c < grid.heads().size(); c++) {
            write(sheet, 0, c, grid.heads().get(c));
            sheet.style(0, c).bold().wrapText(true).verticalAlignment("top").set();
            double width = width(grid, c);
            sheet.width(c, width);
            lines = Math.max(lines, lines(letters(grid.heads().get(c)), width));
        }
        // Office programs do not make the row of heads higher by themselves.
        sheet.rowHeight(0, A_LINE * lines);
        for (Grid.Row row : grid.rows()) {
            for (int c = 0; c < row.cells().size(); c++) {
                write(sheet, row.number() - 1, c, row.cells().get(c));
            }
        }
        int fixed = grid.heads().size() > 1 ? 1 : 0;
        sheet.freezePane(fixed, 1);
        sheet.pageOrientation("landscape");
        sheet.repeatRows(0);
        if (grid.heads().size() <= ON_A_PAGE) {
            sheet.setFitToPage(true);
            sheet.fitToWidth((short) 1);
            sheet.fitToHeight((short) 0);
        } else {
            sheet.repeatCols(0);
        }
    }

    /** Lines that a head takes, broken between words; its letters are bold. */
    private static int lines(String head, double width) {
        int lines = 1;
        double taken = 0;
        for (String word : head.split(" ")) {
            double needs = word.length() * BOLD;
            if (taken > 0 && taken + 1 + needs > width) {
                lines++;
                taken = needs;
            } else {
                taken += (taken > 0 ? 1 : 0) + needs;
            }
        }
        return lines;
    }

    private static void write(Worksheet sheet, int row, int column, Cell cell) {
        switch (cell) {
            case Cell.Empty empty -> {}
            case Cell.Text text -> sheet.value(row, column, text.text());
            case Cell.Number number -> sheet.value(row, column, number.number());
            case Cell.Truth truth -> sheet.value(row, column, truth.isTrue());
            case Cell.Broken broken -> sheet.value(row, column, broken.text());
            case Cell.Day day -> {
                sheet.value(row, column, day.date());
                sheet.style(row, column).format("yyyy-mm-dd").set();
            }
        }
    }

    private static double width(Grid grid, int column) {
        int longest = Stream.of(letters(grid.heads().get(column)).split(" "))
                .mapToInt(String::length)
                .max()
                .orElse(0);
        for (Grid.Row row :
                grid.rows().subList(0, Math.min(LOOKED_AT, grid.rows().size()))) {
            longest = Math.max(longest, letters(row.cell(column)).length());
        }
        return Math.clamp(BOLD * longest + 2, NARROWEST, grid.heads().size() == 1 ? 3 * WIDEST : WIDEST);
    }

    private static String letters(Cell cell) {
        return switch (cell) {
            case Cell.Empty empty -> "";
            case Cell.Text text -> text.text();
            case Cell.Number number -> number.plain();
            case Cell.Day day -> day.date().toString();
            case Cell.Truth truth -> "FALSE";
            case Cell.Broken broken -> broken.text();
        };
    }

    /**
     * Reads all sheets of a workbook, of a formula what it came to.
     *
     * @throws BadTable if it is none
     */
    public static List<Grid> read(byte[] bytes) {
        List<Grid> grids = new ArrayList<>();
        try (ReadableWorkbook workbook =
                new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, true))) {
            for (Sheet sheet : workbook.getSheets().toList()) {
                grids.add(read(sheet));
            }
        } catch (IOException | ExcelReaderException e) {
            throw new BadTable("This is no workbook of the kind .xlsx, or a broken one. Save it as .xlsx.", e);
        }
        return grids;
    }

    private static Grid read(Sheet sheet) throws IOException {
        List<Cell> heads = List.of();
        List<Grid.Row> rows = new ArrayList<>();
        try (Stream<Row> lines = sheet.openStream()) {
            for (Row line : lines.toList()) {
                List<Cell> cells = new ArrayList<>();
                for (int c = 0; c < line.getCellCount(); c++) {
                    cells.add(line.getOptionalCell(c).map(Spreadsheet::cell).orElse(Cell.EMPTY));
                }
                if (line.getRowNum() == 1) {
                    heads = cells;
                } else {
                    rows.add(new Grid.Row(line.getRowNum(), cells));
                }
            }
        }
        return new Grid(sheet.getName(), heads, rows);
    }

    private static Cell cell(org.dhatim.fastexcel.reader.Cell cell) {
        return switch (cell.getType()) {
            case EMPTY -> Cell.EMPTY;
            case STRING -> Cell.of(cell.asString());
            case BOOLEAN -> new Cell.Truth(cell.asBoolean());
            case ERROR -> new Cell.Broken(String.valueOf(cell.getRawValue()));
            case NUMBER -> number(cell, cell.asNumber());
            case FORMULA -> worked(cell);
        };
    }

    private static Cell number(org.dhatim.fastexcel.reader.Cell cell, BigDecimal number) {
        if (Math.abs((long) number.scale()) + number.precision() > LONGEST) {
            return new Cell.Text(String.valueOf(cell.getRawValue()));
        }
        if (isDate(cell.getDataFormatString()) && number.stripTrailingZeros().scale() <= 0) {
            return new Cell.Day(cell.asDate().toLocalDate());
        }
        return new Cell.Number(number);
    }

    private static Cell worked(org.dhatim.fastexcel.reader.Cell cell) {
        String value = cell.getRawValue();
        if (value == null || value.isEmpty()) {
            return new Cell.Broken("=" + cell.getFormula());
        }
        if (value.startsWith("#")) {
            return new Cell.Broken(value);
        }
        try {
            return number(cell, new BigDecimal(value));
        } catch (NumberFormatException e) {
            return new Cell.Text(value);
        }
    }

    /** Whether a number's form shows days or years: letters for them outside quotation marks and brackets. */
    private static boolean isDate(@Nullable String format) {
        if (format == null) {
            return false;
        }
        String bare = format.replaceAll("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.", "").toLowerCase(Locale.ROOT);
        return bare.indexOf('y') >= 0 || bare.indexOf('d') >= 0;
    }
}
