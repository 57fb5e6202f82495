package bedwright.recheck;

import static bedwright.recheck.Facts.NEVER;

import bedwright.season.Job;
import bedwright.season.Labour;
import bedwright.season.Method;
import bedwright.season.Past;

/** Work of plantings by week, by the normal calendar and without cutting (season model, section 5). */
final class Work {
    private final Facts facts;
    private final Placed placed;
    /** Minutes by week that grow with the amount, of one lot. */
    private final double[] minutes;
    /** Minutes by week to begin and end each job, once for all lots that stand together. */
    private final long[] setUp;

    Work(Facts facts, Placed placed, Calendar calendar) {
        this.facts = facts;
        this.placed = placed;
        minutes = new double[facts.weeks()];
        setUp = new long[facts.weeks()];
        Past past = placed.past();
        if (!placed.isWritten() && (past == null || past.pulled() == null)) {
            addAll(calendar);
        }
    }

    /** Ticks of a week that one lot takes. */
    long ofALot(int week) {
        return Units.wholeMinutes(minutes[week]);
    }

    /** Ticks of a week for setting up. */
    long settingUp(int week) {
        return setUp[week] * Units.TICKS_A_MINUTE;
    }

    private void addAll(Calendar calendar) {
        Method method = placed.method();
        int sowWeek = placed.knowsSowWeek() ? Math.floorDiv(placed.sowDay(facts.season), 7) : NEVER;
        double metres = placed.metres();
        add(Job.PREPARE, metres, calendar.groundWeek);
        switch (method.start()) {
            case SOWN -> add(Job.SOW, metres, sowWeek);
            case TRAY -> {
                add(Job.FILL_TRAYS, Use.cells(placed), sowWeek);
                add(Job.PLANT_OUT, placed.plants(), calendar.groundWeek);
            }
            case PLUGS, SET -> add(Job.PLANT_OUT, placed.plants(), calendar.groundWeek);
        }
        if (method.net() != null) {
            add(Job.NET_UP, metres * method.net().layers(), calendar.netFrom);
            add(Job.NET_DOWN, metres * method.net().layers(), calendar.netDown);
        }
        if (method.cover() != null) {
            add(Job.COVER_ON, metres, calendar.coverFrom);
            add(Job.COVER_OFF, metres, calendar.coverTo);
        }
        if (method.pinched()
                && calendar.normal.pinch != NEVER
                && !calendar.isPulledBefore(Math.floorDiv(calendar.normal.pinch, 7))) {
            add(Job.PINCH, placed.plants(), Math.floorDiv(calendar.normal.pinch, 7));
        }
        for (int pass = 0; pass < method.weedings(); pass++) {
            if (calendar.holds(calendar.groundWeek + pass)) {
                add(Job.WEED, metres, calendar.groundWeek + pass);
            }
        }
        add(Job.CLEAR, metres, calendar.clearing);
    }

    /** What lies before the season or past its end is dropped. */
    private void add(Job job, double amount, int week) {
        if (week < facts.now() || week >= facts.weeks()) {
            return;
        }
        Labour.JobRate rate = rate(job);
        minutes[week] += rate.minutes() * amount / job.size();
        setUp[week] += rate.setUp();
    }

    /** The method's rate, else the crop's, else the farm's, else the usual. */
    private Labour.JobRate rate(Job job) {
        Labour.JobRate farm = facts.season.labour().jobs().getOrDefault(job, job.usual());
        Labour.JobRate crop = placed.crop().jobs().getOrDefault(job, farm);
        return placed.method().jobs().getOrDefault(job, crop);
    }
}
