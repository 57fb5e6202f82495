package bedwright.plan;

import bedwright.exact.SmallSeasons;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Small farms drawn from seeds: the small seasons, and on them what those leave out so as to be provable. Tunnels, beds
 * taken for a while or not yet workable, plantings that stand or are half decided, any caution, a most a week, families
 * that must never come back too soon, weeding, more than one promise.
 */
final class RandomFarms {
    private final RandomGenerator random;
    private final ObjectNode season;
    private final String start;

    private RandomFarms(long seed) {
        random = new SplittableRandom(seed ^ 0x5EED);
        season = SmallSeasons.tree(seed);
        start = season.get("starts").asString();
    }

    /** A farm from its seed, 1 or more. */
    static Season of(long seed) {
        RandomFarms drawn = new RandomFarms(seed);
        drawn.season.put("caution", drawn.random.nextInt(101));
        drawn.beds();
        drawn.rotation();
        drawn.demand();
        drawn.methods();
        drawn.standing();
        return SmallSeasons.season(drawn.season);
    }

    private boolean oneIn(int n) {
        return random.nextInt(n) == 0;
    }

    /** First day of a week of the season. */
    private String week(int week) {
        return LocalDate.parse(start).plusWeeks(week).toString();
    }

    private ObjectNode one(String list) {
        ArrayNode all = (ArrayNode) season.get(list);
        return (ObjectNode) all.get(random.nextInt(all.size()));
    }

    private void beds() {
        season.get("beds").forEach(node -> {
            ObjectNode bed = (ObjectNode) node;
            bed.put("length", 2 + random.nextInt(90) / 10.0);
            if (oneIn(4)) {
                bed.putObject("tunnel").put("warmth", 2).put("protects", 1).put("gusts", 0.3);
            }
            if (oneIn(4)) {
                bed.put("workableFrom", week(random.nextInt(4)));
            }
            if (oneIn(4)) {
                int from = random.nextInt(8);
                bed.putArray("taken").addObject().put("from", week(from)).put("to", week(from + random.nextInt(4)));
            }
        });
    }

    private void rotation() {
        if (oneIn(2)) {
            season.putObject("rotation").put("restBroken", random.nextInt(20)).put("followOn", random.nextInt(20));
        }
        if (oneIn(2)) {
            season.get("families").forEach(family -> ((ObjectNode) family).put("never", random.nextBoolean()));
        }
    }

    private void demand() {
        if (oneIn(2)) {
            one("outlets").putObject("promise").put(oneIn(2) ? "must" : "buyIn", 1 + random.nextInt(3));
        }
        if (oneIn(2)) {
            one("roles").put("mostAWeek", 10 + random.nextInt(120));
        }
        if (oneIn(2)) {
            one("roles").put("clearing", random.nextInt(10));
        }
    }

    private void methods() {
        season.get("crops")
                .forEach(crop -> crop.get("methods").forEach(node -> {
                    ObjectNode method = (ObjectNode) node;
                    method.put("grace", random.nextInt(3));
                    method.put("weedings", random.nextInt(4));
                    if (oneIn(3)) {
                        method.put("saleable", random.nextInt(101) / 100.0);
                    }
                }));
    }

    /** A planting written out, one with everything decided, and one with its method alone. */
    private void standing() {
        ArrayNode standing = season.putArray("standing");
        for (int kind = 0; kind < 3; kind++) {
            if (oneIn(2)) {
                ObjectNode crop = one("crops");
                ObjectNode planting = standing.addObject();
                planting.put("crop", crop.get("name").asString());
                // Few enough to find room in the shortest bed.
                planting.put("plants", 2 + random.nextInt(4));
                ArrayNode methods = (ArrayNode) crop.get("methods");
                if (kind > 0) {
                    planting.put(
                            "method",
                            methods.get(random.nextInt(methods.size()))
                                    .get("name")
                                    .asString());
                }
                if (kind < 2) {
                    planting.put("bed", one("beds").get("name").asString());
                }
                if (kind == 0) {
                    planting.putArray("stems")
                            .addObject()
                            .put("week", week(random.nextInt(10)))
                            .put("stems", random.nextInt(60));
                } else if (kind == 1) {
                    planting.put("sown", week(random.nextInt(8)));
                }
            }
        }
    }
}
