package bedwright.command;

import bedwright.file.HeldFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Kills processes that accept a new plan and go back to the former one, again and again, in several folders at once; looks
 * after each kill whether each folder has the former plan with its proposal, or the new plan with the former one beside it,
 * whole, and the log as it was; and whether what was acknowledged last stands, or what was being done after it.
 */
final class AcceptKills {
    /** A process is killed within so many milliseconds from its first acceptance on. */
    private static final int SOON = 400;

    private static final int TOLD = 10;
    private static final String PLAN = "plan.json";
    private static final String PROPOSAL = "proposal.json";
    private static final String FORMER = "plan-1.json";
    private static final String LOG = "season.log";

    private final Path said;
    private final Map<String, byte[]> ready;
    private final List<Path> folders = new ArrayList<>();
    private final Random random;
    private final Map<Path, Boolean> isNew = new HashMap<>();
    private final Map<String, Integer> found = new TreeMap<>();
    private final List<String> lost = new ArrayList<>();

    private AcceptKills(Path parent, int count, long seed) throws IOException {
        this.said = parent.resolve("acknowledged");
        this.random = new Random(seed);
        Path whole = parent.resolve("ready");
        Ran.of("plan", "problems/tray-and-bed.json", "--seasons", 3, "--moves", 30, "--out", whole);
        Ran.of("note", whole, "1", "lost", "all", "wind", "--on", "2027-05-08", "--yes");
        Ran.of("replan", whole, "--on", "2027-05-10", "--moves", 1000);
        this.ready = Kills.contents(whole, List.of(PLAN, PROPOSAL, LOG, "season.html", "plantings.csv", "stems.svg"));
        for (int i = 0; i < count; i++) {
            Path folder = Files.createDirectories(parent.resolve("plan" + i));
            for (Map.Entry<String, byte[]> file : ready.entrySet()) {
                Files.write(folder.resolve(file.getKey()), file.getValue());
            }
            folders.add(folder);
            isNew.put(folder, false);
        }
    }

    /**
     * @param parent an empty folder
     * @param kills how many processes are killed
     * @param folders in how many folders each of them accepts at once
     */
    static AcceptKills run(Path parent, int kills, int folders, long seed) throws Exception {
        AcceptKills all = new AcceptKills(parent, folders, seed);
        for (int i = 0; i < kills; i++) {
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

    /** How many folders were found how. */
    Map<String, Integer> found() {
        return found;
    }

    private void kill() throws Exception {
        List<String> line = new ArrayList<>(List.of("-Xmx256m", Acceptor.class.getName()));
        folders.forEach(folder -> line.add(folder.toString()));
        Process acceptor = Kills.java(line.toArray(String[]::new))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .redirectOutput(said.toFile())
                .start();
        while (Files.size(said) == 0 && acceptor.isAlive()) {
            acceptor.waitFor(2, TimeUnit.MILLISECONDS);
        }
        acceptor.waitFor(random.nextInt(SOON), TimeUnit.MILLISECONDS);
        acceptor.destroyForcibly().waitFor();
        String text = Files.readString(said);
        int[] acknowledged = new int[folders.size()];
        text.substring(0, text.lastIndexOf('\n') + 1)
                .lines()
                .forEach(number -> acknowledged[Integer.parseInt(number)]++);
        for (int i = 0; i < acknowledged.length; i++) {
            look(folders.get(i), acknowledged[i]);
        }
    }

    private void look(Path folder, int acknowledged) throws IOException {
        String step = Files.exists(folder.resolve(".bedwright-list")) ? "naming files" : "else";
        HeldFolder.of(folder).close();
        boolean isAfter = Arrays.equals(bytes(folder, PLAN), ready.get(PROPOSAL));
        boolean isBefore = Arrays.equals(bytes(folder, PLAN), ready.get(PLAN));
        boolean wasNew = Boolean.TRUE.equals(isNew.get(folder));
        boolean isExpected = isAfter == (wasNew ^ acknowledged % 2 == 1);
        if (!isAfter && !isBefore) {
            lost.add(folder + ": the plan is neither the former nor the new one");
        } else if (!Arrays.equals(bytes(folder, isAfter ? FORMER : PROPOSAL), ready.get(isAfter ? PLAN : PROPOSAL))) {
            lost.add(folder + ": what belongs beside the plan is lost");
        } else if (!Arrays.equals(bytes(folder, LOG), ready.get(LOG))) {
            lost.add(folder + ": the log is another");
        }
        try (Stream<Path> files = Files.list(folder)) {
            if (files.map(file -> file.getFileName().toString())
                    .anyMatch(name -> name.endsWith("-new") || name.endsWith("-former"))) {
                lost.add(folder + ": something is left over");
            }
        }
        found.merge(
                step + ", " + (isExpected ? "just what was acknowledged" : "one step more than was acknowledged"),
                1,
                Integer::sum);
        isNew.put(folder, isAfter);
    }

    private static byte[] bytes(Path folder, String name) throws IOException {
        Path file = folder.resolve(name);
        return Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
    }

    /** Accepts and goes back in some folders until it is killed, and says each step's folder once it is on the disk. */
    static final class Acceptor {
        private Acceptor() {}

        public static void main(String[] args) {
            for (int i = 0; i < args.length; i++) {
                int number = i;
                new Thread(() -> accept(PlanFolder.at(Path.of(args[number])), number)).start();
            }
        }

        private static void accept(PlanFolder plans, int number) {
            Path former = plans.folder().resolve(FORMER);
            try {
                for (; ; ) {
                    if (Files.exists(former)) {
                        Map<String, byte[]> back = new LinkedHashMap<>();
                        back.put(PROPOSAL, Files.readAllBytes(plans.plan()));
                        back.put(PLAN, Files.readAllBytes(former));
                        try (HeldFolder held = plans.hold()) {
                            held.save(back, List.of(FORMER));
                        }
                    } else {
                        new Proposal(plans).accept();
                    }
                    synchronized (Acceptor.class) {
                        System.out.write((number + "\n").getBytes(StandardCharsets.UTF_8));
                        System.out.flush();
                    }
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** Arguments: number of processes to kill, of folders in which each accepts, seed. */
    public static void main(String[] args) throws Exception {
        Path parent = Files.createTempDirectory("bedwright-accept-kills");
        AcceptKills kills;
        try {
            kills = run(parent, Integer.parseInt(args[0]), Integer.parseInt(args[1]), Long.parseLong(args[2]));
        } finally {
            try (Stream<Path> files = Files.walk(parent)) {
                files.sorted(Comparator.reverseOrder())
                        .forEach(file -> file.toFile().delete());
            }
        }
        kills.found().forEach((how, count) -> System.out.printf(Locale.ROOT, "%6d  %s%n", count, how));
        kills.lost().forEach(System.out::println);
        System.out.printf(
                Locale.ROOT,
                "%s kills of %s folders each, %d losses%n",
                args[0],
                args[1],
                kills.lost().size());
    }
}
