package bedwright.underway;

import bedwright.log.Entry;
import bedwright.log.Note;
import bedwright.log.OrderLine;
import bedwright.log.Period;
import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Promise;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** What is asked for on a date: the season's outlets and orders as the notes have changed them, from a week on. */
final class AskedFor {
    /** Promised at what a missing stem usually costs. */
    private static final Promise PROMISED = new Promise(null, null, null);

    private final Season whole;
    private final LocalDate on;
    /** First week that counts. */
    private final int week;

    private final List<Outlet> outlets = new ArrayList<>();
    private final List<Order> orders = new ArrayList<>();
    /** What is asked for and undecided. */
    private final List<Entry> undecided = new ArrayList<>();

    /**
     * @param notes up to the date
     * @param on the date
     * @param isHeld whether what is asked for and undecided, and has not lapsed, counts as promised
     */
    AskedFor(Season whole, List<Entry> notes, LocalDate on, boolean isHeld) {
        this.whole = whole;
        this.on = on;
        this.week = Math.max(0, whole.weekOf(on));
        whole.outlets().forEach(outlet -> take(outlet, outlet.asks()));
        whole.orders().forEach(order -> take(order, order.asks()));
        for (Entry entry : notes) {
            switch (entry.note()) {
                case Note.Ordered order -> ordered(entry, order);
                case Note.OrderGone gone -> gone(entry, gone);
                default -> {}
            }
        }
        undecided.removeIf(entry -> entry.note() instanceof Note.Ordered order && isOver(order.until()));
        if (isHeld) {
            undecided.forEach(entry -> {
                if (entry.note() instanceof Note.Ordered order) {
                    add(order, PROMISED, null);
                }
            });
        }
    }

    private boolean isOver(@Nullable LocalDate until) {
        return until != null && until.isBefore(on);
    }

    List<Outlet> outlets() {
        return List.copyOf(outlets);
    }

    List<Order> orders() {
        return List.copyOf(orders);
    }

    /** Notes of what is asked for, undecided and not lapsed. */
    List<Entry> undecided() {
        return List.copyOf(undecided);
    }

    private void ordered(Entry entry, Note.Ordered order) {
        switch (order.how()) {
            case ASKED -> undecided.add(entry);
            case NEW -> {
                forget(order.name());
                add(order, PROMISED, null);
            }
            case CHANGED -> {
                Optional<Outlet> outlet = outlets.stream()
                        .filter(one -> one.name().equals(order.name()))
                        .findFirst();
                Optional<Order> bouquets = orders.stream()
                        .filter(one -> one.name().equals(order.name()))
                        .findFirst();
                Promise promise = outlet.map(Outlet::promise)
                        .or(() -> bouquets.map(Order::promise))
                        .orElse(null);
                ToDoubleFunction<String> prices = pricesOf(order.name());
                without(order.name(), order.weeks());
                add(order, promise, bouquets.orElse(null), prices);
            }
        }
    }

    private void gone(Entry entry, Note.OrderGone gone) {
        if (gone.weeks() == null && forget(gone.name())) {
            return;
        }
        LocalDate end = whole.weekStart(whole.weeks());
        without(gone.name(), gone.weeks() == null ? new Period(entry.on(), end) : gone.weeks());
    }

    /** Whether something undecided was known by that name; it no longer is. */
    private boolean forget(String name) {
        return undecided.removeIf(entry ->
                entry.note() instanceof Note.Ordered order && order.name().equals(name));
    }

    /** What somebody paid for a kind so far; else the best that anybody pays. */
    private ToDoubleFunction<String> pricesOf(String name) {
        List<Outlet> before = List.copyOf(outlets);
        return kind -> before.stream()
                .filter(one -> one.name().equals(name) && one.kind().equals(kind))
                .mapToDouble(Outlet::price)
                .findFirst()
                .orElseGet(() -> OrderLine.usualPrice(whole, kind).orElse(0));
    }

    private void without(String name, Period weeks) {
        List<Outlet> before = List.copyOf(outlets);
        outlets.clear();
        for (Outlet outlet : before) {
            if (!outlet.name().equals(name)) {
                outlets.add(outlet);
                continue;
            }
            List<Outlet.Ask> asks = new ArrayList<>();
            for (Outlet.Ask ask : outlet.asks()) {
                pieces(ask.from(), ask.to(), weeks)
                        .forEach(piece -> asks.add(new Outlet.Ask(piece.from(), piece.to(), ask.stems())));
            }
            take(outlet, asks);
        }
        List<Order> others = List.copyOf(orders);
        orders.clear();
        for (Order order : others) {
            if (!order.name().equals(name)) {
                orders.add(order);
                continue;
            }
            List<Order.Ask> asks = new ArrayList<>();
            for (Order.Ask ask : order.asks()) {
                pieces(ask.from(), ask.to(), weeks)
                        .forEach(piece -> asks.add(new Order.Ask(piece.from(), piece.to(), ask.bouquets())));
            }
            take(order, asks);
        }
    }

    /** What is left of a run of weeks without those that hold a day of a time. */
    private List<Period> pieces(LocalDate from, @Nullable LocalDate to, Period without) {
        int first = whole.weekOf(from);
        int last = to == null ? first : whole.weekOf(to);
        int goneFrom = whole.weekOf(without.from());
        int goneTo = whole.weekOf(without.to());
        List<Period> left = new ArrayList<>();
        if (last < goneFrom || first > goneTo) {
            left.add(new Period(whole.weekStart(first), whole.weekStart(last)));
            return left;
        }
        if (first < goneFrom) {
            left.add(new Period(whole.weekStart(first), whole.weekStart(goneFrom - 1)));
        }
        if (last > goneTo) {
            left.add(new Period(whole.weekStart(goneTo + 1), whole.weekStart(last)));
        }
        return left;
    }

    private void add(Note.Ordered order, @Nullable Promise promise, @Nullable Order before) {
        add(order, promise, before, kind -> OrderLine.usualPrice(whole, kind).orElse(0));
    }

    private void add(
            Note.Ordered order, @Nullable Promise promise, @Nullable Order before, ToDoubleFunction<String> prices) {
        LocalDate from = order.weeks().from();
        LocalDate to = order.weeks().to();
        for (OrderLine line : order.lines()) {
            Double price = line.price();
            List<Outlet.Ask> asks = List.of(new Outlet.Ask(from, to, line.stems()));
            take(
                    new Outlet(
                            order.name(),
                            line.kind(),
                            price == null ? prices.applyAsDouble(line.kind()) : price,
                            asks,
                            promise,
                            0),
                    asks);
        }
        if (order.bouquets() > 0) {
            List<Order.Ask> asks = List.of(new Order.Ask(from, to, order.bouquets()));
            String recipe = order.recipe() == null && before != null ? before.recipe() : String.valueOf(order.recipe());
            take(
                    new Order(
                            order.name(),
                            recipe,
                            asks,
                            before == null ? 0 : before.spare(),
                            promise,
                            before == null ? 0 : before.service(),
                            before == null ? from.equals(to) : before.event()),
                    asks);
        }
    }

    /** Adds an outlet as far as it asks for anything from this week on. */
    private void take(Outlet outlet, List<Outlet.Ask> asks) {
        List<Outlet.Ask> left = asks.stream()
                .filter(ask -> lastWeek(ask.from(), ask.to()) >= week)
                .map(ask -> new Outlet.Ask(later(ask.from()), ask.to(), ask.stems()))
                .toList();
        if (!left.isEmpty()) {
            outlets.add(
                    new Outlet(outlet.name(), outlet.kind(), outlet.price(), left, outlet.promise(), outlet.service()));
        }
    }

    private void take(Order order, List<Order.Ask> asks) {
        List<Order.Ask> left = asks.stream()
                .filter(ask -> lastWeek(ask.from(), ask.to()) >= week)
                .map(ask -> new Order.Ask(later(ask.from()), ask.to(), ask.bouquets()))
                .toList();
        if (!left.isEmpty()) {
            orders.add(new Order(
                    order.name(),
                    order.recipe(),
                    left,
                    order.spare(),
                    order.promise(),
                    order.service(),
                    order.event()));
        }
    }

    private int lastWeek(LocalDate from, @Nullable LocalDate to) {
        return whole.weekOf(to == null ? from : to);
    }

    private LocalDate later(LocalDate from) {
        LocalDate start = whole.weekStart(week);
        return from.isBefore(start) ? start : from;
    }
}
