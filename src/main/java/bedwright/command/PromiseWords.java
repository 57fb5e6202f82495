package bedwright.command;

import bedwright.log.Entry;
import bedwright.log.Understood;
import bedwright.log.Wish;
import bedwright.plan.Grains;
import bedwright.plan.Promises;
import bedwright.plan.PutInFront;
import bedwright.plan.ToFill;
import bedwright.season.KindTree;
import bedwright.season.Season;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What can be promised, in words and as JSON.
 *
 * @param areGiven whether it is judged over the seasons that the season file gives, since it can draw no others
 * @param now what the question is asked of
 */
record PromiseWords(Season season, Promises promises, boolean areGiven, PlanNow now) {
    /** In so many seasons of ten. */
    private static final int[] IN_TEN = {9, 8, 5};

    /** Whether an order can be filled. */
    void print(PrintWriter out, Wish wish, PutInFront.@Nullable Result planned) {
        Promises.Answer answer = answer(wish);
        out.println(Words.date(wish.on()) + ", in the week of "
                + Words.date(season.weekStart(season.weekOf(wish.on()))) + ": "
                + wish.lines().stream()
                        .map(line -> line.stems() + " " + Wish.spoken(line.kind()))
                        .collect(Collectors.joining(", ")));
        out.println(
                wish.lines().size() == 1
                        ? "It can be filled in " + years(answer.filled()) + ", after all that is promised already."
                        : "All of it at once can be filled in " + years(answer.filled())
                                + ", after all that is promised already.");
        out.println();
        out.printf(
                Locale.ROOT,
                "%-24s %7s  %-22s  %s%n",
                "",
                "wanted",
                "alone, filled in",
                "alone, could be in 9, 8 and 5 years of 10");
        for (int l = 0; l < wish.lines().size(); l++) {
            Promises.Alone alone = answer.lines().get(l);
            out.printf(
                    Locale.ROOT,
                    "%-24s %7d  %-22s  %s%n",
                    Wish.spoken(wish.lines().get(l).kind()),
                    wish.lines().get(l).stems(),
                    years(alone.filled()),
                    levels(alone.free(), ", "));
        }
        out.println();
        out.println(cost(wish, answer));
        if (planned != null) {
            out.println();
            out.println(plannedAgain(planned));
        }
        out.println();
        basis(out);
    }

    private String plannedAgain(PutInFront.Result planned) {
        double money = Grains.toMoney(season, planned.money());
        return "Planned again with it in front, it could be filled in "
                + years(planned.answer().filled()) + "; that changes "
                + Words.count(planned.changes(), "lot") + " of the plan and brings "
                + Words.exactMoney(season, Math.abs(money)) + (money < 0 ? " less" : " more")
                + " in the mean, what the order itself pays not counted.";
    }

    private String cost(Wish wish, Promises.Answer answer) {
        if (answer.filled() == 0) {
            return "What it would cost can't be said, since it is filled in none of these years.";
        }
        double others = Grains.toMoney(season, answer.takings());
        double hours = answer.work() / Grains.TICKS_AN_HOUR;
        double work = hours * season.labour().ownRate();
        int stems = wish.lines().stream().mapToInt(Wish.Line::stems).sum();
        return "Where it is filled, it takes " + Words.exactMoney(season, others)
                + " from others who would have bought these stems, and " + Words.number(hours)
                + " hours of cutting more (" + Words.exactMoney(season, work) + "): it pays from "
                + Words.exactMoney(season, least(others + work, stems))
                + " a stem on, making up and driving not counted.";
    }

    private static double least(double cost, int stems) {
        return Math.max(0, cost / stems);
    }

    /** What is free to promise. */
    void print(PrintWriter out, List<Integer> kinds) {
        KindTree tree = KindTree.of(season.roles());
        out.println("Stems that nobody was promised, in at least 9, 8 and 5 years of 10, by week");
        out.println();
        StringBuilder head = new StringBuilder("week of      ");
        kinds.forEach(kind -> head.append(String.format(Locale.ROOT, "  %-20s", Wish.spoken(tree.path(kind)))));
        out.println(head.toString().stripTrailing());
        int rows = 0;
        for (int w = 0; w < season.weeks(); w++) {
            List<int[]> free = new ArrayList<>();
            for (int kind : kinds) {
                free.add(promises.free(kind, w));
            }
            if (free.stream().allMatch(one -> Promises.most(one, share(IN_TEN[2])) == 0)) {
                continue;
            }
            StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%-13s", Words.date(season.weekStart(w))));
            free.forEach(one -> row.append(String.format(Locale.ROOT, "  %-20s", levels(one, " / "))));
            out.println(row.toString().stripTrailing());
            rows++;
        }
        if (rows == 0) {
            out.println("In no week is anything left in 5 years of 10.");
        }
        out.println();
        out.println("Each is free by itself: stems of a kind within another are part of the other's too.");
        basis(out);
    }

    private void basis(PrintWriter out) {
        out.println(
                areGiven
                        ? "Judged over the " + Words.count(promises.seasons(), "season")
                                + " that the season file gives, on which the plan was made too: rather hopeful."
                        : "Judged over " + promises.seasons()
                                + " possible seasons that the plan was not made on, in which nothing is sown again or"
                                + " moved.");
        if (now.on() != null) {
            int notes = now.log().inForce().size();
            out.println("As the season stands on " + Words.date(now.on()) + ", by "
                    + (notes == 0 ? "the plan, since nothing was noted." : Words.count(notes, "note") + "."));
        }
        for (Entry asked : now.undecided()) {
            out.println("Held as if promised: " + Understood.sentence(now.plan(), asked));
        }
    }

    Promises.Answer answer(Wish wish) {
        return promises.ask(season.weekOf(wish.on()), lines(wish));
    }

    List<Promises.Line> lines(Wish wish) {
        KindTree tree = KindTree.of(season.roles());
        return wish.lines().stream()
                .map(line -> new Promises.Line(tree.node(line.kind()), 100L * line.stems()))
                .toList();
    }

    /** What planting besides would fill the order more often. */
    void printWays(PrintWriter out, List<ToFill.Way> ways) {
        out.println();
        if (ways.isEmpty()) {
            out.println("No planting more that the plan has room for would fill it more often.");
            return;
        }
        out.println("Planted besides, each by itself, it would be filled in:");
        for (ToFill.Way way : ways) {
            out.printf(
                    Locale.ROOT,
                    "  %-18s %d plants of %s (%s), %s %s in bed %s, started in the week of %s%n",
                    years(way.filled()) + ":",
                    way.plants(),
                    way.crop().name(),
                    way.method().name(),
                    Words.number(season.units().length().of(way.millimetres() / 1000.0)),
                    season.units().length().symbol(),
                    way.bed().name(),
                    Words.date(season.weekStart(way.sowWeek())));
        }
    }

    private static double share(int inTen) {
        return inTen / 10.0;
    }

    private static String levels(int[] free, String between) {
        List<String> each = new ArrayList<>();
        for (int inTen : IN_TEN) {
            each.add(String.valueOf(Promises.most(free, share(inTen))));
        }
        return String.join(between, each);
    }

    /** A share as years of ten, rounded down: nobody should promise on the half of a year. */
    static String years(double share) {
        if (share == 1) {
            return "every year";
        }
        int years = (int) Math.floor(10 * share + 1e-9);
        return years == 0 ? (share == 0 ? "no year" : "less than 1 year of 10") : Words.count(years, "year") + " of 10";
    }

    /** An order's answer for programs. */
    Map<String, Object> json(Wish wish, PutInFront.@Nullable Result planned) {
        Promises.Answer answer = answer(wish);
        Map<String, Object> json = head();
        json.put("day", wish.on().toString());
        json.put("week", season.weekStart(season.weekOf(wish.on())).toString());
        json.put("filled", answer.filled());
        List<Object> lines = new ArrayList<>();
        for (int l = 0; l < wish.lines().size(); l++) {
            Map<String, Object> line = new LinkedHashMap<>();
            line.put("kind", wish.lines().get(l).kind());
            line.put("stems", wish.lines().get(l).stems());
            line.put("filledAlone", answer.lines().get(l).filled());
            line.put("free", levels(answer.lines().get(l).free()));
            lines.add(line);
        }
        json.put("lines", lines);
        if (answer.filled() > 0) {
            json.put("takesFromOthers", Grains.toMoney(season, answer.takings()));
            json.put("hours", answer.work() / Grains.TICKS_AN_HOUR);
        }
        if (planned != null) {
            json.put("filledPlannedAgain", planned.answer().filled());
            json.put("moneyPlannedAgain", Grains.toMoney(season, planned.money()));
        }
        return json;
    }

    /** What is free, for programs. */
    Map<String, Object> json(List<Integer> kinds) {
        KindTree tree = KindTree.of(season.roles());
        Map<String, Object> json = head();
        List<Object> weeks = new ArrayList<>();
        for (int w = 0; w < season.weeks(); w++) {
            Map<String, Object> week = new LinkedHashMap<>();
            week.put("week", season.weekStart(w).toString());
            Map<String, Object> free = new LinkedHashMap<>();
            for (int kind : kinds) {
                free.put(tree.path(kind), levels(promises.free(kind, w)));
            }
            week.put("free", free);
            weeks.add(week);
        }
        json.put("weeks", weeks);
        return json;
    }

    private Map<String, Object> head() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("version", 1);
        json.put("seasons", promises.seasons());
        if (now.on() != null) {
            json.put("on", now.on().toString());
            json.put("notes", now.log().inForce().size());
        }
        return json;
    }

    private static Map<String, Object> levels(int[] free) {
        Map<String, Object> levels = new LinkedHashMap<>();
        for (int inTen : IN_TEN) {
            levels.put(inTen + " years of 10", Promises.most(free, share(inTen)));
        }
        return levels;
    }
}
