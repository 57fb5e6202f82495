package bedwright.command;

import bedwright.log.Entry;
import bedwright.log.FaultyNotes;
import bedwright.log.LogFile;
import bedwright.log.Note;
import bedwright.log.SeasonLog;
import bedwright.season.Plan;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Kills processes that write notes, each at a random moment, and looks after each kill whether all notes are in the log that
 * it had acknowledged, in their order, and nothing that nobody wrote.
 */
final class NoteKills {
    /** A process that notes and notes is killed within so many milliseconds from its first note on. */
    private static final int SOON = 120;
    /** A new log is begun after so many kills, or it would take longer and longer to read. */
    private static final int A_LOG = 10;

    private static final int TOLD = 100;

    private final Path folder;
    private final Random random;
    private final Map<String, Integer> found = new TreeMap<>();
    private final List<String> lost = new ArrayList<>();
    private final List<Integer> before = new ArrayList<>();

    private NoteKills(Path folder, long seed) {
        this.folder = folder;
        this.random = new Random(seed);
    }

    /**
     * Kills on a new plan.
     *
     * @param parent an empty folder
     * @param kills how many processes are killed
     */
    static NoteKills run(Path parent, int kills, long seed) throws Exception {
        NoteKills all = new NoteKills(parent.resolve("plan"), seed);
        Ran ran = Ran.of("plan", Path.of("problems/first-bed.json"), "--moves", 100, "--out", all.folder);
        if (ran.code() != 0) {
            throw new IllegalStateException("A plan that nobody killed ended with " + ran.code() + ran.err());
        }
        for (int i = 0; i < kills; i++) {
            if (i % A_LOG == 0) {
                Files.deleteIfExists(PlanFolder.at(all.folder).log());
                all.before.clear();
            }
            all.kill();
            if ((i + 1) % TOLD == 0) {
                System.err.printf(Locale.ROOT, "%d killed, %d losses%n", i + 1, all.lost.size());
            }
        }
        return all;
    }

    /** What was lost, a line each; nothing if all is well. */
    List<String> lost() {
        return lost;
    }

    /** How often the log was found how. */
    Map<String, Integer> found() {
        return found;
    }

    private void kill() throws Exception {
        int first = before.isEmpty() ? 0 : before.getLast() + 1;
        Path said = folder.resolveSibling("acknowledged");
        Process noter = Kills.java("-Xmx64m", Noter.class.getName(), folder.toString(), Integer.toString(first))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .redirectOutput(said.toFile())
                .start();
        while (Files.size(said) == 0 && noter.isAlive()) {
            noter.waitFor(2, TimeUnit.MILLISECONDS);
        }
        noter.waitFor(random.nextInt(SOON), TimeUnit.MILLISECONDS);
        noter.destroyForcibly().waitFor();
        look(first, acknowledged(said));
    }

    /** Numbers of the notes that were acknowledged; one of which only a part was said is none. */
    private static List<Integer> acknowledged(Path said) throws IOException {
        String text = Files.readString(said);
        return text.substring(0, text.lastIndexOf('\n') + 1)
                .lines()
                .map(Integer::valueOf)
                .toList();
    }

    private void look(int first, List<Integer> acknowledged) throws IOException {
        PlanFolder plans = PlanFolder.at(folder);
        List<Integer> noted = new ArrayList<>();
        try {
            SeasonLog log = LogFile.read(plans.log(), plans.read());
            for (Entry entry : log.entries()) {
                noted.add(entry.note() instanceof Note.Said words ? Integer.parseInt(words.words()) : -1);
            }
            int more = noted.size() - before.size() - acknowledged.size();
            found.merge(
                    !log.cutOff().isEmpty()
                            ? "a line cut off, which nobody was told of"
                            : more > 0 ? "a note more than was acknowledged" : "just what was acknowledged",
                    1,
                    Integer::sum);
        } catch (FaultyNotes e) {
            lost.add("the log can't be read: " + e.getMessage());
            return;
        }
        List<Integer> expected = new ArrayList<>(before);
        expected.addAll(acknowledged);
        if (noted.size() < expected.size() || !noted.subList(0, expected.size()).equals(expected)) {
            lost.add("acknowledged " + expected + ", noted " + noted);
        } else if (noted.size() > expected.size() + 1) {
            lost.add("more was noted than was being written: " + noted);
        }
        if (acknowledged.isEmpty() || acknowledged.getFirst() != first) {
            lost.add("the first note, " + first + ", was not acknowledged: " + acknowledged);
        }
        before.clear();
        before.addAll(noted);
    }

    /** Notes number after number until it is killed, and says each once it is on the disk. */
    static final class Noter {
        private Noter() {}

        public static void main(String[] args) throws IOException {
            PlanFolder plans = PlanFolder.at(Path.of(args[0]));
            Plan plan = plans.read();
            for (int i = Integer.parseInt(args[1]); ; i++) {
                SeasonLog log = LogFile.read(plans.log(), plan);
                List<String> line = List.of(plan.season().starts() + " say " + i);
                if (!NoteCommand.append(plans, plan, log, line)) {
                    throw new IllegalStateException("Somebody else wrote");
                }
                System.out.write((i + "\n").getBytes(StandardCharsets.UTF_8));
                System.out.flush();
            }
        }
    }

    /** Arguments: number of processes to kill, seed. */
    public static void main(String[] args) throws Exception {
        Path parent = Files.createTempDirectory("bedwright-note-kills");
        NoteKills kills;
        try {
            kills = run(parent, Integer.parseInt(args[0]), Long.parseLong(args[1]));
        } finally {
            try (Stream<Path> files = Files.walk(parent)) {
                files.sorted(Comparator.reverseOrder())
                        .forEach(file -> file.toFile().delete());
            }
        }
        kills.found().forEach((how, count) -> System.out.printf(Locale.ROOT, "%6d  %s%n", count, how));
        kills.lost().forEach(System.out::println);
        System.out.printf(
                Locale.ROOT, "%s kills, %d losses%n", args[0], kills.lost().size());
    }
}
