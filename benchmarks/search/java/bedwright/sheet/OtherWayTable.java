package bedwright.sheet;

import bedwright.plan.MeasuredSearches;
import bedwright.plan.OtherWay;
import bedwright.plan.SearchGroup;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

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
        List<String> cells = new ArrayList<>(List.of(problem, "the search", Integer.toString(A_MINUTE)));
        cells.addAll(measured.group(problem, A_MINUTE, measured.commit())
                .map(this::found)
                .orElse(List.of("–", "–", "–", "–", GapTables.NOT_MEASURED, "–", "–", "–", "–")));
        return cells;
    }

    private List<String> found(SearchGroup group) {
        int plans = group.rows().size();
        return List.of(
                whole(group.medianSeconds()),
                whole(group.medianMoney()),
                GapTables.missing(group),
                GapTables.gap(group.medianGap()),
                plans == 1 ? "a plan" : "the middle one of " + plans + " plans",
                "nothing",
                group.lastDate().map(LocalDate::toString).orElse("–"),
                measured.commit(),
                measured.setting().machine());
    }

    private static String whole(OptionalDouble figure) {
        return figure.isPresent() ? Say.whole(figure.getAsDouble()) : "–";
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

    private static String missing(long hundredths) {
        return hundredths == 0 ? "nothing" : Say.whole(hundredths / 100.0);
    }
}
