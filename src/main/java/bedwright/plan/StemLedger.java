package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.Arrays;

/**
 * Stems by week, kind and possible season, and where they go, with the rules {@link Rule#TAKINGS}, {@link
 * Rule#SHORTAGE}, {@link Rule#BUY_IN} and {@link Rule#MUST_BE_OURS}. Tells the hours' ledger what cutting and clearing
 * they mean.
 *
 * <p>A cell is a role in a week, at role × weeks + week. Stems lie seasons innermost: (kind × weeks + week) × K + season, kinds as told apart by {@link KindCells}.
 */
final class StemLedger {
    private final PlanFacts facts;
    private final ProspectTable table;
    private final HoursLedger hours;
    private final int seasons;
    private final int weeks;
    private final int roles;
    private final int[] cellOfNode;
    private final int[] roleOfNode;
    /** Stems of each kind with all within it, as far as they can be sold: see {@link Filling#add}. */
    private final int[] sums;

    private final int[] change;
    private final boolean[] isKindTouched;
    /** Stems of each cell, all kinds together. */
    private final int[] came;
    /** Money, cutting ticks and clearing ticks of each cell: cell × K + season. */
    private final long[] money;

    private final long[] cutting;
    private final long[] clearing;
    private final long[] missing;
    private final int[] touched;
    private final boolean[] isTouched;
    private int touchedCount;
    private final Filling.Result result;
    private final long[] trialMoney;
    private final long[] trialCutting;
    private final long[] trialClearing;
    private final long[] trialMissing;

    StemLedger(PlanFacts facts, HoursLedger hours) {
        this.facts = facts;
        this.table = facts.table;
        this.hours = hours;
        this.seasons = facts.seasonCount;
        this.weeks = facts.weeks;
        this.roles = facts.fillings.length;
        this.cellOfNode = new int[facts.kinds.size()];
        this.roleOfNode = new int[cellOfNode.length];
        for (int n = 0; n < cellOfNode.length; n++) {
            cellOfNode[n] = facts.cells.of(n);
            roleOfNode[n] = facts.kinds.role(n);
        }
        int cells = facts.weeks * roles;
        this.sums = new int[weeks * facts.cells.size() * seasons];
        this.change = new int[sums.length];
        this.isKindTouched = new boolean[weeks * facts.cells.size()];
        this.came = new int[cells * seasons];
        this.money = new long[cells * seasons];
        this.cutting = new long[cells * seasons];
        this.clearing = new long[cells * seasons];
        this.missing = new long[cells];
        this.touched = new int[cells];
        this.isTouched = new boolean[cells];
        this.result = new Filling.Result(facts.weeks, seasons);
        this.trialMoney = new long[cells * seasons];
        this.trialCutting = new long[cells * seasons];
        this.trialClearing = new long[cells * seasons];
        this.trialMissing = new long[cells];
    }

    /** Posts every cell as touched, so that the first question fills all weeks. */
    void touchAll() {
        for (int cell = 0; cell < isTouched.length; cell++) {
            touch(cell);
        }
    }

    void post(int place, int sign) {
        int row = table.row(place);
        int[] gives = table.stems(row);
        int blocks = table.blocks(row);
        for (int b = 0; b < blocks; b++) {
            int node = table.blockNode(row, b);
            int week = table.blockWeek(row, b);
            int kindWeek = cellOfNode[node] * weeks + week;
            touch(roleOfNode[node] * weeks + week);
            isKindTouched[kindWeek] = true;
            int at = kindWeek * seasons;
            int from = b * seasons;
            if (sign > 0) {
                for (int k = 0; k < seasons; k++) {
                    change[at + k] += gives[from + k];
                }
            } else {
                for (int k = 0; k < seasons; k++) {
                    change[at + k] -= gives[from + k];
                }
            }
        }
    }

    private void touch(int cell) {
        if (!isTouched[cell]) {
            isTouched[cell] = true;
            touched[touchedCount++] = cell;
        }
    }

    /** Fills the touched weeks anew and tells the answer and the hours' ledger what is different. */
    void ask(Answer answer) {
        for (int role = 0; role < roles; role++) {
            int week = 0;
            while (week < weeks) {
                if (!isTouched[role * weeks + week]) {
                    week++;
                    continue;
                }
                int end = week + 1;
                while (end < weeks && isTouched[role * weeks + end]) {
                    end++;
                }
                Filling filling = facts.fillings[role];
                filling.fill(week, end, sums, change, isKindTouched, result);
                for (int w = week; w < end; w++) {
                    compare(filling, w, w - week, answer);
                }
                week = end;
            }
        }
    }

    /** Compares week t of the filled ones with what it was. */
    private void compare(Filling filling, int week, int t, Answer answer) {
        long[] gain = answer.money;
        int cell = filling.role * weeks + week;
        int at = cell * seasons;
        int from = t * seasons;
        long cutRate = filling.cutRate;
        long clearRate = filling.clearRate;
        for (int k = 0; k < seasons; k++) {
            long bringsNow = (long) result.money[from + k];
            long servedNow = result.served[from + k];
            trialMoney[at + k] = bringsNow;
            trialCutting[at + k] = cutRate * servedNow;
            trialClearing[at + k] = clearRate * (came[at + k] + result.came[from + k] - servedNow);
            gain[k] += bringsNow - money[at + k];
        }
        trialMissing[cell] = result.missing[t];
        answer.add(Rule.MUST_BE_OURS, result.missing[t] - missing[cell]);
        hours.postCutting(week, at, trialCutting, cutting, trialClearing, clearing);
    }

    void commit() {
        for (int t = 0; t < touchedCount; t++) {
            int cell = touched[t];
            int at = cell * seasons;
            System.arraycopy(trialMoney, at, money, at, seasons);
            System.arraycopy(trialCutting, at, cutting, at, seasons);
            System.arraycopy(trialClearing, at, clearing, at, seasons);
            missing[cell] = trialMissing[cell];
            Filling filling = facts.fillings[cell / weeks];
            int week = cell % weeks;
            for (int n = 0; n < filling.nodes; n++) {
                int kindWeek = (filling.firstNode + n) * weeks + week;
                if (isKindTouched[kindWeek]) {
                    int from = kindWeek * seasons;
                    for (int k = 0; k < seasons; k++) {
                        came[at + k] += change[from + k];
                    }
                    filling.add(sums, change, n, week, result);
                }
            }
        }
        forget();
    }

    void forget() {
        for (int t = 0; t < touchedCount; t++) {
            int cell = touched[t];
            Filling filling = facts.fillings[cell / weeks];
            int end = (filling.firstNode + filling.nodes) * weeks;
            for (int n = filling.firstNode * weeks + cell % weeks; n < end; n += weeks) {
                if (isKindTouched[n]) {
                    isKindTouched[n] = false;
                    Arrays.fill(change, n * seasons, (n + 1) * seasons, 0);
                }
            }
            isTouched[cell] = false;
        }
        touchedCount = 0;
    }

    /** Stems of a kind told apart with all within it, as far as they can be sold, over all seasons: hundredths. */
    long stems(int cell, int week) {
        int at = (cell * weeks + week) * seasons;
        long sum = 0;
        for (int k = at; k < at + seasons; k++) {
            sum += sums[k];
        }
        return sum;
    }

    /** What each line gets in a week, by season. */
    void fillByLine(Filling filling, int week, int[][][] served) {
        filling.fillByLine(week, sums, served);
    }
}
