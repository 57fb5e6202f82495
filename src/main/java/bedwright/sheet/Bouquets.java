package bedwright.sheet;

import bedwright.plan.DemandLine;
import bedwright.plan.Outcome;
import bedwright.season.Order;
import bedwright.season.Recipe;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Whole bouquets of an order in a week: as many as every line of the recipe has stems for, up to the number ordered.
 *
 * @param order name of the order
 * @param event whether it is an event
 * @param week the week
 * @param ordered bouquets ordered
 * @param whole bouquets that can be made whole, over the possible seasons
 */
record Bouquets(String order, boolean event, int week, long ordered, Spread whole) {
    /** So that a hair's breadth of rounding does not cost a bouquet. */
    private static final double HAIR = 1e-9;

    /** All orders in the order of the season, week by week. */
    static List<Bouquets> of(Season season, Outcome outcome) {
        List<Bouquets> all = new ArrayList<>();
        for (int o = 0; o < season.orders().size(); o++) {
            Order order = season.orders().get(o);
            Recipe recipe = season.recipes().stream()
                    .filter(r -> r.name().equals(order.recipe()))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(
                            String.format(Locale.ROOT, "Order %s: no recipe named %s", order.name(), order.recipe())));
            int number = o;
            List<DemandLine> lines = outcome.demand().stream()
                    .filter(line -> line.order() == number)
                    .toList();
            long[] ordered = ordered(season, order);
            for (int w = 0; w < ordered.length; w++) {
                if (ordered[w] > 0) {
                    int week = w;
                    Spread whole =
                            Spread.of(outcome.seasons(), k -> whole(outcome, recipe, lines, ordered[week], week, k));
                    all.add(new Bouquets(order.name(), order.event(), w, ordered[w], whole));
                }
            }
        }
        return List.copyOf(all);
    }

    private static long[] ordered(Season season, Order order) {
        long[] ordered = new long[season.weeks()];
        for (Order.Ask ask : order.asks()) {
            int from = season.weekOf(ask.from());
            int to = ask.to() == null ? from : season.weekOf(ask.to());
            for (int w = Math.max(0, from); w <= Math.min(to, ordered.length - 1); w++) {
                ordered[w] += ask.bouquets();
            }
        }
        return ordered;
    }

    private static long whole(Outcome outcome, Recipe recipe, List<DemandLine> lines, long ordered, int week, int k) {
        long whole = ordered;
        for (DemandLine line : lines) {
            double stems = 100 * recipe.lines().get(line.line()).stems();
            if (stems > 0) {
                int served = outcome.served()[line.index()][week][k];
                whole = Math.min(whole, (long) Math.floor(served / stems + HAIR));
            }
        }
        return whole;
    }

    static Table table(Say say, List<Bouquets> all) {
        List<List<String>> rows = new ArrayList<>();
        long ordered = 0;
        double mean = 0;
        for (Bouquets each : all) {
            rows.add(List.of(
                    each.order,
                    say.shortWeek(each.week),
                    Say.whole(each.ordered),
                    Say.whole(each.whole.middle()),
                    Say.whole(each.whole.low()),
                    Say.tenth(each.whole.mean())));
            ordered += each.ordered;
            mean += each.whole.mean();
        }
        List<Table.Column> columns = List.of(
                Table.Column.text("Order"),
                Table.Column.text("Week"),
                Table.Column.number("Ordered"),
                Table.Column.number("Whole in a usual year"),
                Table.Column.number("in a bad one (1 in 10)"),
                Table.Column.number("mean"));
        List<List<String>> totals = List.of(List.of("All orders", "", Say.whole(ordered), "", "", Say.tenth(mean)));
        return new Table("bouquets-table", "Whole bouquets by order and week", columns, rows, totals);
    }

    /** A line for each order and stretch of weeks in which as many are ordered. */
    static List<String> lines(Say say, List<Bouquets> all) {
        List<String> lines = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= all.size(); i++) {
            Bouquets first = all.get(start);
            boolean goesOn = i < all.size()
                    && all.get(i).order.equals(first.order)
                    && all.get(i).ordered == first.ordered
                    && all.get(i).week == all.get(i - 1).week + 1;
            if (!goesOn) {
                lines.add(line(say, all.subList(start, i)));
                start = i;
            }
        }
        return lines;
    }

    private static String line(Say say, List<Bouquets> run) {
        Bouquets first = run.getFirst();
        String weeks = say.weeks(first.week, run.getLast().week);
        String all = Say.whole(first.ordered);
        String ordered = all + (run.size() > 1 ? " a week" : "");
        String usual = range(run.stream().mapToLong(b -> b.whole.middle()).toArray());
        String bad = range(run.stream().mapToLong(b -> b.whole.low()).toArray());
        String head = first.order + ", " + weeks + ": ";
        if (usual.equals(all) && bad.equals(all)) {
            return head + "all " + ordered + " whole, in a bad year too.";
        } else if (usual.equals(all)) {
            return head + "all " + ordered + " whole in a usual year, " + bad + " in a bad one.";
        }
        return head + usual + " of " + ordered + " whole in a usual year, " + bad + " in a bad one.";
    }

    private static String range(long[] figures) {
        long least = Long.MAX_VALUE;
        long most = Long.MIN_VALUE;
        for (long figure : figures) {
            least = Math.min(least, figure);
            most = Math.max(most, figure);
        }
        return Say.range(Say.whole(least), Say.whole(most));
    }
}
