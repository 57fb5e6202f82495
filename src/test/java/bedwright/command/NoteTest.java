package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.PlanFile;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
        assertThat(Ran.of("note", "--help").out())
                .contains("14 stands 80% ", "take-back 3", "40, 1/3, 30%, half, all", "order-asked", "stock-gone");
    }

    /** Runs a command with somebody typing, or another program writing, on standard input. */
    private static synchronized Ran typing(String input, Object... args) {
        InputStream before = System.in;
        System.setIn(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
        try {
            return Ran.of(args);
        } finally {
            System.setIn(before);
        }
    }

    private Path log() {
        return folder.resolve("season.log");
    }

    @ParameterizedTest
    @ValueSource(strings = {"y\n", "Y\n", " y \n"})
    void aNoteIsWrittenOnceItIsConfirmed(String answer) {
        Ran ran = typing(answer, "note", folder, "1", "up", "--on", day);

        assertThat(ran.out()).contains(" is up.", "Write it down? (y/n)", "Written to");
        assertThat(log()).hasContent(day + " 1 up\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"n\n", "\n", "", "perhaps\n"})
    void aNoteThatIsNotConfirmedIsNotWritten(String answer) {
        Ran ran = typing(answer, "note", folder, "1", "up", "--on", day);

        assertThat(ran.code()).isEqualTo(Exit.DONE);
        assertThat(ran.out()).contains("Nothing was written.");
        assertThat(log()).doesNotExist();
    }

    @Test
    void notesOnStandardInputAreWrittenTogether() {
        String lines = day + " 1 up\n\n" + day + " say the gate was open\n2 up\n";
        Ran ran = typing(lines, "note", folder, "--on", day, "--yes");

        assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.DONE);
        assertThat(log()).hasContent(day + " 1 up\n\n" + day + " say the gate was open\n" + day + " 2 up\n");
    }

    @Test
    void notesOnStandardInputAreOnlyShownWithoutYes() {
        Ran ran = typing("1 up\n", "note", folder, "--on", day);

        assertThat(ran.out()).contains(" is up.", "Nothing is written yet", "--yes");
        assertThat(log()).doesNotExist();
    }

    @Test
    void ofSeveralNotesNoneIsWrittenWhereOneIsBad() {
        Ran ran = typing("1 up\n2 wilted\n", "note", folder, "--on", day, "--yes");

        assertThat(ran.code()).isEqualTo(Exit.FAULTY_FILE);
        assertThat(ran.err()).contains("standard input:2:", "\"wilted\" is not understood", "Nothing was written.");
        assertThat(log()).doesNotExist();
    }

    @Test
    void severalNotesOfOneCallStandBetweenSlashes() {
        Ran.of("note", folder, "1", "up", "/", "2", "lost", "1/3", "--on", day, "--yes");

        assertThat(log()).hasContent(day + " 1 up\n" + day + " 2 lost 1/3\n");
    }

    @Test
    void theListSaysWhatWasNotedAndWhatNoLongerCounts() {
        Ran.of("note", folder, "1", "up", "/", "take-back", "1", "--on", day, "--yes");
        String before = Ran.of("note", folder, "--list").out();

        assertThat(before).containsPattern("Note 1, .* is up\\. \\(taken back\\)\\R");
        assertThat(before).containsPattern("Note 2, .*note 1 no longer counts\\.\\R");
    }

    @Test
    void aListOfNoNotesSaysSo() {
        assertThat(Ran.of("note", folder, "--list").out()).contains("No notes: all was done as planned.");
    }

    @Test
    void aLineThatWasCutOffIsToldAndLost() throws Exception {
        Files.writeString(log(), day + " 1 up\n" + day + " 2 lo");

        Ran ran = Ran.of("note", folder, "--list");

        assertThat(ran.err()).contains("season.log:2:1: This line was cut off", day + " 2 lo", "Note it again");
        assertThat(ran.out()).contains("Note 1").doesNotContain("Note 2");
    }

    @Test
    void aDayNeedsNoYear() {
        Ran ran = Ran.of("note", folder, "9-Jun 1 up", "--yes");

        assertThat(ran.out()).contains("Note 1, 2027-06-09: ");
    }

    @Test
    void withoutADayTodaysIsMeantAndHasToLieInTheSeason() {
        Ran ran = Ran.of("note", folder, "1", "up", "--yes");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("is outside the season", "--on");
    }

    @Test
    void aStationsRecordIsNotedDayByDayAndNotTwice() throws Exception {
        Path station = folder.resolve("station.csv");
        Files.writeString(station, "date,min (°C),max (°C)\n2027-05-09,1,9\n2027-05-10,2,11\n2027-05-11,3.44,12\n");
        Ran ran = Ran.of("note", folder, "--weather", station, "--yes");

        assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.DONE);
        assertThat(log()).hasContent("2027-05-10 weather min 2.0 max 11.0\n2027-05-11 weather min 3.4 max 12.0\n");
        assertThat(Ran.of("note", folder, "--weather", station, "--yes").err()).contains("It has no day of the season");
    }
}
