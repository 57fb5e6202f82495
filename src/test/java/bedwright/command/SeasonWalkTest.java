package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The README's walk through a season under way, as it stands there, but for the folder that it writes into. */
class SeasonWalkTest {
    private static final String PLAN = "plans/first-bed";

    @TempDir
    private Path folder;

    private static List<String> walk() throws IOException {
        List<String> commands = new ArrayList<>();
        boolean isWalk = false;
        for (String line : Files.readAllLines(Path.of("README.md"))) {
            if (line.startsWith("## ")) {
                isWalk = line.equals("## While the season runs");
            }
            if (isWalk && line.startsWith("target/bedwright ")) {
                commands.add(line.substring("target/bedwright ".length()));
            }
        }
        return commands;
    }

    @Test
    void endsWithANewPlanInForceAndTheFormerKept() throws IOException {
        List<String> commands = walk();
        assertThat(commands).hasSizeGreaterThanOrEqualTo(4);

        for (String command : commands) {
            String here =
                    command.contains(PLAN) ? command.replace(PLAN, folder.toString()) : command + " --out " + folder;
            Ran ran = Ran.of((Object[]) here.split(" "));
            assertThat(ran.code()).as("%s%n%s", command, ran.err()).isEqualTo(Exit.DONE);
        }

        assertThat(folder.resolve("plan-1.json")).exists();
    }
}
