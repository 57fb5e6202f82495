package bedwright.sheet;

import java.util.List;

/**
 * How much room text takes in print, in the letter widths of Helvetica as its published font metrics have them, which Arial
 * and Liberation Sans share. Letters that are not listed count as broad: on the safe side.
 */
final class LetterWidths {
    private static final double EM = 1000;
    private static final int FIRST = ' ';
    private static final int[] PLAIN = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556,
        556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667,
        556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556,
        556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722,
        500, 500, 500, 334, 260, 334, 584
    };

    private static final int[] BOLD = {
        278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556,
        556, 556, 556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722,
        611, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, 333, 556,
        611, 556, 611, 556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778,
        556, 556, 500, 389, 280, 389, 584
    };

    private LetterWidths() {}

    /** Text in one weight. */
    record Span(String text, boolean isBold) {}

    /** Width of a text that is not broken, in points where its letters have so many. */
    static double of(String text, double points, boolean isBold) {
        int sum = 0;
        for (int i = 0; i < text.length(); i++) {
            sum += of(text.charAt(i), isBold ? BOLD : PLAIN);
        }
        return sum * points / EM;
    }

    private static int of(char letter, int[] widths) {
        int at = letter - FIRST;
        if (at >= 0 && at < widths.length) {
            return widths[at];
        }
        return switch (letter) {
            case '\u00a0', '·', '’' -> 278;
            case '–' -> 556;
            default -> letter < 0x250 ? 778 : 1000;
        };
    }

    /** Lines that a text takes, broken between words. */
    static int lines(String text, double points, double width, boolean isBold) {
        return lines(List.of(new Span(text, isBold)), points, width);
    }

    /** Lines that texts after one another take, broken between words; a space stands between two texts. */
    static int lines(List<Span> spans, double points, double width) {
        int lines = 1;
        double taken = 0;
        double space = of(" ", points, false);
        for (Span span : spans) {
            for (String word : span.text().split(" ")) {
                double needs = of(word, points, span.isBold());
                if (taken > 0 && taken + space + needs > width) {
                    lines += Math.max(1, (int) Math.ceil(needs / width));
                    taken = needs % width;
                } else {
                    taken += (taken > 0 ? space : 0) + needs;
                }
            }
        }
        return lines;
    }
}
