package bedwright.sheet;

import bedwright.plan.Outcome;
import bedwright.season.Season;
import java.util.List;

/** The five bands of a season's picture, in their order. */
final class Bands {
    private Bands() {}

    static List<Band> of(Season season, Outcome outcome, List<Shown> plantings) {
        return List.of(
                new StemsBand(season, RoleWeeks.of(season, outcome)),
                new BedsBand(season, plantings),
                new HoursBand(season, outcome),
                new StockBand(season, outcome),
                new RiskBand(season));
    }

    /** A band as a picture of its own. */
    static String picture(Band band, TimeAxis axis, Svg.Form form) {
        Svg svg = new Svg(form, "band-" + band.id(), TimeAxis.WIDTH, band.height(), band.heading(), band.description());
        band.draw(svg, axis);
        return svg.done();
    }
}
