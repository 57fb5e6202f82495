package bedwright.command;

import bedwright.file.HeldFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
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
    /** How often a folder went back to the former plan: with it every step is told from the one before the last. */
    private static final String BACK = "back.txt";

    private final Path said;
    private final Map<String, byte[]> ready;
    private final List<Path> folders = new ArrayList<>();
    private final Random random;
    /** Steps that each folder has seen: acceptances, and goings back. */
    private final Map<Path, Integer> steps = new HashMap<>();

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
            Files.writeString(folder.resolve(BACK), "0");
            steps.put(folder, 0);
        }
    }

    /**
     * @param parent an empty folder
     * @param kills how many processes are killed
     * @param folders in how many folders each of them accepts at once
     */
    static Killed run(Path parent, int kills, int folders, long seed) throws Exception {
        AcceptKills all = new AcceptKills(parent, folders, seed);
        for (int i = 0; i < kills; i++) {
            all.kill();
            if ((i + 1) % TOLD == 0) {
                System.err.printf(Locale.ROOT, "%d killed, %d losses%n", i + 1, all.lost.size());
            }
        }
        return new Killed(all.lost, all.found);
    }

    private void kill() throws Exception {
        List<String> line = new ArrayList<>(List.of("-Xmx256m", Acceptor.class.getName()));
        folders.forEach(folder -> line.add(folder.toString()));
        List<String> told = Killed.after(random.nextInt(SOON), said, line);
        int[] acknowledged = new int[folders.size()];
        told.forEach(number -> acknowledged[Integer.parseInt(number)]++);
        for (int i = 0; i < acknowledged.length; i++) {
            look(folders.get(i), acknowledged[i]);
        }
    }

    private void look(Path folder, int acknowledged) throws IOException {
        String step = Files.exists(folder.resolve(".bedwright-list")) ? "naming files" : "else";
        HeldFolder.of(folder).close();
        boolean isAfter = Arrays.equals(bytes(folder, PLAN), ready.get(PROPOSAL));
        boolean isBefore = Arrays.equals(bytes(folder, PLAN), ready.get(PLAN));
        int seen = 2 * Integer.parseInt(Files.readString(folder.resolve(BACK))) + (isAfter ? 1 : 0);
        int more = seen - steps.getOrDefault(folder, 0) - acknowledged;
        if (!isAfter && !isBefore) {
            lost.add(folder + ": the plan is neither the former nor the new one");
        } else if (!Arrays.equals(bytes(folder, isAfter ? FORMER : PROPOSAL), ready.get(isAfter ? PLAN : PROPOSAL))) {
            lost.add(folder + ": what belongs beside the plan is lost");
        } else if (!Arrays.equals(bytes(folder, LOG), ready.get(LOG))) {
            lost.add(folder + ": the log is another");
        } else if (more < 0 || more > 1) {
            lost.add(
                    folder + ": " + acknowledged + " steps were acknowledged, " + (acknowledged + more) + " are there");
        }
        try (Stream<Path> files = Files.list(folder)) {
            if (files.map(file -> file.getFileName().toString())
                    .anyMatch(name -> name.endsWith("-new") || name.endsWith("-former"))) {
                lost.add(folder + ": something is left over");
            }
        }
        found.merge(
                step + ", " + (more == 0 ? "just what was acknowledged" : "one step more than was acknowledged"),
                1,
                Integer::sum);
        steps.put(folder, seen);
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
                        Path count = plans.folder().resolve(BACK);
                        back.put(
                                BACK,
                                Integer.toString(1 + Integer.parseInt(Files.readString(count)))
                                        .getBytes(StandardCharsets.UTF_8));
                        try (HeldFolder held = plans.hold()) {
                            held.save(back, List.of(FORMER));
                        }
                    } else {
                        new Proposal(plans).accept();
                    }
                    Killed.say(Integer.toString(number));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** Arguments: number of processes to kill, of folders in which each accepts, seed. */
    public static void main(String[] args) throws Exception {
        Killed.print(
                parent -> run(parent, Integer.parseInt(args[0]), Integer.parseInt(args[1]), Long.parseLong(args[2])),
                args[0] + " kills of " + args[1] + " folders each");
    }
}
