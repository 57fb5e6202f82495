package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedwright.season.PriceList;
import bedwright.season.Season;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Price files. */
class PriceFileTest {
    private static final Season SEASON = SeasonFile.read(Path.of("problems/first-bed.json"));

    private static final String FILE = """
            {
              "version": 1,
              "weights": [1, 1.2, 0.8, 1],
              "bench": [0, 0.125, 0, 0, 0, 0, 0, 0, 0, 0],
              "nets": [[0, 0, 1.25, 0, 0, 0, 0, 0, 0, 0]],
              "lots": [0, 0, 0, 3.5],
              "stems": [
                { "kind": "focal", "week": "2027-06-21", "asked": [1.15, 1.5, 1.5, 1.5] },
                { "kind": "filler", "week": "2027-06-21", "most": [0.3, 0, 0, 0.4] }
              ]
            }
            """;

    private static PriceList parse(String text) {
        return PriceFile.parse("prices.json", text.getBytes(StandardCharsets.UTF_8), SEASON, 4);
    }

    @Test
    void areReadAsTheyAreWritten() {
        PriceList prices = parse(FILE);

        assertThat(new String(PriceFile.bytes(prices), StandardCharsets.UTF_8)).isEqualTo(FILE);
        assertThat(prices.nets()).containsExactly(List.of(0.0, 0.0, 1.25, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0));
        assertThat(prices.stems().get(1).most()).containsExactly(0.3, 0.0, 0.0, 0.4);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "\"weights\": [1, 1.2, 0.8, 1] | \"weights\": [1, 1.2] | 3:14 | needs 4, one for each possible season",
                "\"bench\": [0, 0.125, | \"bench\": [0.125, | 4:12 | \"bench\" has 9 entries, but this season needs 10",
                "[[0, 0, 1.25, | [[0, 1.25, | 5:12 | \"nets\" has 9 entries",
                "[0, 0, 0, 3.5] | [0, 3.5] | 6:11 | one for each entry of its pool and standing plantings",
                "0.125 | -0.125 | 4:16 | -0.125",
                "\"focal\" | \"fokal\" | 8:15 | Did you mean \"focal\"?",
                "\"focal\" | \"filler\" | 9:15 | There is another",
                "\"focal\", \"week\": \"2027-06-21\" | \"focal\", \"week\": \"2027-06-22\" | 8:32 | a week of this season starts",
                "\"focal\", \"week\": \"2027-06-21\" | \"focal\", \"week\": \"2028-06-19\" | 8:32 | the season runs from",
                "\"bench\": [ | \"hours\": [1, 2], \"bench\": [ | 4:12 | \"hours\" has 2 entries, but this season needs 10",
                "\"bench\": [ | \"cutting\": [1], \"bench\": [ | 4:14 | \"cutting\" has 1 entry, but this season needs 10",
                "\"bench\": [ | \"hired\": [[]], \"bench\": [ | 4:12 | needs 10, one for each week",
                "\"bench\": [ | \"hired\": [[], [], [1, 2], [], [], [], [], [], [], []], \"bench\": [ | 4:21 | \"hired\" has 2 entries, but this season needs 4, one for each possible season",
                "\"bench\": [ | \"trays\": [1], \"bench\": [ | 4:12 | \"trays\" has 1 entry",
                "\"bench\": [ | \"cover\": [1], \"bench\": [ | 4:12 | \"cover\" has 1 entry",
                "\"nets\": [[ | \"nets\": [[], [ | 5:11 | \"nets\" has 2 entries, but this season needs 1, one for each net",
                "\"bench\": [ | \"standing\": [1], \"bench\": [ | 4:15 | needs 0, one for each standing planting",
                "[1.15, 1.5, 1.5, 1.5] | [1.15, 1.5] | 8:55 | \"asked\" has 2 entries",
                "[0.3, 0, 0, 0.4] | [0.3, 0, 0, 0, 4] | 9:55 | \"most\" has 5 entries"
            })
    void tellWhereTheyAreAtFault(String from, String to, String where, String told) {
        assertThat(FILE).contains(from);

        assertThatThrownBy(() -> parse(FILE.replaceFirst(Pattern.quote(from), to)))
                .isInstanceOf(FaultyFile.class)
                .hasMessageContaining("prices.json:" + where + ":")
                .hasMessageContaining(told);
    }

    /** Four entries of the pool and one standing planting. */
    @Test
    void whatStandsHasAPriceBehindThoseOfThePool() throws IOException {
        String text = Files.readString(Path.of("problems/first-bed.json"));
        Season season = SeasonFile.parse(
                "season",
                text.replace(
                                "\"outlets\": [",
                                "\"standing\": [{\"crop\": \"dill\", \"plants\": 10, \"bed\": \"Open bed\","
                                        + " \"stems\": [{\"week\": \"2027-05-17\", \"stems\": 5}]}], \"outlets\": [")
                        .getBytes(StandardCharsets.UTF_8));
        String prices = FILE.replace("[0, 0, 0, 3.5]", "[0, 0, 0, 3.5, 1]");

        assertThat(PriceFile.parse("prices.json", prices.getBytes(StandardCharsets.UTF_8), season, 4)
                        .lots())
                .containsExactly(0.0, 0.0, 0.0, 3.5, 1.0);
    }
}
