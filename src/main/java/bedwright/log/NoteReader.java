package bedwright.log;

import bedwright.log.Note.Cause;
import bedwright.log.Note.Stage;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads one line word by word; whether what it says can be is not asked here. */
final class NoteReader {
    private static final Pattern WORD = Pattern.compile("\\S+");
    private static final Pattern WHOLE = Pattern.compile("\\d{1,8}");
    private static final Pattern PERCENT = Pattern.compile("(\\d{1,4}(?:\\.\\d{1,4})?)%");
    private static final Pattern FRACTION = Pattern.compile("(\\d{1,4})/(\\d{1,4})");
    private static final String WHAT =
            "up, pinch-stage, colour, first-stem, stands, lost, cut, moved, not-done or pulled";

    private final int number;
    private final String line;
    private final List<String> words = new ArrayList<>();
    private final List<Integer> columns = new ArrayList<>();
    private int at;

    NoteReader(int number, String line) {
        this.number = number;
        this.line = line;
        Matcher found = WORD.matcher(line);
        while (found.find()) {
            words.add(found.group());
            columns.add(found.start() + 1);
        }
    }

    /** Thrown at the first word that isn't understood. */
    static final class NotUnderstood extends Exception {
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

    /** @throws NotUnderstood with the first word that isn't understood */
    Entry entry() throws NotUnderstood {
        LocalDate on = date("the day of the note");
        Note note = note();
        if (at < words.size()) {
            throw fault("The note is over before \"" + words.get(at) + "\". Take it out, or write it as a note of its"
                    + " own: say and the words.");
        }
        return new Entry(number, on, note, line);
    }

    private Note note() throws NotUnderstood {
        String first = next("a planting's number, week, take-back or say");
        switch (first) {
            case "say" -> {
                int from = at < words.size() ? columns.get(at) - 1 : line.length();
                next("what you want to say");
                at = words.size();
                return new Note.Said(line.substring(from).strip());
            }
            case "take-back" -> {
                return new Note.TakenBack(whole("the number of the note that no longer counts"));
            }
            case "week" -> {
                return week();
            }
            default -> {
                at--;
                return ofPlanting(whole("a planting's number, week, take-back or say"));
            }
        }
    }

    private Note week() throws NotUnderstood {
        LocalDate week = date("the first day of the week");
        expect("done");
        List<Integer> except = new ArrayList<>();
        if (at < words.size()) {
            expect("except");
            do {
                except.add(whole("a planting's number"));
            } while (at < words.size());
        }
        return new Note.WeekDone(week, except);
    }

    private Note ofPlanting(int planting) throws NotUnderstood {
        String what = next(WHAT);
        for (Stage stage : Stage.values()) {
            if (stage.word().equals(what)) {
                return new Note.Seen(planting, stage);
            }
        }
        return switch (what) {
            case "stands" -> new Note.Counted(planting, amount());
            case "lost" -> new Note.Lost(planting, amount(), cause());
            case "cut" -> new Note.Cut(planting, whole("the stems cut"), left());
            case "moved" -> new Note.Moved(planting, date("the day it was moved to"));
            case "not-done" -> new Note.NotDone(planting);
            case "pulled" -> new Note.Pulled(planting);
            default -> {
                at--;
                throw expected(WHAT);
            }
        };
    }

    private Cause cause() throws NotUnderstood {
        if (at == words.size()) {
            return Cause.OTHER;
        }
        String said = next("why");
        for (Cause cause : Cause.values()) {
            if (cause.name().toLowerCase(Locale.ROOT).equals(said)) {
                return cause;
            }
        }
        at--;
        throw expected("why it was lost: wind, frost, pest, disease or other");
    }

    private @Nullable Integer left() throws NotUnderstood {
        if (at == words.size()) {
            return null;
        }
        String said = next("all or left");
        if (said.equals("all")) {
            return 0;
        }
        at--;
        if (!said.equals("left")) {
            throw expected("all if all that was ready was taken, or left and how many stems");
        }
        at++;
        return whole("the stems left");
    }

    private Amount amount() throws NotUnderstood {
        String expected = "plants (40), a share (1/3, 30%, half) or all";
        String said = next(expected);
        switch (said) {
            case "all" -> {
                return new Amount(1, true);
            }
            case "half" -> {
                return new Amount(0.5, true);
            }
            default -> at--;
        }
        Matcher percent = PERCENT.matcher(said);
        Matcher fraction = FRACTION.matcher(said);
        double share;
        if (percent.matches()) {
            share = Double.parseDouble(percent.group(1)) / 100;
        } else if (fraction.matches() && Integer.parseInt(fraction.group(2)) > 0) {
            share = Double.parseDouble(fraction.group(1)) / Integer.parseInt(fraction.group(2));
        } else {
            return new Amount(whole(expected), false);
        }
        if (share > 1) {
            throw fault("\"" + said + "\" is more than all. Write a share up to 100%, or the number of plants.");
        }
        at++;
        return new Amount(share, true);
    }

    private void expect(String word) throws NotUnderstood {
        if (!next(word).equals(word)) {
            at--;
            throw expected(word);
        }
    }

    private int whole(String expected) throws NotUnderstood {
        if (!WHOLE.matcher(next(expected)).matches()) {
            at--;
            throw expected(expected);
        }
        return Integer.parseInt(words.get(at - 1));
    }

    private LocalDate date(String expected) throws NotUnderstood {
        try {
            return LocalDate.parse(next(expected));
        } catch (DateTimeParseException e) {
            at--;
            throw expected(expected + " as year-month-day, like 2027-04-26");
        }
    }

    private String next(String expected) throws NotUnderstood {
        if (at == words.size()) {
            throw new NotUnderstood(
                    new NoteFault(number, line.length() + 1, "The note ends here. Write also " + expected + "."));
        }
        at++;
        return words.get(at - 1);
    }

    private NotUnderstood expected(String expected) {
        return fault("\"" + words.get(at) + "\" is not understood. Write " + expected + ".");
    }

    private NotUnderstood fault(String message) {
        return new NotUnderstood(new NoteFault(number, columns.get(at), message));
    }
}
