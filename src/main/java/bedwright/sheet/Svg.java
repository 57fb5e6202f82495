package bedwright.sheet;

import bedwright.season.Rounding;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes one SVG picture. Numbers have at most two decimals and a point in every locale; texts are escaped. Nothing but
 * classes and coordinates reaches an attribute.
 */
final class Svg {
    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();
    private boolean tagOpen;

    /** How a picture stands: within a page, or as a file of its own. */
    enum Form {
        INLINE,
        FILE
    }

    /**
     * Begins a picture.
     *
     * @param id letters, digits and hyphens, unique on the page
     * @param title what it shows, for those who don't see it
     * @param description what can be seen in it
     */
    Svg(Form form, String id, double width, double height, String title, String description) {
        start("svg");
        if (form == Form.FILE) {
            attribute("xmlns", "http://www.w3.org/2000/svg");
        }
        attribute("id", id);
        attribute("viewBox", "0 0 " + number(width) + " " + number(height));
        attribute("role", "img");
        attribute("aria-labelledby", id + "-title " + id + "-desc");
        start("title");
        attribute("id", id + "-title");
        content(title);
        end();
        start("desc");
        attribute("id", id + "-desc");
        content(description);
        end();
        if (form == Form.FILE) {
            start("style");
            content(Look.MARKS);
            end();
            rect(0, 0, width, height, "paper");
        }
    }

    private void start(String element) {
        closeTag();
        out.append('<').append(element);
        open.push(element);
        tagOpen = true;
    }

    private void attribute(String name, String value) {
        out.append(' ').append(name).append("=\"").append(escape(value)).append('"');
    }

    private void attribute(String name, double value) {
        out.append(' ').append(name).append("=\"").append(number(value)).append('"');
    }

    private void closeTag() {
        if (tagOpen) {
            out.append('>');
            tagOpen = false;
        }
    }

    private void content(String text) {
        closeTag();
        out.append(escape(text));
    }

    /** Ends what was begun last: a group, a mark or the picture. */
    Svg end() {
        String element = open.pop();
        if (tagOpen) {
            out.append("/>");
            tagOpen = false;
        } else {
            out.append("</").append(element).append('>');
        }
        return this;
    }

    /** Begins a group. */
    Svg group(String classes) {
        start("g");
        attribute("class", classes);
        return this;
    }

    /** Begins a mark: a group with its figures, shown on hover. */
    Svg mark(String classes, String figures) {
        group(classes);
        start("title");
        content(figures);
        return end();
    }

    Svg rect(double x, double y, double width, double height, String classes) {
        start("rect");
        attribute("x", x);
        attribute("y", y);
        attribute("width", Math.max(0, width));
        attribute("height", Math.max(0, height));
        attribute("class", classes);
        return end();
    }

    Svg line(double x1, double y1, double x2, double y2, String classes) {
        start("line");
        attribute("x1", x1);
        attribute("y1", y1);
        attribute("x2", x2);
        attribute("y2", y2);
        attribute("class", classes);
        return end();
    }

    Svg path(Outline outline, String classes) {
        start("path");
        attribute("d", outline.data());
        attribute("class", classes);
        return end();
    }

    Svg text(double x, double y, String classes, String text) {
        start("text");
        attribute("x", x);
        attribute("y", y);
        attribute("class", classes);
        content(text);
        return end();
    }

    /** Text of a size of its own. */
    Svg text(double x, double y, double size, String classes, String text) {
        start("text");
        attribute("x", x);
        attribute("y", y);
        attribute("font-size", size);
        attribute("class", classes);
        content(text);
        return end();
    }

    /** Text turned clockwise about its anchor. */
    Svg turned(double x, double y, double degrees, double size, String classes, String text) {
        start("text");
        attribute("transform", "translate(" + number(x) + " " + number(y) + ") rotate(" + number(degrees) + ")");
        attribute("font-size", size);
        attribute("class", classes);
        content(text);
        return end();
    }

    /**
     * A line as broad as a bar is high. With dashes it is a hatching across the bar, which prints as sharp as any line;
     * patterns are made into coarse dots on the way to paper by some browsers.
     */
    Svg broad(double x1, double y1, double x2, double y2, double width, String classes) {
        start("line");
        attribute("x1", x1);
        attribute("y1", y1);
        attribute("x2", x2);
        attribute("y2", y2);
        attribute("stroke-width", width);
        attribute("class", classes);
        return end();
    }

    /** Slanting lines so far apart over a rectangle. */
    Svg slanted(double x, double y, double width, double height, double apart, String classes) {
        Outline lines = new Outline();
        for (double at = apart; at < width + height; at += apart) {
            double fromX = Math.max(0, at - height);
            double toX = Math.min(width, at);
            lines.move(x + fromX, y + at - fromX).line(x + toX, y + at - toX);
        }
        return path(lines, classes);
    }

    /** The picture, ended. */
    String done() {
        while (!open.isEmpty()) {
            end();
        }
        return out.toString();
    }

    /** A number with at most two decimals. */
    static String number(double value) {
        long hundredths = Rounding.halfUp(Math.abs(value) * 100);
        if (hundredths == 0) {
            return "0";
        }
        StringBuilder text = new StringBuilder(value < 0 ? "-" : "").append(hundredths / 100);
        long rest = hundredths % 100;
        if (rest != 0) {
            text.append('.').append(rest / 10);
            if (rest % 10 != 0) {
                text.append(rest % 10);
            }
        }
        return text.toString();
    }

    /** Text made safe for content and attributes; characters that XML can't hold are replaced. */
    static String escape(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(isXml(c) ? c : 0xFFFD);
            }
        });
        return safe.toString();
    }

    private static boolean isXml(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }

    /** The outline of a path. */
    static final class Outline {
        private final StringBuilder data = new StringBuilder();

        Outline move(double x, double y) {
            return add('M', x, y);
        }

        Outline line(double x, double y) {
            return add('L', x, y);
        }

        private Outline add(char letter, double x, double y) {
            data.append(letter).append(number(x)).append(' ').append(number(y));
            return this;
        }

        Outline close() {
            data.append('Z');
            return this;
        }

        boolean isEmpty() {
            return data.isEmpty();
        }

        String data() {
            return data.toString();
        }
    }
}
