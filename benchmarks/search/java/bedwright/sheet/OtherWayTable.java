package bedwright.sheet;

import bedwright.plan.MeasuredSearches;
import bedwright.plan.OtherWay;
import bedwright.plan.SearchGroup;
import bedwright.plan.SearchRow;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Other ways to a plan, problem by problem, each below what the search came to in a minute. */
final class OtherWayTable {
    private static final int A_MINUTE = 60;

    private final MeasuredSearches measured;
    private final List<OtherWay> ways;

    OtherWayTable(MeasuredSearches measured, List<OtherWay> ways) {
        this.measured = measured;
        this.ways = ways;
    }

    Table table() {
        List<Table.Column> columns = List.of(
                Table.Column.text("Problem"),
                Table.Column.text("Way"),
                Table.Column.number("Seconds given"),
                Table.Column.number("Took, s"),
                Table.Column.number("Money"),
                Table.Column.text("Must missing"),
                Table.Column.number("Gap"),
                Table.Column.text("What came of it"),
                Table.Column.text("Beside it"),
                Table.Column.number("Date"),
                Table.Column.text("Commit"),
                Table.Column.text("Machine"));
        List<List<String>> rows = new ArrayList<>();
        for (String problem : ways.stream().map(OtherWay::problem).distinct().toList()) {
            rows.add(search(problem));
            ways.stream().filter(way -> way.problem().equals(problem)).forEach(way -> rows.add(row(way)));
        }
        return new Table("ways-table", "Plans by other ways, below those of the search", columns, rows);
    }

    /** What the search came to, of the last commit that was measured: its middle plan and gap. */
    private List<String> search(String problem) {
        Optional<SearchGroup> group = measured.group(problem, A_MINUTE, measured.commit());
        List<SearchRow> rows = group.map(SearchGroup::rows).orElse(List.of());
        List<String> cells = new ArrayList<>(List.of(problem, "the search", Integer.toString(A_MINUTE)));
        if (rows.isEmpty()) {
            cells.addAll(List.of("–", "–", "–", "–", GapTables.NOT_MEASURED, "–", "–", "–", "–"));
            return cells;
        }
        cells.add(middle(
                rows.stream().flatMap(row -> Stream.ofNullable(row.took())).toList()));
        cells.add(middle(rows.stream().map(SearchRow::money).toList()));
        cells.add(missing(rows.stream().mapToLong(SearchRow::missing).max().orElse(0)));
        OptionalDouble gap = group.map(SearchGroup::medianGap).orElse(OptionalDouble.empty());
        cells.add(gap.isPresent() ? GapPicture.percent(gap.getAsDouble()) : GapTables.NOT_MEASURED);
        cells.add(rows.size() == 1 ? "a plan" : "the middle one of " + rows.size() + " plans");
        cells.add("nothing");
        cells.add(rows.stream()
                .flatMap(row -> Stream.ofNullable(row.date()))
                .max(LocalDate::compareTo)
                .map(LocalDate::toString)
                .orElse("–"));
        cells.add(measured.commit());
        cells.add(measured.setting().machine());
        return cells;
    }

    private static List<String> row(OtherWay way) {
        Double money = way.money();
        Long missing = way.missing();
        Double gap = way.gap();
        LocalDate date = way.date();
        return List.of(
                way.problem(),
                way.way().label(),
                Integer.toString(way.seconds()),
                Say.whole(way.took()),
                money == null ? "–" : Say.whole(money),
                missing == null ? "–" : missing(missing),
                gap == null ? "–" : GapPicture.percent(gap),
                way.outcome(),
                way.beside(),
                date == null ? "–" : date.toString(),
                way.commit(),
                way.setting().machine());
    }

    private static String middle(List<Double> figures) {
        List<Double> sorted = figures.stream().sorted().toList();
        int half = sorted.size() / 2;
        return sorted.isEmpty()
                ? "–"
                : Say.whole(sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2);
    }

    private static String missing(long hundredths) {
        return hundredths == 0 ? "nothing" : Say.whole(hundredths / 100.0);
    }
}
