package bedwright.file;

import java.util.Arrays;

/** Turns the offset of a character in a text into its line and column. */
final class Lines {
    private final char[] text;
    private int[] starts = new int[64];
    private int count = 1;

    // The last answer: who asks again, asks further on, and a whole file may stand on one line.
    private int lastOffset;
    private Place last = Place.START;

    Lines(char[] text) {
        this.text = text;
        for (int i = 0; i < text.length; i++) {
            boolean ends = text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.length || text[i + 1] != '\n'));
            if (ends) {
                if (count == starts.length) {
                    starts = Arrays.copyOf(starts, 2 * count);
                }
                starts[count++] = i + 1;
            }
        }
    }

    /** Place of the character at an offset; an offset beyond the end is the place behind the last character. */
    Place at(long offset) {
        int here = (int) Math.max(0, Math.min(offset, text.length));
        int found = Arrays.binarySearch(starts, 0, count, here);
        int line = found >= 0 ? found : -found - 2;
        boolean further = last.line() == line + 1 && here >= lastOffset;
        int from = further ? lastOffset : starts[line];
        int column = further ? last.column() : 1;
        last = new Place(line + 1, column + Character.codePointCount(text, from, here - from));
        lastOffset = here;
        return last;
    }
}
