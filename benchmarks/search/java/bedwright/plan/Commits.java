package bedwright.plan;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The commit that is measured, as the results name it. */
final class Commits {
    static final String UNKNOWN = "not named";
    /** Behind a commit when the files that decide about a result differ from it. */
    static final String CHANGED = "+changes";

    private static final List<String> DECIDING = List.of("src/main", "problems", "benchmarks/search/java", "pom.xml");

    private Commits() {}

    /** Whether the name says exactly what was measured, so that a row of it need not be measured again. */
    static boolean isExact(String commit) {
        return !commit.equals(UNKNOWN) && !commit.endsWith(CHANGED);
    }

    /** The commit that the folder's files are of, by git; {@value #UNKNOWN} where git does not tell. */
    static String here() {
        String head = git("rev-parse", "--short=7", "HEAD");
        if (head == null || head.isEmpty()) {
            return UNKNOWN;
        }
        List<String> status = new ArrayList<>(List.of("status", "--porcelain", "--"));
        status.addAll(DECIDING);
        String changes = git(status.toArray(String[]::new));
        return changes == null || changes.isEmpty() ? head : head + CHANGED;
    }

    private static @Nullable String git(String... args) {
        List<String> command = new ArrayList<>(List.of("git"));
        command.addAll(Arrays.asList(args));
        try {
            Process process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return process.waitFor() == 0 ? out.strip() : null;
        } catch (IOException e) {
            return null;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return null;
        }
    }
}
