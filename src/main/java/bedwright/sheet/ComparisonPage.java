package bedwright.sheet;

import java.util.List;

/**
 * What the comparison's template sets.
 *
 * @param title what is compared
 * @param of of which season
 * @param about what is said of the comparison; empty if nothing
 * @param style style of the marks
 * @param first what is needed first
 * @param figures money of each way, and differences, each with its table
 * @param bands stems and hours week by week
 * @param tables the other tables
 * @param last what is said at the end
 */
public record ComparisonPage(
        String title,
        String of,
        String about,
        String style,
        List<Summary.Part> first,
        List<SheetPage.BandFigure> figures,
        List<SheetPage.BandFigure> bands,
        List<SheetPage.Section> tables,
        List<Summary.Part> last) {}
