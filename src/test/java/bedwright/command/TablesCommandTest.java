package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.PlanFile;
import bedwright.file.SeasonFile;
import bedwright.season.Season;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TablesCommandTest {
    @TempDir
    private Path temporary;

    private Path plan;
    private Path season;

    @BeforeEach
    void makeAPlanAndItsTables() {
        plan = temporary.resolve("plan");
        season = temporary.resolve("mine.json");
        assertThat(Ran.of("plan", "problems/first-bed.json", "--moves", 500, "--out", plan)
                        .code())
                .isZero();
        Ran ran = Ran.of("tables", plan);
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains(plan.resolve("tables.xlsx").toString());
    }

    private Season planned() {
        return PlanFile.read(plan.resolve("plan.json")).season();
    }

    @Test
    void theWorkbookReadsBackAsTheSameSeason() {
        Ran ran = Ran.of("tables", plan, "--read", plan.resolve("tables.xlsx"), "--into", season);

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("Nothing in it differs");
        assertThat(ran.err()).isEmpty();
        assertThat(SeasonFile.read(season)).isEqualTo(planned());
    }

    @Test
    void theFolderReadsBackAsTheSameSeason() {
        Ran ran = Ran.of("tables", plan, "--read", plan.resolve("tables"), "--into", season);

        assertThat(ran.code()).isZero();
        assertThat(SeasonFile.read(season)).isEqualTo(planned());
    }

    @Test
    void oneCsvFileChangesWhatItSpeaksOf() throws IOException {
        Path beds = plan.resolve("tables/beds.csv");
        Files.writeString(beds, Files.readString(beds).replace("Open bed,1,20,0,0,12,", "Open bed,1,20,0,0,15,"));

        Ran ran = Ran.of("tables", plan, "--read", beds, "--into", season);

        assertThat(ran.out()).contains("What differs from the plan's: beds.");
        assertThat(SeasonFile.read(season).beds().getLast().length()).isEqualTo(15);
    }

    @Test
    void faultsAreToldWithFileSheetRowAndColumnAndNothingIsWritten() throws IOException {
        Path beds = plan.resolve("tables/beds.csv");
        Files.writeString(beds, Files.readString(beds).replace("Open bed,1,20,0,0,12,", "Open bed,1,20,0,0,wide,"));

        Ran ran = Ran.of("tables", plan, "--read", beds, "--into", season);

        assertThat(ran.code()).isEqualTo(Exit.FAULTY_FILE);
        assertThat(ran.err())
                .contains(beds + ": sheet \"Beds\", row 3, column F (length (m)): ")
                .contains("Nothing was written.");
        assertThat(season).doesNotExist();
    }

    @Test
    void whatIsReadNeedsAFileToGoTo() {
        Ran ran = Ran.of("tables", plan, "--read", plan.resolve("tables.xlsx"));

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("--into");
    }

    @Test
    void aFileOfAnotherKindIsRefused() {
        Ran ran = Ran.of("tables", plan, "--read", plan.resolve("season.html"), "--into", season);

        assertThat(ran.code()).isEqualTo(Exit.FAULTY_FILE);
        assertThat(ran.err()).contains(".xlsx").contains("Nothing was written.");
    }

    @Test
    void aFileThatIsNotThereIsTold() {
        Ran ran = Ran.of("tables", plan, "--read", temporary.resolve("none.xlsx"), "--into", season);

        assertThat(ran.code()).isEqualTo(Exit.FILE_TROUBLE);
        assertThat(ran.err()).contains("none.xlsx: There is no such file or folder.");
    }

    @Test
    void tablesWithoutAnyOfTheSeasonsAreRefused() {
        Ran ran = Ran.of("tables", plan, "--read", plan.resolve("tables/hours.csv"), "--into", season);

        assertThat(ran.code()).isEqualTo(Exit.FAULTY_FILE);
        assertThat(ran.err()).contains("Beds, ");
    }

    @Test
    void aByteOrderMarkIsWrittenWhenAskedFor() throws IOException {
        Ran.of("tables", plan, "--bom");

        assertThat(Files.readAllBytes(plan.resolve("tables/beds.csv"))).startsWith(0xEF, 0xBB, 0xBF);
    }
}
