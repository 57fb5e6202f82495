package bedwright.sheet;

import java.util.List;

/**
 * A table of texts. The first column heads its rows.
 *
 * @param id unique on the page
 * @param caption what it shows
 * @param columns its columns
 * @param rows as many texts each as there are columns
 * @param totals rows that sum up, likewise
 */
public record Table(
        String id, String caption, List<Column> columns, List<List<String>> rows, List<List<String>> totals) {

    public Table {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        totals = totals.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "A row of " + id + " has " + row.size() + " texts for " + columns.size() + " columns: " + row);
            }
        }
    }

    /** A table without rows that sum up. */
    public Table(String id, String caption, List<Column> columns, List<List<String>> rows) {
        this(id, caption, columns, rows, List.of());
    }

    /**
     * A column.
     *
     * @param head what heads it
     * @param number whether it holds numbers, which stand to the right
     */
    public record Column(String head, boolean number) {
        static Column text(String head) {
            return new Column(head, false);
        }

        static Column number(String head) {
            return new Column(head, true);
        }
    }
}
