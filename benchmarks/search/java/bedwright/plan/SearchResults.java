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

/** The file of searches measured: rows are read and added, never changed. */
public final class SearchResults {
    /** Name of the file. */
    public static final String FILE = "how-close.csv";

    private final Path file;
    private final List<SearchRow> rows;

    private SearchResults(Path file, List<SearchRow> rows) {
        this.file = file;
        this.rows = rows;
    }

    /**
     * Opens a file, which need not be there yet.
     *
     * @throws IllegalArgumentException if it has other columns, or a row that can't be read; the message says where
     */
    public static SearchResults at(Path file) {
        try {
            return new SearchResults(file, Files.exists(file) ? read(file) : new ArrayList<>());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<SearchRow> read(Path file) throws IOException {
        Grid grid = Csv.read(file.toString(), Files.readAllBytes(file));
        List<String> heads = texts(grid.heads());
        if (!heads.equals(SearchColumn.heads())) {
            throw new IllegalArgumentException(
                    file + ": expected the columns " + SearchColumn.heads() + ", found " + heads);
        }
        List<SearchRow> rows = new ArrayList<>();
        for (Grid.Row row : grid.rows()) {
            if (row.cells().size() != heads.size()) {
                throw new IllegalArgumentException(file + ", row " + row.number() + ": expected " + heads.size()
                        + " cells, found " + row.cells().size() + "; take the row out");
            }
            try {
                rows.add(SearchColumn.row(texts(row.cells())));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(file + ", row " + row.number() + ": " + e.getMessage(), e);
            }
        }
        return rows;
    }

    private static List<String> texts(List<Cell> cells) {
        return cells.stream()
                .map(cell -> cell instanceof Cell.Text text ? text.text() : "")
                .toList();
    }

    /** All rows, in the order in which they were measured. */
    public List<SearchRow> rows() {
        return List.copyOf(rows);
    }

    /** Whether a search was measured of that very commit on the same machine and JDK. */
    boolean has(SearchTask task, String commit, SearchSetting setting) {
        return Commits.isExact(commit)
                && rows.stream()
                        .anyMatch(row -> row.task().equals(task)
                                && row.commit().equals(commit)
                                && row.setting().equals(setting));
    }

    /** Adds a row to the file, in one piece, so that no end of the program leaves half of it. */
    void add(SearchRow row) {
        try {
            if (Files.notExists(file)) {
                Files.writeString(file, line(SearchColumn.heads()), StandardOpenOption.CREATE_NEW);
            }
            Files.write(
                    file, line(SearchColumn.cells(row)).getBytes(StandardCharsets.UTF_8), StandardOpenOption.APPEND);
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
