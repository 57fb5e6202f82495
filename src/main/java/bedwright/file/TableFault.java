package bedwright.file;

import bedwright.table.Grid;

/**
 * One fault in a table.
 *
 * @param sheet name of the table; empty for what stands in none of them
 * @param row its row, from 1, which holds the heads
 * @param column its column, from 0
 * @param head what heads the column; empty if nothing does
 * @param message what is wrong, what was expected and how to mend it
 */
public record TableFault(String sheet, int row, int column, String head, String message) {

    /** As in {@code sheet "Beds", row 4, column C (length): message}. */
    @Override
    public String toString() {
        return sheet.isEmpty()
                ? "in the season behind the tables: " + message
                : "sheet \"" + sheet + "\", row " + row + ", column " + Grid.letters(column)
                        + (head.isEmpty() ? "" : " (" + head + ")") + ": " + message;
    }
}
