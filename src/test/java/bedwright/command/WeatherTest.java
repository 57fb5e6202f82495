package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.SeasonFile;
import bedwright.season.Site;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that makes a climate of a station's record. */
class WeatherTest {
    private static final String STATION = "problems/stations/new-york.csv";
    private static final String SEASON = "problems/first-bed.json";

    @TempDir
    private Path temporary;

    @Test
    void theScreenTellsWhatTheClimateRestsOn() {
        Ran ran = Ran.of("weather", STATION);

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("2012-01-01 to 2015-12-31; 4 years, 1,461 days", "Last frost of spring");
        assertThat(ran.out()).contains("mean winds, not gusts", "does not say where gusts come from");
    }

    @Test
    void asJsonNothingElseGoesToStandardOutput() {
        String out = Ran.of("weather", STATION, "--format", "json", "--latitude", "40.8")
                .out();

        assertThat(out).startsWith("{").contains("\"version\": 1", "\"latitude\": 40.8", "\"meanMin\"");
    }

    @Test
    void withoutALatitudeNoneIsGuessed() {
        assertThat(Ran.of("weather", STATION).out())
                .contains("with \"latitude\" added")
                .doesNotContain("\"latitude\":");
    }

    @Test
    void aSeasonFileTakesTheClimateAndKeepsTheRest() {
        Path made = temporary.resolve("made.json");
        Ran ran = Ran.of("weather", STATION, "--into", SEASON, "--out", made);

        assertThat(ran.code()).isZero();
        Site site = SeasonFile.read(made).site();
        assertThat(site.meanMax().get(6)).isEqualTo(29.5);
        assertThat(SeasonFile.read(made).with(SeasonFile.read(Path.of(SEASON)).site()))
                .isEqualTo(SeasonFile.read(Path.of(SEASON)));
    }

    @Test
    void tooFewYearsAreRefusedWithWhatIsMissing() {
        Ran ran = Ran.of("weather", STATION, "--to", "2013");

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("2 whole months of January", "at least 3", "longer record");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void faultsAreToldWithTheirLines() throws IOException {
        Path faulty = Files.writeString(temporary.resolve("faulty.csv"), "date,min_c,max_c\n2020-07-01,20,10\n");
        Ran ran = Ran.of("weather", faulty);

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains(faulty + ":2:1: ", "1 fault");
    }

    @Test
    void faultsThatAreNotToldOneByOneAreCounted() throws IOException {
        Path faulty = Files.writeString(temporary.resolve("faulty.csv"), "date,min_c,max_c\n" + "no,1,2\n".repeat(60));

        assertThat(Ran.of("weather", faulty).err()).contains("… and 10 more", "60 faults");
    }

    @Test
    void aMissingFileIsToldByItsName() {
        Ran ran = Ran.of("weather", temporary.resolve("none.dly"));

        assertThat(ran.code()).isEqualTo(4);
        assertThat(ran.err()).contains("none.dly");
    }

    @Test
    void aJudgementTellsThatFourYearsTellLittle() {
        Ran ran = Ran.of("weather", STATION, "--judge");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("held back in turn", "last frost of spring", "3 of 4", "tells little");
    }

    @Test
    void aJudgementMakesNoSeasonFile() {
        Ran ran = Ran.of("weather", STATION, "--judge", "--into", SEASON, "--out", temporary.resolve("made.json"));

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("leave --into and --out away");
    }

    @Test
    void aYearCanBePlayedAsASeason() {
        Ran ran = Ran.of(
                "expect",
                SEASON,
                "--crop",
                "dill",
                "--week",
                "2027-05-17",
                "--weather",
                STATION,
                "--year",
                "2012",
                "--year",
                "2014",
                "--format",
                "json");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).containsPattern("\"firstCuts\": \\[\"2027-\\d\\d-\\d\\d\", \"2027-\\d\\d-\\d\\d\"\\]");
    }

    @Test
    void aYearThatTheRecordLacksIsToldWithWhatItHas() {
        Ran ran = Ran.of(
                "expect", SEASON, "--crop", "dill", "--week", "2027-05-17", "--weather", STATION, "--year", "1987");

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("2012-01-01 to 2015-12-31", "Take another year");
    }

    @Test
    void aYearWithoutARecordIsWrongUsage() {
        Ran ran = Ran.of("expect", SEASON, "--crop", "dill", "--week", "2027-05-17", "--year", "1987");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("--weather and --year go together");
    }
}
