package bedwright.recheck;

import bedwright.season.Bed;
import bedwright.season.Stock;
import bedwright.season.UnderWay;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Beds, bench, trays, nets and cover by week against what there is (season model, sections 5 and 8). */
final class Stocks {
    /** Hard score of a mm·week of bed, a cell or a cm. */
    static final long WHOLE = 100_000;
    /** Hard score of a mm of net or cover, ten of which make a cm. */
    private static final long TENTH = 10_000;

    private final Facts facts;
    private final List<Placed> plantings;
    private final List<Use> uses;
    private final List<Tally.StockOver> over = new ArrayList<>();
    private long extra;

    /** What one lot takes in a week. */
    private interface Taking {
        long of(Use use, int week);
    }

    Stocks(Facts facts, List<Placed> plantings, List<Use> uses) {
        this.facts = facts;
        this.plantings = plantings;
        this.uses = uses;
        Stock stock = facts.season.stock();
        Stock.Trays trays = stock.trays();
        if (trays != null) {
            add("trays", Use::trays, trays.cells(), WHOLE, trays.buy(), facts.units::grains);
        }
        for (Stock.Net net : stock.nets()) {
            add(
                    net.name(),
                    (use, week) -> use.net(net.name(), week),
                    Units.millimetres(net.metres()),
                    TENTH,
                    net.buy(),
                    facts.units::grainsAMillimetre);
        }
        Stock.Cover cover = stock.cover();
        if (cover != null) {
            add(
                    "row cover",
                    Use::cover,
                    Units.millimetres(cover.metres()),
                    TENTH,
                    cover.buy(),
                    facts.units::grainsAMillimetre);
        }
    }

    private interface Pricing {
        long grains(double money);
    }

    /** What is over is bought once for its worst week where more can be bought, and else is over in each week. */
    private void add(String name, Taking taking, long owned, long weight, @Nullable Double buy, Pricing pricing) {
        if (buy == null) {
            over.add(new Tally.StockOver(
                    name, sumOver(week -> total(taking, (int) week) + gone(name, weight, (int) week), owned), weight));
            return;
        }
        long peak = 0;
        for (int week = 0; week < facts.weeks(); week++) {
            peak = Math.max(peak, total(taking, week) + gone(name, weight, week) - owned);
        }
        extra += peak * pricing.grains(buy);
    }

    /** What is not there in a week of a season under way: cells, or mm. */
    private long gone(String name, long weight, int week) {
        UnderWay underWay = facts.season.underWay();
        if (underWay == null) {
            return 0;
        }
        double sum = 0;
        for (UnderWay.Missing one : underWay.missing()) {
            boolean isThen = facts.season.weekOf(one.from()) <= week && week <= facts.season.weekOf(one.to());
            sum += one.stock().equals(name) && isThen ? one.amount() : 0;
        }
        return weight == TENTH ? Units.millimetres(sum) : Math.round(sum);
    }

    private long total(Taking taking, int week) {
        long sum = 0;
        for (int i = 0; i < plantings.size(); i++) {
            sum += plantings.get(i).lots() * taking.of(uses.get(i), week);
        }
        return sum;
    }

    private long sumOver(LongUnaryOperator use, long limit) {
        long sum = 0;
        for (int week = 0; week < facts.weeks(); week++) {
            sum += Math.max(0, use.applyAsLong(week) - limit);
        }
        return sum;
    }

    /** Millimetres·weeks over the length of beds. */
    long bedRoom() {
        long sum = 0;
        for (Bed bed : facts.beds) {
            long length = Units.millimetres(bed.block().length());
            for (int week = 0; week < facts.weeks(); week++) {
                long held = 0;
                for (int i = 0; i < plantings.size(); i++) {
                    if (plantings.get(i).bed().index() == bed.index()) {
                        held += plantings.get(i).lots() * uses.get(i).bed(week);
                    }
                }
                sum += Math.max(0, held - length);
            }
        }
        return sum;
    }

    /** Cells·weeks over what the bench holds. */
    long bench() {
        return sumOver(
                week -> total(Use::bench, (int) week) + gone("bench", WHOLE, (int) week),
                facts.season.stock().bench());
    }

    /** Stocks of which no more can be bought. */
    List<Tally.StockOver> over() {
        return over;
    }

    /** Price of what must be bought, in grains. */
    long extra() {
        return extra;
    }
}
