package bedwright.plan;

import bedwright.season.BedBlock;
import bedwright.season.Labour;
import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Role;
import bedwright.season.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** The same things with other amounts: so many times as many stems, hours, metres. */
final class Amounts {
    private Amounts() {}

    static Outlet asking(Outlet outlet, double times, double dearer, int serviceTimes) {
        return new Outlet(
                outlet.name(),
                outlet.kind(),
                Math.round(100 * outlet.price() * dearer) / 100.0,
                outlet.asks().stream()
                        .map(ask -> new Outlet.Ask(ask.from(), ask.to(), Math.rint(ask.stems() * times)))
                        .toList(),
                outlet.promise(),
                outlet.service() * serviceTimes);
    }

    static Order asking(Order order, double times, int serviceTimes) {
        return new Order(
                order.name(),
                order.recipe(),
                order.asks().stream()
                        .map(ask -> new Order.Ask(ask.from(), ask.to(), whole(ask.bouquets() * times)))
                        .toList(),
                order.spare(),
                order.promise(),
                order.service() * serviceTimes,
                order.event());
    }

    static int whole(double amount) {
        return Math.toIntExact(Math.max(1, Math.round(amount)));
    }

    /** A role and all within it, with so many times the stems that can be sold in a week. */
    static Role selling(Role role, int times) {
        return new Role(
                role.name(),
                role.cutting(),
                role.clearing(),
                most(role.mostAWeek(), times),
                kinds(role.kinds(), times));
    }

    private static List<Role.Kind> kinds(List<Role.Kind> kinds, int times) {
        return kinds.stream()
                .map(kind -> new Role.Kind(kind.name(), most(kind.mostAWeek(), times), kinds(kind.kinds(), times)))
                .toList();
    }

    private static @Nullable Integer most(@Nullable Integer most, int times) {
        return most == null ? null : Integer.valueOf(most * times);
    }

    /** Bench, trays, nets and cover, each so many times as much. */
    static Stock times(Stock stock, double times) {
        Stock.Trays trays = stock.trays();
        return new Stock(
                whole(stock.bench() * times),
                trays == null ? null : new Stock.Trays(whole(trays.cells() * times), trays.buy()),
                nets(stock, metres -> metres * times, true),
                cover(stock, metres -> metres * times, true));
    }

    /** Nets and cover of another length, of which no more can be bought. */
    static Stock withNets(Stock stock, DoubleUnaryOperator metres) {
        return new Stock(stock.bench(), stock.trays(), nets(stock, metres, false), cover(stock, metres, false));
    }

    private static List<Stock.Net> nets(Stock stock, DoubleUnaryOperator metres, boolean canBeBought) {
        return stock.nets().stream()
                .map(net -> new Stock.Net(
                        net.name(),
                        metres.applyAsDouble(net.metres()),
                        canBeBought ? net.buy() : null,
                        net.wear(),
                        net.strengthens()))
                .toList();
    }

    private static Stock.@Nullable Cover cover(Stock stock, DoubleUnaryOperator metres, boolean canBeBought) {
        Stock.Cover cover = stock.cover();
        return cover == null
                ? null
                : new Stock.Cover(
                        metres.applyAsDouble(cover.metres()),
                        canBeBought ? cover.buy() : null,
                        cover.wear(),
                        cover.protects(),
                        cover.letsThrough());
    }

    /** So many times the hours, hands and chores; what a job takes stays. */
    static Labour times(Labour labour, double times) {
        List<Labour.Chore> chores = new ArrayList<>();
        for (Labour.Chore chore : labour.chores()) {
            chores.add(new Labour.Chore(chore.name(), chore.from(), chore.to(), chore.hours() * times));
        }
        List<Labour.CuttingHours> cutting = new ArrayList<>();
        for (Labour.CuttingHours hours : labour.cutting()) {
            cutting.add(new Labour.CuttingHours(
                    hours.from(), hours.to(), hours.hands() * times, hours.coolHours(), hours.mornings()));
        }
        return new Labour(
                labour.ownRate(),
                labour.hiredRate(),
                hours(labour.own(), times),
                hours(labour.hired(), times),
                cutting,
                chores,
                labour.jobs());
    }

    private static List<Labour.Hours> hours(List<Labour.Hours> all, double times) {
        return all.stream()
                .map(hours -> new Labour.Hours(hours.from(), hours.to(), hours.hours() * times))
                .toList();
    }

    /** The same labour with other hours by week. */
    static Labour with(Labour labour, List<Labour.Hours> own, List<Labour.Hours> hired) {
        return new Labour(
                labour.ownRate(), labour.hiredRate(), own, hired, labour.cutting(), labour.chores(), labour.jobs());
    }

    /** A block of the same beds, each so many times as long. */
    static BedBlock ofLength(BedBlock block, double times) {
        return new BedBlock(
                block.name(),
                block.count(),
                block.at(),
                block.heading(),
                block.length() * times,
                block.width(),
                block.path(),
                block.tunnel(),
                block.workableFrom(),
                block.taken(),
                block.history());
    }
}
