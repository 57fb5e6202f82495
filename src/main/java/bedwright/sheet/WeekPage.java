package bedwright.sheet;

import java.util.List;

/**
 * One week's sheet, as its template and the screen show it.
 *
 * @param week number of the week
 * @param heading which week
 * @param season name of the season
 * @param first what is to be known first
 * @param parts tables under headings
 * @param last what is said at the end
 * @param density how closely it is printed, see {@link PrintRoom}
 */
public record WeekPage(
        int week, String heading, String season, List<String> first, List<Part> parts, List<String> last, int density) {

    public WeekPage {
        first = List.copyOf(first);
        parts = List.copyOf(parts);
        last = List.copyOf(last);
    }

    /** Whether it takes more than a page of paper. */
    public boolean isOnTwoPages() {
        return density >= PrintRoom.TWO_PAGES;
    }

    /** Whether a part's rows are printed as running text. */
    public static boolean isRunning(Part part) {
        return PrintRoom.RUNNING.contains(part.id());
    }

    /**
     * A table under a heading.
     *
     * @param note a line under the heading; empty if there is none
     */
    public record Part(String id, String heading, String note, Table table) {}
}
