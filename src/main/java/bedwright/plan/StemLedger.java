package bedwright.plan;

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
    private final Figures figures;
    private final HoursLedger hours;
    private final int seasons;
    private final int weeks;
    /** Stems of each kind with all within it, as far as they can be sold: see {@link Filling#add}. */
    private final int[] sums;

    private final int[] change;
    private final boolean[] isKindTouched;
    /** Stems of each cell, all kinds together. */
    private final int[] came;
    /**
     * Money, cutting ticks and clearing ticks of each cell: cell × K + season. In doubles for the machine's sake: all are
     * whole and far below 2⁵³.
     */
    private final double[] money;

    private final double[] cutting;
    private final double[] clearing;
    private final long[] missing;
    /** Runs of stems that were posted: kind and first week, role and first week, weeks. */
    private int[] runs = new int[96];

    private int runsEnd;
    private final boolean[] isTouched;
    /** All that is touched lies from here on and before {@link #touchedTo}. */
    private int touchedFrom;

    private int touchedTo;
    /** Cells that were committed since {@link #forgetNew}. */
    private final boolean[] isNew;

    private final Filling.Result result;
    private final double[] trialMoney;
    private final double[] trialCutting;
    private final double[] trialClearing;
    private final long[] trialMissing;

    StemLedger(PlanFacts facts, HoursLedger hours) {
        this.facts = facts;
        this.figures = facts.figures;
        this.hours = hours;
        this.seasons = facts.seasonCount;
        this.weeks = facts.weeks;
        int cells = facts.weeks * facts.fillings.length;
        this.sums = new int[weeks * facts.cells.size() * seasons];
        this.change = new int[sums.length];
        this.isKindTouched = new boolean[weeks * facts.cells.size()];
        this.came = new int[cells * seasons];
        this.money = new double[cells * seasons];
        this.cutting = new double[cells * seasons];
        this.clearing = new double[cells * seasons];
        this.missing = new long[cells];
        this.isTouched = new boolean[cells];
        this.isNew = new boolean[cells];
        this.touchedFrom = cells;
        this.result = new Filling.Result(facts.weeks, seasons);
        this.trialMoney = new double[cells * seasons];
        this.trialCutting = new double[cells * seasons];
        this.trialClearing = new double[cells * seasons];
        this.trialMissing = new long[cells];
    }

    /** Posts every cell as touched, so that the first question fills all weeks. */
    void touchAll() {
        Arrays.fill(isTouched, true);
        touchedFrom = 0;
        touchedTo = isTouched.length;
    }

    void post(int place, int sign) {
        int[] of = figures.of(place);
        int start = figures.start(place);
        int count = of[start + Figures.RUNS];
        int at = Figures.runs(of, start);
        int from = at + count * Figures.A_RUN;
        if (runsEnd + count * Figures.A_RUN > runs.length) {
            runs = Arrays.copyOf(runs, 2 * (runsEnd + count * Figures.A_RUN));
        }
        for (int r = 0; r < count; r++, at += Figures.A_RUN) {
            int kindWeek = of[at];
            int cell = of[at + 1];
            int length = of[at + 2];
            touchedFrom = Math.min(touchedFrom, cell);
            touchedTo = Math.max(touchedTo, cell + length);
            runs[runsEnd++] = kindWeek;
            runs[runsEnd++] = cell;
            runs[runsEnd++] = length;
            for (int w = 0; w < length; w++) {
                isKindTouched[kindWeek + w] = true;
                isTouched[cell + w] = true;
            }
            int wide = length * seasons;
            if (sign > 0) {
                plus(change, kindWeek * seasons, of, from, wide);
            } else {
                minus(change, kindWeek * seasons, of, from, wide);
            }
            from += wide;
        }
    }

    private static void plus(int[] sum, int at, int[] more, int from, int wide) {
        for (int i = 0; i < wide; i++) {
            sum[at + i] += more[from + i];
        }
    }

    private static void minus(int[] sum, int at, int[] less, int from, int wide) {
        for (int i = 0; i < wide; i++) {
            sum[at + i] -= less[from + i];
        }
    }

    /** Fills the touched weeks anew and tells the answer and the hours' ledger what is different. */
    void ask(Answer answer) {
        int cell = touchedFrom;
        while (cell < touchedTo) {
            if (!isTouched[cell]) {
                cell++;
                continue;
            }
            int role = cell / weeks;
            int week = cell % weeks;
            int end = week + 1;
            while (end < weeks && isTouched[role * weeks + end]) {
                end++;
            }
            Filling filling = facts.fillings[role];
            filling.fill(week, end, sums, change, isKindTouched, result);
            compare(filling, week, end, answer);
            cell = role * weeks + end;
        }
    }

    /** Compares the weeks that were filled with what they were. */
    private void compare(Filling filling, int week, int end, Answer answer) {
        int cell = filling.role * weeks + week;
        int at = cell * seasons;
        int wide = (end - week) * seasons;
        System.arraycopy(result.money, 0, trialMoney, at, wide);
        work(trialCutting, at, result.served, filling.cutRate, wide);
        clear(at, filling.clearRate, wide);
        for (int t = 0; t < end - week; t++) {
            gain(answer.money, result.money, t * seasons, at + t * seasons);
            trialMissing[cell + t] = result.missing[t];
            answer.add(Rule.MUST_BE_OURS, result.missing[t] - missing[cell + t]);
        }
        hours.postCutting(week, end, at, trialCutting, cutting, trialClearing, clearing);
    }

    private static void work(double[] ticks, int at, int[] stems, double rate, int wide) {
        for (int i = 0; i < wide; i++) {
            ticks[at + i] = rate * stems[i];
        }
    }

    private void clear(int at, double rate, int wide) {
        int[] more = result.came;
        int[] served = result.served;
        for (int i = 0; i < wide; i++) {
            trialClearing[at + i] = rate * (came[at + i] + more[i] - served[i]);
        }
    }

    private void gain(double[] gain, double[] now, int from, int at) {
        for (int k = 0; k < seasons; k++) {
            gain[k] += now[from + k] - money[at + k];
        }
    }

    void commit() {
        for (int cell = touchedFrom; cell < touchedTo; cell++) {
            if (isTouched[cell]) {
                int at = cell * seasons;
                System.arraycopy(trialMoney, at, money, at, seasons);
                System.arraycopy(trialCutting, at, cutting, at, seasons);
                System.arraycopy(trialClearing, at, clearing, at, seasons);
                missing[cell] = trialMissing[cell];
                isNew[cell] = true;
            }
        }
        for (int r = 0; r < runsEnd; r += Figures.A_RUN) {
            int cell = runs[r + 1];
            Filling filling = facts.fillings[cell / weeks];
            for (int w = 0; w < runs[r + 2]; w++) {
                int kindWeek = runs[r] + w;
                // The same kind and week may be in several runs, whose sum is added once.
                if (isKindTouched[kindWeek]) {
                    isKindTouched[kindWeek] = false;
                    int at = (cell + w) * seasons;
                    int from = kindWeek * seasons;
                    for (int k = 0; k < seasons; k++) {
                        came[at + k] += change[from + k];
                    }
                    filling.add(sums, change, kindWeek / weeks - filling.firstNode, kindWeek % weeks, result);
                }
            }
        }
        forget();
    }

    void forget() {
        for (int r = 0; r < runsEnd; r += Figures.A_RUN) {
            int kindWeek = runs[r];
            int length = runs[r + 2];
            Arrays.fill(change, kindWeek * seasons, (kindWeek + length) * seasons, 0);
            for (int w = 0; w < length; w++) {
                isKindTouched[kindWeek + w] = false;
            }
        }
        if (touchedFrom < touchedTo) {
            Arrays.fill(isTouched, touchedFrom, touchedTo, false);
        }
        touchedFrom = isTouched.length;
        touchedTo = 0;
        runsEnd = 0;
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

    /** Whether a cell, at role × weeks + week, was changed for good since {@link #forgetNew}. */
    boolean isNew(int cell) {
        return isNew[cell];
    }

    void forgetNew() {
        Arrays.fill(isNew, false);
    }

    /** Prices a run of weeks of a role: see {@link Filling#price}. */
    void price(Filling filling, int first, int end, double[] rates, double missing, int[] of, float[] prices) {
        filling.price(first, end, sums, rates, missing, of, prices, result);
    }

    /** What each line gets in a week, by season. */
    void fillByLine(Filling filling, int week, int[][][] served) {
        filling.fillByLine(week, sums, served);
    }
}
