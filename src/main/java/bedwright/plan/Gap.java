package bedwright.plan;

import bedwright.climate.PossibleSeason;
import bedwright.growth.Prospect;
import bedwright.growth.Prospects;
import bedwright.growth.Spot;
import bedwright.season.Crop;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What can still be started in a week for a stretch of a bed, beside all that a plan has: every crop of the pool by every
 * method, each really tried against the plan's score, so that what it brings is what the plan would bring more with it.
 */
public final class Gap {
    static final List<Rule> HARD =
            List.of(Rule.BED_ROOM, Rule.HOURS, Rule.CUTTING_HOURS, Rule.BENCH_ROOM, Rule.STOCK_ROOM);

    private Gap() {}

    /**
     * One way to fill it.
     *
     * @param crop crop
     * @param method method
     * @param money what the plan would bring more in a season, caution included, in grains
     * @param breaks hard rules that it would break, or break further; empty if it can be done
     * @param prospect what such a planting would give and take
     */
    public record Way(Crop crop, Method method, double money, Set<Rule> breaks, Prospect prospect) {
        public Way {
            breaks = Set.copyOf(breaks);
        }
    }

    static final int MM = 1000;
    /** A smaller part of a stretch than this is not worth beginning for. */
    private static final double LEAST_PART = 0.25;

    private record Try(int crop, int method, Prospect prospect) {}

    /**
     * All ways, the best first: those that break nothing, by what they bring; then the others. A way for which the plan leaves
     * only a part of the stretch, but at least a quarter, takes that part.
     *
     * @param plan the plan in force
     * @param seasons to judge over
     * @param bed number of the bed
     * @param millimetres length of the stretch
     * @param week week in which it is sown, set or started in trays
     */
    public static List<Way> ways(Plan plan, List<PossibleSeason> seasons, int bed, int millimetres, int week) {
        Season season = plan.season();
        List<Try> tries = tries(plan, seasons, bed, millimetres, week);
        List<Lots> pool = new ArrayList<>(season.pool());
        List<Spot> spots = new ArrayList<>();
        for (Try one : tries) {
            spots.add(new Spot(pool.size(), bed, week, one.method()));
            pool.add(new Lots(
                    season.crops().get(one.crop()).name(), one.prospect().plants(), 1));
        }
        PlanFacts facts = PlanFacts.ofPlan(season.withPool(pool), seasons, plan.plantings(), spots);
        SeasonScore score = new SeasonScore(facts);
        int[] places = Outcomes.places(facts, plan.plantings());
        for (int p = 0; p < places.length; p++) {
            score.settle(p, places[p]);
        }
        List<Way> ways = new ArrayList<>();
        for (int t = 0; t < tries.size(); t++) {
            Spot spot = spots.get(t);
            int place = facts.table().find(spot.stock(), bed, week, spot.method());
            if (place >= 0) {
                ways.add(tried(facts, score, tries.get(t), place));
            }
        }
        ways.sort(Comparator.comparing((Way way) -> !way.breaks().isEmpty())
                .thenComparing(Comparator.comparingDouble(Way::money).reversed()));
        return ways;
    }

    /** Every crop of the pool by every method that gives a stem, with as many plants as the stretch has room for. */
    private static List<Try> tries(Plan plan, List<PossibleSeason> seasons, int bed, int millimetres, int week) {
        Season season = plan.season();
        PlanFacts facts = PlanFacts.ofPlan(season, seasons, plan.plantings());
        int[] use = Outcomes.of(facts, Outcomes.places(facts, plan.plantings())).bedUse()[bed];
        long length = facts.shelves.get(bed).holds();
        Prospects prospects = Prospects.of(season, seasons);
        List<Try> tries = new ArrayList<>();
        for (int c = 0; c < season.crops().size(); c++) {
            Crop crop = season.crops().get(c);
            if (season.pool().stream().noneMatch(lots -> lots.crop().equals(crop.name()))) {
                continue;
            }
            for (int m = 0; m < crop.methods().size(); m++) {
                Method method = crop.methods().get(m);
                int plants = plants(method, millimetres);
                if (plants == 0) {
                    continue;
                }
                Prospect whole = prospects.expect(c, m, plants, bed, week);
                if (givesNothing(whole)) {
                    continue;
                }
                int fitting = plants(method, Math.min(millimetres, free(season, use, length, whole)));
                boolean isCut = fitting < plants && fitting >= LEAST_PART * plants;
                tries.add(new Try(c, m, isCut ? prospects.expect(c, m, fitting, bed, week) : whole));
            }
        }
        return tries;
    }

    /** What is free of the bed in all weeks of a planting, mm. */
    static long free(Season season, int[] use, long length, Prospect prospect) {
        long free = length;
        int to = Math.min(prospect.heldTo(), season.weeks());
        for (int w = Math.max(0, Math.floorDiv(prospect.groundDay(), 7)); w < to; w++) {
            free = Math.min(free, length - use[w]);
        }
        return free;
    }

    static int plants(Method method, long millimetres) {
        return (int) Math.max(0, Math.floor(millimetres * (double) method.rows() / (MM * method.spacing()) + 1e-9));
    }

    private static Way tried(PlanFacts facts, SeasonScore score, Try one, int place) {
        int planting = facts.firstPlanting(facts.table().stock(place));
        score.put(planting, place);
        Set<Rule> breaks = broken(score.ask());
        double money = ((double) score.softAfter() - score.soft()) / facts.seasonCount;
        score.forget();
        Crop crop = facts.season().crops().get(one.crop());
        return new Way(crop, crop.methods().get(one.method()), money, breaks, one.prospect());
    }

    /** Hard rules that changes break, or break further. */
    static Set<Rule> broken(Answer answer) {
        Set<Rule> broken = EnumSet.noneOf(Rule.class);
        for (Rule rule : HARD) {
            if (answer.cost(rule) > 0) {
                broken.add(rule);
            }
        }
        return broken;
    }

    private static boolean givesNothing(Prospect prospect) {
        for (int[][] kind : prospect.stems()) {
            for (int[] week : kind) {
                for (int stems : week) {
                    if (stems > 0) {
                        return false;
                    }
                }
            }
        }
        return true;
    }
}
