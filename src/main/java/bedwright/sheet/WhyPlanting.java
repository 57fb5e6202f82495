package bedwright.sheet;

import bedwright.growth.Prospect;
import bedwright.growth.Spot;
import bedwright.plan.Alternative;
import bedwright.plan.DemandLine;
import bedwright.plan.PlantingReasons;
import bedwright.plan.Pressed;
import bedwright.plan.Rule;
import bedwright.plan.Tried;
import bedwright.season.Held;
import bedwright.season.KindTree;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/** Why a planting is in a plan, in a grower's words. */
public final class WhyPlanting {
    /** Losses are told in parts of a million, as whole numbers. */
    private static final double PARTS = 1e6;

    private final Season season;
    private final PlantingReasons reasons;
    private final Say say;
    private final TriedWords words;
    private final Tried without;
    private final int width;
    private final StringBuilder text = new StringBuilder();

    private WhyPlanting(Season season, PlantingReasons reasons, int width) {
        this.season = season;
        this.reasons = reasons;
        this.say = new Say(season);
        this.words = new TriedWords(season);
        this.without = reasons.without();
        this.width = width;
    }

    /**
     * All of it as lines of text.
     *
     * @param width most characters a line of a sentence
     */
    public static String text(Season season, PlantingReasons reasons, int width) {
        WhyPlanting why = new WhyPlanting(season, reasons, width);
        why.head();
        why.gives();
        why.goes();
        why.costs();
        why.threats();
        why.presses();
        why.instead();
        return why.text.toString();
    }

    private void heading(String heading) {
        text.append('\n').append(heading).append('\n');
    }

    private void sentence(String sentence) {
        Summary.wrap(text, sentence, width);
    }

    private void table(Table table) {
        TextTable.lines(table).forEach(line -> text.append("  ").append(line).append('\n'));
    }

    private void head() {
        var planting = reasons.planting();
        int metres = 0;
        int[][] use = without.before().bedUse();
        int[][] rest = without.after().bedUse();
        int from = season.weeks();
        int to = -1;
        for (int b = 0; b < use.length; b++) {
            for (int w = 0; w < season.weeks(); w++) {
                int own = use[b][w] - rest[b][w];
                if (own > 0) {
                    metres = Math.max(metres, own);
                    from = Math.min(from, w);
                    to = Math.max(to, w);
                }
            }
        }
        Spot spot = PlantingReasons.spot(season, planting);
        String name = words.name(spot.stock());
        text.append("No. ").append(planting.number()).append(", ").append(name);
        text.append(name.equals(planting.crop()) ? "" : " (" + planting.crop() + ")");
        text.append(", ").append(planting.method()).append(": ");
        text.append(Say.count(planting.plants(), "plant", "plants"));
        text.append(" on ")
                .append(say.lengthWithUnit(metres))
                .append(" of bed ")
                .append(planting.bed());
        text.append(to < 0 ? "" : ", " + say.weeks(from, to));
        text.append(reasons.prospect() == null ? "" : "; sown, set or started " + say.date(planting.sown()));
        text.append(".\n");
    }

    /** Stems of a week that are of this planting, by season. */
    private long stems(int week, int k) {
        long own = 0;
        KindTree kinds = KindTree.of(season.roles());
        for (int n = 0; n < kinds.size(); n++) {
            if (kinds.parent(n) < 0) {
                own += without.before().stems()[n][week][k] - without.after().stems()[n][week][k];
            }
        }
        return own;
    }

    /** Stems that would not go to a line in a week without the planting, over all seasons. */
    private long lost(DemandLine line, int week) {
        long lost = 0;
        for (int k = 0; k < without.before().seasons(); k++) {
            lost += without.before().served()[line.index()][week][k]
                    - without.after().served()[line.index()][week][k];
        }
        return lost;
    }

    private void gives() {
        int seasons = without.before().seasons();
        long[] all = new long[seasons];
        List<List<String>> rows = new ArrayList<>();
        for (int w = 0; w < season.weeks(); w++) {
            int week = w;
            Spread spread = Spread.of(seasons, k -> stems(week, k));
            long most = 0;
            for (int k = 0; k < seasons; k++) {
                long own = stems(w, k);
                all[k] += own;
                most = Math.max(most, own);
            }
            if (most == 0) {
                continue;
            }
            double taken = 0;
            for (DemandLine line : without.before().demand()) {
                taken += lost(line, w);
            }
            rows.add(List.of(
                    say.shortWeek(w), Say.stems(spread.middle()), Say.stems(spread.low()), Say.stems(taken / seasons)));
        }
        Spread whole = Spread.of(all);
        heading("What it gives");
        if (rows.isEmpty()) {
            sentence("No stems within the season.");
            return;
        }
        sentence(Say.stems(whole.middle()) + " stems in a usual year, " + Say.stems(whole.low())
                + " in a bad one (1 year in 10), by week:");
        table(new Table(
                "gives",
                "Stems by week",
                List.of(
                        Table.Column.text("Week of"),
                        Table.Column.number("Usual year"),
                        Table.Column.number("Bad year"),
                        Table.Column.number("Missed without it, mean")),
                rows));
    }

    private void goes() {
        int seasons = without.before().seasons();
        KindTree kinds = KindTree.of(season.roles());
        List<List<String>> rows = new ArrayList<>();
        for (DemandLine line : without.before().demand()) {
            int from = -1;
            int to = -1;
            long stems = 0;
            double pays = 0;
            double spared = 0;
            for (int w = 0; w < season.weeks(); w++) {
                long lost = lost(line, w);
                if (lost != 0) {
                    from = from < 0 ? w : from;
                    to = w;
                    stems += lost;
                }
                for (int k = 0; k < seasons; k++) {
                    long with = without.before().served()[line.index()][w][k];
                    long less = without.after().served()[line.index()][w][k];
                    pays += line.takings(w, with) - line.takings(w, less);
                    spared += line.lacking(w, less) - line.lacking(w, with);
                }
            }
            if (from >= 0) {
                rows.add(List.of(
                        line.name(),
                        kinds.path(line.node()).replace("/", ", "),
                        from == to ? say.shortWeek(from) : say.shortWeek(from) + " to " + say.shortWeek(to),
                        Say.stems((double) stems / seasons),
                        say.money(pays / seasons),
                        say.money(spared / seasons)));
            }
        }
        heading("To whom: what they would miss without it, in the mean");
        if (rows.isEmpty()) {
            sentence("Nobody: without it everybody would get as many stems.");
            return;
        }
        table(new Table(
                "goes",
                "Who gets it",
                List.of(
                        Table.Column.text("Who"),
                        Table.Column.text("Kind"),
                        Table.Column.text("Weeks of"),
                        Table.Column.number("Stems"),
                        Table.Column.number("They pay"),
                        Table.Column.number("Shortage or buying in spared")),
                rows));
    }

    private void costs() {
        heading("What it brings and costs: the season with it less the season without it, in the mean");
        List<List<String>> rows = new ArrayList<>();
        for (Rule rule : Rule.values()) {
            long more = without.rules().cost(rule);
            if (rule.level() == Rule.Level.SOFT && more != 0) {
                String what =
                        rule == Rule.HOURS_PAID ? what(rule) + " (" + Say.hours(-without.work()) + " h)" : what(rule);
                rows.add(List.of(
                        what,
                        TriedWords.signed(
                                say.money((double) more / without.before().seasons()))));
            }
        }
        table(new Table(
                "costs",
                "What it brings and costs",
                List.of(Table.Column.text("What"), Table.Column.number("Money")),
                rows,
                List.of(
                        List.of("Together", TriedWords.signed(say.money(-without.money()))),
                        List.of(
                                "As judged, with the weight of the bad seasons",
                                TriedWords.signed(say.money(-without.weighed()))))));
        long must = without.rules().cost(Rule.MUST_BE_OURS);
        if (must > 0) {
            sentence("Without it stems would be missing that must be ours: "
                    + Say.tenth(must / 100.0 / without.before().seasons())
                    + " a season, each counted with its weight.");
        }
    }

    /** What a rule counts, as a grower's line of money. */
    static String what(Rule rule) {
        return switch (rule) {
            case TAKINGS -> "takings";
            case SHORTAGE -> "shortages spared";
            case BUY_IN -> "buying in spared";
            case HOURS_PAID -> "hours";
            case MATERIAL -> "seed, plants and wear";
            case EXTRA_STOCK -> "nets, trays and cover to buy";
            case REST_YEARS -> "rest years broken";
            case FOLLOW_ON -> "family following itself";
            case CHANGES -> "changes of the plan in force";
            case BED_ROOM, HOURS, CUTTING_HOURS, BENCH_ROOM, STOCK_ROOM, MUST_BE_OURS -> rule.sentence();
        };
    }

    private void threats() {
        heading("What threatens it: share lost");
        Prospect prospect = reasons.prospect();
        if (prospect == null) {
            sentence("Its stems are written out in the season file, so nothing is taken off them.");
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        threat(rows, prospect, "not coming up, or not taking", Prospect.Surviving::stand);
        for (String pest : prospect.usual().pests().keySet()) {
            threat(rows, prospect, pest, left -> left.pests().getOrDefault(pest, 1.0));
        }
        threat(rows, prospect, "spring frost or winter", Prospect.Surviving::springOrWinter);
        threat(rows, prospect, "autumn frost", Prospect.Surviving::autumn);
        threat(rows, prospect, "storm", Prospect.Surviving::storms);
        if (rows.isEmpty()) {
            sentence("Nothing, in any possible season.");
            return;
        }
        threat(rows, prospect, "all together", Prospect.Surviving::all);
        table(new Table(
                "threats",
                "What threatens it",
                List.of(
                        Table.Column.text("What"),
                        Table.Column.number("Usual year"),
                        Table.Column.number("Bad year (1 in 10)"),
                        Table.Column.number("Worst")),
                rows));
        long never = Arrays.stream(prospect.firstCuts())
                .filter(day -> day == Prospect.NONE)
                .count();
        if (never > 0) {
            sentence("In " + Say.whole(never) + " of "
                    + Say.count(prospect.firstCuts().length, "possible season", "possible seasons")
                    + " it does not come into cut before the season's end.");
        }
    }

    private static void threat(
            List<List<String>> rows, Prospect prospect, String what, ToDoubleFunction<Prospect.Surviving> left) {
        List<Prospect.Surviving> seasons = prospect.seasons();
        Spread lost = Spread.of(seasons.size(), k -> Math.round(PARTS * (1 - left.applyAsDouble(seasons.get(k)))));
        long worst = 0;
        for (Prospect.Surviving one : seasons) {
            worst = Math.max(worst, Math.round(PARTS * (1 - left.applyAsDouble(one))));
        }
        if (worst > 0) {
            rows.add(List.of(
                    what,
                    Say.percent(lost.middle() / PARTS),
                    Say.percent(lost.high() / PARTS),
                    Say.percent(worst / PARTS)));
        }
    }

    private void presses() {
        heading("What it presses on");
        if (reasons.presses().isEmpty()) {
            sentence("Nothing: wherever it takes room or hours, one more lot like it would have some too.");
            return;
        }
        for (Pressed pressed : reasons.presses()) {
            Set<Integer> weeks = new HashSet<>(pressed.weeks());
            List<String> runs = Run.of(season.weeks(), w -> weeks.contains(w) ? 1 : 0).stream()
                    .map(say::weeks)
                    .toList();
            sentence(where(pressed) + ": no room for one more lot like it, " + String.join("; ", runs) + ".");
        }
    }

    private static String where(Pressed pressed) {
        return switch (pressed.rule()) {
            case BED_ROOM -> "Bed " + pressed.where();
            case HOURS -> "All hours of the week";
            case CUTTING_HOURS -> "Hours fit for cutting";
            case EXTRA_STOCK -> "More of \"" + pressed.where() + "\" is bought";
            default -> "\"" + pressed.where() + "\"";
        };
    }

    private void instead() {
        heading("Instead: each really tried on the whole plan");
        if (reasons.isFixed()) {
            sentence("It stands already, so it can't be put elsewhere.");
            return;
        }
        int held = season.held().stream()
                .filter(one -> one.isAt(reasons.planting(), season))
                .mapToInt(Held::lots)
                .sum();
        if (held > 0) {
            sentence((held < reasons.planting().lots() ? held + " of its lots are" : "It is")
                    + " held in place by the season file, under \"held\"; a search would leave it there, whatever else is"
                    + " better.");
        }
        List<List<String>> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (Alternative alternative : reasons.alternatives()) {
            Tried tried = alternative.tried();
            String what = what(alternative);
            if (tried != null) {
                rows.add(words.row(what, tried));
                notes.addAll(words.stops(capital(what), tried));
                if (!tried.isStopped() && isBetter(tried)) {
                    notes.add(capital(what) + " would be better than the plan. A longer search, with --from this plan,"
                            + " may find more such changes.");
                }
            } else if (alternative.barred() != null && alternative.spot() != null) {
                notes.add(capital(what) + " is not offered: " + words.barred(alternative.barred(), alternative.spot())
                        + ".");
            } else {
                notes.add(capital(what) + ": the season offers none.");
            }
            if (alternative.offered() > 1) {
                notes.add(capital(what) + " is the best of " + Say.whole(alternative.offered())
                        + " that were tried, of which " + Say.whole(alternative.fitting()) + " keep every hard rule.");
            }
        }
        table(new Table("instead", "Instead", TriedWords.columns("What"), rows));
        sentence(words.key());
        notes.forEach(this::sentence);
    }

    private static boolean isBetter(Tried tried) {
        return tried.gain().medium() > 0
                || (tried.gain().medium() == 0 && tried.gain().soft() > 0)
                || tried.gain().hard() > 0;
    }

    private String what(Alternative alternative) {
        Spot spot = alternative.spot();
        return switch (alternative.sort()) {
            case WEEK_EARLIER -> "a week earlier";
            case WEEK_LATER -> "a week later";
            case OTHER_BED ->
                spot == null
                        ? "another bed"
                        : "in bed " + season.allBeds().get(spot.bed()).name();
            case OTHER_METHOD ->
                spot == null ? "another method" : words.method(spot).name() + ", week of " + say.week(spot.sowWeek());
            case LEFT_OUT -> "left out";
        };
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
