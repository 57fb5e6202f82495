package bedwright.command;

import bedwright.climate.Gust;
import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.growth.Blown;
import bedwright.growth.Prospect;
import bedwright.growth.Prospects;
import bedwright.season.Compass;
import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.Unit;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The round to walk after a storm.
 *
 * @param plan folder of the plan, as it was named
 * @param from side that it came from, degrees clockwise from north
 * @param speed strongest gust in the open, m/s
 * @param stops in walking order
 */
record StormRound(Season season, String plan, LocalDate on, double from, double speed, List<Stop> stops) {
    /** Less than this laid flat is not worth a walk. */
    private static final double WORTH_A_WALK = 0.02;
    /** From so much on it is cut or tied up first. */
    private static final double MUCH = 0.1;

    private static final List<String> SAFETY = List.of(
            "First: this is no weather warning. Wait until wind and lightning are over; nobody ties, nets or covers in"
                    + " them.",
            "Stay away from hanging limbs, leaning trees and torn tunnels: they are work for people licensed for it. Look"
                    + " out for fallen power lines and call who is responsible for them.",
            "Gloves and eye protection for stakes, wire and nets; lift wet nets and flattened plants by twos. Local rules"
                    + " come first.");

    /**
     * One planting that stood.
     *
     * @param blown what the gust was likely to do
     * @param toCome stems that were still to come of it without the storm in a usual season, this week's included
     * @param isCut whether it is in cut that week
     */
    record Stop(KeptPlanting planting, Blown blown, double toCome, boolean isCut) {}

    /**
     * All plantings above ground that day, the most exposed first: by the gust at their bed, then by what it was likely to
     * lay flat; so neighbours in one lee follow one another.
     *
     * @param stormy a season as usual but for the gust, and others that were noted
     * @param gust that blew, one of that season's
     */
    static List<Stop> of(Plan plan, PossibleSeason stormy, Gust gust) {
        Season season = plan.season();
        Prospects blowing = Prospects.of(season, List.of(stormy));
        Prospects prospects = Prospects.of(season, List.of(PossibleSeasons.usualWith(season, List.of())));
        int week = Math.floorDiv(gust.day(), 7);
        List<Stop> stops = new ArrayList<>();
        for (KeptPlanting planting : plan.plantings()) {
            Integer entry = planting.standing();
            if (entry != null && season.standing().get(entry - 1).isWritten()) {
                continue;
            }
            Prospect prospect = prospects.expect(planting);
            boolean stands = Math.floorDiv(prospect.groundDay(), 7) <= week && week < prospect.heldTo();
            Blown blown = blowing.blown(planting, gust);
            if (stands && blown.height() > 0) {
                double[] weeks = stems(prospect, planting.lots(), season.weeks());
                double toCome = Arrays.stream(weeks, week, weeks.length).sum();
                stops.add(new Stop(planting, blown, toCome, weeks[week] > 0));
            }
        }
        stops.sort(Comparator.comparingDouble((Stop stop) -> stop.blown().speed())
                .thenComparingDouble(stop -> stop.blown().flat())
                .reversed());
        return List.copyOf(stops);
    }

    /** The gust of a day. */
    static Gust gustOf(PossibleSeason stormy, int day) {
        return stormy.gusts().stream()
                .filter(gust -> gust.day() == day)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No gust blows on day " + day));
    }

    static double[] stems(Prospect prospect, int lots, int all) {
        double[] weeks = new double[all];
        for (int[][] kind : prospect.stems()) {
            for (int w = 0; w < weeks.length; w++) {
                weeks[w] += lots * kind[w][0] / 100.0;
            }
        }
        return weeks;
    }

    void print(PrintWriter out) {
        SAFETY.forEach(out::println);
        out.println();
        Unit wind = season.units().speed();
        Unit small = season.units().smallLength();
        List<Stop> exposed = exposed();
        out.println(
                Words.date(on) + ", gusts up to " + Words.number(wind.of(speed)) + " " + wind.symbol() + " from the "
                        + Compass.name(from) + ". "
                        + (exposed.isEmpty()
                                ? "Of all that stands hardly anything was likely laid flat."
                                : "Likely laid flat, the most exposed first:"));
        if (!exposed.isEmpty()) {
            out.println();
            out.printf(
                    Locale.ROOT,
                    "%4s  %-44s %-12s %7s %9s %10s  %s%n",
                    "",
                    "",
                    "bed",
                    "height",
                    "gust there",
                    "flat",
                    "stems to come");
            for (Stop stop : exposed) {
                KeptPlanting planting = stop.planting();
                out.printf(
                        Locale.ROOT,
                        "%4d  %-44s %-12s %7s %9s %10s  %d%n",
                        planting.number(),
                        planting.crop() + " (" + planting.method() + ")",
                        planting.bed(),
                        Words.number(small.of(stop.blown().height())) + " " + small.symbol(),
                        Words.number(wind.of(stop.blown().speed())) + " " + wind.symbol(),
                        Words.percent(stop.blown().flat()),
                        Math.round(stop.toCome()));
            }
        }
        int sheltered = stops.size() - exposed.size();
        if (sheltered > 0) {
            out.println();
            out.println(
                    Words.count(sheltered, "planting") + " more stood that day, of which less than 2 % were likely laid"
                            + " flat or nothing was to come any more.");
        }
    }

    /** What is worth a walk, as it is asked about. */
    List<Damaged> damaged() {
        return exposed().stream()
                .map(stop -> new Damaged(
                        stop.planting(),
                        stop.blown().lost(),
                        stop.blown().flat(),
                        stop.blown().standsUp() > 0,
                        stop.toCome(),
                        stop.isCut()))
                .toList();
    }

    private List<Stop> exposed() {
        return stops.stream()
                .filter(stop -> stop.blown().flat() >= WORTH_A_WALK && stop.toCome() >= 1)
                .toList();
    }

    /**
     * What to do first.
     *
     * @param damaged what was walked by
     * @param gone numbers of those of which nothing is left to tie
     * @param unharmed numbers of those of which nothing is lost
     */
    static void first(PrintWriter out, List<Damaged> damaged, Collection<Integer> gone, Collection<Integer> unharmed) {
        List<String> cut = new ArrayList<>();
        List<String> tie = new ArrayList<>();
        for (Damaged stop : damaged) {
            int number = stop.planting().number();
            if (stop.lies() >= MUCH && !unharmed.contains(number)) {
                String name = stop.named() + ", bed " + stop.planting().bed();
                if (stop.isCut()) {
                    cut.add(name);
                }
                if (stop.standsUp() && !gone.contains(number)) {
                    tie.add(name);
                }
            }
        }
        if (!cut.isEmpty()) {
            out.println("Cut today what is ready and lies, before stems bend upwards: " + String.join("; ", cut) + ".");
        }
        if (!tie.isEmpty()) {
            out.println("Tie up or net soon, since some of it stands up again: " + String.join("; ", tie) + ".");
        }
    }

    Map<String, Object> json() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("version", 1);
        json.put("day", on.toString());
        json.put("from", from);
        json.put("gust", season.units().speed().of(speed));
        json.put("safety", SAFETY);
        List<Object> all = new ArrayList<>();
        for (Stop stop : stops) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("planting", stop.planting().number());
            one.put("crop", stop.planting().crop());
            one.put("bed", stop.planting().bed());
            one.put("height", season.units().smallLength().of(stop.blown().height()));
            one.put("gustThere", season.units().speed().of(stop.blown().speed()));
            one.put("flat", stop.blown().flat());
            one.put("standsUpAgain", stop.blown().standsUp());
            one.put("stemsToCome", stop.toCome());
            one.put("inCut", stop.isCut());
            all.add(one);
        }
        json.put("plantings", all);
        return json;
    }
}
