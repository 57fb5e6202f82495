package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.HeldFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Commands that accept a new plan, killed at random moments. */
class AcceptKilledTest {
    private static final List<String> NAMES =
            List.of("plan.json", "season.html", "plantings.csv", "stems.svg", "season.log", "proposal.json");

    @TempDir
    private Path temporary;

    @Test
    void thePlanIsTheFormerOrTheNewOneAndNothingIsLost() throws Exception {
        assertThat(kills(3, 7)).isEqualTo(3);
    }

    /** A thousand are killed by the benchmark {@link AcceptKills}. */
    @Test
    void whatWasAcknowledgedAsAcceptedStands() throws Exception {
        Killed kills = AcceptKills.run(temporary, 1, 3, 8);

        assertThat(kills.lost()).isEmpty();
        assertThat(kills.found().values().stream().mapToInt(Integer::intValue).sum())
                .isEqualTo(3);
    }

    /** How many were killed, or had ended before. */
    private int kills(int count, long seed) throws Exception {
        Path ready = temporary.resolve("ready");
        Ran.of("plan", "problems/tray-and-bed.json", "--seasons", 3, "--moves", 30, "--out", ready);
        Ran.of("note", ready, "1", "lost", "all", "wind", "--on", "2027-05-08", "--yes");
        Ran.of("replan", ready, "--on", "2027-05-10", "--moves", 1000);
        byte[] former = Files.readAllBytes(ready.resolve("plan.json"));
        byte[] proposed = Files.readAllBytes(ready.resolve("proposal.json"));
        byte[] log = Files.readAllBytes(ready.resolve("season.log"));
        Random random = new Random(seed);
        long whole = 0;
        int killed = 0;
        for (int i = 0; i <= count; i++) {
            Path folder = Files.createDirectories(temporary.resolve("folder" + i));
            for (String name : NAMES) {
                Files.copy(ready.resolve(name), folder.resolve(name));
            }
            Path said = temporary.resolve("said" + i);
            long start = System.nanoTime();
            Process process = accepting(folder, said);
            if (i == 0) {
                process.waitFor();
                whole = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
            } else {
                process.waitFor(whole / 2 + random.nextLong(whole), TimeUnit.MILLISECONDS);
                process.destroyForcibly().waitFor();
                killed++;
            }
            HeldFolder.of(folder).close();
            byte[] plan = Files.readAllBytes(folder.resolve("plan.json"));
            boolean isNew = Arrays.equals(plan, proposed);
            boolean isAcknowledged =
                    Files.readString(said, StandardCharsets.UTF_8).contains("is in force");

            assertThat(isNew || Arrays.equals(plan, former)).isTrue();
            assertThat(isNew || !isAcknowledged).isTrue();
            assertThat(Files.readAllBytes(folder.resolve("season.log"))).isEqualTo(log);
            assertThat(Files.readAllBytes(folder.resolve(isNew ? "plan-1.json" : "proposal.json")))
                    .isEqualTo(isNew ? former : proposed);
            try (Stream<Path> files = Files.list(folder)) {
                assertThat(files.map(file -> file.getFileName().toString()))
                        .noneMatch(name -> name.endsWith("-new") || name.endsWith("-former"));
            }
        }
        return killed;
    }

    private static Process accepting(Path folder, Path said) throws IOException {
        String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Xmx256m",
                        "-cp",
                        String.valueOf(classes),
                        Main.class.getName(),
                        "replan",
                        folder.toString(),
                        "--accept")
                .redirectOutput(said.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
