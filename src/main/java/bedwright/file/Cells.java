package bedwright.file;

import java.util.ArrayList;
import java.util.List;

/** Takes a line of a table apart. */
final class Cells {
    private Cells() {}

    /**
     * One cell.
     *
     * @param text without quotation marks and blanks around it
     * @param column of its first character, from 1
     */
    record Cell(String text, int column) {}

    /** The cells of a line; a quotation mark within a quoted cell is written twice. */
    static List<Cell> of(String line, char between) {
        List<Cell> cells = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        int start = 0;
        boolean quoted = false;
        for (int i = 0; i <= line.length(); i++) {
            boolean ends = i == line.length() || line.charAt(i) == between && !quoted;
            if (ends) {
                cells.add(new Cell(text.toString().strip(), start + 1));
                text.setLength(0);
                start = i + 1;
            } else if (line.charAt(i) == '"') {
                boolean twice = quoted && i + 1 < line.length() && line.charAt(i + 1) == '"';
                if (twice) {
                    text.append('"');
                    i++;
                } else {
                    quoted = !quoted;
                }
            } else {
                text.append(line.charAt(i));
            }
        }
        return cells;
    }
}
