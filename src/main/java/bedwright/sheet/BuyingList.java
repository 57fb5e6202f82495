package bedwright.sheet;

import bedwright.plan.Grains;
import bedwright.plan.Outcome;
import bedwright.season.Season;
import bedwright.season.UnderWay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * All that is bought for a plan: the one list from which the page, the screen and the spreadsheet's table are made.
 *
 * @param plants seed, plugs and tubers, by the day to order them
 * @param things trays, nets, cover and potting mix
 * @param planned what the plan itself reckons for what is sown and set, in the smallest unit of the currency
 * @param wear the same for the wear of nets and cover
 */
record BuyingList(List<Plants> plants, List<Thing> things, long planned, long wear) {
    private static final double MILLILITRES = 1000;

    /**
     * One line to order.
     *
     * @param wanted with the margin
     * @param have of these in stock
     * @param bought in whole packets, if their size is known
     * @param packets how many packets; 0 if their size is not known
     * @param packet how many are in one; null if that is not known
     * @param by day to order it by
     * @param isDue whether that is over, so that it is wanted at once
     */
    record Plants(
            BuyingNeeds.Need need,
            long wanted,
            long have,
            long bought,
            long packets,
            @Nullable Integer packet,
            LocalDate by,
            boolean isDue) {
        /** What is bought, at the plan's price for each, in the smallest unit of the currency. */
        double cost() {
            return need.amount() == 0 ? 0 : (double) need.cost() * bought / need.amount();
        }
    }

    /** What a thing is counted in. */
    enum In {
        CELLS,
        MILLIMETRES,
        LITRES
    }

    /**
     * A thing that is used again, or potting mix.
     *
     * @param week in which more of it is needed than is owned; −1 if never
     * @param in what the amounts are counted in; of potting mix the cells that it fills are in {@code most}
     * @param most at once
     * @param more to buy
     * @param cost in the smallest unit of the currency
     */
    record Thing(int week, String name, In in, long most, long owned, long more, double cost) {}

    BuyingList {
        plants = List.copyOf(plants);
        things = List.copyOf(things);
    }

    /** The list of a plan. */
    static BuyingList of(SheetFacts facts, Buying.Wishes wishes) {
        BuyingNeeds needs = BuyingNeeds.of(WeekFacts.of(facts));
        return new BuyingList(
                plants(facts.season(), needs, wishes),
                things(facts, needs, wishes),
                needs.bought().stream().mapToLong(BuyingNeeds.Need::cost).sum(),
                needs.wear());
    }

    /** Of all plants together, in the smallest unit of the currency. */
    double cost() {
        return plants.stream().mapToDouble(Plants::cost).sum();
    }

    private static List<Plants> plants(Season season, BuyingNeeds needs, Buying.Wishes wishes) {
        List<Plants> lines = new ArrayList<>();
        Map<String, Long> stock = new HashMap<>();
        wishes.have().forEach((crop, amount) -> stock.put(crop, (long) amount));
        for (BuyingNeeds.Need need : needs.bought()) {
            int margin = need.what() == BuyingNeeds.What.SEED ? wishes.margin() : 0;
            long wanted = Math.ceilDiv(need.amount() * (100 + margin), 100L);
            long have = Math.min(wanted, stock.getOrDefault(need.crop(), 0L));
            stock.merge(need.crop(), -have, Long::sum);
            long open = Math.max(0, wanted - have);
            Integer size = wishes.packets().get(need.crop());
            long packets = size == null ? 0 : Math.ceilDiv(open, (long) size);
            int ahead = switch (need.what()) {
                case SEED -> wishes.seedWeeks();
                case PLUGS -> wishes.plugWeeks();
                case TUBERS -> wishes.tuberWeeks();
            };
            LocalDate by = season.weekStart(need.firstWeek() - ahead);
            UnderWay underWay = season.underWay();
            boolean isDue = underWay != null && by.isBefore(underWay.on());
            lines.add(new Plants(
                    need,
                    wanted,
                    have,
                    size == null ? open : packets * size,
                    packets,
                    size,
                    underWay != null && isDue ? underWay.on() : by,
                    isDue));
        }
        lines.sort(Comparator.comparing(Plants::by)
                .thenComparing(line -> line.need().crop())
                .thenComparing(line -> line.need().what()));
        return lines;
    }

    private static List<Thing> things(SheetFacts facts, BuyingNeeds needs, Buying.Wishes wishes) {
        Season season = facts.season();
        List<Thing> things = new ArrayList<>();
        for (Outcome.StockUse stock : facts.outcome().stocks()) {
            long peak = 0;
            int over = -1;
            for (int w = 0; w < stock.use().length; w++) {
                peak = Math.max(peak, stock.use()[w]);
                over = over < 0 && stock.use()[w] > stock.owned() ? w : over;
            }
            if (stock.kind() != Outcome.StockKind.BENCH && peak > 0) {
                things.add(new Thing(
                        over,
                        stock.name(),
                        stock.kind() == Outcome.StockKind.TRAYS ? In.CELLS : In.MILLIMETRES,
                        peak,
                        stock.owned(),
                        Math.max(0, peak - stock.owned()),
                        Grains.toMoney(season, stock.extra())
                                * season.currency().smallest()));
            }
        }
        long cells = 0;
        int week = season.weeks();
        for (BuyingNeeds.Tray tray : needs.trays()) {
            cells += tray.cells();
            week = Math.min(week, tray.week());
        }
        if (cells > 0) {
            long litres = (long) Math.ceil(cells * wishes.mix() / MILLILITRES);
            things.add(new Thing(week, "potting mix", In.LITRES, cells, 0, litres, 0));
        }
        return things;
    }
}
