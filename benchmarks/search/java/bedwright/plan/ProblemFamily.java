package bedwright.plan;

import bedwright.file.SeasonFile;
import bedwright.season.BedBlock;
import bedwright.season.Crop;
import bedwright.season.KindTree;
import bedwright.season.Labour;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Order;
import bedwright.season.Promise;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;

/**
 * Families of problems made from the invented demo farm: the farm itself, larger ones, and ones that are short of one
 * thing. Each has as many members as there are seeds; seed 0 is the plain one, in which nothing is drawn but how the fields
 * of a large farm differ.
 */
public enum ProblemFamily {
    /** {@code problems/demo-farm.json} itself. */
    DEMO("the farm as it is", 1),
    /** Four such fields. */
    DEMO_X4("four such fields", 4),
    /** Sixteen. */
    DEMO_X16("sixteen such fields", 16),
    /** Beds six tenths as long. */
    TIGHT_BEDS("beds six tenths as long, or as long as what stands in them needs", 1),
    /** Of the hours that fixed work leaves, six tenths. */
    TIGHT_HOURS("of the hours that fixed work leaves, six tenths", 1),
    /** Nets and cover a third as long, and none to be bought. */
    TIGHT_NETS("nets and cover a third as long, and none to be bought", 1),
    /** Three times as many bouquets for every event, and each event once more two weeks later. */
    TIGHT_EVENTS("three times as many bouquets for every event, and each event once more two weeks later", 1);

    private static final Path FARM = Path.of("problems", "demo-farm.json");
    private static final double BEDS_LEFT = 0.6;
    private static final double HOURS_LEFT = 0.6;
    private static final double NETS_LEFT = 1.0 / 3;
    private static final int EVENTS = 3;

    private final String about;
    private final int fields;

    ProblemFamily(String about, int fields) {
        this.about = about;
        this.fields = fields;
    }

    /** How it is called on the command line and in results. */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What sets it apart, in some words. */
    public String about() {
        return about;
    }

    /** Fields of the demo farm that it is as large as. */
    int fields() {
        return fields;
    }

    /** Whether it is the farm short of one thing. */
    boolean isTight() {
        return name().startsWith("TIGHT");
    }

    static ProblemFamily of(String label) {
        return Arrays.stream(values())
                .filter(family -> family.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No family is called " + label + "; there are "
                        + Arrays.stream(values()).map(ProblemFamily::label).collect(Collectors.joining(", "))));
    }

    /**
     * A problem by name: a season file, if it ends in {@code .json}, or else a family, with {@code :SEED} behind it for
     * another member than the plain one.
     */
    static Season named(String name) {
        if (name.endsWith(".json")) {
            return SeasonFile.read(Path.of(name));
        }
        int colon = name.indexOf(':');
        return colon < 0
                ? of(name).season(0)
                : of(name.substring(0, colon)).season(Long.parseLong(name.substring(colon + 1)));
    }

    /** The season of a seed, the same on every machine. */
    Season season(long seed) {
        Season farm = SeasonFile.read(FARM);
        RandomGenerator random = new SplittableRandom(seed);
        SeasonDraft draft = grown(farm, random);
        if (seed != 0) {
            draw(draft, seed, random);
        }
        return draft.season();
    }

    /** The largest share of a bed of a block that is taken by what stands when the season begins or is written to stand. */
    private static double standingShare(Season farm, BedBlock block) {
        Map<String, Double> metres = new HashMap<>();
        for (Standing standing : farm.standing()) {
            for (Crop crop : farm.crops()) {
                for (Method method : crop.methods()) {
                    if (crop.name().equals(standing.crop()) && method.name().equals(standing.method())) {
                        metres.merge(
                                String.valueOf(standing.bed()),
                                standing.plants() * method.spacing() / method.rows(),
                                Double::sum);
                    }
                }
            }
        }
        return farm.allBeds().stream()
                .filter(bed -> bed.block() == block)
                .mapToDouble(bed -> metres.getOrDefault(bed.name(), 0.0) / block.length())
                .max()
                .orElse(0);
    }

    private SeasonDraft grown(Season farm, RandomGenerator random) {
        SeasonDraft draft = new SeasonDraft(farm);
        switch (this) {
            case DEMO -> {}
            case DEMO_X4 -> draft = Fields.of(farm, 4, random);
            case DEMO_X16 -> draft = Fields.of(farm, 16, random);
            case TIGHT_BEDS ->
                draft.beds = farm.beds().stream()
                        .map(block -> Amounts.ofLength(block, Math.max(BEDS_LEFT, standingShare(farm, block))))
                        .toList();
            case TIGHT_HOURS -> draft.labour = fewHours(farm);
            case TIGHT_NETS -> draft.stock = Amounts.withNets(farm.stock(), metres -> metres * NETS_LEFT);
            case TIGHT_EVENTS -> draft.orders = manyEvents(farm);
        }
        if (this != DEMO) {
            draft.name = farm.name() + ", " + label();
        }
        return draft;
    }

    /** Fixed work (chores, making up, serving) stays, or the season could break its hours with nothing planted. */
    private static Labour fewHours(Season farm) {
        WorkWeeks weeks = WorkWeeks.of(farm);
        Demand demand = Demand.of(farm, KindTree.of(farm.roles()));
        List<Labour.Hours> own = new ArrayList<>();
        List<Labour.Hours> hired = new ArrayList<>();
        for (int w = 0; w < farm.weeks(); w++) {
            double fixed = hours(weeks.chores()[w]) + (demand.makingMinutes()[w] + demand.serviceMinutes()[w]) / 60.0;
            double owned = hours(weeks.own()[w]);
            double all = owned + hours(weeks.hired()[w]);
            double left = all <= fixed ? all : fixed + HOURS_LEFT * (all - fixed);
            LocalDate day = farm.weekStart(w);
            // To a tenth of an hour, as a grower would write them.
            double ownLeft = Math.ceil(10 * Math.min(owned, left)) / 10;
            own.add(new Labour.Hours(day, day, ownLeft));
            hired.add(new Labour.Hours(day, day, Math.ceil(10 * Math.max(0, left - ownLeft)) / 10));
        }
        return Amounts.with(farm.labour(), own, hired);
    }

    private static double hours(long ticks) {
        return ticks / (double) Grains.TICKS_AN_HOUR;
    }

    private static List<Order> manyEvents(Season farm) {
        List<Order> orders = new ArrayList<>();
        for (Order order : farm.orders()) {
            if (!order.event()) {
                orders.add(order);
                continue;
            }
            Order larger = Amounts.asking(order, EVENTS, 1);
            orders.add(larger);
            orders.add(new Order(
                    order.name() + ", again",
                    order.recipe(),
                    larger.asks().stream()
                            .map(ask -> new Order.Ask(ask.from().plusWeeks(2), null, ask.bouquets()))
                            .toList(),
                    order.spare(),
                    new Promise(null, null, 2.5),
                    order.service(),
                    true));
        }
        return orders;
    }

    /** Another year of the same farm: customers ask for more or less and pay a little more or less; other weather. */
    private static void draw(SeasonDraft draft, long seed, RandomGenerator random) {
        draft.name = draft.name + ", seed " + seed;
        draft.eachOutlet(outlet -> Amounts.asking(outlet, about(random, 0.2), about(random, 0.1), 1));
        draft.eachOrder(order -> Amounts.asking(order, about(random, 0.2), 1));
        draft.pool = draft.pool.stream()
                .map(lots -> new Lots(lots.crop(), lots.plants(), Amounts.whole(lots.lots() * about(random, 0.2))))
                .toList();
        Sampling possible = draft.possible;
        draft.possible = new Sampling(possible.count(), possible.seed() + seed, possible.doubt(), possible.given());
    }

    private static double about(RandomGenerator random, double spread) {
        return 1 + spread * (2 * random.nextDouble() - 1);
    }
}
