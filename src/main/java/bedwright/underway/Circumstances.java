package bedwright.underway;

import bedwright.log.Entry;
import bedwright.season.BedBlock;
import bedwright.season.KeptPlanting;
import bedwright.season.Labour;
import bedwright.season.Lots;
import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.UnderWay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What of a season that is not its plantings is left on a date: what is asked for, beds, hands, stock and weather. */
final class Circumstances {
    private final Season whole;
    private final LocalDate on;
    /** First day of the week that it is. */
    private final LocalDate week;

    Circumstances(Season whole, List<Entry> notes, LocalDate on) {
        this.whole = whole;
        this.on = on;
        this.week = whole.weekStart(Math.max(0, whole.weekOf(on)));
    }

    Season season(List<Lots> pool, List<Standing> standing, List<KeptPlanting> inForce, int nextNumber) {
        return whole.begun(
                new UnderWay(on, List.of(), List.of(), inForce, nextNumber),
                beds(),
                labour(),
                pool,
                standing,
                outlets(),
                orders());
    }

    private List<BedBlock> beds() {
        return whole.beds();
    }

    /** Work that comes every week comes from this week on. */
    private Labour labour() {
        Labour labour = whole.labour();
        List<Labour.Chore> chores = labour.chores().stream()
                .filter(chore -> chore.to() == null || !chore.to().isBefore(week))
                .map(chore -> new Labour.Chore(chore.name(), later(chore.from()), chore.to(), chore.hours()))
                .toList();
        return new Labour(
                labour.ownRate(),
                labour.hiredRate(),
                labour.own(),
                labour.hired(),
                labour.cutting(),
                chores,
                labour.jobs());
    }

    private LocalDate later(@Nullable LocalDate from) {
        return from == null || from.isBefore(week) ? week : from;
    }

    private List<Outlet> outlets() {
        List<Outlet> left = new ArrayList<>();
        for (Outlet outlet : whole.outlets()) {
            List<Outlet.Ask> asks = outlet.asks().stream()
                    .filter(ask -> !last(ask.from(), ask.to()).isBefore(week))
                    .map(ask -> new Outlet.Ask(later(ask.from()), ask.to(), ask.stems()))
                    .toList();
            if (!asks.isEmpty()) {
                left.add(new Outlet(
                        outlet.name(), outlet.kind(), outlet.price(), asks, outlet.promise(), outlet.service()));
            }
        }
        return left;
    }

    private List<Order> orders() {
        List<Order> left = new ArrayList<>();
        for (Order order : whole.orders()) {
            List<Order.Ask> asks = order.asks().stream()
                    .filter(ask -> !last(ask.from(), ask.to()).isBefore(week))
                    .map(ask -> new Order.Ask(later(ask.from()), ask.to(), ask.bouquets()))
                    .toList();
            if (!asks.isEmpty()) {
                left.add(new Order(
                        order.name(),
                        order.recipe(),
                        asks,
                        order.spare(),
                        order.promise(),
                        order.service(),
                        order.event()));
            }
        }
        return left;
    }

    private static LocalDate last(LocalDate from, @Nullable LocalDate to) {
        return to == null ? from : to;
    }
}
