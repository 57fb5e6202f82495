package bedwright.sheet;

import bedwright.plan.Delays;
import bedwright.plan.Grains;
import bedwright.plan.Outcome;
import bedwright.season.Job;
import bedwright.season.Season;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Week sheets: what to cut, to do and to look for in each week of a plan. Facts of a season under way make sheets of what
 * is still to come of it.
 */
public final class WeekSheets {
    private final WeekFacts facts;
    private final Season season;
    private final WeekJobs jobs;
    private final WeekStems stems;
    private final WeekWatch watch;
    private final Cautions cautions;
    private final JobWords words;

    /**
     * Week sheets of a plan.
     *
     * @param delays measured from the same plan
     */
    public WeekSheets(SheetFacts facts, Delays delays) {
        this.facts = WeekFacts.of(facts);
        this.season = facts.season();
        this.jobs = new WeekJobs(this.facts, delays);
        this.stems = new WeekStems(this.facts);
        this.watch = new WeekWatch(this.facts);
        this.cautions = new Cautions(season);
        this.words = new JobWords(season);
    }

    /** The sheets of some weeks as one page of HTML, which prints each week on a page or two of its own. */
    public String html(List<Integer> weeks) {
        StringOutput out = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html)
                .render("weeks.jte", weeks.stream().map(this::page).toList(), out);
        return out.toString();
    }

    /** The sheet of a week as plain text, in lines of at most {@code width} letters where words allow it. */
    public String text(int week, int width) {
        return WeekText.of(page(week), width);
    }

    /** Weeks in which there is something to do, to cut or to deliver. */
    public List<Integer> weeks() {
        List<Integer> weeks = new ArrayList<>();
        for (int w = season.firstWeek(); w < season.weeks(); w++) {
            if (page(w).parts().size() > 0) {
                weeks.add(w);
            }
        }
        return weeks;
    }

    WeekPage page(int week) {
        List<WeekPage.Part> parts = new ArrayList<>();
        int mornings = stems.mornings(week);
        String cut = "Stems in the mean of the possible seasons"
                + (mornings > 1 ? ", spread over " + mornings + " cutting mornings" : "")
                + "; \"bad to good\" holds in 8 years of 10. Cut low, above a side shoot, where it"
                + " does not say whole stem. Write what was cut, and \"all\" or what was left. CARE: cut in the"
                + " cool hours, drink, rest in the shade; full buckets by twos.";
        add(parts, "cut", "Cut", cut, stems.cutting(week));
        add(parts, "asked", "Orders that may go short", "", stems.orders(week));
        add(parts, "kinds", "Stems by kind", "", stems.kinds(week));
        List<WeekJobs.Entry> entries = jobs.of(week);
        add(
                parts,
                "do",
                "Do, dearest to leave first",
                "\"Left a week\": what the plan loses a season if that is done a week later, all else as planned, really"
                        + " tried; where a start will not do a week later (the reason stands behind), what is lost without"
                        + " it. \"No figure\": the plan knows nothing of what weeds take, which does not make them"
                        + " harmless. Where no depth stands, seed goes as deep as its"
                        + " packet says, which knows better anyway.",
                work(week, entries));
        add(parts, "watch", "Look for", "", watch.table(week));
        List<String> first = first(week);
        return new WeekPage(
                week,
                "Week of " + Say.fullDate(season.weekStart(week)) + " to "
                        + Say.fullDate(season.weekStart(week).plusDays(6)),
                season.name(),
                first,
                parts,
                List.of(
                        "To note: bedwright note PLAN, then the words of the note, with --on and the day. The whole week:"
                                + " week " + season.weekStart(week) + " done, or: done except and the numbers.",
                        "Advice from figures, many of them uncertain. Local rules, labels and licensed practice come"
                                + " first."),
                PrintRoom.density(first, parts));
    }

    private static void add(List<WeekPage.Part> parts, String id, String heading, String note, Table table) {
        if (!table.rows().isEmpty()) {
            parts.add(new WeekPage.Part(id, heading, note, table));
        }
    }

    private List<String> first(int week) {
        List<String> lines = new ArrayList<>(stems.bouquets(week));
        Outcome.Work work = facts.facts().outcome().work();
        int seasons = facts.facts().outcome().seasons();
        double cutting = 0;
        double clearing = 0;
        double hired = 0;
        double all = 0;
        for (int k = 0; k < seasons; k++) {
            cutting += (double) work.cutting()[week][k] / seasons;
            clearing += (double) work.clearing()[week][k] / seasons;
            all += (double) work.all(week, k) / seasons;
            hired += (double) Math.max(0, work.all(week, k) - work.own()[week]) / seasons;
        }
        List<String> of = new ArrayList<>();
        addHours(of, "cutting", cutting);
        addHours(of, "plantings", work.plantings()[week]);
        addHours(of, "making up", work.making()[week]);
        addHours(of, "serving", work.service()[week]);
        addHours(of, "clearing what is left over", clearing);
        addHours(of, "every week's work", work.chores()[week]);
        String whose = hired > 0
                ? " Your own: " + hours(all - hired) + "; hired: " + hours(hired) + "."
                : " All of them your own.";
        String others = stems.otherOrders(week);
        if (!others.isEmpty()) {
            lines.add("Orders: " + others.strip());
        }
        lines.add("Hours: " + hours(all) + (of.isEmpty() ? "" : " (" + String.join(", ", of) + ")") + "." + whose);
        return lines;
    }

    private static void addHours(List<String> of, String what, double ticks) {
        if (ticks > 0) {
            of.add(what + " " + hours(ticks));
        }
    }

    private static String hours(double ticks) {
        return Say.clock(Math.round(ticks / Grains.TICKS_A_MINUTE));
    }

    private Table work(int week, List<WeekJobs.Entry> entries) {
        List<List<String>> rows = new ArrayList<>();
        Map<List<Object>, List<WeekJobs.Entry>> alike = new LinkedHashMap<>();
        for (WeekJobs.Entry entry : entries) {
            List<Object> key = entry.canWait()
                    ? List.of(entry.jobs(), entry.isHardened(), jobs.left(entry))
                    : List.of(entry.planting().number());
            alike.computeIfAbsent(key, k -> new ArrayList<>()).add(entry);
        }
        alike.values().forEach(same -> rows.add(same.size() == 1 ? one(same.getFirst()) : several(same)));
        long minutes = entries.stream().mapToLong(WeekJobs.Entry::minutes).sum();
        return new Table(
                "do-" + week,
                "What to do",
                List.of(
                        Table.Column.text("No. and planting"),
                        Table.Column.text("Where"),
                        Table.Column.number("Hours"),
                        Table.Column.text("Left a week"),
                        Table.Column.text("Last day"),
                        Table.Column.text("What to do")),
                rows,
                List.of(List.of("Together", "", Say.clock(minutes), "", "", "")));
    }

    private List<String> one(WeekJobs.Entry entry) {
        Shown planting = entry.planting();
        List<String> what = new ArrayList<>();
        if (entry.isHardened()) {
            what.add(HARDEN + ": " + words.harden(planting));
        }
        entry.lines().forEach(line -> what.add(words.of(planting, line.job())));
        return List.of(
                planting.number() + " " + planting.name(),
                facts.where().words(planting),
                time(entry.minutes()),
                jobs.left(entry),
                jobs.by(entry),
                sentence(String.join("; ", what))
                        + Cautions.words(cautions.of(planting, entry.jobs(), entry.isHardened())));
    }

    /** The same jobs on several plantings, of which none loses anything that the plan knows of. */
    private List<String> several(List<WeekJobs.Entry> same) {
        WeekJobs.Entry first = same.getFirst();
        List<String> what = new ArrayList<>();
        if (first.isHardened()) {
            what.add(HARDEN);
        }
        first.lines().forEach(line -> what.add(JobWords.ofAll(line.job())));
        List<String> each = new ArrayList<>();
        Map<String, List<String>> cares = new LinkedHashMap<>();
        for (WeekJobs.Entry entry : same) {
            Shown planting = entry.planting();
            String more = entry.isHardened()
                    ? ", " + words.harden(planting)
                    : entry.jobs().contains(Job.PINCH)
                            ? ", " + Say.whole(planting.kept().plants()) + " plants"
                            : "";
            String by = jobs.by(entry);
            each.add(planting.number() + " " + planting.name() + ", "
                    + facts.where().words(planting) + more + (by.isEmpty() ? "" : ", by " + by));
            for (String care : cautions.of(planting, entry.jobs(), entry.isHardened())) {
                cares.computeIfAbsent(care, c -> new ArrayList<>()).add(Integer.toString(planting.number()));
            }
        }
        List<String> careful = new ArrayList<>();
        cares.forEach((care, numbers) ->
                careful.add(numbers.size() == same.size() ? care : String.join(", ", numbers) + " " + care));
        return List.of(
                same.size() + " plantings",
                "",
                time(same.stream().mapToLong(WeekJobs.Entry::minutes).sum()),
                jobs.left(first),
                "",
                sentence(String.join("; ", what)).replaceAll("\\.$", ": ") + String.join("; ", each) + "."
                        + Cautions.words(careful));
    }

    private static final String HARDEN = "out to harden, in again on nights of frost";

    /** Hours and minutes; hardening, of which the plan counts none, has a dash. */
    private static String time(long minutes) {
        return minutes == 0 ? "–" : Say.clock(minutes);
    }

    private static String sentence(String words) {
        return words.isEmpty() ? "" : Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }
}
