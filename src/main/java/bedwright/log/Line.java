package bedwright.log;

import bedwright.season.Nearest;
import bedwright.season.Season;
import java.io.Serial;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A line of the log, word by word; each fault knows where its word stands. */
final class Line {
    private static final Pattern WORD = Pattern.compile("\\S+");
    private static final Pattern WHOLE = Pattern.compile("\\d{1,8}");
    private static final Pattern FIGURE = Pattern.compile("-?\\d{1,7}(\\.\\d{1,4})?");

    private final int number;
    private final String text;
    private final List<String> words = new ArrayList<>();
    private final List<Integer> columns = new ArrayList<>();
    private int at;

    Line(int number, String text) {
        this.number = number;
        this.text = text;
        Matcher found = WORD.matcher(text);
        while (found.find()) {
            words.add(found.group());
            columns.add(found.start() + 1);
        }
    }

    /** Thrown at the first word that isn't understood. */
    static final class NotUnderstood extends Exception {
        @Serial
        private static final long serialVersionUID = 1;

        private final transient NoteFault fault;

        NotUnderstood(NoteFault fault) {
            super(fault.message());
            this.fault = fault;
        }

        NoteFault fault() {
            return fault;
        }
    }

    boolean isOver() {
        return at == words.size();
    }

    /** The word that comes next, or null if the line is over. */
    @Nullable
    String peek() {
        return isOver() ? null : words.get(at);
    }

    /** Takes the next word. */
    String next(String expected) throws NotUnderstood {
        if (isOver()) {
            throw new NotUnderstood(
                    new NoteFault(number, text.length() + 1, "The note ends here. Write also " + expected + "."));
        }
        return words.get(at++);
    }

    /** Takes the next word if it is this one. */
    boolean takes(String word) {
        boolean is = word.equals(peek());
        at += is ? 1 : 0;
        return is;
    }

    void expect(String word) throws NotUnderstood {
        if (!takes(word)) {
            next(word);
            at--;
            throw unknown(word, List.of(word));
        }
    }

    int whole(String expected) throws NotUnderstood {
        if (!WHOLE.matcher(next(expected)).matches()) {
            at--;
            throw unknown(expected, List.of());
        }
        return Integer.parseInt(words.get(at - 1));
    }

    BigDecimal figure(String expected) throws NotUnderstood {
        if (!FIGURE.matcher(next(expected)).matches()) {
            at--;
            throw unknown(expected, List.of());
        }
        return new BigDecimal(words.get(at - 1));
    }

    /** Takes a day of the season: 2027-04-26, 26-Apr or 26 Apr, with or without a year. */
    LocalDate day(Season season, String expected) throws NotUnderstood {
        next(expected);
        int from = at - 1;
        at = from + SaidDay.length(words.subList(from, words.size()));
        String said = String.join(" ", words.subList(from, at));
        at = from;
        LocalDate day = read(() -> SaidDay.of(season, said));
        at = from + SaidDay.length(words.subList(from, words.size()));
        return day;
    }

    /** Takes the words before one that is named, which has to come, and that one too. */
    String upTo(String word, String expected) throws NotUnderstood {
        int end = words.subList(at, words.size()).indexOf(word);
        if (end == 0) {
            throw unknown(expected, List.of());
        }
        if (end < 0) {
            at = words.size();
            next(expected + ", then " + word);
        }
        String before = String.join(" ", words.subList(at, at + end));
        at += end + 1;
        return before;
    }

    /** Whether a word is still to come. */
    boolean has(String word) {
        return words.subList(at, words.size()).contains(word);
    }

    /** Takes all that is left, as it is written. */
    String rest(String expected) throws NotUnderstood {
        int from = isOver() ? text.length() : columns.get(at) - 1;
        next(expected);
        at = words.size();
        return text.substring(from).strip();
    }

    /**
     * Reads something that starts at the next word.
     *
     * @param reading throws IllegalArgumentException with what is wrong and what to write instead
     */
    <T> T read(Supplier<T> reading) throws NotUnderstood {
        try {
            return reading.get();
        } catch (IllegalArgumentException e) {
            throw fault(String.valueOf(e.getMessage()));
        }
    }

    /** Steps back before the word that was taken last. */
    void back() {
        at--;
    }

    /** Steps on over the word that comes next. */
    void step() {
        at++;
    }

    /** Where the next word stands among the words, to come back to. */
    int place() {
        return at;
    }

    void backTo(int place) {
        at = place;
    }

    /** That the next word is not understood. */
    NotUnderstood unknown(String expected, Collection<String> known) {
        String word = words.get(at);
        return fault("\"" + word + "\" is not understood."
                + Nearest.of(word, known)
                        .map(near -> " Did you mean \"" + near + "\"?")
                        .orElse("")
                + " Write " + expected + ".");
    }

    /** A fault at the next word, or at the line's end. */
    NotUnderstood fault(String message) {
        return new NotUnderstood(new NoteFault(number, isOver() ? text.length() + 1 : columns.get(at), message));
    }

    int number() {
        return number;
    }

    String text() {
        return text;
    }
}
