package bedwright.log;

import bedwright.log.Line.NotUnderstood;
import bedwright.log.Note.Cause;
import bedwright.log.Note.Stage;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads one line word by word; whether what it says can be is not asked here. */
final class NoteReader {
    private static final Pattern NUMBER = Pattern.compile("\\d.*");
    private static final Pattern PERCENT = Pattern.compile("(\\d{1,4}(?:\\.\\d{1,4})?)%");
    private static final Pattern FRACTION = Pattern.compile("(\\d{1,4})/(\\d{1,4})");
    private static final List<String> FIRST = Stream.concat(
                    Stream.of("week", "take-back", "say"), FarmNotes.WORDS.stream())
            .toList();
    private static final String WHAT_FIRST = "a planting's number, or " + String.join(", ", FIRST);
    private static final List<String> OF_PLANTING = List.of(
            "up",
            "pinch-stage",
            "colour",
            "first-stem",
            "stands",
            "lost",
            "cut",
            "moved",
            "in-bed",
            "plants",
            "not-done",
            "pulled");
    private static final String WHAT = "one of " + String.join(", ", OF_PLANTING);

    private final Season season;
    private final Line line;

    NoteReader(Season season, int number, String text) {
        this.season = season;
        this.line = new Line(number, text);
    }

    /** @throws NotUnderstood with the first word that isn't understood */
    Entry entry() throws NotUnderstood {
        LocalDate on = line.day(season, "the day of the note");
        Note note = note();
        if (!line.isOver()) {
            throw line.fault("The note is over before \"" + line.peek()
                    + "\". Take it out, or write it as a note of its" + " own: say and the words.");
        }
        return new Entry(line.number(), on, note, line.text());
    }

    private Note note() throws NotUnderstood {
        String first = line.next(WHAT_FIRST);
        if (FarmNotes.WORDS.contains(first)) {
            return new FarmNotes(season, line).read(first);
        }
        switch (first) {
            case "say" -> {
                return new Note.Said(line.rest("what you want to say"));
            }
            case "take-back" -> {
                return new Note.TakenBack(line.whole("the number of the note that no longer counts"));
            }
            case "week" -> {
                return week();
            }
            default -> {
                line.back();
                if (!NUMBER.matcher(first).matches()) {
                    throw line.unknown(WHAT_FIRST, FIRST);
                }
                return ofPlanting(line.whole(WHAT_FIRST));
            }
        }
    }

    private Note week() throws NotUnderstood {
        LocalDate week = line.day(season, "the first day of the week");
        line.expect("done");
        List<Integer> except = new ArrayList<>();
        if (!line.isOver()) {
            line.expect("except");
            do {
                except.add(line.whole("a planting's number"));
            } while (!line.isOver());
        }
        return new Note.WeekDone(week, except);
    }

    private Note ofPlanting(int planting) throws NotUnderstood {
        String what = line.next(WHAT);
        for (Stage stage : Stage.values()) {
            if (stage.word().equals(what)) {
                return stage == Stage.UP && !line.isOver()
                        ? new Note.CameUp(planting, amount())
                        : new Note.Seen(planting, stage);
            }
        }
        return switch (what) {
            case "stands" -> new Note.Counted(planting, amount());
            case "lost" -> new Note.Lost(planting, amount(), cause());
            case "cut" -> new Note.Cut(planting, line.whole("the stems cut"), left());
            case "moved" -> new Note.Moved(planting, line.day(season, "the day it was moved to"));
            case "in-bed" -> new Note.InBed(planting, line.rest("the bed's name"));
            case "plants" -> new Note.OfPlants(planting, line.whole("how many plants"));
            case "not-done" -> new Note.NotDone(planting);
            case "pulled" -> new Note.Pulled(planting);
            default -> {
                line.back();
                throw line.unknown(WHAT, OF_PLANTING);
            }
        };
    }

    private Cause cause() throws NotUnderstood {
        if (line.isOver()) {
            return Cause.OTHER;
        }
        String said = line.next("why");
        for (Cause cause : Cause.values()) {
            if (cause.name().toLowerCase(Locale.ROOT).equals(said)) {
                return cause;
            }
        }
        line.back();
        throw line.unknown(
                "why it was lost: wind, frost, pest, disease or other",
                Arrays.stream(Cause.values())
                        .map(cause -> cause.name().toLowerCase(Locale.ROOT))
                        .toList());
    }

    private @Nullable Integer left() throws NotUnderstood {
        if (line.isOver()) {
            return null;
        }
        if (line.takes("all")) {
            return 0;
        }
        if (!line.takes("left")) {
            throw line.unknown(
                    "all if all that was ready was taken, or left and how many stems", List.of("all", "left"));
        }
        return line.whole("the stems left");
    }

    private Amount amount() throws NotUnderstood {
        String expected = "plants (40), a share (1/3, 30%, half) or all";
        String said = line.next(expected);
        switch (said) {
            case "all" -> {
                return new Amount(1, true);
            }
            case "half" -> {
                return new Amount(0.5, true);
            }
            default -> line.back();
        }
        Matcher percent = PERCENT.matcher(said);
        Matcher fraction = FRACTION.matcher(said);
        double share;
        if (percent.matches()) {
            share = Double.parseDouble(percent.group(1)) / 100;
        } else if (fraction.matches() && Integer.parseInt(fraction.group(2)) > 0) {
            share = Double.parseDouble(fraction.group(1)) / Integer.parseInt(fraction.group(2));
        } else {
            return new Amount(line.whole(expected), false);
        }
        if (share > 1) {
            throw line.fault("\"" + said + "\" is more than all. Write a share up to 100%, or the number of plants.");
        }
        line.step();
        return new Amount(share, true);
    }
}
