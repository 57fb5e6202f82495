package bedwright.sheet;

import bedwright.growth.Spot;
import bedwright.plan.DemandLine;
import bedwright.plan.Outcome;
import bedwright.plan.Step;
import bedwright.plan.WeekReasons;
import bedwright.season.KindTree;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;

/** Why a week is short of a kind of stems, or has too many, and what would mend it, in a grower's words. */
public final class WhyWeek {
    private final Season season;
    private final WeekReasons reasons;
    private final Outcome outcome;
    private final KindTree kinds;
    private final Say say;
    private final TriedWords words;
    private final int width;
    private final StringBuilder text = new StringBuilder();

    private WhyWeek(Season season, WeekReasons reasons, int width) {
        this.season = season;
        this.reasons = reasons;
        this.outcome = reasons.outcome();
        this.kinds = KindTree.of(season.roles());
        this.say = new Say(season);
        this.words = new TriedWords(season);
        this.width = width;
    }

    /**
     * All of it as lines of text.
     *
     * @param facts with the outcome that the reasons are of
     * @param width most characters a line of a sentence
     */
    public static String text(SheetFacts facts, WeekReasons reasons, int width) {
        WhyWeek why = new WhyWeek(facts.season(), reasons, width);
        why.head();
        why.asks();
        why.gives(Shown.of(facts));
        why.mends();
        return why.text.toString();
    }

    private void sentence(String sentence) {
        Summary.wrap(text, sentence, width);
    }

    private void table(List<Table.Column> columns, List<List<String>> rows) {
        TextTable.lines(new Table("week", "Week", columns, rows, List.of()))
                .forEach(line -> text.append("  ").append(line).append('\n'));
    }

    private String kind() {
        return kinds.path(reasons.node()).replace("/", ", ");
    }

    private void head() {
        int week = reasons.week();
        Spread come = Spread.of(outcome.seasons(), k -> outcome.stems()[reasons.node()][week][k]);
        text.append(kind()).append(", ").append(say.weeks(week, week)).append(": ");
        text.append(Say.stems(come.middle())).append(" stems come in a usual year, ");
        text.append(Say.stems(come.low())).append(" in a bad one (1 year in 10). ");
        text.append(
                switch (reasons.state()) {
                    case SHORT -> "Promised stems are missing.";
                    case OVER -> "Stems are left over.";
                    case ENOUGH -> "Nothing promised is missing in the mean, and nothing is left over.";
                });
        text.append('\n');
    }

    /** Everybody who might take such stems: those who ask for the kind, one within it, or one that holds it. */
    private void asks() {
        text.append("\nWho asks for them then\n");
        List<List<String>> rows = new ArrayList<>();
        for (DemandLine line : outcome.demand()) {
            long asked = line.asked()[reasons.week()];
            if (asked == 0 || !(isWithin(line.node(), reasons.node()) || isWithin(reasons.node(), line.node()))) {
                continue;
            }
            int[] got = outcome.served()[line.index()][reasons.week()];
            Spread gets = Spread.of(got);
            rows.add(List.of(
                    line.name(),
                    kinds.path(line.node()).replace("/", ", "),
                    line.promise() == DemandLine.Promised.NOTHING ? "no" : "yes",
                    Say.stems(asked),
                    Say.stems(gets.middle()),
                    Say.stems(gets.low()),
                    Say.stems(asked - gets.mean())));
        }
        if (rows.isEmpty()) {
            sentence("Nobody.");
            return;
        }
        table(
                List.of(
                        Table.Column.text("Who"),
                        Table.Column.text("Kind"),
                        Table.Column.text("Promised"),
                        Table.Column.number("Asked"),
                        Table.Column.number("Gets, usual year"),
                        Table.Column.number("Bad year"),
                        Table.Column.number("Missing, mean")),
                rows);
        Spread left = Spread.of(outcome.leftOver()[kinds.role(reasons.node())][reasons.week()]);
        sentence("Of all " + season.roles().get(kinds.role(reasons.node())).name() + " stems of the week "
                + Say.stems(left.middle()) + " go nowhere in a usual year, " + Say.stems(left.high())
                + " in the fullest of ten.");
    }

    private boolean isWithin(int inner, int node) {
        int at = inner;
        while (at > node) {
            at = kinds.parent(at);
        }
        return at == node;
    }

    /** Plantings that give stems of its role then, in the mean. */
    private void gives(List<Shown> plantings) {
        text.append("\nWhat gives ")
                .append(season.roles().get(kinds.role(reasons.node())).name());
        text.append(" stems then\n");
        List<List<String>> rows = new ArrayList<>();
        for (Shown planting : plantings) {
            double stems = planting.meanByWeek()[reasons.week()];
            if (planting.role() == kinds.role(reasons.node()) && stems > 0) {
                rows.add(List.of(
                        Integer.toString(planting.number()),
                        planting.name(),
                        planting.kept().method(),
                        planting.kept().bed(),
                        Say.stems(stems)));
            }
        }
        if (rows.isEmpty()) {
            sentence("No planting.");
            return;
        }
        table(
                List.of(
                        Table.Column.number("No."),
                        Table.Column.text("Crop"),
                        Table.Column.text("Method"),
                        Table.Column.text("Bed"),
                        Table.Column.number("Stems, mean of all its kinds")),
                rows);
    }

    private void mends() {
        if (reasons.state() == WeekReasons.State.ENOUGH) {
            return;
        }
        text.append("\nThe cheapest ways to mend it, each really tried on the whole plan\n");
        if (reasons.mends().isEmpty()) {
            sentence("None of the " + Say.count(reasons.tried(), "way", "ways") + " that were tried takes away half of"
                    + " it and keeps every hard rule: for that it would take more of what is full, which the season"
                    + " sheet names.");
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        String[] names = {"the first", "the second", "the third"};
        boolean dear = true;
        for (int i = 0; i < reasons.mends().size(); i++) {
            WeekReasons.Mend mend = reasons.mends().get(i);
            rows.add(words.row(names[i], mend.tried()));
            dear &= mend.tried().gain().medium() <= 0 && mend.tried().gain().soft() <= 0;
            List<String> steps = new ArrayList<>();
            mend.tried().steps().forEach(step -> steps.add(step(step)));
            notes.add("Of " + names[i] + " way " + Say.stems(mend.mended()) + " stems that week: "
                    + String.join("; ", steps) + ".");
        }
        table(TriedWords.columns("Way"), rows);
        notes.forEach(this::sentence);
        sentence(words.key());
        sentence(
                dear
                        ? "That is why: each of them would cost more than it brings, the stems of the other weeks counted"
                                + " in. " + Say.count(reasons.tried(), "way was", "ways were") + " tried."
                        : "One of them would be better than the plan: search longer, with --from this plan. "
                                + Say.count(reasons.tried(), "way was", "ways were") + " tried.");
    }

    private String step(Step step) {
        Spot from = step.from();
        Spot to = step.to();
        String lots = Say.count(step.lots(), "lot", "lots") + " of " + words.name(step.stock());
        if (from == null && to != null) {
            return lots + " more: " + words.spot(to);
        }
        if (to == null && from != null) {
            return lots + " left out: " + words.spot(from);
        }
        return from == null || to == null ? lots : lots + " from " + words.spot(from) + " to " + words.spot(to);
    }
}
