package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.Arrays;

/**
 * Stems by week, kind and possible season, and where they go, with the rules {@link Rule#TAKINGS}, {@link
 * Rule#SHORTAGE}, {@link Rule#BUY_IN} and {@link Rule#MUST_BE_OURS}. Tells the hours' ledger what cutting and clearing
 * they mean.
 *
 * <p>A cell is a role in a week. Stems lie seasons innermost: (week × kinds + kind) × K + season.
 */
final class StemLedger {
    private final PlanFacts facts;
    private final ProspectTable table;
    private final HoursLedger hours;
    private final int seasons;
    private final int kinds;
    private final int roles;
    private final int[] roleOfNode;
    private final int[] stems;
    private final int[] change;
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
        this.kinds = facts.kinds.size();
        this.roles = facts.fillings.length;
        this.roleOfNode = new int[kinds];
        for (int n = 0; n < kinds; n++) {
            roleOfNode[n] = facts.kinds.role(n);
        }
        int cells = facts.weeks * roles;
        this.stems = new int[facts.weeks * kinds * seasons];
        this.change = new int[stems.length];
        this.money = new long[cells * seasons];
        this.cutting = new long[cells * seasons];
        this.clearing = new long[cells * seasons];
        this.missing = new long[cells];
        this.touched = new int[cells];
        this.isTouched = new boolean[cells];
        this.result = new Filling.Result(seasons);
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
            touch(week * roles + roleOfNode[node]);
            int at = (week * kinds + node) * seasons;
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
        long[] gain = answer.money;
        for (int t = 0; t < touchedCount; t++) {
            int cell = touched[t];
            int week = cell / roles;
            Filling filling = facts.fillings[cell % roles];
            filling.fill(week, stems, change, (week * kinds + filling.firstNode) * seasons, result);
            int at = cell * seasons;
            long cutRate = filling.cutRate;
            long clearRate = filling.clearRate;
            for (int k = 0; k < seasons; k++) {
                long bringsNow = result.money[k];
                long servedNow = result.served[k];
                trialMoney[at + k] = bringsNow;
                trialCutting[at + k] = cutRate * servedNow;
                trialClearing[at + k] = clearRate * (result.came[k] - servedNow);
                gain[k] += bringsNow - money[at + k];
            }
            trialMissing[cell] = result.missing;
            answer.add(Rule.MUST_BE_OURS, result.missing - missing[cell]);
            hours.postCutting(week, at, trialCutting, cutting, trialClearing, clearing);
        }
    }

    void commit() {
        for (int t = 0; t < touchedCount; t++) {
            int cell = touched[t];
            int at = cell * seasons;
            System.arraycopy(trialMoney, at, money, at, seasons);
            System.arraycopy(trialCutting, at, cutting, at, seasons);
            System.arraycopy(trialClearing, at, clearing, at, seasons);
            missing[cell] = trialMissing[cell];
            Filling filling = facts.fillings[cell % roles];
            int first = (cell / roles * kinds + filling.firstNode) * seasons;
            for (int i = first; i < first + filling.nodes * seasons; i++) {
                stems[i] += change[i];
            }
        }
        forget();
    }

    void forget() {
        for (int t = 0; t < touchedCount; t++) {
            int cell = touched[t];
            Filling filling = facts.fillings[cell % roles];
            int first = (cell / roles * kinds + filling.firstNode) * seasons;
            Arrays.fill(change, first, first + filling.nodes * seasons, 0);
            isTouched[cell] = false;
        }
        touchedCount = 0;
    }

    /** Stems of a kind itself in a week and season, hundredths. */
    int stems(int node, int week, int k) {
        return stems[(week * kinds + node) * seasons + k];
    }

    /** All stems as they lie, for filling by line; not to be written to. */
    int[] allStems() {
        return stems;
    }

    /** Where the stems of a role's kinds begin in {@link #allStems()}. */
    int offset(int week, Filling filling) {
        return (week * kinds + filling.firstNode) * seasons;
    }
}
