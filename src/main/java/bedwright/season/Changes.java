package bedwright.season;

import bedwright.season.Strategies.Amount;
import bedwright.season.Strategies.MoreBeds;
import bedwright.season.Strategies.MoreHands;
import bedwright.season.Strategies.MoreHours;
import bedwright.season.Strategies.MoreNet;
import bedwright.season.Strategies.Strategy;
import bedwright.season.Strategies.Ways;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Makes the season of a strategy. Crops, pests and the site stay as they are and in their order, so that chance brings
 * the same to all strategies of a season.
 */
public final class Changes {
    private final Season season;
    private final Strategy strategy;

    private Changes(Season season, Strategy strategy) {
        this.season = season;
        this.strategy = strategy;
    }

    /**
     * The season with a strategy's changes, under its own name and the strategy's. What a file's check refuses is not
     * looked for.
     */
    public static Season of(Season season, Strategy strategy) {
        return new Changes(season, strategy).season();
    }

    /** Whether a strategy leaves a way of growing a crop from the pool. */
    public static boolean leaves(Strategy strategy, Crop crop, Method way) {
        List<Ways> said =
                strategy.only().stream().filter(ways -> ways.speaksOf(crop)).toList();
        return (said.isEmpty() || said.stream().anyMatch(ways -> ways.holds(crop, way)))
                && strategy.barred().stream().noneMatch(ways -> ways.holds(crop, way));
    }

    private Season season() {
        return new Season(
                season.name() + ": " + strategy.name(),
                season.about(),
                season.units(),
                season.starts(),
                season.weeks(),
                season.currency(),
                season.site(),
                season.beds().stream().map(this::beds).toList(),
                windbreaks(),
                season.roughGrass(),
                season.pests(),
                stock(),
                labour(),
                season.roles(),
                season.families(),
                season.rotation(),
                season.crops().stream().map(this::crop).toList(),
                season.pool().stream().filter(this::isLeft).toList(),
                season.standing(),
                held(),
                season.outlets().stream().map(this::outlet).toList(),
                season.recipes(),
                season.orders().stream().map(this::order).toList(),
                or(strategy.caution(), season.caution()),
                possible(),
                season.changes(),
                season.underWay());
    }

    private static <T> T or(@Nullable T said, T usual) {
        return said == null ? usual : said;
    }

    private BedBlock beds(BedBlock block) {
        int count = block.count();
        double length = block.length();
        for (MoreBeds more : strategy.beds()) {
            if (more.beds().equals(block.name())) {
                count += more.count();
                length += more.metres();
            }
        }
        return new BedBlock(
                block.name(),
                count,
                block.at(),
                block.heading(),
                length,
                block.width(),
                block.path(),
                block.tunnel(),
                block.workableFrom(),
                block.taken(),
                block.history());
    }

    private List<Windbreak> windbreaks() {
        List<Windbreak> all = new ArrayList<>(season.windbreaks());
        all.addAll(strategy.windbreaks());
        return all;
    }

    private Stock stock() {
        Stock stock = season.stock();
        Stock.Trays trays = stock.trays();
        Stock.Cover cover = stock.cover();
        return new Stock(
                stock.bench() + or(strategy.bench(), 0),
                trays == null ? null : new Stock.Trays(trays.cells() + or(strategy.trays(), 0), trays.buy()),
                stock.nets().stream().map(this::net).toList(),
                cover == null
                        ? null
                        : new Stock.Cover(
                                cover.metres() + or(strategy.cover(), 0.0),
                                cover.buy(),
                                cover.wear(),
                                cover.protects(),
                                cover.letsThrough()));
    }

    private Stock.Net net(Stock.Net net) {
        double metres = net.metres();
        for (MoreNet more : strategy.nets()) {
            metres += more.net().equals(net.name()) ? more.metres() : 0;
        }
        return new Stock.Net(net.name(), metres, net.buy(), net.wear(), net.strengthens());
    }

    private Labour labour() {
        Labour labour = season.labour();
        return new Labour(
                labour.ownRate(),
                labour.hiredRate(),
                hours(labour.own(), strategy.ownHours()),
                hours(labour.hired(), strategy.hiredHours()),
                cutting(labour.cutting()),
                labour.chores(),
                labour.jobs());
    }

    private static boolean holds(@Nullable LocalDate from, @Nullable LocalDate to, LocalDate day) {
        return (from == null || !day.isBefore(from)) && (to == null || !day.isAfter(to));
    }

    /** An entry for every week, where anything is changed; never below 0. */
    private List<Labour.Hours> hours(List<Labour.Hours> known, List<MoreHours> changes) {
        if (changes.isEmpty()) {
            return known;
        }
        List<Labour.Hours> weeks = new ArrayList<>();
        for (int w = 0; w < season.weeks(); w++) {
            LocalDate first = season.weekStart(w);
            double hours = 0;
            for (Labour.Hours entry : known) {
                hours = holds(entry.from(), entry.to(), first) ? entry.hours() : hours;
            }
            for (MoreHours more : changes) {
                hours += holds(more.from(), more.to(), first) ? more.more() : 0;
            }
            weeks.add(new Labour.Hours(first, first, Math.max(0, hours)));
        }
        return weeks;
    }

    /** Likewise; where there were no hours fit for cutting, there still are none. */
    private List<Labour.CuttingHours> cutting(List<Labour.CuttingHours> known) {
        if (strategy.cuttingHands().isEmpty()) {
            return known;
        }
        List<Labour.CuttingHours> weeks = new ArrayList<>();
        for (int w = 0; w < season.weeks(); w++) {
            LocalDate first = season.weekStart(w);
            Labour.CuttingHours there = new Labour.CuttingHours(first, first, 0, 0, 0);
            for (Labour.CuttingHours entry : known) {
                there = holds(entry.from(), entry.to(), first) ? entry : there;
            }
            double hands = there.hands();
            for (MoreHands more : strategy.cuttingHands()) {
                hands += holds(more.from(), more.to(), first) ? more.more() : 0;
            }
            weeks.add(new Labour.CuttingHours(first, first, Math.max(0, hands), there.coolHours(), there.mornings()));
        }
        return weeks;
    }

    /** A crop of which nothing is left keeps its ways: it only has no plantings to choose from. */
    private Crop crop(Crop crop) {
        List<Method> left = crop.methods().stream()
                .filter(way -> leaves(strategy, crop, way))
                .toList();
        return left.isEmpty() || left.size() == crop.methods().size()
                ? crop
                : crop.with(crop.kinds(), crop.appeal(), crop.figures(), left);
    }

    /** What is held of the lots and by the ways that are left; what is left of the pool keeps its order. */
    private List<Held> held() {
        List<Held> all = new ArrayList<>();
        for (Held one : season.held()) {
            int entry = one.entry(season);
            boolean isGrown = season.crops().stream()
                    .filter(crop -> crop.name().equals(one.crop()))
                    .flatMap(crop -> crop.methods().stream()
                            .filter(way -> way.name().equals(one.method()) && leaves(strategy, crop, way)))
                    .findFirst()
                    .isPresent();
            if (isGrown && entry >= 0) {
                long before = season.pool().subList(0, entry).stream()
                        .filter(this::isLeft)
                        .count();
                all.add(new Held(
                        one.crop(), one.lots(), one.bed(), one.sown(), one.method(), Math.toIntExact(before + 1)));
            }
        }
        return all;
    }

    private boolean isLeft(Lots lots) {
        return season.crops().stream()
                .filter(crop -> crop.name().equals(lots.crop()))
                .anyMatch(crop -> crop.methods().stream().anyMatch(way -> leaves(strategy, crop, way)));
    }

    private Outlet outlet(Outlet outlet) {
        List<Outlet.Ask> asks = outlet.asks();
        for (Amount change : strategy.outlets()) {
            if (change.outlet().equals(outlet.name())) {
                asks = asks.stream()
                        .map(ask -> new Outlet.Ask(ask.from(), ask.to(), changed(change, ask.stems())))
                        .toList();
            }
        }
        return new Outlet(outlet.name(), outlet.kind(), outlet.price(), asks, outlet.promise(), outlet.service());
    }

    private Order order(Order order) {
        List<Order.Ask> asks = order.asks();
        for (Amount change : strategy.outlets()) {
            if (change.outlet().equals(order.name())) {
                asks = asks.stream()
                        .map(ask -> new Order.Ask(
                                ask.from(),
                                ask.to(),
                                Math.toIntExact(Rounding.halfUp(changed(change, ask.bouquets())))))
                        .toList();
            }
        }
        return new Order(
                order.name(), order.recipe(), asks, order.spare(), order.promise(), order.service(), order.event());
    }

    private static double changed(Amount change, double was) {
        return change.amount() != null ? change.amount() : was * or(change.times(), 1.0);
    }

    private Sampling possible() {
        Sampling known = season.possible();
        Integer planned = strategy.planned();
        Sampling.Doubt doubt = known.doubt();
        if (strategy.doubt() != null && !strategy.doubt()) {
            Sampling.BySureness none = new Sampling.BySureness(0, 0, 0);
            doubt = new Sampling.Doubt(none, none);
        }
        return planned == null
                ? new Sampling(known.count(), known.seed(), doubt, known.given())
                : new Sampling(planned, known.seed(), doubt, List.of());
    }
}
