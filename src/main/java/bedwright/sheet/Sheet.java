package bedwright.sheet;

import bedwright.plan.Outcome;
import bedwright.season.Plan;
import bedwright.season.Season;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The season sheet: a plan as one page without outside parts. */
public final class Sheet {
    /** What of the summary stands behind the pictures and tables. */
    private static final Set<String> LAST = Set.of("gusts", "weak", "care", "made");
    /** What a sheet of A4 or Letter on its side has room for beside margins and a heading, mm. */
    private static final double PRINT_WIDTH = 262;

    private static final double PRINT_HEIGHT = 178;

    private Sheet() {}

    /**
     * The page as HTML that is well-formed XML too. The same facts give the same text.
     *
     * @throws IllegalArgumentException if a planting of the outcome is not one of the season's and its prospects'; the
     *     message names it
     */
    public static String html(SheetFacts facts) {
        StringOutput out = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render("sheet.jte", page(facts), out);
        return out.toString();
    }

    private static SheetPage page(SheetFacts facts) {
        Season season = facts.season();
        Outcome outcome = facts.outcome();
        Say say = new Say(season);
        List<Shown> plantings = Shown.of(facts);
        TimeAxis axis = new TimeAxis(season);
        List<SheetPage.BandFigure> bands = new ArrayList<>();
        double height = 0;
        for (Band band : Bands.of(season, outcome, plantings)) {
            height += band.height();
            bands.add(figure(band, axis));
        }
        List<SheetPage.BandFigure> further = new ArrayList<>();
        FreeBand free = new FreeBand(season, outcome);
        if (free.isAnything()) {
            further.add(figure(free, axis));
        }
        Plan.Closeness closeness = facts.closeness();
        if (closeness != null
                && closeness.within() != null
                && !closeness.worths().isEmpty()) {
            further.add(figure(new WorthBand(season, closeness.worths()), axis));
        }
        GroundPlan ground = new GroundPlan(season);
        List<SheetPage.Section> tables = new ArrayList<>();
        tables.add(new SheetPage.Section("plantings", "Plantings", PlantingsTable.of(season, plantings), true));
        tables.add(new SheetPage.Section("outlets", "Who gets what", new Outlets(season, outcome).table(), false));
        if (!season.orders().isEmpty()) {
            Table table = Bouquets.table(say, Bouquets.of(season, outcome));
            tables.add(new SheetPage.Section("bouquets", "Bouquets week by week", table, false));
        }
        List<Summary.Part> parts = Summary.of(facts, plantings);
        String about = season.about();
        return new SheetPage(
                season.name(),
                Say.fullDate(season.starts()) + " to " + Say.fullDate(season.dateOf(season.days() - 1)),
                about == null ? "" : about,
                style(height),
                parts.stream().filter(part -> !LAST.contains(part.id())).toList(),
                bands,
                further,
                new BedsBand(season, plantings).isCrowded() ? BedsClosely.figures(season, plantings, axis) : List.of(),
                ground.figures(),
                ground.table(),
                tables,
                parts.stream().filter(part -> LAST.contains(part.id())).toList());
    }

    private static SheetPage.BandFigure figure(Band band, TimeAxis axis) {
        String svg = Bands.picture(band, axis, Svg.Form.INLINE);
        return new SheetPage.BandFigure(new Figure(band.id(), band.heading(), band.caption(), svg), band.table());
    }

    /** Marks, and the width at which all bands fit one printed sheet. */
    private static String style(double height) {
        double width = Math.min(PRINT_WIDTH, PRINT_HEIGHT * TimeAxis.WIDTH / height);
        return Look.MARKS + "@media print{.bands svg{width:" + Svg.number(width) + "mm;min-width:0}}\n";
    }
}
