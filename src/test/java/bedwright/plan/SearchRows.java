package bedwright.plan;

import java.time.LocalDate;

/** Searches measured, made up for tests. */
final class SearchRows {
    static final SearchSetting HERE = new SearchSetting("a machine, 2 processors", "25");
    static final SearchSetting ELSEWHERE = new SearchSetting("another machine, 2 processors", "25");

    private SearchRows() {}

    static SearchRow of(SearchTask task, double gap, String commit, SearchSetting setting) {
        return new SearchRow(
                task,
                100 - gap,
                0,
                100.0,
                gap,
                new SearchRow.Thumb(50.0, 300L, 50.5),
                1000,
                11.5,
                new SearchRow.Heap(20L, 30L, 4096L),
                SearchRow.SOUND,
                LocalDate.of(2026, 11, 29),
                commit,
                setting);
    }

    static SearchRow of(long seed, double gap, String commit) {
        return of(new SearchTask("demo", 10, seed), gap, commit, HERE);
    }
}
