package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What several seeds come to together, and how that is put in order. */
class SearchGroupTest {

    private static List<SearchRow> rows(String commit, double... gaps) {
        return IntStream.range(0, gaps.length)
                .mapToObj(i -> SearchRows.of(i + 1, gaps[i], commit))
                .toList();
    }

    private static SearchGroup group(double... gaps) {
        List<SearchRow> rows = rows("abcdef0", gaps);
        return new SearchGroup(SearchGroup.Key.of(rows.getFirst()), rows);
    }

    @Test
    void ofOddlyManyGapsTheMiddleOneIsTheMedian() {
        assertThat(group(5, 3, 4).medianGap()).hasValue(4);
    }

    @Test
    void ofEvenlyManyGapsTheMedianLiesBetweenTheMiddleTwo() {
        assertThat(group(9, 1, 4, 3).medianGap()).hasValue(3.5);
    }

    @ParameterizedTest
    @CsvSource({"3.4, 3.5, true", "3.5, 3.5, true", "3.5, 3.6, false"})
    void theMedianBarIsKeptUpToItsFigure(double one, double other, boolean isKept) {
        SearchBar bar = new SearchBar("demo", 60, 3.5, 5.0);
        assertThat(bar.keepsMedian(group(one, other))).isEqualTo(isKept);
    }

    @Test
    void oneSeedBeyondTheBarOfTheWorstMissesIt() {
        SearchBar bar = new SearchBar("demo", 60, 3.5, 5.0);
        assertThat(bar.keepsWorst(group(3, 3, 5.1))).isFalse();
    }

    @Test
    void theLastRowTellsWhichCommitIsMeant() {
        List<SearchRow> rows = List.of(SearchRows.of(1, 4, "before0"), SearchRows.of(1, 3, "after00"));
        assertThat(MeasuredSearches.of(rows).commits()).containsExactly("after00", "before0");
    }

    @Test
    void theSummaryComparesOnlySeedsThatBothCommitsHave() {
        List<SearchRow> rows = List.of(
                SearchRows.of(1, 4, "before0"),
                SearchRows.of(2, 5, "before0"),
                SearchRows.of(3, 9, "before0"),
                SearchRows.of(1, 3, "after00"),
                SearchRows.of(2, 3.5, "after00"));
        assertThat(SearchSummary.lines(MeasuredSearches.of(rows), Map.of()))
                .last()
                .asString()
                .endsWith("before0: 4.50, now 3.25 (seeds in both: 2)");
    }

    @Test
    void theSummaryDoesNotCompareWithAnotherMachine() {
        List<SearchRow> rows = List.of(
                SearchRows.of(new SearchTask("demo", 10, 1), 4, "before0", SearchRows.ELSEWHERE),
                SearchRows.of(1, 3, "after00"));
        assertThat(SearchSummary.lines(MeasuredSearches.of(rows), Map.of()))
                .last()
                .asString()
                .endsWith("not measured");
    }

    @Test
    void theSummarySaysHowFarTheMedianLiesFromTheBestPlanKnown() {
        List<SearchRow> rows = List.of(SearchRows.of(1, 4, "after00"), SearchRows.of(2, 3.5, "after00"));
        String problem = rows.getFirst().task().problem();

        assertThat(SearchSummary.lines(MeasuredSearches.of(rows), Map.of(problem, 3.21)))
                .last()
                .asString()
                .matches(".* 3\\.75 +3\\.50 +4\\.00 +0\\.54 .*");
    }
}
