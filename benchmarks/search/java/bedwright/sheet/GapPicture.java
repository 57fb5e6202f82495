package bedwright.sheet;

import bedwright.plan.MeasuredSearches;
import bedwright.plan.ProblemName;
import bedwright.plan.SearchBar;
import bedwright.plan.SearchGroup;
import bedwright.plan.SearchRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The gaps of one problem by time of search: a mark for each seed, the median, and earlier commits fainter beside it. */
final class GapPicture {
    static final List<Integer> USUAL_TIMES = List.of(10, 60, 300);

    /** Looks that no other page has. */
    static final String MARKS = """
            .seed{fill:#0072B2;stroke:#fff;stroke-width:.5}
            .before{fill:#fff;stroke:#777;stroke-width:.8}
            .suspect{fill:#D55E00;stroke:#000;stroke-width:1.2}
            .cross{fill:none;stroke:#000;stroke-width:1.6}
            .median{stroke:#000;stroke-width:2.2}
            .median-before{stroke:#777;stroke-width:1.6}
            .bar-median{stroke:#000;stroke-width:1.3;stroke-dasharray:7 3}
            .bar-worst{stroke:#000;stroke-width:1.3;stroke-dasharray:1.5 2.5}
            """;

    private static final double WIDTH = 860;
    private static final double HEIGHT = 270;
    private static final double LEFT = 46;
    private static final double RIGHT = WIDTH - 8;
    private static final double TOP = 26;
    private static final double BOTTOM = HEIGHT - 46;
    /** From the marks of one seed to those of the next. */
    private static final double SEED = 8.5;
    /** Half of what the seeds of the last commit take at most. */
    private static final double HALF = 50;

    private static final double COLUMN = 42;
    private static final int EARLIER = 3;
    private static final double HALF_MARK = 4;

    private final MeasuredSearches measured;
    private final String problem;
    private final List<Integer> times;
    private final GapScale gaps;
    private final SecondsScale seconds;
    private final double squeeze;

    GapPicture(MeasuredSearches measured, String problem) {
        this.measured = measured;
        this.problem = problem;
        this.times = times(measured, problem);
        this.gaps = GapScale.of(drawn(), TOP, BOTTOM);
        this.seconds = new SecondsScale(times, LEFT, RIGHT);
        this.squeeze = seconds.squeeze();
    }

    /** Times of search that were measured of a problem, and those that are usual, in rising order. */
    static List<Integer> times(MeasuredSearches measured, String problem) {
        TreeSet<Integer> times = new TreeSet<>(USUAL_TIMES);
        for (SearchGroup group : measured.onThisMachine()) {
            if (group.key().problem().equals(problem)) {
                times.add(group.key().seconds());
            }
        }
        return List.copyOf(times);
    }

    private double[] drawn() {
        List<Double> all = new ArrayList<>();
        for (int time : times) {
            last(time).ifPresent(group -> addGaps(group, all));
            earlier(time).forEach(group -> addGaps(group, all));
            SearchBar.of(problem, time).ifPresent(bar -> {
                all.add(bar.median());
                Double worst = bar.worst();
                all.add(worst == null ? bar.median() : worst);
            });
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void addGaps(SearchGroup group, List<Double> all) {
        for (double gap : group.gaps()) {
            all.add(gap);
        }
    }

    private Optional<SearchGroup> last(int time) {
        return measured.group(problem, time, measured.commit());
    }

    /** Earlier commits, the last of them first. */
    private List<SearchGroup> earlier(int time) {
        return measured.commits().stream()
                .filter(commit -> !commit.equals(measured.commit()))
                .flatMap(commit -> measured.group(problem, time, commit).stream())
                .limit(EARLIER)
                .toList();
    }

    Figure figure() {
        String id = "gaps-" + ProblemName.plain(problem);
        Svg svg = new Svg(
                Svg.Form.INLINE, id, WIDTH, HEIGHT, "Gaps of " + problem + " by seconds of search", description());
        key(svg);
        axes(svg);
        for (int time : times) {
            time(svg, time);
        }
        String caption =
                "Gap in per cent, lower is better; the scale need not begin at 0. Seconds on a logarithmic scale;"
                        + " the seeds of a time stand side by side, in their order. Point at a mark for its figures.";
        return new Figure(id, problem, caption, svg.done());
    }

    private String description() {
        StringBuilder text = new StringBuilder();
        for (int time : times) {
            text.append(text.isEmpty() ? "" : " ").append(time).append(" s: ");
            OptionalDouble median = last(time).map(SearchGroup::medianGap).orElse(OptionalDouble.empty());
            text.append(median.isPresent() ? "median " + percent(median.getAsDouble()) : "not measured")
                    .append('.');
        }
        return text.toString();
    }

    private void key(Svg svg) {
        double x = LEFT;
        svg.path(diamond(x + 5, 8), "seed");
        x = says(svg, x + 14, "a seed, commit " + measured.commit());
        svg.line(x, 8, x + 18, 8, "median");
        x = says(svg, x + 22, "median");
        svg.path(diamond(x + 5, 8), "before");
        x = says(svg, x + 14, "earlier commit");
        if (isAnySuspect()) {
            suspect(svg, x + 5, 8);
            x = says(svg, x + 14, "suspect");
        }
        if (times.stream().anyMatch(time -> SearchBar.of(problem, time).isPresent())) {
            svg.line(x, 8, x + 22, 8, "bar-median");
            x = says(svg, x + 26, "wanted: median at most");
            svg.line(x, 8, x + 22, 8, "bar-worst");
            says(svg, x + 26, "worst at most");
        }
    }

    private boolean isAnySuspect() {
        return times.stream()
                .flatMap(time -> Stream.concat(last(time).stream(), earlier(time).stream()))
                .anyMatch(group -> !group.suspects().isEmpty());
    }

    private static double says(Svg svg, double x, String meaning) {
        svg.text(x, 11, 9, "key", meaning);
        return x + LetterWidths.of(meaning, 9, false) + 14;
    }

    private void axes(Svg svg) {
        svg.group("axis");
        List<Double> round = gaps.round();
        for (double gap : round) {
            svg.line(LEFT, gaps.y(gap), RIGHT, gaps.y(gap), Math.abs(gap) < 1e-9 ? "ink" : "week");
            svg.text(LEFT - 5, gaps.y(gap) + 3.5, "end", Say.tenth(gap) + " %");
        }
        svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, "base");
        svg.end();
    }

    private void time(Svg svg, int time) {
        double x = seconds.x(time);
        svg.line(x, BOTTOM, x, BOTTOM + 4, "ink");
        svg.text(x, BOTTOM + 30, "mid bold", time + " s");
        SearchBar.of(problem, time).ifPresent(bar -> bar(svg, x, bar));
        Optional<SearchGroup> last = last(time);
        if (last.isPresent()) {
            group(svg, x, last.get());
        } else {
            svg.text(x, BOTTOM - 6, "mid", "not measured");
        }
        List<SearchGroup> earlier = earlier(time);
        for (int i = 0; i < earlier.size(); i++) {
            before(svg, x - squeeze * (HALF + COLUMN * (i + 0.5)), earlier.get(i));
        }
    }

    private void bar(Svg svg, double x, SearchBar bar) {
        bar(svg, x, bar.median(), "bar-median", "Wanted: a median of at most ");
        Double worst = bar.worst();
        if (worst != null) {
            bar(svg, x, worst, "bar-worst", "Wanted: no seed worse than ");
        }
    }

    private void bar(Svg svg, double x, double gap, String classes, String words) {
        double half = squeeze * (HALF + 4);
        svg.mark("mark", words + percent(gap));
        svg.line(x - half, gaps.y(gap), x + half, gaps.y(gap), classes);
        svg.text(x + half + 3, gaps.y(gap) + 3, 9, "halo", Say.tenth(gap) + " %");
        svg.rect(x - half, gaps.y(gap) - 3, 2 * half, 6, "hit");
        svg.end();
    }

    private void group(Svg svg, double x, SearchGroup group) {
        List<SearchRow> rows = group.rows();
        double apart = squeeze * Math.min(SEED, 2 * (HALF - HALF_MARK) / Math.max(1, rows.size() - 1));
        group.medianGap().ifPresent(median -> {
            svg.mark("mark", told(group) + ": median " + percent(median) + " of " + seeds(group));
            svg.line(x - squeeze * HALF, gaps.y(median), x + squeeze * HALF, gaps.y(median), "median");
            svg.end();
        });
        for (int i = 0; i < rows.size(); i++) {
            seed(svg, x + apart * (i - (rows.size() - 1) / 2.0), rows.get(i), "seed");
        }
        svg.text(x, BOTTOM + 14, "mid small", measured.commit());
    }

    private void before(Svg svg, double x, SearchGroup group) {
        group.rows().forEach(row -> seed(svg, x, row, "before"));
        group.medianGap().ifPresent(median -> {
            double half = squeeze * (COLUMN / 2 - 8);
            svg.mark("mark", told(group) + ": median " + percent(median) + " of " + seeds(group));
            svg.line(x - half, gaps.y(median), x + half, gaps.y(median), "median-before");
            svg.end();
        });
        if (squeeze > 0.8) {
            svg.text(x, BOTTOM + 14, "mid small", group.key().commit());
        }
    }

    private void seed(Svg svg, double x, SearchRow row, String classes) {
        Double gap = row.gap();
        if (gap == null) {
            svg.mark("mark", figures(row));
            svg.text(x, TOP + 6, "mid", row.isSound() ? "?" : "×");
            svg.end();
            return;
        }
        svg.mark("mark", figures(row));
        if (row.isSound()) {
            svg.path(diamond(x, gaps.y(gap)), classes);
        } else {
            suspect(svg, x, gaps.y(gap));
        }
        svg.end();
    }

    private static void suspect(Svg svg, double x, double y) {
        double half = HALF_MARK + 1;
        svg.rect(x - half, y - half, 2 * half, 2 * half, "suspect");
        svg.path(
                new Svg.Outline()
                        .move(x - half, y - half)
                        .line(x + half, y + half)
                        .move(x - half, y + half)
                        .line(x + half, y - half),
                "cross");
    }

    private static Svg.Outline diamond(double x, double y) {
        return new Svg.Outline()
                .move(x, y - HALF_MARK)
                .line(x + HALF_MARK, y)
                .line(x, y + HALF_MARK)
                .line(x - HALF_MARK, y)
                .close();
    }

    private static String told(SearchGroup group) {
        return "Commit " + group.key().commit() + ", " + group.key().seconds() + " s";
    }

    private static String seeds(SearchGroup group) {
        return Say.count(group.rows().size(), "seed", "seeds");
    }

    private static String figures(SearchRow row) {
        Double gap = row.gap();
        return "Commit " + row.commit() + ", " + row.task().seconds() + " s, seed "
                + row.task().seed() + ": " + (gap == null ? "gap not known" : "gap " + percent(gap)) + ", money "
                + Say.whole(row.money()) + ", " + Say.whole(row.movesASecond()) + " moves a second, " + row.health();
    }

    /** A gap with two decimals, or three where it is all but nothing; no line break parts it from its sign. */
    static String percent(double gap) {
        String form = gap != 0 && Math.abs(gap) < 0.1 ? "%.3f\u00a0%%" : "%.2f\u00a0%%";
        return String.format(Locale.ROOT, form, gap).replace('-', '−');
    }
}
