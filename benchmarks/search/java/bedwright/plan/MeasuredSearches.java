package bedwright.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All that was measured, put in order: what was measured last, what was measured of earlier commits on the same machine, and
 * what on others. The last row of the file tells which commit and which machine are meant.
 */
public final class MeasuredSearches {
    private final List<SearchGroup> groups;
    private final SearchRow last;
    /** Commits measured on the machine of the last row, the last first. */
    private final List<String> commits;

    private MeasuredSearches(List<SearchGroup> groups, SearchRow last, List<String> commits) {
        this.groups = groups;
        this.last = last;
        this.commits = commits;
    }

    /**
     * Puts rows in order.
     *
     * @throws IllegalArgumentException if there are none
     */
    public static MeasuredSearches of(List<SearchRow> rows) {
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("Nothing has been measured");
        }
        SearchRow last = rows.getLast();
        Map<SearchGroup.Key, List<SearchRow>> byKey = new LinkedHashMap<>();
        rows.forEach(row -> byKey.computeIfAbsent(SearchGroup.Key.of(row), key -> new ArrayList<>())
                .add(row));
        List<SearchGroup> groups = new ArrayList<>();
        byKey.forEach((key, its) -> groups.add(new SearchGroup(key, its)));
        Set<String> commits = new LinkedHashSet<>();
        for (SearchRow row : rows.reversed()) {
            if (row.setting().equals(last.setting())) {
                commits.add(row.commit());
            }
        }
        return new MeasuredSearches(groups, last, List.copyOf(commits));
    }

    /** What was measured last. */
    public String commit() {
        return last.commit();
    }

    /** What it was measured on. */
    public SearchSetting setting() {
        return last.setting();
    }

    /** Commits measured on that machine, the last first. */
    public List<String> commits() {
        return commits;
    }

    /** Problems measured on that machine, in the order in which they first were. */
    public List<String> problems() {
        return onThisMachine().stream()
                .map(group -> group.key().problem())
                .distinct()
                .toList();
    }

    /** Groups of that machine, in the order in which they were begun. */
    public List<SearchGroup> onThisMachine() {
        return groups.stream()
                .filter(group -> group.key().setting().equals(last.setting()))
                .toList();
    }

    /** Groups of all other machines, and of this one with another JDK. */
    public List<SearchGroup> onOthers() {
        return groups.stream()
                .filter(group -> !group.key().setting().equals(last.setting()))
                .toList();
    }

    /** The group of a commit on that machine, if it was measured. */
    public Optional<SearchGroup> group(String problem, int seconds, String commit) {
        SearchGroup.Key key = new SearchGroup.Key(problem, seconds, commit, last.setting());
        return groups.stream().filter(group -> group.key().equals(key)).findFirst();
    }
}
