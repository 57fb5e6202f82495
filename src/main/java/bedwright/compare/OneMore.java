package bedwright.compare;

import bedwright.season.BedBlock;
import bedwright.season.Lots;
import bedwright.season.Plan.Worth.Thing;
import bedwright.season.Point;
import bedwright.season.Season;
import bedwright.season.Stock;
import bedwright.season.Strategies;
import bedwright.season.Strategies.MoreBeds;
import bedwright.season.Strategies.MoreHours;
import bedwright.season.Strategies.MoreNet;
import bedwright.season.Strategies.Strategy;
import bedwright.season.Strategies.Ways;
import bedwright.season.Units;
import bedwright.season.Windbreak;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A season with a little more of one thing, or without one crop. So much more that a search can show it: what one of it is
 * worth is its share.
 *
 * @param strategy the change
 * @param thing what there is more of, where prices say what that is worth; else null
 * @param name name of the block of beds or the net as prices have it; else empty
 * @param amount how much more in the prices' units: m of bed or net, hours a week, cells
 * @param of how many of what a grower counts: beds, m, cells, hours a week; 0 for a crop left out
 * @param unit what one of these is called
 */
public record OneMore(Strategy strategy, @Nullable Thing thing, String name, double amount, double of, String unit) {
    private static final double METRES = 20;
    /** Where the season is in feet: about as much. */
    private static final double FEET = 60;

    private static final int CELLS = 200;
    private static final double HOURS = 4;

    /** The season as it stands first, then each thing of which it could have more, then each crop left out. */
    public static List<OneMore> of(Season season) {
        List<OneMore> all = new ArrayList<>();
        double stretch = stretch(season);
        String name = Math.round(season.units().length().of(stretch)) + " "
                + season.units().length().symbol() + " more of ";
        double written = season.units().length().of(stretch);
        for (BedBlock block : season.beds()) {
            Strategy more = changed("one bed more of " + block.name())
                    .beds(new MoreBeds(block.name(), 1, 0))
                    .strategy();
            all.add(new OneMore(more, Thing.BED, block.name(), block.length(), 1, "bed"));
        }
        for (Stock.Net net : season.stock().nets()) {
            Strategy more = changed(name + net.name())
                    .nets(List.of(new MoreNet(net.name(), stretch)))
                    .strategy();
            all.add(new OneMore(
                    more,
                    Thing.NET,
                    net.name(),
                    stretch,
                    written,
                    season.units().one()));
        }
        if (season.stock().bench() > 0) {
            Strategy more = changed("200 cells more on the bench").bench(CELLS).strategy();
            all.add(new OneMore(more, Thing.BENCH, "", CELLS, CELLS, "cell"));
        }
        MoreHours hours = new MoreHours(null, null, HOURS);
        if (!season.labour().own().isEmpty()) {
            Strategy more = changed("4 own hours a week more").ownHours(hours).strategy();
            all.add(new OneMore(more, Thing.HOUR, "", HOURS, HOURS, "hour a week"));
        }
        Strategy hired =
                changed("4 hours a week more to hire").hiredHours(hours).strategy();
        all.add(new OneMore(hired, null, "", HOURS, HOURS, "hour a week"));
        if (!season.windbreaks().isEmpty()) {
            Windbreak first = season.windbreaks().getFirst();
            Strategy more = changed(name + first.name())
                    .windbreak(longer(first, stretch))
                    .strategy();
            all.add(new OneMore(more, null, "", stretch, written, season.units().one()));
        }
        List<String> crops = season.pool().stream().map(Lots::crop).distinct().toList();
        for (String crop : crops.size() > 1 ? crops : List.<String>of()) {
            all.add(new OneMore(without(crop), null, "", 0, 0, ""));
        }
        return List.copyOf(all);
    }

    /** The season without a crop. */
    static Strategy without(String crop) {
        return changed("without " + crop).barred(Ways.crops(crop)).strategy();
    }

    /** How much more net or windbreak is tried, m: a round number in the season's units. */
    private static double stretch(Season season) {
        return season.units() == Units.FEET ? season.units().length().metric(BigDecimal.valueOf(FEET)) : METRES;
    }

    /** All of them as strategies, behind the season as it stands. */
    public static Strategies strategies(Season season, List<OneMore> all) {
        List<Strategy> strategies = new ArrayList<>(List.of(Strategy.plain("as it stands")));
        all.forEach(one -> strategies.add(one.strategy()));
        return new Strategies(
                "What one more would be worth: " + season.name(), season.about(), season.units(), strategies);
    }

    private static Strategies.Change changed(String name) {
        return Strategy.changed(name);
    }

    /** What a windbreak becomes longer by, m, beyond its far end. */
    private static Windbreak longer(Windbreak first, double by) {
        double east = first.to().x() - first.from().x();
        double north = first.to().y() - first.from().y();
        double length = Math.max(Math.hypot(east, north), 1e-6);
        Point end = new Point(first.to().x() + by * east / length, first.to().y() + by * north / length);
        return new Windbreak(first.name() + ", longer", first.to(), end, first.height(), first.density());
    }
}
