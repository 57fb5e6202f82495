package bedwright.table;

import java.util.ArrayList;
import java.util.List;

/**
 * A table: a row of heads and rows of cells under it.
 *
 * @param name its name: a sheet's in a workbook, a file's in a folder
 * @param heads what heads its columns
 * @param rows its rows, in order; a row may be shorter or longer than the heads
 */
public record Grid(String name, List<Cell> heads, List<Row> rows) {

    public Grid {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
    }

    /** A table whose rows follow on its heads. */
    public static Grid of(String name, List<String> heads, List<List<Cell>> rows) {
        List<Row> numbered = new ArrayList<>();
        for (List<Cell> cells : rows) {
            numbered.add(new Row(numbered.size() + 2, cells));
        }
        return new Grid(name, heads.stream().map(Cell::of).toList(), numbered);
    }

    /**
     * A row.
     *
     * @param number its number in the spreadsheet: heads stand in row 1
     * @param cells its cells from the first column on
     */
    public record Row(int number, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** The cell in a column, from 0; nothing beyond the last. */
        public Cell cell(int column) {
            return column < cells.size() ? cells.get(column) : Cell.EMPTY;
        }

        /** Whether nothing stands in it. */
        public boolean isEmpty() {
            return cells.stream().allMatch(Cell.EMPTY::equals);
        }
    }

    /** The letters by which a spreadsheet calls a column: A for 0, AA for 26. */
    public static String letters(int column) {
        String last = String.valueOf((char) ('A' + column % 26));
        return column < 26 ? last : letters(column / 26 - 1) + last;
    }
}
