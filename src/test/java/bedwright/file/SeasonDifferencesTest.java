package bedwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Season;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a plan's season that differs from the season file. */
class SeasonDifferencesTest {
    private static final String TEXT = new String(Resources.bytes("page.json"), UTF_8);

    private static Season season(String text) {
        return SeasonFile.parse("season", text.getBytes(UTF_8));
    }

    private static String changed(String from, String to) {
        assertThat(TEXT).contains(from);
        return TEXT.replace(from, to);
    }

    @Test
    void aSeasonDoesNotDifferFromItselfHoweverItIsWritten() {
        assertThat(SeasonDifferences.of(season(TEXT.replace("\n", " ")), season(TEXT)))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"weeks\": 40 | \"weeks\": 44 | weeks: 44 in the season file, 40 in the plan",
                "\"length\": 30 | \"length\": 31.5 | beds \"Long\", length: 31.5 in the season file, 30 in the plan",
                "\"lots\": 12 | \"lots\": 7 | pool \"sunflower, once-cut\", lots: 7 in the season file, 12 in the plan",
                "\"stems\": 80 | \"stems\": 90 | outlets \"market\", asks 1, stems: 90 in the season file, 80 in the plan",
                "[ 0.6, 0.4 ] | [ 0.5, 0.5 ] | crops \"sunflower, once-cut\", methods \"sown\", cutShares: [0.5, 0.5] in the season file,"
                        + " [0.6, 0.4] in the plan",
                ", \"restYears\": 2 | , \"restYears\": 0 | families \"daisy\", restYears: nothing in the season file, 2 in"
                        + " the plan",
                "\"length\": 30 } | \"length\": 30 }, { \"name\": \"Short\", \"length\": 5 } | beds \"Short\": only in the"
                        + " season file"
            })
    void whatWasChangedIsToldWithBothValues(String from, String to, String difference) {
        assertThat(SeasonDifferences.of(season(changed(from, to)), season(TEXT)))
                .containsExactly(difference);
    }

    @Test
    void whatWasTakenOutIsToldAsOnlyInThePlan() {
        Season more = season(changed("\"length\": 30 }", "\"length\": 30 }, { \"name\": \"Short\", \"length\": 5 }"));

        assertThat(SeasonDifferences.of(season(TEXT), more)).containsExactly("beds \"Short\": only in the plan");
    }

    private static final String RECIPE =
            "\"recipes\": [ { \"name\": \"posy\", \"lines\": [ { \"kind\": \"focal\", \"stems\": 3, \"price\": 1 } ] } ], \"pool\": [";

    @Test
    void aListThatOnlyOneOfThemHasIsToldByItsEntries() {
        Season more = season(changed("\"pool\": [", RECIPE));

        assertThat(SeasonDifferences.of(more, season(TEXT)))
                .containsExactly("recipes \"posy\": only in the season file");
        assertThat(SeasonDifferences.of(season(TEXT), more)).containsExactly("recipes \"posy\": only in the plan");
    }

    @Test
    void entriesInAnotherOrderAreToldAsSuch() {
        String beds = "\"length\": 30 }, { \"name\": \"Short\", \"length\": 5 }";
        Season one = season(changed("\"length\": 30 }", beds));
        Season other = season(changed(
                "{ \"name\": \"Long\", \"count\": 2, \"length\": 30 }",
                "{ \"name\": \"Short\", \"length\": 5 }, { \"name\": \"Long\", \"count\": 2, \"length\": 30 }"));

        assertThat(SeasonDifferences.of(one, other)).containsExactly("beds: in another order");
    }

    /** Both can be chosen anew for every plan. */
    @Test
    void cautionAndPossibleSeasonsAreNotCompared() {
        String other = changed("\"weeks\": 40", "\"weeks\": 40, \"caution\": \"bold\", \"possible\": { \"count\": 3 }");

        assertThat(SeasonDifferences.of(season(other), season(TEXT))).isEmpty();
    }
}
