package bedwright.file;

import bedwright.season.Season;
import bedwright.table.Cell;
import bedwright.table.Grid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads edited tables over a season. All that is at fault is told by table, row and column. */
final class TableReading {
    private final Season season;
    private final Map<TableForm, TableSheet> sheets = new LinkedHashMap<>();
    private final List<TableFault> faults = new ArrayList<>();
    /** The row that an entry comes from, by the entry's path. */
    private final Map<String, At> rows = new LinkedHashMap<>();

    private record At(TableSheet sheet, Grid.Row row) {}

    TableReading(Season season, List<Grid> grids) {
        this.season = season;
        for (TableForm form : TableForm.values()) {
            for (Grid grid : grids) {
                if (grid.name().strip().equalsIgnoreCase(form.sheet())) {
                    sheets.put(form, TableSheet.of(form, grid, season.units(), faults));
                }
            }
        }
    }

    Season season() {
        Node.Group root = Unbinder.group(season);
        for (TableForm form : TableForm.values()) {
            if (form.parent() == null) {
                root = NodeEdit.with(root, form.list(), table(form, root));
            }
        }
        Binder binder = new Binder("tables", season.units());
        Season read = binder.bind(root, Season.class);
        binder.faults().forEach(fault -> tell(fault.path(), fault.message()));
        Set<String> doubtful = new LinkedHashSet<>(binder.doubtful());
        for (Flaw flaw : SeasonCheck.of(read)) {
            if (!flaw.restsOnAny(doubtful)) {
                tell(flaw.path(), Words.sentence(flaw.message()));
            }
        }
        if (!faults.isEmpty()) {
            List<String> order = SeasonTables.names();
            faults.sort(Comparator.<TableFault>comparingInt(fault -> order.indexOf(fault.sheet()))
                    .thenComparingInt(TableFault::row)
                    .thenComparingInt(TableFault::column));
            throw new FaultyTables(faults);
        }
        return read;
    }

    /** The list of a table of the season's own, with the lists within its entries. */
    private Node.Many table(TableForm form, Node.Group root) {
        List<Node.Group> before = NodeEdit.groups(root, form.list());
        List<Node.Group> entries = new ArrayList<>();
        TableSheet sheet = sheets.get(form);
        if (sheet == null || !sheet.namesRows()) {
            entries.addAll(before);
        } else {
            entries(form, sheet, sheet.rows(), before, entries, "/" + form.list());
        }
        for (TableForm child : form.children()) {
            TableSheet inner = sheets.get(child);
            if (inner != null) {
                within(child, inner, entries, sheet, "/" + form.list());
            }
        }
        return new Node.Many(Place.START, List.copyOf(entries), false);
    }

    /** Fills the entries of a list from rows. */
    private void entries(
            TableForm form,
            TableSheet sheet,
            List<Grid.Row> lines,
            List<Node.Group> before,
            List<Node.Group> entries,
            String path) {
        if (!form.whole()) {
            entries.addAll(before);
        }
        Map<String, Integer> seen = new LinkedHashMap<>();
        for (Grid.Row row : lines) {
            String name = form.key() == null ? "" : sheet.text(row, form.key());
            int was = form.key() == null ? -1 : indexOf(before, form.key(), name);
            Integer first = name.isEmpty() ? null : seen.putIfAbsent(name, row.number());
            if (form.numbered()) {
                was = numbered(sheet, row, name, first, before.size());
            }
            if (form.whole()) {
                rows.put(Pointer.to(path, entries.size()), new At(sheet, row));
                entries.add(edited(sheet, row, was < 0 ? NodeEdit.empty() : before.get(was)));
                continue;
            }
            if (was < 0) {
                List<String> names =
                        before.stream().map(g -> NodeEdit.text(g, form.key())).toList();
                faults.add(sheet.fault(
                        row,
                        form.key(),
                        name.isEmpty()
                                ? "This cell is empty, but it must name what the row speaks of. Write the name, or empty the row."
                                : "There is no " + Words.quoted(name) + " here. This table changes figures of what the"
                                        + " season has; new ones are added in the season file."
                                        + Words.didYouMean(name, names)));
            } else if (first != null) {
                faults.add(sheet.fault(
                        row,
                        form.key(),
                        Words.quoted(name) + " has two rows, this one and row " + first + ". Keep one of them."));
            } else {
                rows.put(Pointer.to(path, was), new At(sheet, row));
                entries.set(was, edited(sheet, row, before.get(was)));
            }
        }
    }

    /** The index of the entry of a number; −1 for a new one, or if the number is at fault. */
    private int numbered(TableSheet sheet, Grid.Row row, String number, @Nullable Integer first, int entries) {
        if (number.isBlank()) {
            return -1;
        }
        boolean known = number.strip().matches("[0-9]{1,6}")
                && Integer.parseInt(number.strip()) >= 1
                && Integer.parseInt(number.strip()) <= entries;
        if (known && first == null) {
            return Integer.parseInt(number.strip()) - 1;
        }
        faults.add(sheet.fault(
                row,
                TableForm.ENTRY,
                known
                        ? "Entry " + number + " has two rows, this one and row " + first
                                + ". Keep one of them, or empty this cell: the row is then a new one."
                        : "There is no entry " + Words.quoted(number) + " in the season, which has "
                                + Words.count(entries, "entry", "entries")
                                + " here. Leave this cell of a new row empty."));
        return -1;
    }

    /** Fills the lists within entries from the rows of another table. */
    private void within(
            TableForm form, TableSheet sheet, List<Node.Group> owners, @Nullable TableSheet above, String path) {
        if (above != null && !above.namesRows()) {
            // Whose rows these are can't be known, and why is told.
            return;
        }
        TableForm parent = form.parent();
        String key = parent == null || parent.key() == null ? "name" : parent.key();
        Map<Integer, List<Grid.Row>> byOwner = new LinkedHashMap<>();
        List<String> names =
                owners.stream().map(owner -> NodeEdit.text(owner, key)).toList();
        boolean strays = false;
        for (Grid.Row row : sheet.rows()) {
            String name = sheet.text(row, form.parentHead());
            int owner = names.indexOf(name);
            if (owner >= 0) {
                byOwner.computeIfAbsent(owner, o -> new ArrayList<>()).add(row);
            } else {
                strays = true;
                faults.add(sheet.fault(
                        row,
                        form.parentHead(),
                        name.isEmpty()
                                ? "This cell is empty, but it must name what the row belongs to. Write the name, or empty the row."
                                : "There is no " + Words.quoted(name) + " in the table \""
                                        + (parent == null ? "" : parent.sheet()) + "\"."
                                        + Words.didYouMean(name, names)
                                        + " Mend the name, or take the row away."));
            }
        }
        boolean needed = parent != null
                && Layout.of(parent.type()).part(form.list()).orElseThrow().mustBeGiven();
        for (int o = 0; o < owners.size(); o++) {
            List<Grid.Row> lines = byOwner.getOrDefault(o, List.of());
            String inner = Pointer.to(Pointer.to(path, o), form.list());
            List<Node.Group> entries = new ArrayList<>();
            entries(form, sheet, lines, NodeEdit.groups(owners.get(o), form.list()), entries, inner);
            Node list = new Node.Many(Place.START, List.copyOf(entries), false);
            if (needed && entries.isEmpty()) {
                At at = rows.get(Pointer.to(path, o));
                String message = Words.quoted(names.get(o)) + " has no row in the table \"" + form.sheet()
                        + "\". Add one there, or take this one away.";
                // A row of a mistyped name may be the one that is missing.
                if (!strays) {
                    faults.add(
                            at == null || above == null
                                    ? new TableFault(form.sheet(), 1, 0, "", message)
                                    : above.fault(at.row(), key, message));
                }
                list = new Node.Unreadable(Place.START);
            }
            owners.set(o, NodeEdit.with(owners.get(o), form.list(), list));
        }
    }

    /** An entry with what stands in a row. */
    private Node.Group edited(TableSheet sheet, Grid.Row row, Node.Group before) {
        Node.Group entry = before;
        Set<List<String>> absent = sheet.absent(row);
        for (List<String> group : absent) {
            entry = NodeEdit.with(entry, group, null);
        }
        for (TableColumn column : sheet.columns()) {
            if (absent.stream().anyMatch(column::isWithin)) {
                continue;
            }
            Cell cell = sheet.cell(row, column);
            if (column.marks()) {
                entry = marked(sheet, row, column, entry);
            } else if (!cell.equals(Cell.EMPTY)) {
                entry = NodeEdit.with(entry, column.keys(), read(sheet, row, column, cell));
            } else if (column.mustBeFilled()) {
                faults.add(sheet.fault(
                        row,
                        column.name(),
                        "This cell is empty, but it must be filled: " + column.meaning() + ". Write "
                                + expected(column.shape()) + "."));
                entry = NodeEdit.with(entry, column.keys(), new Node.Unreadable(Place.START));
            } else {
                entry = NodeEdit.with(entry, column.keys(), null);
            }
        }
        return entry;
    }

    /** A group that is there although nothing need stand in it. */
    private Node.Group marked(TableSheet sheet, Grid.Row row, TableColumn column, Node.Group entry) {
        Cell cell = sheet.cell(row, column);
        if (!cell.equals(Cell.EMPTY)
                && !(read(sheet, row, column, cell) instanceof Node.Truth truth && truth.value())) {
            if (TableCells.read(cell, column.shape()) instanceof TableCells.Read.Value) {
                faults.add(sheet.fault(
                        row,
                        column.name(),
                        "Here stands no, but columns of it are filled. Empty those, or write yes."));
            }
        }
        return NodeEdit.get(entry, column.keys()).isPresent()
                ? entry
                : NodeEdit.with(entry, column.keys(), NodeEdit.empty());
    }

    private Node read(TableSheet sheet, Grid.Row row, TableColumn column, Cell cell) {
        return switch (TableCells.read(cell, column.shape())) {
            case TableCells.Read.Value value -> value.node();
            case TableCells.Read.Wrong wrong -> {
                faults.add(sheet.fault(row, column.name(), wrong.message()));
                yield new Node.Unreadable(Place.START);
            }
        };
    }

    private static String expected(Shape shape) {
        return switch (shape) {
            case Shape.Text text -> "a text";
            case Shape.Date date -> "a date as in 2027-05-03";
            case Shape.DayOfYear day -> "a day of the year as in 05-03 (month, then day)";
            default -> Scalars.expected(shape);
        };
    }

    /** Tells of a value by the path at which it stands in the season. */
    private void tell(String path, String message) {
        List<String> steps = Pointer.steps(path);
        for (int length = steps.size(); length > 0; length--) {
            String entry = "";
            for (String step : steps.subList(0, length)) {
                entry = Pointer.to(entry, step);
            }
            At at = rows.get(entry);
            if (at != null) {
                List<String> rest = steps.subList(length, steps.size());
                Optional<TableColumn> column = at.sheet().columns().stream()
                        .filter(c -> !rest.isEmpty() && c.isWithin(rest))
                        .findFirst();
                String name =
                        column.map(TableColumn::name).orElse(at.sheet().form().key());
                faults.add(at.sheet().fault(at.row(), name, renamed(message, rest, name)));
                return;
            }
        }
        faults.add(new TableFault("", 0, 0, "", path.substring(Math.min(1, path.length())) + ": " + message));
    }

    /** Says a key as its column is headed. */
    private static String renamed(String message, List<String> keys, @Nullable String head) {
        return keys.isEmpty() || head == null
                ? message
                : message.replace(Words.quoted(keys.getLast()), Words.quoted(head));
    }

    private static int indexOf(List<Node.Group> groups, String key, String name) {
        for (int i = 0; i < groups.size(); i++) {
            if (NodeEdit.text(groups.get(i), key).equals(name)) {
                return i;
            }
        }
        return -1;
    }
}
