package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.BitSet;

/** Work of a plan, the plain way: a week that changed is added up again, one season after the other. Ticks and grains. */
final class NaiveHours {
    private final PlanFacts facts;
    private final ProspectTable table;
    private final int seasons;
    private final int[] lotsOfJob;
    /** Work that is the same in all seasons, by week. */
    private final long[] work;

    private final long[][] cutting;
    private final long[][] clearing;
    private final long[][] paid;
    private final long[] over;
    private final BitSet touched = new BitSet();
    /** Cost of each season's hours. */
    final long[] cost;
    /** Ticks beyond the limits, all weeks together. */
    long allOver;

    NaiveHours(PlanFacts facts) {
        this.facts = facts;
        this.table = facts.table;
        this.seasons = facts.seasonCount;
        this.lotsOfJob = new int[facts.placeOfJob.length];
        this.work = facts.fixedWork.clone();
        this.cutting = new long[seasons][facts.weeks];
        this.clearing = new long[seasons][facts.weeks];
        this.paid = new long[seasons][facts.weeks];
        this.over = new long[facts.weeks];
        this.cost = new long[seasons];
        touched.set(0, facts.weeks);
    }

    void post(int place, int sign) {
        int row = table.row(place);
        add(row, table.work(row), sign);
        int job = facts.jobOf[place];
        int before = lotsOfJob[job];
        lotsOfJob[job] += sign;
        if (before == 0 || lotsOfJob[job] == 0) {
            add(row, table.setUp(row), sign);
        }
    }

    private void add(int row, int[] minutes, int sign) {
        for (int i = 0; i < minutes.length; i++) {
            if (minutes[i] != 0) {
                int week = table.workFrom(row) + i;
                work[week] += (long) sign * minutes[i] * Grains.TICKS_A_MINUTE;
                touched.set(week);
            }
        }
    }

    /** Takes more (or less) cutting and clearing of a season's week. */
    void cut(int k, int week, long moreCutting, long moreClearing) {
        cutting[k][week] += moreCutting;
        clearing[k][week] += moreClearing;
        touched.set(week);
    }

    void recount() {
        for (int week = touched.nextSetBit(0); week >= 0; week = touched.nextSetBit(week + 1)) {
            recount(week);
        }
        touched.clear();
    }

    private void recount(int week) {
        long own = facts.hours.own()[week];
        long sum = 0;
        long cut = 0;
        for (int k = 0; k < seasons; k++) {
            long all = work[week] + cutting[k][week] + clearing[k][week];
            long now = Math.min(all, own) * facts.ownRate + Math.max(0, all - own) * facts.hiredRate;
            cost[k] += now - paid[k][week];
            paid[k][week] = now;
            sum += all;
            cut += cutting[k][week];
        }
        long now = 0;
        if (own < WorkWeeks.UNLIMITED) {
            now += Math.max(0, sum - seasons * (own + facts.hours.hired()[week]));
        }
        long mornings = facts.hours.cutting()[week];
        if (mornings < WorkWeeks.UNLIMITED) {
            now += Math.max(0, cut - seasons * mornings);
        }
        allOver += now - over[week];
        over[week] = now;
    }
}
