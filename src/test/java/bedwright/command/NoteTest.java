package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.PlanFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NoteTest {
    private static final Path FIRST = Path.of("problems/first-bed.json");

    @TempDir
    private Path folder;

    private LocalDate day;

    @BeforeEach
    void plan() {
        Ran.of("plan", FIRST, "--moves", 500, "--out", folder);
        day = PlanFile.read(folder.resolve("plan.json")).season().starts().plusDays(30);
    }

    @Test
    void aNoteIsWrittenBesideThePlanOnItsDay() {
        Ran ran = Ran.of("note", folder, "1", "lost", "half", "wind", "--on", day, "--yes");

        assertThat(ran.out()).contains("Note 1, " + day + ": planting 1 (", "lost 50 % of what stood to wind.");
        assertThat(folder.resolve("season.log")).hasContent(day + " 1 lost half wind\n");
    }

    @Test
    void aBadNoteLeavesTheLogAsItWas() {
        Ran.of("note", folder, "1", "up", "--on", day, "--yes");

        Ran ran = Ran.of("note", folder, "1", "wilted", "--on", day, "--yes");

        assertThat(ran.code()).isEqualTo(Exit.FAULTY_FILE);
        assertThat(folder.resolve("season.log")).hasContent(day + " 1 up\n");
    }

    @Test
    void aPlanIsNotReplacedUnderItsNotes() throws Exception {
        Ran.of("note", folder, "1", "up", "--on", day, "--yes");
        byte[] before = Files.readAllBytes(folder.resolve("plan.json"));

        Ran ran = Ran.of("plan", FIRST, "--moves", 500, "--seed", 2, "--out", folder);

        assertThat(ran.err()).contains("Notes were made of the plan");
        assertThat(folder.resolve("plan.json")).hasBinaryContent(before);
    }

    @Test
    void theHelpShowsTheWholeGrammar() {
        assertThat(Ran.of("note", "--help").out()).contains("14 stands 80% ", "take-back 3", "40, 1/3, 30%, half, all");
    }
}
