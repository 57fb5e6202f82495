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
     * @param asked hundredths asked for, by week
     * @param gain grains for each hundredth taken
     * @param weight weight of a hundredth missing
     * @param asksBefore in how many weeks before each it asks for any
     */
    record Line(int line, int node, int[] asked, long gain, long weight, int[] asksBefore) {
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
            int[] asked = new int[weeks];
            for (int w = 0; w < weeks; w++) {
                asked[w] = (int) Math.min(line.asked()[w], Integer.MAX_VALUE);
            }
            for (int at = 0; at < none.length; at++) {
                none[at] += (double) (paidInFull ? line.price() - line.lack() : -line.lack()) * asked[at / seasons];
            }
            long gain = paidInFull ? line.lack() : line.price() + line.lack();
            int[] before = new int[weeks + 1];
            for (int w = 0; w < weeks; w++) {
                before[w + 1] = before[w] + (line.asked()[w] > 0 ? 1 : 0);
            }
            lines[i] = new Line(line.index(), cells.of(line.node()) - first, asked, gain, line.weight(), before);
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
        private final int[] asked;
        private int[][] room;
        private int[][] tight = new int[0][];
        private double[][] worth = new double[0][];
        private double[][] price = new double[0][];
        private final double[] nothing;
        private double[] gains = new double[0];
        /** Of a role's kinds, those that are asked for in the weeks, or of which only so many can be sold, and what holds them. */
        private boolean[] isAsked = new boolean[0];

        Result(int weeks, int seasons) {
            money = new double[weeks * seasons];
            served = new int[money.length];
            came = new int[money.length];
            missing = new long[weeks];
            taken = new int[money.length];
            asked = new int[money.length];
            nothing = new double[money.length];
            room = new int[0][];
        }

        /** An array for each kind: loops over several arrays from 0 on are what the compiler makes wide. */
        private int[][] room(int nodes) {
            if (room.length < nodes) {
                room = new int[nodes][money.length];
                isAsked = new boolean[nodes];
            }
            return room;
        }

        /** Makes room for what is noted of so many kinds and lines. */
        private void makeTight(int nodes, int lines) {
            if (tight.length < nodes) {
                tight = new int[nodes][money.length];
                worth = new double[nodes][money.length];
                price = new double[nodes][money.length];
            }
            if (gains.length <= lines) {
                gains = new double[lines + 1];
            }
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
        boolean[] isAsked = result.isAsked;
        noteAsked(first, end, isAsked);
        for (int n = 0; n < nodes; n++) {
            if (isAsked[n]) {
                System.arraycopy(sums, at(n, first * seasons), room[n], 0, wide);
            }
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
                        if (isAsked[above]) {
                            plus(room[above], more, wide);
                        }
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
     * What a hundredth more or less of a kind brings in a run of weeks, work at its rates included. What filling brings
     * is concave in what comes, and these prices are the multipliers of the rooms that are used up; so no change of what
     * comes brings more than they say, as long as the rates stay.
     *
     * @param sums as for {@link #fill}
     * @param rates grains a tick of work: week w in season k at w × K + k
     * @param missing grains for a weighted hundredth that must be ours
     * @param of the kinds that are to be priced, of this role's
     * @param prices set for them: laid out like the sums
     */
    void price(
            int first, int end, int[] sums, double[] rates, double missing, int[] of, float[] prices, Result result) {
        int wide = (end - first) * seasons;
        int from = first * seasons;
        noteTight(first, end, sums, result);
        double[] gains = result.gains;
        for (int l = 0; l < lines.length; l++) {
            gains[l] = lines[l].gain + missing * lines[l].weight;
        }
        gains[lines.length] = Double.NEGATIVE_INFINITY;
        for (int n = 0; n < nodes; n++) {
            if (result.isAsked[n]) {
                priceAsked(n, from, wide, rates, result);
                priceFull(n, at(n, from), wide, sums, result);
            }
        }
        for (int n : of) {
            int asked = n;
            while (asked >= 0 && !result.isAsked[asked]) {
                // Worth what the kind that holds it is: nothing asks for it alone.
                asked = parent[asked];
            }
            payClearing(asked < 0 ? result.nothing : result.price[asked], rates, from, prices, at(n, from), wide);
        }
    }

    /** Where the figures of one of this role's kinds stand in what is laid out like the sums. */
    private int at(int n, int from) {
        return (firstNode + n) * weeks * seasons + from;
    }

    /** What a kind of which there is too little brings more than the kind that holds it; clearing not counted. */
    private void priceAsked(int n, int from, int wide, double[] rates, Result result) {
        double[] gains = result.gains;
        int[] tight = result.tight[n];
        double[] worth = result.worth[n];
        double work = cutRate - clearRate;
        for (int i = 0; i < wide; i++) {
            worth[i] = Math.max(0, gains[tight[i]] - work * rates[from + i]);
        }
        if (parent[n] < 0) {
            System.arraycopy(worth, 0, result.price[n], 0, wide);
        } else {
            addWithin(worth, result.worth[parent[n]], result.price[n], result.price[parent[n]], wide);
        }
    }

    /** What is worth more than the kind that holds it is so by the difference. */
    private static void addWithin(double[] worth, double[] above, double[] price, double[] up, int wide) {
        for (int i = 0; i < wide; i++) {
            double most = Math.max(worth[i], above[i]);
            price[i] = up[i] + most - above[i];
            worth[i] = most;
        }
    }

    /** Of a kind of which no more can be sold, more brings nothing. */
    private void priceFull(int n, int at, int wide, int[] sums, Result result) {
        double[] price = result.price[n];
        for (int i = 0; most[n] != Integer.MAX_VALUE && i < wide; i++) {
            price[i] = sums[at + i] >= most[n] ? 0 : price[i];
        }
    }

    private void payClearing(double[] price, double[] rates, int from, float[] prices, int at, int wide) {
        double rate = clearRate;
        for (int i = 0; i < wide; i++) {
            prices[at + i] = (float) (price[i] - rate * rates[from + i]);
        }
    }

    /**
     * Fills a run of weeks, noting of each kind that is asked for, or of which only so many can be sold, the first line that
     * leaves nothing of it.
     */
    private void noteTight(int first, int end, int[] sums, Result result) {
        int wide = (end - first) * seasons;
        int from = first * seasons;
        int[][] room = result.room(nodes);
        result.makeTight(nodes, lines.length);
        noteAsked(first, end, result.isAsked);
        for (int n = 0; n < nodes; n++) {
            if (result.isAsked[n]) {
                System.arraycopy(sums, at(n, from), room[n], 0, wide);
                keepTo(room[n], most[n], wide);
                Arrays.fill(result.tight[n], 0, wide, lines.length);
            }
        }
        int[] taken = result.taken;
        int[] asked = result.asked;
        for (int l = 0; l < lines.length; l++) {
            Line line = lines[l];
            if (line.asksIn(first, end)) {
                spread(line.asked, first, end, asked);
                System.arraycopy(asked, 0, taken, 0, wide);
                takeWide(line.node, room, wide, taken);
                for (int n = line.node; n >= 0; n = parent[n]) {
                    noteTight(l, asked, room[n], result.tight[n], wide);
                }
            }
        }
    }

    private void noteAsked(int first, int end, boolean[] isAsked) {
        Arrays.fill(isAsked, 0, nodes, false);
        for (Line line : lines) {
            if (line.asksIn(first, end)) {
                noteAsked(line.node, isAsked);
            }
        }
        for (int n : capped) {
            noteAsked(n, isAsked);
        }
    }

    private void noteAsked(int node, boolean[] isAsked) {
        for (int n = node; n >= 0 && !isAsked[n]; n = parent[n]) {
            isAsked[n] = true;
        }
    }

    /** Without a branch, for the machine's wide instructions: neither room nor what is asked for is ever negative. */
    private static void noteTight(int line, int[] asked, int[] room, int[] tight, int wide) {
        for (int i = 0; i < wide; i++) {
            int isTight = ((room[i] - 1) & -asked[i]) >> (Integer.SIZE - 1);
            tight[i] = Math.min(tight[i], isTight & line | ~isTight & Integer.MAX_VALUE);
        }
    }

    /** Takes for a line as much as it asks for and every enclosing kind still has, and counts what that brings. */
    private void take(Line line, int first, int end, int[][] room, Result result) {
        int wide = (end - first) * seasons;
        int[] taken = result.taken;
        spread(line.asked, first, end, taken);
        takeWide(line.node, room, wide, taken);
        plus(result.served, taken, wide);
        earn(result.money, taken, line.gain, wide);
        for (int w = first; line.weight > 0 && w < end; w++) {
            long missing = (long) line.asked[w] * seasons;
            for (int i = (w - first) * seasons; i < (w - first + 1) * seasons; i++) {
                missing -= taken[i];
            }
            result.missing[w - first] += line.weight * missing;
        }
    }

    /** Lays out what is the same in all seasons, for a run of weeks from 0 on. */
    private void spread(int[] byWeek, int first, int end, int[] to) {
        for (int w = first, at = 0; w < end; w++, at += seasons) {
            Arrays.fill(to, at, at + seasons, byWeek[w]);
        }
    }

    /** Keeps what is to be taken to what every enclosing kind has, and takes it from them. */
    private void takeWide(int node, int[][] room, int wide, int[] taken) {
        int above = parent[node];
        if (above < 0) {
            takeFrom(room[node], wide, taken);
            return;
        }
        for (int n = parent[above]; n >= 0; n = parent[n]) {
            least(taken, room[n], wide);
        }
        takeFrom(room[node], room[above], wide, taken);
        for (int n = parent[above]; n >= 0; n = parent[n]) {
            minus(room[n], taken, wide);
        }
    }

    private static void takeFrom(int[] room, int wide, int[] taken) {
        for (int i = 0; i < wide; i++) {
            int most = Math.min(taken[i], room[i]);
            taken[i] = most;
            room[i] -= most;
        }
    }

    private static void takeFrom(int[] room, int[] above, int wide, int[] taken) {
        for (int i = 0; i < wide; i++) {
            int most = Math.min(Math.min(taken[i], room[i]), above[i]);
            taken[i] = most;
            room[i] -= most;
            above[i] -= most;
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
            Arrays.fill(taken, line.asked[week]);
            takeWide(line.node, room, seasons, taken);
        }
    }
}
