package bedwright.sheet;

import java.util.ArrayList;
import java.util.List;

/** A table as lines of text: columns as wide as what is in them, numbers to the right. */
final class TextTable {
    private static final String BETWEEN = "   ";

    private TextTable() {}

    /** Heads, rows and totals; without the caption. */
    static List<String> lines(Table table) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(table.columns().stream().map(Table.Column::head).toList());
        rows.addAll(table.rows());
        rows.addAll(table.totals());
        int[] wide = new int[table.columns().size()];
        for (List<String> row : rows) {
            for (int c = 0; c < wide.length; c++) {
                wide[c] = Math.max(wide[c], letters(row.get(c)));
            }
        }
        return rows.stream().map(row -> line(table.columns(), row, wide)).toList();
    }

    private static String line(List<Table.Column> columns, List<String> row, int[] wide) {
        StringBuilder line = new StringBuilder();
        for (int c = 0; c < wide.length; c++) {
            String text = row.get(c);
            String room = " ".repeat(wide[c] - letters(text));
            line.append(c > 0 ? BETWEEN : "");
            line.append(columns.get(c).number() ? room + text : text + room);
        }
        return line.toString().stripTrailing();
    }

    private static int letters(String text) {
        return text.codePointCount(0, text.length());
    }
}
