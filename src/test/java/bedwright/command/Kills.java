package bedwright.command;

import bedwright.file.HeldFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Kills processes that write plans, each at a random moment, and looks after each kill whether every file of the plan is
 * there and whole, and after the next command whether all are of one plan and nothing is left over.
 */
final class Kills {
    static final List<String> NAMES = List.of("season.html", "plantings.csv", "stems.svg", "plan.json");

    private static final Path SEASON = Path.of("problems/first-bed.json");
    private static final int VERSIONS = 2;
    /** A writer that writes again and again is killed within so many milliseconds. */
    private static final int SOON = 150;

    private static final int TOLD = 100;

    private final Path folder;
    private final Random random;
    private final List<Map<String, byte[]>> versions = new ArrayList<>();
    private final Map<String, Integer> found = new TreeMap<>();
    private final List<String> lost = new ArrayList<>();
    private int count;

    private Kills(Path folder, long seed) {
        this.folder = folder;
        this.random = new Random(seed);
    }

    /**
     * Kills on a folder that holds a plan.
     *
     * @param parent an empty folder
     * @param writers how many writers are killed that write two plans in turn
     * @param commands how many commands "plan" are killed, from their start on
     */
    static Killed run(Path parent, int writers, int commands, long seed) throws Exception {
        Kills kills = new Kills(parent.resolve("plan"), seed);
        for (int version = 1; version <= VERSIONS; version++) {
            Path whole = parent.resolve("version" + version);
            Ran ran = Ran.of(typed(version, whole).toArray());
            if (ran.code() != 0) {
                throw new IllegalStateException("A plan that nobody killed ended with " + ran.code() + ran.err());
            }
            kills.versions.add(contents(whole, NAMES));
        }
        for (String name : NAMES) {
            if (Arrays.equals(
                    kills.versions.getFirst().get(name),
                    kills.versions.getLast().get(name))) {
                throw new IllegalStateException(name + " is the same in both plans, which tells nothing");
            }
        }
        try (HeldFolder held = HeldFolder.of(kills.folder)) {
            held.save(kills.versions.getFirst(), List.of());
        }
        for (int i = 0; i < writers; i++) {
            kills.kill(kills.writer(parent), kills.random.nextInt(SOON));
        }
        long millis = 0;
        for (int i = 0; i < commands; i++) {
            if (i == 0) {
                long start = System.nanoTime();
                kills.command(1, kills.folder).waitFor();
                millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
            }
            kills.kill(kills.command(1 + (i + 1) % VERSIONS, kills.folder), kills.random.nextLong(millis * 5 / 4));
        }
        return new Killed(kills.lost, kills.found);
    }

    /** Two plans that differ in every file, since they are judged over other possible seasons. */
    private static List<String> typed(int version, Path out) {
        return List.of(
                "plan",
                SEASON.toString(),
                "--seasons",
                Integer.toString(1 + version),
                "--moves",
                "100",
                "--out",
                out.toString());
    }

    private Process command(int version, Path out) throws IOException {
        List<String> line = new ArrayList<>(List.of("-Xmx512m", Main.class.getName()));
        line.addAll(typed(version, out));
        return java(line.toArray(String[]::new))
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    /** Ready to be killed once it has said so. */
    private Process writer(Path parent) throws IOException {
        Process writer = java("-Xmx64m", Rewriter.class.getName(), folder.toString(), parent.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        if (writer.getInputStream().read() < 0) {
            throw new IllegalStateException("The writer did not begin");
        }
        return writer;
    }

    static ProcessBuilder java(String... arguments) {
        String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                String.valueOf(classes)));
        line.addAll(List.of(arguments));
        return new ProcessBuilder(line);
    }

    private void kill(Process process, long afterMillis) throws Exception {
        boolean ended = process.waitFor(afterMillis, TimeUnit.MILLISECONDS);
        process.destroyForcibly().waitFor();
        count++;
        if (count % TOLD == 0) {
            System.err.printf(Locale.ROOT, "%d killed, %d losses%n", count, lost.size());
        }
        found.merge(ended ? "had ended by itself" : step(), 1, Integer::sum);
        for (String name : NAMES) {
            if (version(folder, name) == 0) {
                lost.add(name + " is lost or half written");
            }
            if (Files.exists(folder.resolve(name + "~")) && version(folder, name + "~") == 0) {
                lost.add(name + "~ is half written");
            }
        }
        HeldFolder.of(folder).close();
        if (NAMES.stream().map(name -> version(folder, name)).distinct().count() != 1) {
            lost.add("the files are of different plans after the next command");
        }
        for (String name : names(folder)) {
            if (!NAMES.contains(name.replace("~", ""))) {
                lost.add(name + " is left over");
            }
        }
    }

    private String step() throws IOException {
        List<String> names = names(folder);
        if (names.contains(".bedwright-list")) {
            return "naming the new files";
        }
        if (names.stream().anyMatch(name -> name.endsWith("-new") || name.endsWith("-former"))) {
            return "writing the new files";
        }
        return names.contains(".bedwright-lock") ? "holding the folder" : "before or between";
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }

    /** Which version a file is of, from 1; 0 if of none. */
    private int version(Path from, String name) {
        try {
            byte[] bytes = Files.readAllBytes(from.resolve(name));
            for (int v = 0; v < versions.size(); v++) {
                if (Arrays.equals(bytes, versions.get(v).get(name.replace("~", "")))) {
                    return v + 1;
                }
            }
            return 0;
        } catch (IOException e) {
            return 0;
        }
    }

    static Map<String, byte[]> contents(Path folder, List<String> names) throws IOException {
        Map<String, byte[]> contents = new LinkedHashMap<>();
        for (String name : names) {
            contents.put(name, Files.readAllBytes(folder.resolve(name)));
        }
        return contents;
    }

    /** Writes two plans in turn until it is killed. */
    static final class Rewriter {
        private Rewriter() {}

        public static void main(String[] args) throws IOException {
            Path folder = Path.of(args[0]);
            List<Map<String, byte[]>> versions = new ArrayList<>();
            for (int version = 1; version <= VERSIONS; version++) {
                versions.add(contents(Path.of(args[1], "version" + version), NAMES));
            }
            for (int i = 0; ; i++) {
                try (HeldFolder held = HeldFolder.of(folder)) {
                    held.save(versions.get(i % VERSIONS), List.of());
                }
                if (i == 0) {
                    System.out.println("ready");
                }
            }
        }
    }

    /** Arguments: number of writers to kill, of commands to kill, seed. */
    public static void main(String[] args) throws Exception {
        int writers = Integer.parseInt(args[0]);
        int commands = Integer.parseInt(args[1]);
        Killed.print(parent -> run(parent, writers, commands, Long.parseLong(args[2])), writers + commands + " kills");
    }
}
