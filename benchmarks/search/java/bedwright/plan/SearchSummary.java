package bedwright.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** What was measured last beside what was before it, as lines for a terminal. */
final class SearchSummary {
    private SearchSummary() {}

    /**
     * A line for each problem and time of the last commit: its gaps, and of the seeds that an earlier commit was measured
     * with on the same machine too the medians of both.
     *
     * @param best gaps of the best plans known, by problem, per cent
     */
    static List<String> lines(MeasuredSearches measured, Map<String, Double> best) {
        List<String> lines = new ArrayList<>();
        lines.add(String.format(
                Locale.ROOT,
                "%-14s%5s%6s%9s%7s%7s%9s%9s   %s",
                "problem",
                "s",
                "seeds",
                "median %",
                "best",
                "worst",
                "to best",
                "moves/s",
                "before, on this machine"));
        for (SearchGroup group : measured.onThisMachine()) {
            if (group.key().commit().equals(measured.commit())) {
                lines.add(line(group, best.get(group.key().problem())) + before(measured, group));
                group.suspects().forEach(row -> lines.add("  seed " + row.task().seed() + ": " + row.health()));
            }
        }
        return lines;
    }

    /** @param best gap of the best plan known, or null */
    private static String line(SearchGroup group, @Nullable Double best) {
        double[] gaps = group.gaps();
        return String.format(
                Locale.ROOT,
                "%-14s%5d%6d%9s%7s%7s%9s%9.0f   ",
                group.key().problem(),
                group.key().seconds(),
                group.rows().size(),
                percent(group.medianGap()),
                gaps.length == 0 ? "–" : percent(OptionalDouble.of(gaps[0])),
                gaps.length == 0 ? "–" : percent(OptionalDouble.of(gaps[gaps.length - 1])),
                best == null || gaps.length == 0
                        ? "–"
                        : percent(OptionalDouble.of(group.medianGap().orElseThrow() - best)),
                group.medianMoves());
    }

    private static String before(MeasuredSearches measured, SearchGroup group) {
        Optional<SearchGroup> earlier = measured.commits().stream()
                .filter(commit -> !commit.equals(measured.commit()))
                .flatMap(commit ->
                        measured.group(group.key().problem(), group.key().seconds(), commit).stream())
                .findFirst();
        if (earlier.isEmpty()) {
            return "not measured";
        }
        SearchGroup then = sameSeeds(earlier.get(), group);
        if (then.rows().isEmpty()) {
            return earlier.get().key().commit() + ": other seeds";
        }
        SearchGroup now = sameSeeds(group, then);
        return then.key().commit() + ": " + percent(then.medianGap()) + ", now " + percent(now.medianGap())
                + " (seeds in both: "
                + then.rows().stream().map(row -> row.task().seed()).distinct().count() + ")";
    }

    private static SearchGroup sameSeeds(SearchGroup group, SearchGroup as) {
        return new SearchGroup(
                group.key(),
                group.rows().stream()
                        .filter(row -> as.rows().stream()
                                .anyMatch(other ->
                                        other.task().seed() == row.task().seed()))
                        .sorted(Comparator.comparingLong(row -> row.task().seed()))
                        .toList());
    }

    private static String percent(OptionalDouble gap) {
        return gap.isEmpty() ? "–" : String.format(Locale.ROOT, "%.2f", gap.getAsDouble());
    }
}
