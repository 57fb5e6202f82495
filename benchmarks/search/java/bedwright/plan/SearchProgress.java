package bedwright.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/** Searches still to be done, and about how long they take. */
final class SearchProgress {
    private final List<SearchTask> open;
    private final Set<String> begun = new HashSet<>();
    private final ToDoubleFunction<String> before;

    /**
     * Nothing of it done yet.
     *
     * @param before seconds that a problem takes before its first search
     */
    SearchProgress(List<SearchTask> open, ToDoubleFunction<String> before) {
        this.open = new ArrayList<>(open);
        this.before = before;
    }

    void done(SearchTask task) {
        open.remove(task);
        begun.add(task.problem());
    }

    /** What is left, in words. */
    String left() {
        double seconds = open.stream().mapToDouble(SearchForm::seconds).sum();
        seconds += open.stream()
                .map(SearchTask::problem)
                .distinct()
                .filter(problem -> !begun.contains(problem))
                .mapToDouble(before)
                .sum();
        return open.size() + " searches, about " + (long) Math.ceil(seconds / 60) + " min";
    }
}
