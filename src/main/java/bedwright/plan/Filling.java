package bedwright.plan;

import bedwright.season.KindTree;
import bedwright.season.Season;
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
 * Several weeks are filled at once, for all possible seasons, seasons innermost: the lines stand in the same order in
 * every week, so each inner loop runs over weeks × seasons, long enough for the machine's wide instructions.
 */
final class Filling {
    final int role;
    /** First of the role's kinds that are told apart; the others follow. */
    final int firstNode;

    final int nodes;
    /** Ticks to cut, and to clear, a hundredth of a stem. */
    final long cutRate;

    final long clearRate;
    /** Of this role's kinds, the one above, or −1 for the role. */
    final int[] parent;
    /** Of this role's kinds, how much can be sold a week, hundredths; {@link Integer#MAX_VALUE} if nothing is said. */
    final int[] most;
    /** Kinds of which only so many can be sold. */
    private final int[] capped;

    /** The lines that are ever served, in filling order. */
    final Line[] lines;
    /** What all lines of a week bring if nothing is taken for them, grains: week w in season k at w × K + k. */
    final double[] none;

    private final int seasons;
    private final int weeks;

    /**
     * One line: everything that filling it needs.
     *
     * @param line its number
     * @param node its kind, of this role's kinds
     * @param amount hundredths asked for: week w in season k at w × K + k
     * @param gain grains for each hundredth taken
     * @param weight weight of a hundredth missing
     * @param asksBefore in how many weeks before each it asks for any
     */
    record Line(int line, int node, int[] amount, long gain, long weight, int[] asksBefore) {
        boolean asksIn(int first, int end) {
            return asksBefore[first] < asksBefore[end];
        }
    }

    private Filling(
            int role,
            int firstNode,
            int[] parent,
            int[] most,
            Line[] lines,
            double[] none,
            int weeks,
            long cutRate,
            long clearRate) {
        this.role = role;
        this.firstNode = firstNode;
        this.nodes = parent.length;
        this.parent = parent;
        this.most = most;
        this.capped = IntStream.range(0, most.length)
                .filter(n -> most[n] != Integer.MAX_VALUE)
                .toArray();
        this.lines = lines;
        this.none = none;
        this.weeks = weeks;
        this.seasons = none.length / weeks;
        this.cutRate = cutRate;
        this.clearRate = clearRate;
    }

    static Filling of(
            Season season, KindTree kinds, KindCells cells, int role, Demand demand, long ownRate, int seasons) {
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
        int weeks = season.weeks();
        double[] none = new double[weeks * seasons];
        Line[] lines = new Line[order.size()];
        for (int i = 0; i < lines.length; i++) {
            DemandLine line = order.get(i);
            boolean paidInFull = line.promise() == DemandLine.Promised.BOUGHT_IN;
            int[] amount = new int[none.length];
            for (int at = 0; at < none.length; at++) {
                amount[at] = (int) Math.min(line.asked()[at / seasons], Integer.MAX_VALUE);
                none[at] += (double) (paidInFull ? line.price() - line.lack() : -line.lack()) * amount[at];
            }
            long gain = paidInFull ? line.lack() : line.price() + line.lack();
            int[] before = new int[weeks + 1];
            for (int w = 0; w < weeks; w++) {
                before[w + 1] = before[w] + (line.asked()[w] > 0 ? 1 : 0);
            }
            lines[i] = new Line(line.index(), cells.of(line.node()) - first, amount, gain, line.weight(), before);
        }
        return new Filling(role, first, parent, most, lines, none, weeks, cutRate, clearRate);
    }

    /**
     * What filling a run of weeks gives: week t of them in season k at t × K + k. Reused: one a thread.
     *
     * <p>Money is counted in doubles for the machine's sake: all of it is whole and far below 2⁵³, so nothing is lost.
     */
    static final class Result {
        /** Takings less shortage and buy-in, grains. */
        final double[] money;
        /** Stems that go somewhere, hundredths. */
        final int[] served;
        /** Stems that come besides, hundredths. */
        final int[] came;
        /** Weighted stems missing that must be ours, hundredths, over all seasons, by week. */
        final long[] missing;

        private final int[] taken;
        private int[][] room;

        Result(int weeks, int seasons) {
            money = new double[weeks * seasons];
            served = new int[money.length];
            came = new int[money.length];
            missing = new long[weeks];
            taken = new int[money.length];
            room = new int[0][];
        }

        /** An array for each kind: loops over several arrays from 0 on are what the compiler makes wide. */
        private int[][] room(int nodes) {
            if (room.length < nodes) {
                room = new int[nodes][money.length];
            }
            return room;
        }
    }

    /**
     * Fills a run of weeks.
     *
     * @param first the first week
     * @param end end of the weeks
     * @param sums what comes of each kind with all within it, as {@link #add} keeps it: kind c of all told apart in week w
     *     and season k at (c × weeks + w) × K + k
     * @param change stems that come besides, of each kind itself, laid out likewise
     * @param isTouched for kind c in week w, at c × weeks + w, whether anything comes besides
     */
    void fill(int first, int end, int[] sums, int[] change, boolean[] isTouched, Result result) {
        int wide = (end - first) * seasons;
        int[][] room = result.room(nodes);
        for (int n = 0; n < nodes; n++) {
            System.arraycopy(sums, ((firstNode + n) * weeks + first) * seasons, room[n], 0, wide);
        }
        System.arraycopy(none, first * seasons, result.money, 0, wide);
        Arrays.fill(result.came, 0, wide, 0);
        Arrays.fill(result.served, 0, wide, 0);
        Arrays.fill(result.missing, 0, end - first, 0);
        for (int n = nodes - 1; n >= 0; n--) {
            int at = (firstNode + n) * weeks + first;
            if (isAnyOf(isTouched, at, at + end - first)) {
                int[] more = result.taken;
                System.arraycopy(change, at * seasons, more, 0, wide);
                plus(result.came, more, wide);
                for (int above = n; above >= 0; above = parent[above]) {
                    if (most[above] == Integer.MAX_VALUE) {
                        plus(room[above], more, wide);
                    } else {
                        plusToMost(room[above], more, most[above], wide);
                    }
                }
            }
        }
        for (int n : capped) {
            keepTo(room[n], most[n], wide);
        }
        for (Line line : lines) {
            if (line.asksIn(first, end)) {
                take(line, first, end, room, result);
            }
        }
    }

    private static void plus(int[] sum, int[] more, int wide) {
        for (int i = 0; i < wide; i++) {
            sum[i] += more[i];
        }
    }

    private static void minus(int[] sum, int[] less, int wide) {
        for (int i = 0; i < wide; i++) {
            sum[i] -= less[i];
        }
    }

    private static void least(int[] values, int[] others, int wide) {
        for (int i = 0; i < wide; i++) {
            values[i] = Math.min(values[i], others[i]);
        }
    }

    private static void keepTo(int[] values, int most, int wide) {
        for (int i = 0; i < wide; i++) {
            values[i] = Math.min(values[i], most);
        }
    }

    /** Adds to a sum of which only so much gets through; leaves in {@code more} what more gets through. */
    private static void plusToMost(int[] sum, int[] more, int most, int wide) {
        for (int i = 0; i < wide; i++) {
            int before = sum[i];
            int after = before + more[i];
            sum[i] = after;
            more[i] = Math.min(after, most) - Math.min(before, most);
        }
    }

    private static void earn(double[] money, int[] taken, double gain, int wide) {
        for (int i = 0; i < wide; i++) {
            money[i] += gain * taken[i];
        }
    }

    private static boolean isAnyOf(boolean[] flags, int from, int to) {
        for (int i = from; i < to; i++) {
            if (flags[i]) {
                return true;
            }
        }
        return false;
    }

    /**
     * What a hundredth more or less of each kind brings in a run of weeks, work at its rates included. What filling brings
     * is concave in what comes, and these prices are the multipliers of the rooms that are used up; so no change of what
     * comes brings more than they say, as long as the rates stay.
     *
     * @param sums as for {@link #fill}
     * @param rates grains a tick of work: week w in season k at w × K + k
     * @param missing grains for a weighted hundredth that must be ours
     * @param prices set: laid out like the sums
     * @param tight for each kind room for all weeks and seasons to work in
     */
    void price(
            int first,
            int end,
            int[] sums,
            double[] rates,
            double missing,
            double[] prices,
            double[][] tight,
            Result result) {
        int wide = (end - first) * seasons;
        int from = first * seasons;
        int[][] room = result.room(nodes);
        for (int n = 0; n < nodes; n++) {
            System.arraycopy(sums, (firstNode + n) * weeks * seasons + from, room[n], 0, wide);
            Arrays.fill(tight[n], 0, wide, 0);
        }
        for (int n : capped) {
            keepTo(room[n], most[n], wide);
        }
        int[] taken = result.taken;
        for (Line line : lines) {
            if (line.asksIn(first, end)) {
                System.arraycopy(line.amount, from, taken, 0, wide);
                takeWide(line.node, room, wide, taken);
                for (int n = line.node; n >= 0; n = parent[n]) {
                    noteTight(line, room[n], from, rates, missing, tight[n], wide);
                }
            }
        }
        for (int n = 0; n < nodes; n++) {
            int at = (firstNode + n) * weeks * seasons + from;
            int above = parent[n] < 0 ? -1 : (firstNode + parent[n]) * weeks * seasons + from;
            for (int i = 0; i < wide; i++) {
                double clearing = clearRate * rates[from + i];
                double most = above < 0 ? 0 : tight[parent[n]][i];
                double within = above < 0 ? 0 : prices[above + i] + clearing;
                double more = Math.max(0, tight[n][i] - most);
                tight[n][i] = most + more;
                prices[at + i] = (sums[at + i] >= this.most[n] ? 0 : within + more) - clearing;
            }
        }
    }

    /** Where nothing is left for a line in a kind that holds it, and was before it, the kind is worth what the line brings. */
    private void noteTight(Line line, int[] room, int from, double[] rates, double missing, double[] tight, int wide) {
        double gain = line.gain + missing * line.weight;
        double work = cutRate - clearRate;
        for (int i = 0; i < wide; i++) {
            if (room[i] == 0 && tight[i] == 0 && line.amount[from + i] > 0) {
                tight[i] = Math.max(1, gain - work * rates[from + i]);
            }
        }
    }

    /** Takes for a line as much as it asks for and every enclosing kind still has, and counts what that brings. */
    private void take(Line line, int first, int end, int[][] room, Result result) {
        int wide = (end - first) * seasons;
        int[] taken = result.taken;
        System.arraycopy(line.amount, first * seasons, taken, 0, wide);
        takeWide(line.node, room, wide, taken);
        plus(result.served, taken, wide);
        earn(result.money, taken, line.gain, wide);
        for (int w = first; line.weight > 0 && w < end; w++) {
            long missing = (long) line.amount[w * seasons] * seasons;
            for (int i = (w - first) * seasons; i < (w - first + 1) * seasons; i++) {
                missing -= taken[i];
            }
            result.missing[w - first] += line.weight * missing;
        }
    }

    /** Keeps what is to be taken to what every enclosing kind has, and takes it from them. */
    private void takeWide(int node, int[][] room, int wide, int[] taken) {
        for (int n = node; n >= 0; n = parent[n]) {
            least(taken, room[n], wide);
        }
        for (int n = node; n >= 0; n = parent[n]) {
            minus(room[n], taken, wide);
        }
    }

    /**
     * Adds stems of a kind in one week to the sums of all that hold it; a kind of which only so many can be sold lets no
     * more through.
     *
     * @param sums sums of all kinds told apart, laid out as in {@link #fill}
     * @param change stems of each kind itself, laid out likewise
     * @param n which of this role's kinds
     */
    void add(int[] sums, int[] change, int n, int week, Result result) {
        int[] more = result.taken;
        System.arraycopy(change, ((firstNode + n) * weeks + week) * seasons, more, 0, seasons);
        for (int above = n; above >= 0; above = parent[above]) {
            int at = ((firstNode + above) * weeks + week) * seasons;
            int cap = most[above];
            for (int k = 0; k < seasons; k++) {
                int before = sums[at + k];
                int after = before + more[k];
                sums[at + k] = after;
                more[k] = Math.min(after, cap) - Math.min(before, cap);
            }
        }
    }

    /** What each line gets in a week, for an outcome: {@code served[line][week]} is set for the lines of this role. */
    void fillByLine(int week, int[] sums, int[][][] served) {
        int[][] room = new int[nodes][seasons];
        for (int n = 0; n < nodes; n++) {
            System.arraycopy(sums, ((firstNode + n) * weeks + week) * seasons, room[n], 0, seasons);
            keepTo(room[n], most[n], seasons);
        }
        for (Line line : lines) {
            int[] taken = served[line.line][week];
            System.arraycopy(line.amount, week * seasons, taken, 0, seasons);
            takeWide(line.node, room, seasons, taken);
        }
    }
}
