package bedwright.plan;

import bedwright.growth.ProspectTable;
import bedwright.season.KindTree;
import bedwright.season.Role;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Stems of a plan and where they go, the plain way: kept by season, week and kind; a role's week that changed is filled
 * again, one season after the other.
 */
final class NaiveStems {
    private final PlanFacts facts;
    private final ProspectTable table;
    private final KindTree kinds;
    private final int seasons;
    private final int roles;
    /** Stems of each kind itself: season, week, node of the tree. */
    private final int[][][] stems;
    /** What filling gave: season, week, role. */
    private final Filled[][][] filled;

    private final List<List<DemandLine>> linesOfRole = new ArrayList<>();
    private final List<Rates> ratesOfRole = new ArrayList<>();
    private final BitSet touched = new BitSet();
    /** Money of each season from stems, grains. */
    final long[] money;
    /** Weighted stems missing that must be ours, hundredths. */
    long missing;

    /** What one role's week brings in one season: money in grains, work in ticks, missing stems weighted. */
    record Filled(long money, long cutting, long clearing, long missing) {
        static final Filled NOTHING = new Filled(0, 0, 0, 0);
    }

    private record Rates(long cut, long clear) {}

    NaiveStems(PlanFacts facts) {
        this.facts = facts;
        this.table = facts.table;
        this.kinds = facts.kinds;
        this.seasons = facts.seasonCount;
        List<Role> all = facts.season.roles();
        this.roles = all.size();
        this.stems = new int[seasons][facts.weeks][kinds.size()];
        this.filled = new Filled[seasons][facts.weeks][roles];
        this.money = new long[seasons];
        for (Filled[][] byWeek : filled) {
            for (Filled[] byRole : byWeek) {
                Arrays.fill(byRole, Filled.NOTHING);
            }
        }
        for (int r = 0; r < roles; r++) {
            Rates rates = new Rates(
                    Grains.cuttingRate(all.get(r).cutting()),
                    Grains.cuttingRate(all.get(r).clearing()));
            ratesOfRole.add(rates);
            linesOfRole.add(inOrder(r, (rates.cut - rates.clear) * facts.ownRate));
        }
        touched.set(0, facts.weeks * roles);
    }

    private List<DemandLine> inOrder(int role, long leastWorth) {
        Comparator<DemandLine> byWeight = (a, b) -> Integer.compare(b.weight(), a.weight());
        Comparator<DemandLine> byWorth = (a, b) -> Long.compare(worth(b), worth(a));
        return facts.demand.stream()
                .filter(line -> line.role() == role)
                .filter(line -> line.promise() != DemandLine.Promised.NOTHING || line.price() > leastWorth)
                .sorted(byWeight.thenComparing(byWorth).thenComparingInt(DemandLine::index))
                .toList();
    }

    private static long worth(DemandLine line) {
        return line.promise() == DemandLine.Promised.BOUGHT_IN ? line.lack() : line.price() + line.lack();
    }

    /** Adds (sign 1) or takes away (sign −1) what a place gives. */
    void post(int place, int sign) {
        int row = table.row(place);
        int[] gives = table.stems(row);
        for (int b = 0; b < table.blocks(row); b++) {
            int week = table.blockWeek(row, b);
            int node = table.blockNode(row, b);
            for (int k = 0; k < seasons; k++) {
                stems[k][week][node] += sign * gives[b * seasons + k];
            }
            touched.set(week * roles + kinds.role(node));
        }
    }

    /** Fills what changed, and tells the hours which weeks did. */
    void refill(NaiveHours hours) {
        for (int cell = touched.nextSetBit(0); cell >= 0; cell = touched.nextSetBit(cell + 1)) {
            int week = cell / roles;
            int role = cell % roles;
            for (int k = 0; k < seasons; k++) {
                Filled before = filled[k][week][role];
                Filled after = fill(k, week, role);
                filled[k][week][role] = after;
                money[k] += after.money - before.money;
                missing += after.missing - before.missing;
                hours.cut(k, week, after.cutting - before.cutting, after.clearing - before.clearing);
            }
        }
        touched.clear();
    }

    private Filled fill(int k, int week, int role) {
        int[] own = stems[k][week];
        long[] room = new long[own.length];
        long came = 0;
        for (int n = own.length - 1; n >= 0; n--) {
            if (kinds.role(n) == role) {
                came += own[n];
                room[n] = Math.min(room[n] + own[n], kinds.mostAWeek(n));
                int parent = kinds.parent(n);
                if (parent >= 0) {
                    room[parent] += room[n];
                }
            }
        }
        long brings = 0;
        long served = 0;
        long lacking = 0;
        for (DemandLine line : linesOfRole.get(role)) {
            long asked = line.asked()[week];
            if (asked == 0) {
                continue;
            }
            long taken = asked;
            for (int n = line.node(); n >= 0; n = kinds.parent(n)) {
                taken = Math.min(taken, room[n]);
            }
            for (int n = line.node(); n >= 0; n = kinds.parent(n)) {
                room[n] -= taken;
            }
            served += taken;
            boolean paidInFull = line.promise() == DemandLine.Promised.BOUGHT_IN;
            brings += line.price() * (paidInFull ? asked : taken) - line.lack() * (asked - taken);
            lacking += line.weight() * (asked - taken);
        }
        Rates rates = ratesOfRole.get(role);
        return new Filled(brings, rates.cut * served, rates.clear * (came - served), lacking);
    }
}
