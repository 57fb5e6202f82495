package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.problems.Planned;
import bedwright.season.BedBlock;
import bedwright.season.Promise;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.Units;
import bedwright.table.Cell;
import bedwright.table.Csv;
import bedwright.table.Grid;
import bedwright.table.Spreadsheet;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A season out into tables and in again. */
class SeasonTablesTest {
    private static final Path PROBLEMS = Path.of("problems");
    private static final Season FARM = SeasonFile.read(PROBLEMS.resolve("demo-farm.json"));

    static List<String> names() {
        return Planned.names();
    }

    private static Season throughAWorkbook(Season season, List<Grid> grids) {
        return SeasonTables.read(season, Spreadsheet.read(Spreadsheet.bytes(grids, List.of())));
    }

    @ParameterizedTest
    @MethodSource("names")
    void throughAWorkbookItIsTheSameSeason(String name) {
        Season season = SeasonFile.read(PROBLEMS.resolve(name));

        assertThat(throughAWorkbook(season, SeasonTables.of(season))).isEqualTo(season);
    }

    @ParameterizedTest
    @MethodSource("names")
    void throughCsvFilesItIsTheSameSeason(String name) {
        Season season = SeasonFile.read(PROBLEMS.resolve(name));

        List<Grid> back = SeasonTables.of(season).stream()
                .map(grid -> Csv.read(grid.name(), Csv.bytes(grid, true)))
                .toList();

        assertThat(SeasonTables.read(season, back)).isEqualTo(season);
    }

    /** Figures stand in the tables as they stand in the file, so a foot is not turned into metres and back. */
    @ParameterizedTest
    @MethodSource("names")
    void inFeetItIsTheSameSeasonToo(String name) {
        Season metric = SeasonFile.read(PROBLEMS.resolve(name));
        Season season = metric.with(Units.FEET);
        List<Grid> grids = SeasonTables.of(season);

        assertThat(grids.getFirst().heads()).contains(Cell.of("length (ft)"), Cell.of("width (in)"));
        assertThat(throughAWorkbook(season, grids)).isEqualTo(season);
    }

    @Test
    void namesThatLookLikeFormulasOrHoldAnyLettersComeBack() throws Exception {
        String text = Files.readString(PROBLEMS.resolve("demo-farm.json"))
                .replace("\"Hedge", "\"=Häcke 花 🌻, \\\"x\\\"; ")
                .replace("Market, focal, first", "-'@ first\\nsecond line ");
        Season season = SeasonFile.parse("odd", text.getBytes(StandardCharsets.UTF_8));
        List<Grid> grids = SeasonTables.of(season);

        assertThat(throughAWorkbook(season, grids)).isEqualTo(season);
        assertThat(SeasonTables.read(
                        season,
                        grids.stream()
                                .map(g -> Csv.read(g.name(), Csv.bytes(g, false)))
                                .toList()))
                .isEqualTo(season);
    }

    /** The tables hold all of what they speak of: over a season with other figures they bring back the first. */
    @Test
    void overAnotherSeasonTheyBringTheirOwnFigures() throws Exception {
        String text = Files.readString(PROBLEMS.resolve("demo-farm.json"));
        String other = text.replace("\"length\": 30", "\"length\": 28")
                .replace("\"price\": 1.25", "\"price\": 0.01")
                .replace("\"firstCut\": 740", "\"firstCut\": 901")
                .replace("\"tunnel\": {", "\"path\": 0.9, \"tunnel\": {");
        Season changed = SeasonFile.parse("other", other.getBytes(StandardCharsets.UTF_8));
        assertThat(changed.beds()).isNotEqualTo(FARM.beds());
        assertThat(changed.outlets()).isNotEqualTo(FARM.outlets());
        assertThat(changed.crops()).isNotEqualTo(FARM.crops());

        assertThat(throughAWorkbook(changed, SeasonTables.of(FARM))).isEqualTo(FARM);
    }

    @Test
    void aTableOrAColumnThatIsNotThereLeavesAllAsItWas() {
        List<Grid> some = new ArrayList<>();
        for (Grid grid : SeasonTables.of(FARM)) {
            if (grid.name().equals("Beds")) {
                some.add(new Grid(
                        "Beds",
                        grid.heads().subList(0, 2),
                        grid.rows().stream()
                                .map(row ->
                                        new Grid.Row(row.number(), row.cells().subList(0, 2)))
                                .toList()));
            }
        }

        assertThat(SeasonTables.read(FARM, some)).isEqualTo(FARM);
        assertThat(SeasonTables.read(FARM, List.of())).isEqualTo(FARM);
    }

    /** What a promise says stays where only whether there is one has a column. */
    @Test
    void aPromiseWithoutItsColumnsStaysAsItWas() {
        Season season = Edited.firstBed("\"price\": 1.2,", "\"price\": 1.2, \"promise\": {\"shortage\": 2},")
                .season();
        List<Grid> grids = TableEdit.edited(season, edit -> {
            edit.removeColumn("Outlets", "promise must");
            edit.removeColumn("Outlets", "promise buy in");
            edit.removeColumn("Outlets", "promise shortage");
        });

        assertThat(SeasonTables.read(season, grids).outlets().getFirst().promise())
                .isEqualTo(new Promise(null, null, 2.0));
    }

    /** Times in which beds are taken have no name by which they are known: each is what its row says. */
    @Test
    void aRowWithoutANameSaysAllOfWhatItIs() {
        List<Grid> grids = TableEdit.edited(FARM, edit -> edit.removeColumn("Beds taken", "bed"));

        assertThat(SeasonTables.read(FARM, grids).beds().stream().flatMap(block -> block.taken().stream()))
                .isNotEmpty()
                .allSatisfy(taken -> assertThat(taken.bed()).isNull());
    }

    @Test
    void aRowMoreIsABedMore() {
        List<Grid> grids = TableEdit.edited(FARM, edit -> edit.addRow("Beds", "name", "Orchard", "length (m)", 14.5));

        BedBlock orchard = throughAWorkbook(FARM, grids).beds().getLast();

        assertThat(orchard.name()).isEqualTo("Orchard");
        assertThat(orchard.length()).isEqualTo(14.5);
        assertThat(orchard.width()).as("the usual").isEqualTo(1.2);
        assertThat(orchard.tunnel()).isNull();
    }

    @Test
    void anOutletWithoutARowIsGone() {
        String gone = FARM.outlets().getLast().name();
        List<Grid> grids = TableEdit.edited(FARM, edit -> {
            edit.removeRows("Outlets", "name", gone);
            edit.removeRows("Outlet weeks", "outlet", gone);
        });

        assertThat(throughAWorkbook(FARM, grids).outlets())
                .isEqualTo(FARM.outlets().subList(0, FARM.outlets().size() - 1));
    }

    @Test
    void whatStandsIsWhatHasARowInTheOrderOfTheRows() {
        List<Grid> grids = TableEdit.edited(FARM, edit -> {
            edit.removeRows("Standing", "name", "Peonies");
            edit.addRow(
                    "Standing",
                    "crop",
                    "zinnia",
                    "plants",
                    "40",
                    "method",
                    "sown, pinched",
                    "bed",
                    "Hedge1",
                    "sown",
                    "2027-05-10");
        });

        List<Standing> read = throughAWorkbook(FARM, grids).standing();

        List<Standing> expected = new ArrayList<>(FARM.standing());
        expected.removeIf(standing -> "Peonies".equals(standing.name()));
        assertThat(read.subList(0, read.size() - 1))
                .as("with their written stems")
                .isEqualTo(expected);
        assertThat(read.getLast().crop()).isEqualTo("zinnia");
        assertThat(read.getLast().bed()).isEqualTo("Hedge1");
    }

    @Test
    void figuresOfACropChangeAndAllElseOfItStays() {
        List<Grid> grids =
                TableEdit.edited(FARM, edit -> edit.set("Crops", "zinnia", "clock first cut (°C·d)", Cell.of(801)));

        Season read = throughAWorkbook(FARM, grids);

        for (int c = 0; c < FARM.crops().size(); c++) {
            boolean zinnia = FARM.crops().get(c).name().equals("zinnia");
            assertThat(read.crops().get(c).clock().firstCut())
                    .isEqualTo(zinnia ? 801 : FARM.crops().get(c).clock().firstCut());
            assertThat(read.crops().get(c).methods())
                    .isEqualTo(FARM.crops().get(c).methods());
            assertThat(read.crops().get(c).kinds())
                    .isEqualTo(FARM.crops().get(c).kinds());
        }
    }

    @Test
    void aTunnelCanBeTakenAwayAndAPromiseGivenByItsCellsAlone() {
        String outlet = FARM.outlets().stream()
                .filter(o -> o.promise() == null)
                .findFirst()
                .orElseThrow()
                .name();
        List<Grid> grids = TableEdit.edited(FARM, edit -> {
            edit.set("Beds", "Tunnel", "tunnel warmth (°C)", Cell.EMPTY);
            edit.set("Beds", "Tunnel", "tunnel protects (°C)", Cell.EMPTY);
            edit.set("Beds", "Tunnel", "tunnel gusts", Cell.EMPTY);
            edit.set("Outlets", outlet, "promise", Cell.of("yes"));
        });

        Season read = throughAWorkbook(FARM, grids);

        assertThat(read.beds()).allMatch(block -> block.tunnel() == null);
        assertThat(read.outlets().stream()
                        .filter(o -> o.name().equals(outlet))
                        .map(o -> Objects.requireNonNull(o.promise())))
                .singleElement()
                .satisfies(promise -> assertThat(promise.shortage()).isNull());
    }
}
