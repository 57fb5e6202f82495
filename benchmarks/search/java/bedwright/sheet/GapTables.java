package bedwright.sheet;

import bedwright.plan.MeasuredSearches;
import bedwright.plan.ProblemName;
import bedwright.plan.SearchBar;
import bedwright.plan.SearchGroup;
import bedwright.plan.SearchRow;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The figures behind the pictures. What was not measured is said to be so. */
final class GapTables {
    static final String NOT_MEASURED = "not measured";

    private static final List<Table.Column> FIGURES = List.of(
            Table.Column.number("Seeds"),
            Table.Column.number("Median gap"),
            Table.Column.number("Best"),
            Table.Column.number("Worst"),
            Table.Column.number("Rule of thumb: gap"),
            Table.Column.number("Moves a second, opening included"),
            Table.Column.number("Heap at most, MB"),
            Table.Column.number("Heap given, MB"),
            Table.Column.text("Must missing"),
            Table.Column.text("Wanted"),
            Table.Column.text("Health"),
            Table.Column.number("Date"));

    private final MeasuredSearches measured;

    GapTables(MeasuredSearches measured) {
        this.measured = measured;
    }

    /** Median gaps of the last commit by problem and time. */
    Table glance(List<String> problems) {
        TreeSet<Integer> times = new TreeSet<>(GapPicture.USUAL_TIMES);
        measured.onThisMachine().stream()
                .filter(group -> group.key().commit().equals(measured.commit()))
                .forEach(group -> times.add(group.key().seconds()));
        List<Table.Column> columns = new ArrayList<>(List.of(Table.Column.text("Problem")));
        times.forEach(time -> columns.add(Table.Column.number(time + " s: median (best to worst), seeds")));
        columns.add(Table.Column.number("Rule of thumb: gap"));
        columns.add(Table.Column.text("Health"));
        List<List<String>> rows = new ArrayList<>();
        for (String problem : problems) {
            List<String> row = new ArrayList<>(List.of(problem));
            List<SearchGroup> groups = new ArrayList<>();
            for (int time : times) {
                Optional<SearchGroup> group = measured.group(problem, time, measured.commit());
                group.ifPresent(groups::add);
                row.add(group.map(GapTables::shortly).orElse(NOT_MEASURED));
            }
            row.add(groups.stream()
                    .map(SearchGroup::thumbGap)
                    .filter(OptionalDouble::isPresent)
                    .map(GapTables::gap)
                    .findFirst()
                    .orElse(NOT_MEASURED));
            row.add(
                    groups.isEmpty()
                            ? NOT_MEASURED
                            : health(groups.stream()
                                    .flatMap(group -> group.rows().stream())
                                    .toList()));
            rows.add(row);
        }
        return new Table("glance-table", "Gaps of commit " + measured.commit() + " at a glance", columns, rows);
    }

    private static String shortly(SearchGroup group) {
        double[] gaps = group.gaps();
        if (gaps.length == 0) {
            return "gap not known, " + group.rows().size();
        }
        return gap(group.medianGap()) + " (" + GapPicture.percent(gaps[0]) + " to "
                + GapPicture.percent(gaps[gaps.length - 1]) + "), "
                + group.rows().size();
    }

    /** All that was measured of a problem on this machine, by time, the last commit first. */
    Table problem(String problem) {
        List<Table.Column> columns =
                new ArrayList<>(List.of(Table.Column.number("Seconds"), Table.Column.text("Commit")));
        columns.addAll(FIGURES);
        List<List<String>> rows = new ArrayList<>();
        for (int time : GapPicture.times(measured, problem)) {
            for (String commit : measured.commits()) {
                Optional<SearchGroup> group = measured.group(problem, time, commit);
                if (group.isPresent() || commit.equals(measured.commit())) {
                    List<String> row = new ArrayList<>(List.of(Integer.toString(time), commit));
                    row.addAll(group.map(GapTables::figures).orElseGet(GapTables::noFigures));
                    rows.add(row);
                }
            }
        }
        String id = ProblemName.plain(problem) + "-table";
        return new Table(id, problem + " by seconds of search and commit", columns, rows);
    }

    /** What was measured elsewhere, which is not to be held against what was measured here. */
    Table others() {
        List<Table.Column> columns = new ArrayList<>(List.of(
                Table.Column.text("Problem"),
                Table.Column.number("Seconds"),
                Table.Column.text("Commit"),
                Table.Column.text("Machine"),
                Table.Column.text("JDK")));
        columns.addAll(FIGURES);
        List<List<String>> rows = new ArrayList<>();
        for (SearchGroup group : measured.onOthers()) {
            List<String> row = new ArrayList<>(List.of(
                    group.key().problem(),
                    Integer.toString(group.key().seconds()),
                    group.key().commit(),
                    group.key().setting().machine(),
                    group.key().setting().jdk()));
            row.addAll(figures(group));
            rows.add(row);
        }
        return new Table("others-table", "Measured on other machines", columns, rows);
    }

    private static List<String> figures(SearchGroup group) {
        double[] gaps = group.gaps();
        boolean isKnown = gaps.length > 0;
        return List.of(
                Integer.toString(group.rows().size()),
                gap(group.medianGap()),
                isKnown ? GapPicture.percent(gaps[0]) : NOT_MEASURED,
                isKnown ? GapPicture.percent(gaps[gaps.length - 1]) : NOT_MEASURED,
                gap(group.thumbGap()),
                Say.whole(group.medianMoves()),
                group.peakMegabytes().map(Say::whole).orElse(NOT_MEASURED),
                group.limitMegabytes().map(Say::whole).orElse(NOT_MEASURED),
                missing(group),
                SearchBar.of(group.key().problem(), group.key().seconds())
                        .map(bar -> wanted(bar, group))
                        .orElse("–"),
                health(group.rows()),
                group.lastDate().map(LocalDate::toString).orElse(NOT_MEASURED));
    }

    private static List<String> noFigures() {
        List<String> cells = new ArrayList<>(List.of("0", NOT_MEASURED));
        while (cells.size() < FIGURES.size()) {
            cells.add("–");
        }
        return cells;
    }

    static String gap(OptionalDouble gap) {
        return gap.isPresent() ? GapPicture.percent(gap.getAsDouble()) : NOT_MEASURED;
    }

    /** How many stems that must be ours the search misses that misses most. */
    static String missing(SearchGroup group) {
        long most = group.rows().stream().mapToLong(SearchRow::missing).max().orElse(0);
        return most == 0 ? "nothing" : "up to " + Say.whole(most / 100.0);
    }

    /** Whether what is wanted is kept to, with the figures. */
    static String wanted(SearchBar bar, SearchGroup group) {
        String median = "median " + Say.tenth(bar.median()) + " %: " + (bar.keepsMedian(group) ? "kept" : "missed");
        Double worst = bar.worst();
        return worst == null
                ? median
                : median + ", worst " + Say.tenth(worst) + " %: " + (bar.keepsWorst(group) ? "kept" : "missed");
    }

    /** That all are sound, or how many have which fault. */
    static String health(List<SearchRow> rows) {
        List<SearchRow> suspects = rows.stream().filter(row -> !row.isSound()).toList();
        if (suspects.isEmpty()) {
            return "all\u00a0sound";
        }
        return suspects.size() + " of " + rows.size() + ": "
                + suspects.stream().map(SearchRow::health).distinct().collect(Collectors.joining("; "));
    }
}
