package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
    void withNotesWhatIsLeftIsJudgedOnTheDay() {
        String before = Ran.of("promise", folder, "--for", "5 Jul: 10 focal", "--on", "1 Jun")
                .out();
        Ran.of(
                "note", folder, "1", "lost", "all", "frost", "/", "2", "lost", "all", "/", "3", "lost", "all", "--on",
                "1 Jun", "--yes");

        Ran ran = Ran.of("promise", folder, "--for", "5 Jul: 10 focal");

        assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.DONE);
        assertThat(before).contains("As the season stands on 1 Jun 2027, by the plan, since nothing was noted.");
        assertThat(ran.out()).contains("As the season stands on 1 Jun 2027, by 3 notes.");
        assertThat(ran.out().lines().filter(line -> line.startsWith("focal")).toList())
                .isNotEqualTo(
                        before.lines().filter(line -> line.startsWith("focal")).toList());
    }

    @Test
    void withoutNotesTheDayChangesNothingOfWhatCanBePromised() {
        assertThat(Ran.of("promise", folder, "--for", "5 Jul: 10 focal", "--on", "1 Jun")
                        .out()
                        .lines()
                        .toList()
                        .subList(0, 6))
                .isEqualTo(Ran.of("promise", folder, "--for", "5 Jul: 10 focal")
                        .out()
                        .lines()
                        .toList()
                        .subList(0, 6));
    }

    @Test
    void whatIsAskedForIsHeldForThemUntilItLapses() {
        Ran asked = Ran.of(
                "promise", folder, "--for", "5 Jul: 15 focal", "--on", "1 Jun", "--ask", "Inn", "--until", "9 Jun");

        assertThat(asked.code()).as(asked.err()).isEqualTo(Exit.DONE);
        assertThat(folder.resolve("season.log"))
                .hasContent("2027-06-01 order-asked Inn until 2027-06-09 for 2027-07-05: 15 focal\n");
        assertThat(Ran.of("promise", folder, "--on", "9 Jun").out()).contains("Held as if promised: Note 1, ", "Inn");
        assertThat(Ran.of("promise", folder, "--on", "10 Jun").out()).doesNotContain("Inn");
    }

    @Test
    void whatCannotBeHeldIsNotNoted() {
        Ran ran = Ran.of(
                "promise", folder, "--for", "5 Jul: 15 focal", "--on", "1 Jun", "--ask", "Inn", "--until", "9 Jul");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("It can't be held: ", "Write a day between them");
        assertThat(folder.resolve("season.log")).doesNotExist();
    }

    @Test
    void anOrderForAWeekThatIsOverIsRefused() {
        assertThat(Ran.of("promise", folder, "--for", "1 Jun: 5 focal", "--on", "15 Jun")
                        .err())
                .contains("the week of 2027-06-01 is over on 2027-06-15");
    }

    @Test
    void plannedAgainWithItInFrontIsTold() {
        Ran ran = Ran.of("promise", folder, "--for", "5 Jul: 40 focal", "--on", "20 May", "--again", "0.2");

        assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.DONE);
        assertThat(ran.out())
                .contains("Planned again with it in front, it could be filled in ", "what the order itself pays");
    }

    @ParameterizedTest
    @CsvSource({"--again,1", "--ask,Inn", "--sow-from,1 Jun"})
    void whatGoesWithAnOrderNeedsOne(String option, String value) {
        assertThat(Ran.of("promise", folder, option, value).err()).contains(option + " goes with --for");
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
