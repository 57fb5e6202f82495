package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SofarTest {
    @TempDir
    private Path folder;

    private void planned() {
        assertThat(Ran.of("plan", "problems/first-bed.json", "--moves", "2000", "--out", folder.toString())
                        .code())
                .isEqualTo(Exit.DONE);
    }

    @Test
    void allIsAsPlannedWhereNothingWasNoted() {
        planned();

        assertThat(Ran.of("sofar", folder.toString(), "--on", "2027-06-20").out())
                .contains("All is as planned");
    }

    @Test
    void aLossIsToldWithTheStemsThatItCosts() {
        planned();
        Ran.of("note", folder.toString(), "1", "lost", "half", "wind", "--on", "2027-06-10", "--yes");

        assertThat(Ran.of("sofar", folder.toString(), "--on", "2027-06-20").out())
                .containsPattern("1 \\(.*\\): .*fewer to come");
    }

    @Test
    void ordersThatAreNewOrUndecidedAreTold() {
        planned();
        Ran.of(
                "note",
                folder,
                "order-new Inn for 28 Jun 2027: 9 focal",
                "/",
                "order-asked Hotel until 22 Jun for 5 Jul: 5 filler",
                "--on",
                "1 Jun",
                "--yes");

        assertThat(Ran.of("sofar", folder, "--on", "20 Jun").out())
                .containsPattern("Inn +9 ")
                .contains("Asked for and undecided: Note 2, 2027-06-01: \"Hotel\" asked for");
        assertThat(Ran.of("sofar", folder, "--on", "23 Jun").out()).doesNotContain("Hotel");
    }

    @Test
    void aDayOutsideTheSeasonIsRefused() {
        planned();

        assertThat(Ran.of("sofar", folder.toString(), "--on", "2031-06-20").code())
                .isEqualTo(Exit.USAGE);
    }
}
