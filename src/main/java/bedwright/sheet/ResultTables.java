package bedwright.sheet;

import bedwright.plan.DemandLine;
import bedwright.plan.Grains;
import bedwright.plan.Outcome;
import bedwright.season.Bed;
import bedwright.season.KindTree;
import bedwright.season.Season;
import bedwright.table.Cell;
import bedwright.table.Grid;
import java.util.ArrayList;
import java.util.List;

/** What a plan brings as tables for a spreadsheet: weeks begin on the date that they are named by. */
public final class ResultTables {
    /** The names of all tables. */
    public static final List<String> NAMES =
            List.of("Plantings", "Weeks", "Bed use", "Stems", "Deliveries", "Hours", BuyingTable.NAME);

    /** Limits at or above this are none: a quarter of the greatest number, as the outcome has it. */
    private static final long NO_LIMIT = Long.MAX_VALUE / 4;

    private static final int DIGITS = 2;

    private final Season season;
    private final Outcome outcome;

    private ResultTables(SheetFacts facts) {
        season = facts.season();
        outcome = facts.outcome();
    }

    /**
     * All tables, in order.
     *
     * @param wishes what the plan does not know of buying
     */
    public static List<Grid> of(SheetFacts facts, Buying.Wishes wishes) {
        ResultTables tables = new ResultTables(facts);
        return List.of(
                PlantingsCsv.grid(facts),
                tables.weeks(),
                tables.bedUse(),
                tables.stems(),
                tables.deliveries(),
                tables.hours(),
                BuyingTable.of(facts, wishes));
    }

    private Cell week(int week) {
        return Cell.of(season.weekStart(week));
    }

    private static Cell hours(double ticks) {
        return Cell.of(ticks / Grains.TICKS_AN_HOUR, DIGITS);
    }

    private static Cell limit(long ticks) {
        return ticks >= NO_LIMIT ? Cell.EMPTY : hours(ticks);
    }

    private static Cell stems(double hundredths) {
        return Cell.of(hundredths / 100, DIGITS);
    }

    private Cell length(double millimetres) {
        return Cell.of(season.units().length().of(millimetres / 1000), 3);
    }

    /** A row a week, with what becomes of each role's stems. */
    private Grid weeks() {
        List<RoleWeeks> roles = RoleWeeks.of(season, outcome);
        List<String> heads = new ArrayList<>(List.of(
                "week",
                season.units().several() + " held",
                "hours, mean",
                "own hours",
                "hours to hire",
                "cutting hours, mean"));
        for (RoleWeeks role : roles) {
            heads.addAll(List.of(
                    role.name() + " ready, usual year",
                    role.name() + " asked for",
                    role.name() + " promised",
                    role.name() + " promised and missing, mean",
                    role.name() + " left over, mean"));
        }
        List<List<Cell>> rows = new ArrayList<>();
        Outcome.Work work = outcome.work();
        for (int w = 0; w < season.weeks(); w++) {
            int week = w;
            long held = 0;
            for (int[] bed : outcome.bedUse()) {
                held += bed[w];
            }
            List<Cell> row = new ArrayList<>(List.of(
                    week(w),
                    length(held),
                    hours(Spread.of(outcome.seasons(), k -> work.all(week, k)).mean()),
                    limit(work.own()[w]),
                    hours(work.hired()[w]),
                    hours(Spread.of(work.cutting()[w]).mean())));
            for (RoleWeeks role : roles) {
                row.add(stems(role.ready()[w].middle()));
                row.add(stems(role.asked()[w]));
                row.add(stems(role.promised()[w]));
                row.add(stems(role.missing()[w].mean()));
                row.add(stems(role.left()[w].mean()));
            }
            rows.add(row);
        }
        return Grid.of("Weeks", heads, rows);
    }

    /** A row a bed: metres or feet held, week by week. */
    private Grid bedUse() {
        List<String> heads = new ArrayList<>(List.of("bed", season.units().several()));
        for (int w = 0; w < season.weeks(); w++) {
            heads.add(season.weekStart(w).toString());
        }
        List<List<Cell>> rows = new ArrayList<>();
        for (Bed bed : season.allBeds()) {
            List<Cell> row = new ArrayList<>(
                    List.of(Cell.of(bed.name()), length(1000 * bed.block().length())));
            for (int w = 0; w < season.weeks(); w++) {
                row.add(length(outcome.bedUse()[bed.index()][w]));
            }
            rows.add(row);
        }
        return Grid.of("Bed use", heads, rows);
    }

    /** A row a kind and week in which there are stems of it. */
    private Grid stems() {
        KindTree kinds = KindTree.of(season.roles());
        List<List<Cell>> rows = new ArrayList<>();
        for (int node = 0; node < kinds.size(); node++) {
            for (int w = 0; w < season.weeks(); w++) {
                Spread stems = Spread.of(outcome.stems()[node][w]);
                if (stems.mean() > 0) {
                    rows.add(List.of(
                            Cell.of(kinds.path(node)),
                            week(w),
                            stems(stems.mean()),
                            stems(stems.low()),
                            stems(stems.middle()),
                            stems(stems.high())));
                }
            }
        }
        return Grid.of(
                "Stems", List.of("kind", "week", "mean", "one year in ten", "usual year", "nine years in ten"), rows);
    }

    /** A row for each who takes stems, and week in which they ask. */
    private Grid deliveries() {
        KindTree kinds = KindTree.of(season.roles());
        List<List<Cell>> rows = new ArrayList<>();
        for (DemandLine line : outcome.demand()) {
            for (int w = 0; w < season.weeks(); w++) {
                if (line.asked()[w] > 0) {
                    Spread served = Spread.of(outcome.served()[line.index()][w]);
                    rows.add(List.of(
                            Cell.of(line.name()),
                            Cell.of(kinds.path(line.node())),
                            week(w),
                            stems(line.asked()[w]),
                            Cell.of(line.promise() == DemandLine.Promised.NOTHING ? "" : "promised"),
                            stems(served.mean()),
                            stems(served.low()),
                            stems(served.middle())));
                }
            }
        }
        return Grid.of(
                "Deliveries",
                List.of(
                        "outlet or order",
                        "kind",
                        "week",
                        "asked for",
                        "promised",
                        "delivered, mean",
                        "one year in ten",
                        "usual year"),
                rows);
    }

    /** A row a week. */
    private Grid hours() {
        Outcome.Work work = outcome.work();
        List<List<Cell>> rows = new ArrayList<>();
        for (int w = 0; w < season.weeks(); w++) {
            int week = w;
            Spread all = Spread.of(outcome.seasons(), k -> work.all(week, k));
            rows.add(List.of(
                    week(w),
                    hours(work.chores()[w]),
                    hours(work.making()[w]),
                    hours(work.service()[w]),
                    hours(work.plantings()[w]),
                    hours(Spread.of(work.cutting()[w]).mean()),
                    hours(Spread.of(work.clearing()[w]).mean()),
                    hours(all.mean()),
                    hours(all.high()),
                    limit(work.own()[w]),
                    hours(work.hired()[w]),
                    limit(work.cuttingLimit()[w])));
        }
        return Grid.of(
                "Hours",
                List.of(
                        "week",
                        "standing work",
                        "making up",
                        "serving",
                        "plantings",
                        "cutting, mean",
                        "clearing what is left over, mean",
                        "all, mean",
                        "all, nine years in ten",
                        "own hours",
                        "hours to hire",
                        "hours fit for cutting"),
                rows);
    }
}
