package bedwright.sheet;

import bedwright.compare.Comparison;
import bedwright.season.Season;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.List;

/** The comparison sheet: ways of growing side by side, as one page without outside parts. */
public final class ComparisonSheet {
    private static final String LAST = "reading";

    private ComparisonSheet() {}

    /** The page as HTML that is well-formed XML too. The same comparison gives the same text. */
    public static String html(Comparison comparison) {
        return html(comparison, List.of());
    }

    /** Likewise, with parts in front of all others. */
    public static String html(Comparison comparison, List<Summary.Part> inFront) {
        StringOutput out = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render("comparison.jte", page(comparison, inFront), out);
        return out.toString();
    }

    private static ComparisonPage page(Comparison comparison, List<Summary.Part> inFront) {
        Season season = comparison.season();
        TimeAxis axis = new TimeAxis(season);
        List<SheetPage.BandFigure> bands = new ArrayList<>();
        for (Band band : WaysBand.all(comparison)) {
            String svg = Bands.picture(band, axis, Svg.Form.INLINE);
            bands.add(
                    new SheetPage.BandFigure(new Figure(band.id(), band.heading(), band.caption(), svg), band.table()));
        }
        ComparisonTables tables = new ComparisonTables(comparison);
        List<SheetPage.Section> sections = new ArrayList<>();
        sections.add(new SheetPage.Section("takes", "What each way takes and loses", tables.takes(), true));
        sections.add(new SheetPage.Section("hopes-table", "How far each plan was too hopeful", tables.hopes(), true));
        if (comparison.ways().size() > 2) {
            sections.add(new SheetPage.Section("pairs", "Each against each", tables.pairs(), true));
        }
        List<Summary.Part> parts = new ArrayList<>(inFront);
        parts.addAll(ComparisonWords.of(comparison));
        String about = comparison.strategies().about();
        return new ComparisonPage(
                comparison.strategies().name(),
                season.name() + ", " + Say.fullDate(season.starts()) + " to "
                        + Say.fullDate(season.dateOf(season.days() - 1)),
                about == null ? "" : about,
                Look.MARKS,
                parts.stream().filter(part -> !part.id().equals(LAST)).toList(),
                List.of(
                        new SheetPage.BandFigure(new YearsPicture(comparison).figure(), tables.money()),
                        new SheetPage.BandFigure(new DifferencesPicture(comparison).figure(), tables.differences())),
                bands,
                sections,
                parts.stream().filter(part -> part.id().equals(LAST)).toList());
    }
}
