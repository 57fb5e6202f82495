package bedwright.command;

import bedwright.log.FaultyNotes;
import bedwright.log.SeasonLog;
import bedwright.season.Plan;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Asks, planting by planting in walking order, how much is lost, and makes notes of the answers.
 *
 * @param plan that the notes are about
 * @param log the notes so far
 * @param on day of the notes
 * @param cause as a note says it
 * @param isTerminal whether somebody answers who can be asked again
 */
record Walk(Plan plan, SeasonLog log, LocalDate on, String cause, boolean isTerminal) {
    private static final String KNOWN =
            "all, half, some (a quarter), none, a share (1/3, 30%), a number of plants, later"
                    + " (left for a count), or end (the rest is left for a count)";

    /**
     * What was found.
     *
     * @param lines notes, a line each, in walking order
     * @param later plantings that are left for a count, by number
     */
    record Found(List<String> lines, List<Integer> later) {}

    /**
     * Asks for each planting; what is not answered any more, at the end of the answers, is left for a count.
     *
     * @throws Refusal if an answer is not understood or can't be true and nobody can be asked again
     */
    Found ask(List<Damaged> stops, BufferedReader in, PrintWriter out) throws IOException {
        Found found = new Found(new ArrayList<>(), new ArrayList<>());
        out.println("How much is lost? Answer " + KNOWN + ".");
        boolean isOver = false;
        int answers = 0;
        for (Damaged stop : stops) {
            boolean isAnswered = isOver;
            if (isOver) {
                found.later.add(stop.planting().number());
            }
            while (!isAnswered) {
                out.print(stop.named() + " (" + stop.planting().method() + "), bed "
                        + stop.planting().bed()
                        + (stop.likely() >= 0.01 ? ", likely " + Words.percent(stop.likely()) : "") + ": ");
                out.flush();
                String said = in.readLine();
                if (!isTerminal) {
                    out.println(said == null ? "" : said.strip());
                }
                answers++;
                isOver = said == null || said.strip().equalsIgnoreCase("end");
                isAnswered = take(stop, isOver ? "later" : String.valueOf(said), found, answers, out);
            }
        }
        return found;
    }

    /** Whether an answer was taken. */
    private boolean take(Damaged stop, String said, Found found, int answer, PrintWriter out) {
        int number = stop.planting().number();
        String amount = switch (said.strip().toLowerCase(Locale.ROOT)) {
            case "later", "count" -> "";
            case "none", "0" -> "0%";
            case "some" -> "1/4";
            default -> said.strip().toLowerCase(Locale.ROOT);
        };
        if (amount.isEmpty() && !said.isBlank()) {
            found.later.add(number);
            return true;
        }
        String line = on + " " + number + " lost " + amount + " " + cause;
        try {
            if (amount.isEmpty() || amount.contains(" ")) {
                throw new IllegalArgumentException("\"" + said.strip() + "\" is not understood. Write " + KNOWN + ".");
            }
            log.plus(plan, line + "\n");
            found.lines.add(line);
            return true;
        } catch (FaultyNotes e) {
            String wrong = e.faults().getFirst().message();
            return refused(wrong.contains("not understood") ? wrong + " Or " + KNOWN + "." : wrong, answer, out);
        } catch (IllegalArgumentException e) {
            return refused(String.valueOf(e.getMessage()), answer, out);
        }
    }

    private boolean refused(String wrong, int answer, PrintWriter out) {
        if (!isTerminal) {
            throw new Refusal(Exit.FAULTY_FILE, "standard input:" + answer + ":1: " + wrong + " Nothing was written.");
        }
        out.println(wrong);
        return false;
    }
}
