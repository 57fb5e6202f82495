package bedwright.plan;

import bedwright.plan.Outcome.StockKind;
import bedwright.season.Bed;
import bedwright.season.Rounding;
import bedwright.season.Season;
import bedwright.season.Stock;
import bedwright.season.UnderWay;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something that plantings take up by the week: the metres of a bed, the cells of the bench, a stock.
 *
 * @param rule the rule that holds it
 * @param name name for people
 * @param kind kind of stock; null for a bed
 * @param holds how much there is: mm or cells
 * @param hard hard units for each mm or cell beyond, by week; 0 where more can be bought
 * @param price grains for each mm or cell of the season's peak beyond; 0 where none can be bought
 * @param unit mm or cells
 */
record Shelf(Rule rule, String name, @Nullable StockKind kind, long holds, long hard, long price, String unit) {
    /** A minute or a mm·week or a cell beyond, in the hard score's units. */
    static final long ONE = Grains.TICKS_A_MINUTE;
    /** Stock in metres is counted in cm: a mm is a tenth. */
    static final long A_MILLIMETRE_OF_STOCK = ONE / 10;

    /** All shelves of a season: the beds by number, then bench, trays, nets and cover. */
    static List<Shelf> of(Season season) {
        List<Shelf> shelves = new ArrayList<>();
        for (Bed bed : season.allBeds()) {
            long length = Rounding.halfUp(1000 * bed.block().length());
            shelves.add(new Shelf(Rule.BED_ROOM, bed.name(), null, length, ONE, 0, "mm"));
        }
        Stock stock = season.stock();
        shelves.add(new Shelf(Rule.BENCH_ROOM, "bench", StockKind.BENCH, stock.bench(), ONE, 0, "cells"));
        Stock.Trays trays = stock.trays();
        shelves.add(
                trays == null
                        ? new Shelf(Rule.STOCK_ROOM, "trays", StockKind.TRAYS, WorkWeeks.UNLIMITED, ONE, 0, "cells")
                        : stock(season, "trays", StockKind.TRAYS, trays.cells(), trays.buy()));
        for (Stock.Net net : stock.nets()) {
            shelves.add(stock(season, net.name(), StockKind.NET, Rounding.halfUp(1000 * net.metres()), net.buy()));
        }
        Stock.Cover cover = stock.cover();
        shelves.add(
                cover == null
                        ? new Shelf(Rule.STOCK_ROOM, "row cover", StockKind.COVER, 0, A_MILLIMETRE_OF_STOCK, 0, "mm")
                        : stock(
                                season,
                                "row cover",
                                StockKind.COVER,
                                Rounding.halfUp(1000 * cover.metres()),
                                cover.buy()));
        return List.copyOf(shelves);
    }

    /** How much of it is not there in a week of a season under way: mm or cells. */
    long missing(Season season, int week) {
        UnderWay underWay = season.underWay();
        if (underWay == null || kind == null) {
            return 0;
        }
        double amount = underWay.missing(name, season.weekStart(week));
        return Math.min(holds, Rounding.halfUp(unit.equals("mm") ? 1000 * amount : amount));
    }

    private static Shelf stock(Season season, String name, StockKind kind, long holds, @Nullable Double buy) {
        boolean cells = kind == StockKind.TRAYS;
        String unit = cells ? "cells" : "mm";
        if (buy == null) {
            return new Shelf(Rule.STOCK_ROOM, name, kind, holds, cells ? ONE : A_MILLIMETRE_OF_STOCK, 0, unit);
        }
        long price = cells ? Grains.ofThing(season, buy) : Grains.ofMetre(season, buy);
        return new Shelf(Rule.EXTRA_STOCK, name, kind, holds, 0, price, unit);
    }
}
