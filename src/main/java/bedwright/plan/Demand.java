package bedwright.plan;

import bedwright.plan.DemandLine.Promised;
import bedwright.season.KindTree;
import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Promise;
import bedwright.season.Recipe;
import bedwright.season.Rounding;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Everybody who takes stems, with the work of serving them: outlets as they are, orders by line of their recipe. */
final class Demand {
    /** A missing stem costs so many times its price where nothing else is said. */
    private static final int USUAL_SHORTAGE = 3;

    private final Season season;
    private final KindTree kinds;
    private final List<DemandLine> lines = new ArrayList<>();
    private final long[] makingMinutes;
    private final long[] serviceMinutes;

    private Demand(Season season, KindTree kinds) {
        this.season = season;
        this.kinds = kinds;
        this.makingMinutes = new long[season.weeks()];
        this.serviceMinutes = new long[season.weeks()];
    }

    static Demand of(Season season, KindTree kinds) {
        Demand demand = new Demand(season, kinds);
        for (Outlet outlet : season.outlets()) {
            demand.add(outlet);
        }
        for (int o = 0; o < season.orders().size(); o++) {
            demand.add(o, season.orders().get(o));
        }
        return demand;
    }

    List<DemandLine> lines() {
        return List.copyOf(lines);
    }

    long[] makingMinutes() {
        return makingMinutes;
    }

    long[] serviceMinutes() {
        return serviceMinutes;
    }

    private void add(Outlet outlet) {
        double[] stems = new double[season.weeks()];
        for (Outlet.Ask ask : outlet.asks()) {
            spread(stems, ask.from(), ask.to(), ask.stems());
        }
        long[] asked = hundredths(stems);
        serve(asked, outlet.service());
        add(outlet.name(), -1, -1, kinds.node(outlet.kind()), outlet.promise(), null, outlet.price(), 1, asked, false);
    }

    private void add(int index, Order order) {
        Recipe recipe = season.recipes().stream()
                .filter(r -> r.name().equals(order.recipe()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No recipe named " + order.recipe()));
        double[] bouquets = new double[season.weeks()];
        for (Order.Ask ask : order.asks()) {
            spread(bouquets, ask.from(), ask.to(), ask.bouquets());
        }
        serve(hundredths(bouquets), order.service());
        for (int w = 0; w < bouquets.length; w++) {
            makingMinutes[w] += Rounding.halfUp(recipe.making() * bouquets[w]);
        }
        for (int l = 0; l < recipe.lines().size(); l++) {
            Recipe.Line line = recipe.lines().get(l);
            double[] stems = new double[bouquets.length];
            for (int w = 0; w < stems.length; w++) {
                stems[w] = bouquets[w] * line.stems() * (1 + order.spare());
            }
            add(
                    order.name(),
                    index,
                    l,
                    kinds.node(line.kind()),
                    order.promise(),
                    line.buyIn(),
                    line.price(),
                    1 + order.spare(),
                    hundredths(stems),
                    order.event());
        }
    }

    private void add(
            String name,
            int order,
            int line,
            int node,
            @Nullable Promise promise,
            @Nullable Double lineBuyIn,
            double fullPrice,
            double askedForPaid,
            long[] asked,
            boolean event) {
        double price = fullPrice / askedForPaid;
        Promised promised = Promised.NOTHING;
        int weight = 0;
        long each = Grains.ofStem(season, price);
        long lack = 0;
        if (promise != null) {
            Integer must = promise.must();
            Double buyIn = promise.buyIn();
            Double shortage = promise.shortage();
            if (must != null) {
                promised = Promised.MUST_BE_OURS;
                weight = must;
            } else if (buyIn != null) {
                promised = Promised.BOUGHT_IN;
                lack = Grains.ofStem(season, lineBuyIn != null ? lineBuyIn : buyIn);
            } else {
                promised = Promised.SHORTAGE_PRICE;
                lack = shortage != null ? Grains.ofStem(season, shortage) : USUAL_SHORTAGE * each;
            }
        }
        lines.add(new DemandLine(
                lines.size(), name, order, line, node, kinds.role(node), promised, weight, each, lack, asked, event));
    }

    private void spread(double[] byWeek, LocalDate from, @Nullable LocalDate to, double amount) {
        int last = to == null ? season.weekOf(from) : season.weekOf(to);
        for (int w = Math.max(0, season.weekOf(from)); w <= Math.min(last, byWeek.length - 1); w++) {
            byWeek[w] += amount;
        }
    }

    private void serve(long[] asked, int minutes) {
        for (int w = 0; w < asked.length; w++) {
            serviceMinutes[w] += asked[w] > 0 ? minutes : 0;
        }
    }

    private static long[] hundredths(double[] byWeek) {
        long[] whole = new long[byWeek.length];
        for (int w = 0; w < whole.length; w++) {
            whole[w] = Rounding.halfUp(100 * byWeek[w]);
        }
        return whole;
    }

    /**
     * The lines of a role that are ever served, in the order in which stems fill them: what must be ours by weight, then
     * price; the others by what one more own stem is worth there; ties in order.
     *
     * @param leastWorth grains a hundredth that an unpromised outlet has to pay more than
     */
    List<DemandLine> fillingOrder(int role, long leastWorth) {
        return lines.stream()
                .filter(line -> line.role() == role)
                .filter(line -> line.promise() != Promised.NOTHING || line.price() > leastWorth)
                .sorted(Comparator.comparingInt(DemandLine::weight)
                        .thenComparingLong(Demand::worth)
                        .reversed()
                        .thenComparingInt(DemandLine::index))
                .toList();
    }

    /** What one more own stem is worth at a line, in grains a hundredth. */
    static long worth(DemandLine line) {
        return switch (line.promise()) {
            case NOTHING, MUST_BE_OURS -> line.price();
            case BOUGHT_IN -> line.lack();
            case SHORTAGE_PRICE -> line.price() + line.lack();
        };
    }
}
