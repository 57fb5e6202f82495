package bedwright.plan;

import java.nio.file.Path;
import java.util.List;

/** The file of searches measured: rows are read and added, never changed. */
public final class SearchResults {
    /** Name of the file. */
    public static final String FILE = "how-close.csv";

    private final ResultRows<SearchRow> rows;

    private SearchResults(ResultRows<SearchRow> rows) {
        this.rows = rows;
    }

    /**
     * Opens a file, which need not be there yet.
     *
     * @throws IllegalArgumentException if it has other columns, or a row that can't be read; the message says where
     */
    public static SearchResults at(Path file) {
        return new SearchResults(new ResultRows<>(file, SearchColumn.heads(), SearchColumn::cells, SearchColumn::row));
    }

    /** All rows, in the order in which they were measured. */
    public List<SearchRow> rows() {
        return rows.all();
    }

    /** Whether a search was measured of that very commit on the same machine and JDK. */
    boolean has(SearchTask task, String commit, SearchSetting setting) {
        return Commits.isExact(commit)
                && rows().stream()
                        .anyMatch(row -> row.task().equals(task)
                                && row.commit().equals(commit)
                                && row.setting().equals(setting));
    }

    /** Adds a row to the file, in one piece, so that no end of the program leaves half of it. */
    void add(SearchRow row) {
        rows.add(row);
    }
}
