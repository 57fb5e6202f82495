package bedwright.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * What came of killing processes.
 *
 * @param lost what was lost or left over, a line each; nothing if all is well
 * @param found how often it was found how
 */
record Killed(List<String> lost, Map<String, Integer> found) {
    /** Kills processes in an empty folder. */
    interface InAFolder {
        Killed run(Path parent) throws Exception;
    }

    /** Kills in a folder that is removed at the end, and prints what came of it with how much was killed. */
    static void print(InAFolder kills, String what) throws Exception {
        Path parent = Files.createTempDirectory("bedwright-kills");
        Killed killed;
        try {
            killed = kills.run(parent);
        } finally {
            try (Stream<Path> files = Files.walk(parent)) {
                files.sorted(Comparator.reverseOrder())
                        .forEach(file -> file.toFile().delete());
            }
        }
        killed.found().forEach((how, count) -> System.out.printf(Locale.ROOT, "%6d  %s%n", count, how));
        killed.lost().forEach(System.out::println);
        System.out.printf(Locale.ROOT, "%s, %d losses%n", what, killed.lost().size());
    }

    /**
     * Starts a process that says a line for each thing it has done, and kills it some milliseconds after its first line.
     *
     * @param said the file that it says them in
     * @return the lines that it said whole
     */
    static List<String> after(int millis, Path said, List<String> arguments) throws Exception {
        Process process = Kills.java(arguments.toArray(String[]::new))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .redirectOutput(said.toFile())
                .start();
        while (Files.size(said) == 0 && process.isAlive()) {
            process.waitFor(2, TimeUnit.MILLISECONDS);
        }
        process.waitFor(millis, TimeUnit.MILLISECONDS);
        process.destroyForcibly().waitFor();
        String text = Files.readString(said);
        return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
    }

    /** Says a whole line, whatever other threads of the process say. */
    static void say(String line) throws IOException {
        synchronized (Killed.class) {
            System.out.write((line + "\n").getBytes(StandardCharsets.UTF_8));
            System.out.flush();
        }
    }
}
