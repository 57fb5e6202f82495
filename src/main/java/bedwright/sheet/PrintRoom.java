package bedwright.sheet;

import java.util.List;

/**
 * How a week's sheet is printed on A4 and Letter: in the widest letters that fit one page, but none below 7 points; where
 * even those do not fit, what to cut and what to do have a page each. Reckoned by counting letters; the sizes are those of
 * the template's classes close0 to close4.
 */
final class PrintRoom {
    /** The first of those that take two pages. */
    static final int TWO_PAGES = 3;
    /** Letters of a table on a line of 198 mm. */
    private static final int[] LETTERS = {122, 138, 147, 128, 143};
    /** Lines of a table on a page of 267 mm. */
    private static final double[] LINES = {66, 76, 86, 69, 83};
    /** Lines that a heading with its heads of columns takes. */
    private static final double HEADING = 3.2;
    /** Lines for the week's name and the last words. */
    private static final double ENDS = 7;
    /** Letters that a column's margins take. */
    private static final int MARGIN = 2;
    /** Share of the width that one of two tables side by side has. */
    private static final double BESIDE = 0.5;

    /** Letters of a column that is broken between words rather than let the last one have no room. */
    private static final int BROKEN = 22;
    /** Number of that column in what is to be done. */
    private static final int LEFT_A_WEEK = 3;

    private PrintRoom() {}

    static int density(List<String> first, List<WeekPage.Part> parts) {
        for (int d = 0; d < TWO_PAGES; d++) {
            if (lines(first, parts, LETTERS[d]) <= LINES[d]) {
                return d;
            }
        }
        List<WeekPage.Part> work = parts.stream()
                .filter(part -> part.id().equals("do") || part.id().equals("watch"))
                .toList();
        List<WeekPage.Part> stems =
                parts.stream().filter(part -> !work.contains(part)).toList();
        int d = TWO_PAGES;
        boolean fits = lines(first, stems, LETTERS[d]) <= LINES[d] && lines(List.of(), work, LETTERS[d]) <= LINES[d];
        return fits ? d : d + 1;
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
            int needs = Math.max(widest, Math.min(head, 9));
            taken += (table.id().startsWith("do-") && c == LEFT_A_WEEK ? Math.min(needs, BROKEN) : needs) + MARGIN;
        }
        double room = Math.max(20, letters - taken);
        double lines = table.totals().size();
        for (List<String> row : table.rows()) {
            lines += Math.max(1, Math.ceil(row.getLast().length() / room));
        }
        return lines;
    }
}
