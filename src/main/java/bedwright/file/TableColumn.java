package bedwright.file;

import bedwright.season.Units;
import bedwright.table.Cell;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A column of an edited table: a single value of an entry, or of a group within it.
 *
 * @param keys the keys that lead to it from the entry
 * @param unit its unit, or empty
 * @param shape what may stand in it
 * @param meaning what it is
 * @param parts the parts of the records that lead to it
 * @param marks whether it says no more than that there is a group, which may have nothing in it
 */
record TableColumn(
        List<String> keys, String unit, Shape shape, String meaning, List<Layout.Part> parts, boolean marks) {

    TableColumn {
        keys = List.copyOf(keys);
        parts = List.copyOf(parts);
    }

    /** The columns of a record in a file of these units; what holds lists or names has none. */
    static List<TableColumn> of(Class<? extends Record> type, Units units) {
        List<TableColumn> columns = new ArrayList<>();
        add(columns, Layout.of(type, units), units, List.of(), List.of());
        return List.copyOf(columns);
    }

    private static void add(
            List<TableColumn> columns, Layout layout, Units units, List<String> keys, List<Layout.Part> parts) {
        for (Layout.Part part : layout.parts()) {
            List<String> here = plus(keys, part.key());
            List<Layout.Part> way = plus(parts, part);
            switch (part.shape()) {
                case Shape.Group group -> {
                    Layout inner = Layout.of(group, units);
                    if (part.nullable() && inner.parts().stream().allMatch(Layout.Part::nullable)) {
                        columns.add(new TableColumn(
                                here, "", new Shape.Truth(), part.fact().value(), way, true));
                    }
                    add(columns, inner, units, here, way);
                }
                case Shape.Many many -> {}
                case Shape.Named named -> {}
                default ->
                    columns.add(new TableColumn(
                            here, part.unit(), part.shape(), part.fact().value(), way, false));
            }
        }
    }

    private static <T> List<T> plus(List<T> all, T one) {
        List<T> more = new ArrayList<>(all);
        more.add(one);
        return more;
    }

    /** What heads it, without the unit: {@code tunnel warmth}. */
    String name() {
        List<String> words = new ArrayList<>();
        for (String key : keys) {
            words.add(key.replaceAll("(?<=[a-z])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])", " ")
                    .toLowerCase(Locale.ROOT));
        }
        return String.join(" ", words);
    }

    /** What heads it: {@code tunnel warmth (°C)}. */
    String head() {
        String name = name();
        return unit.isEmpty() || name.endsWith(unit) ? name : name + " (" + unit + ")";
    }

    /** What stands in an entry. */
    Cell cell(Record entry) {
        Object value = entry;
        for (Layout.Part part : parts) {
            value = value instanceof Record record ? part.valueIn(record) : null;
        }
        if (value == null) {
            return Cell.EMPTY;
        }
        return marks ? new Cell.Truth(true) : TableCells.written(value, shape);
    }

    /** Whether it must be filled where the groups around it are there. */
    boolean mustBeFilled() {
        return !marks && parts.getLast().mustBeGiven();
    }

    /** The keys of the groups around it that need not be there, from the outermost. */
    List<List<String>> mayBeAbsent() {
        List<List<String>> groups = new ArrayList<>();
        for (int i = 0; i < keys.size() - (marks ? 0 : 1); i++) {
            if (parts.get(i).nullable() || parts.get(i).hasDefault()) {
                groups.add(keys.subList(0, i + 1));
            }
        }
        return groups;
    }

    /** Whether it lies in a group. */
    boolean isWithin(@Nullable List<String> group) {
        return group != null
                && keys.size() >= group.size()
                && keys.subList(0, group.size()).equals(group);
    }
}
