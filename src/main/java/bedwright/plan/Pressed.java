package bedwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * A limit that a planting presses on: in these weeks it takes some of it, and what is left would not do for one more lot
 * like those it has.
 *
 * @param rule the rule that sets the limit
 * @param where bed or stock; "hours" or "cutting hours" for work
 * @param weeks weeks in order, at least one
 */
public record Pressed(Rule rule, String where, List<Integer> weeks) {
    public Pressed {
        weeks = List.copyOf(weeks);
    }

    /**
     * All limits that a planting presses on.
     *
     * @param without the plan without it
     */
    static List<Pressed> of(PlanFacts facts, Tried without, int lots) {
        Outcome before = without.before();
        Outcome after = without.after();
        List<Pressed> all = new ArrayList<>();
        for (int b = 0; b < before.bedUse().length; b++) {
            Shelf shelf = facts.shelves.get(b);
            int[] use = before.bedUse()[b];
            int[] rest = after.bedUse()[b];
            add(all, shelf.rule(), shelf.name(), lots, facts.weeks, w -> shelf.holds() - use[w], w -> use[w] - rest[w]);
        }
        for (int s = 0; s < before.stocks().size(); s++) {
            Outcome.StockUse stock = before.stocks().get(s);
            int[] rest = after.stocks().get(s).use();
            Rule rule = stock.canBuy()
                    ? Rule.EXTRA_STOCK
                    : stock.kind() == Outcome.StockKind.BENCH ? Rule.BENCH_ROOM : Rule.STOCK_ROOM;
            add(
                    all,
                    rule,
                    stock.name(),
                    lots,
                    facts.weeks,
                    w -> stock.owned() - stock.use()[w],
                    w -> stock.use()[w] - rest[w]);
        }
        Outcome.Work work = before.work();
        int seasons = before.seasons();
        add(
                all,
                Rule.HOURS,
                "hours",
                lots,
                facts.weeks,
                w -> (double) work.own()[w] + work.hired()[w] - mean(seasons, k -> work.all(w, k)),
                w -> mean(seasons, k -> work.all(w, k) - after.work().all(w, k)));
        add(
                all,
                Rule.CUTTING_HOURS,
                "cutting hours",
                lots,
                facts.weeks,
                w -> work.cuttingLimit()[w] - mean(seasons, k -> work.cutting()[w][k]),
                w -> mean(seasons, k -> work.cutting()[w][k] - after.work().cutting()[w][k]));
        return List.copyOf(all);
    }

    private static void add(
            List<Pressed> all,
            Rule rule,
            String where,
            int lots,
            int weeks,
            IntToDoubleFunction left,
            IntToDoubleFunction taken) {
        List<Integer> pressed = new ArrayList<>();
        for (int w = 0; w < weeks; w++) {
            double own = taken.applyAsDouble(w);
            if (own > 0 && left.applyAsDouble(w) < own / lots) {
                pressed.add(w);
            }
        }
        if (!pressed.isEmpty()) {
            all.add(new Pressed(rule, where, pressed));
        }
    }

    private static double mean(int seasons, IntToDoubleFunction figure) {
        double sum = 0;
        for (int k = 0; k < seasons; k++) {
            sum += figure.applyAsDouble(k);
        }
        return sum / seasons;
    }
}
