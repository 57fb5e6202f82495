package bedwright.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.HeldFolder;
import bedwright.file.PlanFile;
import bedwright.season.KeptPlanting;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the commands read and write, on a season small enough to be planned in no time. */
class FilesTest {
    private static final Path FIRST = Path.of("problems/first-bed.json");

    @TempDir
    private Path temporary;

    private Path folder;

    @BeforeEach
    void nameAFolder() {
        folder = temporary.resolve("plans/first");
    }

    private Ran plan() {
        return Ran.of("plan", FIRST, "--moves", 500, "--out", folder);
    }

    @Test
    void aPlanIsWrittenWithItsSheetAndTable() {
        Ran ran = plan();

        assertThat(ran.code()).isZero();
        assertThat(folder.toFile().list())
                .containsExactlyInAnyOrder("plan.json", "season.html", "plantings.csv", "stems.svg");
        assertThat(ran.out()).contains(folder.resolve("season.html").toString());
    }

    @Test
    void asJsonNothingButThePlanGoesToStandardOutput() throws IOException {
        Ran ran = Ran.of("plan", FIRST, "--moves", 500, "--out", folder, "--format", "json");

        assertThat(ran.out().getBytes(UTF_8)).isEqualTo(Files.readAllBytes(folder.resolve("plan.json")));
    }

    @Test
    void movesAndSeedDecideThePlan() throws IOException {
        Path again = temporary.resolve("again");
        plan();
        Ran.of("plan", FIRST, "--moves", 500, "--out", again);

        assertThat(again.resolve("plan.json")).hasSameBinaryContentAs(folder.resolve("plan.json"));
    }

    @Test
    void aPlanBegunFromAnotherIsNoWorse() {
        plan();
        Path further = temporary.resolve("further");
        Ran ran = Ran.of("plan", FIRST, "--moves", 1, "--from", folder, "--out", further);

        assertThat(ran.code()).isZero();
        assertThat(PlanFile.read(further.resolve("plan.json")).score().soft())
                .isGreaterThanOrEqualTo(
                        PlanFile.read(folder.resolve("plan.json")).score().soft());
    }

    @Test
    void aPlanOfAnotherSeasonIsNothingToBeginFrom() {
        plan();
        Ran ran = Ran.of(
                "plan",
                "problems/tray-and-bed.json",
                "--moves",
                1,
                "--from",
                folder,
                "--out",
                temporary.resolve("other"));

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .contains("another season file, \"First bed (invented)\", not for \"Tray and bed (invented)\"")
                .contains("weeks: 22 in the season file, 10 in the plan")
                .contains("site, latitude: 40.8 in the season file, 34 in the plan", " more.")
                .contains("plan without --from");
        assertThat(temporary.resolve("other")).doesNotExist();
    }

    @Test
    void whatDiffersFromAnOlderSeasonFileIsToldAndThePlanIsBegunWith() throws IOException {
        plan();
        Path changed = temporary.resolve("first-bed.json");
        Files.writeString(
                changed,
                Files.readString(FIRST)
                        .replace("\"bench\": 150", "\"bench\": 140")
                        .replace("\"metres\": 6", "\"metres\": 7"));
        Ran ran = Ran.of("plan", changed, "--moves", 1, "--from", folder, "--out", temporary.resolve("further"));

        assertThat(ran.code()).isZero();
        assertThat(ran.err().lines())
                .contains(
                        folder.resolve("plan.json")
                                + ": This plan was made for an older state of this season file. What differs:",
                        "  stock, bench: 140 in the season file, 150 in the plan",
                        "  stock, nets \"Net\", metres: 7 in the season file, 6 in the plan")
                .anyMatch(line -> line.startsWith("Every planting of it has its place here too"));
    }

    @Test
    void ofAPlanOfTheSameSeasonFileNothingIsSaid() {
        plan();
        Ran ran = Ran.of(
                "plan", FIRST, "--moves", 1, "--from", folder, "--caution", "bold", "--out", temporary.resolve("bold"));

        assertThat(ran.err()).doesNotContain("differs");
    }

    @Test
    void theSheetIsDrawnAnewToTheSameBytes() throws IOException {
        plan();
        byte[] sheet = Files.readAllBytes(folder.resolve("season.html"));
        byte[] table = Files.readAllBytes(folder.resolve("plantings.csv"));
        Files.delete(folder.resolve("season.html"));
        Files.delete(folder.resolve("plantings.csv"));
        Ran ran = Ran.of("sheet", folder);

        assertThat(ran.code()).isZero();
        assertThat(folder.resolve("season.html")).hasBinaryContent(sheet);
        assertThat(folder.resolve("plantings.csv")).hasBinaryContent(table);
    }

    @Test
    void theSheetTakesThePlanItselfToo() {
        plan();

        assertThat(Ran.of("sheet", folder.resolve("plan.json")).code()).isZero();
    }

    @Test
    void aPlanWhoseScoreWasChangedByHandIsRefused() throws IOException {
        plan();
        Path file = folder.resolve("plan.json");
        long soft = PlanFile.read(file).score().soft();
        Files.writeString(file, Files.readString(file).replace("\"soft\": " + soft, "\"soft\": " + (soft + 1)));
        Ran ran = Ran.of("sheet", folder);

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("plan.json").contains("changed by hand").contains("Make it anew");
    }

    @Test
    void aPlanWithAPlantingMovedByHandIsRefused() throws IOException {
        plan();
        Path file = folder.resolve("plan.json");
        KeptPlanting planting = PlanFile.read(file).plantings().getFirst();
        String other = planting.bed().equals("Open bed") ? "Fence bed" : "Open bed";
        String text = Files.readString(file);
        int at = text.indexOf("\"bed\": \"" + planting.bed() + "\"", text.indexOf("\"plantings\""));
        int bed = at + "\"bed\": \"".length();
        Files.writeString(
                file,
                text.substring(0, bed)
                        + other
                        + text.substring(bed + planting.bed().length()));
        Ran ran = Ran.of("sheet", folder);

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("plan.json").contains("anew").doesNotContain("Exception");
    }

    @Test
    void everyFaultIsToldWithItsPlaceAndNothingIsWritten() throws IOException {
        Path faulty = temporary.resolve("faulty.json");
        Files.writeString(
                faulty,
                Files.readString(FIRST)
                        .replace("\"weeks\": 10", "\"weeks\": \"ten\"")
                        .replace("\"bench\": 150", "\"bench\": -1"));
        Ran ran = Ran.of("plan", faulty, "--moves", 1, "--out", folder);

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().lines().filter(line -> line.matches("\\Q" + faulty + "\\E:\\d+:\\d+: .*")))
                .hasSize(2);
        assertThat(folder).doesNotExist();
    }

    @Test
    void aFaultIsToldByCheckAtItsLineAndColumn() throws IOException {
        Path faulty = Files.writeString(temporary.resolve("faulty.json"), "{\n  \"weeks\": \"ten\"\n}\n");

        assertThat(Ran.of("check", faulty).err()).contains(faulty + ":2:12: ");
    }

    @Test
    void checkSaysWhatAFileHolds() {
        assertThat(Ran.of("check", FIRST).out())
                .contains("no fault")
                .contains("10 weeks from 2027-05-10; 2 beds, 24 m; 4 crops with 6 methods; 13 lots")
                .contains("3 outlets, 1 order.");
    }

    @Test
    void aMissingFileIsToldByItsName() {
        for (String command : new String[] {"plan", "check", "sheet"}) {
            Ran ran = Ran.of(command, temporary.resolve("missing"));

            assertThat(ran.code()).isEqualTo(4);
            assertThat(ran.err()).contains(temporary.resolve("missing").toString());
        }
    }

    @Test
    void whereNoFolderCanBeItIsSaidBeforeTheSearch() throws IOException {
        Path file = Files.createFile(temporary.resolve("file"));
        Ran ran = Ran.of("plan", FIRST, "--time", 600, "--out", file.resolve("below"));

        assertThat(ran.code()).isEqualTo(4);
        assertThat(ran.err()).contains("is a file").contains("--out");
    }

    @Test
    void whereAnotherCommandIsAtWorkItIsSaidBeforeTheSearch() {
        try (HeldFolder other = HeldFolder.of(folder)) {
            Ran ran = Ran.of("plan", FIRST, "--time", 600, "--out", folder);

            assertThat(ran.code()).isEqualTo(4);
            assertThat(ran.err()).contains("Another command of Bedwright", "is at work in this folder. Wait until");
        }
    }

    @Test
    void aPlanThatIsBeingWrittenIsNotDrawnNorNotedOn() {
        plan();
        try (HeldFolder other = HeldFolder.of(folder)) {
            Ran sheet = Ran.of("sheet", folder);
            Ran note = Ran.of("note", folder, "1", "lost", "half", "wind", "--on", "2027-06-01", "--yes");

            assertThat(sheet.code()).isEqualTo(4);
            assertThat(note.code()).isEqualTo(4);
            assertThat(note.err()).contains("Another command of Bedwright");
        }
        assertThat(folder.resolve("season.log")).doesNotExist();
    }

    @Test
    void noTemporaryFileIsLeftBehind() throws IOException {
        plan();
        plan();

        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString())).noneMatch(name -> name.startsWith("."));
        }
    }
}
