package bedwright.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables written and read back, as CSV and as a workbook. */
class TableFilesTest {
    private static final String[] TEXTS = {
        "=1+1",
        "+x",
        "-x",
        "@x",
        "'",
        "''",
        "'=1",
        "a,b",
        "a;b",
        "\"",
        "two\nlines",
        " spaced ",
        "花床 🌻",
        "1",
        "2027-05-03",
        "<&>",
        "tab\tinside"
    };

    @TempDir
    private Path temporary;

    private static Grid random(String name, int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<List<Cell>> rows = new ArrayList<>();
        for (int r = random.nextInt(1, 12); r > 0; r--) {
            List<Cell> row = new ArrayList<>();
            for (int c = 0; c < 5; c++) {
                row.add(
                        switch (random.nextInt(5)) {
                            case 0 -> Cell.EMPTY;
                            case 1 -> Cell.of(TEXTS[random.nextInt(TEXTS.length)]);
                            case 2 ->
                                new Cell.Number(BigDecimal.valueOf(random.nextLong(-99999, 99999), random.nextInt(4)));
                            case 3 -> Cell.of(LocalDate.of(2020, 1, 1).plusDays(random.nextInt(5000)));
                            default -> new Cell.Truth(random.nextBoolean());
                        });
            }
            row.add(Cell.of("end"));
            rows.add(row);
        }
        return Grid.of(name, List.of("a", "b (m)", "c", "d", "e", "f"), rows);
    }

    /** What a cell holds, whatever digits it was written with. */
    private static Object plain(Cell cell) {
        return cell instanceof Cell.Number number ? number.number().stripTrailingZeros() : cell;
    }

    private static List<List<Object>> plain(Grid grid) {
        return grid.rows().stream()
                .map(row -> row.cells().stream().map(TableFilesTest::plain).toList())
                .toList();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void aWorkbookComesBackAsItWas(int seed) {
        List<Grid> grids = List.of(random("One", seed), random("Two", seed + 1000));

        List<Grid> back = Spreadsheet.read(Spreadsheet.bytes(grids, List.of("Two")));

        assertThat(back).extracting(Grid::name).containsExactly("One", "Two");
        for (int i = 0; i < 2; i++) {
            assertThat(back.get(i).heads()).isEqualTo(grids.get(i).heads());
            assertThat(plain(back.get(i))).isEqualTo(plain(grids.get(i)));
            assertThat(back.get(i).rows())
                    .extracting(Grid.Row::number)
                    .isEqualTo(
                            grids.get(i).rows().stream().map(Grid.Row::number).toList());
        }
    }

    /** In a CSV file every cell is a text. */
    private static String said(Cell cell) {
        return switch (cell) {
            case Cell.Empty empty -> "";
            case Cell.Text text -> text.text();
            case Cell.Number number -> number.plain();
            case Cell.Day day -> day.date().toString();
            case Cell.Truth truth -> Boolean.toString(truth.isTrue());
            case Cell.Broken broken -> broken.text();
        };
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void aCsvFileComesBackAsItWas(int seed) {
        Grid grid = random("One", seed);

        Grid back = Csv.read("One", Csv.bytes(grid, seed % 2 == 0));

        assertThat(back.heads()).isEqualTo(grid.heads());
        assertThat(back.rows().stream()
                        .map(row ->
                                row.cells().stream().map(TableFilesTest::said).toList()))
                .isEqualTo(grid.rows().stream()
                        .map(row ->
                                row.cells().stream().map(TableFilesTest::said).toList())
                        .toList());
    }

    /** The way in which spreadsheets are made to run what stands in a table: OWASP, "CSV Injection". */
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+x", "-x", "@x", "\tx", "\rx"})
    void noTextBeginsLikeAFormula(String text) {
        String written = Csv.text(Grid.of("One", List.of("head"), List.of(List.of(Cell.of(text)))));

        assertThat(written.lines().skip(1).findFirst().orElseThrow().replace("\"", ""))
                .startsWith("'");
    }

    @Test
    void numbersBelowZeroStayNumbers() {
        assertThat(Csv.text(Grid.of("One", List.of("a"), List.of(List.of(Cell.of(-3))))))
                .isEqualTo("a\r\n-3\r\n");
    }

    @Test
    void aByteOrderMarkStandsThereOnlyWhenAskedFor() {
        Grid grid = Grid.of("One", List.of("ü"), List.of());

        assertThat(Csv.bytes(grid, true)).startsWith(0xEF, 0xBB, 0xBF);
        assertThat(Csv.bytes(grid, false)).isEqualTo("ü\r\n".getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"a,b|1,2", "a;b|1;2", "'a\tb'|'1\t2'"})
    void whateverStandsBetweenTheCellsIsFound(String heads, String row) {
        Grid grid = Csv.read("One", (heads + "\r\n" + row).getBytes(StandardCharsets.UTF_8));

        assertThat(grid.heads()).containsExactly(Cell.of("a"), Cell.of("b"));
        assertThat(grid.rows().getFirst().cells()).containsExactly(Cell.of("1"), Cell.of("2"));
    }

    @Test
    void rowsKeepTheirNumbersBehindEmptyOnes() {
        Grid grid = Csv.read("One", "a,b\n\n1,2\n".getBytes(StandardCharsets.UTF_8));

        assertThat(grid.rows().getLast().number()).isEqualTo(3);
        assertThat(grid.rows().getFirst().isEmpty()).isTrue();
    }

    @Test
    void otherEncodingsAreRefused() {
        assertThatThrownBy(() -> Csv.read("One", "ü".getBytes(StandardCharsets.ISO_8859_1)))
                .isInstanceOf(BadTable.class)
                .hasMessageContaining("UTF-8");
    }

    @Test
    void whatIsNoWorkbookIsRefused() {
        assertThatThrownBy(() -> Spreadsheet.read("a,b".getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(BadTable.class)
                .hasMessageContaining(".xlsx");
    }

    @Test
    void aFormulaThatNobodyHasWorkedOutIsNoFigure() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(bytes, "Other", "1.0")) {
            Worksheet sheet = workbook.newWorksheet("One");
            sheet.value(0, 0, "head");
            sheet.formula(1, 0, "1+1");
        }

        assertThat(Spreadsheet.read(bytes.toByteArray())
                        .getFirst()
                        .rows()
                        .getFirst()
                        .cell(0))
                .isEqualTo(new Cell.Broken("=1+1"));
    }

    /** Office programs show a row of heads no higher than the file says, and cut off what is broken into more lines. */
    @Test
    void theRowOfHeadsIsAsHighAsItsLines() throws IOException {
        Grid grid = Grid.of("One", List.of("stems year ten years", "n"), List.of(List.of(Cell.of("1"), Cell.of("2"))));

        assertThat(parts(Spreadsheet.bytes(List.of(grid), List.of())).get("xl/worksheets/sheet1.xml"))
                .containsPattern("<row r=\"1\"[^>]* ht=\"60(\\.0)?\"");
    }

    /** The archive holds the time of its making; its parts do, too, but for the one that says so. */
    @Test
    void theSameTablesMakeTheSameWorkbook() throws IOException {
        List<Grid> grids = List.of(random("One", 1));

        Map<String, String> one = parts(Spreadsheet.bytes(grids, List.of()));
        Map<String, String> two = parts(Spreadsheet.bytes(grids, List.of()));
        one.remove("docProps/core.xml");
        two.remove("docProps/core.xml");

        assertThat(one).isEqualTo(two).containsKey("xl/worksheets/sheet1.xml");
    }

    private Map<String, String> parts(byte[] bytes) throws IOException {
        Path file = Files.write(temporary.resolve("workbook.xlsx"), bytes);
        Map<String, String> parts = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                byte[] part = zip.getInputStream(entry).readAllBytes();
                parts.put(entry.getName(), new String(part, StandardCharsets.UTF_8));
            }
        }
        return parts;
    }

    @ParameterizedTest
    @CsvSource({"0,A", "25,Z", "26,AA", "51,AZ", "52,BA", "701,ZZ", "702,AAA"})
    void columnsAreCalledByLetters(int column, String letters) {
        assertThat(Grid.letters(column)).isEqualTo(letters);
    }
}
