package bedwright.command;

import bedwright.climate.PossibleSeasons;
import bedwright.growth.Eaten;
import bedwright.growth.Prospect;
import bedwright.growth.Prospects;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * The round to walk after an attack of insects, slugs or other pests.
 *
 * @param pests their numbers in the season
 * @param stops the most threatened first
 */
record EatenRound(Season season, LocalDate on, List<Integer> pests, List<Stop> stops) {
    /** Less than this eaten in a week is not worth a walk. */
    private static final double WORTH_A_WALK = 0.01;

    private static final List<String> SAFETY = List.of(
            "First: be sure what it is before anything is done. Sprays, baits and treated seed only as the label and local"
                    + " rules say and by people licensed for it; mind the days to wait before cutting, bees, and pets.",
            "Gloves for picking off; some hairs and beetles blister skin. Wash hands before you eat.");

    /**
     * One planting.
     *
     * @param plants share of its seed or seedlings that a usual week of that time takes
     * @param blooms share of its blooms
     */
    record Stop(KeptPlanting planting, double plants, double blooms, boolean isCovered, double toCome, boolean isCut) {
        double worst() {
            return Math.max(plants, blooms);
        }
    }

    /** All plantings that the pests may eat of in the week up to a day of a season as usual. */
    static EatenRound of(Season season, List<KeptPlanting> plantings, List<Integer> pests, LocalDate on) {
        Prospects prospects = Prospects.of(season, List.of(PossibleSeasons.usualWith(season, List.of())));
        int day = season.dayOf(on);
        int week = Math.floorDiv(day, 7);
        List<Stop> stops = new ArrayList<>();
        for (KeptPlanting planting : plantings) {
            Integer entry = planting.standing();
            if (entry != null && season.standing().get(entry - 1).isWritten()) {
                continue;
            }
            Prospect prospect = prospects.expect(planting);
            if (prospect.groundDay() > day || week >= prospect.heldTo()) {
                continue;
            }
            double plants = 1;
            double blooms = 1;
            boolean isCovered = false;
            for (int pest : pests) {
                Eaten eaten = prospects.eaten(planting, pest, day);
                plants *= 1 - eaten.plants();
                blooms *= 1 - eaten.blooms();
                isCovered |= eaten.isCovered();
            }
            double[] weeks = StormRound.stems(prospect, planting.lots(), season.weeks());
            double toCome = 0;
            for (int w = week; w < weeks.length; w++) {
                toCome += weeks[w];
            }
            stops.add(new Stop(planting, 1 - plants, 1 - blooms, isCovered, toCome, weeks[week] > 0));
        }
        stops.sort(Comparator.comparingDouble(Stop::worst).reversed());
        return new EatenRound(season, on, pests, List.copyOf(stops));
    }

    List<Damaged> damaged() {
        return threatened().stream()
                .map(stop -> new Damaged(stop.planting(), stop.plants(), 0, false, stop.toCome(), stop.isCut()))
                .toList();
    }

    private List<Stop> threatened() {
        return stops.stream()
                .filter(stop -> stop.worst() >= WORTH_A_WALK && stop.toCome() >= 1)
                .toList();
    }

    void print(PrintWriter out) {
        SAFETY.forEach(out::println);
        out.println();
        List<Stop> threatened = threatened();
        String names = String.join(
                ", ",
                pests.stream().map(pest -> season.pests().get(pest).name()).toList());
        if (threatened.isEmpty()) {
            out.println(
                    Words.date(on) + ": by the season file, " + names + " hardly take anything of what stands now.");
            return;
        }
        out.println(Words.date(on) + ", " + names
                + ": where to look, the most threatened first, with what a usual week of this time takes:");
        out.println();
        out.printf(
                Locale.ROOT,
                "%4s  %-44s %-12s %9s %7s %8s %s%n",
                "",
                "",
                "bed",
                "seedlings",
                "blooms",
                "covered",
                "stems to come");
        for (Stop stop : threatened) {
            KeptPlanting planting = stop.planting();
            out.printf(
                    Locale.ROOT,
                    "%4d  %-44s %-12s %9s %7s %8s %d%n",
                    planting.number(),
                    planting.crop() + " (" + planting.method() + ")",
                    planting.bed(),
                    share(stop.plants()),
                    share(stop.blooms()),
                    stop.isCovered() ? "yes" : "–",
                    Math.round(stop.toCome()));
        }
    }

    private static String share(double share) {
        return share < WORTH_A_WALK / 2 ? "–" : Words.percent(share);
    }

    /**
     * What to do first.
     *
     * @param gone numbers of those of which nothing is left
     */
    void first(PrintWriter out, Collection<Integer> gone) {
        List<String> cut = new ArrayList<>();
        List<String> cover = new ArrayList<>();
        for (Stop stop : threatened()) {
            String name = stop.planting().number() + " " + stop.planting().crop() + ", bed "
                    + stop.planting().bed();
            if (stop.isCut() && stop.blooms() >= WORTH_A_WALK) {
                cut.add(name);
            }
            boolean isLeft = !gone.contains(stop.planting().number());
            if (isLeft
                    && !stop.isCovered()
                    && stop.plants() >= WORTH_A_WALK
                    && season.stock().cover() != null) {
                cover.add(name);
            }
        }
        if (!cut.isEmpty()) {
            out.println("Cut today all that is ready, blooms left longer are eaten: " + String.join("; ", cut) + ".");
        }
        if (!cover.isEmpty()) {
            out.println("Row cover would keep most of it off what is still small: " + String.join("; ", cover) + ".");
        }
    }
}
