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
import bedwright.season.Windbreak;
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
    private static final int CELLS = 200;
    private static final double HOURS = 4;
    private static final double BREAK = 20;

    /** The season as it stands first, then each thing of which it could have more, then each crop left out. */
    public static List<OneMore> of(Season season) {
        List<OneMore> all = new ArrayList<>();
        for (BedBlock block : season.beds()) {
            all.add(new OneMore(
                    changed(
                            "one bed more of " + block.name(),
                            List.of(),
                            List.of(new MoreBeds(block.name(), 1, 0)),
                            List.of(),
                            null),
                    Thing.BED,
                    block.name(),
                    block.length(),
                    1,
                    "bed"));
        }
        for (Stock.Net net : season.stock().nets()) {
            all.add(new OneMore(
                    changed(
                            "20 m more of " + net.name(),
                            List.of(),
                            List.of(),
                            List.of(new MoreNet(net.name(), METRES)),
                            null),
                    Thing.NET,
                    net.name(),
                    METRES,
                    METRES,
                    "metre"));
        }
        if (season.stock().bench() > 0) {
            all.add(new OneMore(
                    changed("200 cells more on the bench", List.of(), List.of(), List.of(), CELLS),
                    Thing.BENCH,
                    "",
                    CELLS,
                    CELLS,
                    "cell"));
        }
        List<MoreHours> hours = List.of(new MoreHours(null, null, HOURS));
        if (!season.labour().own().isEmpty()) {
            all.add(new OneMore(
                    hours("4 own hours a week more", hours, List.of()), Thing.HOUR, "", HOURS, HOURS, "hour a week"));
        }
        all.add(new OneMore(
                hours("4 hours a week more to hire", List.of(), hours), null, "", HOURS, HOURS, "hour a week"));
        if (!season.windbreaks().isEmpty()) {
            all.add(new OneMore(windbreak(season), null, "", BREAK, BREAK, "metre"));
        }
        List<String> crops = season.pool().stream().map(Lots::crop).distinct().toList();
        for (String crop : crops.size() > 1 ? crops : List.<String>of()) {
            all.add(new OneMore(
                    changed("without " + crop, List.of(Ways.crops(crop)), List.of(), List.of(), null),
                    null,
                    "",
                    0,
                    0,
                    ""));
        }
        return List.copyOf(all);
    }

    /** All of them as strategies, behind the season as it stands. */
    public static Strategies strategies(Season season, List<OneMore> all) {
        List<Strategy> strategies = new ArrayList<>(List.of(Strategy.plain("as it stands")));
        all.forEach(one -> strategies.add(one.strategy()));
        return new Strategies(
                "What one more would be worth: " + season.name(), season.about(), season.units(), strategies);
    }

    private static Strategy changed(
            String name, List<Ways> barred, List<MoreBeds> beds, List<MoreNet> nets, @Nullable Integer bench) {
        return new Strategy(
                name, null, barred, List.of(), null, null, null, false, beds, nets, bench, null, null, List.of(),
                List.of(), List.of(), List.of(), List.of());
    }

    private static Strategy with(String name, List<MoreHours> own, List<MoreHours> hired, List<Windbreak> windbreaks) {
        return new Strategy(
                name,
                null,
                List.of(),
                List.of(),
                null,
                null,
                null,
                false,
                List.of(),
                List.of(),
                null,
                null,
                null,
                own,
                hired,
                List.of(),
                windbreaks,
                List.of());
    }

    private static Strategy hours(String name, List<MoreHours> own, List<MoreHours> hired) {
        return with(name, own, hired, List.of());
    }

    /** The first windbreak, 20 m longer beyond its far end. */
    private static Strategy windbreak(Season season) {
        Windbreak first = season.windbreaks().getFirst();
        double east = first.to().x() - first.from().x();
        double north = first.to().y() - first.from().y();
        double length = Math.max(Math.hypot(east, north), 1e-6);
        Point end = new Point(first.to().x() + BREAK * east / length, first.to().y() + BREAK * north / length);
        Windbreak more = new Windbreak(first.name() + ", longer", first.to(), end, first.height(), first.density());
        return with("20 m more of " + first.name(), List.of(), List.of(), List.of(more));
    }
}
