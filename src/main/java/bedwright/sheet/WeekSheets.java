package bedwright.sheet;

import bedwright.plan.Delays;
import bedwright.plan.Grains;
import bedwright.plan.Outcome;
import bedwright.season.Season;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Week sheets: what to cut, to do and to look for in each week of a plan. Facts of a season under way make sheets of what
 * is still to come of it.
 */
public final class WeekSheets {
    private final WeekFacts facts;
    private final Season season;
    private final WeekWork work;
    private final WeekStems stems;
    private final WeekWatch watch;
    private final Say say;

    /**
     * Week sheets of a plan.
     *
     * @param delays measured from the same plan
     */
    public WeekSheets(SheetFacts facts, Delays delays) {
        this.facts = WeekFacts.of(facts);
        this.season = facts.season();
        this.work = new WeekWork(this.facts, new WeekJobs(this.facts, delays));
        this.stems = new WeekStems(this.facts);
        this.watch = new WeekWatch(this.facts);
        this.say = new Say(season);
    }

    /** The sheets of some weeks as one page of HTML, which prints each week on a page of its own where it fits one. */
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
        Set<Cautions.Mark> seen = EnumSet.noneOf(Cautions.Mark.class);
        String cut = "Stems in the mean of the possible seasons (bad to good: 8 years of 10)"
                + (mornings > 1 ? ", then by cutting morning" : "")
                + ". Cut low, above a side shoot, where it does not say whole stem. Write what was cut, and \"all\" or"
                + " what was left. CARE: cut in the cool hours, drink, rest in the shade; buckets by twos.";
        add(parts, "cut", "Cut", cut, stems.cutting(week, seen));
        add(parts, "asked", "Orders that go short", "", stems.orders(week));
        add(parts, "kinds", "Stems by kind", "", stems.kinds(week));
        add(
                parts,
                "do",
                "Do, dearest to leave first",
                "Behind the hours: what leaving it a week loses, all else as planned, really tried; of a start that will"
                        + " not do a week later (the reason stands behind) what is lost without it; in brackets, if only"
                        + " that is left. No figure: the plan"
                        + " knows nothing of what weeds take. No depth: as the packet says, which knows better anyway.",
                work.table(week, seen));
        add(parts, "watch", "Look for", "", watch.table(week));
        List<String> first = first(week);
        List<String> last = new ArrayList<>();
        if (!seen.isEmpty()) {
            last.add(Cautions.key(seen));
        }
        last.add("Where: the bed, from–to along it in " + say.lengths().symbol()
                + ". To note: bedwright note PLAN, the words, --on the day; the whole week: week "
                + season.weekStart(week)
                + " done. Advice from uncertain figures: local rules, labels and licensed practice come first.");
        return new WeekPage(
                week,
                "Week of " + Say.fullDate(season.weekStart(week)) + " to "
                        + Say.fullDate(season.weekStart(week).plusDays(6)),
                season.name(),
                first,
                parts,
                last,
                PrintRoom.density(first, parts, last));
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
}
