package bedwright.plan;

import bedwright.season.KindTree;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where the stems of one role go in a week: they fill the lines that ask for them in the order of what one more own
 * stem is worth there, each as far as every enclosing kind still has stems and room. On a tree of kinds (a laminar
 * family) this greedy filling brings the most that any filling could.
 *
 * <p>A role's kinds are numbered from 0 in the order of the season's tree, so a kind comes after the one that holds it.
 * All work is done for all possible seasons at once, seasons innermost.
 */
final class Filling {
    final int role;
    /** First node of the role in the season's tree; its kinds follow. */
    final int firstNode;

    final int nodes;
    /** Ticks to cut, and to clear, a hundredth of a stem. */
    final long cutRate;

    final long clearRate;
    private final int[] parent;
    private final int[] most;
    /** For each week the lines that ask for stems in it, in filling order. */
    private final Asked[][] asked;

    /** One line in one week: everything that filling it needs. */
    private record Asked(int line, int node, int amount, long price, long lack, long weight, boolean paidInFull) {}

    private Filling(int role, int firstNode, int[] parent, int[] most, Asked[][] asked, long cutRate, long clearRate) {
        this.role = role;
        this.firstNode = firstNode;
        this.nodes = parent.length;
        this.parent = parent;
        this.most = most;
        this.asked = asked;
        this.cutRate = cutRate;
        this.clearRate = clearRate;
    }

    static Filling of(Season season, KindTree kinds, int role, Demand demand, long ownRate) {
        int first = 0;
        while (kinds.role(first) != role) {
            first++;
        }
        int end = first;
        while (end < kinds.size() && kinds.role(end) == role) {
            end++;
        }
        int[] parent = new int[end - first];
        int[] most = new int[end - first];
        for (int n = 0; n < parent.length; n++) {
            parent[n] = kinds.parent(first + n) - first;
            most[n] = (int) Math.min(kinds.mostAWeek(first + n), Integer.MAX_VALUE);
        }
        parent[0] = -1;
        long cutRate = Grains.cuttingRate(season.roles().get(role).cutting());
        long clearRate = Grains.cuttingRate(season.roles().get(role).clearing());
        List<DemandLine> order = demand.fillingOrder(role, (cutRate - clearRate) * ownRate);
        Asked[][] asked = new Asked[season.weeks()][];
        for (int w = 0; w < asked.length; w++) {
            List<Asked> inWeek = new ArrayList<>();
            for (DemandLine line : order) {
                if (line.asked()[w] > 0) {
                    inWeek.add(asked(line, first, w));
                }
            }
            asked[w] = inWeek.toArray(Asked[]::new);
        }
        return new Filling(role, first, parent, most, asked, cutRate, clearRate);
    }

    private static Asked asked(DemandLine line, int first, int week) {
        boolean paidInFull = line.promise() == DemandLine.Promised.BOUGHT_IN;
        int amount = (int) Math.min(line.asked()[week], Integer.MAX_VALUE);
        return new Asked(
                line.index(), line.node() - first, amount, line.price(), line.lack(), line.weight(), paidInFull);
    }

    /** What filling one week gives, for each possible season. Reused: one a thread. */
    static final class Result {
        /** Takings less shortage and buy-in, grains. */
        final long[] money;
        /** Stems that go somewhere, hundredths. */
        final long[] served;
        /** Stems that come, hundredths. */
        final long[] came;
        /** Weighted stems missing that must be ours, hundredths, over all seasons. */
        long missing;

        private int[] room;

        Result(int seasons) {
            money = new long[seasons];
            served = new long[seasons];
            came = new long[seasons];
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
     * @param stems stems that come of each kind itself: kind n of this role in season k at offset + n × K + k
     * @param added stems that come besides, laid out likewise from the same offset
     */
    void fill(int week, int[] stems, int[] added, int offset, Result result) {
        int seasons = result.money.length;
        int[] room = result.room(nodes * seasons);
        long[] money = result.money;
        long[] served = result.served;
        long[] came = result.came;
        Arrays.fill(money, 0);
        Arrays.fill(served, 0);
        result.missing = 0;
        roomFromStems(stems, added, offset, room, came);
        for (Asked line : asked[week]) {
            int amount = line.amount;
            long price = line.price;
            long gain = line.paidInFull ? line.lack : price + line.lack;
            long none = line.paidInFull ? (price - line.lack) * amount : -line.lack * amount;
            long missing = 0;
            int node = line.node;
            int at = node * seasons;
            int parent1 = parent[node];
            if (parent1 < 0) {
                for (int k = 0; k < seasons; k++) {
                    int taken = Math.min(amount, room[at + k]);
                    room[at + k] -= taken;
                    served[k] += taken;
                    missing += amount - taken;
                    money[k] += none + gain * taken;
                }
            } else if (parent[parent1] < 0) {
                int up = parent1 * seasons;
                for (int k = 0; k < seasons; k++) {
                    int taken = Math.min(amount, Math.min(room[at + k], room[up + k]));
                    room[at + k] -= taken;
                    room[up + k] -= taken;
                    served[k] += taken;
                    missing += amount - taken;
                    money[k] += none + gain * taken;
                }
            } else {
                for (int k = 0; k < seasons; k++) {
                    int taken = takeAlongThePath(node, amount, room, k, seasons);
                    served[k] += taken;
                    missing += amount - taken;
                    money[k] += none + gain * taken;
                }
            }
            result.missing += line.weight * missing;
        }
    }

    private int takeAlongThePath(int node, int amount, int[] room, int k, int seasons) {
        int taken = amount;
        for (int n = node; n >= 0; n = parent[n]) {
            taken = Math.min(taken, room[n * seasons + k]);
        }
        for (int n = node; n >= 0; n = parent[n]) {
            room[n * seasons + k] -= taken;
        }
        return taken;
    }

    /** Room of each kind: its own stems and the room of the kinds within it, at most what can be sold of it. */
    private void roomFromStems(int[] stems, int[] added, int offset, int[] room, long[] came) {
        int seasons = came.length;
        int size = nodes * seasons;
        Arrays.fill(came, 0);
        for (int i = 0; i < size; i++) {
            room[i] = stems[offset + i] + added[offset + i];
        }
        for (int n = nodes - 1; n >= 0; n--) {
            int at = n * seasons;
            for (int k = 0; k < seasons; k++) {
                came[k] += stems[offset + at + k] + added[offset + at + k];
            }
            int cap = most[n];
            if (cap != Integer.MAX_VALUE) {
                for (int k = 0; k < seasons; k++) {
                    room[at + k] = Math.min(room[at + k], cap);
                }
            }
            if (n > 0) {
                int up = parent[n] * seasons;
                for (int k = 0; k < seasons; k++) {
                    room[up + k] += room[at + k];
                }
            }
        }
    }

    /** What each line gets, for an outcome: {@code served[line][k]} is set for the lines of this week. */
    void fillByLine(int week, int[] stems, int[] nothing, int offset, int seasons, int[][][] servedByLine) {
        Result result = new Result(seasons);
        int[] room = result.room(nodes * seasons);
        roomFromStems(stems, nothing, offset, room, result.came);
        for (Asked line : asked[week]) {
            for (int k = 0; k < seasons; k++) {
                servedByLine[line.line][week][k] = takeAlongThePath(line.node, line.amount, room, k, seasons);
            }
        }
    }
}
