package bedwright.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.PlanFile;
import bedwright.file.SeasonFile;
import bedwright.season.Plan;
import bedwright.season.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A grower who measures in feet and °F reads feet and °F. */
class FeetOnTheScreenTest {
    private static final Path FIRST = Path.of("problems/first-bed.json");
    /** A figure with a metric unit behind it, or the word. */
    private static final String METRIC = "(?s).*(\\d (m|m/s|°C)\\b|°C|\\b[Mm]etres?\\b).*";

    @TempDir
    private Path folder;

    private Path feet;

    @BeforeEach
    void convert() {
        feet = folder.resolve("feet.json");
        SeasonFile.write(SeasonFile.read(FIRST).with(Units.FEET), feet);
    }

    private Path planned(Path season, String name) {
        Path out = folder.resolve(name);
        assertThat(Ran.of("plan", season, "--moves", 2000, "--seed", 3, "--out", out)
                        .code())
                .isZero();
        return out;
    }

    @Test
    void aSeasonInFeetGivesThePlanOfTheSameSeasonInMetres() {
        Plan inMetres = PlanFile.read(planned(FIRST, "metres").resolve("plan.json"));
        Plan inFeet = PlanFile.read(planned(feet, "feet").resolve("plan.json"));

        assertThat(inFeet.season().units()).isEqualTo(Units.FEET);
        assertThat(inFeet.score()).isEqualTo(inMetres.score());
        assertThat(inFeet.plantings()).isEqualTo(inMetres.plantings()).isNotEmpty();
    }

    @Test
    void thePlansFilesSpeakOfFeetAlone() throws IOException {
        Path out = planned(feet, "feet");

        String table = Files.readString(out.resolve("plantings.csv"));
        assertThat(table.lines().findFirst().orElseThrow()).contains(",feet,", ",net feet,");
        // The page's own script and style have no words for people.
        String page = Files.readString(out.resolve("season.html"))
                .replaceAll("(?s)<(script|style).*?</\\1>", "")
                .replaceAll("<[^>]*>", " ");
        assertThat(page)
                .doesNotMatch(METRIC)
                .contains("39.4 ft")
                .contains("32 °F")
                .contains(" mph")
                .contains("Feet");
    }

    @Test
    void whatIsSaidOnTheScreenIsInFeet() {
        Ran plan = Ran.of("plan", feet, "--moves", 300, "--out", folder.resolve("p"));
        Ran check = Ran.of("check", feet);
        Ran expect = Ran.of("expect", feet, "--crop", "dill", "--week", "2027-05-17");

        assertThat(plan.out()).doesNotMatch(METRIC).contains(" ft");
        assertThat(check.out()).doesNotMatch(METRIC).contains("2 beds, 78.7 ft");
        assertThat(expect.out()).doesNotMatch(METRIC).contains(" ft\n");
    }

    @Test
    void forProgramsTheKeySaysTheUnit() {
        Ran expect = Ran.of("expect", feet, "--crop", "dill", "--week", "2027-05-17", "--format", "json");

        assertThat(expect.out()).contains("\"feet\": ").doesNotContain("metres");
    }

    @Test
    void aCropOfTheBookIsShownInFeetOnRequest() {
        Ran crop = Ran.of("crops", "zinnia", "--units", "feet");

        // Where a figure comes from is told in its source's own words, on lines of their own.
        assertThat(crop.out().lines().filter(line -> line.matches("  (sure|fair|weak)  .*")))
                .anyMatch(line -> line.endsWith(" °F·d"))
                .anyMatch(line -> line.endsWith(" °F"))
                .contains("  fair  Distance of plants in the row: 11.81 in")
                .noneMatch(line -> line.contains("°C"));
    }

    @Test
    void aStationsClimateIsToldAndPastedInFahrenheitOnRequest() throws IOException {
        Ran weather = Ran.of("weather", "problems/stations/new-york.csv", "--latitude", "40.8", "--units", "feet");
        String site = weather.out().substring(weather.out().indexOf("{"));
        String pasted = Files.readString(feet)
                .replaceFirst("(?s)\"site\": \\{.*?\n  \\},", site.substring(1, site.lastIndexOf('}')) + ",");

        assertThat(weather.out()).doesNotContain("°C").contains("°F");
        assertThat(SeasonFile.parse("pasted", pasted.getBytes(UTF_8)).site().meanMin())
                .allSatisfy(min -> assertThat(min).isBetween(-8.0, 25.0));
    }

    @Test
    void aClimatePutIntoASeasonInFeetIsWrittenInFahrenheit() {
        Path out = folder.resolve("new-york.json");

        Ran weather = Ran.of("weather", "problems/stations/new-york.csv", "--into", feet, "--out", out);

        assertThat(weather.code()).isZero();
        assertThat(weather.out()).doesNotContain("°C");
        assertThat(SeasonFile.read(out).units()).isEqualTo(Units.FEET);
        assertThat(SeasonFile.read(out).site().meanMax().get(6)).isBetween(28.0, 32.0);
    }
}
