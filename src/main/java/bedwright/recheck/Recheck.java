package bedwright.recheck;

import bedwright.climate.PossibleSeason;
import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.Method;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Counts a plan again from the season's facts alone (season model, sections 1 to 8). */
public final class Recheck {
    private final Facts facts;
    private final List<PossibleSeason> possible;
    private final List<Placed> plantings;
    private final List<KeptPlanting> kept;
    private final List<Calendar> calendars = new ArrayList<>();

    private Recheck(Facts facts, List<PossibleSeason> possible, List<Placed> plantings, List<KeptPlanting> kept) {
        this.kept = List.copyOf(kept);
        this.facts = facts;
        this.possible = possible;
        this.plantings = plantings;
    }

    /**
     * Score of a set of plantings, from the season's facts and these possible seasons.
     *
     * @param seasons at least one; their arrays must have the lengths that the season asks for
     * @throws IllegalArgumentException if there are no seasons, or if a name in the season names nothing
     */
    public static Tally of(Season season, List<PossibleSeason> seasons, List<KeptPlanting> plantings) {
        if (seasons.isEmpty()) {
            throw new IllegalArgumentException("A plan is judged over at least one possible season, not none");
        }
        Facts facts = new Facts(season);
        Offer offer = new Offer(facts);
        List<Placed> placed = offer.accept(plantings);
        return new Recheck(facts, seasons, placed, plantings).tally(offer);
    }

    /** What a planting's growth hangs on; plantings that agree in it are computed once. */
    private record Same(Crop crop, Method method, Bed bed, int sowWeek) {}

    private Tally tally(Offer offer) {
        int weeks = facts.weeks();
        int nodes = facts.kinds.size();
        long[] workTicks = new long[weeks];
        long[][][] stems = new long[possible.size()][weeks][nodes];
        List<Use> uses = new ArrayList<>();
        List<Families.Held> held = new ArrayList<>();
        Map<Same, Calendar> sameCalendar = new HashMap<>();
        Map<Same, List<double[]>> sameStems = new HashMap<>();
        Set<Same> jobs = new HashSet<>();
        Stems growth = new Stems(facts);

        for (Placed placed : plantings) {
            Same same = new Same(placed.crop(), placed.method(), placed.bed(), placed.sowWeek());
            Calendar calendar;
            List<double[]> ofAPlant;
            if (placed.isStanding()) {
                calendar = new Calendar(facts, placed);
                ofAPlant = ofAPlant(growth, placed, calendar);
            } else {
                calendar = sameCalendar.computeIfAbsent(same, key -> new Calendar(facts, placed));
                ofAPlant = sameStems.computeIfAbsent(same, key -> ofAPlant(growth, placed, calendar));
            }
            calendars.add(calendar);
            held.add(new Families.Held(placed, calendar));
            uses.add(new Use(facts, placed, calendar));

            Work work = new Work(facts, placed, calendar);
            boolean newJob = placed.isStanding() || jobs.add(same);
            for (int week = 0; week < weeks; week++) {
                workTicks[week] += placed.lots() * work.ofALot(week) + (newJob ? work.settingUp(week) : 0);
            }
            for (int k = 0; k < possible.size(); k++) {
                long[][] lot = growth.ofALot(placed, ofAPlant.get(k));
                for (int week = 0; week < weeks; week++) {
                    for (int node = 0; node < nodes; node++) {
                        stems[k][week][node] += placed.lots() * lot[node][week];
                    }
                }
            }
        }

        Stocks stocks = new Stocks(facts, plantings, uses);
        Tally.Constants constants = constants(uses, held, stocks);
        Markets markets = new Markets(facts, workTicks, stems);
        return sum(offer, stocks, constants, markets);
    }

    private List<double[]> ofAPlant(Stems growth, Placed placed, Calendar calendar) {
        List<double[]> ofAPlant = new ArrayList<>();
        for (PossibleSeason season : possible) {
            // What is written out is taken as it is, and needs no growing.
            ofAPlant.add(placed.isWritten() ? new double[facts.weeks()] : growth.ofAPlant(placed, season, calendar));
        }
        return ofAPlant;
    }

    private Tally.Constants constants(List<Use> uses, List<Families.Held> held, Stocks stocks) {
        Families families = new Families(facts);
        long restPrice = facts.units.grains(facts.season.rotation().restBroken());
        long followPrice = facts.units.grains(facts.season.rotation().followOn());
        long material = 0;
        long rest = 0;
        long follow = 0;
        for (int i = 0; i < plantings.size(); i++) {
            Placed placed = plantings.get(i);
            material += placed.lots() * uses.get(i).material();
            if (!placed.isStanding() && families.breaksRest(placed, calendars.get(i))) {
                rest += placed.lots() * restPrice;
            }
            if (families.followsOn(held.get(i), held)) {
                follow += placed.lots() * followPrice;
            }
        }
        return new Tally.Constants(
                material, stocks.extra(), rest, follow, new Changed(facts).price(kept, plantings, calendars));
    }

    private Tally sum(Offer offer, Stocks stocks, Tally.Constants constants, Markets markets) {
        List<Tally.OneSeason> seasons = markets.seasons(constants);
        Tally.Over over = new Tally.Over(
                stocks.bedRoom(),
                markets.hoursOver(),
                markets.cuttingOver(),
                stocks.bench(),
                stocks.over(),
                offer.refused());
        long hard = Stocks.WHOLE * (over.bedRoom() + over.bench()) + over.hours() + over.cuttingHours();
        for (Tally.StockOver stock : over.stocks()) {
            hard += stock.weight() * stock.over();
        }
        long[] money = new long[seasons.size()];
        long missing = 0;
        for (int k = 0; k < money.length; k++) {
            money[k] = seasons.get(k).money();
            missing += seasons.get(k).missing();
        }
        long soft = Score.soft(money, facts.season.caution().percent());
        return new Tally(-hard, -missing, soft, over, seasons, constants, offer.faults());
    }
}
