package bedwright.growth;

import bedwright.season.Job;
import bedwright.season.Method;
import bedwright.season.Standing;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The weeks of a planting in the normal season, by which bed, trays, net, cover, rotation and all work but cutting go
 * (season model, sections 3 and 5). Weeks "to" are not included. Nothing but {@link #groundWeek}, {@link #sowWeek} and
 * the weeks of single jobs lies outside the season.
 *
 * @param sowWeek week of sowing, negative for what was sown before the season
 * @param groundWeek week from which it is in the bed
 * @param heldFrom first week of the season in which it holds its bed
 * @param heldTo end of the hold
 * @param lastCut last week of cutting, which may lie before the season, or {@link Development#NEVER}
 * @param lastGrace last grace week before the season's end cuts it off, or {@link Development#NEVER} if it is never cut
 * @param lastHeld last held week before the season's end cuts it off, or {@link Development#NEVER} if it is never cut
 * @param netWeek week in which net goes up, negative before the season, or {@link #NONE}
 * @param netCounts day from which it holds up what has one; net in time counts always
 * @param netDown week in which it is taken down, or {@link Development#NEVER}
 * @param netFrom first week with net
 * @param netTo end of the net
 * @param coverOn week in which cover is laid, if any is
 * @param coverFrom first week with cover
 * @param coverTo end of the cover
 * @param coverOff week in which it is taken off, negative before the season, or {@link #NONE}
 * @param pinchWeek week of pinching, or {@link Development#NEVER}
 * @param firstCutDay day of the first cut, or {@link Development#NEVER}
 */
record Calendar(
        int sowWeek,
        int groundWeek,
        int heldFrom,
        int heldTo,
        int lastCut,
        int lastGrace,
        int lastHeld,
        int netWeek,
        int netCounts,
        int netDown,
        int netFrom,
        int netTo,
        int coverOn,
        int coverFrom,
        int coverTo,
        int coverOff,
        int pinchWeek,
        int firstCutDay) {
    /** Stands for the week of a job that is not done; weeks before the season are negative. */
    static final int NONE = Integer.MIN_VALUE;

    private static final int ALWAYS = Integer.MIN_VALUE;

    /** The calendar of a planting from its development in the normal season. */
    static Calendar of(Method method, Start start, Development normal, Cutting.@Nullable Heat heat, int weeks) {
        int ground = Math.floorDiv(start.groundDay(), 7);
        boolean cut = normal.firstCut != Development.NEVER;
        int lastCut = cut ? Cutting.lastWeek(method, heat, normal.firstCut, weeks) : Development.NEVER;
        int lastGrace = cut ? lastCut + method.grace() : Development.NEVER;
        int lastHeld = cut ? lastGrace + method.clearing() : Development.NEVER;
        int heldFrom = Math.clamp(ground, 0, weeks);
        int heldTo = cut ? Math.clamp(lastHeld + 1, 0, weeks) : weeks;
        int netWeek = NONE;
        int netFrom = 0;
        int netTo = 0;
        if (method.net() != null && normal.emerges()) {
            boolean out = method.start() == Method.Start.TRAY || method.start() == Method.Start.PLUGS;
            netWeek = out ? ground : Math.max(ground, Math.floorDiv(normal.emergence, 7));
            netFrom = Math.clamp(netWeek, 0, weeks);
            netTo = cut ? Math.min(weeks, lastGrace + 1) : weeks;
        }
        int coverFrom = heldFrom;
        int coverTo = heldFrom;
        int coverOff = NONE;
        Method.CoverUse cover = method.cover();
        if (cover != null) {
            coverOff = coverEnd(cover, normal, ground, weeks);
            coverTo = Math.clamp(coverOff, heldFrom, weeks);
        }
        int pinchWeek = method.pinched() && normal.pinch != Development.NEVER
                ? Math.floorDiv(normal.pinch, 7)
                : Development.NEVER;
        return new Calendar(
                Math.floorDiv(start.sowDay(), 7),
                ground,
                heldFrom,
                heldTo,
                lastCut,
                lastGrace,
                lastHeld,
                netWeek,
                ALWAYS,
                lastGrace,
                netFrom,
                netTo,
                ground,
                coverFrom,
                coverTo,
                coverOff,
                pinchWeek,
                normal.firstCut);
    }

    private static int coverEnd(Method.CoverUse cover, Development normal, int ground, int weeks) {
        Integer set = cover.weeks();
        if (set != null) {
            return ground + set;
        }
        return normal.hardy == Development.NEVER ? weeks : Math.max(ground + 1, Math.floorDiv(normal.hardy, 7));
    }

    /** The same of a planting that is pulled early: cleared in a week, its last; nothing comes later. */
    Calendar until(int week, Method method) {
        if (week >= heldTo - 1) {
            return this;
        }
        int end = Math.max(heldFrom, week + 1);
        int grace = week - method.clearing();
        boolean hasNet = netWeek != NONE && netWeek <= grace;
        int off = Math.min(coverOff, week);
        return new Calendar(
                sowWeek,
                groundWeek,
                heldFrom,
                end,
                lastCut == Development.NEVER ? lastCut : Math.min(lastCut, grace),
                grace,
                week,
                hasNet ? netWeek : NONE,
                netCounts,
                grace,
                hasNet ? netFrom : 0,
                hasNet ? Math.max(netFrom, Math.min(netTo, grace + 1)) : 0,
                coverOn,
                coverFrom,
                Math.max(coverFrom, Math.min(coverTo, week)),
                off,
                pinchWeek == Development.NEVER || pinchWeek > week ? Development.NEVER : pinchWeek,
                firstCutDay);
    }

    /** The calendar of a planting whose stems are written out: it holds its bed and needs nothing. */
    static Calendar written(Standing standing, int until, int weeks) {
        int heldTo = standing.until() == null ? weeks : Math.clamp(until + 1, 0, weeks);
        return new Calendar(
                0,
                -1,
                0,
                heldTo,
                heldTo - 1,
                heldTo - 1,
                heldTo - 1,
                NONE,
                ALWAYS,
                Development.NEVER,
                0,
                0,
                -1,
                0,
                0,
                NONE,
                Development.NEVER,
                Development.NEVER);
    }

    /** The same with some jobs a week later, see {@link Late}. */
    Calendar late(Set<Job> jobs, int weeks) {
        boolean isNetLate = netWeek != NONE && jobs.contains(Job.NET_UP);
        boolean isNetGiven = netWeek != NONE && !(isNetLate && netWeek >= Math.min(lastGrace, weeks - 1));
        int up = isNetLate ? netWeek + 1 : netWeek;
        int down = netDown != Development.NEVER && jobs.contains(Job.NET_DOWN) ? netDown + 1 : netDown;
        int netEnd = down == netDown ? netTo : Math.min(weeks, netTo + 1);
        int counts = !isNetLate ? netCounts : isNetGiven ? 7 * up : Integer.MAX_VALUE;
        int on = jobs.contains(Job.COVER_ON) ? coverOn + 1 : coverOn;
        int off = coverOff != NONE && jobs.contains(Job.COVER_OFF) ? coverOff + 1 : coverOff;
        boolean isCoverGiven = off > on;
        int laid = Math.clamp(on, heldFrom, weeks);
        return new Calendar(
                sowWeek,
                groundWeek,
                heldFrom,
                heldTo,
                lastCut,
                lastGrace,
                lastHeld,
                isNetGiven ? up : NONE,
                counts,
                down,
                isNetGiven ? Math.clamp(up, 0, weeks) : 0,
                isNetGiven ? netEnd : 0,
                on,
                isCoverGiven ? laid : heldFrom,
                isCoverGiven ? Math.clamp(off, laid, weeks) : heldFrom,
                isCoverGiven ? off : NONE,
                pinchWeek != Development.NEVER && jobs.contains(Job.PINCH) ? pinchWeek + 1 : pinchWeek,
                firstCutDay);
    }

    boolean isCoveredOn(int day) {
        int week = Math.floorDiv(day, 7);
        return week >= coverOn && week < coverOff;
    }
}
