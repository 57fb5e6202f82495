package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WhyTest {
    @TempDir
    private static Path folder;

    @BeforeAll
    static void plan() {
        Ran.of("plan", "problems/first-bed.json", "--moves", 500, "--out", folder);
    }

    @Test
    void aPlantingIsToldWithWhatItGivesCostsAndCouldBeInstead() {
        Ran ran = Ran.of("why", folder, 2);

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .startsWith("No. 2, ")
                .contains("What it gives", "To whom", "What it brings and costs", "What threatens it")
                .contains("What it presses on", "a week later", "left out");
    }

    @Test
    void aNumberThatThePlanLacksIsWrongUsage() {
        Ran ran = Ran.of("why", folder, 999);

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("no planting No. 999", "numbers 1 to ");
    }

    @Test
    void programsGetAVersion() {
        assertThat(Ran.of("why", folder, 2, "--format", "json").out())
                .contains("\"version\": 1", "\"withoutIt\"", "\"instead\"");
    }

    @Test
    void aWeekIsToldWithWhoAsksAndWhatGives() {
        Ran ran = Ran.of("why", folder, "--week", "2027-07-05", "--kind", "focal");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("focal, week of ").contains("Who asks for them then", "What gives focal");
    }

    @Test
    void whatIsNotThereIsTriedByEachMethod() {
        Ran ran = Ran.of("why", folder, "--not", "dill", "--bed", "Open bed", "--week", "2027-05-17");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("One more lot of dill in bed Open bed").contains("Can be done");
    }

    @Test
    void halfAQuestionIsWrongUsage() {
        Ran ran = Ran.of("why", folder, "--week", "2027-07-05");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("--week and --kind");
    }

    @Test
    void anUnknownKindIsToldWithThoseThereAre() {
        Ran ran = Ran.of("why", folder, "--week", "2027-07-05", "--kind", "purple");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("No kind is named \"purple\"", "\"focal\"");
    }
}
