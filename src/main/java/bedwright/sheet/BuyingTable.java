package bedwright.sheet;

import bedwright.season.Season;
import bedwright.table.Cell;
import bedwright.table.Grid;
import java.util.ArrayList;
import java.util.List;

/** The buying list as a table for a spreadsheet: what stands in it is what the printed list says. */
final class BuyingTable {
    static final String NAME = "Buying";
    private static final int DIGITS = 2;

    private BuyingTable() {}

    static Grid of(SheetFacts facts, Buying.Wishes wishes) {
        Season season = facts.season();
        BuyingList list = BuyingList.of(facts, wishes);
        List<List<Cell>> rows = new ArrayList<>();
        for (BuyingList.Plants line : list.plants()) {
            Integer packet = line.packet();
            rows.add(List.of(
                    Cell.of(line.by()),
                    Cell.of(line.need().crop()),
                    Cell.of(line.need().what().words()),
                    Cell.EMPTY,
                    Cell.of(line.need().amount()),
                    Cell.of(line.wanted()),
                    Cell.of(line.have()),
                    Cell.of(line.bought()),
                    packet == null ? Cell.EMPTY : Cell.of(line.packets()),
                    packet == null ? Cell.EMPTY : Cell.of(packet.longValue()),
                    money(season, line.cost()),
                    Cell.of(season.weekStart(line.need().firstWeek())),
                    Cell.of(Buying.care(line.need()))));
        }
        for (BuyingList.Thing thing : list.things()) {
            boolean isMix = thing.in() == BuyingList.In.LITRES;
            rows.add(List.of(
                    thing.week() < 0 ? Cell.EMPTY : Cell.of(season.weekStart(thing.week())),
                    Cell.of(thing.name()),
                    Cell.of(isMix ? "for so many cells" : "most at once"),
                    Cell.of(isMix ? "l" : unit(season, thing.in())),
                    isMix ? Cell.of(thing.most()) : amount(season, thing.most(), thing.in()),
                    Cell.EMPTY,
                    isMix ? Cell.EMPTY : amount(season, thing.owned(), thing.in()),
                    amount(season, thing.more(), thing.in()),
                    Cell.EMPTY,
                    Cell.EMPTY,
                    isMix ? Cell.EMPTY : money(season, thing.cost()),
                    Cell.EMPTY,
                    Cell.EMPTY));
        }
        return Grid.of(
                NAME,
                List.of(
                        "order or needed by",
                        "crop or thing",
                        "what",
                        "unit",
                        "planned",
                        "with margin",
                        "in stock",
                        "to buy",
                        "packets",
                        "a packet holds",
                        "cost",
                        "first used",
                        "care"),
                rows);
    }

    private static Cell money(Season season, double smallest) {
        return Cell.of(smallest / season.currency().smallest(), DIGITS);
    }

    private static String unit(Season season, BuyingList.In in) {
        return switch (in) {
            case CELLS -> "cells";
            case MILLIMETRES -> season.units().length().symbol();
            case LITRES -> "l";
        };
    }

    private static Cell amount(Season season, long value, BuyingList.In in) {
        return in == BuyingList.In.MILLIMETRES
                ? Cell.of(season.units().length().of(value / 1000.0), 3)
                : Cell.of(value);
    }
}
