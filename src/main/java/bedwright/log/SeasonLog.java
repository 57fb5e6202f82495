package bedwright.log;

import bedwright.season.Plan;
import java.util.ArrayList;
import java.util.List;

/**
 * The notes of a season.
 *
 * @param entries all notes, by number, those taken back among them
 * @param lines lines read so far
 * @param cutOff what stands after the last whole line: a note that was being written when the machine stopped and that
 *     nobody was told of as written; empty if there is none
 */
public record SeasonLog(List<Entry> entries, int lines, String cutOff) {

    /** A log with nothing in it: all was done as planned. */
    public static final SeasonLog EMPTY = new SeasonLog(List.of(), 0, "");

    public SeasonLog {
        entries = List.copyOf(entries);
    }

    /** The notes that count, by number: not those taken back, nor the notes that took them back and were so themselves. */
    public List<Entry> inForce() {
        return InForce.of(entries);
    }

    /** The log as it was after so many lines. */
    public SeasonLog upTo(int line) {
        return new SeasonLog(
                entries.stream().filter(entry -> entry.number() <= line).toList(), Math.min(line, lines), "");
    }

    /**
     * This log and more text after it. Text may be given in pieces, cut at ends of lines.
     *
     * @param plan the plan that the notes are about
     * @param text whole lines, each ended by a line feed; blank ones are passed over
     * @throws FaultyNotes if lines can't be understood or can't be true, with all of them
     */
    public SeasonLog plus(Plan plan, String text) {
        NoteCheck check = new NoteCheck(plan, entries);
        List<NoteFault> faults = new ArrayList<>();
        int number = lines;
        int from = 0;
        for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', from)) {
            String line = text.substring(from, end).stripTrailing();
            from = end + 1;
            number++;
            if (line.isBlank()) {
                continue;
            }
            try {
                Entry entry = new NoteReader(plan.began(), number, line).entry();
                int column = line.length() - line.stripLeading().length() + 1;
                int at = number;
                check.take(entry).ifPresent(wrong -> faults.add(new NoteFault(at, column, wrong)));
            } catch (Line.NotUnderstood e) {
                faults.add(e.fault());
            }
        }
        if (!faults.isEmpty()) {
            throw new FaultyNotes(faults);
        }
        return new SeasonLog(check.taken(), number, text.substring(from));
    }
}
