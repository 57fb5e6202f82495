package bedwright.command;

import bedwright.calendar.SeasonCalendar;
import bedwright.file.Writing;
import bedwright.season.Plan;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes the jobs and events of a plan for a calendar program. */
@Command(
        name = "calendar",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Writes a plan's jobs and events as an iCalendar file (RFC 5545), which any calendar program takes in:"
                    + " sowing, planting out, netting, covering, pinching, weeding, clearing, when first stems are due,"
                    + " and events. A job lies on the first day of its week and may be done on any day of it.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright calendar plans/first-bed",
            "  target/bedwright calendar plans/first-bed --by bed",
            "",
            "Written again, for a plan that has changed, it updates the entries that came before and cancels those that"
                    + " are gone: take in the new file over the old one. It knows them from the file that it replaces; if"
                    + " the new plan lies in another folder, name the former file with --after. What was noted counts: what"
                    + " was done on another day, moved, lost or pulled changes its entries, and what follows from it."
        })
final class CalendarCommand implements Callable<Integer> {
    private static final String ENDING = ".ics";
    private static final String NAME = "calendar";
    private static final String BY_BED = "calendar-by-bed";
    private static final String BY_JOB = "calendar-by-job";
    private static final Path SCREEN = Path.of("-");

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Option(
            names = "--by",
            paramLabel = "bed|job",
            description = "One calendar for each bed, or for each kind of job; left out: one for all.")
    private @Nullable By by;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Where to write it, with --by a folder, - for the screen; left out: calendar.ics beside the"
                    + " plan, with --by the folder calendar-by-bed or calendar-by-job there.")
    private @Nullable Path out;

    @Option(
            names = "--after",
            paramLabel = "FILE",
            description = "The calendar that was taken in before, with --by its folder; left out: the one that is"
                    + " replaced.")
    private @Nullable Path after;

    @Mixin
    private OnDay onDay = new OnDay();

    enum By {
        BED,
        JOB
    }

    @Override
    public Integer call() {
        PlanFolder plans = named.folder();
        Plan kept = plans.read();
        PlanNow now = onDay.of(plans, kept);
        Plan plan = now.plan();
        SeasonCalendar.Split split = by == null
                ? SeasonCalendar.Split.NONE
                : by == By.BED ? SeasonCalendar.Split.BED : SeasonCalendar.Split.JOB;
        if (SCREEN.equals(out) && by != null) {
            throw new ParameterException(
                    spec.commandLine(), "Several calendars can't go to the screen. Leave out --by, or name a folder.");
        }
        Path to =
                out != null ? out : plans.folder().resolve(by == null ? NAME + ENDING : by == By.BED ? BY_BED : BY_JOB);
        Map<String, Path> files = files(SeasonCalendar.names(plan, split), to);
        Map<String, String> former = former(files, to);
        Map<String, SeasonCalendar> calendars;
        try {
            calendars = SeasonCalendar.of(plan, kept.began(), now.gone(), split, former);
        } catch (SeasonCalendar.NotOurs e) {
            throw new Refusal(
                    Exit.FAULTY_FILE,
                    beforeOf(files, e.part(), to) + ": " + e.getMessage()
                            + ". Nothing was written. Name another file with --out, or the right one with --after.");
        }
        Map<String, byte[]> bytes = new LinkedHashMap<>();
        calendars.forEach((name, calendar) -> {
            if (!calendar.text().isEmpty()) {
                bytes.put(
                        fileOf(files, name).getFileName().toString(),
                        calendar.text().getBytes(StandardCharsets.UTF_8));
            }
        });
        PrintWriter screen = spec.commandLine().getOut();
        if (SCREEN.equals(out)) {
            calendars.values().forEach(calendar -> screen.print(calendar.text()));
            screen.flush();
            return Exit.DONE;
        }
        if (bytes.isEmpty()) {
            screen.println("Nothing is planted and there are no events, so there is no calendar to write.");
            return Exit.DONE;
        }
        if (by == null) {
            Writing.save(to, bytes.values().iterator().next());
        } else {
            Writing.saveAll(to, bytes);
        }
        screen.println(told(calendars, bytes.size(), to));
        if (by != null) {
            List<String> leftOver = leftOver(files, after == null ? to : after);
            if (!leftOver.isEmpty()) {
                spec.commandLine()
                        .getErr()
                        .println("Of "
                                + (by == By.BED
                                        ? "beds that this plan does not have, or that have another name now"
                                        : "kinds of job that this plan does not have")
                                + ", calendars written before are left as they were: " + String.join(", ", leftOver)
                                + ". Nothing cancels their entries: take those calendars out of your calendar program,"
                                + " and then their files away.");
            }
        }
        return Exit.DONE;
    }

    /** Calendars of ours in a folder that are none of these. */
    private static List<String> leftOver(Map<String, Path> files, Path folder) {
        List<String> known = files.values().stream()
                .map(file -> String.valueOf(file.getFileName()))
                .toList();
        List<String> others = new ArrayList<>();
        try (Stream<Path> there = Files.list(folder)) {
            for (Path file : there.sorted().toList()) {
                String name = String.valueOf(file.getFileName());
                if (name.endsWith(ENDING) && !known.contains(name) && SeasonCalendar.isOurs(Files.readString(file))) {
                    others.add(name);
                }
            }
        } catch (IOException e) {
            // What can't be read is not ours to speak of.
            return others;
        }
        return others;
    }

    /** The file of each part. */
    private Map<String, Path> files(Iterable<String> names, Path to) {
        Map<String, Path> files = new LinkedHashMap<>();
        for (String name : names) {
            if (by == null) {
                files.put(name, to);
                continue;
            }
            String plain = plain(name);
            String file = plain;
            for (int more = 2; files.containsValue(to.resolve(file + ENDING)); more++) {
                file = plain + "-" + more;
            }
            files.put(name, to.resolve(file + ENDING));
        }
        return files;
    }

    /** A name as a file's, in letters and digits. */
    private static String plain(String name) {
        String plain = name.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{M}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        return plain.isEmpty() ? "bed" : plain;
    }

    private Map<String, String> former(Map<String, Path> files, Path to) {
        if (after != null && !Files.exists(after)) {
            throw new Refusal(
                    Exit.FILE_TROUBLE,
                    after + ": There is no such " + (by == null ? "file" : "folder")
                            + ". Name the calendar that was taken in before, or leave out --after.");
        }
        Map<String, String> former = new LinkedHashMap<>();
        if (after == null && SCREEN.equals(out)) {
            return former;
        }
        for (String name : files.keySet()) {
            Path before = beforeOf(files, name, to);
            if (Files.exists(before)) {
                try {
                    former.put(name, Files.readString(before));
                } catch (IOException e) {
                    throw new Refusal(
                            Exit.FILE_TROUBLE,
                            before + ": The calendar that was written before can't be read (" + e.getMessage()
                                    + "). Nothing was written. Move it away to begin anew.");
                }
            }
        }
        return former;
    }

    /** Where the calendar of a part lay before. */
    private Path beforeOf(Map<String, Path> files, String name, Path to) {
        if (after == null) {
            return by == null ? to : fileOf(files, name);
        }
        return by == null ? after : after.resolve(fileOf(files, name).getFileName());
    }

    private static Path fileOf(Map<String, Path> files, String name) {
        Path file = files.get(name);
        if (file == null) {
            throw new IllegalStateException("No file for the calendar of " + name);
        }
        return file;
    }

    private static String told(Map<String, SeasonCalendar> calendars, int files, Path to) {
        int fresh = 0;
        int changed = 0;
        int same = 0;
        int cancelled = 0;
        for (SeasonCalendar calendar : calendars.values()) {
            fresh += calendar.fresh();
            changed += calendar.changed();
            same += calendar.same();
            cancelled += calendar.cancelled();
        }
        String what = (files == 1 ? "The calendar lies at " : files + " calendars lie in ") + to + ": ";
        return fresh > 0 && changed + same + cancelled == 0
                ? what + (fresh == 1 ? "1 entry." : fresh + " entries.")
                : what + fresh + " new, " + changed + " changed, " + cancelled + " cancelled, " + same
                        + " as they were. Take it in over the former one.";
    }
}
