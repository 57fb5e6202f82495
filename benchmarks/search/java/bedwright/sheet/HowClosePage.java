package bedwright.sheet;

import bedwright.plan.BenchArgs;
import bedwright.plan.MeasuredSearches;
import bedwright.plan.OtherWay;
import bedwright.plan.OtherWayResults;
import bedwright.plan.ProblemFamily;
import bedwright.plan.ProblemName;
import bedwright.plan.SearchBar;
import bedwright.plan.SearchGroup;
import bedwright.plan.SearchResults;
import bedwright.plan.SearchRow;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How close the search comes, as a page without outside parts: pictures and tables of all families, from the file of results
 * alone.
 */
public final class HowClosePage {
    /** Name of the page's file. */
    public static final String FILE = "how-close.html";

    private static final String ABOUT_SMALL =
            "Small seasons whose best plan is proven, another one for each seed: the bound is"
                    + " the best plan itself. A search ends as soon as it has it.";

    private static final String PAGE = """
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8"/>
            <meta name="viewport" content="width=device-width, initial-scale=1"/>
            <title>How close the search comes</title>
            %s<style>%s</style>
            </head>
            <body>
            <header class="top">
            <h1>How close the search comes</h1>
            <p class="when">%s</p>
            <nav aria-label="On this page"><ul>%s</ul></nav>
            </header>
            <main>
            <section id="summary" aria-labelledby="summary-heading">
            <h2 id="summary-heading">What it comes to</h2>
            <div class="parts">
            %s</div>
            </section>
            %s</main>
            </body>
            </html>
            """;

    private static final String STYLE = Look.MARKS + GapPicture.MARKS + """
            .gaps{max-width:62rem}
            .part{break-inside:avoid}
            td.number,tbody th{white-space:nowrap}
            .gaps svg{display:block;width:100%;height:auto}
            @media print{.gaps figure{break-inside:avoid}.gaps svg{max-width:230mm}section.family{break-inside:avoid}}
            """;

    private final MeasuredSearches measured;
    private final List<OtherWay> ways;
    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);
    private final GapTables tables;

    private HowClosePage(MeasuredSearches measured, List<OtherWay> ways) {
        this.measured = measured;
        this.ways = ways;
        this.tables = new GapTables(measured);
    }

    /**
     * Arguments: {@code in} (benchmarks/search/results/how-close.csv; other-ways.csv is taken from beside it), {@code out}
     * (the page, beside it).
     */
    public static void main(String[] args) throws IOException {
        BenchArgs given = new BenchArgs(args, "in", "out");
        Path in = Path.of(given.text("in", "benchmarks/search/results/" + SearchResults.FILE));
        Path out = Path.of(given.text("out", in.resolveSibling(FILE).toString()));
        Path ways = in.resolveSibling(OtherWayResults.FILE);
        Files.writeString(
                out, html(SearchResults.at(in).rows(), OtherWayResults.at(ways).rows()));
        System.out.println(out);
    }

    /**
     * The page as HTML that is well-formed XML too.
     *
     * @param rows in the order in which they were measured; the last tells which commit and machine it is about
     * @param ways what other ways to a plan came to
     * @throws IllegalArgumentException if there are no rows
     */
    public static String html(List<SearchRow> rows, List<OtherWay> ways) {
        return new HowClosePage(MeasuredSearches.of(rows), ways).html();
    }

    private String html() {
        List<String> problems = problems();
        StringBuilder links = new StringBuilder("<li><a href=\"#summary\">What it comes to</a></li>");
        StringBuilder sections = new StringBuilder(section("glance", "At a glance", table(tables.glance(problems))));
        for (String problem : problems) {
            Figure figure = new GapPicture(measured, problem).figure();
            links.append("<li><a href=\"#").append(id(problem)).append("\">").append(Svg.escape(problem));
            links.append("</a></li>");
            sections.append(family(problem, figure));
        }
        if (!ways.isEmpty()) {
            links.append("<li><a href=\"#ways\">Other ways</a></li>");
            sections.append(section(
                    "ways",
                    "Other ways to a plan",
                    "<p>The whole problem given to exact solvers on two threads, building its model not counted; and the"
                            + " relaxation's parts of lots made whole and polished by the search.</p>"
                            + table(new OtherWayTable(measured, ways).table())));
        }
        if (!measured.onOthers().isEmpty()) {
            links.append("<li><a href=\"#others\">Other machines</a></li>");
            sections.append(section(
                    "others",
                    "On other machines, or with another JDK",
                    "<p>Not to be held against the figures above: in the same seconds another machine tries more moves,"
                            + " or fewer.</p>" + table(tables.others())));
        }
        return PAGE.formatted(
                render("style.jte", Map.of()),
                STYLE,
                Svg.escape(measured()),
                links,
                render("parts.jte", Map.of("parts", parts(problems))),
                sections);
    }

    /** Families first, in their order; then what else was measured. */
    private List<String> problems() {
        Set<String> problems = new LinkedHashSet<>(List.of(ProblemName.SMALL));
        Arrays.stream(ProblemFamily.values()).map(ProblemFamily::label).forEach(problems::add);
        problems.addAll(measured.problems());
        return List.copyOf(problems);
    }

    private String measured() {
        Set<LocalDate> days = lastGroups()
                .flatMap(group -> group.rows().stream())
                .flatMap(row -> Stream.ofNullable(row.date()))
                .collect(Collectors.toCollection(TreeSet::new));
        String when = days.isEmpty()
                ? "Date not kept"
                : days.stream().map(Say::fullDate).collect(Collectors.joining(", "));
        return when + ". Commit " + measured.commit() + ". "
                + measured.setting().machine() + ". JDK " + measured.setting().jdk() + ".";
    }

    private Stream<SearchGroup> lastGroups() {
        return measured.onThisMachine().stream()
                .filter(group -> group.key().commit().equals(measured.commit()));
    }

    private List<Summary.Part> parts(List<String> problems) {
        return List.of(
                new Summary.Part("wanted", "What is wanted", wanted()),
                new Summary.Part("health", "Health", health()),
                new Summary.Part("missing", "What was not measured", missing(problems)),
                new Summary.Part(
                        "reading",
                        "How to read this",
                        List.of(
                                "Gap = (bound − plan) / (bound − nothing planted), in money, caution included, among plans"
                                        + " that miss no more stems that must be ours.",
                                "The bound is what no plan goes beyond; the best plan there is may lie below it, so the true"
                                        + " gap is at most the one told.",
                                "The rule of thumb is the season that a grower plans with pencil and paper, on the same problem"
                                        + " and against the same prices.",
                                "Earlier commits are told where they were measured on the same machine and JDK.")));
    }

    private List<String> wanted() {
        List<String> lines = new ArrayList<>();
        lastGroups()
                .forEach(group -> SearchBar.of(
                                group.key().problem(), group.key().seconds())
                        .ifPresent(bar -> lines.add(group.key().problem() + ", "
                                + group.key().seconds() + " s: " + GapTables.wanted(bar, group) + ".")));
        return lines.isEmpty() ? List.of("Nothing that a bar is set for was measured.") : lines;
    }

    private List<String> health() {
        List<String> lines = new ArrayList<>();
        lastGroups()
                .flatMap(group -> group.suspects().stream())
                .forEach(row -> lines.add(row.task().problem() + ", "
                        + row.task().seconds() + " s, seed " + row.task().seed() + ": " + row.health() + "."));
        return lines.isEmpty() ? List.of("No plan of this commit is suspect.") : lines;
    }

    private List<String> missing(List<String> problems) {
        Map<String, List<String>> byTimes = new LinkedHashMap<>();
        for (String problem : problems) {
            String times = GapPicture.USUAL_TIMES.stream()
                    .filter(time ->
                            measured.group(problem, time, measured.commit()).isEmpty())
                    .map(time -> time + " s")
                    .collect(Collectors.joining(", "));
            if (!times.isEmpty()) {
                byTimes.computeIfAbsent(times, all -> new ArrayList<>()).add(problem);
            }
        }
        return byTimes.isEmpty()
                ? List.of("All families were measured at all times.")
                : byTimes.entrySet().stream()
                        .map(entry -> String.join(", ", entry.getValue()) + ": " + entry.getKey() + ".")
                        .toList();
    }

    private String family(String problem, Figure figure) {
        String about =
                about(problem).map(text -> "<p>" + Svg.escape(text) + "</p>").orElse("");
        boolean isMeasured = measured.problems().contains(problem);
        String body = isMeasured
                ? "<div class=\"gaps\"><figure aria-labelledby=\"" + id(problem) + "-heading\">" + figure.svg()
                        + "<figcaption>" + Svg.escape(figure.caption()) + "</figcaption></figure></div>"
                        + table(tables.problem(problem))
                : "<p>Not measured on this machine.</p>";
        return section(id(problem), problem, about + body);
    }

    private static Optional<String> about(String problem) {
        return problem.equals(ProblemName.SMALL)
                ? Optional.of(ABOUT_SMALL)
                : Arrays.stream(ProblemFamily.values())
                        .filter(family -> family.label().equals(problem))
                        .map(family -> capital(family.about()) + ".")
                        .findFirst();
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private static String id(String problem) {
        return "of-" + ProblemName.plain(problem);
    }

    private static String section(String id, String heading, String body) {
        return """
                <section id="%1$s" class="family" aria-labelledby="%1$s-heading">
                <h2 id="%1$s-heading">%2$s</h2>
                %3$s
                </section>
                """.formatted(id, Svg.escape(heading), body);
    }

    private String table(Table table) {
        return render("table.jte", Map.of("table", table));
    }

    private String render(String template, Map<String, Object> parts) {
        StringOutput out = new StringOutput();
        engine.render(template, parts, out);
        return out.toString();
    }
}
