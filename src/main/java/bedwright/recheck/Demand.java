package bedwright.recheck;

import static java.util.Comparator.comparing;
import static java.util.Comparator.reverseOrder;

import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Promise;
import bedwright.season.Recipe;
import bedwright.season.Role;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Who asks for stems, and the work of serving them (season model, section 7). */
final class Demand {
    /** What it means to have promised. */
    enum Promised {
        NOTHING,
        MUST,
        BUY_IN,
        SHORTAGE
    }

    /**
     * Somebody who takes stems of one kind: an outlet, or one line of an order's recipe.
     *
     * @param price grains for 1/100 stem
     * @param extra weight of a {@code must}; price of buying in, or of a shortage, grains for 1/100 stem
     * @param asked 1/100 stems by week
     */
    record Taker(String name, int node, long price, Promised promised, long extra, long[] asked) {

        /** What one more own stem is worth in money, grains for 1/100 stem. */
        long worth() {
            return switch (promised) {
                case NOTHING, MUST -> price;
                case BUY_IN -> extra;
                case SHORTAGE -> price + extra;
            };
        }

        boolean isMust() {
            return promised == Promised.MUST;
        }
    }

    private final Facts facts;
    /** Everybody who is served, in the order of the file; those never served are left out. */
    private final List<Taker> takers = new ArrayList<>();
    /** Ticks by week of making up bouquets and of serving. */
    final long[] work;

    Demand(Facts facts) {
        this.facts = facts;
        work = new long[facts.weeks()];
        for (Outlet outlet : facts.season.outlets()) {
            addOutlet(outlet);
        }
        for (Order order : facts.season.orders()) {
            addOrder(order);
        }
    }

    /** Takers in the order in which stems fill them: musts by weight, then price; then by worth; ties as in the file. */
    List<Taker> inOrder() {
        Comparator<Taker> order = comparing(Taker::isMust, reverseOrder())
                .thenComparing(taker -> taker.isMust() ? taker.extra : 0, reverseOrder())
                .thenComparing(Taker::worth, reverseOrder());
        return takers.stream().sorted(order).toList();
    }

    private void addOutlet(Outlet outlet) {
        double[] stems = new double[facts.weeks()];
        for (Outlet.Ask ask : outlet.asks()) {
            for (int week : weeks(ask.from(), ask.to())) {
                stems[week] += ask.stems();
            }
        }
        long[] asked = new long[facts.weeks()];
        for (int week = 0; week < facts.weeks(); week++) {
            asked[week] = Units.hundredths(stems[week]);
            if (asked[week] > 0) {
                work[week] += outlet.service() * Units.TICKS_A_MINUTE;
            }
        }
        long price = facts.units.grainsAHundredth(outlet.price());
        Promise promise = outlet.promise();
        add(outlet.name(), outlet.kind(), price, promise, promise == null ? null : promise.buyIn(), asked);
    }

    private void addOrder(Order order) {
        Recipe recipe = recipe(order.recipe());
        long[] bouquets = new long[facts.weeks()];
        for (Order.Ask ask : order.asks()) {
            for (int week : weeks(ask.from(), ask.to())) {
                bouquets[week] += ask.bouquets();
            }
        }
        for (int week = 0; week < facts.weeks(); week++) {
            work[week] += Units.wholeMinutes(recipe.making() * bouquets[week]);
            if (bouquets[week] > 0) {
                work[week] += order.service() * Units.TICKS_A_MINUTE;
            }
        }
        for (Recipe.Line line : recipe.lines()) {
            long[] asked = new long[facts.weeks()];
            for (int week = 0; week < facts.weeks(); week++) {
                asked[week] = Units.hundredths(bouquets[week] * line.stems() * (1 + order.spare()));
            }
            Promise promise = order.promise();
            Double buyIn = promise == null || promise.buyIn() == null
                    ? null
                    : line.buyIn() == null ? promise.buyIn() : line.buyIn();
            // Paid / asked is 1 / (1 + spare), so that an order delivered in full is paid in full.
            long price = facts.units.grainsAHundredth(line.price() / (1 + order.spare()));
            add(order.name() + ", " + line.kind(), line.kind(), price, promise, buyIn, asked);
        }
    }

    private void add(
            String name, String kind, long price, @Nullable Promise promise, @Nullable Double buyIn, long[] asked) {
        int node = facts.kinds.node(kind);
        Taker taker;
        if (promise == null) {
            taker = new Taker(name, node, price, Promised.NOTHING, 0, asked);
            if (price <= leastPrice(facts.season, node)) {
                return;
            }
        } else if (promise.must() != null) {
            taker = new Taker(name, node, price, Promised.MUST, promise.must(), asked);
        } else if (buyIn != null) {
            taker = new Taker(name, node, price, Promised.BUY_IN, facts.units.grainsAHundredth(buyIn), asked);
        } else {
            Double given = promise.shortage();
            long shortage = given == null ? 3 * price : facts.units.grainsAHundredth(given);
            taker = new Taker(name, node, price, Promised.SHORTAGE, shortage, asked);
        }
        takers.add(taker);
    }

    /** What cutting a hundredth of a stem costs at the owner's rate, less the clearing that it saves, in grains. */
    private long leastPrice(Season season, int node) {
        Role role = season.roles().get(facts.kinds.role(node));
        long ticks = Units.ticksAHundredth(role.cutting()) - Units.ticksAHundredth(role.clearing());
        return ticks * facts.units.grainsATick(season.labour().ownRate());
    }

    private Recipe recipe(String name) {
        return facts.season.recipes().stream()
                .filter(recipe -> recipe.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No recipe with the name " + name));
    }

    /** The weeks of the season from one date's to another's; to that one alone if no other is given. */
    private List<Integer> weeks(LocalDate from, @Nullable LocalDate to) {
        List<Integer> weeks = new ArrayList<>();
        int last = facts.season.weekOf(to == null ? from : to);
        for (int week = facts.season.weekOf(from); week <= last; week++) {
            if (week >= 0 && week < facts.weeks()) {
                weeks.add(week);
            }
        }
        return weeks;
    }
}
