package bedwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.plan.DemandLine;
import bedwright.plan.Grains;
import bedwright.plan.Outcome;
import bedwright.problems.Planned;
import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.KindTree;
import bedwright.season.Method;
import bedwright.season.Season;
import bedwright.table.Cell;
import bedwright.table.Grid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The tables add up to what the plan brings. */
class ResultTablesTest {
    private static final int SEASONS = 4;
    /** Each figure is rounded to a hundredth. */
    private static final double A_CELL = 0.005;

    private static final Buying.Wishes JUST_THE_PLAN = new Buying.Wishes(0, Map.of(), Map.of(), 6, 16, 20, 40);

    static List<String> names() {
        return Planned.names();
    }

    private static Grid table(SheetFacts facts, String name) {
        return ResultTables.of(facts, JUST_THE_PLAN).stream()
                .filter(grid -> grid.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double sum(Grid grid, String head, Predicate<Grid.Row> rows) {
        int column = grid.heads().indexOf(Cell.of(head));
        assertThat(column).as(head).isNotNegative();
        return grid.rows().stream()
                .filter(rows)
                .map(row -> row.cell(column))
                .filter(Cell.Number.class::isInstance)
                .mapToDouble(cell -> ((Cell.Number) cell).number().doubleValue())
                .sum();
    }

    private static double sum(Grid grid, String head) {
        return sum(grid, head, row -> true);
    }

    @ParameterizedTest
    @MethodSource("names")
    void allTablesAreThere(String name) {
        assertThat(ResultTables.of(Planned.of(name, SEASONS).sheetFacts(), Buying.Wishes.USUAL))
                .extracting(Grid::name)
                .isEqualTo(ResultTables.NAMES);
    }

    @ParameterizedTest
    @MethodSource("names")
    void hoursAreThoseOfThePlan(String name) {
        SheetFacts facts = Planned.of(name, SEASONS).sheetFacts();
        Outcome.Work work = facts.outcome().work();
        int weeks = facts.season().weeks();
        double all = 0;
        for (int w = 0; w < weeks; w++) {
            for (int k = 0; k < facts.outcome().seasons(); k++) {
                all += (double) work.all(w, k) / facts.outcome().seasons() / Grains.TICKS_AN_HOUR;
            }
        }

        Grid hours = table(facts, "Hours");

        assertThat(sum(hours, "all, mean")).isCloseTo(all, within(weeks * A_CELL));
        double parts = 0;
        for (String head : List.of(
                "standing work",
                "making up",
                "serving",
                "plantings",
                "cutting, mean",
                "clearing what is left over, mean")) {
            parts += sum(hours, head);
        }
        assertThat(parts).isCloseTo(all, within(6 * weeks * A_CELL));
        assertThat(sum(table(facts, "Weeks"), "hours, mean")).isEqualTo(sum(hours, "all, mean"));
        assertThat(sum(hours, "plantings"))
                .isCloseTo(
                        (double) Arrays.stream(work.plantings()).sum() / Grains.TICKS_AN_HOUR, within(weeks * A_CELL));
    }

    @ParameterizedTest
    @MethodSource("names")
    void lengthsAreThoseOfThePlan(String name) {
        SheetFacts facts = Planned.of(name, SEASONS).sheetFacts();
        Season season = facts.season();
        Grid use = table(facts, "Bed use");
        double plantings = 0;
        for (Shown planting : Shown.of(facts)) {
            plantings += planting.millimetres() / 1000.0 * (planting.heldTo() - planting.heldFrom());
        }

        double beds = 0;
        for (int w = 0; w < season.weeks(); w++) {
            beds += sum(use, season.weekStart(w).toString());
        }

        assertThat(beds).isCloseTo(plantings, within(1e-6 * plantings));
        assertThat(sum(table(facts, "Weeks"), "metres held")).isCloseTo(plantings, within(1e-6 * plantings));
    }

    @ParameterizedTest
    @MethodSource("names")
    void stemsAndDeliveriesAreThoseOfThePlan(String name) {
        SheetFacts facts = Planned.of(name, SEASONS).sheetFacts();
        Outcome outcome = facts.outcome();
        KindTree kinds = KindTree.of(facts.season().roles());
        Grid stems = table(facts, "Stems");
        Grid deliveries = table(facts, "Deliveries");

        for (int node = 0; node < kinds.size(); node++) {
            Cell path = Cell.of(kinds.path(node));
            double mean = Arrays.stream(outcome.stems()[node])
                            .flatMapToInt(Arrays::stream)
                            .asDoubleStream()
                            .sum()
                    / outcome.seasons()
                    / 100;
            assertThat(sum(stems, "mean", row -> row.cell(0).equals(path)))
                    .as("%s", path)
                    .isCloseTo(mean, within(facts.season().weeks() * A_CELL));
        }
        double asked = 0;
        double served = 0;
        for (DemandLine line : outcome.demand()) {
            asked += Arrays.stream(line.asked()).sum() / 100.0;
            served += Arrays.stream(outcome.served()[line.index()])
                            .flatMapToInt(Arrays::stream)
                            .asDoubleStream()
                            .sum()
                    / outcome.seasons()
                    / 100;
        }
        assertThat(sum(deliveries, "asked for")).isCloseTo(asked, within(0.001));
        assertThat(sum(deliveries, "delivered, mean"))
                .isCloseTo(served, within(deliveries.rows().size() * A_CELL));
    }

    /** Seeds, cells, plugs and tubers counted again from the plantings and their methods. */
    @ParameterizedTest
    @MethodSource("names")
    void whatIsBoughtIsWhatThePlantingsTake(String name) {
        Planned planned = Planned.of(name, SEASONS);
        long wanted = 0;
        double cost = 0;
        for (Shown planting : Shown.of(planned.sheetFacts())) {
            Method method = planting.method();
            int plants = planting.kept().plants();
            if (planting.kept().standing() == null) {
                long items = method.start() == Method.Start.TRAY
                        ? planting.cells()
                        : method.start() == Method.Start.SOWN ? (long) plants * method.seedsAPlace() : plants;
                Double own = method.price();
                wanted += items;
                cost += items * (own == null ? planting.crop().price() : own);
            }
        }

        Grid buying = table(planned.sheetFacts(), "Buying");

        int unit = buying.heads().indexOf(Cell.of("unit"));
        Predicate<Grid.Row> isPlants = row -> row.cell(unit).equals(Cell.EMPTY);
        assertThat(sum(buying, "planned", isPlants)).isEqualTo(wanted);
        // A planting's material is rounded to the smallest unit of money by the lot, and shared out in whole ones.
        double lots =
                planned.plan().plantings().stream().mapToInt(KeptPlanting::lots).sum();
        assertThat(sum(buying, "cost", isPlants))
                .isCloseTo(
                        cost,
                        within(2 * A_CELL * (lots + planned.plan().plantings().size())));
    }

    /** Margin, stock and packets included: each row is a line of the printed list, and each of its lines a row. */
    @ParameterizedTest
    @MethodSource("names")
    void theBuyingTableIsTheListThatIsPrinted(String name) {
        SheetFacts facts = Planned.of(name, SEASONS).sheetFacts();
        List<String> crops = facts.season().crops().stream().map(Crop::name).toList();
        Buying.Wishes wishes =
                new Buying.Wishes(25, Map.of(crops.getFirst(), 7), Map.of(crops.getLast(), 30), 4, 9, 13, 50);
        Grid table = ResultTables.of(facts, wishes).getLast();
        List<String> printed = new Buying(facts, wishes).text(500).lines().toList();

        int rows = 0;
        for (Grid.Row row : table.rows()) {
            List<String> said = new ArrayList<>();
            for (String head : List.of("crop or thing", "what", "planned", "with margin", "to buy")) {
                Cell cell = row.cell(table.heads().indexOf(Cell.of(head)));
                said.add(
                        cell instanceof Cell.Number number
                                ? Say.tenth(number.number().doubleValue())
                                : cell.equals(Cell.EMPTY) ? "" : ((Cell.Text) cell).text());
            }
            boolean isPlants = !said.get(3).isEmpty();
            Predicate<String> isLine = line -> line.contains(said.get(0))
                    && (!isPlants || line.contains(said.get(1)) && line.contains(" " + said.get(3) + " "))
                    && (said.get(4).equals("0") || line.contains(" " + said.get(4)))
                    && line.contains(" " + said.get(2));
            assertThat(printed).as("%s", said).anyMatch(isLine);
            rows += isPlants ? 1 : 0;
        }
        assertThat(rows).isEqualTo(BuyingList.of(facts, wishes).plants().size());
        assertThat(new Buying(facts, wishes).text(500)).contains("margin of 25 %");
    }

    @ParameterizedTest
    @MethodSource("names")
    void plantsAreThoseOfThePlan(String name) {
        Planned planned = Planned.of(name, SEASONS);

        assertThat(sum(table(planned.sheetFacts(), "Plantings"), "plants"))
                .isEqualTo(planned.plan().plantings().stream()
                        .mapToLong(p -> p.plants())
                        .sum());
    }
}
