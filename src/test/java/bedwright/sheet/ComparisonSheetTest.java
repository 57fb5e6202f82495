package bedwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.compare.Comparison;
import bedwright.compare.Judged;
import bedwright.compare.Way;
import bedwright.plan.Grains;
import bedwright.season.Season;
import bedwright.season.Strategies;
import bedwright.season.Strategies.Strategy;
import bedwright.season.Units;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** The comparison sheet and its words, of ways whose figures are made to measure. */
class ComparisonSheetTest {
    private static final Season SEASON = SmallFarm.season();
    private static final long MAIN_UNIT =
            Grains.A_SMALLEST_UNIT * SEASON.currency().smallest();

    /** Two plans, with so much in each of ten seasons, and the second plan so much above the first. */
    private static Way way(String name, long money, long apart) {
        return new Way(Strategy.plain(name), SEASON, List.of(plan(money), plan(money + apart)));
    }

    private static Judged plan(long money) {
        long[] each = new long[10];
        Arrays.setAll(each, k -> (money + 10L * k) * MAIN_UNIT);
        return new Judged(
                each,
                new long[10],
                new long[10],
                new long[10],
                new long[10],
                new double[SEASON.weeks()],
                new double[SEASON.roles().size()][SEASON.weeks()],
                List.of(),
                Stream.of(Judged.Cause.values())
                        .map(cause -> new Judged.Loss(cause, 0))
                        .toList(),
                (money + 145.0) * MAIN_UNIT,
                0);
    }

    private static Comparison comparison() {
        List<Way> ways =
                List.of(way("<plain> & simple", 1000, 2), way("better", 5000, 2), way("not to be told", 1001, 2));
        return new Comparison(
                SEASON,
                new Strategies(
                        "Test",
                        "Invented.",
                        Units.METRES,
                        ways.stream().map(Way::strategy).toList()),
                new Comparison.Effort(null, 100L, 1, 2),
                ways);
    }

    private static String words() {
        return Summary.text(ComparisonWords.of(comparison()), 5000);
    }

    /** By hand: plans 2 apart have S = 2, S/R = 1 for each way; Student's t with 2 degrees of freedom is 4.303, × √2 = 6. */
    @Test
    void whatIsBeyondChanceIsSaidWithItsRangeAndWhatIsNotIsSaidToBeNot() {
        assertThat(words())
                .contains("“better” earns K 3,994 to K 4,006 more in the mean; it is better in every year")
                .contains("“not to be told”: there is no telling");
    }

    @Test
    void aPlanThatSaidMoreOfItselfIsToldToHaveBeenTooHopeful() {
        // 1,146 of itself in the mean of the plans; here 1,000 and 1,002 and, in the mean of the seasons, 45 on top.
        assertThat(words())
                .containsPattern("“<plain> & simple” say K 1,146 of themselves.*K 100 more than they bring here");
    }

    @Test
    void thePageIsWellFormedAndHoldsTheNamesAsTheyAre() {
        Page page = Page.parse(ComparisonSheet.html(comparison()));

        assertThat(page.text()).contains("<plain> & simple", "no telling", "Invented.");
        assertThat(page.all("svg")).hasSize(3 + SEASON.roles().size());
        assertThat(page.all("table").stream().map(table -> table.getAttribute("id")))
                .contains("money-table", "differences-table", "pairs-table", "takes-table", "hopeful-table");
    }

    @Test
    void everyIdStandsOnce() {
        Page page = Page.parse(ComparisonSheet.html(comparison()));

        List<String> ids = page.all("*").stream()
                .map((Element element) -> element.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();

        assertThat(ids).doesNotHaveDuplicates();
    }

    @Test
    void itReadsTheSameInEveryLocale() {
        Locale before = Locale.getDefault();
        String html = ComparisonSheet.html(comparison());
        String json = ComparisonData.json(comparison());
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(ComparisonSheet.html(comparison())).isEqualTo(html);
            assertThat(ComparisonData.json(comparison())).isEqualTo(json);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void namesThatASpreadsheetWouldTakeForAFormulaAreMadeHarmless() {
        Way odd = way("=1+1", 1000, 2);
        Comparison comparison = new Comparison(
                SEASON, comparison().strategies(), comparison().effort(), List.of(odd, way("plain", 1000, 2)));

        assertThat(ComparisonData.strategiesCsv(comparison)).contains("'=1+1");
        assertThat(ComparisonData.seasonsCsv(comparison)).contains("'=1+1, search 1");
    }
}
