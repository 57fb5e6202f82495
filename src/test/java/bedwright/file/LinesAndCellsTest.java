package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How the text of a table is taken apart: into lines, and lines into cells (quotation marks after RFC 4180). */
class LinesAndCellsTest {
    private static List<String> lines(String text) {
        LineReader reader = new LineReader(text.toCharArray());
        List<String> lines = new ArrayList<>();
        for (String line = reader.next(); line != null; line = reader.next()) {
            lines.add(reader.number() + ":" + line);
        }
        return lines;
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void aLineEndsAsOnAnySystem(String end) {
        assertThat(lines("a" + end + "b" + end + "c")).containsExactly("1:a", "2:b", "3:c");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void behindTheLastEndThereIsNoLine(String end) {
        assertThat(lines("a" + end)).containsExactly("1:a");
    }

    @Test
    void emptyLinesCount() {
        assertThat(lines("a\r\n\r\nb\n\nc")).containsExactly("1:a", "2:", "3:b", "4:", "5:c");
    }

    @Test
    void anEmptyTextHasNoLine() {
        assertThat(lines("")).isEmpty();
    }

    private static List<String> cells(String line) {
        return Cells.of(line, ',').stream()
                .map(cell -> cell.column() + ":" + cell.text())
                .toList();
    }

    @Test
    void cellsAreToldByTheirColumns() {
        assertThat(cells("ab, c ,,d")).containsExactly("1:ab", "4:c", "8:", "9:d");
    }

    @Test
    void whatIsQuotedIsOneCell() {
        assertThat(cells("\"a,b\",c")).containsExactly("1:a,b", "7:c");
    }

    @Test
    void aQuotationMarkWithinAQuotedCellIsWrittenTwice() {
        assertThat(cells("\"say \"\"cut\"\" now\",c")).containsExactly("1:say \"cut\" now", "19:c");
    }

    @Test
    void aCellMayEndInATwiceWrittenMark() {
        assertThat(cells("\"a\"\"\",b")).containsExactly("1:a\"", "7:b");
    }

    @Test
    void anEmptyQuotedCellIsEmpty() {
        assertThat(cells("\"\",b,\"\"")).containsExactly("1:", "4:b", "6:");
    }
}
