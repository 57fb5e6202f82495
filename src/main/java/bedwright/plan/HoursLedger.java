package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.Arrays;

/**
 * Work by week and possible season, with the rules {@link Rule#HOURS}, {@link Rule#CUTTING_HOURS} and {@link
 * Rule#HOURS_PAID}. Set-up is counted once a job.
 */
final class HoursLedger {
    private final PlanFacts facts;
    private final ProspectTable table;
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
    /** Cutting, and all work that differs between seasons: week × K + season, ticks. */
    private final long[] cutting;

    private final long[] cuttingChange;
    private final long[] moving;
    private final long[] movingChange;
    private final boolean[] isTouched;
    private final int[] touched;
    private int touchedCount;
    /** Cost of each week and season, grains. */
    private final long[] paid;

    private final long[] trialPaid;
    private final long[] over;
    private final long[] trialOver;
    private final long[] cuttingOver;
    private final long[] trialCuttingOver;

    HoursLedger(PlanFacts facts) {
        this.facts = facts;
        this.table = facts.table;
        this.weeks = facts.weeks;
        this.seasons = facts.seasonCount;
        this.lotsOfJob = new int[facts.rowOfJob.length];
        this.lotChange = new int[lotsOfJob.length];
        this.isJobTouched = new boolean[lotsOfJob.length];
        this.work = facts.fixedWork.clone();
        this.workChange = new long[weeks];
        this.cutting = new long[weeks * seasons];
        this.cuttingChange = new long[cutting.length];
        this.moving = new long[cutting.length];
        this.movingChange = new long[cutting.length];
        this.isTouched = new boolean[weeks];
        this.touched = new int[weeks];
        this.paid = new long[cutting.length];
        this.trialPaid = new long[cutting.length];
        this.over = new long[weeks];
        this.trialOver = new long[weeks];
        this.cuttingOver = new long[weeks];
        this.trialCuttingOver = new long[weeks];
    }

    /** Posts every week as touched, so that the first question counts all work. */
    void touchAll() {
        for (int w = 0; w < weeks; w++) {
            touch(w);
        }
    }

    void post(int place, int sign) {
        int row = table.row(place);
        int[] minutes = table.work(row);
        int first = table.workFrom(row);
        for (int i = 0; i < minutes.length; i++) {
            if (minutes[i] != 0) {
                touch(first + i);
                workChange[first + i] += (long) sign * minutes[i] * Grains.TICKS_A_MINUTE;
            }
        }
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

    private void touch(int week) {
        if (!isTouched[week]) {
            isTouched[week] = true;
            touched[touchedCount++] = week;
        }
    }

    /** Takes the cutting and clearing of one role in one week as different: ticks from {@code at} on, by season. */
    void postCutting(int week, int at, long[] cut, long[] cutBefore, long[] clear, long[] clearBefore) {
        touch(week);
        int to = week * seasons;
        for (int k = 0; k < seasons; k++) {
            long more = cut[at + k] - cutBefore[at + k];
            cuttingChange[to + k] += more;
            movingChange[to + k] += more + clear[at + k] - clearBefore[at + k];
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
        WorkWeeks limits = facts.hours;
        long ownRate = facts.ownRate;
        long hiredRate = facts.hiredRate;
        long[] gain = answer.money;
        long paidMore = 0;
        for (int t = 0; t < touchedCount; t++) {
            int w = touched[t];
            long same = work[w] + workChange[w];
            long own = limits.own()[w];
            int at = w * seasons;
            long sum = 0;
            long cut = 0;
            for (int k = 0; k < seasons; k++) {
                long all = same + moving[at + k] + movingChange[at + k];
                long costs = all <= own ? all * ownRate : own * ownRate + (all - own) * hiredRate;
                long more = costs - paid[at + k];
                trialPaid[at + k] = costs;
                gain[k] -= more;
                paidMore += more;
                sum += all;
                cut += cutting[at + k] + cuttingChange[at + k];
            }
            trialOver[w] = over(sum, own == WorkWeeks.UNLIMITED ? own : own + limits.hired()[w]);
            trialCuttingOver[w] = over(cut, limits.cutting()[w]);
            answer.add(Rule.HOURS, trialOver[w] - over[w]);
            answer.add(Rule.CUTTING_HOURS, trialCuttingOver[w] - cuttingOver[w]);
        }
        answer.add(Rule.HOURS_PAID, paidMore);
    }

    private void postSetUp(int job, int sign) {
        int row = facts.rowOfJob[job];
        int[] minutes = table.setUp(row);
        int first = table.workFrom(row);
        for (int i = 0; i < minutes.length; i++) {
            if (minutes[i] != 0) {
                touch(first + i);
                workChange[first + i] += (long) sign * minutes[i] * Grains.TICKS_A_MINUTE;
            }
        }
    }

    /** Ticks beyond a week's limit, summed over the seasons. */
    private long over(long sum, long limit) {
        return limit >= WorkWeeks.UNLIMITED ? 0 : Math.max(0, sum - seasons * limit);
    }

    void commit() {
        for (int t = 0; t < touchedCount; t++) {
            int w = touched[t];
            int at = w * seasons;
            work[w] += workChange[w];
            for (int k = at; k < at + seasons; k++) {
                cutting[k] += cuttingChange[k];
                moving[k] += movingChange[k];
                paid[k] = trialPaid[k];
            }
            over[w] = trialOver[w];
            cuttingOver[w] = trialCuttingOver[w];
        }
        for (int t = 0; t < touchedJobCount; t++) {
            lotsOfJob[touchedJobs[t]] += lotChange[touchedJobs[t]];
        }
        forget();
    }

    void forget() {
        for (int t = 0; t < touchedCount; t++) {
            int w = touched[t];
            int at = w * seasons;
            workChange[w] = 0;
            Arrays.fill(cuttingChange, at, at + seasons, 0);
            Arrays.fill(movingChange, at, at + seasons, 0);
            isTouched[w] = false;
        }
        touchedCount = 0;
        for (int t = 0; t < touchedJobCount; t++) {
            lotChange[touchedJobs[t]] = 0;
            isJobTouched[touchedJobs[t]] = false;
        }
        touchedJobCount = 0;
    }

    /** Work of a week that is the same in all seasons, fixed work included, ticks. */
    long work(int week) {
        return work[week];
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
        return paid[week * seasons + k];
    }
}
