package bedwright.file;

import bedwright.season.Season;
import bedwright.table.Cell;
import bedwright.table.Grid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The tables of a season that a grower edits in a spreadsheet: beds, figures of crops and their methods, what stands, what is held in place, and
 * outlets.
 * What holds lists or names within an entry, such as the kinds of a crop, has no column and stays as it is.
 */
public final class SeasonTables {
    private SeasonTables() {}

    /** The names of all tables that are read back. */
    public static List<String> names() {
        return Arrays.stream(TableForm.values()).map(TableForm::sheet).toList();
    }

    /** Whether a table of this name is read back, however its letters are written. */
    public static boolean isRead(String name) {
        return names().stream().anyMatch(name.strip()::equalsIgnoreCase);
    }

    /** All tables of a season, in the units of its file. */
    public static List<Grid> of(Season season) {
        return Arrays.stream(TableForm.values()).map(form -> grid(form, season)).toList();
    }

    private static Grid grid(TableForm form, Season season) {
        List<TableColumn> columns = TableColumn.of(form.type(), season.units());
        TableForm parent = form.parent();
        List<String> heads = new ArrayList<>();
        List<List<Cell>> rows = new ArrayList<>();
        if (parent == null) {
            if (form.numbered()) {
                heads.add(TableForm.ENTRY);
            }
            for (Record entry : entries(season, form.list())) {
                List<Cell> row = new ArrayList<>(row(columns, entry));
                if (form.numbered()) {
                    row.addFirst(Cell.of(rows.size() + 1L));
                }
                rows.add(row);
            }
        } else {
            heads.add(form.parentHead());
            for (Record owner : entries(season, parent.list())) {
                for (Record entry : entries(owner, form.list())) {
                    List<Cell> row = new ArrayList<>();
                    row.add(Cell.of(String.valueOf(value(owner, String.valueOf(parent.key())))));
                    row.addAll(row(columns, entry));
                    rows.add(row);
                }
            }
        }
        columns.forEach(column -> heads.add(column.head()));
        return Grid.of(form.sheet(), heads, rows);
    }

    private static List<Cell> row(List<TableColumn> columns, Record entry) {
        return columns.stream().map(column -> column.cell(entry)).toList();
    }

    private static List<Record> entries(Record owner, String list) {
        List<Record> entries = new ArrayList<>();
        if (value(owner, list) instanceof List<?> all) {
            all.forEach(entry -> entries.add((Record) entry));
        }
        return entries;
    }

    private static Object value(Record owner, String key) {
        Object value = Layout.of(owner.getClass()).part(key).orElseThrow().valueIn(owner);
        return value == null ? "" : value;
    }

    /**
     * The season that the tables make of another: what stands in them in place of what was there. A table or a column
     * that is not there leaves all as it was; an empty cell stands for the usual.
     *
     * @throws FaultyTables if they are at fault, with all faults
     */
    public static Season read(Season season, List<Grid> grids) {
        return new TableReading(season, grids).season();
    }
}
