package bedwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is no fault but probably not meant is told where it stands; the season is read all the same. */
class RemarksTest {
    private static final String SLUGS = "\"pests\": [{\"name\": \"slugs\", \"takes\": [\"seedlings\"]";

    private static List<Fault> remarks(String... replaced) throws IOException {
        String text = Files.readString(Path.of("problems/first-bed.json"));
        for (int i = 0; i < replaced.length; i += 2) {
            assertThat(text).contains(replaced[i]);
            text = text.replace(replaced[i], replaced[i + 1]);
        }
        return SeasonFile.check("file", text.getBytes(UTF_8)).remarks();
    }

    @Test
    void ofASoundSeasonNothingIsRemarked() throws IOException {
        assertThat(remarks()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
            {"crop": "dill", "plants": 75, "lots": 3}, | ``                                             | /crops/2           | "dill" is neither among the plantings to choose from
            "emergence": 0.7,                          | "sowFrom": "01-01", "sowTo": "01-31", "emergence": 0.7, | /crops/2/methods/0 | No week of the season starts within the sowing dates of "sown" of "dill"
            "emergence": 0.7,                          | "headStart": 5, "emergence": 0.7,              | /crops/2/methods/0 | has a "headStart" or a "check"
            "emergence": 0.7,                          | "check": 5, "emergence": 0.7,                  | /crops/2/methods/0 | has a "headStart" or a "check"
            "emergence": 0.7,                          | "pinchDelay": 5, "emergence": 0.7,             | /crops/2/methods/0 | has a "pinchDelay" but is not "pinched"
            "bench": 150                               | "bench": 0                                     | /crops/0/methods/1 | the bench holds no cells
            "recipes": [                               | "recipes": [{"name": "Posy", "lines": [{"kind": "filler", "stems": 1, "price": 1}]}, | /recipes/0 | Nobody orders the recipe "Posy"
            "kinds": [{"kind": "foliage"}]             | "kinds": [{"kind": "filler"}]                  | /outlets/2/kind    | No crop gives stems of "foliage"
            "kinds": [{"kind": "foliage"}]             | "kinds": [{"kind": "filler"}]                  | /recipes/0/lines/2/kind | No crop gives stems of "foliage"
            {"name": "foliage", "cutting": 40}         | {"name": "foliage"}, {"name": "greens"}        | -                  | -
            "plants": 75,                              | "plants": 750,                                 | /pool/2/plants     | at least 27 m of bed, but the longest bed has 12 m
            "price": 1.2                               | "price": 0.05                                  | /outlets/0/price   | "Stall, focal" pays 0.05 a stem, no more than cutting one costs (0.05)
            "price": 1.2                               | "price": 0.0501                                | -                  | -
            "price": 0.4                               | "price": 0.06                                  | /outlets/1/price   | no more than cutting one costs (0.067)
            "price": 0.01                              | "price": 0                                     | /crops/2           | "dill" has no "price"
            "start": "sown", "emergence": 0.7,         | "start": "set", "headStart": 5, "emergence": 0.7, | /crops/2/methods/0 | has a "headStart" or a "check"
            "emergence": 0.7,                          | "sowFrom": "07-12", "sowTo": "07-12", "emergence": 0.7, | -         | -
            "emergence": 0.7,                          | "sowFrom": "07-19", "sowTo": "07-19", "emergence": 0.7, | /crops/2/methods/0 | No week of the season starts within
            "plants": 60,                              | "plants": 240,                                 | -                  | -
            """)
    void whatIsOddIsToldAtItsPlace(String from, String to, String path, String says) throws IOException {
        List<Fault> found = remarks(from, to);

        if (path.equals("-")) {
            assertThat(found).isEmpty();
        } else {
            assertThat(found).anySatisfy(remark -> {
                assertThat(remark.path()).isEqualTo(path);
                assertThat(remark.message()).contains(says);
            });
        }
    }

    /** 30 minutes for 100 stems at 10 an hour are 0.05 a stem; 0.0525 for each that is paid is 0.05 for each asked for. */
    @Test
    void aLineOfAnOrderThatPaysNoMoreThanCuttingIsToldUnlessPromised() throws IOException {
        String[] poor = {"\"price\": 1.3", "\"price\": 0.0525"};

        assertThat(remarks(poor)).isEmpty();
        assertThat(remarks(
                        poor[0], poor[1], "\"spare\": 0.05,\n      \"promise\": {\"buyIn\": 1.6}", "\"spare\": 0.05"))
                .singleElement()
                .satisfies(remark -> {
                    assertThat(remark.path()).isEqualTo("/orders/0");
                    assertThat(remark.message())
                            .contains("\"Porch bouquets\" pays 0.05 for each stem of \"focal\"", "costs (0.05)");
                });
        assertThat(remarks(
                        poor[0],
                        "\"price\": 0.0526",
                        "\"spare\": 0.05,\n      \"promise\": {\"buyIn\": 1.6}",
                        "\"spare\": 0.05"))
                .isEmpty();
    }

    /** 40 minutes for 100 stems, of which clearing takes 39 anyway, are 0.0017 a stem at 10 an hour. */
    @Test
    void whatClearingWouldTakeIsNoCostOfCutting() throws IOException {
        String[] poor = {"\"price\": 0.4", "\"price\": 0.002"};

        assertThat(remarks(
                        poor[0],
                        poor[1],
                        "\"name\": \"filler\", \"cutting\": 40",
                        "\"name\": \"filler\", \"cutting\": 40, \"clearing\": 39"))
                .isEmpty();
    }

    /** 0.05 a stem is just what cutting one costs. */
    @Test
    void aLineThatJustPaysForItsCuttingIsTold() throws IOException {
        assertThat(remarks(
                        "\"price\": 1.3",
                        "\"price\": 0.05",
                        "\"spare\": 0.05,\n      \"promise\": {\"buyIn\": 1.6}",
                        "\"spare\": 0"))
                .singleElement()
                .satisfies(remark -> assertThat(remark.path()).isEqualTo("/orders/0"));
    }

    @Test
    void anOrderPaysByItsOwnRecipe() throws IOException {
        assertThat(remarks(
                        "\"recipes\": [",
                        "\"recipes\": [{\"name\": \"Gift\", \"lines\": [{\"kind\": \"filler\", \"stems\": 1, \"price\": 0}]},",
                        "\"spare\": 0.05,\n      \"promise\": {\"buyIn\": 1.6}",
                        "\"spare\": 0.05"))
                .extracting(Fault::message)
                .containsExactly("Nobody orders the recipe \"Gift\".");
    }

    @Test
    void aPriceOfOneOfItsMethodsIsAPriceOfTheCrop() throws IOException {
        assertThat(remarks(
                        "\"price\": 0.01",
                        "\"price\": 0",
                        "\"emergence\": 0.7,",
                        "\"price\": 0.2, \"emergence\": 0.7,"))
                .isEmpty();
    }

    @Test
    void stemsThatNobodyTakesAreTold() throws IOException {
        assertThat(remarks(
                        "{\"name\": \"foliage\", \"cutting\": 40}",
                        "{\"name\": \"foliage\"}, {\"name\": \"greens\"}",
                        "\"kinds\": [{\"kind\": \"foliage\"}]",
                        "\"kinds\": [{\"kind\": \"foliage\", \"share\": 0.5}, {\"kind\": \"greens\", \"share\": 0.5}]"))
                .singleElement()
                .satisfies(remark -> {
                    assertThat(remark.path()).isEqualTo("/crops/3/kinds/1");
                    assertThat(remark.message()).contains("takes \"greens\"", "\"basil for foliage\" gives");
                });
    }

    @Test
    void aMethodOrWrittenStemsMayGiveWhatIsAskedFor() throws IOException {
        String[] noFoliage = {"\"kinds\": [{\"kind\": \"foliage\"}]", "\"kinds\": [{\"kind\": \"filler\"}]"};
        assertThat(remarks(
                        noFoliage[0],
                        noFoliage[1],
                        "\"rows\": 3,",
                        "\"kinds\": [{\"kind\": \"foliage\"}], \"rows\": 3,"))
                .isEmpty();
        assertThat(
                        remarks(
                                noFoliage[0],
                                noFoliage[1],
                                "\"outlets\": [",
                                "\"standing\": [{\"crop\": \"basil for foliage\", \"plants\": 1, \"bed\": \"Open bed\", \"stems\":"
                                        + " [{\"week\": \"2027-06-14\", \"kind\": \"foliage\", \"stems\": 5}]}], \"outlets\": ["))
                .isEmpty();
    }

    @Test
    void aPestThatTakesNothingIsTold() throws IOException {
        assertThat(remarks("\"stock\": {", SLUGS + "}], \"stock\": {"))
                .singleElement()
                .satisfies(remark -> assertThat(remark.message()).contains("\"slugs\" has no \"pressure\""));
        String biting =
                SLUGS + ", \"pressure\": [{\"from\": \"05-01\", \"to\": \"06-30\", \"aDay\": 0.1}]}], \"stock\": {";
        assertThat(remarks("\"stock\": {", biting))
                .singleElement()
                .satisfies(remark ->
                        assertThat(remark.message()).contains("No crop has an \"appeal\" to the pest \"slugs\""));
        assertThat(remarks("\"stock\": {", biting, "\"height\": 0.8,", "\"height\": 0.8, \"appeal\": {\"slugs\": 1},"))
                .isEmpty();
    }
}
