package bedwright.command;

import bedwright.log.Entry;
import bedwright.log.Note;
import bedwright.log.SeasonLog;
import bedwright.log.Understood;
import bedwright.season.Plan;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;

/** A round after a storm or an attack that is walked: asked for, noted, and summed up on one page. */
final class RoundWalked {
    private static final int LONGEST_NOTICE = 365;

    @Option(
            names = "--walk",
            description =
                    "Asks at each planting how much is lost (all, half, some, none, a share, a number of plants, or"
                            + " later for a count), notes it, and prints one page: what to do today, whose order is short and by"
                            + " when to call, what buying in costs, and what is still worth sowing. Answers can come from standard"
                            + " input, a line a planting.")
    private boolean isWalking;

    @Option(names = "--yes", description = "With --walk: writes the notes without asking.")
    private boolean isSure;

    @Option(
            names = "--notice",
            paramLabel = "DAYS",
            description = "With --walk: how many days before the week of their order customers want to hear that it is"
                    + " short; left out: 7.")
    private int notice = 7;

    /** What is wrong with the options, or an empty text. */
    String wrong() {
        return !isWalking && isSure
                ? "--yes goes with --walk"
                : notice < 0 || notice > LONGEST_NOTICE
                        ? "--notice takes days from 0 to " + LONGEST_NOTICE + ", not " + notice
                        : "";
    }

    /**
     * What a round is about.
     *
     * @param before the notes without those of the damage, so that what a round noted of it already is looked at again
     * @param was the plan as it stood by them
     */
    record About(
            PlanFolder plans,
            Plan plan,
            SeasonLog log,
            SeasonLog before,
            PlanNow was,
            String typed,
            LocalDate on,
            Note.Cause cause) {
        static About of(PlanFolder plans, Plan plan, SeasonLog log, String typed, LocalDate on, Note.Cause cause) {
            SeasonLog before = without(log, noted(log, on, cause));
            return new About(plans, plan, log, before, PlanNow.on(plan, before, on), typed, on, cause);
        }

        /** How a note says the cause. */
        String said() {
            return cause.name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A round that was printed.
     *
     * @param damaged in walking order
     * @param otherwise as what counts that is not noted
     * @param today prints what is to be done today, by what was found
     */
    record Round(List<Damaged> damaged, String otherwise, Consumer<Harm> today) {}

    /** Goes on from a round: tells what to do first and how to note what is found, or walks it. */
    int follow(About about, Round round, PrintWriter out) {
        if (round.damaged().isEmpty()) {
            return Exit.DONE;
        }
        out.println();
        if (isWalking) {
            return walk(about, round, out);
        }
        round.today().accept(new Harm(List.of(), List.of()));
        out.println();
        out.println("The same command with --walk asks for each what is lost, notes it, and says what follows. Or note"
                + " it by hand; what you don't note counts as " + round.otherwise() + ":");
        out.println("  " + Called.name() + " note " + about.typed() + " "
                + round.damaged().getFirst().planting().number() + " lost half " + about.said() + " --on "
                + about.on());
        return Exit.DONE;
    }

    /** Asks, notes and sums up. */
    private int walk(About about, Round round, PrintWriter out) {
        List<Integer> known = noted(about.log(), about.on(), about.cause()).stream()
                .map(entry -> ((Note.Lost) entry.note()).planting())
                .toList();
        List<Damaged> open = round.damaged().stream()
                .filter(stop -> !known.contains(stop.planting().number()))
                .toList();
        if (!known.isEmpty()) {
            out.println(
                    "Noted already: " + known.stream().map(String::valueOf).collect(Collectors.joining(", ")) + ".");
        }
        try {
            BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
            Walk walk = new Walk(about.plan(), about.log(), about.on(), about.said(), System.console() != null);
            Walk.Found found = open.isEmpty() ? new Walk.Found(List.of(), List.of()) : walk.ask(open, in, out);
            SeasonLog after = about.log();
            if (!found.lines().isEmpty()) {
                after = about.log().plus(about.plan(), String.join("\n", found.lines()) + "\n");
                if (!written(about, after, found.lines(), in, out)) {
                    return Exit.DONE;
                }
            }
            page(about, round, found, after, out);
            return Exit.DONE;
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE_TROUBLE, about.plans().log() + ": " + e.getMessage() + "; nothing was written.");
        }
    }

    /** Plantings of which nothing is left, and those of which nothing was lost, by number. */
    record Harm(Collection<Integer> gone, Collection<Integer> none) {}

    private boolean written(About about, SeasonLog after, List<String> lines, BufferedReader in, PrintWriter out)
            throws IOException {
        out.println();
        after.entries().subList(about.log().entries().size(), after.entries().size()).stream()
                .map(entry -> Understood.sentence(about.plan(), entry))
                .forEach(out::println);
        if (!isSure) {
            out.print("Write it down? (y/n) ");
            out.flush();
            String answer = in.readLine();
            if (answer == null || !answer.strip().equalsIgnoreCase("y")) {
                out.println("Nothing was written." + (answer == null ? " With --yes nobody is asked." : ""));
                return false;
            }
        }
        if (!NoteCommand.append(about.plans(), about.plan(), about.log(), lines)) {
            throw new Refusal(
                    Exit.FILE_TROUBLE,
                    about.plans().log()
                            + ": Somebody else wrote into the log meanwhile; nothing was written. Walk the round again.");
        }
        out.println("Written to " + about.plans().log());
        return true;
    }

    private void page(About about, Round round, Walk.Found found, SeasonLog after, PrintWriter out) {
        List<Integer> gone = new ArrayList<>();
        List<Integer> none = new ArrayList<>();
        for (Entry entry : noted(after, about.on(), about.cause())) {
            Note.Lost lost = (Note.Lost) entry.note();
            if (lost.lost().value() == 0) {
                none.add(lost.planting());
            } else if (lost.lost().isShare() ? lost.lost().value() >= 1 : isAll(round.damaged(), lost)) {
                gone.add(lost.planting());
            }
        }
        out.println();
        round.today().accept(new Harm(gone, none));
        if (!found.later().isEmpty()) {
            out.println("Still to be counted, and taken as " + round.otherwise() + " below: "
                    + round.damaged().stream()
                            .filter(stop ->
                                    found.later().contains(stop.planting().number()))
                            .map(Damaged::named)
                            .collect(Collectors.joining("; "))
                    + ". The same command with --walk asks for them again.");
        }
        out.println();
        PlanNow now = PlanNow.on(about.plan(), after, about.on());
        new AfterDamage(about.was(), now, about.typed(), about.on(), notice).print(out, gone);
    }

    private static boolean isAll(List<Damaged> damaged, Note.Lost lost) {
        return damaged.stream()
                .filter(stop -> stop.planting().number() == lost.planting())
                .anyMatch(stop -> stop.planting().plants() <= lost.lost().value());
    }

    /** Losses to a cause noted of a day: what a round of that day noted already. */
    private static List<Entry> noted(SeasonLog log, LocalDate on, Note.Cause cause) {
        return log.inForce().stream()
                .filter(entry ->
                        entry.on().equals(on) && entry.note() instanceof Note.Lost lost && lost.cause() == cause)
                .toList();
    }

    /** A log without some notes. */
    private static SeasonLog without(SeasonLog log, List<Entry> notes) {
        return new SeasonLog(
                log.entries().stream().filter(entry -> !notes.contains(entry)).toList(), log.lines(), "");
    }
}
