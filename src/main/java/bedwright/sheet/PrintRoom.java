package bedwright.sheet;

import bedwright.sheet.LetterWidths.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * How a week's sheet is printed on A4 and Letter: in the widest letters that fit one page, but none below 7 points. Reckoned
 * line by line with the widths of the letters, as the template's print rules lay them out in its classes close0 to close4;
 * what would not fit in the smallest letters is close5 and goes on to a second page.
 */
final class PrintRoom {
    /** One that takes two pages. */
    static final int TWO_PAGES = 5;
    /** Sizes of the letters, points; the first in one column, the others in two. */
    private static final double[] POINTS = {9, 8.5, 8, 7.5, 7};
    /** The smallest letters, in which stems by kind are running text, too. */
    private static final int CLOSEST = POINTS.length - 1;

    /** What is reckoned to fill a page by this much in the smallest letters was seen to fill 0.99 of it. */
    private static final double FITS = 1.04;

    private static final double A_MILLIMETRE = 72 / 25.4;
    /** A4 and Letter within margins of 6 mm: width and height. */
    private static final double[][] PAPERS = {{198, 285}, {203.9, 267.4}};
    /** Between two columns. */
    private static final double GAP = 4 * A_MILLIMETRE;
    /** Height of a line, in heights of its letters. */
    private static final double LINE = 1.08;
    /** A row's rule, points. */
    private static final double RULE = 0.4;
    /** A heading with the room above it, in lines. */
    private static final double HEADING = 1.75;
    /** The week's name, in lines. */
    private static final double NAME = 1.8;
    /** Lines lost where a column ends: a row is not broken within two lines, and heads of a table come again. */
    private static final double ENDS = 2;
    /** Margins of a table's column, points. */
    private static final double MARGIN = 4;

    /** Parts whose rows are printed as running text; the others stay tables. */
    static final Set<String> RUNNING = Set.of("cut", "do", "watch");

    private final double points;
    private final boolean isClosest;
    private final int columns;
    private final double pageWidth;
    private final double width;
    private final double height;

    private PrintRoom(int density, double[] paper) {
        points = POINTS[density];
        isClosest = density == CLOSEST;
        columns = density == 0 ? 1 : 2;
        pageWidth = paper[0] * A_MILLIMETRE;
        height = paper[1] * A_MILLIMETRE;
        width = columns == 1 ? pageWidth : (pageWidth - GAP) / 2;
    }

    static int density(List<String> first, List<WeekPage.Part> parts, List<String> last) {
        for (int d = 0; d < POINTS.length; d++) {
            if (fill(d, first, parts, last) <= (d == CLOSEST ? FITS : 1)) {
                return d;
            }
        }
        return TWO_PAGES;
    }

    /** Share of a page that a sheet takes, of the paper on which it takes more. */
    static double fill(int density, List<String> first, List<WeekPage.Part> parts, List<String> last) {
        double most = 0;
        for (double[] paper : PAPERS) {
            most = Math.max(most, new PrintRoom(density, paper).fill(first, parts, last));
        }
        return most;
    }

    private double fill(List<String> first, List<WeekPage.Part> parts, List<String> last) {
        double across = NAME;
        for (String line : first) {
            across += LetterWidths.lines(line, points, pageWidth, false);
        }
        for (String line : last) {
            across += LetterWidths.lines(line, points, pageWidth, false);
        }
        double taken = columns == 1 ? 0 : ENDS * points * LINE;
        for (WeekPage.Part part : parts) {
            taken += HEADING * points * LINE + tall(part);
        }
        return (across * points * LINE + taken / columns) / height;
    }

    private double tall(WeekPage.Part part) {
        double line = points * LINE;
        double tall = part.note().isEmpty() ? 0 : line * LetterWidths.lines(part.note(), points, width, false);
        Table table = part.table();
        if (isClosest && part.id().equals("kinds")) {
            List<Span> all = new ArrayList<>();
            table.rows().forEach(row -> all.addAll(kind(row)));
            return tall + line * LetterWidths.lines(all, points, width) + RULE;
        }
        if (!RUNNING.contains(part.id())) {
            return tall + tableHeight(table);
        }
        for (List<String> row : table.rows()) {
            tall += line * LetterWidths.lines(running(part.id(), row), points, width) + RULE;
        }
        for (List<String> row : table.totals()) {
            tall += line * LetterWidths.lines(running(part.id(), row), points, width) + RULE;
        }
        return tall;
    }

    private static List<Span> kind(List<String> row) {
        return List.of(
                new Span(row.get(0), true),
                new Span(
                        row.get(1) + " (" + row.get(2) + "), asked " + row.get(3)
                                + (row.get(4).isEmpty() ? "" : ", to offer " + row.get(4)) + ";",
                        false));
    }

    /** A row as running text, with what the template puts between its cells. */
    private static List<Span> running(String id, List<String> row) {
        List<Span> spans = new ArrayList<>();
        for (int c = 0; c < row.size(); c++) {
            String cell = row.get(c);
            if (cell.isEmpty()) {
                continue;
            }
            boolean isBold = c == 0 || (id.equals("cut") && c == 1) || (id.equals("do") && c == 3);
            spans.add(new Span(
                    switch (id) {
                        case "cut" -> c == 2 ? "(" + cell + ")" : c == 3 ? cell + "." : cell;
                        case "do" ->
                            switch (c) {
                                case 1, 2 -> cell + ",";
                                case 3 -> cell + ".";
                                case 4 -> "By " + cell + ".";
                                default -> cell;
                            };
                        default -> cell;
                    },
                    isBold));
        }
        return spans;
    }

    /** A table of which only the first column is broken. */
    private double tableHeight(Table table) {
        double others = 0;
        for (int c = 1; c < table.columns().size(); c++) {
            int column = c;
            double widest = table.rows().stream()
                    .mapToDouble(row -> LetterWidths.of(row.get(column), points, false))
                    .max()
                    .orElse(0);
            double head = 0;
            for (String word : table.columns().get(c).head().split(" ")) {
                head = Math.max(head, LetterWidths.of(word, points, true));
            }
            others += Math.max(widest, head) + MARGIN;
        }
        double room = Math.max(points, width - others - MARGIN);
        double line = points * LINE;
        double tall = 2 * line + RULE;
        for (List<String> row : table.rows()) {
            tall += line * LetterWidths.lines(row.getFirst(), points, room, true) + RULE;
        }
        return tall;
    }
}
