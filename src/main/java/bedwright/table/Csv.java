package bedwright.table;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Tables as comma-separated values (RFC 4180), in UTF-8. Numbers have a point, dates are as in 2027-05-31, yes and no are
 * true and false. A text that a spreadsheet would take for a formula has an apostrophe put before it, and one that begins
 * with an apostrophe a second, so that both can be told apart when read back.
 */
public final class Csv {
    private static final String MARKS_OF_FORMULAS = "=+-@\t\r";
    private static final char BOM = '\uFEFF';

    private Csv() {}

    /** A table's text, without its name. */
    public static String text(Grid grid) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(grid.heads().stream().map(Csv::written).toList());
            for (Grid.Row row : grid.rows()) {
                csv.writeRecord(row.cells().stream().map(Csv::written).toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /**
     * A table's bytes.
     *
     * @param mark whether to begin with a byte order mark, by which some spreadsheets know UTF-8
     */
    public static byte[] bytes(Grid grid, boolean mark) {
        return ((mark ? String.valueOf(BOM) : "") + text(grid)).getBytes(StandardCharsets.UTF_8);
    }

    private static String written(Cell cell) {
        return switch (cell) {
            case Cell.Empty empty -> "";
            case Cell.Text text -> safe(text.text());
            case Cell.Number number -> number.plain();
            case Cell.Day day -> day.date().toString();
            case Cell.Truth truth -> Boolean.toString(truth.isTrue());
            case Cell.Broken broken -> broken.text();
        };
    }

    /** A text that no spreadsheet takes for a formula. */
    public static String safe(String text) {
        return !text.isEmpty() && (isMark(text.charAt(0)) || text.charAt(0) == '\'') ? "'" + text : text;
    }

    private static boolean isMark(char c) {
        return MARKS_OF_FORMULAS.indexOf(c) >= 0;
    }

    private static String unsafe(String text) {
        boolean marked =
                text.length() > 1 && text.charAt(0) == '\'' && (isMark(text.charAt(1)) || text.charAt(1) == '\'');
        return marked ? text.substring(1) : text;
    }

    /**
     * Reads a table, with commas, semicolons or tabulators between the cells, as its first line has them. All cells are
     * texts.
     *
     * @throws BadTable if it can't be read; the message says where
     */
    public static Grid read(String name, byte[] bytes) {
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new BadTable("The table is not written in UTF-8. Save it as CSV in UTF-8.", e);
        }
        text = !text.isEmpty() && text.charAt(0) == BOM ? text.substring(1) : text;
        List<List<Cell>> lines = new ArrayList<>();
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .fieldSeparator(separator(text))
                .skipEmptyLines(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(text)) {
            for (CsvRecord line : csv) {
                lines.add(line.getFields().stream()
                        .map(field -> Cell.of(unsafe(field)))
                        .toList());
            }
        } catch (CsvParseException e) {
            throw new BadTable(
                    "Behind row " + lines.size() + " the table can't be read: "
                            + (e.getMessage() == null ? "a quotation mark is missing" : e.getMessage()) + ".",
                    e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        List<Grid.Row> rows = new ArrayList<>();
        for (int i = 1; i < lines.size(); i++) {
            rows.add(new Grid.Row(i + 1, lines.get(i)));
        }
        return new Grid(name, lines.isEmpty() ? List.of() : lines.getFirst(), rows);
    }

    private static char separator(String text) {
        String first = text.lines().findFirst().orElse("");
        char separator = ',';
        for (char other : new char[] {';', '\t'}) {
            if (count(first, other) > count(first, separator)) {
                separator = other;
            }
        }
        return separator;
    }

    private static long count(String text, char c) {
        return text.chars().filter(each -> each == c).count();
    }
}
