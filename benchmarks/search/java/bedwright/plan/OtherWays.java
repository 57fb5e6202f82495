package bedwright.plan;

import java.io.BufferedReader;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Other ways to a plan than the search, each problem by each of them: parts of lots made whole and polished ({@link
 * Dive}), and the whole model given to an exact solver ({@link WholeModel}). Each runs in a process of its own, as one
 * that needs more memory than there is takes its process with it; adds a row each to {@code other-ways.csv}, also for one
 * that died or did not come back. {@link HowClose} shows them on its page, beside the search.
 *
 * <p>Arguments: {@code problems} (demo,demo-x4,demo-x16), {@code ways} (dive,sat,scip,highs), {@code dive} (seconds of the
 * dive, prices and all; 300), {@code prices} (of them for prices; 60), {@code exact} (seconds of each solver; 600), {@code patience} (seconds after
 * which one that does not come back is stopped; 300), {@code heap} (of each process; 8g), {@code beside} (what else the
 * machine does; nothing), {@code out} (a folder for results), {@code commit} (as git says).
 */
public final class OtherWays {
    /** How a line begins that says that all is built, and what follows counts. */
    static final String BEGINS = "Begins: ";

    private final BenchArgs given;
    private final Path folder;
    private final String commit;

    private OtherWays(BenchArgs given) {
        this.given = given;
        this.folder = folder(given);
        this.commit = commit(given);
    }

    public static void main(String[] args) throws IOException, InterruptedException {
        BenchArgs given = new BenchArgs(
                args, "problems", "ways", "dive", "prices", "exact", "patience", "heap", "beside", "out", "commit");
        OtherWays all = new OtherWays(given);
        Files.createDirectories(all.folder);
        System.out.println(DemoFarm.heading(all.commit));
        for (String problem : given.list("problems", "demo,demo-x4,demo-x16")) {
            for (String way : given.list("ways", "dive,sat,scip,highs")) {
                all.run(problem, OtherWay.Way.valueOf(way.toUpperCase(Locale.ROOT)));
            }
        }
    }

    private void run(String problem, OtherWay.Way way) throws IOException, InterruptedException {
        int seconds = way.isExact() ? given.number("exact", 600) : given.number("dive", 300);
        System.out.printf(Locale.ROOT, "%s by %s, %d s%n", problem, way.label(), seconds);
        Process process = new ProcessBuilder(command(problem, way, seconds))
                .redirectErrorStream(true)
                .start();
        Runtime.getRuntime().addShutdownHook(new Thread(process::destroyForcibly));
        Clock clock = new Clock();
        Thread reading = Thread.ofVirtual().start(() -> read(process, clock));
        boolean isStopped = false;
        while (!process.waitFor(1, TimeUnit.SECONDS)) {
            if (clock.seconds() > seconds + given.number("patience", 300)) {
                process.destroyForcibly();
                isStopped = true;
            }
        }
        reading.join();
        if (isStopped || process.exitValue() != 0) {
            String outcome = isStopped
                    ? "had not come back"
                    : clock.stage + ": the process died (exit code " + process.exitValue() + ")";
            keep(given, problem, way, seconds, clock.seconds(), null, outcome);
            System.out.println("  " + outcome);
        }
    }

    private List<String> command(String problem, OtherWay.Way way, int seconds) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + given.text("heap", "8g"),
                "-XX:+UseSerialGC"));
        ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
                .filter(argument -> argument.startsWith("-Dbench.") || argument.startsWith("--enable-native-access"))
                .forEach(command::add);
        command.addAll(List.of("-cp", System.getProperty("java.class.path")));
        if (way.isExact()) {
            command.addAll(List.of(WholeModel.class.getName(), "solver=" + way.name()));
        } else {
            command.addAll(
                    List.of(Dive.class.getName(), "prices=" + given.text("prices", "60"), "seeds=1", "usual=no"));
        }
        command.addAll(List.of(
                "problem=" + problem,
                "seconds=" + seconds,
                "keep=yes",
                "beside=" + given.text("beside", "nothing"),
                "out=" + folder,
                "commit=" + commit));
        return command;
    }

    private static void read(Process process, Clock clock) {
        try (BufferedReader lines = process.inputReader(StandardCharsets.UTF_8)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                System.out.println("  " + line);
                if (line.startsWith(BEGINS)) {
                    clock.begin();
                }
            }
        } catch (IOException e) {
            System.out.println("  " + e.getMessage());
        }
    }

    /** From when a way has all that it needs; before, building its model is not counted. */
    private static final class Clock {
        private volatile long began = -1;
        private volatile String stage = "while its model was built";

        private void begin() {
            began = System.nanoTime();
            stage = "while it was solved";
        }

        private double seconds() {
            return began < 0 ? 0 : (System.nanoTime() - began) / 1e9;
        }
    }

    /** The folder for results that the arguments name. */
    static Path folder(BenchArgs given) {
        return Path.of(given.text("out", "benchmarks/search/results"));
    }

    private static String commit(BenchArgs given) {
        String named = given.text("commit", "");
        return named.isEmpty() ? Commits.here() : named;
    }

    /**
     * Adds a row to the file.
     *
     * @param ended the plan that it came to, or null if there was none
     */
    static void keep(
            BenchArgs given,
            String problem,
            OtherWay.Way way,
            int seconds,
            double took,
            @Nullable Ended ended,
            String outcome) {
        OtherWayResults.at(folder(given).resolve(OtherWayResults.FILE))
                .add(new OtherWay(
                        problem,
                        way,
                        seconds,
                        took,
                        ended == null ? null : ended.money(),
                        ended == null ? null : ended.missing(),
                        ended == null ? null : ended.gap(),
                        outcome,
                        given.text("beside", "nothing"),
                        LocalDate.now(ZoneId.systemDefault()),
                        commit(given),
                        SearchSetting.here()));
    }
}
