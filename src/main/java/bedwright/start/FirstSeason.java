package bedwright.start;

import bedwright.file.BookFigures;
import bedwright.file.CropBookFile;
import bedwright.file.SeasonFile;
import bedwright.file.SitePart;
import bedwright.season.Answers;
import bedwright.season.Crop;
import bedwright.season.Site;
import bedwright.season.Units;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The season file that answers make: short, with crops from the crop book, to be made one's own in an editor. */
public final class FirstSeason {
    /** Minutes to cut 100 stems, and to make up a bouquet: assumed. */
    private static final int CUTTING = 40;

    private static final int MAKING = 4;
    /** Cool hours of cutting are spread over so many mornings. */
    private static final int MORNINGS = 3;
    /** A crop whose first way is cut for at most so many days is cut once. */
    private static final int CUT_ONCE = 12;

    private static final int LOT = 40;
    private static final int USUAL_PLANTS = 280;
    private static final int PLANTS_CUT_ONCE = 800;
    private static final int SEASONS = 16;
    private static final int DIGITS = 100;
    private static final int THOUSANDTHS = 1000;
    private static final String BOUQUET = "Bouquet";

    /**
     * What is as usual, in the units of the file.
     *
     * @param bedAndPath from one bed to the next
     * @param gap between two blocks
     * @param width keys of a block that say how wide bed and path are
     * @param netWear for each length of net
     */
    private record Usual(
            double bedAndPath, double gap, Map<String, Double> width, double netWear, String widths, String gust) {
        static final Usual METRES = new Usual(1.7, 2, Map.of(), 0.2, "1.2 m wide with paths of 0.5 m", "17.5 m/s");
        /** A bed and a path of 68 inches. */
        static final Usual FEET = new Usual(
                68 / 12.0,
                6,
                new TreeMap<>(Map.of("width", 48.0, "path", 20.0)),
                0.06,
                "4 ft wide with paths of 20 in",
                "39 mph");
    }

    private final Answers answers;
    private final Usual usual;
    private final Site site;
    private final List<Crop> crops;
    private final Map<String, Integer> stemsOfRole;
    private final Selling selling;

    /**
     * @param answers without fault
     * @param site of the place, from a station or rough
     */
    public FirstSeason(Answers answers, Site site) {
        this.answers = answers;
        this.usual = answers.units() == Units.FEET ? Usual.FEET : Usual.METRES;
        this.site = SitePart.rounded(site, answers.units());
        this.crops = answers.crops().stream()
                .map(wanted ->
                        BookFigures.find(CropBookFile.ours(), wanted.crop()).orElseThrow())
                .toList();
        this.stemsOfRole = bouquet();
        this.selling = new Selling(answers, site);
    }

    /**
     * What stands in the season file. A file of these bytes has been read back without a fault.
     *
     * @param name what faults call the file
     * @throws bedwright.file.FaultyFile if the answers make no season that holds together
     */
    public byte[] bytes(String name) {
        byte[] bytes = SitePart.json(tree(), site, answers.units(), true).getBytes(StandardCharsets.UTF_8);
        SeasonFile.parse(name, bytes);
        return bytes;
    }

    private Map<String, Object> tree() {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", answers.name());
        tree.put("about", "Begun from a few answers: " + String.join(" ", assumed()));
        if (answers.units() != Units.METRES) {
            tree.put("units", answers.units().several());
        }
        tree.put("starts", answers.starts().toString());
        tree.put("weeks", answers.weeks());
        tree.put("currency", Map.of("sign", answers.currency()));
        tree.put("beds", beds());
        tree.put("stock", stock());
        tree.put("labour", labour());
        tree.put("roles", roles());
        tree.put(
                "crops",
                answers.crops().stream()
                        .map(wanted -> map("book", wanted.crop(), "price", answers.seed()))
                        .toList());
        tree.put("pool", pool());
        if (answers.stems() > 0) {
            tree.put("outlets", outlets());
        }
        if (!orders().isEmpty()) {
            List<Object> recipes = new ArrayList<>();
            recipeNames().forEach((price, name) -> recipes.add(recipe(price, name)));
            tree.put("recipes", recipes);
            tree.put("orders", orders());
        }
        tree.put("possible", map("count", SEASONS, "seed", 1));
        return tree;
    }

    /** What was assumed beyond the answers, a sentence each. */
    public List<String> assumed() {
        List<String> said = new ArrayList<>();
        if (answers.station() == null) {
            said.add(
                    "The climate is rough: months on a cosine between the warmest and the coldest, frosts two weeks early or"
                            + " late in one year of ten; the records of a weather station tell more.");
        }
        if (answers.stormsFrom() != null && answers.station() == null) {
            said.add("Of storms, ten damaging gusts a year are assumed, in any month, most often of " + usual.gust
                    + ".");
        }
        said.add(
                "There is no windbreak, no rough grass, no pest, no row cover, and no bed has a history: add \"windbreaks\","
                        + " \"roughGrass\", \"pests\", \"stock\" and \"history\" as they are with you.");
        said.add("Beds are " + usual.widths + ", block beside block, running north.");
        said.add("Cutting and bunching 100 stems takes " + CUTTING + " minutes, making up a bouquet " + MAKING
                + "; other work takes the usual.");
        if (!orders().isEmpty()) {
            said.add("A bouquet is " + words(stemsOfRole)
                    + " stems, each worth the same; a promised stem that is missing costs three times its price.");
        }
        if (answers.stems() > 0) {
            said.add("Loose stems are sold in equal parts of " + String.join(", ", soldLoose()) + ".");
        }
        said.add("Figures of the crops are the crop book's; the command \"crops\" tells how sure each is.");
        return said;
    }

    private static String words(Map<String, Integer> stems) {
        List<String> parts = new ArrayList<>();
        stems.forEach((role, count) -> parts.add(count + " " + role));
        return String.join(", ", parts);
    }

    private static Map<String, Object> map(Object... keysAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            map.put(keysAndValues[i].toString(), keysAndValues[i + 1]);
        }
        return map;
    }

    private List<Object> beds() {
        List<Object> beds = new ArrayList<>();
        double x = 0;
        for (Answers.Block block : answers.beds()) {
            Map<String, Object> bed = map("name", name(block), "count", block.count());
            bed.put("at", map("x", rounded(x), "y", 0));
            bed.put("length", written(block.length()));
            usual.width.forEach(bed::put);
            if (block.tunnel()) {
                bed.put("tunnel", Map.of());
            }
            beds.add(bed);
            x += block.count() * usual.bedAndPath + usual.gap;
        }
        return beds;
    }

    /** With a blank before the number that is put behind the names of several. */
    private static String name(Answers.Block block) {
        return block.count() == 1 || block.name().endsWith(" ") ? block.name() : block.name() + " ";
    }

    /** As typed; what was not, with no more digits than make sense. */
    private double written(double metres) {
        return Math.round(answers.units().length().of(metres) * THOUSANDTHS) / (double) THOUSANDTHS;
    }

    private Map<String, Object> stock() {
        return map(
                "bench",
                answers.bench(),
                "nets",
                List.of(map("name", "Net", answers.units().several(), written(answers.net()), "wear", usual.netWear)));
    }

    private Map<String, Object> labour() {
        Map<String, Object> labour = map("ownRate", answers.rate(), "hiredRate", answers.rate());
        labour.put("own", List.of(map("hours", answers.ownHours())));
        if (answers.hiredHours() > 0) {
            labour.put("hired", List.of(map("hours", answers.hiredHours())));
        }
        labour.put(
                "cutting",
                List.of(map("hands", 1, "coolHours", answers.cuttingHours() / MORNINGS, "mornings", MORNINGS)));
        return labour;
    }

    private Set<String> rolesGrown() {
        Set<String> roles = new LinkedHashSet<>();
        crops.forEach(crop -> crop.kinds().forEach(kind -> roles.add(kind.kind().split("/", 2)[0])));
        return roles;
    }

    private List<Object> roles() {
        return rolesGrown().stream()
                .<Object>map(role -> map("name", role, "cutting", CUTTING))
                .toList();
    }

    private List<Object> pool() {
        List<Object> pool = new ArrayList<>();
        for (int c = 0; c < crops.size(); c++) {
            Integer said = answers.crops().get(c).plants();
            int plants = said != null ? said : usualPlants(crops.get(c));
            int lots = Math.max(1, Math.round(plants / (float) LOT));
            pool.add(map("crop", crops.get(c).name(), "plants", Math.ceilDiv(plants, lots), "lots", lots));
        }
        return pool;
    }

    private static int usualPlants(Crop crop) {
        boolean once = crop.methods().getFirst().cutDays() <= CUT_ONCE;
        return once ? PLANTS_CUT_ONCE : USUAL_PLANTS;
    }

    /** Stems of each role in a bouquet, as far as a crop of the role is grown; most of it flowers. */
    private Map<String, Integer> bouquet() {
        Map<String, Integer> stems = new LinkedHashMap<>();
        for (String role :
                rolesGrown().stream().sorted(Comparator.naturalOrder()).toList()) {
            stems.put(role, role.equals("focal") ? 3 : role.equals("airy") ? 1 : 2);
        }
        return stems;
    }

    private Set<String> soldLoose() {
        Set<String> sold = new LinkedHashSet<>(rolesGrown());
        if (sold.size() > 1) {
            sold.remove("foliage");
        }
        return sold;
    }

    private List<Object> outlets() {
        Set<String> roles = soldLoose();
        double each = Math.ceil(answers.stems() / (double) roles.size());
        return roles.stream()
                .<Object>map(role -> map(
                        "name",
                        "Loose stems, " + role,
                        "kind",
                        role,
                        "price",
                        answers.stemPrice(),
                        "asks",
                        everyWeek("stems", each)))
                .toList();
    }

    /** An amount asked for in every week of selling. */
    private List<Object> everyWeek(String of, Number amount) {
        return List.of(map("from", selling.from().toString(), "to", selling.to().toString(), of, amount));
    }

    private Map<String, Object> recipe(double price, String name) {
        int stems = stemsOfRole.values().stream().mapToInt(Integer::intValue).sum();
        List<Object> lines = new ArrayList<>();
        stemsOfRole.forEach(
                (role, count) -> lines.add(map("kind", role, "stems", count, "price", rounded(price / stems))));
        return map("name", name, "making", MAKING, "lines", lines);
    }

    /** A recipe for each price of a bouquet. */
    private Map<Double, String> recipeNames() {
        Map<Double, String> names = new LinkedHashMap<>();
        if (answers.bouquets() > 0) {
            names.put(answers.bouquetPrice(), BOUQUET);
        }
        for (Answers.Event event : answers.events()) {
            names.putIfAbsent(price(event), names.isEmpty() ? BOUQUET : BOUQUET + " at " + number(price(event)));
        }
        return names;
    }

    private double price(Answers.Event event) {
        return event.price() == null ? answers.bouquetPrice() : event.price();
    }

    private List<Object> orders() {
        Map<Double, String> recipes = recipeNames();
        List<Object> orders = new ArrayList<>();
        if (answers.bouquets() > 0) {
            orders.add(map(
                    "name",
                    "Weekly bouquets",
                    "recipe",
                    recipes.getOrDefault(answers.bouquetPrice(), BOUQUET),
                    "asks",
                    everyWeek("bouquets", answers.bouquets()),
                    "promise",
                    Map.of()));
        }
        for (int e = 0; e < answers.events().size(); e++) {
            Answers.Event event = answers.events().get(e);
            orders.add(map(
                    "name",
                    "Event " + (e + 1) + ", " + event.date(),
                    "recipe",
                    recipes.getOrDefault(price(event), BOUQUET),
                    "asks",
                    List.of(map("from", selling.weekOf(event.date()).toString(), "bouquets", event.bouquets())),
                    "promise",
                    Map.of(),
                    "event",
                    true));
        }
        return orders;
    }

    private static double rounded(double value) {
        return Math.round(value * DIGITS) / (double) DIGITS;
    }

    /** A number for a question or a message: no needless digits. */
    static String number(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.format(Locale.ROOT, "%s", value);
    }
}
