package bedwright.exact;

import bedwright.growth.ProspectTable;
import bedwright.season.Bed;
import bedwright.season.BedBlock;
import bedwright.season.Crop;
import bedwright.season.Family;
import bedwright.season.Rounding;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.Stock;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * How many lots of each stock stand at each place, what room and stock they take, and what they cost whatever the
 * season brings (season model, sections 5 and 8).
 */
final class Ground {
    private static final long A_SMALLEST_UNIT = 6_000_000;
    private static final long A_MILLIMETRE = 6_000;

    private final CpModel model;
    private final Season season;
    private final ProspectTable table;
    /** Lots at each place. */
    final IntVar[] lots;
    /** Whether a job is done at all; a job is what is set up once. */
    private final Map<Job, IntVar> jobs = new LinkedHashMap<>();
    /** A row of figures of each job. */
    private final Map<Job, Integer> rows = new LinkedHashMap<>();
    /** Costs in grains that are the same in every season. */
    final Linear costs = new Linear();

    /** @param standing the standing planting that it is, or −1 for lots of the pool */
    private record Job(String crop, int standing, int bed, int sowWeek, int method) {}

    Ground(CpModel model, Season season, ProspectTable table) {
        this.model = model;
        this.season = season;
        this.table = table;
        this.lots = new IntVar[table.places()];
        plant();
        setUp();
        bedRoom();
        stocks();
        for (int p = 0; p < lots.length; p++) {
            costs.add(lots[p], table.material(table.row(p)) * A_SMALLEST_UNIT);
        }
        rest();
        followOn();
    }

    private boolean isStanding(int stock) {
        return stock >= season.pool().size();
    }

    private String crop(int stock) {
        int pool = season.pool().size();
        return stock < pool
                ? season.pool().get(stock).crop()
                : season.standing().get(stock - pool).crop();
    }

    private @Nullable String family(int stock) {
        return season.crops().stream()
                .filter(crop -> crop.name().equals(crop(stock)))
                .findFirst()
                .map(Crop::family)
                .orElse(null);
    }

    private void plant() {
        for (int s = 0; s < table.stocks(); s++) {
            int most = isStanding(s) ? 1 : season.pool().get(s).lots();
            Linear all = new Linear();
            for (int p = table.firstPlace(s); p < table.firstPlace(s + 1); p++) {
                lots[p] = model.newIntVar(0, most, "lots " + p);
                all.add(lots[p], 1);
            }
            if (isStanding(s)
                    && isGivenWhole(season.standing().get(s - season.pool().size()))) {
                model.addEquality(all.expression(), 1);
            } else {
                model.addLessOrEqual(all.expression(), most);
            }
        }
    }

    private static boolean isGivenWhole(Standing standing) {
        boolean started = standing.sown() != null || standing.clock() != null;
        return standing.isWritten() || (standing.bed() != null && standing.method() != null && started);
    }

    private Job job(int place) {
        int stock = table.stock(place);
        int standing = isStanding(stock) ? stock - season.pool().size() : -1;
        return new Job(crop(stock), standing, table.bed(place), table.sowWeek(place), table.method(place));
    }

    private void setUp() {
        Map<Job, Linear> lotsOfJobs = new LinkedHashMap<>();
        for (int p = 0; p < lots.length; p++) {
            Job job = job(p);
            IntVar done = jobs.computeIfAbsent(job, key -> model.newBoolVar("job " + key));
            rows.putIfAbsent(job, table.row(p));
            lotsOfJobs.computeIfAbsent(job, key -> new Linear()).add(lots[p], 1);
            model.addLessOrEqual(
                    new Linear()
                            .add(lots[p], 1)
                            .add(done, -lots[p].getDomain().max())
                            .expression(),
                    0);
        }
        lotsOfJobs.forEach((job, sum) -> {
            IntVar done = jobs.get(job);
            if (done != null) {
                model.addGreaterOrEqual(sum.expression(), done);
            }
        });
    }

    /** Minutes of work on the plantings in a week. */
    Linear work(int week) {
        Linear minutes = new Linear();
        for (int p = 0; p < lots.length; p++) {
            minutes.add(lots[p], inWeek(table.work(table.row(p)), week - table.workFrom(table.row(p))));
        }
        jobs.forEach((job, done) -> {
            int row = rows.getOrDefault(job, -1);
            minutes.add(done, inWeek(table.setUp(row), week - table.workFrom(row)));
        });
        return minutes;
    }

    private static int inWeek(int[] byWeek, int week) {
        return week < 0 || week >= byWeek.length ? 0 : byWeek[week];
    }

    /** Hundredths of stems that come of a kind itself, without the kinds within it. */
    Linear stems(int node, int week, int k) {
        Linear stems = new Linear();
        for (int p = 0; p < lots.length; p++) {
            int row = table.row(p);
            for (int b = 0; b < table.blocks(row); b++) {
                if (table.blockNode(row, b) == node && table.blockWeek(row, b) == week) {
                    stems.add(lots[p], table.stems(row)[b * table.seasons() + k]);
                }
            }
        }
        return stems;
    }

    private void bedRoom() {
        List<Bed> beds = season.allBeds();
        for (int bed = 0; bed < beds.size(); bed++) {
            long length = Rounding.halfUp(1000 * beds.get(bed).block().length());
            for (int week = 0; week < season.weeks(); week++) {
                Linear held = new Linear();
                for (int p = 0; p < lots.length; p++) {
                    int row = table.row(p);
                    if (table.bed(p) == bed && table.heldFrom(row) <= week && week < table.heldTo(row)) {
                        held.add(lots[p], table.millimetres(row));
                    }
                }
                model.addLessOrEqual(held.expression(), length);
            }
        }
    }

    private void stocks() {
        Stock stock = season.stock();
        limit(table::benchFrom, table::benchTo, table::cells, stock.bench(), -1);
        Stock.Trays trays = stock.trays();
        if (trays != null) {
            limit(table::trayFrom, table::trayTo, table::cells, trays.cells(), price(trays.buy(), A_SMALLEST_UNIT));
        }
        for (int n = 0; n < stock.nets().size(); n++) {
            Stock.Net net = stock.nets().get(n);
            int number = n;
            limit(
                    table::netFrom,
                    table::netTo,
                    row -> table.net(row) == number ? table.netMillimetres(row) : 0,
                    Rounding.halfUp(1000 * net.metres()),
                    price(net.buy(), A_MILLIMETRE));
        }
        Stock.Cover cover = stock.cover();
        if (cover != null) {
            limit(
                    table::coverFrom,
                    table::coverTo,
                    table::millimetres,
                    Rounding.halfUp(1000 * cover.metres()),
                    price(cover.buy(), A_MILLIMETRE));
        }
    }

    /** Grains for one, or −1 if none can be bought. */
    private long price(@Nullable Double money, long grains) {
        return money == null ? -1 : Rounding.halfUp(money * season.currency().smallest() * grains);
    }

    private void limit(IntUnaryOperator from, IntUnaryOperator to, IntUnaryOperator amount, long owned, long price) {
        List<Linear> weeks = new ArrayList<>();
        long most = 0;
        for (int week = 0; week < season.weeks(); week++) {
            Linear use = new Linear();
            for (int p = 0; p < lots.length; p++) {
                int row = table.row(p);
                if (from.applyAsInt(row) <= week && week < to.applyAsInt(row)) {
                    use.add(lots[p], amount.applyAsInt(row));
                }
            }
            weeks.add(use);
            most = Math.max(most, use.most());
        }
        if (price < 0) {
            weeks.forEach(use -> model.addLessOrEqual(use.expression(), owned));
        } else if (most > owned) {
            IntVar extra = model.newIntVar(0, most - owned, "extra");
            weeks.forEach(use -> model.addLessOrEqual(use.add(extra, -1).expression(), owned));
            costs.add(extra, price);
        }
    }

    private void rest() {
        long price = price(season.rotation().restBroken(), A_SMALLEST_UNIT);
        for (int p = 0; p < lots.length; p++) {
            if (price > 0 && !isStanding(table.stock(p)) && breaksRest(p)) {
                costs.add(lots[p], price);
            }
        }
    }

    private boolean breaksRest(int place) {
        String name = family(table.stock(place));
        int year = season.weekStart(table.heldFrom(table.row(place))).getYear();
        int restYears = season.families().stream()
                .filter(family -> family.name().equals(name))
                .mapToInt(Family::restYears)
                .findFirst()
                .orElse(0);
        return season.allBeds().get(table.bed(place)).history().stream()
                .filter(grown -> grown.family().equals(name) && grown.year() <= year)
                .mapToInt(BedBlock.Grown::year)
                .max()
                .stream()
                .anyMatch(last -> year - last - 1 < restYears);
    }

    /** Every lot of a place pays once as soon as any job of its family in its bed has ended before it begins. */
    private void followOn() {
        long price = price(season.rotation().followOn(), A_SMALLEST_UNIT);
        if (price <= 0) {
            return;
        }
        for (int p = 0; p < lots.length; p++) {
            String family = family(table.stock(p));
            if (family == null) {
                continue;
            }
            long most = lots[p].getDomain().max();
            IntVar following = model.newIntVar(0, most, "following " + p);
            costs.add(following, price);
            for (int q = 0; q < lots.length; q++) {
                if (table.bed(q) == table.bed(p)
                        && family.equals(family(table.stock(q)))
                        && table.heldTo(table.row(q)) <= table.heldFrom(table.row(p))) {
                    IntVar before = jobs.get(job(q));
                    if (before != null) {
                        Linear unpaid =
                                new Linear().add(lots[p], 1).add(before, most).add(following, -1);
                        model.addLessOrEqual(unpaid.expression(), most);
                    }
                }
            }
        }
    }
}
