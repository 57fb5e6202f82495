package bedwright.sheet;

import java.util.List;

/**
 * How closely a week's sheet has to be printed so that it fits a page of A4 and of Letter: the widest letters that do.
 * Reckoned by counting letters; the sizes are those of the template's classes close0 to close4.
 */
final class PrintRoom {
    /** Letters of a table on a line of 198 mm. */
    private static final int[] LETTERS = {122, 138, 154, 172, 188};
    /** Lines of a table on a page of 267 mm. */
    private static final double[] LINES = {66, 76, 90, 102, 112};
    /** Lines that a heading with its heads of columns takes. */
    private static final double HEADING = 3.2;
    /** Lines for the week's name and the last words. */
    private static final double ENDS = 7;
    /** Letters that a column's margins take. */
    private static final int MARGIN = 2;
    /** Share of the width that one of two tables side by side has. */
    private static final double BESIDE = 0.5;

    private PrintRoom() {}

    static int density(List<String> first, List<WeekPage.Part> parts) {
        for (int d = 0; d < LETTERS.length - 1; d++) {
            if (lines(first, parts, LETTERS[d]) <= LINES[d]) {
                return d;
            }
        }
        return LETTERS.length - 1;
    }

    private static double lines(List<String> first, List<WeekPage.Part> parts, int letters) {
        double lines = ENDS;
        for (String line : first) {
            lines += 1.2 * Math.ceil((double) line.length() / letters);
        }
        double beside = 0;
        for (WeekPage.Part part : parts) {
            boolean half = part.id().equals("asked") || part.id().equals("kinds");
            double tall = HEADING
                    + Math.ceil((double) part.note().length() / letters)
                    + tall(part.table(), half ? letters * BESIDE : letters);
            if (half) {
                beside = Math.max(beside, tall);
            } else {
                lines += tall;
            }
        }
        return lines + beside;
    }

    private static double tall(Table table, double letters) {
        int columns = table.columns().size();
        double taken = 0;
        for (int c = 0; c < columns - 1; c++) {
            int column = c;
            int widest = table.rows().stream()
                    .mapToInt(row -> row.get(column).length())
                    .max()
                    .orElse(0);
            int head = table.columns().get(c).head().length();
            taken += Math.max(widest, Math.min(head, 9)) + MARGIN;
        }
        double room = Math.max(20, letters - taken);
        double lines = table.totals().size();
        for (List<String> row : table.rows()) {
            lines += Math.max(1, Math.ceil(row.getLast().length() / room));
        }
        return lines;
    }
}
