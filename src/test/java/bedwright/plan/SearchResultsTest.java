package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The file in which measured searches are kept. */
class SearchResultsTest {
    private static final String HEADS = "problem,seconds,seed,money,must missing,bound,gap %,"
            + "rule of thumb money,rule of thumb must missing,rule of thumb gap %,"
            + "moves a second,took s,MB,peak MB,limit MB,health,date,commit,machine,JDK\n";
    private static final SearchTask TASK = new SearchTask("demo", 10, 1);

    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve(SearchResults.FILE);
    }

    private SearchResults written(String rows) throws IOException {
        Files.writeString(file(), HEADS + rows);
        return SearchResults.at(file());
    }

    private SearchResults with(String commit) {
        SearchResults results = SearchResults.at(file());
        results.add(SearchRows.of(TASK, 4.5, commit, SearchRows.HERE));
        return SearchResults.at(file());
    }

    @Test
    void whatWasAddedIsReadBackAsItWas() {
        SearchRow first = SearchRows.of(1, 4.5, "abcdef0");
        SearchRow second = SearchRows.of(2, 4.25, "abcdef0");
        SearchResults results = SearchResults.at(file());
        results.add(first);
        results.add(second);
        assertThat(SearchResults.at(file()).rows()).containsExactly(first, second);
    }

    @Test
    void eachSearchStandsInTheFileAsSoonAsItIsAdded() throws IOException {
        SearchResults results = SearchResults.at(file());
        results.add(SearchRows.of(1, 4.5, "abcdef0"));
        assertThat(Files.readString(file())).startsWith(HEADS).endsWith("abcdef0,\"a machine, 2 processors\",25\n");
    }

    @Test
    void anEmptyCellWasNotMeasured() throws IOException {
        SearchRow row = written("demo,10,1,23000,0,,,,,,70000,,250,,,sound,,abcdef0,a machine,25\n")
                .rows()
                .getFirst();
        assertThat(row)
                .isEqualTo(new SearchRow(
                        TASK,
                        23000,
                        0,
                        null,
                        null,
                        new SearchRow.Thumb(null, null, null),
                        70000,
                        null,
                        new SearchRow.Heap(250L, null, null),
                        "sound",
                        null,
                        "abcdef0",
                        new SearchSetting("a machine", "25")));
    }

    @Test
    void aSearchThatIsKeptOfTheSameCommitAndMachineIsNotDoneAgain() {
        assertThat(with("abcdef0").has(TASK, "abcdef0", SearchRows.HERE)).isTrue();
    }

    @Test
    void aSearchOfAnotherSeedIsStillToBeDone() {
        assertThat(with("abcdef0").has(new SearchTask("demo", 10, 2), "abcdef0", SearchRows.HERE))
                .isFalse();
    }

    @Test
    void aSearchOfAnotherCommitIsStillToBeDone() {
        assertThat(with("abcdef0").has(TASK, "1234567", SearchRows.HERE)).isFalse();
    }

    @Test
    void aSearchOnAnotherMachineIsStillToBeDone() {
        assertThat(with("abcdef0").has(TASK, "abcdef0", SearchRows.ELSEWHERE)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {Commits.UNKNOWN, "abcdef0" + Commits.CHANGED})
    void whatNoCommitHoldsIsMeasuredAgain(String commit) {
        assertThat(with(commit).has(TASK, commit, SearchRows.HERE)).isFalse();
    }

    @Test
    void aRowThatIsBrokenOffIsToldByItsNumber() {
        assertThatThrownBy(() -> written("demo,10,1,23000,0,,,,,,70000,,250,,,sound,,abcdef0,a machine,25\ndemo,10"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("row 3: expected 20 cells, found 2");
    }

    @Test
    void aCellThatIsNoNumberIsToldByRowAndColumn() {
        assertThatThrownBy(() -> written("demo,10,1,much,0,,,,,,70000,,250,,,sound,,abcdef0,a machine,25\n"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("row 2: Column money: expected a number, found \"much\"");
    }

    @Test
    void aFileWithOtherColumnsIsRefused() throws IOException {
        Files.writeString(file(), "problem,seconds\ndemo,10\n");
        assertThatThrownBy(() -> SearchResults.at(file()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected the columns")
                .hasMessageContaining("found [problem, seconds]");
    }

    @Test
    void allKeptResultsCanBeRead() throws IOException {
        Path kept = Path.of("benchmarks", "search", "results", SearchResults.FILE);
        List<String> lines = Files.readAllLines(kept);
        assertThat(SearchResults.at(kept).rows()).hasSize(lines.size() - 1);
    }
}
