package bedwright.file;

import bedwright.season.Season;
import bedwright.table.Cell;
import bedwright.table.Grid;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Changes the tables of a season as a grower would in a spreadsheet. */
final class TableEdit {
    private final Map<String, List<List<Cell>>> tables = new LinkedHashMap<>();

    private TableEdit(Season season) {
        for (Grid grid : SeasonTables.of(season)) {
            List<List<Cell>> rows = new ArrayList<>();
            rows.add(new ArrayList<>(grid.heads()));
            grid.rows().forEach(row -> rows.add(new ArrayList<>(row.cells())));
            tables.put(grid.name(), rows);
        }
    }

    static List<Grid> edited(Season season, Consumer<TableEdit> change) {
        TableEdit edit = new TableEdit(season);
        change.accept(edit);
        List<Grid> grids = new ArrayList<>();
        edit.tables.forEach((name, rows) -> {
            List<Grid.Row> numbered = new ArrayList<>();
            for (int r = 1; r < rows.size(); r++) {
                numbered.add(new Grid.Row(r + 1, rows.get(r)));
            }
            grids.add(new Grid(name, rows.getFirst(), numbered));
        });
        return grids;
    }

    private List<List<Cell>> rows(String sheet) {
        return tables.getOrDefault(sheet, List.of());
    }

    int column(String sheet, String head) {
        int column = rows(sheet).getFirst().indexOf(Cell.of(head));
        if (column < 0) {
            throw new AssertionError("no column " + head + " in " + rows(sheet).getFirst());
        }
        return column;
    }

    int lastColumn(String sheet, String head) {
        return rows(sheet).getFirst().lastIndexOf(Cell.of(head));
    }

    /** The row, as a spreadsheet counts, in whose first column a name stands first. */
    int row(String sheet, String name) {
        for (int r = 1; r < rows(sheet).size(); r++) {
            if (rows(sheet).get(r).getFirst().equals(Cell.of(name))) {
                return r + 1;
            }
        }
        throw new AssertionError("no row " + name);
    }

    void set(String sheet, String name, String head, Cell cell) {
        set(sheet, row(sheet, name), head, cell);
    }

    void set(String sheet, int row, String head, Cell cell) {
        rows(sheet).get(row - 1).set(column(sheet, head), cell);
    }

    void head(String sheet, String head, String other) {
        rows(sheet).getFirst().set(column(sheet, head), Cell.of(other));
    }

    void addRow(String sheet, Object... headsAndValues) {
        List<Cell> row = new ArrayList<>();
        rows(sheet).getFirst().forEach(head -> row.add(Cell.EMPTY));
        for (int i = 0; i < headsAndValues.length; i += 2) {
            Object value = headsAndValues[i + 1];
            row.set(
                    column(sheet, (String) headsAndValues[i]),
                    value instanceof Double number ? Cell.of(number, 3) : Cell.of(String.valueOf(value)));
        }
        rows(sheet).add(row);
    }

    void repeatRow(String sheet, String name) {
        rows(sheet).add(new ArrayList<>(rows(sheet).get(row(sheet, name) - 1)));
    }

    /** Another column, without a head, that holds one cell. */
    void addColumn(String sheet, int row, Cell cell) {
        for (int r = 1; r <= rows(sheet).size(); r++) {
            rows(sheet).get(r - 1).add(r == row ? cell : Cell.EMPTY);
        }
    }

    void removeRows(String sheet, String head, String name) {
        int column = column(sheet, head);
        rows(sheet).removeIf(row -> row.get(column).equals(Cell.of(name)));
    }

    void removeColumn(String sheet, String head) {
        int column = column(sheet, head);
        rows(sheet).forEach(row -> row.remove(column));
    }

    int size(String sheet) {
        return rows(sheet).size();
    }
}
