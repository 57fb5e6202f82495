package bedwright.exact;

import bedwright.file.SeasonFile;
import bedwright.season.Season;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Small seasons drawn from seeds, 12 to 24 lots on 3 to 6 beds in 12 to 20 weeks, each short of one thing: small enough for
 * an exact solver to prove the best plan. As texts of season files, the same on every machine.
 *
 * <p>Crops, site and rates are those of {@code benchmarks/search/small/base.json}; beds, lots, customers, hours, stock and
 * the possible seasons are drawn. There are 1 to 8 of them; eight seeds each
 * are without and with caution.
 *
 * <p>Seeds from 100,001 up are for what hardly ever decides in the others: beds in which plantings follow one another
 * all season long, and stock that is dear to buy; over 1 and 2 possible seasons.
 */
public final class SmallSeasons {
    private static final Path BASE = Path.of("benchmarks", "search", "small", "base.json");
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final LocalDate START = LocalDate.of(2027, 5, 3);
    private static final int TURNS = 8;
    /** The first seed of a season that is short of what the others hardly ever are. */
    private static final int RARE = 100_001;
    /** Possible seasons in turn; the last of the eight has 5 to 8. Few are many, since those take long to prove. */
    private static final int[] POSSIBLE = {1, 2, 3, 1, 2, 1, 4};

    /** Plants of a lot by crop, about three metres of bed; the order is that of the base's roles. */
    private static final List<List<String>> CROPS_BY_ROLE = List.of(
            List.of("sunflower, once-cut", "snapdragon"),
            List.of("sunflower, branching", "zinnia"),
            List.of("dill", "cosmos"),
            List.of("basil for foliage"));

    /** What a season is short of: the first eight in turn, the others in seeds of their own. */
    enum Short {
        BEDS,
        HOURS,
        CUTTING_HOURS,
        BENCH,
        NET,
        MUST,
        ROTATION,
        BOUGHT_STOCK,
        TIME_BETWEEN_KIN,
        DEAR_STOCK
    }

    private final RandomGenerator random;
    private final ObjectNode season;
    private final Short shortOf;
    private final int weeks;
    /** Over many possible seasons everything else is small. */
    private final boolean small;

    private final int possible;
    private final String caution;
    private final long seed;

    private SmallSeasons(long seed) {
        this.seed = seed;
        this.random = new SplittableRandom(seed);
        this.season = base();
        int turn = (int) Math.floorMod(seed - 1, (long) TURNS);
        int round = (int) ((seed - 1) / TURNS);
        if (seed < RARE) {
            this.possible = turn < POSSIBLE.length ? POSSIBLE[turn] : 5 + round % 4;
            this.shortOf = Short.values()[(turn + 3 * round) % TURNS];
        } else {
            this.possible = 1 + turn / 2 % 2;
            this.shortOf = turn % 2 == 0 ? Short.TIME_BETWEEN_KIN : Short.DEAR_STOCK;
        }
        this.caution = round % 2 == 0 ? "bold" : round % 4 == 1 ? "steady" : "careful";
        this.small = possible > 2;
        this.weeks = shortOf == Short.TIME_BETWEEN_KIN ? 20 : 12 + random.nextInt(small ? 3 : 9);
    }

    private static ObjectNode base() {
        try {
            return (ObjectNode) JSON.readTree(Files.readString(BASE));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The text of a season's file.
     *
     * @param seed 1 or more
     */
    public static ObjectNode tree(long seed) {
        SmallSeasons drawn = new SmallSeasons(seed);
        drawn.draw();
        return drawn.season;
    }

    /** A season from its text. */
    public static Season season(ObjectNode tree) {
        return SeasonFile.parse("small season", tree.toString().getBytes(StandardCharsets.UTF_8));
    }

    /** By which to tell that a season is still the same: a hash of its text. */
    static String hash(long seed) {
        try {
            byte[] text = tree(seed).toString().getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text), 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private void draw() {
        season.put("name", "Small season " + seed);
        season.put("starts", START.toString());
        season.put("weeks", weeks);
        season.put("caution", caution);
        season.putObject("possible").put("count", possible).put("seed", seed);
        List<String> crops = crops();
        beds();
        windows();
        lots(crops);
        customers();
        labour();
        stock();
        if (shortOf == Short.ROTATION || shortOf == Short.TIME_BETWEEN_KIN) {
            season.putObject("rotation")
                    .put("restBroken", 4 + random.nextInt(12))
                    .put("followOn", 4 + random.nextInt(12));
        }
    }

    /** One crop of each of four uses, and at times another; the others are taken out. */
    private List<String> crops() {
        List<String> names = new ArrayList<>();
        for (List<String> of : CROPS_BY_ROLE) {
            names.add(of.get(random.nextInt(of.size())));
        }
        for (List<String> of : CROPS_BY_ROLE) {
            String other = of.get(random.nextInt(of.size()));
            if (!names.contains(other) && random.nextInt(4) == 0) {
                names.add(other);
            }
        }
        if (shortOf == Short.NET || isStockBought()) {
            names.set(1, "sunflower, branching");
        }
        ArrayNode crops = (ArrayNode) season.get("crops");
        for (int c = crops.size() - 1; c >= 0; c--) {
            if (!names.contains(crops.get(c).get("name").asString())) {
                crops.remove(c);
            }
        }
        return names.stream().distinct().toList();
    }

    private void beds() {
        ArrayNode beds = season.putArray("beds");
        boolean isOneAfterAnother = shortOf == Short.TIME_BETWEEN_KIN;
        int count = 3 + random.nextInt(small || isOneAfterAnother ? 2 : 4);
        for (int b = 0; b < count; b++) {
            ObjectNode bed = beds.addObject();
            bed.put("name", "Bed " + (b + 1));
            bed.putObject("at").put("x", 5 * b).put("y", 0);
            bed.put("heading", 0);
            // Whole lots, or the proof would mostly be about what is left at the end of a bed.
            bed.put("length", 3 * (shortOf == Short.BEDS || isOneAfterAnother ? 1 : 2 + random.nextInt(2)));
            if (random.nextBoolean()) {
                bed.putArray("history").addObject().put("family", "daisies").put("year", 2025 + random.nextInt(2));
            }
        }
    }

    /** A number between two, to a half. */
    private double half(int least, int most) {
        return least + random.nextInt(2 * (most - least) + 1) / 2.0;
    }

    /** Each method may be sown in three to five weeks that leave time to cut, or in all of those. */
    private void windows() {
        season.get("crops")
                .forEach(crop -> crop.get("methods").forEach(method -> {
                    int width = shortOf == Short.TIME_BETWEEN_KIN ? weeks - 8 : 3 + random.nextInt(3);
                    int first = random.nextInt(Math.max(1, weeks - 7 - width));
                    ObjectNode way = (ObjectNode) method;
                    way.put("sowFrom", monthDay(START.plusWeeks(first)));
                    way.put("sowTo", monthDay(START.plusWeeks(first + width - 1)));
                }));
    }

    private static String monthDay(LocalDate day) {
        return day.toString().substring("2027-".length());
    }

    private void lots(List<String> crops) {
        int all = 12 + random.nextInt(small ? 4 : 13);
        int[] counts = new int[crops.size()];
        for (int i = 0; i < all; i++) {
            counts[i < counts.length ? i : random.nextInt(counts.length)]++;
        }
        ArrayNode pool = season.putArray("pool");
        for (int c = 0; c < counts.length; c++) {
            pool.addObject()
                    .put("crop", crops.get(c))
                    .put("plants", plants(crops.get(c)))
                    .put("lots", counts[c]);
        }
    }

    /** Plants of a lot, about three metres of bed. */
    private static int plants(String crop) {
        return switch (crop) {
            case "sunflower, once-cut" -> 60;
            case "sunflower, branching" -> 15;
            case "dill" -> 75;
            case "basil for foliage" -> 36;
            case "zinnia" -> 50;
            case "cosmos" -> 30;
            case "snapdragon" -> 90;
            default -> throw new IllegalArgumentException("No lot is known of " + crop);
        };
    }

    private void customers() {
        ArrayNode outlets = season.putArray("outlets");
        stall(outlets, "focal", 100 + random.nextInt(50), 30 + 10 * random.nextInt(7));
        stall(outlets, "filler", 30 + random.nextInt(30), 30 + 10 * random.nextInt(5));
        stall(outlets, "foliage", 25 + random.nextInt(25), 30 + 10 * random.nextInt(5));
        if (random.nextBoolean()) {
            stall(outlets, "focal/large", 60 + random.nextInt(40), 30 + 10 * random.nextInt(5));
        }
        ObjectNode order = season.putArray("orders").addObject();
        order.put("name", "Porch bouquets");
        order.put("recipe", "Porch bouquet");
        int length = 2 + random.nextInt(3);
        int first = 8 + random.nextInt(weeks - 8 - length + 1);
        order.putArray("asks")
                .addObject()
                .put("from", START.plusWeeks(first).toString())
                .put("to", START.plusWeeks(first + length - 1).toString())
                .put("bouquets", 6 + random.nextInt(10));
        order.put("spare", 0.05);
        ObjectNode promise = order.putObject("promise");
        if (shortOf == Short.MUST) {
            promise.put("must", 1 + random.nextInt(3));
        } else if (random.nextBoolean()) {
            promise.put("buyIn", (120 + random.nextInt(100)) / 100.0);
        } else {
            promise.put("shortage", (100 + random.nextInt(200)) / 100.0);
        }
    }

    private void stall(ArrayNode outlets, String kind, int cents, int stems) {
        int first = 6 + random.nextInt(3);
        int last = weeks - 1 - random.nextInt(2);
        ObjectNode outlet = outlets.addObject();
        outlet.put("name", "Stall, " + kind);
        outlet.put("kind", kind);
        outlet.put("price", cents / 100.0);
        outlet.putArray("asks")
                .addObject()
                .put("from", START.plusWeeks(first).toString())
                .put("to", START.plusWeeks(last).toString())
                .put("stems", stems);
        if ("focal".equals(kind)) {
            outlet.put("service", 30);
        }
    }

    private void labour() {
        ObjectNode labour = (ObjectNode) season.get("labour");
        boolean few = shortOf == Short.HOURS;
        // Chores, bouquets and the stall take 2.5 hours at the most.
        hours(labour, "own", few ? (26 + random.nextInt(4)) / 10.0 : half(6, 10));
        hours(labour, "hired", few ? 0 : half(2, 4));
        labour.putArray("cutting")
                .addObject()
                .put("hands", 1)
                .put("coolHours", shortOf == Short.CUTTING_HOURS ? (10 + random.nextInt(11)) / 100.0 : 2)
                .put("mornings", 3);
    }

    private static void hours(ObjectNode labour, String whose, double hours) {
        labour.putArray(whose).addObject().put("hours", hours);
    }

    private void stock() {
        ObjectNode stock = (ObjectNode) season.get("stock");
        stock.put("bench", shortOf == Short.BENCH ? 20 + 10 * random.nextInt(6) : 300);
        ObjectNode net = (ObjectNode) stock.get("nets").get(0);
        boolean bought = isStockBought();
        net.put("metres", shortOf == Short.NET ? 3 : bought ? 1 : 9);
        if (bought) {
            net.put("buy", shortOf == Short.DEAR_STOCK ? 4 + random.nextInt(12) : 1 + random.nextInt(3));
            ((ObjectNode) stock.get("trays")).put("cells", 50);
        }
    }

    private boolean isStockBought() {
        return shortOf == Short.BOUGHT_STOCK || shortOf == Short.DEAR_STOCK;
    }
}
