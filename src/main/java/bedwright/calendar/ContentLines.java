package bedwright.calendar;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** How lines of an iCalendar file are written and read: RFC 5545, sections 3.1 and 3.3.11. */
final class ContentLines {
    /** A line has at most so many octets without its end. */
    private static final int OCTETS = 75;

    private static final String END = "\r\n";

    private ContentLines() {}

    /** A text as a value; what a text can't hold becomes a space. */
    static String text(String text) {
        StringBuilder escaped = new StringBuilder();
        text.replace(END, "\n").codePoints().forEach(c -> {
            switch (c) {
                case '\\', ';', ',' -> escaped.append('\\').appendCodePoint(c);
                case '\n' -> escaped.append("\\n");
                default -> escaped.appendCodePoint(isControl(c) ? ' ' : c);
            }
        });
        return escaped.toString();
    }

    /** Texts as one value. */
    static String texts(List<String> texts) {
        return texts.stream().map(ContentLines::text).collect(Collectors.joining(","));
    }

    /** The texts of one value. */
    static List<String> texts(String value) {
        List<String> texts = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c == '\\' && i + 1 < value.length()) {
                i++;
                text.append(value.charAt(i) == 'n' || value.charAt(i) == 'N' ? '\n' : value.charAt(i));
            } else if (c == ',') {
                texts.add(text.toString());
                text.setLength(0);
            } else {
                text.append(c);
            }
        }
        texts.add(text.toString());
        return texts;
    }

    /** The tabulator is the one control that a text may hold; halves of letters can't be written at all. */
    private static boolean isControl(int c) {
        return c < ' ' && c != '\t' || c == 0x7F || c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
    }

    /** Lines with their ends, those that are too long folded between letters. */
    static String folded(List<String> lines) {
        StringBuilder out = new StringBuilder();
        for (String line : lines) {
            int taken = 0;
            for (int i = 0; i < line.length(); ) {
                String letter = Character.toString(line.codePointAt(i));
                int octets = letter.getBytes(StandardCharsets.UTF_8).length;
                if (taken + octets > OCTETS) {
                    out.append(END).append(' ');
                    taken = 1;
                }
                out.append(letter);
                taken += octets;
                i += letter.length();
            }
            out.append(END);
        }
        return out.toString();
    }

    /** The lines of a file as they were before they were folded. */
    static List<String> unfolded(String file) {
        return file.replaceAll("\r?\n[ \t]", "").lines().toList();
    }
}
