package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PromiseTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void plan() {
        Ran.of("plan", Path.of("problems/first-bed.json"), "--moves", 2000, "--out", folder);
    }

    @Test
    void anOrderIsAnsweredInYearsOfTenWithWhatItTakesFromOthers() {
        Ran ran = Ran.of("promise", folder, "--for", "12 Jul: 10 focal, 5 filler");

        assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.DONE);
        assertThat(ran.out())
                .contains("All of it at once can be filled in ", "10 focal, 5 filler", "256 possible seasons");
    }

    @Test
    void whatIsFreeIsListedByWeek() {
        Ran ran = Ran.of("promise", folder);

        assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.DONE);
        assertThat(ran.out()).contains("in at least 9, 8 and 5 years of 10", "week of", "focal", "filler");
    }

    @Test
    void theSameIsToldToPrograms() {
        Ran ran = Ran.of("promise", folder, "--for", "12 Jul: 10 focal", "--format", "json");

        assertThat(ran.out()).contains("\"version\": 1", "\"filled\": ", "\"kind\": \"focal\"", "\"9 years of 10\"");
    }

    @Test
    void theSameQuestionHasTheSameAnswer() {
        assertThat(Ran.of("promise", folder).out())
                .isEqualTo(Ran.of("promise", folder).out());
    }

    @Test
    void whatWouldFillAnOrderIsToldWhereThereIsTime() {
        Ran ran = Ran.of("promise", folder, "--for", "12 Jul: 4000 focal", "--sow-from", "10 May");

        assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.DONE);
        assertThat(ran.out())
                .containsAnyOf("Planted besides, each by itself", "No planting more that the plan has room for");
    }

    @Test
    void anOrderThatIsNotUnderstoodIsWrongUsage() {
        Ran ran = Ran.of("promise", folder, "--for", "12 Jul: 10 roses");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("There is no kind \"roses\"");
    }

    @Test
    void seasonsGivenOutrightAreJudgedOverAndThatIsSaid() {
        Path farmers = folder.resolve("farmers");
        Ran.of("plan", Path.of("problems/farmers-problem.json"), "--moves", 500, "--out", farmers);

        assertThat(Ran.of("promise", farmers).out()).contains("Judged over the 3 seasons that the season file gives");
    }

    @Test
    void yearsAreRoundedDown() {
        assertThat(java.util.stream.DoubleStream.of(1, 0.999, 0.9, 0.15, 0.05, 0)
                        .mapToObj(PromiseWords::years))
                .containsExactly(
                        "every year",
                        "9 years of 10",
                        "9 years of 10",
                        "1 year of 10",
                        "less than 1 year of 10",
                        "no year");
    }
}
