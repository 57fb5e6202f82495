package bedwright.plan;

import bedwright.climate.PossibleSeason;
import bedwright.growth.Late;
import bedwright.growth.ProspectTable;
import bedwright.growth.Spot;
import bedwright.season.Bed;
import bedwright.season.BedBlock;
import bedwright.season.Crop;
import bedwright.season.Family;
import bedwright.season.Held;
import bedwright.season.KeptPlanting;
import bedwright.season.KindTree;
import bedwright.season.Method;
import bedwright.season.Past;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.UnderWay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Everything that a score of a season needs, compiled once into flat arrays and shared by all searches: what plantings
 * there are, what their places take and give, and what is asked for.
 */
public final class PlanFacts {
    final Season season;
    final List<PossibleSeason> seasons;
    final ProspectTable table;
    final KindTree kinds;
    final int weeks;
    final int seasonCount;
    final List<Shelf> shelves;
    final int bench;
    final int trays;
    final int firstNet;
    final int cover;
    final List<DemandLine> demand;
    final KindCells cells;
    final Filling[] fillings;
    final WorkWeeks hours;
    /** Chores, making up and service by week, ticks. */
    final long[] fixedWork;

    final long[] makingMinutes;
    final long[] serviceMinutes;
    final long ownRate;
    final long hiredRate;
    final long restPrice;
    final long followOnPrice;
    /** Stock of each planting. */
    final int[] stockOf;
    /** Crop of each stock. */
    final int[] cropOf;
    /** Family of each stock, or −1. */
    final int[] familyOf;

    final int families;
    /** Job of each place: lots of one crop with the same bed, week and method share one. */
    final int[] jobOf;
    /** A place of each job: all of them have the same set-up. */
    final int[] placeOfJob;
    /** Whether the family of a place was in its bed too few years ago. */
    final boolean[] restBroken;
    /** The one place of a planting that is fixed, or −1. */
    final int[] fixedPlace;

    /** Plantings that a search may move: those that are not fixed and have a place to go. */
    final int[] free;

    final Uses uses;
    final Holds holds;
    final Figures figures;
    /** What it costs to change the plan in force, in a season under way. */
    final Changes changes;

    private final boolean[] refused;

    /** Where each planting is if nothing is planted: what stands stays, other plantings are left out. */
    final int[] unplanted;

    private final int[] firstPlanting;
    /** Of each stock's crop, by method. */
    private final int[][] weeksToTheBed;

    private @Nullable Givers givers;

    private PlanFacts(Season season, List<PossibleSeason> seasons, ProspectTable table, Set<Integer> kept) {
        this.season = season;
        this.seasons = List.copyOf(seasons);
        this.table = table;
        this.kinds = KindTree.of(season.roles());
        this.weeks = season.weeks();
        this.seasonCount = seasons.size();
        this.shelves = Shelf.of(season);
        this.bench = season.allBeds().size();
        this.trays = bench + 1;
        this.firstNet = trays + 1;
        this.cover = firstNet + season.stock().nets().size();
        this.ownRate = Grains.ofHour(season, season.labour().ownRate());
        this.hiredRate = Grains.ofHour(season, season.labour().hiredRate());
        this.restPrice = Grains.ofThing(season, season.rotation().restBroken());
        this.followOnPrice = Grains.ofThing(season, season.rotation().followOn());
        Demand asked = Demand.of(season, kinds);
        this.demand = asked.lines();
        this.makingMinutes = asked.makingMinutes();
        this.serviceMinutes = asked.serviceMinutes();
        this.cells = new KindCells(kinds, demand);
        this.fillings = new Filling[season.roles().size()];
        for (int r = 0; r < fillings.length; r++) {
            fillings[r] = Filling.of(season, kinds, cells, r, asked, ownRate, seasonCount);
        }
        this.hours = WorkWeeks.of(season);
        this.fixedWork = new long[weeks];
        for (int w = 0; w < weeks; w++) {
            fixedWork[w] = hours.chores()[w] + (makingMinutes[w] + serviceMinutes[w]) * Grains.TICKS_A_MINUTE;
        }
        this.cropOf = cropsOfStocks(season);
        this.weeksToTheBed = new int[cropOf.length][];
        this.familyOf = new int[cropOf.length];
        this.families = season.families().size();
        for (int s = 0; s < cropOf.length; s++) {
            Crop crop = season.crops().get(cropOf[s]);
            familyOf[s] = family(season, crop);
            weeksToTheBed[s] = crop.methods().stream()
                    .mapToInt(way -> way.start() == Method.Start.TRAY ? way.trayWeeks() : 0)
                    .toArray();
        }
        this.stockOf = stocksOfPlantings(season);
        this.firstPlanting = new int[cropOf.length + 1];
        for (int stock : stockOf) {
            firstPlanting[stock + 1]++;
        }
        for (int s = 0; s < cropOf.length; s++) {
            firstPlanting[s + 1] += firstPlanting[s];
        }
        this.uses = new Uses(table, new Uses.Shelves(bench, trays, firstNet, cover));
        this.holds = new Holds(table, uses);
        this.figures = figures();
        this.jobOf = new int[table.places()];
        this.placeOfJob = jobs();
        this.restBroken = new boolean[table.places()];
        markBrokenRest();
        this.refused = new boolean[table.places()];
        this.fixedPlace = new int[stockOf.length];
        Arrays.fill(fixedPlace, -1);
        fixStanding();
        fixHeld();
        this.unplanted = fixedPlace.clone();
        for (int p = 0; p < unplanted.length; p++) {
            unplanted[p] = stays(p) && unplanted[p] < 0 ? asItStands(stockOf[p]) : unplanted[p];
        }
        this.changes = new Changes(this);
        for (int p = 0; p < fixedPlace.length; p++) {
            if (fixedPlace[p] < 0 && kept.contains(changes.number[p])) {
                fixedPlace[p] = changes.inForce[p];
                unplanted[p] = changes.inForce[p];
            }
        }
        this.free = IntStream.range(0, stockOf.length)
                .filter(p -> fixedPlace[p] < 0 && table.firstPlace(stockOf[p]) < table.firstPlace(stockOf[p] + 1))
                .toArray();
    }

    /** Compiles a season over its possible seasons. */
    public static PlanFacts of(Season season, List<PossibleSeason> seasons) {
        return new PlanFacts(season, seasons, ProspectTable.of(season, seasons), Set.of());
    }

    /** Compiles a season whose prospects are there already. */
    public static PlanFacts of(Season season, List<PossibleSeason> seasons, ProspectTable table) {
        return new PlanFacts(season, seasons, table, Set.of());
    }

    /**
     * Compiles a season only as far as a plan goes: its plantings have no other places than those that they have there. To
     * judge it over many seasons without working out what else might be planted.
     *
     * @throws IllegalArgumentException if the season has no such pool, crop, bed or method: the message says which
     */
    public static PlanFacts ofPlan(Season season, List<PossibleSeason> seasons, List<KeptPlanting> plan) {
        return ofPlan(season, seasons, plan, List.of());
    }

    /** The same, with some spots more in which a planting may stand. */
    public static PlanFacts ofPlan(
            Season season, List<PossibleSeason> seasons, List<KeptPlanting> plan, Collection<Spot> more) {
        return ofPlan(season, seasons, plan, more, List.of());
    }

    /** The same, with what plantings would be if jobs on them were left for a week. */
    static PlanFacts ofPlan(
            Season season,
            List<PossibleSeason> seasons,
            List<KeptPlanting> plan,
            Collection<Spot> more,
            Collection<Late> late) {
        List<Spot> spots = new ArrayList<>(more);
        plan.forEach(planting -> spots.add(Outcomes.spot(season, planting)));
        UnderWay underWay = season.underWay();
        if (underWay != null) {
            // What was changed of them has its price.
            underWay.inForce().forEach(planting -> spots.add(Outcomes.spot(season, planting)));
        }
        return of(season, seasons, ProspectTable.at(season, seasons, spots, late));
    }

    /**
     * The same in a season under way with some plantings of the plan in force held where they are, and some that must not be
     * put in: for a search.
     *
     * @param kept numbers of plantings in force
     * @param refused plantings whose crops are not put newly into their beds
     */
    PlanFacts keeping(Set<Integer> kept, List<KeptPlanting> refused) {
        PlanFacts facts = new PlanFacts(season, seasons, table, kept);
        List<Bed> beds = season.allBeds();
        for (int place = 0; place < table.places(); place++) {
            String crop = season.crops().get(cropOf[table.stock(place)]).name();
            String bed = beds.get(table.bed(place)).name();
            facts.refused[place] = refused.stream()
                    .anyMatch(one -> one.crop().equals(crop) && one.bed().equals(bed));
        }
        return facts;
    }

    /** Whether a planting must not be put at a place, since that was refused; it may stay where it is in force. */
    boolean isRefused(int planting, int place) {
        return place >= 0 && refused[place] && changes.inForce[planting] != place;
    }

    public Season season() {
        return season;
    }

    public List<PossibleSeason> seasons() {
        return seasons;
    }

    public ProspectTable table() {
        return table;
    }

    /** Everybody who takes stems. */
    public List<DemandLine> demand() {
        return demand;
    }

    /** Number of plantings, placed or not: one for each lot of the pool, then one for each standing planting. */
    public int plantings() {
        return stockOf.length;
    }

    /** The stock, as the table numbers them, that a planting belongs to. */
    public int stock(int planting) {
        return stockOf[planting];
    }

    /** How many possible seasons caution counts as the worst: a fifth of them, rounded up. */
    int worstSeasons() {
        return (seasonCount + 4) / 5;
    }

    /** The least weight that a possible season can have: what caution leaves to those that are not among the worst. */
    double leastWeight() {
        return (100 - season.caution().percent()) / 100.0;
    }

    /** The greatest. */
    double greatestWeight() {
        return leastWeight() + season.caution().percent() * (double) seasonCount / (100.0 * worstSeasons());
    }

    /** First planting of a stock; its plantings end before that of the next stock. */
    int firstPlanting(int stock) {
        return firstPlanting[stock];
    }

    /** Weeks from sowing to the bed by a method of a stock's crop. */
    int weeksToTheBed(int stock, int method) {
        return weeksToTheBed[stock][method];
    }

    /** Which places give what; made when first asked for. */
    synchronized Givers givers() {
        Givers made = givers;
        if (made == null) {
            made = new Givers(this);
            givers = made;
        }
        return made;
    }

    boolean isFixed(int planting) {
        return fixedPlace[planting] >= 0;
    }

    /** Whether a planting is a lot of the pool that the grower holds in place. */
    public boolean isHeld(int planting) {
        return isFixed(planting) && stockOf[planting] < season.pool().size();
    }

    /** Whether a planting may be at a place: whether it is not fixed elsewhere. */
    boolean mayBe(int planting, int place) {
        return fixedPlace[planting] < 0 || fixedPlace[planting] == place;
    }

    /** Whether a planting stands in its bed in a season under way, so that it may be pulled but not be left out. */
    boolean stays(int planting) {
        int standing = stockOf[planting] - season.pool().size();
        if (standing < 0) {
            return false;
        }
        Standing one = season.standing().get(standing);
        return one.past() != null && one.bed() != null && !one.isPulled() && !one.isWritten();
    }

    /** The place of what stands, kept to its end in the way in force. */
    private int asItStands(int stock) {
        Standing standing = season.standing().get(stock - season.pool().size());
        Past past = standing.past();
        String way = past == null || past.ways().isEmpty()
                ? standing.method()
                : past.ways().getFirst();
        for (int place = table.firstPlace(stock); place < table.firstPlace(stock + 1); place++) {
            Method method = season.crops().get(cropOf[stock]).methods().get(table.method(place));
            if (table.until(place) == ProspectTable.TO_ITS_END && method.name().equals(way)) {
                return place;
            }
        }
        return table.firstPlace(stock);
    }

    private static int[] cropsOfStocks(Season season) {
        Map<String, Integer> byName = new HashMap<>();
        for (int c = 0; c < season.crops().size(); c++) {
            byName.put(season.crops().get(c).name(), c);
        }
        List<Integer> crops = new ArrayList<>();
        season.pool().forEach(lots -> crops.add(byName.get(lots.crop())));
        season.standing().forEach(standing -> crops.add(byName.get(standing.crop())));
        return crops.stream().mapToInt(Integer::intValue).toArray();
    }

    private static int[] stocksOfPlantings(Season season) {
        List<Integer> stocks = new ArrayList<>();
        for (int i = 0; i < season.pool().size(); i++) {
            for (int l = 0; l < season.pool().get(i).lots(); l++) {
                stocks.add(i);
            }
        }
        for (int j = 0; j < season.standing().size(); j++) {
            stocks.add(season.pool().size() + j);
        }
        return stocks.stream().mapToInt(Integer::intValue).toArray();
    }

    private static int family(Season season, Crop crop) {
        for (int f = 0; f < season.families().size(); f++) {
            if (season.families().get(f).name().equals(crop.family())) {
                return f;
            }
        }
        return -1;
    }

    private Figures figures() {
        int[] cell = new int[kinds.size()];
        int[] role = new int[cell.length];
        for (int n = 0; n < cell.length; n++) {
            cell[n] = cells.of(n);
            role[n] = kinds.role(n);
        }
        return new Figures(table, new Figures.Kinds(weeks, cell, role));
    }

    private int[] jobs() {
        Map<List<Integer>, Integer> numbers = new HashMap<>();
        List<Integer> first = new ArrayList<>();
        for (int place = 0; place < jobOf.length; place++) {
            int stock = table.stock(place);
            boolean standing = stock >= season.pool().size();
            int owner = standing ? -1 - stock : cropOf[stock];
            // What is done late is done by itself.
            List<Integer> key = table.isLate(place)
                    ? List.of(place)
                    : List.of(owner, table.bed(place), table.sowWeek(place), table.way(place));
            Integer job = numbers.get(key);
            if (job == null) {
                job = first.size();
                numbers.put(key, job);
                first.add(place);
            }
            jobOf[place] = job;
        }
        return first.stream().mapToInt(Integer::intValue).toArray();
    }

    private void markBrokenRest() {
        List<Bed> beds = season.allBeds();
        for (int place = 0; place < restBroken.length; place++) {
            int stock = table.stock(place);
            int family = familyOf[stock];
            if (family < 0 || stock >= season.pool().size()) {
                continue;
            }
            Family rule = season.families().get(family);
            int year = season.weekStart(table.heldFrom(table.row(place))).getYear();
            int last = Integer.MIN_VALUE;
            for (BedBlock.Grown grown : beds.get(table.bed(place)).history()) {
                if (grown.family().equals(rule.name()) && grown.year() <= year) {
                    last = Math.max(last, grown.year());
                }
            }
            restBroken[place] = last != Integer.MIN_VALUE && year - last - 1 < rule.restYears();
        }
    }

    private void fixStanding() {
        for (int p = 0; p < stockOf.length; p++) {
            int stock = stockOf[p];
            if (stock < season.pool().size()) {
                continue;
            }
            Standing standing = season.standing().get(stock - season.pool().size());
            boolean inTheGround = standing.isWritten() || standing.clock() != null;
            boolean whole =
                    standing.bed() != null && standing.method() != null && (standing.sown() != null || inTheGround);
            boolean isOpen = standing.past() != null && !standing.isPulled() && !standing.isWritten();
            if (!isOpen && (whole || standing.isWritten() || standing.isPulled())) {
                fixedPlace[p] = table.firstPlace(stock);
            }
        }
    }

    /** The first lots of a stock are those that are held. What is held where the season offers no place is free. */
    private void fixHeld() {
        int[] next = firstPlanting.clone();
        for (Held held : season.held()) {
            int place = placeOf(held);
            for (int l = 0; place >= 0 && l < held.lots(); l++) {
                int stock = table.stock(place);
                if (next[stock] < firstPlanting[stock + 1]) {
                    fixedPlace[next[stock]++] = place;
                }
            }
        }
    }

    /** Where what is held stands; −1 if the season does not offer it. */
    int placeOf(Held held) {
        Spot spot = spot(season, held);
        return spot == null ? -1 : table.find(spot.stock(), spot.bed(), spot.sowWeek(), spot.method());
    }

    /** Where what is held is to stand; null if the season has no such lots, bed or method. */
    static @Nullable Spot spot(Season season, Held held) {
        int stock = held.entry(season);
        int bed = season.allBeds().stream().map(Bed::name).toList().indexOf(held.bed());
        int method = season.crops().stream()
                .filter(crop -> crop.name().equals(held.crop()))
                .findFirst()
                .map(crop -> crop.methods().stream().map(Method::name).toList().indexOf(held.method()))
                .orElse(-1);
        return stock < 0 || bed < 0 || method < 0 ? null : new Spot(stock, bed, season.weekOf(held.sown()), method);
    }

    /** Number of methods of a stock's crop. */
    int methods(int stock) {
        return weeksToTheBed[stock].length;
    }
}
