package bedwright.sheet;

import java.util.ArrayList;
import java.util.List;

/** A week's sheet as plain text: columns under one another, the last one, which is long, on lines of its own. */
final class WeekText {
    private static final int LONG = 24;
    private static final String INDENT = "    ";

    private WeekText() {}

    static String of(WeekPage page, int width) {
        StringBuilder text = new StringBuilder();
        text.append(page.season()).append('\n').append(page.heading()).append('\n');
        page.first().forEach(line -> wrap(text, line, "", width));
        for (WeekPage.Part part : page.parts()) {
            text.append('\n').append(part.heading()).append('\n');
            if (!part.note().isEmpty()) {
                wrap(text, part.note(), "  ", width);
            }
            table(text, part.table(), width);
        }
        text.append('\n');
        page.last().forEach(line -> wrap(text, line, "", width));
        return text.toString();
    }

    /** A table, its last column below where it is long. */
    static void table(StringBuilder text, Table table, int width) {
        List<List<String>> rows = new ArrayList<>(table.rows());
        rows.addAll(table.totals());
        int columns = table.columns().size();
        int[] widths = new int[columns];
        for (int c = 0; c < columns; c++) {
            int column = c;
            widths[c] = Math.max(
                    table.columns().get(c).head().length(),
                    rows.stream()
                            .mapToInt(row -> row.get(column).length())
                            .max()
                            .orElse(0));
        }
        boolean below = widths[columns - 1] > LONG;
        int shown = below ? columns - 1 : columns;
        List<String> heads = table.columns().stream().map(Table.Column::head).toList();
        line(text, heads, table.columns(), widths, shown);
        for (List<String> row : rows) {
            line(text, row, table.columns(), widths, shown);
            if (below && !row.get(columns - 1).isEmpty()) {
                wrap(text, row.get(columns - 1), INDENT, width);
            }
        }
    }

    private static void line(
            StringBuilder text, List<String> row, List<Table.Column> columns, int[] widths, int shown) {
        StringBuilder line = new StringBuilder();
        for (int c = 0; c < shown; c++) {
            String pad = " ".repeat(Math.max(0, widths[c] - row.get(c).length()));
            line.append(columns.get(c).number() ? pad + row.get(c) : row.get(c) + pad);
            line.append("  ");
        }
        text.append(line.toString().stripTrailing()).append('\n');
    }

    /** A line broken between words. */
    static void wrap(StringBuilder text, String words, String indent, int width) {
        StringBuilder line = new StringBuilder(indent);
        for (String word : words.split(" ")) {
            if (line.length() > indent.length() && line.length() + word.length() > width) {
                text.append(line.toString().stripTrailing()).append('\n');
                line = new StringBuilder(indent);
            }
            line.append(word).append(' ');
        }
        text.append(line.toString().stripTrailing()).append('\n');
    }
}
