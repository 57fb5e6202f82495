package bedwright.plan;

import bedwright.season.KindTree;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where the stems of one role go in a week: they fill the lines that ask for them in the order of what one more own
 * stem is worth there, each as far as every enclosing kind still has stems and room. On a tree of kinds (a laminar
 * family) this greedy filling brings the most that any filling could.
 *
 * <p>A role's kinds, as far as they are told apart ({@link KindCells}), are numbered from 0, the role itself first, each
 * after the one that holds it.
 * All work is done for all possible seasons at once, seasons innermost.
 */
final class Filling {
    final int role;
    /** First of the role's kinds that are told apart; the others follow. */
    final int firstNode;

    final int nodes;
    /** Ticks to cut, and to clear, a hundredth of a stem. */
    final long cutRate;

    final long clearRate;
    private final int[] parent;
    private final int[] most;
    /** Kinds of which only so many can be sold. */
    private final int[] capped;

    /** For each week the lines that ask for stems in it, in filling order. */
    private final Asked[][] asked;

    /**
     * One line in one week: everything that filling it needs.
     *
     * @param gain grains for each hundredth taken
     * @param none grains if nothing is taken
     * @param noneAfter grains of all lines after it if nothing is taken for them
     * @param missingAfter weighted hundredths missing of all lines after it if nothing is taken for them
     */
    private record Asked(
            int line, int node, int amount, long gain, long none, long weight, long noneAfter, long missingAfter) {}

    private Filling(int role, int firstNode, int[] parent, int[] most, Asked[][] asked, long cutRate, long clearRate) {
        this.role = role;
        this.firstNode = firstNode;
        this.nodes = parent.length;
        this.parent = parent;
        this.most = most;
        this.capped = IntStream.range(0, most.length)
                .filter(n -> most[n] != Integer.MAX_VALUE)
                .toArray();
        this.asked = asked;
        this.cutRate = cutRate;
        this.clearRate = clearRate;
    }

    static Filling of(Season season, KindTree kinds, KindCells cells, int role, Demand demand, long ownRate) {
        int first = 0;
        while (kinds.role(cells.node(first)) != role) {
            first++;
        }
        int end = cells.endWithin(first);
        int[] parent = new int[end - first];
        int[] most = new int[end - first];
        for (int n = 0; n < parent.length; n++) {
            parent[n] = cells.parent(first + n) < 0 ? -1 : cells.parent(first + n) - first;
            most[n] = (int) Math.min(kinds.mostAWeek(cells.node(first + n)), Integer.MAX_VALUE);
        }
        long cutRate = Grains.cuttingRate(season.roles().get(role).cutting());
        long clearRate = Grains.cuttingRate(season.roles().get(role).clearing());
        List<DemandLine> order = demand.fillingOrder(role, (cutRate - clearRate) * ownRate);
        Asked[][] asked = new Asked[season.weeks()][];
        for (int w = 0; w < asked.length; w++) {
            List<DemandLine> inWeek = new ArrayList<>();
            for (DemandLine line : order) {
                if (line.asked()[w] > 0) {
                    inWeek.add(line);
                }
            }
            asked[w] = asked(inWeek, cells, first, w);
        }
        return new Filling(role, first, parent, most, asked, cutRate, clearRate);
    }

    private static Asked[] asked(List<DemandLine> inWeek, KindCells cells, int first, int week) {
        Asked[] asked = new Asked[inWeek.size()];
        long noneAfter = 0;
        long missingAfter = 0;
        for (int i = asked.length - 1; i >= 0; i--) {
            DemandLine line = inWeek.get(i);
            boolean paidInFull = line.promise() == DemandLine.Promised.BOUGHT_IN;
            int amount = (int) Math.min(line.asked()[week], Integer.MAX_VALUE);
            long gain = paidInFull ? line.lack() : line.price() + line.lack();
            long none = (paidInFull ? line.price() - line.lack() : -line.lack()) * amount;
            asked[i] = new Asked(
                    line.index(),
                    cells.of(line.node()) - first,
                    amount,
                    gain,
                    none,
                    line.weight(),
                    noneAfter,
                    missingAfter);
            noneAfter += none;
            missingAfter += (long) line.weight() * amount;
        }
        return asked;
    }

    /** What filling one week gives, for each possible season. Reused: one a thread. */
    static final class Result {
        /** Takings less shortage and buy-in, grains. */
        final long[] money;
        /** Stems that go somewhere, hundredths. */
        final int[] served;
        /** Stems that come besides, hundredths. */
        final int[] came;
        /** Weighted stems missing that must be ours, hundredths, over all seasons. */
        long missing;

        private final int[] taken;
        private int[] room;

        Result(int seasons) {
            money = new long[seasons];
            served = new int[seasons];
            came = new int[seasons];
            taken = new int[seasons];
            room = new int[0];
        }

        private int[] room(int size) {
            if (room.length < size) {
                room = new int[size];
            }
            return room;
        }
    }

    /**
     * Fills a week.
     *
     * @param week the week
     * @param sums what comes of each kind with all within it, as {@link #add} keeps it: kind n of this role in season k
     *     at offset + n × K + k
     * @param change stems that come besides, of each kind itself, laid out likewise
     * @param isTouched for each kind from {@code firstTouched} on, whether anything comes besides
     */
    void fill(int week, int[] sums, int[] change, int offset, boolean[] isTouched, int firstTouched, Result result) {
        int seasons = result.money.length;
        int[] room = result.room(nodes * seasons);
        long[] money = result.money;
        System.arraycopy(sums, offset, room, 0, nodes * seasons);
        Arrays.fill(result.came, 0);
        for (int n = nodes - 1; n >= 0; n--) {
            if (isTouched[firstTouched + n]) {
                for (int k = 0; k < seasons; k++) {
                    result.came[k] += change[offset + n * seasons + k];
                }
                add(room, 0, change, offset + n * seasons, n, result.taken);
            }
        }
        keepToMost(room, seasons);
        Arrays.fill(money, 0);
        Arrays.fill(result.served, 0);
        result.missing = 0;
        Asked[] lines = asked[week];
        for (int i = 0; i < lines.length; i++) {
            if (takeFor(lines[i], room, result) == 0) {
                // The role has nothing left in any season: what comes after goes without.
                Asked last = lines[i];
                for (int k = 0; k < seasons; k++) {
                    money[k] += last.noneAfter;
                }
                result.missing += last.missingAfter * seasons;
                return;
            }
        }
    }

    /**
     * Takes for a line, in each season, as much as it asks for and every enclosing kind still has, and counts what that
     * brings.
     *
     * @return 0 if the role has nothing left in any season
     */
    private int takeFor(Asked line, int[] room, Result result) {
        int[] served = result.served;
        long[] money = result.money;
        int seasons = money.length;
        int amount = line.amount;
        long gain = line.gain;
        long none = line.none;
        long taken = 0;
        int left = 0;
        int at = line.node * seasons;
        int above = parent[line.node];
        if (above < 0) {
            for (int k = 0; k < seasons; k++) {
                int take = Math.min(amount, room[k]);
                int rest = room[k] - take;
                room[k] = rest;
                left |= rest;
                served[k] += take;
                taken += take;
                money[k] += none + gain * take;
            }
        } else if (above == 0) {
            for (int k = 0; k < seasons; k++) {
                int take = Math.min(amount, Math.min(room[at + k], room[k]));
                room[at + k] -= take;
                int rest = room[k] - take;
                room[k] = rest;
                left |= rest;
                served[k] += take;
                taken += take;
                money[k] += none + gain * take;
            }
        } else {
            take(line, room, result.taken);
            for (int k = 0; k < seasons; k++) {
                int take = result.taken[k];
                left |= room[k];
                served[k] += take;
                taken += take;
                money[k] += none + gain * take;
            }
        }
        result.missing += line.weight * ((long) amount * seasons - taken);
        return left;
    }

    /** Takes for a line, in each season, as much as it asks for and every enclosing kind still has. */
    private void take(Asked line, int[] room, int[] taken) {
        int seasons = taken.length;
        Arrays.fill(taken, line.amount);
        for (int n = line.node; n >= 0; n = parent[n]) {
            int at = n * seasons;
            for (int k = 0; k < seasons; k++) {
                taken[k] = Math.min(taken[k], room[at + k]);
            }
        }
        for (int n = line.node; n >= 0; n = parent[n]) {
            int at = n * seasons;
            for (int k = 0; k < seasons; k++) {
                room[at + k] -= taken[k];
            }
        }
    }

    /**
     * Adds stems of a kind to the sums of all that hold it; a kind of which only so many can be sold lets no more through.
     *
     * @param sums sums of this role's kinds from {@code offset} on
     * @param more stems of kind n by season from {@code from} on
     * @param scratch for use here, one entry a season
     */
    void add(int[] sums, int offset, int[] more, int from, int n, int[] scratch) {
        int seasons = scratch.length;
        System.arraycopy(more, from, scratch, 0, seasons);
        for (int above = n; above >= 0; above = parent[above]) {
            int at = offset + above * seasons;
            int cap = most[above];
            if (cap == Integer.MAX_VALUE) {
                for (int k = 0; k < seasons; k++) {
                    sums[at + k] += scratch[k];
                }
            } else {
                for (int k = 0; k < seasons; k++) {
                    int before = sums[at + k];
                    int after = before + scratch[k];
                    sums[at + k] = after;
                    scratch[k] = Math.min(after, cap) - Math.min(before, cap);
                }
            }
        }
    }

    private void keepToMost(int[] room, int seasons) {
        for (int n : capped) {
            int cap = most[n];
            for (int k = n * seasons; k < (n + 1) * seasons; k++) {
                room[k] = Math.min(room[k], cap);
            }
        }
    }

    /** What each line gets, for an outcome: {@code served[line][week]} is set for the lines of this week. */
    void fillByLine(int week, int[] sums, int offset, int seasons, int[][][] served) {
        int[] room = Arrays.copyOfRange(sums, offset, offset + nodes * seasons);
        keepToMost(room, seasons);
        for (Asked line : asked[week]) {
            take(line, room, served[line.line][week]);
        }
    }
}
