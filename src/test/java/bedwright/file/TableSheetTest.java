package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import bedwright.season.Outlet;
import bedwright.season.Promise;
import bedwright.season.Season;
import bedwright.table.Cell;
import bedwright.table.Grid;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Heads, rows and marks of edited tables. */
class TableSheetTest {
    private static final Season SEASON =
            Edited.firstBed("\"service\": 30", "\"promise\": {}").season();

    private static Season read(Consumer<TableEdit> change) {
        return SeasonTables.read(SEASON, TableEdit.edited(SEASON, change));
    }

    private static void assertOne(Consumer<TableEdit> change, String sheet, int row, String... words) {
        FaultyTables faulty = catchThrowableOfType(FaultyTables.class, () -> read(change));
        assertThat(faulty).isNotNull();
        assertThat(faulty.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.sheet()).isEqualTo(sheet);
            assertThat(fault.row()).isEqualTo(row);
            assertThat(fault.message()).contains(words);
        });
    }

    @ParameterizedTest
    @CsvSource({"Beds, width (m)", "Outlets, price"})
    void onlyTablesWhoseRowsAreNumberedHaveEntries(String sheet, String head) {
        assertOne(edit -> edit.head(sheet, head, "entry"), sheet, 1, "There is no column \"entry\" in this table");
    }

    @ParameterizedTest
    @ValueSource(strings = {"name (m)", "name( m )"})
    void aUnitOverWhatHasNoneIsTold(String head) {
        assertOne(
                edit -> edit.head("Beds", "name", head),
                "Beds",
                1,
                "headed in m, but its figures are read in no unit",
                "Write \"name\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"length", "LENGTH (m)", " length  ( m ) ", "Length ()"})
    void aHeadMayLackItsUnitAndBeWrittenInAnyLetters(String head) {
        assertThat(read(edit -> edit.head("Beds", "length (m)", head))).isEqualTo(SEASON);
    }

    @Test
    void withoutTheNamesOfTheirBedsNothingIsToldOfWhenTheyAreTaken() {
        assertOne(
                edit -> {
                    edit.addRow("Beds taken", "beds", "Open bed", "from", "in May", "to", "2027-06-01");
                    edit.removeColumn("Beds taken", "beds");
                },
                "Beds taken",
                1,
                "The column \"beds\" is missing",
                "Put it back");
    }

    @Test
    void withoutTheNamesNothingIsToldOfTheRows() {
        assertOne(
                edit -> {
                    edit.set("Crops", 3, "height (m)", Cell.of("tall"));
                    edit.removeColumn("Crops", "name");
                },
                "Crops",
                1,
                "The column \"name\" is missing");
    }

    @Test
    void rowsInWhichNothingStandsArePassedOver() {
        List<Grid> grids = new ArrayList<>();
        for (Grid grid : SeasonTables.of(SEASON)) {
            List<Cell> none = grid.heads().stream().map(head -> Cell.EMPTY).toList();
            List<Grid.Row> rows = new ArrayList<>();
            rows.add(new Grid.Row(2, none));
            grid.rows().forEach(row -> rows.add(new Grid.Row(row.number() + 1, row.cells())));
            grids.add(new Grid(grid.name(), grid.heads(), rows));
        }

        assertThat(SeasonTables.read(SEASON, grids)).isEqualTo(SEASON);
    }

    /** The first outlet has a promise of which nothing more is said. */
    @ParameterizedTest
    @ValueSource(strings = {"no", "false", ""})
    void aPromiseThatIsMarkedWithNoIsTakenAway(String mark) {
        Season read = read(edit -> edit.set("Outlets", "Stall, focal", "promise", Cell.of(mark)));

        assertThat(SEASON.outlets().getFirst().promise()).isEqualTo(new Promise(null, null, null));
        assertThat(read.outlets()).extracting(Outlet::promise).containsOnlyNulls();
    }

    @Test
    void aPromiseOfWhichAFigureIsGivenNeedsNoMark() {
        Season read = read(edit -> edit.set("Outlets", "Stall, filler", "promise must", Cell.of(3)));

        assertThat(read.outlets().get(1).promise()).isEqualTo(new Promise(3, null, null));
    }

    @Test
    void aMarkThatIsNeitherYesNorNoIsTold() {
        assertOne(edit -> edit.set("Outlets", "Stall, filler", "promise", Cell.of("perhaps")), "Outlets", 3, "perhaps");
    }
}
