package bedwright.file;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The first fault in the syntax of a JSON text, with the reason that a person would give. The parser says what it did
 * not expect; this says what was probably meant.
 *
 * @param offset of the character at fault
 * @param said what is wrong and how to mend it; {@code %s} stands for the place of {@code other}
 * @param other offset of something that has to do with it, or −1
 */
record SyntaxFault(int offset, String said, int other) {
    SyntaxFault(int offset, String said) {
        this(offset, said, -1);
    }

    String message(Lines lines) {
        return other < 0 ? said : said.replace("%s", lines.at(other).said());
    }

    /** The first fault, if this scan finds one. */
    static Optional<SyntaxFault> find(char[] json) {
        Scan scan = new Scan(json);
        scan.run();
        return Optional.ofNullable(scan.found);
    }

    /** What may come next. */
    private enum Next {
        VALUE,
        FIRST_VALUE,
        KEY,
        FIRST_KEY,
        COLON,
        COMMA,
        END
    }

    private static final class Scan {
        private final char[] json;
        /** Offsets of the brackets that are open. */
        private final Deque<Integer> open = new ArrayDeque<>();

        private int at;
        private int lastComma = -1;
        private Next next = Next.VALUE;

        @Nullable
        private SyntaxFault found;

        Scan(char[] json) {
            this.json = json;
        }

        void run() {
            while (found == null) {
                while (at < json.length && " \t\r\n".indexOf(json[at]) >= 0) {
                    at++;
                }
                if (at == json.length) {
                    if (next != Next.END) {
                        end();
                    }
                    return;
                }
                step(json[at]);
            }
        }

        private void step(char c) {
            switch (c) {
                case '{', '[' -> opening(c);
                case '}', ']' -> closing(c);
                case ',' -> comma();
                case ':' -> colon();
                case '"' -> text();
                default -> other(c);
            }
        }

        private void opening(char c) {
            if (next == Next.KEY || next == Next.FIRST_KEY) {
                fault("Here stands %c, but a key in quotation marks was expected, as in \"name\": …".formatted(c));
            } else if (expectsValue()) {
                open.push(at++);
                next = c == '{' ? Next.FIRST_KEY : Next.FIRST_VALUE;
            } else {
                unexpectedValue();
            }
        }

        private void closing(char c) {
            Integer opened = open.peek();
            if (opened == null) {
                fault("This " + c + " closes a bracket that was never opened. Take it away.");
            } else if ((json[opened] == '{') != (c == '}')) {
                char right = json[opened] == '{' ? '}' : ']';
                found = new SyntaxFault(
                        at,
                        "Here stands " + c + ", but the " + json[opened] + " of %s is still open. Put " + right
                                + " in its place or before it.",
                        opened);
            } else if (next == Next.KEY || next == Next.VALUE && lastComma > opened) {
                found = new SyntaxFault(
                        lastComma, "After this comma nothing follows but " + c + ". Take the comma away.");
            } else if (next == Next.COLON || next == Next.VALUE) {
                fault("A value is missing before this " + c + ". Write key and value, as in \"weeks\": 30");
            } else {
                open.pop();
                at++;
                afterValue();
            }
        }

        private void comma() {
            if (next == Next.COMMA) {
                lastComma = at++;
                next = inGroup() ? Next.KEY : Next.VALUE;
            } else if (next == Next.END) {
                unexpectedValue();
            } else if (next == Next.COLON) {
                fault("After a key comes a colon and its value, as in \"weeks\": 30. Here stands a comma.");
            } else {
                fault("Here stands a comma where " + expected()
                        + " was expected. Take it away or fill in what is missing.");
            }
        }

        private void colon() {
            if (next == Next.COLON) {
                at++;
                next = Next.VALUE;
            } else {
                fault("Here stands a colon where " + expected() + " was expected. A colon stands only between a key and"
                        + " its value.");
            }
        }

        private void text() {
            if (next == Next.COMMA || next == Next.COLON || next == Next.END) {
                unexpectedValue();
                return;
            }
            int start = at;
            for (at++; at < json.length && json[at] != '"'; at++) {
                if (json[at] == '\\') {
                    if (!escape()) {
                        return;
                    }
                } else if (json[at] == '\n' || json[at] == '\r') {
                    found = new SyntaxFault(
                            start, "This text has no closing quotation mark on its line. Put \" at its end.");
                    return;
                } else if (json[at] < ' ') {
                    fault("A text holds a tab or another control character here. Write a space in its place.");
                    return;
                }
            }
            if (at == json.length) {
                found = new SyntaxFault(
                        start,
                        "The file ends within the text that begins here: it was probably cut off."
                                + " Take a whole copy of it, or put the rest back.");
                return;
            }
            at++;
            if (next == Next.KEY || next == Next.FIRST_KEY) {
                next = Next.COLON;
            } else {
                afterValue();
            }
        }

        private boolean escape() {
            at++;
            if (at < json.length && json[at] == 'u') {
                for (int i = 0; i < 4; i++) {
                    at++;
                    if (at < json.length && Character.digit(json[at], 16) < 0) {
                        fault("After \\u four digits are expected, 0 to 9 and a to f, as in \\u00e9.");
                        return false;
                    }
                }
            } else if (at < json.length && "\"\\/bfnrt".indexOf(json[at]) < 0) {
                at--;
                fault("A single \\ stands in a text. Write it twice: \\\\");
                return false;
            }
            at = Math.min(at, json.length - 1);
            return true;
        }

        private void other(char c) {
            if (c == '/' || c == '#') {
                fault(
                        "A file has no remarks of this kind. Write them under \"about\" or \"source\", or take them away.");
                return;
            }
            if (c == '\'' || "“”„«»’‘".indexOf(c) >= 0) {
                fault("Quotation marks are written \" here, straight and double, not " + c);
                return;
            }
            if (next == Next.KEY || next == Next.FIRST_KEY) {
                fault(
                        Character.isDigit(c) && lastComma > 0
                                ? "A key was expected here, not a number. Numbers are written with a point: 1.5, not 1,5"
                                : "A key in quotation marks was expected here, as in \"name\": …");
                return;
            }
            if (!expectsValue()) {
                unexpectedValue();
                return;
            }
            int start = at;
            while (at < json.length && " \t\r\n,:{}[]\"".indexOf(json[at]) < 0) {
                at++;
            }
            String word = new String(json, start, at - start);
            if (!word.matches("true|false|null|-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][-+]?[0-9]+)?")) {
                found = new SyntaxFault(start, WrongWord.said(word, open.isEmpty()));
            }
            afterValue();
        }

        private void unexpectedValue() {
            if (next == Next.COLON) {
                fault("A colon is missing between the key and this. Write \"key\": value");
            } else if (next == Next.END) {
                fault(
                        "Something stands behind the end of the file's last bracket. A file holds one { … }; take away what"
                                + " follows it, or a bracket too many.");
            } else {
                fault(WrongWord.afterAValue(json, at));
            }
        }

        private void end() {
            Integer opened = open.peek();
            if (opened == null) {
                fault("The file is empty. A season file is one group { … } of keys and values.");
            } else {
                found = new SyntaxFault(
                        at,
                        "The file ends here, but the " + json[opened] + " of %s is still open"
                                + (open.size() > 1
                                        ? " (and " + Words.count(open.size() - 1L, "bracket", "brackets")
                                                + " around it)"
                                        : "")
                                + ": it was probably cut off. Take a whole copy of it, or put the rest back.",
                        opened);
            }
        }

        private String expected() {
            return switch (next) {
                case VALUE, FIRST_VALUE -> "a value";
                case KEY, FIRST_KEY -> "a key";
                case COLON -> "a colon";
                case COMMA -> "a comma or the end of the " + (inGroup() ? "group" : "list");
                case END -> "the end of the file";
            };
        }

        private boolean expectsValue() {
            return next == Next.VALUE || next == Next.FIRST_VALUE;
        }

        private boolean inGroup() {
            Integer opened = open.peek();
            return opened != null && json[opened] == '{';
        }

        private void afterValue() {
            next = open.isEmpty() ? Next.END : Next.COMMA;
        }

        private void fault(String said) {
            found = new SyntaxFault(at, said);
        }
    }
}
