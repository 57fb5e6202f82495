package bedwright.compare;

import bedwright.climate.FrostDates;
import bedwright.climate.Shelter;
import bedwright.growth.ProspectTable;
import bedwright.plan.DemandLine;
import bedwright.plan.Draft;
import bedwright.plan.PlanFacts;
import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.KindTree;
import bedwright.season.Method;
import bedwright.season.Season;
import bedwright.season.Site;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The season that a good grower would plan with pencil and paper (common practice, no source): each crop by its usual
 * method, the first that the file gives it; first sowings anchored on the frost dates, then successions whose gaps close
 * towards summer; sizes by what is asked for; tall crops in the lee, low ones where the wind blows; never more than beds,
 * bench, nets and hours allow.
 */
public final class RuleOfThumb {
    /** A crop that stands this high is put in the lee first, m. */
    private static final double TALL = 1.0;
    /** A crop cut for no longer than this is a once-cut one, days. */
    private static final int ONCE_CUT = 14;
    /** A crop that bears this much frost when grown may go out this long before the usual last frost. */
    private static final double HARDY = -2;

    private static final int HARDY_WEEKS_EARLY = 4;
    private static final int TENDER_WEEKS_LATE = 1;

    private final PlanFacts facts;
    private final Season season;
    private final ProspectTable table;
    private final Draft draft;
    private final double[][] coming;
    private final KindTree kinds;
    /** Crops of the pool that give stems of each kind, or of one within it. */
    private final long[] cropsWithin;
    /** Wind at each bed from the stormiest side, as a share of that in the open. */
    private final double[] wind;

    private RuleOfThumb(PlanFacts facts) {
        this.facts = facts;
        this.season = facts.season();
        this.table = facts.table();
        this.draft = new Draft(facts);
        this.coming = new double[table.stocks()][season.weeks()];
        this.kinds = KindTree.of(season.roles());
        this.cropsWithin =
                IntStream.range(0, kinds.size()).mapToLong(this::cropsWithin).toArray();
        this.wind = wind(season);
    }

    private static double[] wind(Season season) {
        double side = season.site().storms().stream()
                .max(Comparator.comparingDouble(storm -> storm.gustsAWeek().stream()
                        .mapToDouble(Double::doubleValue)
                        .sum()))
                .map(Site.StormSide::from)
                .orElse(0.0);
        return season.allBeds().stream()
                .mapToDouble(bed -> Shelter.relativeSpeed(season, bed, side))
                .toArray();
    }

    /** Plans the season by rule of thumb: where each planting is, by number; −1 where it is left out. */
    public static int[] places(PlanFacts facts) {
        RuleOfThumb thumb = new RuleOfThumb(facts);
        thumb.plan();
        return thumb.draft.places();
    }

    private record Sowing(int week, int stock, int method) {}

    private void plan() {
        List<Sowing> sowings = new ArrayList<>();
        for (int s = 0; s < table.stocks(); s++) {
            if (table.firstPlace(s) < table.firstPlace(s + 1)) {
                sowings.addAll(sowings(s));
            }
        }
        sowings.sort(Comparator.comparingInt(Sowing::week).thenComparingInt(Sowing::stock));
        for (Sowing sowing : sowings) {
            sow(sowing);
        }
    }

    /** The weeks in which a crop is sown by its usual method. */
    private List<Sowing> sowings(int stock) {
        int method = usualMethod(stock);
        List<Integer> weeks = offeredWeeks(stock, method);
        Crop crop = season.cropOf(stock);
        Method way = crop.methods().get(method);
        int toTheBed = way.start() == Method.Start.TRAY ? way.trayWeeks() : 0;
        List<Sowing> sowings = new ArrayList<>();
        int next = Integer.MIN_VALUE;
        for (int week : weeks) {
            if (week + toTheBed < earliestInTheBed(crop, week + toTheBed) || week < next) {
                continue;
            }
            sowings.add(new Sowing(week, stock, method));
            next = week + gap(way, week);
        }
        return sowings;
    }

    private int usualMethod(int stock) {
        int usual = Integer.MAX_VALUE;
        for (int p = table.firstPlace(stock); p < table.firstPlace(stock + 1); p++) {
            usual = Math.min(usual, table.method(p));
        }
        return usual;
    }

    private List<Integer> offeredWeeks(int stock, int method) {
        List<Integer> weeks = new ArrayList<>();
        for (int p = table.firstPlace(stock); p < table.firstPlace(stock + 1); p++) {
            if (table.method(p) == method && !weeks.contains(table.sowWeek(p))) {
                weeks.add(table.sowWeek(p));
            }
        }
        weeks.sort(null);
        return weeks;
    }

    /** First week in the bed that the frosts of that year leave a crop, if it goes out in spring. */
    private int earliestInTheBed(Crop crop, int week) {
        return FrostDates.of(season)
                .map(frost -> {
                    for (int y = 0; y < frost.years(); y++) {
                        int last = Math.floorDiv(frost.springMedian(y), 7);
                        boolean spring = week > last - 16 && week <= last + 16;
                        if (spring) {
                            return crop.killing().grown() <= HARDY
                                    ? last - HARDY_WEEKS_EARLY
                                    : last + TENDER_WEEKS_LATE;
                        }
                    }
                    return Integer.MIN_VALUE;
                })
                .orElse(Integer.MIN_VALUE);
    }

    /** Weeks to the next sowing: fewer the later in the year. */
    private int gap(Method way, int week) {
        int month = season.weekStart(week).getMonthValue();
        boolean once = way.cutDays() <= ONCE_CUT;
        if (month <= 4) {
            return once ? 3 : 6;
        }
        return month == 5 ? (once ? 2 : 4) : (once ? 1 : 3);
    }

    private void sow(Sowing sowing) {
        for (int planting = draft.leftOut(sowing.stock); planting >= 0; planting = draft.leftOut(sowing.stock)) {
            if (!sowOne(sowing, planting)) {
                return;
            }
        }
    }

    /** One lot more, if what is asked for in its weeks calls for it and a bed takes it. */
    private boolean sowOne(Sowing sowing, int planting) {
        for (int bed : beds(season.cropOf(sowing.stock))) {
            int place = table.find(sowing.stock, bed, sowing.week, sowing.method);
            if (place < 0) {
                continue;
            }
            if (!isWanted(place)) {
                return false;
            }
            if (draft.putIfItFits(planting, place)) {
                addStems(place);
                return true;
            }
        }
        return false;
    }

    private boolean isWanted(int place) {
        int row = table.row(place);
        int stock = table.stock(place);
        double wanted = 0;
        double there = 0;
        for (int b = 0; b < table.blocks(row); b++) {
            int week = table.blockWeek(row, b);
            wanted += wanted(table.blockNode(row, b), week);
            there += coming[stock][week];
        }
        return there < wanted;
    }

    /** Stems asked for of a kind, and of kinds above it, shared among the crops that give such stems. */
    private double wanted(int node, int week) {
        double wanted = 0;
        for (DemandLine line : facts.demand()) {
            if (line.asked()[week] > 0 && isWithin(node, line.node())) {
                wanted += line.asked()[week] / (100.0 * cropsWithin[line.node()]);
            }
        }
        return wanted;
    }

    private boolean isWithin(int node, int above) {
        for (int n = node; n >= 0; n = kinds.parent(n)) {
            if (n == above) {
                return true;
            }
        }
        return false;
    }

    private long cropsWithin(int node) {
        return season.pool().stream()
                .map(lots -> lots.crop())
                .distinct()
                .filter(name -> season.crops().stream()
                        .filter(crop -> crop.name().equals(name))
                        .flatMap(crop -> crop.kinds().stream())
                        .anyMatch(kind -> isWithin(kinds.node(kind.kind()), node)))
                .count();
    }

    private void addStems(int place) {
        int row = table.row(place);
        for (int b = 0; b < table.blocks(row); b++) {
            double sum = 0;
            for (int k = 0; k < table.seasons(); k++) {
                sum += table.stems(row)[b * table.seasons() + k];
            }
            coming[table.stock(place)][table.blockWeek(row, b)] += sum / table.seasons() / 100;
        }
    }

    /** Beds in the order in which they are tried: the lee first for tall crops, the wind first for low ones. */
    private List<Integer> beds(Crop crop) {
        Comparator<Bed> byWind = Comparator.comparingDouble(bed -> wind[bed.index()]);
        return season.allBeds().stream()
                .sorted((crop.height() >= TALL ? byWind : byWind.reversed()).thenComparingInt(Bed::index))
                .map(Bed::index)
                .toList();
    }
}
