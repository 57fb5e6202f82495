package bedwright.file;

import org.jspecify.annotations.Nullable;

/** Goes through the lines of a text, whatever system they were written on. */
final class LineReader {
    private final char[] text;
    private int at;
    private int number;

    LineReader(char[] text) {
        this.text = text;
    }

    /** The next line without its end, or null behind the last. */
    @Nullable
    String next() {
        if (at >= text.length) {
            return null;
        }
        int start = at;
        while (at < text.length && text[at] != '\n' && text[at] != '\r') {
            at++;
        }
        String line = new String(text, start, at - start);
        if (at + 1 < text.length && text[at] == '\r' && text[at + 1] == '\n') {
            at++;
        }
        at++;
        number++;
        return line;
    }

    /** Number of the last line, from 1. */
    int number() {
        return number;
    }
}
