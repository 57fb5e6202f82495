package bedwright.exact;

import bedwright.climate.PossibleSeasons;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Rule;
import bedwright.plan.Search;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A small season without one of its rules. A limit decides if without it there is a better plan; a price, if without it
 * there is a better plan than the one that is best with it. What the planner finds is a plan, so the better one need not be
 * proven best.
 */
final class Loosened {
    private Loosened() {}

    /**
     * Whether a rule decides about the best plan of a season, as far as the planner finds a better one without it.
     *
     * @param moves that the planner tries
     */
    static boolean isFelt(Rule rule, Proven proven, long moves) {
        ObjectNode tree = SmallSeasons.tree(proven.seed());
        Season season = SmallSeasons.season(tree);
        Optional<Season> without = without(rule, tree);
        if (without.isEmpty()) {
            return false;
        }
        PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));
        // By what places give with the limit: shelter hangs on the length of beds.
        PlanFacts loose = rule.level() == Rule.Level.HARD
                ? PlanFacts.of(without.get(), facts.seasons(), facts.table())
                : PlanFacts.of(without.get(), facts.seasons());
        int[] places = Outcomes.places(loose, proven.plantings(without.get()));
        Plan.Score kept = Outcomes.of(loose, places).score();
        Search.Found best = new Search.Found(places, kept.hard(), kept.medium(), kept.soft());
        return new Search(loose, new Search.Limits(1, null, moves)).run(places).isBetterThan(best);
    }

    /** The season without the rule, or nothing if it has no such rule. Changes the text. */
    private static Optional<Season> without(Rule rule, ObjectNode tree) {
        String before = tree.toString();
        ObjectNode labour = (ObjectNode) tree.get("labour");
        ObjectNode stock = (ObjectNode) tree.get("stock");
        switch (rule) {
            case BED_ROOM -> tree.get("beds").forEach(bed -> ((ObjectNode) bed).put("length", 99));
            case HOURS -> labour.putArray("hired").addObject().put("hours", 99);
            case CUTTING_HOURS ->
                ((ObjectNode) labour.get("cutting").get(0)).put("coolHours", 9).put("mornings", 7);
            case BENCH_ROOM -> stock.put("bench", 9999);
            case STOCK_ROOM ->
                stock.get("nets").forEach(net -> {
                    if (!net.has("buy")) {
                        ((ObjectNode) net).put("metres", 99);
                    }
                });
            case MUST_BE_OURS -> promised(tree, "must", "shortage");
            case TAKINGS -> {
                tree.get("outlets").forEach(outlet -> ((ObjectNode) outlet).put("price", 0));
                tree.get("recipes")
                        .forEach(recipe -> recipe.get("lines").forEach(line -> ((ObjectNode) line).put("price", 0)));
            }
            case SHORTAGE -> promised(tree, "shortage", "shortage");
            case BUY_IN -> promised(tree, "buyIn", "buyIn");
            case HOURS_PAID -> labour.put("ownRate", 0).put("hiredRate", 0);
            case MATERIAL -> {
                tree.get("crops").forEach(crop -> ((ObjectNode) crop).put("price", 0));
                stock.get("nets").forEach(net -> ((ObjectNode) net).put("wear", 0));
            }
            case EXTRA_STOCK -> {
                stock.get("nets").forEach(Loosened::boughtForNothing);
                boughtForNothing(stock.get("trays"));
            }
            case REST_YEARS -> ((ObjectNode) tree.get("rotation")).put("restBroken", 0);
            case FOLLOW_ON -> ((ObjectNode) tree.get("rotation")).put("followOn", 0);
            case CHANGES -> {
                // None of these seasons has begun.
            }
        }
        return tree.toString().equals(before) ? Optional.empty() : Optional.of(SmallSeasons.season(tree));
    }

    private static void boughtForNothing(JsonNode stock) {
        if (stock.has("buy")) {
            ((ObjectNode) stock).put("buy", 0);
        }
    }

    /** Orders with a promise of one kind have one that costs nothing to break. */
    private static void promised(ObjectNode tree, String kind, String instead) {
        tree.get("orders").forEach(order -> {
            if (order.get("promise").has(kind)) {
                ((ObjectNode) order).putObject("promise").put(instead, 0);
            }
        });
    }
}
