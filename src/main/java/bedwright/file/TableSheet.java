package bedwright.file;

import bedwright.season.Units;
import bedwright.table.Cell;
import bedwright.table.Grid;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * An edited table with its columns found by their heads.
 *
 * @param form which it is
 * @param grid its cells
 * @param columns the columns that it has
 * @param places where each column stands, from 0, by its name; the parent's, too
 */
record TableSheet(TableForm form, Grid grid, List<TableColumn> columns, Map<String, Integer> places) {
    private static final Pattern HEAD = Pattern.compile("\\s*(.*?)\\s*(?:\\(([^()]*)\\))?\\s*");

    static TableSheet of(TableForm form, Grid grid, Units units, List<TableFault> faults) {
        List<TableColumn> all = TableColumn.of(form.type(), units);
        Map<String, TableColumn> known = new LinkedHashMap<>();
        all.forEach(column -> known.put(column.name(), column));
        Map<String, Integer> places = new LinkedHashMap<>();
        List<TableColumn> columns = new ArrayList<>();
        for (int c = 0; c < grid.heads().size(); c++) {
            Cell cell = grid.heads().get(c);
            String head = TableCells.plain(cell).strip();
            Matcher parts = HEAD.matcher(head);
            String name = parts.matches() ? parts.group(1).toLowerCase(Locale.ROOT) : head;
            String unit = parts.matches() ? parts.group(2) : null;
            TableColumn column = known.get(name);
            if (head.isEmpty()) {
                unheaded(form, grid, c, faults);
            } else if (column == null
                    && !name.equals(form.parentHead())
                    && !(form.numbered() && name.equals(TableForm.ENTRY))) {
                List<String> names = new ArrayList<>(known.keySet());
                faults.add(new TableFault(
                        form.sheet(),
                        1,
                        c,
                        head,
                        "There is no column " + Words.quoted(head) + " in this table." + Words.didYouMean(name, names)
                                + " Mend its head, or take the column away."));
            } else if (places.putIfAbsent(name, c) != null) {
                faults.add(new TableFault(
                        form.sheet(),
                        1,
                        c,
                        head,
                        "This head stands here a second time; it stands over column "
                                + Grid.letters(places.getOrDefault(name, 0)) + " already. Keep one of the two."));
            } else if (column != null) {
                columns.add(column);
                checkUnit(form, column, unit, c, head, faults);
            }
        }
        needed(form, places, faults);
        return new TableSheet(form, grid, List.copyOf(columns), places);
    }

    /** A column without a head must be empty. */
    private static void unheaded(TableForm form, Grid grid, int c, List<TableFault> faults) {
        grid.rows().stream()
                .filter(row -> !row.cell(c).equals(Cell.EMPTY))
                .findFirst()
                .ifPresent(row -> faults.add(new TableFault(
                        form.sheet(),
                        row.number(),
                        c,
                        "",
                        "Nothing heads this column, but here stands "
                                + row.cell(c).said() + ". Write its head into row 1, or empty it.")));
    }

    private static void checkUnit(
            TableForm form, TableColumn column, @Nullable String unit, int c, String head, List<TableFault> faults) {
        if (unit != null && !unit.isBlank() && !unit.strip().equals(column.unit())) {
            faults.add(new TableFault(
                    form.sheet(),
                    1,
                    c,
                    head,
                    "This column is headed in " + unit.strip() + ", but its figures are read in "
                            + (column.unit().isEmpty() ? "no unit" : column.unit()) + ". Write \"" + column.head()
                            + "\", and turn the figures into that."));
        }
    }

    private static void needed(TableForm form, Map<String, Integer> places, List<TableFault> faults) {
        List<String> needed = new ArrayList<>();
        if (!form.parentHead().isEmpty()) {
            needed.add(form.parentHead());
        }
        if (form.key() != null) {
            needed.add(form.key());
        }
        for (String name : needed) {
            if (!places.containsKey(name)) {
                faults.add(new TableFault(
                        form.sheet(),
                        1,
                        0,
                        "",
                        "The column " + Words.quoted(name) + " is missing, by which the rows are known. Put it back."));
            }
        }
    }

    /** Rows in which something stands; none if it lacks a column by which they are known. */
    List<Grid.Row> rows() {
        return namesRows() ? grid.rows().stream().filter(row -> !row.isEmpty()).toList() : List.of();
    }

    /** Whether it has the columns by which its rows are known. */
    boolean namesRows() {
        return (form.parentHead().isEmpty() || places.containsKey(form.parentHead()))
                && (form.key() == null || places.containsKey(form.key()));
    }

    /** What stands in a column of a name. */
    String text(Grid.Row row, @Nullable String name) {
        Integer place = name == null ? null : places.get(name);
        return place == null ? "" : TableCells.plain(row.cell(place));
    }

    Cell cell(Grid.Row row, TableColumn column) {
        Integer place = places.get(column.name());
        return place == null ? Cell.EMPTY : row.cell(place);
    }

    /** Groups that a row leaves out: nothing stands in any of their columns. */
    Set<List<String>> absent(Grid.Row row) {
        Set<List<String>> absent = new LinkedHashSet<>();
        for (TableColumn column : columns) {
            for (List<String> group : column.mayBeAbsent()) {
                boolean filled = columns.stream().filter(c -> c.isWithin(group)).anyMatch(c -> isFilled(row, c));
                if (!filled) {
                    absent.add(group);
                }
            }
        }
        return absent;
    }

    private boolean isFilled(Grid.Row row, TableColumn column) {
        Cell cell = cell(row, column);
        boolean no = column.marks()
                && TableCells.read(cell.equals(Cell.EMPTY) ? new Cell.Truth(false) : cell, column.shape())
                        instanceof TableCells.Read.Value value
                && value.node() instanceof Node.Truth truth
                && !truth.value();
        return !cell.equals(Cell.EMPTY) && !no;
    }

    TableFault fault(Grid.Row row, @Nullable String name, String message) {
        int place = name == null ? 0 : places.getOrDefault(name, 0);
        String head =
                place < grid.heads().size() ? TableCells.plain(grid.heads().get(place)) : "";
        return new TableFault(form.sheet(), row.number(), place, head, message);
    }
}
