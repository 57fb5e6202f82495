package bedwright.plan;

import bedwright.sheet.HowClosePage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * How close plans come to the best possible: each problem searched from nothing with so many seeds for so many seconds, one
 * after the other, on both cores, and held against the bound that follows from its prices and against the rule-of-thumb
 * season. Adds a row a search to {@code how-close.csv} and writes {@code how-close.html} of all of them.
 *
 * <p>A search that stands there already, of the same commit, machine and JDK, is not done again: what was stopped goes on.
 *
 * <p>Arguments: {@code form} (short: under 8 minutes, before a change; long: all families), or {@code problems} (families,
 * season files or {@code small}, commas between; demo), {@code seeds} (10), {@code first} (the first seed; 1) and {@code seconds} (10,60);
 * {@code prices} (seconds to look for prices where none are kept; 0: not at all), {@code out} (a folder for results and
 * prices), {@code commit} (as git says).
 */
public final class HowClose {
    private final SearchForm form;
    private final String commit;
    private final SearchSetting setting = SearchSetting.here();
    private final Path folder;
    private final SearchResults results;
    private volatile boolean isDone;
    private final AtomicInteger added = new AtomicInteger();
    /** Gaps of the best plans known, per cent. */
    private final Map<String, Double> best = new HashMap<>();

    private HowClose(SearchForm form, String commit, Path folder) {
        this.form = form;
        this.commit = commit;
        this.folder = folder;
        this.results = SearchResults.at(folder.resolve(SearchResults.FILE));
    }

    public static void main(String[] args) throws IOException {
        BenchArgs given =
                new BenchArgs(args, "form", "problems", "seeds", "first", "seconds", "prices", "out", "commit");
        String commit = given.text("commit", "");
        Path folder = Path.of(given.text("out", "benchmarks/search/results"));
        Files.createDirectories(folder);
        new HowClose(SearchForm.of(given), commit.isEmpty() ? Commits.here() : commit, folder).run();
    }

    private void run() throws IOException {
        System.out.println(DemoFarm.heading(commit));
        Map<String, List<SearchTask>> open = new LinkedHashMap<>();
        int done = 0;
        for (SearchTask task : form.tasks()) {
            if (results.has(task, commit, setting)) {
                done++;
            } else {
                open.computeIfAbsent(task.problem(), problem -> new ArrayList<>())
                        .add(task);
            }
        }
        SearchProgress progress =
                new SearchProgress(open.values().stream().flatMap(List::stream).toList(), this::secondsBefore);
        System.err.printf(Locale.ROOT, "%d searches were done before; left: %s%n", done, progress.left());
        Runtime.getRuntime().addShutdownHook(new Thread(this::tellThatStopped));
        for (Map.Entry<String, List<SearchTask>> entry : open.entrySet()) {
            measure(entry.getKey(), entry.getValue(), progress);
        }
        isDone = true;
        tell();
    }

    private void measure(String name, List<SearchTask> tasks, SearchProgress progress) {
        // Each of the small ones is a season of its own.
        SearchedProblem problem = name.equals(ProblemName.SMALL)
                ? null
                : SearchedProblem.named(name, new KeptPrices(folder, name), form.priceSeconds(name));
        Double known = problem == null ? null : problem.gapOfBestKnown(folder, name);
        if (known != null) {
            best.put(name, known);
        }
        for (SearchTask task : tasks) {
            SearchRow row =
                    (problem == null ? SearchedProblem.small(task.seed()) : problem).search(task, commit, setting);
            results.add(row);
            added.incrementAndGet();
            progress.done(task);
            Double gap = row.gap();
            System.err.printf(
                    Locale.ROOT,
                    "%s, %d s, seed %d: %s%s; left: %s%n",
                    name,
                    task.seconds(),
                    task.seed(),
                    gap == null ? "gap not known" : String.format(Locale.ROOT, "gap %.2f %%", gap),
                    row.isSound() ? "" : ", " + row.health(),
                    progress.left());
        }
    }

    private double secondsBefore(String problem) {
        int prices = new KeptPrices(folder, problem).areThere() ? 0 : form.priceSeconds(problem);
        return SearchForm.compileSeconds(problem) + prices;
    }

    private void tell() throws IOException {
        // As the file has them, rounded: so the page is the same when it is written again from the file.
        List<SearchRow> rows =
                SearchResults.at(folder.resolve(SearchResults.FILE)).rows();
        if (rows.isEmpty()) {
            return;
        }
        SearchSummary.lines(MeasuredSearches.of(rows), best).forEach(System.out::println);
        Path page = folder.resolve(HowClosePage.FILE);
        List<OtherWay> ways =
                OtherWayResults.at(folder.resolve(OtherWayResults.FILE)).rows();
        Files.writeString(page, HowClosePage.html(rows, ways));
        System.out.println("Pictures and tables: " + page);
    }

    private void tellThatStopped() {
        if (!isDone) {
            System.err.printf(
                    Locale.ROOT,
                    "Stopped. %d searches more are kept; %s%n",
                    added.get(),
                    Commits.isExact(commit)
                            ? "the same command goes on from here."
                            : "as the commit is " + commit + ", the same command begins anew.");
        }
    }
}
