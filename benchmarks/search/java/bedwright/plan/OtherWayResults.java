package bedwright.plan;

import java.nio.file.Path;
import java.util.List;

/** The file of other ways to a plan that were measured: rows are read and added, never changed. */
public final class OtherWayResults {
    /** Name of the file. */
    public static final String FILE = "other-ways.csv";

    private final ResultRows<OtherWay> rows;

    private OtherWayResults(ResultRows<OtherWay> rows) {
        this.rows = rows;
    }

    /**
     * Opens a file, which need not be there yet.
     *
     * @throws IllegalArgumentException if it has other columns, or a row that can't be read; the message says where
     */
    public static OtherWayResults at(Path file) {
        return new OtherWayResults(
                new ResultRows<>(file, OtherWayColumn.heads(), OtherWayColumn::cells, OtherWayColumn::row));
    }

    /** All rows, in the order in which they were measured. */
    public List<OtherWay> rows() {
        return rows.all();
    }

    /** Adds a row to the file, in one piece. */
    void add(OtherWay row) {
        rows.add(row);
    }
}
