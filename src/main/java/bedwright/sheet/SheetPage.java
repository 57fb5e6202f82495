package bedwright.sheet;

import java.util.List;

/**
 * What the page's template sets: texts that it escapes, pictures that were escaped when they were written, and a style
 * without any text of the grower's.
 *
 * @param title name of the season
 * @param when first and last day
 * @param about what is said of the season; empty if nothing
 * @param style style of marks and print
 * @param first what is needed first
 * @param bands the picture's bands, each with its table
 * @param further bands that are looked at one by one: what is free to promise, what one more would be worth
 * @param closely the beds with every number, if the band has no room for them
 * @param ground the ground, one picture for each storm side
 * @param groundTable beds and their shelter
 * @param tables the other tables
 * @param last what is said at the end
 */
public record SheetPage(
        String title,
        String when,
        String about,
        String style,
        List<Summary.Part> first,
        List<BandFigure> bands,
        List<BandFigure> further,
        List<Figure> closely,
        List<Figure> ground,
        Table groundTable,
        List<Section> tables,
        List<Summary.Part> last) {

    /** A band with its table. */
    public record BandFigure(Figure figure, Table table) {}

    /**
     * A table under a heading of its own.
     *
     * @param open whether it is shown without being asked for
     */
    public record Section(String id, String heading, Table table, boolean open) {}
}
