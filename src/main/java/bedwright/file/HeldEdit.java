package bedwright.file;

import bedwright.season.Held;
import bedwright.season.Season;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Writes what is held in place into a season file and leaves all else in it as the grower wrote it. */
public final class HeldEdit {
    private static final String KEY = "held";

    private final String text;

    private HeldEdit(String text) {
        this.text = text;
    }

    /**
     * A season file's bytes with other lots held in place, and what they then say.
     *
     * @param bytes to be written
     * @param season what they hold
     */
    public record Edited(byte[] bytes, Season season) {
        /** Writes them, keeping the former file beside it as NAME~. */
        public void write(Path file) {
            Writing.save(file, bytes);
        }
    }

    /**
     * The season file with these lots held in place instead of those that it holds.
     *
     * @throws FileTrouble if the file can't be read
     * @throws FaultyFile if it is at fault, with these lots or without
     */
    public static Edited of(Path file, List<Held> held) {
        return of(file.toString(), Reading.bytes(file), held);
    }

    /** Likewise, of bytes. */
    static Edited of(String name, byte[] bytes, List<Held> held) {
        Season wanted = SeasonFile.parse(name, bytes).withHeld(held);
        String before = new String(Decoded.of(bytes).text());
        byte[] edited = new HeldEdit(before).with(held).getBytes(StandardCharsets.UTF_8);
        Season found = SeasonFile.parse(name, edited);
        if (found.equals(wanted)) {
            return new Edited(edited, found);
        }
        throw new IllegalStateException(name + ": what is held could not be written into this file as it is");
    }

    private String with(List<Held> held) {
        Span known = null;
        int at = skipBlanks(text.indexOf('{') + 1);
        int first = at;
        // A season has keys that must be given, so there is a last one.
        Span last = new Span(at, at);
        while (at < text.length() && text.charAt(at) == '"') {
            int keyEnd = value(at);
            int from = skipBlanks(skipBlanks(keyEnd) + 1);
            last = new Span(from, value(from));
            if (text.substring(at, keyEnd).equals('"' + KEY + '"')) {
                known = last;
            }
            at = skipBlanks(last.to);
            at = at < text.length() && text.charAt(at) == ',' ? skipBlanks(at + 1) : text.length();
        }
        String indent = indent(first);
        if (known != null) {
            return text.substring(0, known.from) + list(held, indent) + text.substring(known.to);
        }
        String key = '"' + KEY + "\": ";
        String gap = indent == null ? " " : lineEnd() + indent;
        return text.substring(0, last.to) + "," + gap + key + list(held, indent) + text.substring(last.to);
    }

    /** Where a value stands: from its first character to behind its last. */
    private record Span(int from, int to) {}

    private String list(List<Held> held, @Nullable String indent) {
        StringBuilder list = new StringBuilder("[");
        for (Held one : held) {
            list.append(list.length() == 1 ? "" : ",")
                    .append(indent == null ? (list.length() == 1 ? "" : " ") : lineEnd() + indent + indent)
                    .append(JsonText.line(Unbinder.group(one)));
        }
        return list.append(indent == null || held.isEmpty() ? "" : lineEnd() + indent)
                .append(']')
                .toString();
    }

    /** The blanks before the first key; null if no line begins with it. */
    private @Nullable String indent(int first) {
        int line = first;
        while (line > 0 && (text.charAt(line - 1) == ' ' || text.charAt(line - 1) == '\t')) {
            line--;
        }
        return line > 0 && text.charAt(line - 1) == '\n' ? text.substring(line, first) : null;
    }

    private String lineEnd() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }

    private int skipBlanks(int from) {
        int at = from;
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        return at;
    }

    /** Behind the value that starts here; the text is known to be JSON. */
    private int value(int from) {
        int depth = 0;
        int at = from;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == '"') {
                at = behindText(at);
            } else if (depth == 0 && ",]} \t\r\n:".indexOf(c) >= 0) {
                return at;
            } else {
                depth += c == '{' || c == '[' ? 1 : c == '}' || c == ']' ? -1 : 0;
                at++;
            }
            if (depth == 0 && (c == '"' || c == '}' || c == ']')) {
                return at;
            }
        }
        return at;
    }

    private int behindText(int quote) {
        int at = quote + 1;
        while (text.charAt(at) != '"') {
            at += text.charAt(at) == '\\' ? 2 : 1;
        }
        return at + 1;
    }
}
