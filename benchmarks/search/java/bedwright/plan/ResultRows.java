package bedwright.plan;

import bedwright.table.Cell;
import bedwright.table.Csv;
import bedwright.table.Grid;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A file of results as CSV with a line of heads: rows are read and added, never changed.
 *
 * @param <R> what a row says
 */
final class ResultRows<R> {
    private final Path file;
    private final List<String> heads;
    private final Function<R, List<String>> cells;
    private final List<R> rows;

    /**
     * Opens a file, which need not be there yet.
     *
     * @param cells of a row, as many as there are heads
     * @param row from its cells; an {@link IllegalArgumentException} says which of them can't be read
     * @throws IllegalArgumentException if it has other columns, or a row that can't be read; the message says where
     */
    ResultRows(Path file, List<String> heads, Function<R, List<String>> cells, Function<List<String>, R> row) {
        this.file = file;
        this.heads = heads;
        this.cells = cells;
        try {
            this.rows = Files.exists(file) ? read(row) : new ArrayList<>();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<R> read(Function<List<String>, R> read) throws IOException {
        Grid grid = Csv.read(file.toString(), Files.readAllBytes(file));
        List<String> found = texts(grid.heads());
        if (!found.equals(heads)) {
            throw new IllegalArgumentException(file + ": expected the columns " + heads + ", found " + found);
        }
        List<R> all = new ArrayList<>();
        for (Grid.Row row : grid.rows()) {
            if (row.cells().size() != heads.size()) {
                throw new IllegalArgumentException(file + ", row " + row.number() + ": expected " + heads.size()
                        + " cells, found " + row.cells().size() + "; take the row out");
            }
            try {
                all.add(read.apply(texts(row.cells())));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(file + ", row " + row.number() + ": " + e.getMessage(), e);
            }
        }
        return all;
    }

    private static List<String> texts(List<Cell> cells) {
        return cells.stream()
                .map(cell -> cell instanceof Cell.Text text ? text.text() : "")
                .toList();
    }

    /** All rows, in the order in which they were measured. */
    List<R> all() {
        return List.copyOf(rows);
    }

    /** Adds a row to the file, in one piece, so that no end of the program leaves half of it. */
    void add(R row) {
        try {
            if (Files.notExists(file)) {
                Files.writeString(file, line(heads), StandardOpenOption.CREATE_NEW);
            }
            Files.write(file, line(cells.apply(row)).getBytes(StandardCharsets.UTF_8), StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        rows.add(row);
    }

    private static String line(List<String> cells) throws IOException {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            csv.writeRecord(cells);
        }
        return text.toString();
    }
}
