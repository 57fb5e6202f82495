package bedwright.compare;

import bedwright.season.Caution;
import bedwright.season.Crop;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Order;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.Strategies;
import bedwright.season.Strategies.Amount;
import bedwright.season.Strategies.MoreNet;
import bedwright.season.Strategies.Strategy;
import bedwright.season.Strategies.Ways;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What is usually asked before a season, made into strategies for a season as it is. */
public enum Question {
    /** Sown in the bed, raised in trays, or both. */
    RAISING("Sown in the bed, raised in trays, or both", Question::raising),
    /** Pinched or not. */
    PINCHING("Pinched or not", Question::pinching),
    /** With support nets, with twice as many, or without. */
    NETS("Support nets", Question::nets),
    /** How much the bad years weigh. */
    CAUTION("How much the bad years weigh", season -> caution()),
    /** Over how many possible seasons a plan is made. */
    SEASONS("Planned over how many possible seasons", season -> seasons()),
    /** Whether the figures are doubted. */
    DOUBT("With doubt in the figures, or trusting them", season -> doubt()),
    /** How many weekly bouquets are promised. */
    BOUQUETS("How many weekly bouquets to promise", Question::bouquets),
    /** Planned, or by rule of thumb. */
    THUMB("Planned, or by rule of thumb", season -> thumb());

    private static final List<Integer> PLANNED_OVER = List.of(4, 16, 64);
    private static final List<Double> BOUQUET_SHARES = List.of(0.5, 0.75, 1.25, 1.5);

    private final String sentence;
    private final Function<Season, List<Strategy>> strategies;

    Question(String sentence, Function<Season, List<Strategy>> strategies) {
        this.sentence = sentence;
        this.strategies = strategies;
    }

    /** The question as a heading. */
    public String sentence() {
        return sentence;
    }

    /**
     * The strategies that answer it, the season as it stands among them.
     *
     * @throws IllegalArgumentException if the season leaves nothing to compare; its message says why
     */
    public Strategies of(Season season) {
        return named(sentence, season, strategies.apply(season));
    }

    /**
     * The season as it stands against the same without a crop, for each of some crops.
     *
     * @throws IllegalArgumentException if one of them is not grown; its message says which and which there are
     */
    public static Strategies without(List<String> crops, Season season) {
        Set<String> grown = season.pool().stream().map(Lots::crop).collect(Collectors.toSet());
        for (String crop : crops) {
            if (!grown.contains(crop)) {
                throw new IllegalArgumentException("\"" + crop + "\" is not among what can be planted, which is \""
                        + season.pool().stream().map(Lots::crop).distinct().collect(Collectors.joining("\", \""))
                        + "\"");
            }
        }
        List<Strategy> all = new ArrayList<>(List.of(asItStands()));
        crops.stream().distinct().map(OneMore::without).forEach(all::add);
        return named("Without a crop", season, all);
    }

    private static Strategies named(String name, Season season, List<Strategy> strategies) {
        return new Strategies(name + ": " + season.name(), season.about(), season.units(), strategies);
    }

    private static Strategy asItStands() {
        return Strategy.plain("as it stands");
    }

    private static List<Strategy> raising(Season season) {
        List<String> crops = crops(
                season,
                way -> way.start() == Method.Start.SOWN,
                way -> way.start() == Method.Start.TRAY,
                "can be both sown and raised in trays");
        return List.of(
                Strategy.plain("both"),
                Strategy.changed("all sown in the bed")
                        .only(new Ways(crops, List.of(), Method.Start.SOWN, null, null, null))
                        .strategy(),
                Strategy.changed("all raised in trays")
                        .only(new Ways(crops, List.of(), Method.Start.TRAY, null, null, null))
                        .strategy());
    }

    private static List<Strategy> pinching(Season season) {
        List<String> crops =
                crops(season, Method::pinched, way -> !way.pinched(), "can be both pinched and left to grow up");
        return List.of(
                Strategy.plain("both"),
                Strategy.changed("all pinched")
                        .only(new Ways(crops, List.of(), null, true, null, null))
                        .strategy(),
                Strategy.changed("none pinched")
                        .only(new Ways(crops, List.of(), null, false, null, null))
                        .strategy());
    }

    /** Crops of the pool, none of which stands already, that have a way of each of two sorts. */
    private static List<String> crops(Season season, Predicate<Method> one, Predicate<Method> other, String what) {
        List<String> crops = free(season).stream()
                .filter(crop -> crop.methods().stream().anyMatch(one)
                        && crop.methods().stream().anyMatch(other))
                .map(Crop::name)
                .toList();
        if (crops.isEmpty()) {
            throw new IllegalArgumentException("no crop of this season " + what);
        }
        return crops;
    }

    /** Crops that can be planted and of which nothing stands, so that any of their ways may be barred. */
    private static List<Crop> free(Season season) {
        Set<String> grown = season.pool().stream().map(Lots::crop).collect(Collectors.toSet());
        Set<String> stands = season.standing().stream().map(Standing::crop).collect(Collectors.toSet());
        return season.crops().stream()
                .filter(crop -> grown.contains(crop.name()) && !stands.contains(crop.name()))
                .toList();
    }

    private static List<Strategy> nets(Season season) {
        List<String> netted = free(season).stream()
                .filter(crop -> crop.methods().stream().anyMatch(way -> way.net() != null))
                .map(Crop::name)
                .toList();
        if (netted.isEmpty()) {
            throw new IllegalArgumentException("no crop of this season is grown in a net");
        }
        List<MoreNet> twice = season.stock().nets().stream()
                .filter(net -> net.metres() > 0)
                .map(net -> new MoreNet(net.name(), net.metres()))
                .toList();
        List<Strategy> all = new ArrayList<>(List.of(asItStands()));
        all.add(Strategy.changed("nothing netted")
                .barred(new Ways(netted, List.of(), null, null, true, null))
                .strategy());
        if (!twice.isEmpty()) {
            all.add(Strategy.changed("twice the net").nets(twice).strategy());
        }
        return all;
    }

    private static List<Strategy> caution() {
        return List.of(
                Strategy.changed("bold").caution(Caution.BOLD).strategy(),
                Strategy.changed("steady").caution(Caution.STEADY).strategy(),
                Strategy.changed("careful").caution(Caution.CAREFUL).strategy());
    }

    private static List<Strategy> seasons() {
        List<Strategy> all = new ArrayList<>();
        all.add(Strategy.changed("on the normal season").planned(1).strategy());
        for (int count : PLANNED_OVER) {
            all.add(Strategy.changed("on " + count + " possible seasons")
                    .planned(count)
                    .strategy());
        }
        return all;
    }

    private static List<Strategy> doubt() {
        return List.of(
                Strategy.changed("with doubt in the figures").doubt(true).strategy(),
                Strategy.changed("trusting the figures").doubt(false).strategy());
    }

    private static List<Strategy> bouquets(Season season) {
        List<String> weekly = season.orders().stream()
                .filter(order -> !order.event())
                .map(Order::name)
                .toList();
        if (weekly.isEmpty()) {
            throw new IllegalArgumentException("nobody takes weekly bouquets in this season");
        }
        List<Strategy> all = new ArrayList<>(List.of(asItStands()));
        for (double share : BOUQUET_SHARES) {
            all.add(Strategy.changed(Math.round(100 * share) + " % of the weekly bouquets")
                    .outlets(weekly.stream()
                            .map(name -> new Amount(name, share, null))
                            .toList())
                    .strategy());
        }
        return all;
    }

    private static List<Strategy> thumb() {
        return List.of(
                Strategy.plain("planned"),
                Strategy.changed("by rule of thumb").byRuleOfThumb().strategy());
    }
}
