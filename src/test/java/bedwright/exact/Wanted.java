package bedwright.exact;

import bedwright.season.KindTree;
import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Promise;
import bedwright.season.Recipe;
import bedwright.season.Role;
import bedwright.season.Rounding;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One who takes stems (season model, section 7).
 *
 * @param node kind
 * @param asked stems by week, hundredths
 * @param price grains a hundredth of a stem
 * @param must weight of a missing stem, 0 if it need not be ours
 * @param buyIn grains a hundredth, or −1
 * @param shortage grains a hundredth missing; 0 if nothing is promised
 * @param promised whether anything is promised
 */
record Wanted(int node, long[] asked, long price, int must, long buyIn, long shortage, boolean promised) {
    private static final int GRAINS_A_HUNDREDTH = 60_000;

    /** What one more stem brings while it is missing, grains a hundredth. */
    long worth() {
        return buyIn >= 0 ? buyIn : price + shortage;
    }

    /** Money that comes whether a stem is delivered or not, grains a hundredth asked for. */
    long regardless() {
        return buyIn >= 0 ? price - buyIn : -shortage;
    }

    /** All who are ever served, in the order of filling. */
    static List<Wanted> inOrder(Season season, KindTree kinds) {
        List<Wanted> all = new ArrayList<>();
        for (Outlet outlet : season.outlets()) {
            long[] asked = new long[season.weeks()];
            for (Outlet.Ask ask : outlet.asks()) {
                for (int w = season.weekOf(ask.from()); w <= last(season, ask.from(), ask.to()); w++) {
                    asked[w] += Rounding.halfUp(100 * ask.stems());
                }
            }
            all.add(of(season, kinds.node(outlet.kind()), asked, outlet.price(), outlet.promise(), null));
        }
        for (Order order : season.orders()) {
            int[] bouquets = bouquets(season, order);
            for (Recipe.Line line : recipe(season, order).lines()) {
                long[] asked = new long[season.weeks()];
                for (int w = 0; w < asked.length; w++) {
                    asked[w] = Rounding.halfUp(100 * bouquets[w] * line.stems() * (1 + order.spare()));
                }
                double price = line.price() / (1 + order.spare());
                all.add(of(season, kinds.node(line.kind()), asked, price, order.promise(), line.buyIn()));
            }
        }
        return all.stream()
                .filter(wanted -> wanted.promised || wanted.price > cuttingItself(season, kinds.role(wanted.node)))
                .sorted(Comparator.comparing((Wanted wanted) -> wanted.must > 0 ? 0 : 1)
                        .thenComparing(wanted -> -wanted.must)
                        .thenComparing(wanted -> wanted.must > 0 ? -wanted.price : -wanted.worth()))
                .toList();
    }

    private static Wanted of(
            Season season, int node, long[] asked, double price, @Nullable Promise promise, @Nullable Double ofLine) {
        long grains = grains(season, price);
        if (promise == null) {
            return new Wanted(node, asked, grains, 0, -1, 0, false);
        }
        Integer must = promise.must();
        if (must != null) {
            return new Wanted(node, asked, grains, must, -1, 0, true);
        }
        Double buyIn = promise.buyIn();
        if (buyIn != null) {
            return new Wanted(node, asked, grains, 0, grains(season, ofLine == null ? buyIn : ofLine), 0, true);
        }
        Double shortage = promise.shortage();
        return new Wanted(node, asked, grains, 0, -1, shortage == null ? 3 * grains : grains(season, shortage), true);
    }

    private static long grains(Season season, double price) {
        return Rounding.halfUp(price * season.currency().smallest() * GRAINS_A_HUNDREDTH);
    }

    /** What it costs to cut a hundredth of a stem of a role instead of clearing it, grains. */
    private static long cuttingItself(Season season, int role) {
        Role of = season.roles().get(role);
        long ticks = Rounding.halfUp(10 * of.cutting()) - Rounding.halfUp(10 * of.clearing());
        return ticks
                * Rounding.halfUp(season.labour().ownRate() * season.currency().smallest());
    }

    /** Minutes of making up and of serving, by week. */
    static long[] minutes(Season season) {
        long[] minutes = new long[season.weeks()];
        for (Outlet outlet : season.outlets()) {
            for (int w = 0; w < minutes.length; w++) {
                boolean asks = false;
                for (Outlet.Ask ask : outlet.asks()) {
                    asks |= ask.stems() > 0
                            && w >= season.weekOf(ask.from())
                            && w <= last(season, ask.from(), ask.to());
                }
                minutes[w] += asks ? outlet.service() : 0;
            }
        }
        for (Order order : season.orders()) {
            int[] bouquets = bouquets(season, order);
            for (int w = 0; w < minutes.length; w++) {
                minutes[w] +=
                        Rounding.halfUp(bouquets[w] * recipe(season, order).making());
                minutes[w] += bouquets[w] > 0 ? order.service() : 0;
            }
        }
        return minutes;
    }

    private static int[] bouquets(Season season, Order order) {
        int[] bouquets = new int[season.weeks()];
        for (Order.Ask ask : order.asks()) {
            for (int w = season.weekOf(ask.from()); w <= last(season, ask.from(), ask.to()); w++) {
                bouquets[w] += ask.bouquets();
            }
        }
        return bouquets;
    }

    private static int last(Season season, LocalDate from, @Nullable LocalDate to) {
        return season.weekOf(to == null ? from : to);
    }

    private static Recipe recipe(Season season, Order order) {
        return season.recipes().stream()
                .filter(recipe -> recipe.name().equals(order.recipe()))
                .findFirst()
                .orElseThrow();
    }
}
