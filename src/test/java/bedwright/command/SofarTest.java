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

    @Test
    void whatNotedWeatherHasMostLikelyTakenIsToldUntilItIsCounted() {
        planned();
        Ran.of("note", folder, "weather min -3 max 30 gust 40 west", "--on", "2027-07-04", "--yes");
        String told = "has most likely taken";

        assertThat(Ran.of("sofar", folder, "--on", "2027-07-05").out())
                .contains(told)
                .containsPattern("  4 \\(.*\\): all, frost: -3 °C on 4 Jul 2027\n")
                .containsPattern("until a count settles it: .* note .* \\d+ stands \\d+");
        for (int number = 1; number <= 6; number++) {
            Ran.of("note", folder, number, "stands", "40%", "--on", "2027-07-05", "--yes");
        }
        assertThat(Ran.of("sofar", folder, "--on", "2027-07-05").out()).doesNotContain(told);
    }

    @Test
    void ofAGustItsShareIsTold() {
        planned();
        Ran.of("note", folder, "weather gust 60 west", "--on", "2027-07-04", "--yes");

        assertThat(Ran.of("sofar", folder, "--on", "2027-07-05").out())
                .containsPattern("\\d+ %, wind: 60 m/s on 4 Jul 2027\n");
    }

    @Test
    void aPlantingThatANotedFrostHasMostLikelyKilledIsSaidToBeLikelyLost() {
        planned();
        Ran.of("note", folder, "weather min -3 max 30", "--on", "2027-07-04", "--yes");

        assertThat(Ran.of("sofar", folder, "--on", "2027-07-05").out().lines())
                .filteredOn(line -> line.startsWith("   4  "))
                .singleElement()
                .asString()
                .containsPattern(" likely lost +\\d+ ~0 % .* 0$");
    }

    @Test
    void oneThatWasCountedSinceIsNot() {
        planned();
        Ran.of("note", folder, "weather min -3 max 30", "--on", "2027-07-04", "--yes");
        Ran.of("note", folder, "4 stands 40%", "--on", "2027-07-05", "--yes");

        assertThat(Ran.of("sofar", folder, "--on", "2027-07-05").out().lines())
                .filteredOn(line -> line.startsWith("   4  "))
                .singleElement()
                .asString()
                .contains(" 40 % ")
                .doesNotContain("likely lost");
    }
}
