package bedwright.sheet;

import bedwright.plan.DemandLine;
import bedwright.plan.Outcome;
import bedwright.season.Harvest;
import bedwright.season.KindTree;
import bedwright.season.Labour;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What is cut in a week and who gets it. */
final class WeekStems {
    /** So many mornings have a column of their own; more would not fit. */
    private static final int MOST_MORNINGS = 7;

    private final WeekFacts facts;
    private final Season season;
    private final Outcome outcome;
    private final Say say;
    private final KindTree kinds;
    private final Cautions cautions;

    WeekStems(WeekFacts facts) {
        this.facts = facts;
        this.season = facts.season();
        this.outcome = facts.facts().outcome();
        this.say = new Say(season);
        this.kinds = KindTree.of(season.roles());
        this.cautions = new Cautions(season);
    }

    /** Cutting mornings of a week; 1 where nothing is said of them. */
    int mornings(int week) {
        LocalDate first = season.weekStart(week);
        double mornings = 1;
        for (Labour.CuttingHours hours : season.labour().cutting()) {
            boolean begun = hours.from() == null || !first.isBefore(hours.from());
            boolean over = hours.to() != null && first.isAfter(hours.to());
            if (begun && !over) {
                mornings = hours.mornings();
            }
        }
        return Math.clamp((int) Math.ceil(mornings), 1, MOST_MORNINGS);
    }

    /**
     * What to cut, a line a crop, with its plantings and room to write what was cut.
     *
     * @param seen takes in the cautions that stand on the lines
     */
    Table cutting(int week, Set<Cautions.Mark> seen) {
        int mornings = mornings(week);
        List<Table.Column> columns = new ArrayList<>();
        columns.add(Table.Column.text("Cut"));
        columns.add(Table.Column.number("Stems"));
        columns.add(Table.Column.number("Bad to good"));
        columns.add(Table.Column.text(mornings > 1 ? "1st to " + ordinal(mornings) + " morning" : ""));
        columns.add(Table.Column.text("Ready when, where to cut; each planting: stems, room to write"));
        Map<List<String>, List<Shown>> together = new TreeMap<>(
                Comparator.comparing((List<String> key) -> key.getFirst()).thenComparing(List::getLast));
        for (Shown planting : facts.plantings()) {
            if (shownStems(planting, week) > 0) {
                together.computeIfAbsent(List.of(planting.name(), how(planting)), k -> new ArrayList<>())
                        .add(planting);
            }
        }
        List<List<String>> rows = new ArrayList<>();
        together.forEach((key, same) -> {
            List<String> row = new ArrayList<>();
            row.add(key.getFirst());
            row.add(Say.whole(same.stream().mapToLong(p -> shownStems(p, week)).sum()));
            Spread spread = Spread.of(
                    outcome.seasons(),
                    k -> same.stream().mapToLong(p -> p.stemsIn(week)[k]).sum());
            row.add(Say.range(Say.stems(spread.low()), Say.stems(spread.high())));
            row.add(
                    mornings > 1
                            ? Arrays.stream(byMorning(same, week, mornings))
                                    .mapToObj(Say::whole)
                                    .collect(Collectors.joining("\u00a0· "))
                            : "");
            row.add((key.getLast() + " ").stripLeading()
                    + String.join(
                            "; ",
                            same.stream()
                                    .map(planting -> planting.number() + "\u00a0"
                                            + planting.kept().bed() + ": "
                                            + Say.whole(shownStems(planting, week)) + "\u00a0_____")
                                    .toList()));
            seen.addAll(cautions.cutting(same.getFirst()));
            rows.add(row);
        });
        return new Table("cutting-" + week, "What to cut, and on which morning", columns, rows);
    }

    private long[] byMorning(List<Shown> plantings, int week, int mornings) {
        long[] stems = new long[mornings];
        for (Shown planting : plantings) {
            double[] shares = facts.course(planting).spread(week, mornings);
            long all = shownStems(planting, week);
            double behind = 0;
            long given = 0;
            for (int i = 0; i < mornings; i++) {
                behind += shares[i];
                long by = i == mornings - 1 ? all : Math.min(all, Math.round(all * behind));
                stems[i] += by - given;
                given = by;
            }
        }
        return stems;
    }

    private static long shownStems(Shown planting, int week) {
        return Math.round(planting.meanByWeek()[week] / 100);
    }

    private static String ordinal(int number) {
        return switch (number) {
            case 1 -> "1st";
            case 2 -> "2nd";
            case 3 -> "3rd";
            default -> number + "th";
        };
    }

    private String how(Shown planting) {
        Harvest harvest = planting.crop().harvest();
        String stage = harvest == null ? "" : harvest.stage();
        String where = JobWords.isCutWhole(planting.method()) ? "whole stem" : "";
        String said = stage.isEmpty() || where.isEmpty() ? stage + where : stage + "; " + where;
        return (said.isEmpty() ? "" : said + ".")
                + Cautions.words(cautions.cutting(planting).stream()
                        .map(Cautions.Mark::word)
                        .toList());
    }

    /** Those who go short of what they ask for this week, of what was promised in a bad year too; promised ones first. */
    Table orders(int week) {
        List<List<String>> rows = new ArrayList<>();
        outcome.demand().stream()
                .filter(line -> line.asked()[week] > 0 && isServed(line, week) && isShort(line, week))
                .sorted(Comparator.comparingInt(line -> line.promise() == DemandLine.Promised.NOTHING ? 1 : 0))
                .forEach(line -> rows.add(order(line, week)));
        return new Table(
                "orders-" + week,
                "Who asks, and what they get",
                List.of(
                        Table.Column.text("For"),
                        Table.Column.text("Kind"),
                        Table.Column.number("Asked"),
                        Table.Column.number("Usual year"),
                        Table.Column.number("Bad year"),
                        Table.Column.text("Short")),
                rows);
    }

    /** Whether somebody gets something in a usual year, or was promised it. */
    private boolean isServed(DemandLine line, int week) {
        return line.promise() != DemandLine.Promised.NOTHING
                || Spread.of(outcome.served()[line.index()][week]).middle() >= RoleWeeks.NOTICED;
    }

    /** Whether somebody gets everything, in a bad year too. */
    private boolean isFull(DemandLine line, int week) {
        return line.asked()[week]
                        - Spread.of(outcome.served()[line.index()][week]).low()
                < RoleWeeks.NOTICED;
    }

    /** Whether somebody goes short in a usual year, or in a bad one of what was promised. */
    private boolean isShort(DemandLine line, int week) {
        boolean isPromised = line.promise() != DemandLine.Promised.NOTHING;
        return !isFull(line, week)
                && (isPromised
                        || line.asked()[week]
                                        - Spread.of(outcome.served()[line.index()][week])
                                                .middle()
                                >= RoleWeeks.NOTICED);
    }

    /** Who gets all, who less in a bad year, and who nothing; empty where everybody has a line of their own. */
    String otherOrders(int week) {
        List<DemandLine> asking =
                outcome.demand().stream().filter(line -> line.asked()[week] > 0).toList();
        String full = names(asking, week, false, line -> isServed(line, week) && isFull(line, week));
        String less =
                names(asking, week, true, line -> isServed(line, week) && !isFull(line, week) && !isShort(line, week));
        String none = names(asking, week, false, line -> !isServed(line, week));
        return (full.isEmpty() ? "" : "All that they ask for, in a bad year too: " + full + ". ")
                + (less.isEmpty() ? "" : "All in a usual year / less in a bad one: " + less + ". ")
                + (none.isEmpty() ? "" : "Nothing in a usual year: " + none + ".");
    }

    private String names(List<DemandLine> asking, int week, boolean isBadToo, Predicate<DemandLine> which) {
        // "Market, spike" and "Market, filler" are "Market: spike, filler".
        Map<String, List<String>> together = new LinkedHashMap<>();
        asking.stream()
                .filter(which)
                .forEach(line -> together.computeIfAbsent(whose(line), n -> new ArrayList<>())
                        .add(what(line)
                                + Say.stems(line.asked()[week])
                                + (isBadToo
                                        ? "/"
                                                + Say.stems(Spread.of(outcome.served()[line.index()][week])
                                                        .low())
                                        : "")
                                + (line.order() < 0
                                        ? ""
                                        : " " + kinds.path(line.node()).replace("/", ", "))));
        return together.entrySet().stream()
                .map(entry -> entry.getKey() + ": " + String.join(", ", entry.getValue()))
                .collect(Collectors.joining("; "));
    }

    private static String whose(DemandLine line) {
        int comma = line.order() < 0 ? line.name().indexOf(", ") : -1;
        return comma < 0 ? line.name() : line.name().substring(0, comma);
    }

    private static String what(DemandLine line) {
        String whose = whose(line);
        return whose.equals(line.name()) ? "" : line.name().substring(whose.length() + 2) + " ";
    }

    private List<String> order(DemandLine line, int week) {
        Spread got = Spread.of(outcome.served()[line.index()][week]);
        long lack = line.asked()[week] - got.middle();
        boolean promised = line.promise() != DemandLine.Promised.NOTHING;
        String shortBy = lack >= RoleWeeks.NOTICED ? Say.stems(lack) + (promised ? " SHORT" : "") : "";
        return List.of(
                line.name() + (promised ? " (promised)" : ""),
                kinds.path(line.node()).replace("/", ", "),
                Say.stems(line.asked()[week]),
                Say.stems(got.middle()),
                Say.stems(got.low()),
                shortBy);
    }

    /** Stems that come by kind against what is asked of it, down to the kinds below the roles that somebody asks for. */
    Table kinds(int week) {
        List<List<String>> rows = new ArrayList<>();
        for (int node = 0; node < kinds.size(); node++) {
            int parent = kinds.parent(node);
            boolean shallow = parent < 0 || kinds.parent(parent) < 0;
            Spread come = Spread.of(outcome.stems()[node][week]);
            long asked = asked(node, week);
            if (!shallow || (asked == 0 && (parent >= 0 || come.high() < RoleWeeks.NOTICED))) {
                continue;
            }
            String left = "";
            if (parent < 0) {
                Spread over = Spread.of(outcome.leftOver()[kinds.role(node)][week]);
                left = over.high() < RoleWeeks.NOTICED
                        ? "none"
                        : Say.stems(over.middle()) + " (" + Say.range(Say.stems(over.low()), Say.stems(over.high()))
                                + ")";
            }
            rows.add(List.of(
                    kinds.path(node).replace("/", ", "),
                    Say.stems(come.middle()),
                    Say.range(Say.stems(come.low()), Say.stems(come.high())),
                    Say.stems(asked),
                    left));
        }
        return new Table(
                "kinds-" + week,
                "Stems by kind, and what can be offered",
                List.of(
                        Table.Column.text("Kind"),
                        Table.Column.number("Usual year"),
                        Table.Column.number("Bad to good"),
                        Table.Column.number("Asked"),
                        Table.Column.text("Can be offered to shops")),
                rows);
    }

    /** What is asked for of a kind and of kinds within it. */
    private long asked(int node, int week) {
        long asked = 0;
        for (DemandLine line : outcome.demand()) {
            for (int at = line.node(); at >= 0; at = kinds.parent(at)) {
                asked += at == node ? line.asked()[week] : 0;
            }
        }
        return asked;
    }

    /** Bouquets of the week, and events of it and of the two weeks after. */
    List<String> bouquets(int week) {
        List<String> lines = new ArrayList<>();
        for (Bouquets each : Bouquets.of(season, outcome)) {
            boolean now = each.week() == week;
            if (!now && !(each.event() && each.week() > week && each.week() <= week + 2)) {
                continue;
            }
            String when = now ? "" : ", in the week of " + say.week(each.week());
            lines.add((each.event() ? "EVENT " : "") + each.order() + when + ": "
                    + Say.count(each.ordered(), "bouquet", "bouquets") + " ordered, whole in a usual year "
                    + Say.whole(each.whole().middle()) + ", in a bad one "
                    + Say.whole(each.whole().low()) + ".");
        }
        return lines;
    }
}
