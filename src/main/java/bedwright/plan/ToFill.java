package bedwright.plan;

import bedwright.climate.PossibleSeason;
import bedwright.growth.Prospect;
import bedwright.growth.Prospects;
import bedwright.growth.Spot;
import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.KindTree;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What to plant besides, so that an order can be filled more often: for each crop and method that gives what is short in the
 * wanted week, the sowing that gives most of it then, in the bed with most room for it. Each is really tried: judged over the
 * same seasons as the promise, and held against the hard rules.
 */
public final class ToFill {
    /** Seasons over which candidates are looked at before they are tried. */
    private static final int LOOKED_OVER = 16;
    /** Candidates that are tried. */
    private static final int TRIED = 8;
    /** A plant that gives less than this in the wanted week is not looked at, stems. */
    private static final double LEAST_A_PLANT = 0.05;

    /** A lot more than is short in the mean, since the order is to be filled in most years. */
    private static final double MARGIN = 1.5;

    private final Plan plan;
    private final Season season;
    private final List<PossibleSeason> seasons;
    private final int week;
    private final List<Promises.Line> order;

    private ToFill(Plan plan, List<PossibleSeason> seasons, int week, List<Promises.Line> order) {
        this.plan = plan;
        this.season = plan.season();
        this.seasons = seasons;
        this.week = week;
        this.order = order;
    }

    /**
     * A planting more.
     *
     * @param sowWeek week in which it is sown, set or started in trays
     * @param filled in how large a share of the seasons the whole order is filled with it
     */
    public record Way(Crop crop, Method method, Bed bed, int sowWeek, int plants, int millimetres, double filled) {}

    private record Candidate(int crop, int method, int bed, int sowWeek, int plants, double worth) {}

    /**
     * Ways that break no hard rule and fill the order more often than the plan does, the best first.
     *
     * @param plan the plan in force
     * @param seasons that promises are judged over
     * @param promises of the plan over these seasons
     * @param week wanted week
     * @param from first week in which something can be started
     */
    public static List<Way> ways(
            Plan plan, List<PossibleSeason> seasons, Promises promises, int week, List<Promises.Line> order, int from) {
        ToFill fill = new ToFill(plan, seasons, week, order);
        List<Candidate> candidates = fill.candidates(promises, Math.max(0, from));
        return candidates.isEmpty()
                ? List.of()
                : fill.tried(candidates, promises.ask(week, order).filled());
    }

    private List<Candidate> candidates(Promises promises, int from) {
        KindTree kinds = KindTree.of(season.roles());
        Prospects prospects = Prospects.of(season, seasons.subList(0, Math.min(LOOKED_OVER, seasons.size())));
        int[][] use = promises.outcome().bedUse();
        List<Candidate> candidates = new ArrayList<>();
        for (Promises.Line line : order) {
            double lacking = line.stems() - 100.0 * Promises.most(promises.free(line.node(), week), 0.9);
            if (lacking <= 0) {
                continue;
            }
            for (int c = 0; c < season.crops().size(); c++) {
                Crop crop = season.crops().get(c);
                if (isInThePool(crop) && gives(kinds, crop, line.node())) {
                    for (int m = 0; m < crop.methods().size(); m++) {
                        addBest(candidates, prospects, kinds, use, line.node(), lacking, c, m, from);
                    }
                }
            }
        }
        candidates.sort(Comparator.comparingDouble(Candidate::worth).reversed());
        return candidates.subList(0, Math.min(TRIED, candidates.size()));
    }

    private boolean isInThePool(Crop crop) {
        return season.pool().stream().anyMatch(lots -> lots.crop().equals(crop.name()));
    }

    private static boolean gives(KindTree kinds, Crop crop, int node) {
        return crop.kinds().stream().anyMatch(share -> isWithin(kinds, kinds.node(share.kind()), node));
    }

    private static boolean isWithin(KindTree kinds, int node, int above) {
        for (int n = node; n >= 0; n = kinds.parent(n)) {
            if (n == above) {
                return true;
            }
        }
        return false;
    }

    /** The sowing that gives most of a kind in the wanted week, in the bed with most room for it. */
    private void addBest(
            List<Candidate> candidates,
            Prospects prospects,
            KindTree kinds,
            int[][] use,
            int node,
            double lacking,
            int crop,
            int method,
            int from) {
        Method way = season.crops().get(crop).methods().get(method);
        Candidate best = null;
        for (int sow = from; sow < week; sow++) {
            for (Bed bed : season.allBeds()) {
                Prospect one = prospects.expect(crop, method, 100, bed.index(), sow);
                double aPlant = mean(one, kinds, node) / 100;
                if (aPlant < 100 * LEAST_A_PLANT) {
                    break;
                }
                int wanted = (int) Math.ceil(MARGIN * lacking / aPlant);
                long length = Math.round(Gap.MM * bed.block().length());
                int plants = Math.min(wanted, Gap.plants(way, Gap.free(season, use[bed.index()], length, one)));
                double worth = Math.min(1, plants * aPlant / lacking);
                if (plants > 0 && (best == null || worth > best.worth())) {
                    best = new Candidate(crop, method, bed.index(), sow, plants, worth);
                }
            }
        }
        if (best != null) {
            candidates.add(best);
        }
    }

    /** Hundredths of stems of a kind in the wanted week, in the mean. */
    private double mean(Prospect prospect, KindTree kinds, int node) {
        double sum = 0;
        for (int k = 0; k < prospect.kinds().size(); k++) {
            if (isWithin(kinds, kinds.node(prospect.kinds().get(k)), node)) {
                int[] each = prospect.stems()[k][week];
                for (int stems : each) {
                    sum += (double) stems / each.length;
                }
            }
        }
        return sum;
    }

    private List<Way> tried(List<Candidate> candidates, double before) {
        List<Lots> pool = new ArrayList<>(season.pool());
        List<Spot> spots = new ArrayList<>();
        for (Candidate one : candidates) {
            spots.add(new Spot(pool.size(), one.bed(), one.sowWeek(), one.method()));
            pool.add(new Lots(season.crops().get(one.crop()).name(), one.plants(), 1));
        }
        PlanFacts facts = PlanFacts.ofPlan(season.withPool(pool), seasons, plan.plantings(), spots);
        int[] places = Outcomes.places(facts, plan.plantings());
        SeasonScore score = new SeasonScore(facts);
        for (int p = 0; p < places.length; p++) {
            score.settle(p, places[p]);
        }
        List<Way> ways = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) {
            Spot spot = spots.get(i);
            int place = facts.table().find(spot.stock(), spot.bed(), spot.sowWeek(), spot.method());
            if (place < 0) {
                continue;
            }
            int planting = facts.firstPlanting(spot.stock());
            score.put(planting, place);
            boolean canBeDone = Gap.broken(score.ask()).isEmpty();
            score.forget();
            if (canBeDone) {
                int[] with = places.clone();
                with[planting] = place;
                double filled = Promises.of(facts, with).ask(week, order).filled();
                Candidate one = candidates.get(i);
                Crop crop = season.crops().get(one.crop());
                if (filled > before) {
                    ways.add(new Way(
                            crop,
                            crop.methods().get(one.method()),
                            season.allBeds().get(one.bed()),
                            one.sowWeek(),
                            one.plants(),
                            facts.table().millimetres(facts.table().row(place)),
                            filled));
                }
            }
        }
        ways.sort(Comparator.comparingDouble(Way::filled).reversed());
        return ways;
    }
}
