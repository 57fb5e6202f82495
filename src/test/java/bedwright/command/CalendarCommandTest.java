package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalendarCommandTest {
    @TempDir
    private Path temporary;

    private Path plan;

    @BeforeEach
    void makeAPlan() {
        plan = temporary.resolve("plan");
        assertThat(Ran.of("plan", "problems/first-bed.json", "--moves", 500, "--out", plan)
                        .code())
                .isZero();
    }

    @Test
    void oneForAllLiesBesideThePlan() {
        Ran ran = Ran.of("calendar", plan);

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains(plan.resolve("calendar.ics") + ": ").contains(" entries.");
        assertThat(plan.resolve("calendar.ics")).content().startsWith("BEGIN:VCALENDAR\r\n");
    }

    @Test
    void oneForEachBedLiesInAFolder() {
        Ran ran = Ran.of("calendar", plan, "--by", "bed");

        assertThat(ran.code()).isZero();
        assertThat(plan.resolve("calendar-by-bed").toFile().list())
                .containsExactlyInAnyOrder("fence-bed.ics", "open-bed.ics");
    }

    @Test
    void theCalendarOfABedThatIsNoMoreIsToldAndLeftAlone() throws IOException {
        Path folder = plan.resolve("calendar-by-bed");
        assertThat(Ran.of("calendar", plan, "--by", "bed").err()).isEmpty();
        Path old = Files.copy(folder.resolve("fence-bed.ics"), folder.resolve("old-bed.ics"));
        Files.writeString(folder.resolve("mine.ics"), "BEGIN:VCALENDAR\r\nPRODID:mine\r\nEND:VCALENDAR\r\n");

        Ran ran = Ran.of("calendar", plan, "--by", "bed");

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).contains("another name now", "old-bed.ics.").doesNotContain("mine.ics");
        assertThat(old).hasSameTextualContentAs(folder.resolve("fence-bed.ics"));
    }

    @Test
    void ofAPlanInAnotherFolderTheFormerCanBeNamed() throws IOException {
        Path other = temporary.resolve("other");
        Path season = temporary.resolve("fewer.json");
        String first = Files.readString(Path.of("problems/first-bed.json"));
        assertThat(first).contains("\"lots\": 5");
        Files.writeString(season, first.replace("\"lots\": 5", "\"lots\": 1"));
        Ran.of("plan", season, "--moves", 500, "--out", other);
        Ran.of("calendar", plan);

        Ran ran = Ran.of("calendar", other, "--after", plan.resolve("calendar.ics"));

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains(" cancelled, ").contains("Take it in over the former one.");
        assertThat(other.resolve("calendar.ics")).content().contains("SEQUENCE:1\r\n", "STATUS:CANCELLED");
    }

    @Test
    void toTheScreenGoesNothingButTheCalendar() throws IOException {
        Ran.of("calendar", plan);
        Ran ran = Ran.of("calendar", plan, "--out", "-");

        assertThat(ran.out()).isEqualTo(Files.readString(plan.resolve("calendar.ics")));
    }

    @Test
    void aFileOfSomebodyElseIsNotWrittenOver() throws IOException {
        Path file = plan.resolve("calendar.ics");
        Files.writeString(file, "BEGIN:VCALENDAR\r\nPRODID:mine\r\nEND:VCALENDAR\r\n");

        Ran ran = Ran.of("calendar", plan);

        assertThat(ran.code()).isEqualTo(Exit.FAULTY_FILE);
        assertThat(ran.err()).contains(file + ": ").contains("PRODID:mine").contains("Nothing was written.");
        assertThat(file).content().contains("PRODID:mine");
    }

    @Test
    void aFormerCalendarThatIsNotThereIsTold() {
        Ran ran = Ran.of("calendar", plan, "--after", temporary.resolve("none.ics"));

        assertThat(ran.code()).isEqualTo(Exit.FILE_TROUBLE);
        assertThat(ran.err()).contains("none.ics").contains("leave out --after");
    }

    @Test
    void severalCalendarsDoNotGoToTheScreen() {
        assertThat(Ran.of("calendar", plan, "--by", "job", "--out", "-").code()).isEqualTo(Exit.USAGE);
    }
}
