package bedwright.command;

import bedwright.log.Entry;
import bedwright.log.FaultyNotes;
import bedwright.log.LogFile;
import bedwright.log.Note;
import bedwright.log.SeasonLog;
import bedwright.season.Plan;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;

/**
 * Kills processes that write notes into several logs at once, each at a random moment, and looks after each kill whether all
 * notes are in each log that were acknowledged, in their order, and nothing that nobody wrote.
 */
final class NoteKills {
    /** A process that notes and notes is killed within so many milliseconds from its first note on. */
    private static final int SOON = 400;
    /** New logs are begun after so many kills, or they would take longer and longer to read. */
    private static final int A_LOG = 3;

    private static final int TOLD = 5;

    private final List<Path> folders = new ArrayList<>();
    private final Path said;
    private final Random random;
    private final Map<String, Integer> found = new TreeMap<>();
    private final List<String> lost = new ArrayList<>();
    private final Map<Path, List<Integer>> before = new HashMap<>();

    private NoteKills(Path parent, int logs, long seed) {
        for (int log = 0; log < logs; log++) {
            folders.add(parent.resolve("plan" + log));
        }
        this.said = parent.resolve("acknowledged");
        this.random = new Random(seed);
    }

    /**
     * Kills on new plans.
     *
     * @param parent an empty folder
     * @param kills how many processes are killed
     * @param logs into how many logs each of them writes at once
     */
    static Killed run(Path parent, int kills, int logs, long seed) throws Exception {
        NoteKills all = new NoteKills(parent, logs, seed);
        Path first = all.folders.getFirst();
        Ran ran = Ran.of("plan", Path.of("problems/first-bed.json"), "--moves", 100, "--out", first);
        if (ran.code() != 0) {
            throw new IllegalStateException("A plan that nobody killed ended with " + ran.code() + ran.err());
        }
        Plan plan = PlanFolder.at(first).read();
        for (Path folder : all.folders) {
            if (!folder.equals(first)) {
                Files.createDirectories(folder);
                Files.copy(first.resolve("plan.json"), folder.resolve("plan.json"));
            }
        }
        for (int i = 0; i < kills; i++) {
            if (i % A_LOG == 0) {
                for (Path folder : all.folders) {
                    Files.deleteIfExists(PlanFolder.at(folder).log());
                    all.before.put(folder, new ArrayList<>());
                }
            }
            all.kill(plan);
            if ((i + 1) % TOLD == 0) {
                System.err.printf(Locale.ROOT, "%d killed, %d losses%n", i + 1, all.lost.size());
            }
        }
        return new Killed(all.lost, all.found);
    }

    private void kill(Plan plan) throws Exception {
        List<String> line = new ArrayList<>(List.of("-Xmx128m", Noter.class.getName()));
        folders.forEach(folder -> line.add(folder.toString()));
        List<String> told = Killed.after(random.nextInt(SOON), said, line);
        Map<Integer, List<Integer>> acknowledged = acknowledged(told);
        for (int log = 0; log < folders.size(); log++) {
            look(plan, folders.get(log), acknowledged.getOrDefault(log, List.of()));
        }
    }

    /** Numbers of the notes that were acknowledged, by log; one of which only a part was said is none. */
    private static Map<Integer, List<Integer>> acknowledged(List<String> told) {
        Map<Integer, List<Integer>> numbers = new HashMap<>();
        told.forEach(line -> {
            String[] parts = line.split(" ", -1);
            numbers.computeIfAbsent(Integer.valueOf(parts[0]), log -> new ArrayList<>())
                    .add(Integer.valueOf(parts[1]));
        });
        return numbers;
    }

    private void look(Plan plan, Path folder, List<Integer> acknowledged) throws IOException {
        List<Integer> expected = Objects.requireNonNull(before.get(folder));
        expected.addAll(acknowledged);
        List<Integer> noted = new ArrayList<>();
        try {
            SeasonLog log = LogFile.read(PlanFolder.at(folder).log(), plan);
            for (Entry entry : log.entries()) {
                noted.add(entry.note() instanceof Note.Said words ? Integer.parseInt(words.words()) : -1);
            }
            found.merge(
                    !log.cutOff().isEmpty()
                            ? "a line cut off, which nobody was told of"
                            : noted.size() > expected.size()
                                    ? "a note more than was acknowledged"
                                    : "just what was acknowledged",
                    1,
                    Integer::sum);
        } catch (FaultyNotes e) {
            lost.add("the log can't be read: " + e.getMessage());
            return;
        }
        if (noted.size() < expected.size() || !noted.subList(0, expected.size()).equals(expected)) {
            lost.add("acknowledged " + expected + ", noted " + noted);
        } else if (noted.size() > expected.size() + 1) {
            lost.add("more was noted than was being written: " + noted);
        }
        for (int i = 0; i < noted.size(); i++) {
            if (noted.get(i) != i) {
                lost.add("not one note after the other: " + noted);
                break;
            }
        }
        before.put(folder, noted);
    }

    /** Notes number after number into each of some logs until it is killed, and says each once it is on the disk. */
    static final class Noter {
        private Noter() {}

        public static void main(String[] args) {
            Plan plan = PlanFolder.at(Path.of(args[0])).read();
            for (int log = 0; log < args.length; log++) {
                int number = log;
                PlanFolder plans = PlanFolder.at(Path.of(args[log]));
                new Thread(() -> note(plans, plan, number)).start();
            }
        }

        private static void note(PlanFolder plans, Plan plan, int number) {
            try {
                for (; ; ) {
                    SeasonLog log = LogFile.read(plans.log(), plan);
                    int next = log.entries().size();
                    List<String> line = List.of(plan.season().starts() + " say " + next);
                    if (!NoteCommand.append(plans, plan, log, line)) {
                        throw new IllegalStateException("Somebody else wrote");
                    }
                    Killed.say(number + " " + next);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** Arguments: number of processes to kill, of logs that each writes, seed. */
    public static void main(String[] args) throws Exception {
        Killed.print(
                parent -> run(parent, Integer.parseInt(args[0]), Integer.parseInt(args[1]), Long.parseLong(args[2])),
                args[0] + " kills of " + args[1] + " logs each");
    }
}
