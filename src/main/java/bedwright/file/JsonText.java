package bedwright.file;

import java.util.List;

/**
 * Writes a tree as JSON: two spaces a level, {@code \n}, and on one line whatever fits there, so that a month's figures
 * or a point don't take a line each.
 */
final class JsonText {
    private static final int WIDTH = 100;

    private final StringBuilder out = new StringBuilder();

    private JsonText() {}

    /** The whole text, with a line's end behind it. */
    static String of(Node root) {
        JsonText text = new JsonText();
        text.write(root, 0, 0);
        return text.out.append('\n').toString();
    }

    /**
     * @param indent spaces before the line on which the value starts
     * @param taken characters of its line that are taken already
     */
    private void write(Node node, int indent, int taken) {
        String line = line(node, WIDTH - taken);
        if (line.length() <= WIDTH - taken || !(node instanceof Node.Group || node instanceof Node.Many)) {
            out.append(line);
        } else if (node instanceof Node.Group group) {
            out.append('{');
            for (int i = 0; i < group.members().size(); i++) {
                Node.Member member = group.members().get(i);
                newLine(i, indent + 2);
                String key = Words.json(member.key()) + ": ";
                out.append(key);
                write(member.value(), indent + 2, indent + 2 + key.length() + 1);
            }
            close(indent, '}');
        } else if (node instanceof Node.Many many) {
            out.append('[');
            if (many.entries().stream().allMatch(JsonText::isShort)) {
                fill(many.entries(), indent + 2);
            } else {
                for (int i = 0; i < many.entries().size(); i++) {
                    newLine(i, indent + 2);
                    write(many.entries().get(i), indent + 2, indent + 3);
                }
            }
            close(indent, ']');
        }
    }

    /** Numbers and short words stand as many to a line as fit. */
    private void fill(List<Node> entries, int indent) {
        int taken = WIDTH;
        for (int i = 0; i < entries.size(); i++) {
            String entry = line(entries.get(i), WIDTH);
            if (taken + 2 + entry.length() >= WIDTH) {
                newLine(i, indent);
                taken = indent;
            } else {
                out.append(", ");
                taken += 2;
            }
            out.append(entry);
            taken += entry.length();
        }
    }

    private void newLine(int entry, int indent) {
        out.append(entry == 0 ? "\n" : ",\n").append(" ".repeat(indent));
    }

    private void close(int indent, char bracket) {
        out.append('\n').append(" ".repeat(indent)).append(bracket);
    }

    private static boolean isShort(Node node) {
        return node instanceof Node.Number || node instanceof Node.Truth;
    }

    /** The whole value on one line. */
    static String line(Node node) {
        return line(node, Integer.MAX_VALUE);
    }

    /** The value on one line; once it is longer than {@code most}, how it goes on does not matter. */
    private static String line(Node node, int most) {
        if (node instanceof Node.Group group) {
            StringBuilder line = new StringBuilder("{");
            for (Node.Member member : group.members()) {
                line.append(line.length() == 1 ? " " : ", ")
                        .append(Words.json(member.key()))
                        .append(": ")
                        .append(line(member.value(), most));
                if (line.length() > most) {
                    break;
                }
            }
            return line.append(group.members().isEmpty() ? "}" : " }").toString();
        }
        if (node instanceof Node.Many many) {
            StringBuilder line = new StringBuilder("[");
            for (Node entry : many.entries()) {
                line.append(line.length() == 1 ? "" : ", ").append(line(entry, most));
                if (line.length() > most) {
                    break;
                }
            }
            return line.append("]").toString();
        }
        if (node instanceof Node.Text text) {
            return Words.json(text.value());
        }
        return node instanceof Node.Number number ? number.text() : word(node);
    }

    private static String word(Node node) {
        return node instanceof Node.Truth truth ? Boolean.toString(truth.value()) : "null";
    }
}
