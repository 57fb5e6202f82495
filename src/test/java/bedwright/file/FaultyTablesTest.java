package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import bedwright.season.Season;
import bedwright.table.Cell;
import bedwright.table.Grid;
import bedwright.table.Spreadsheet;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Faulty edits, each told by sheet, row and column, once. */
class FaultyTablesTest {
    private static final Season FARM = SeasonFile.read(Path.of("problems/demo-farm.json"));

    /** @param row the row at which the fault shows, in the edited tables */
    record Edit(
            String what,
            Consumer<TableEdit> edit,
            String sheet,
            ToIntFunction<TableEdit> row,
            ToIntFunction<TableEdit> column,
            String message) {
        @Override
        public String toString() {
            return what;
        }
    }

    private static Edit cell(String what, String sheet, String name, String head, Cell cell, String message) {
        return new Edit(
                what,
                edit -> edit.set(sheet, name, head, cell),
                sheet,
                edit -> edit.row(sheet, name),
                edit -> edit.column(sheet, head),
                message);
    }

    private static Edit at(String what, Consumer<TableEdit> edit, String sheet, int row, String head, String message) {
        return new Edit(what, edit, sheet, e -> row, e -> e.column(sheet, head), message);
    }

    private static Edit inLast(String what, Consumer<TableEdit> edit, String sheet, String head, String message) {
        return new Edit(what, edit, sheet, e -> e.size(sheet), e -> e.column(sheet, head), message);
    }

    private static Edit head(String what, String sheet, String head, String other, String message) {
        return new Edit(
                what,
                edit -> edit.head(sheet, head, other),
                sheet,
                edit -> 1,
                edit -> edit.lastColumn(sheet, other),
                message);
    }

    static Stream<Edit> edits() {
        String first = FARM.outlets().getFirst().name();
        return Stream.of(
                cell("a word for a number", "Beds", "Hedge", "length (m)", Cell.of("long"), "needs a number"),
                cell("a number with its unit", "Beds", "Hedge", "length (m)", Cell.of("30 m"), "without unit"),
                cell("a comma for a point", "Beds", "Hedge", "width (m)", Cell.of("1,2"), "with a point: 1.2"),
                cell("a bed of no length", "Beds", "Hedge", "length (m)", Cell.of(0), "must be between 0.5 and 2000 m"),
                cell("half a bed", "Beds", "Hedge", "count", Cell.of(2.5, 1), "needs a whole number"),
                cell(
                        "a date for a number",
                        "Beds",
                        "Hedge",
                        "path (m)",
                        Cell.of(LocalDate.of(2027, 5, 1)),
                        "for a date"),
                cell("a date in words", "Beds", "Middle", "workable from", Cell.of("end of March"), "as in 2027-05-03"),
                cell("no such day", "Beds", "Middle", "workable from", Cell.of("2027-02-30"), "no such day"),
                cell("a year mistyped", "Beds", "Middle", "workable from", Cell.of("0207-03-29"), "Mend the year"),
                cell("a formula gone wrong", "Beds", "Hedge", "heading (degrees)", Cell.of("#REF!"), "needs a number"),
                cell("a bed without a length", "Beds", "Ridge", "length (m)", Cell.EMPTY, "must be filled"),
                cell("a share over one", "Beds", "Tunnel", "tunnel gusts", Cell.of(15), "must be between 0 and 1"),
                inLast(
                        "a bed twice",
                        edit -> edit.addRow("Beds", "name", "Hedge1", "length (m)", 10.0),
                        "Beds",
                        "name",
                        "another bed \"Hedge1\""),
                head("a head mistyped", "Beds", "width (m)", "widht (m)", "Did you mean \"width\"?"),
                head("another unit", "Beds", "length (m)", "length (ft)", "headed in ft"),
                head("a head twice", "Beds", "path (m)", "width (m)", "a second time"),
                inLast(
                        "taken, but in no bed that there is",
                        edit -> edit.addRow("Beds taken", "beds", "Hegde", "from", "2026-09-07", "to", "2026-09-20"),
                        "Beds taken",
                        "beds",
                        "Did you mean \"Hedge\"?"),
                inLast(
                        "the sixth of five beds",
                        edit -> edit.addRow(
                                "Beds taken", "beds", "Hedge", "from", "2026-09-07", "to", "2026-09-20", "bed", "6"),
                        "Beds taken",
                        "bed",
                        "\"Hedge\" has 5 beds"),
                inLast(
                        "a family that nobody named",
                        edit -> edit.addRow("Beds history", "beds", "Hedge", "family", "roses", "year", "2026"),
                        "Beds history",
                        "family",
                        "roses"),
                inLast(
                        "history of no bed",
                        edit -> edit.addRow("Beds history", "family", "daisies", "year", "2026"),
                        "Beds history",
                        "beds",
                        "must name"),
                at(
                        "a crop renamed",
                        edit -> edit.set("Crops", 4, "name", Cell.of("zinia")),
                        "Crops",
                        4,
                        "name",
                        "Did you mean \"zinnia\"?"),
                at(
                        "a crop without its name",
                        edit -> edit.set("Crops", 4, "name", Cell.EMPTY),
                        "Crops",
                        4,
                        "name",
                        "must name what the row speaks of"),
                inLast("a crop with two rows", edit -> edit.repeatRow("Crops", "zinnia"), "Crops", "name", "two rows"),
                cell("a cut after no warmth", "Crops", "zinnia", "clock first cut (°C·d)", Cell.of(0), "must be"),
                cell("a convention unknown", "Crops", "zinnia", "clock convention", Cell.of("sin"), "\"sine\""),
                cell("a family unknown", "Crops", "zinnia", "family", Cell.of("daises"), "\"daisies\""),
                at(
                        "a method started otherwise",
                        edit -> edit.set("Methods", 2, "start", Cell.of("seeded")),
                        "Methods",
                        2,
                        "start",
                        "must be one of"),
                at(
                        "a day of no month",
                        edit -> edit.set("Methods", 2, "sow from", Cell.of("13-01")),
                        "Methods",
                        2,
                        "sow from",
                        "12 months"),
                at(
                        "neither yes nor no",
                        edit -> edit.set("Methods", 2, "pinched", Cell.of("perhaps")),
                        "Methods",
                        2,
                        "pinched",
                        "Write yes or no"),
                at(
                        "a net that the farm has not",
                        edit -> edit.set("Methods", 2, "net net", Cell.of("no such net")),
                        "Methods",
                        2,
                        "net net",
                        "no such net"),
                at(
                        "a method of no crop",
                        edit -> edit.set("Methods", 2, "crop", Cell.of("sunflower")),
                        "Methods",
                        2,
                        "crop",
                        "in the table \"Crops\""),
                at(
                        "an entry that is not there",
                        edit -> edit.set("Standing", 3, "entry", Cell.of(99)),
                        "Standing",
                        3,
                        "entry",
                        "no entry \"99\""),
                at(
                        "an entry twice",
                        edit -> edit.set("Standing", 4, "entry", Cell.of(1)),
                        "Standing",
                        4,
                        "entry",
                        "two rows"),
                at(
                        "in no bed that there is",
                        edit -> edit.set("Standing", 2, "bed", Cell.of("Hedge9")),
                        "Standing",
                        2,
                        "bed",
                        "no bed \"Hedge9\""),
                inLast(
                        "held in no bed that there is",
                        edit -> hold(edit, "1", "Hedge9", "2027-05-31", "sown, pinched"),
                        "Held",
                        "bed",
                        "no bed \"Hedge9\""),
                inLast(
                        "held by no way that there is",
                        edit -> hold(edit, "1", "Hedge2", "2027-05-31", "planted"),
                        "Held",
                        "method",
                        "no method \"planted\""),
                inLast(
                        "held from a Tuesday on",
                        edit -> hold(edit, "1", "Hedge2", "2027-06-01", "sown, pinched"),
                        "Held",
                        "sown",
                        "a Tuesday"),
                inLast(
                        "held after the season",
                        edit -> hold(edit, "1", "Hedge2", "2031-06-02", "sown, pinched"),
                        "Held",
                        "sown",
                        "the season runs from"),
                inLast(
                        "more held than the pool has",
                        edit -> hold(edit, "43", "Hedge2", "2027-05-31", "sown, pinched"),
                        "Held",
                        "lots",
                        "Hold fewer"),
                cell("a price in words", "Outlets", first, "price", Cell.of("dear"), "needs a number"),
                cell("a price below nothing", "Outlets", first, "price", Cell.of(-1), "must be"),
                cell("a kind that nothing has", "Outlets", first, "kind", Cell.of("fokal"), "no kind of stems"),
                cell(
                        "no promise, with a weight",
                        "Outlets",
                        first,
                        "promise must",
                        Cell.of(0),
                        "must be between 1 and 1000"),
                cell("an outlet without a kind", "Outlets", first, "kind", Cell.EMPTY, "Write a text."),
                cell("neither promised nor not", "Outlets", first, "promise", Cell.of("perhaps"), "Write yes or no"),
                new Edit(
                        "not promised, but with a weight",
                        edit -> {
                            edit.set("Outlets", first, "promise", Cell.of("no"));
                            edit.set("Outlets", first, "promise must", Cell.of(5));
                        },
                        "Outlets",
                        edit -> edit.row("Outlets", first),
                        edit -> edit.column("Outlets", "promise"),
                        "Here stands no, but columns of it are filled"),
                new Edit(
                        "more money than can be counted",
                        edit -> edit.set("Outlets", first, "price", Cell.of(100_000_000)),
                        "Outlets",
                        edit -> edit.row("Outlets", first),
                        edit -> edit.column("Outlets", "name"),
                        "can be counted exactly"),
                inLast(
                        "an outlet without weeks",
                        edit -> edit.addRow("Outlets", "name", "New stall", "kind", "focal", "price", 1.0),
                        "Outlets",
                        "name",
                        "no row in the table \"Outlet weeks\""),
                at(
                        "a week that begins on a Tuesday",
                        edit -> edit.set("Outlet weeks", 2, "from", Cell.of("2027-04-20")),
                        "Outlet weeks",
                        2,
                        "from",
                        "week"),
                at(
                        "weeks for nobody",
                        edit -> edit.set("Outlet weeks", 2, "outlet", Cell.of("Nobody")),
                        "Outlet weeks",
                        2,
                        "outlet",
                        "no \"Nobody\""));
    }

    private static void hold(TableEdit edit, String lots, String bed, String sown, String method) {
        edit.addRow("Held", "crop", "zinnia", "lots", lots, "bed", bed, "sown", sown, "method", method);
    }

    @ParameterizedTest
    @MethodSource("edits")
    void eachIsToldBySheetRowAndColumn(Edit edit) {
        int[] place = new int[2];
        List<Grid> grids = TableEdit.edited(FARM, e -> {
            edit.edit().accept(e);
            place[0] = edit.row().applyAsInt(e);
            place[1] = edit.column().applyAsInt(e);
        });
        // What is not there stays as it was: the sheets that belong to the edited one are enough.
        List<Grid> near = grids.stream()
                .filter(grid -> grid.name().charAt(0) == edit.sheet().charAt(0)
                        || edit.sheet().equals("Methods"))
                .toList();
        List<Grid> read = Spreadsheet.read(Spreadsheet.bytes(near, List.of()));

        FaultyTables faulty = catchThrowableOfType(FaultyTables.class, () -> SeasonTables.read(FARM, read));

        assertThat(faulty.faults()).as("%s", faulty.getMessage()).hasSize(1);
        TableFault fault = faulty.faults().getFirst();
        assertThat(fault.sheet() + " " + fault.row() + " " + Grid.letters(fault.column()))
                .as(fault.message())
                .isEqualTo(edit.sheet() + " " + place[0] + " " + Grid.letters(place[1]));
        assertThat(fault.message()).contains(edit.message());
        assertThat(faulty.getMessage()).startsWith("sheet \"" + edit.sheet() + "\", row " + place[0] + ", column ");
    }

    @Test
    void thereAreThirtyOfThemAtLeast() {
        assertThat(edits()).hasSizeGreaterThanOrEqualTo(30);
    }

    @Test
    void allFaultsAreToldAtOnceInTheirOrder() {
        List<Grid> grids = TableEdit.edited(FARM, edit -> {
            edit.set("Outlet weeks", 3, "stems", Cell.of("many"));
            edit.set("Beds", 3, "length (m)", Cell.of("long"));
            edit.set("Beds", 2, "length (m)", Cell.of("long"));
        });

        FaultyTables faulty = catchThrowableOfType(FaultyTables.class, () -> SeasonTables.read(FARM, grids));

        assertThat(faulty.faults())
                .extracting(fault -> fault.sheet() + " " + fault.row())
                .containsExactly("Beds 2", "Beds 3", "Outlet weeks 3");
    }

    /** Of the third row what is no number is found before of the second what is out of range. */
    @Test
    void whatIsFoundLaterIsToldInItsPlaceToo() {
        List<Grid> grids = TableEdit.edited(FARM, edit -> {
            edit.set("Beds", 3, "length (m)", Cell.of("long"));
            edit.set("Beds", 2, "length (m)", Cell.of(0));
        });

        FaultyTables faulty = catchThrowableOfType(FaultyTables.class, () -> SeasonTables.read(FARM, grids));

        assertThat(faulty.faults()).extracting(TableFault::row).containsExactly(2, 3);
    }

    @Test
    void whereTheOutletsHaveNoTableTheirWeeksAreMissedInTheirOwn() {
        String first = FARM.outlets().getFirst().name();
        List<Grid> grids = TableEdit.edited(FARM, edit -> edit.removeRows("Outlet weeks", "outlet", first));
        grids.removeIf(grid -> !grid.name().equals("Outlet weeks"));

        FaultyTables faulty = catchThrowableOfType(FaultyTables.class, () -> SeasonTables.read(FARM, grids));

        assertThat(faulty.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.sheet() + " " + fault.row()).isEqualTo("Outlet weeks 1");
            assertThat(fault.message()).contains(first, "no row in the table \"Outlet weeks\"");
        });
    }

    @Test
    void aColumnThatIsMissedIsNamedByItsKey() {
        List<Grid> grids = TableEdit.edited(FARM, edit -> edit.removeColumn("Beds history", "family"));

        FaultyTables faulty = catchThrowableOfType(FaultyTables.class, () -> SeasonTables.read(FARM, grids));

        assertThat(faulty.faults()).allSatisfy(fault -> {
            assertThat(fault.sheet()).isEqualTo("Beds history");
            assertThat(fault.message()).contains("the key \"family\" is missing");
        });
    }

    /** A remark of the grower's own beside the table would be lost: it is told. An empty column is nobody's. */
    @Test
    void whatStandsUnderNoHeadIsTold() {
        List<Grid> empty = TableEdit.edited(FARM, edit -> edit.addColumn("Outlets", 4, Cell.EMPTY));
        List<Grid> remarked = TableEdit.edited(FARM, edit -> edit.addColumn("Outlets", 4, Cell.of("pays late")));

        assertThat(SeasonTables.read(FARM, empty))
                .isEqualTo(SeasonTables.read(FARM, TableEdit.edited(FARM, edit -> {})));
        FaultyTables faulty = catchThrowableOfType(FaultyTables.class, () -> SeasonTables.read(FARM, remarked));
        assertThat(faulty.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.row()).isEqualTo(4);
            assertThat(fault.message()).contains("Nothing heads this column", "pays late", "Write its head");
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"Crops", "Outlets", "Beds"})
    void withoutTheNamesNoRowIsKnown(String table) {
        List<Grid> grids = TableEdit.edited(FARM, edit -> edit.removeColumn(table, "name"));

        FaultyTables faulty = catchThrowableOfType(FaultyTables.class, () -> SeasonTables.read(FARM, grids));

        assertThat(faulty.faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.message()).contains("The column \"name\" is missing"));
    }

    @Test
    void whatTheTablesLeaveHangingElsewhereIsToldToo() {
        List<Grid> grids = TableEdit.edited(FARM, edit -> {
            edit.removeRows("Beds", "name", "Meadow");
            edit.removeRows("Beds taken", "beds", "Meadow");
            edit.removeRows("Beds history", "beds", "Meadow");
        });
        grids.removeIf(grid -> grid.name().equals("Standing"));

        FaultyTables faulty = catchThrowableOfType(FaultyTables.class, () -> SeasonTables.read(FARM, grids));

        assertThat(faulty.faults())
                .anySatisfy(fault -> assertThat(fault.toString())
                        .contains("behind the tables")
                        .contains("\"Meadow4\""));
    }
}
