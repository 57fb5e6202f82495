package bedwright.plan;

import java.util.Arrays;

/**
 * Work by week and possible season, with the rules {@link Rule#HOURS}, {@link Rule#CUTTING_HOURS} and {@link
 * Rule#HOURS_PAID}. Set-up is counted once a job.
 */
final class HoursLedger {
    private final PlanFacts facts;
    private final Figures figures;
    private final int weeks;
    private final int seasons;
    private final int[] lotsOfJob;
    private final int[] lotChange;
    private int[] touchedJobs = new int[64];
    private int touchedJobCount;
    private final boolean[] isJobTouched;
    /** Work that is the same in all seasons, ticks. */
    private final long[] work;

    private final long[] workChange;
    /**
     * Cutting, and all work that differs between seasons: week × K + season, ticks. In doubles for the machine's sake: all
     * are whole and far below 2⁵³.
     */
    private final double[] cutting;

    private final double[] cuttingChange;
    private final double[] moving;
    private final double[] movingChange;
    private final boolean[] isTouched;
    /** Of the touched weeks, those in which the cutting is different. */
    private final boolean[] isCuttingTouched;
    /** Weeks that were committed since {@link #forgetNew}. */
    private final boolean[] isNew;
    /** Of each week, the ticks of {@link #moving} and of cutting, summed over the seasons. */
    private final double[] movingSum;

    private final double[] cuttingSum;
    private final double[] trialMovingSum;
    private final double[] trialCuttingSum;
    /** Cost of each week and season, grains. */
    private final double[] paid;

    private final double[] trialPaid;
    private final long[] over;
    private final long[] trialOver;
    private final long[] cuttingOver;
    private final long[] trialCuttingOver;

    HoursLedger(PlanFacts facts) {
        this.facts = facts;
        this.figures = facts.figures;
        this.weeks = facts.weeks;
        this.seasons = facts.seasonCount;
        this.lotsOfJob = new int[facts.placeOfJob.length];
        this.lotChange = new int[lotsOfJob.length];
        this.isJobTouched = new boolean[lotsOfJob.length];
        this.work = facts.fixedWork.clone();
        this.workChange = new long[weeks];
        this.cutting = new double[weeks * seasons];
        this.cuttingChange = new double[cutting.length];
        this.moving = new double[cutting.length];
        this.movingChange = new double[cutting.length];
        this.isTouched = new boolean[weeks];
        this.isCuttingTouched = new boolean[weeks];
        this.isNew = new boolean[weeks];
        this.movingSum = new double[weeks];
        this.cuttingSum = new double[weeks];
        this.trialMovingSum = new double[weeks];
        this.trialCuttingSum = new double[weeks];
        this.paid = new double[cutting.length];
        this.trialPaid = new double[cutting.length];
        this.over = new long[weeks];
        this.trialOver = new long[weeks];
        this.cuttingOver = new long[weeks];
        this.trialCuttingOver = new long[weeks];
    }

    /** Posts every week as touched, so that the first question counts all work. */
    void touchAll() {
        Arrays.fill(isTouched, true);
        Arrays.fill(isCuttingTouched, true);
    }

    void post(int place, int sign) {
        int[] of = figures.of(place);
        int start = figures.start(place);
        postWork(of, start, Figures.work(start), sign);
        int job = facts.jobOf[place];
        if (!isJobTouched[job]) {
            isJobTouched[job] = true;
            if (touchedJobCount == touchedJobs.length) {
                touchedJobs = Arrays.copyOf(touchedJobs, 2 * touchedJobCount);
            }
            touchedJobs[touchedJobCount++] = job;
        }
        lotChange[job] += sign;
    }

    /** Adds the minutes of work, or of set-up, that stand from {@code at} on. */
    private void postWork(int[] of, int start, int at, int sign) {
        int first = of[start + Figures.WORK_FROM];
        int count = of[start + Figures.WORK_WEEKS];
        long ticks = (long) sign * Grains.TICKS_A_MINUTE;
        for (int i = 0; i < count; i++) {
            int minutes = of[at + i];
            if (minutes != 0) {
                isTouched[first + i] = true;
                workChange[first + i] += ticks * minutes;
            }
        }
    }

    /** Takes the cutting and clearing of one role in some weeks as different: ticks from {@code at} on, by season. */
    void postCutting(
            int week, int end, int at, double[] cut, double[] cutBefore, double[] clear, double[] clearBefore) {
        Arrays.fill(isTouched, week, end, true);
        Arrays.fill(isCuttingTouched, week, end, true);
        int to = week * seasons;
        int wide = (end - week) * seasons;
        for (int i = 0; i < wide; i++) {
            double more = cut[at + i] - cutBefore[at + i];
            cuttingChange[to + i] += more;
            movingChange[to + i] += more + clear[at + i] - clearBefore[at + i];
        }
    }

    /** Adds to an answer what the posted changes cost more, or less. Asked after all other ledgers have posted. */
    void ask(Answer answer) {
        for (int t = 0; t < touchedJobCount; t++) {
            int job = touchedJobs[t];
            int before = lotsOfJob[job];
            int after = before + lotChange[job];
            if (before == 0 && after > 0) {
                postSetUp(job, 1);
            } else if (before > 0 && after == 0) {
                postSetUp(job, -1);
            }
        }
        double paidMore = 0;
        for (int w = 0; w < weeks; w++) {
            if (isTouched[w] && !isCuttingTouched[w] && workChange[w] == 0) {
                // What was taken away came back: as when a planting that is weeded each week moves by a week.
                isTouched[w] = false;
            } else if (isTouched[w]) {
                paidMore += ask(w, answer);
            }
        }
        answer.add(Rule.HOURS_PAID, (long) paidMore);
    }

    /** What a week costs more, over all seasons. */
    private double ask(int w, Answer answer) {
        WorkWeeks limits = facts.hours;
        long own = limits.own()[w];
        long same = work[w] + workChange[w];
        int at = w * seasons;
        double paidMore = pay(at, same, own, answer.money);
        trialMovingSum[w] = isCuttingTouched[w] ? sum(moving, movingChange, at) : movingSum[w];
        trialCuttingSum[w] = isCuttingTouched[w] ? sum(cutting, cuttingChange, at) : cuttingSum[w];
        trialOver[w] = own >= WorkWeeks.UNLIMITED
                ? 0
                : over(seasons * same + (long) trialMovingSum[w], own + limits.hired()[w]);
        trialCuttingOver[w] = over((long) trialCuttingSum[w], limits.cutting()[w]);
        answer.add(Rule.HOURS, trialOver[w] - over[w]);
        answer.add(Rule.CUTTING_HOURS, trialCuttingOver[w] - cuttingOver[w]);
        return paidMore;
    }

    /** What a week costs in each season: own hours as far as there are, the others hired. */
    private double pay(int at, double same, double own, double[] gain) {
        double rate = facts.ownRate;
        double dearer = facts.hiredRate - facts.ownRate;
        double paidMore = 0;
        for (int k = 0; k < seasons; k++) {
            double all = same + moving[at + k] + movingChange[at + k];
            double costs = all * rate + Math.max(0, all - own) * dearer;
            trialPaid[at + k] = costs;
            gain[k] -= costs - paid[at + k];
        }
        for (int k = 0; k < seasons; k++) {
            paidMore += trialPaid[at + k] - paid[at + k];
        }
        return paidMore;
    }

    private double sum(double[] values, double[] changes, int at) {
        double sum = 0;
        for (int i = at; i < at + seasons; i++) {
            sum += values[i] + changes[i];
        }
        return sum;
    }

    private void postSetUp(int job, int sign) {
        int place = facts.placeOfJob[job];
        int[] of = figures.of(place);
        int start = figures.start(place);
        postWork(of, start, Figures.work(start) + of[start + Figures.WORK_WEEKS], sign);
    }

    /** Ticks beyond a week's limit, summed over the seasons. */
    private long over(long sum, long limit) {
        return limit >= WorkWeeks.UNLIMITED ? 0 : Math.max(0, sum - seasons * limit);
    }

    void commit() {
        for (int w = 0; w < weeks; w++) {
            if (isTouched[w]) {
                isNew[w] = true;
                work[w] += workChange[w];
                int at = w * seasons;
                for (int k = at; isCuttingTouched[w] && k < at + seasons; k++) {
                    cutting[k] += cuttingChange[k];
                    moving[k] += movingChange[k];
                }
                movingSum[w] = trialMovingSum[w];
                cuttingSum[w] = trialCuttingSum[w];
                System.arraycopy(trialPaid, at, paid, at, seasons);
                over[w] = trialOver[w];
                cuttingOver[w] = trialCuttingOver[w];
            }
        }
        for (int t = 0; t < touchedJobCount; t++) {
            lotsOfJob[touchedJobs[t]] += lotChange[touchedJobs[t]];
        }
        forget();
    }

    void forget() {
        int first = weeks;
        int end = 0;
        for (int w = 0; w < weeks; w++) {
            if (isTouched[w]) {
                isTouched[w] = false;
                workChange[w] = 0;
            }
            if (isCuttingTouched[w]) {
                isCuttingTouched[w] = false;
                first = Math.min(first, w);
                end = w + 1;
            }
        }
        if (first < end) {
            Arrays.fill(cuttingChange, first * seasons, end * seasons, 0);
            Arrays.fill(movingChange, first * seasons, end * seasons, 0);
        }
        for (int t = 0; t < touchedJobCount; t++) {
            lotChange[touchedJobs[t]] = 0;
            isJobTouched[touchedJobs[t]] = false;
        }
        touchedJobCount = 0;
    }

    /** Whether a week was changed for good since {@link #forgetNew}. */
    boolean isNew(int week) {
        return isNew[week];
    }

    void forgetNew() {
        Arrays.fill(isNew, false);
    }

    /** Lots that share the set-up of a job. */
    int lotsOfJob(int job) {
        return lotsOfJob[job];
    }

    /** Ticks of work that a week still has, summed over the seasons. */
    double left(int week) {
        long own = facts.hours.own()[week];
        return own >= WorkWeeks.UNLIMITED
                ? Double.MAX_VALUE
                : (double) seasons * (own + facts.hours.hired()[week]) - allWork(week);
    }

    /** Ticks of cutting that a week still has, likewise. */
    double cuttingLeft(int week) {
        long limit = facts.hours.cutting()[week];
        return limit >= WorkWeeks.UNLIMITED ? Double.MAX_VALUE : (double) seasons * limit - cuttingSum[week];
    }

    /** What a tick more costs in a week and season, grains. */
    double rate(int week, int k) {
        boolean isHired = work[week] + moving[week * seasons + k] > facts.hours.own()[week];
        return isHired ? facts.hiredRate : facts.ownRate;
    }

    /** Work of a week that is the same in all seasons, fixed work included, ticks. */
    long work(int week) {
        return work[week];
    }

    /** All work of a week, ticks, summed over the seasons. */
    double allWork(int week) {
        return (double) seasons * work[week] + movingSum[week];
    }

    /** Cutting of a week, likewise. */
    double cuttingWork(int week) {
        return cuttingSum[week];
    }

    /** Ticks beyond a week's hours, summed over the seasons. */
    long over(int week) {
        return over[week];
    }

    /** Ticks of cutting beyond a week's cutting hours, summed over the seasons. */
    long cuttingOver(int week) {
        return cuttingOver[week];
    }

    long paid(int week, int k) {
        return (long) paid[week * seasons + k];
    }
}
