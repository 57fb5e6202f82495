package bedwright.command;

import bedwright.climate.PossibleSeasons;
import bedwright.growth.Prospect;
import bedwright.plan.DemandLine;
import bedwright.plan.Gap;
import bedwright.plan.Grains;
import bedwright.plan.InForce;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.season.Bed;
import bedwright.season.KeptPlanting;
import bedwright.season.KindTree;
import bedwright.season.Rounding;
import bedwright.season.Season;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One page after damage was noted: what to do today, whose order is short and by when to call, what buying in costs, and
 * what is still worth sowing where all is lost.
 *
 * @param before the plan by the notes without those of the damage
 * @param after the plan by the notes with them
 * @param typed the plan as it was named
 * @param on the day
 * @param notice days before the week of an order by which its customer wants to know
 */
record AfterDamage(PlanNow before, PlanNow after, String typed, LocalDate on, int notice) {
    private static final int MOST_ORDERS = 15;
    private static final int MOST_BEDS = 4;
    private static final int MOST_WAYS = 2;
    private static final int MM = 1000;

    /** What is short of one kind for one order in one week: stems in the mean, before and after; grains that it costs. */
    private record Short(DemandLine line, int week, double before, double after, double cost) {}

    /** @param gone plantings of which nothing is left */
    void print(PrintWriter out, Collection<Integer> gone) {
        orders(out, after.plan().season(), outcome(before), outcome(after));
        out.println();
        sowing(out, gone);
        out.println();
        out.println("All that is left of the season planned anew, with what each change buys: " + Called.name()
                + " replan " + typed + " --on " + on);
    }

    private static Outcome outcome(PlanNow now) {
        Season season = now.plan().season();
        PlanFacts facts = InForce.facts(season, PossibleSeasons.of(season), false);
        return Outcomes.of(facts, InForce.places(facts));
    }

    private void orders(PrintWriter out, Season season, Outcome was, Outcome now) {
        List<Short> all = new ArrayList<>();
        for (int week = season.firstWeek(); week < season.weeks(); week++) {
            for (DemandLine line : now.demand()) {
                if (line.promise() != DemandLine.Promised.NOTHING && line.asked()[week] > 0) {
                    double first = missing(was, line, week);
                    double then = missing(now, line, week);
                    if (then - first >= 0.5) {
                        all.add(new Short(line, week, first, then, line.lack() * 100 * (then - first)));
                    }
                }
            }
        }
        if (all.isEmpty()) {
            out.println("No order is shorter for it than it was.");
            return;
        }
        out.println("Orders that are short for it, in the mean of the possible seasons, nearest first:");
        KindTree kinds = KindTree.of(season.roles());
        all.stream().limit(MOST_ORDERS).forEach(one -> out.println("- " + told(season, kinds, one)));
        if (all.size() > MOST_ORDERS) {
            out.println("… and " + (all.size() - MOST_ORDERS) + " later: " + Called.name() + " sofar " + typed
                    + " --on " + on + " has the coming weeks.");
        }
        double bought = cost(all, DemandLine.Promised.BOUGHT_IN);
        double other = cost(all, DemandLine.Promised.SHORTAGE_PRICE);
        if (bought > 0) {
            out.println("Buying in what is short for it: " + money(season, bought) + " by the season file's prices.");
        }
        if (other > 0) {
            out.println("What has no buying-in price there costs " + money(season, other) + " if it stays short.");
        }
    }

    private static double cost(List<Short> all, DemandLine.Promised promise) {
        return all.stream()
                .filter(one -> one.line().promise() == promise)
                .mapToDouble(Short::cost)
                .sum();
    }

    private static String money(Season season, double grains) {
        return Words.exactMoney(season, Grains.toMoney(season, grains));
    }

    private String told(Season season, KindTree kinds, Short one) {
        LocalDate week = season.weekStart(one.week());
        LocalDate call = week.minusDays(notice);
        DemandLine line = one.line();
        String cost = switch (line.promise()) {
            case BOUGHT_IN -> "; buying them in: " + money(season, one.cost());
            case SHORTAGE_PRICE -> "; short they cost " + money(season, one.cost());
            case MUST_BE_OURS -> "; they must be ours";
            case NOTHING -> "";
        };
        return "week of " + Words.date(week) + ", " + line.name() + ", "
                + kinds.path(line.node()) + ": " + Words.count((int) Math.round(one.after() - one.before()), "stem")
                + " of " + line.asked()[one.week()] / 100
                + (one.before() >= 0.5 ? " more short, on top of " + Math.round(one.before()) : " short")
                + ". Call " + (call.isAfter(on) ? "by " + Words.date(call) : "today") + cost + ".";
    }

    private static double missing(Outcome outcome, DemandLine line, int week) {
        int[] served = outcome.served()[line.index()][week];
        return line.asked()[week] / 100.0 - Arrays.stream(served).average().orElse(0) / 100;
    }

    /** What can be begun now where plantings are gone, by bed. */
    private void sowing(PrintWriter out, Collection<Integer> gone) {
        Map<String, Double> free = new TreeMap<>();
        Season season = after.plan().season();
        int week = after.firstOpenWeek();
        for (KeptPlanting planting : before.plan().plantings()) {
            if (gone.contains(planting.number()) && week < season.weeks()) {
                free.merge(planting.bed(), metres(before.plan().season(), planting), Double::sum);
            }
        }
        if (free.isEmpty()) {
            out.println("Nothing is gone altogether, so no bed is free for something else by itself.");
            return;
        }
        out.println("What sown or set now, in the week of " + Words.date(season.weekStart(week)) + ", still comes in:");
        Map<String, Double> beds = new LinkedHashMap<>();
        free.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .limit(MOST_BEDS)
                .forEach(one -> beds.put(one.getKey(), one.getValue()));
        List<String> names = season.allBeds().stream().map(Bed::name).toList();
        beds.forEach((bed, metres) -> {
            List<Gap.Way> ways = Gap.ways(
                            after.plan(),
                            PossibleSeasons.of(season),
                            names.indexOf(bed),
                            (int) Rounding.halfUp(metres * MM),
                            week)
                    .stream()
                    .filter(way -> way.breaks().isEmpty() && way.money() > 0)
                    .limit(MOST_WAYS)
                    .toList();
            out.println("- bed " + bed + ", " + Words.length(season, metres) + ": "
                    + (ways.isEmpty()
                            ? "nothing that would bring more than it costs"
                            : String.join("; ", told(season, ways)))
                    + ".");
        });
        if (free.size() > MOST_BEDS) {
            out.println("… and " + Words.count(free.size() - MOST_BEDS, "bed") + " more.");
        }
        out.println("More for a bed: " + Called.name() + " still " + typed + " --bed B --metres N --on " + on);
    }

    private static double metres(Season season, KeptPlanting planting) {
        return season.crops().stream()
                .filter(crop -> crop.name().equals(planting.crop()))
                .flatMap(crop -> crop.methods().stream())
                .filter(method -> method.name().equals(planting.method()))
                .mapToDouble(method -> method.metres(planting.plants()))
                .findFirst()
                .orElse(0);
    }

    private static List<String> told(Season season, List<Gap.Way> ways) {
        return ways.stream()
                .map(way -> {
                    Prospect prospect = way.prospect();
                    return way.crop().name() + " (" + way.method().name() + "), "
                            + Words.count(prospect.plants(), "plant") + ", first cut about "
                            + Words.day(season, prospect.firstCut()) + ", the season brings "
                            + Words.money(season, Grains.toMoney(season, way.money())) + " more";
                })
                .toList();
    }
}
