package bedwright.plan;

import bedwright.growth.ProspectTable;
import bedwright.growth.Spot;
import bedwright.plan.Outcome.Broken;
import bedwright.plan.Outcome.StockUse;
import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.Method;
import bedwright.season.Past;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.UnderWay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Works out what a plan brings, afresh from its places. */
public final class Outcomes {
    private final PlanFacts facts;
    private final Season season;
    private final SeasonScore score;
    private final int weeks;
    private final int seasons;

    private Outcomes(PlanFacts facts, int[] places) {
        this.facts = facts;
        this.season = facts.season();
        this.score = new SeasonScore(facts);
        this.weeks = facts.weeks;
        this.seasons = facts.seasonCount;
        score.settleAll(places);
    }

    /**
     * What a plan brings.
     *
     * @param places where each planting is, by its number in the facts; −1 where it is left out
     */
    public static Outcome of(PlanFacts facts, int[] places) {
        int[] all = places.clone();
        for (int p = 0; p < all.length; p++) {
            all[p] = facts.isFixed(p) ? facts.fixedPlace[p] : all[p];
        }
        return exactly(facts, all);
    }

    /** The same of a plan in which even what is fixed may be left out: what the season would be without it. */
    static Outcome exactly(PlanFacts facts, int[] places) {
        return new Outcomes(facts, places).outcome();
    }

    /**
     * The places of the plantings of a kept plan.
     *
     * @throws IllegalArgumentException if the season does not offer such a place, or so many lots: the message says
     *     which
     */
    public static int[] places(PlanFacts facts, List<KeptPlanting> kept) {
        int[] places = Search.nothingPlaced(facts);
        boolean[] isTaken = new boolean[places.length];
        for (KeptPlanting planting : kept) {
            int place = placeOf(facts, planting);
            if (place < 0) {
                throw noSuchPlace(planting);
            }
            int lots = planting.lots();
            int stock = facts.table().stock(place);
            for (int p = facts.firstPlanting(stock); p < facts.firstPlanting(stock + 1) && lots > 0; p++) {
                if (!isTaken[p] && facts.mayBe(p, place) && facts.changes.isLotOf(p, planting)) {
                    isTaken[p] = true;
                    places[p] = place;
                    lots--;
                }
            }
            if (lots > 0) {
                throw new IllegalArgumentException(
                        "Planting " + planting.number() + " has " + lots + " lots more than the season offers");
            }
        }
        return places;
    }

    /**
     * The place of the lots of a kept planting, or −1 if the season does not offer it.
     *
     * @throws IllegalArgumentException if the season has no such pool, crop, bed or method
     */
    static int placeOf(PlanFacts facts, KeptPlanting planting) {
        Spot spot = spot(facts.season(), planting);
        return facts.table().find(spot.stock(), spot.bed(), spot.sowWeek(), spot.method());
    }

    /**
     * Where and how the lots of a kept planting stand.
     *
     * @throws IllegalArgumentException if the season has no such pool, crop, bed or method
     */
    public static Spot spot(Season season, KeptPlanting planting) {
        int stock = stock(season, planting);
        Crop crop = stock < 0 ? null : season.cropOf(stock);
        int bed = season.allBeds().stream()
                .filter(one -> one.name().equals(planting.bed()))
                .mapToInt(Bed::index)
                .findFirst()
                .orElse(-1);
        List<Method> methods = crop == null ? List.of() : crop.methods();
        int method = methods.stream().map(Method::name).toList().indexOf(planting.method());
        if (crop == null || bed < 0 || method < 0 || !crop.name().equals(planting.crop())) {
            throw noSuchPlace(planting);
        }
        Standing stands = season.standingOf(stock);
        boolean isInTray = stands != null && stands.isInTray();
        LocalDate out = isInTray ? planting.out() : null;
        LocalDate until = planting.until();
        int week = out == null
                ? season.weekOf(planting.sown())
                : season.weekOf(out) - methods.get(method).trayWeeks();
        int last = until == null ? ProspectTable.TO_ITS_END : season.weekOf(until);
        return new Spot(stock, bed, week, ProspectTable.way(method, last));
    }

    static IllegalArgumentException noSuchPlace(KeptPlanting planting) {
        return new IllegalArgumentException(String.format(
                Locale.ROOT,
                "Planting %d (%s, %s, bed %s, %s) has no such place in this season",
                planting.number(),
                planting.crop(),
                planting.method(),
                planting.bed(),
                planting.sown()));
    }

    private static int stock(Season season, KeptPlanting planting) {
        Integer pool = planting.pool();
        Integer standing = planting.standing();
        if (standing != null) {
            return standing <= season.standing().size() ? season.pool().size() + standing - 1 : -1;
        }
        return pool != null && pool <= season.pool().size() ? pool - 1 : -1;
    }

    private Outcome outcome() {
        Plan.Score total = new Plan.Score(score.hard(), score.medium(), score.soft());
        int[][][] served = new int[facts.demand.size()][weeks][seasons];
        int[][][] stems = stems();
        for (Filling filling : facts.fillings) {
            for (int w = 0; w < weeks; w++) {
                score.stems().fillByLine(filling, w, served);
            }
        }
        int[][][] leftOver = leftOver(stems, served);
        return new Outcome(
                seasons,
                total,
                plantings(),
                facts.demand,
                served,
                stems,
                leftOver,
                work(stems, leftOver),
                stocks(),
                bedUse(),
                money(served),
                broken());
    }

    private int[][][] stems() {
        int nodes = facts.kinds.size();
        int[][][] stems = new int[nodes][weeks][seasons];
        var table = facts.table();
        for (int p = 0; p < facts.plantings(); p++) {
            if (score.place(p) >= 0) {
                int row = table.row(score.place(p));
                for (int b = 0; b < table.blocks(row); b++) {
                    int[] week = stems[table.blockNode(row, b)][table.blockWeek(row, b)];
                    for (int k = 0; k < seasons; k++) {
                        week[k] += table.stems(row)[b * seasons + k];
                    }
                }
            }
        }
        for (int n = nodes - 1; n >= 0; n--) {
            int parent = facts.kinds.parent(n);
            for (int w = 0; w < weeks && parent >= 0; w++) {
                for (int k = 0; k < seasons; k++) {
                    stems[parent][w][k] += stems[n][w][k];
                }
            }
        }
        return stems;
    }

    private int[][][] leftOver(int[][][] stems, int[][][] served) {
        int[][][] left = new int[facts.fillings.length][weeks][seasons];
        for (Filling filling : facts.fillings) {
            for (int w = 0; w < weeks; w++) {
                left[filling.role][w] = stems[roleNode(filling)][w].clone();
            }
        }
        for (DemandLine line : facts.demand) {
            for (int w = 0; w < weeks; w++) {
                for (int k = 0; k < seasons; k++) {
                    left[line.role()][w][k] -= served[line.index()][w][k];
                }
            }
        }
        return left;
    }

    private int roleNode(Filling filling) {
        return facts.cells.node(filling.firstNode);
    }

    /** The plantings, by week, bed and crop: lots of one job together. */
    private List<KeptPlanting> plantings() {
        Map<List<Integer>, List<Integer>> together = new LinkedHashMap<>();
        List<Integer> placed = new ArrayList<>();
        for (int p = 0; p < facts.plantings(); p++) {
            if (score.place(p) >= 0) {
                placed.add(p);
            }
        }
        var table = facts.table();
        placed.sort((a, b) -> {
            int one = score.place(a);
            int other = score.place(b);
            int byWeek = Integer.compare(table.sowWeek(one), table.sowWeek(other));
            int byBed = byWeek != 0 ? byWeek : Integer.compare(table.bed(one), table.bed(other));
            int byStock = byBed != 0 ? byBed : Integer.compare(facts.stock(a), facts.stock(b));
            return byStock != 0 ? byStock : Integer.compare(table.method(one), table.method(other));
        });
        for (int p : placed) {
            boolean standing = facts.stock(p) >= season.pool().size();
            List<Integer> key = List.of(facts.stock(p), score.place(p), standing ? p : -1, facts.changes.number[p]);
            together.computeIfAbsent(key, k -> new ArrayList<>()).add(p);
        }
        List<KeptPlanting> kept = new ArrayList<>();
        for (List<Integer> lots : together.values()) {
            kept.add(kept(kept.size() + 1, lots));
        }
        UnderWay underWay = season.underWay();
        return underWay == null ? List.copyOf(kept) : Numbering.of(kept, underWay);
    }

    private KeptPlanting kept(int number, List<Integer> lots) {
        int stock = facts.stock(lots.getFirst());
        int place = score.place(lots.getFirst());
        int pool = season.pool().size();
        boolean standing = stock >= pool;
        var crop = season.crops().get(facts.cropOf[stock]);
        Standing stood = season.standingOf(stock);
        int plants = stood == null ? season.pool().get(stock).plants() * lots.size() : stood.plants();
        int week = facts.table().sowWeek(place);
        int method = facts.table().method(place);
        int until = facts.table().until(place);
        Past past = stood == null ? null : stood.past();
        LocalDate sown = past == null || stood == null || stood.sown() == null ? season.weekStart(week) : stood.sown();
        boolean isInTray = stood != null && stood.isInTray();
        int was = facts.changes.number[lots.getFirst()];
        return new KeptPlanting(
                number,
                crop.name(),
                crop.methods().get(method).name(),
                season.allBeds().get(facts.table().bed(place)).name(),
                sown,
                standing ? (past == null ? null : past.pool()) : Integer.valueOf(stock + 1),
                standing ? stock - pool + 1 : null,
                lots.size(),
                plants,
                isInTray
                        ? season.weekStart(week + facts.weeksToTheBed(stock, method))
                        : past == null ? null : past.out(),
                until == ProspectTable.TO_ITS_END ? null : season.weekStart(until),
                was == 0 ? null : was);
    }

    private Outcome.Work work(int[][][] stems, int[][][] leftOver) {
        long[] making = new long[weeks];
        long[] service = new long[weeks];
        long[] plantings = new long[weeks];
        long[][] cutting = new long[weeks][seasons];
        long[][] clearing = new long[weeks][seasons];
        for (int w = 0; w < weeks; w++) {
            making[w] = facts.makingMinutes[w] * Grains.TICKS_A_MINUTE;
            service[w] = facts.serviceMinutes[w] * Grains.TICKS_A_MINUTE;
            plantings[w] = score.hours().work(w) - facts.fixedWork[w];
            for (Filling filling : facts.fillings) {
                for (int k = 0; k < seasons; k++) {
                    long left = leftOver[filling.role][w][k];
                    cutting[w][k] += filling.cutRate * (stems[roleNode(filling)][w][k] - left);
                    clearing[w][k] += filling.clearRate * left;
                }
            }
        }
        WorkWeeks hours = facts.hours;
        return new Outcome.Work(
                hours.chores(),
                making,
                service,
                plantings,
                cutting,
                clearing,
                hours.own(),
                hours.hired(),
                hours.cutting());
    }

    private List<StockUse> stocks() {
        List<StockUse> uses = new ArrayList<>();
        for (int s = facts.bench; s < facts.shelves.size(); s++) {
            Shelf shelf = facts.shelves.get(s);
            int[] use = new int[weeks];
            long peak = shelf.holds();
            for (int w = 0; w < weeks; w++) {
                int used = score.room().used(s, w);
                peak = Math.max(peak, used);
                use[w] = used - (int) shelf.missing(season, w);
            }
            boolean known =
                    shelf.kind() != Outcome.StockKind.TRAYS || season.stock().trays() != null;
            boolean there =
                    shelf.kind() != Outcome.StockKind.COVER || season.stock().cover() != null;
            if (known && there && shelf.kind() != null) {
                uses.add(new StockUse(
                        shelf.kind(),
                        shelf.name(),
                        use,
                        shelf.holds(),
                        shelf.rule() == Rule.EXTRA_STOCK,
                        shelf.price() * (peak - shelf.holds())));
            }
        }
        return List.copyOf(uses);
    }

    private int[][] bedUse() {
        int[][] use = new int[facts.bench][weeks];
        for (int b = 0; b < use.length; b++) {
            for (int w = 0; w < weeks; w++) {
                use[b][w] = score.room().used(b, w);
            }
        }
        return use;
    }

    private Outcome.Money money(int[][][] served) {
        long[] takings = new long[seasons];
        long[] shortage = new long[seasons];
        long[] buyIn = new long[seasons];
        long[] hours = new long[seasons];
        for (DemandLine line : facts.demand) {
            for (int w = 0; w < weeks; w++) {
                for (int k = 0; k < seasons; k++) {
                    long got = served[line.index()][w][k];
                    takings[k] += line.takings(w, got);
                    if (line.promise() == DemandLine.Promised.BOUGHT_IN) {
                        buyIn[k] += line.lacking(w, got);
                    } else {
                        shortage[k] += line.lacking(w, got);
                    }
                }
            }
        }
        for (int w = 0; w < weeks; w++) {
            for (int k = 0; k < seasons; k++) {
                hours[k] += score.hours().paid(w, k);
            }
        }
        return new Outcome.Money(
                takings,
                shortage,
                buyIn,
                hours,
                score.seasonMoney(),
                score.cost(Rule.MATERIAL),
                score.cost(Rule.EXTRA_STOCK),
                score.cost(Rule.REST_YEARS),
                score.cost(Rule.FOLLOW_ON),
                score.cost(Rule.CHANGES));
    }

    private List<Broken> broken() {
        List<Broken> broken = new ArrayList<>();
        for (int s = 0; s < facts.shelves.size(); s++) {
            Shelf shelf = facts.shelves.get(s);
            for (int w = 0; w < weeks && shelf.hard() > 0; w++) {
                long over = score.room().used(s, w) - shelf.holds();
                if (over > 0) {
                    boolean cells = shelf.unit().equals("cells");
                    double by = cells ? over : over / 1000.0;
                    broken.add(new Broken(shelf.rule().sentence(), shelf.name(), w, by, cells ? "cells" : "m"));
                }
            }
        }
        for (int w = 0; w < weeks; w++) {
            addOver(broken, Rule.HOURS, "hours", w, score.hours().over(w));
            addOver(
                    broken,
                    Rule.CUTTING_HOURS,
                    "cutting hours",
                    w,
                    score.hours().cuttingOver(w));
        }
        return List.copyOf(broken);
    }

    private void addOver(List<Broken> broken, Rule rule, String where, int week, long over) {
        if (over > 0) {
            double hours = (double) over / seasons / Grains.TICKS_AN_HOUR;
            broken.add(new Broken(rule.sentence(), where, week, hours, "hours"));
        }
    }
}
