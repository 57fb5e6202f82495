package bedwright.sheet;

import bedwright.season.Method;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;

/** The table of plantings, by number. */
final class PlantingsTable {
    private PlantingsTable() {}

    static Table of(Season season, List<Shown> plantings) {
        Say say = new Say(season);
        List<Table.Column> columns = List.of(
                Table.Column.number("No."),
                Table.Column.text("Crop"),
                Table.Column.text("Method"),
                Table.Column.text("Bed"),
                Table.Column.text("Sown or set"),
                Table.Column.text("Planted out"),
                Table.Column.text("First cut, week of"),
                Table.Column.text("Last cut, week of"),
                Table.Column.number("Plants"),
                Table.Column.number(say.lengthsHead()),
                Table.Column.text("Net"),
                Table.Column.text("Cover"),
                Table.Column.number("Stems, usual year"),
                Table.Column.number("1 year in 10"),
                Table.Column.number("9 years in 10"));
        List<List<String>> rows = new ArrayList<>();
        long plants = 0;
        double millimetres = 0;
        for (Shown planting : plantings) {
            rows.add(row(season, say, planting));
            plants += planting.kept().plants();
            millimetres += planting.millimetres();
        }
        List<String> total = new ArrayList<>(List.of("All", Say.count(plantings.size(), "planting", "plantings")));
        total.addAll(List.of("", "", "", "", "", "", Say.whole(plants), say.length(millimetres), "", "", "", "", ""));
        return new Table("plantings-table", "Plantings by number", columns, rows, List.of(total));
    }

    private static List<String> row(Season season, Say say, Shown planting) {
        boolean cut = planting.cutFrom() < planting.cutTo();
        String net = planting.net();
        return List.of(
                Integer.toString(planting.number()),
                planting.name(),
                planting.kept().method()
                        + (season.held().stream().anyMatch(held -> held.isAt(planting.kept(), season))
                                ? ", held in place"
                                : ""),
                planting.kept().bed(),
                planting.isWritten() ? "stands" : say.shortDate(planting.kept().sown()),
                isPlantedOut(planting) ? say.shortWeek(planting.heldFrom()) : "",
                cut ? say.shortWeek(planting.cutFrom()) : "not cut",
                cut ? say.shortWeek(planting.cutTo() - 1) : "",
                Say.whole(planting.kept().plants()),
                say.length(planting.millimetres()),
                net == null || planting.netMillimetres() == 0
                        ? ""
                        : net + ", " + say.lengthWithUnit(planting.netMillimetres()),
                planting.coverFrom() < planting.coverTo()
                        ? say.shortWeek(planting.coverFrom()) + " – " + say.shortWeek(planting.coverTo())
                        : "",
                Say.stems(planting.stems().middle()),
                Say.stems(planting.stems().low()),
                Say.stems(planting.stems().high()));
    }

    /** "sown 3 May", "sown in trays 3 May", … */
    static String started(Say say, Shown planting) {
        if (planting.isWritten()) {
            return "stands";
        }
        String date = say.date(planting.kept().sown());
        return switch (planting.method().start()) {
            case SOWN -> "sown " + date;
            case TRAY -> "sown in trays " + date;
            case PLUGS -> "plugs set " + date;
            case SET -> "set " + date;
        };
    }

    private static boolean isPlantedOut(Shown planting) {
        return planting.method().start() == Method.Start.TRAY && planting.trayFrom() < planting.trayTo();
    }
}
