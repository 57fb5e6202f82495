package bedwright.recheck;

import static bedwright.recheck.Facts.NEVER;

import bedwright.climate.PossibleSeason;
import bedwright.season.Method;
import bedwright.season.Past;
import bedwright.season.Standing;
import java.time.LocalDate;

/**
 * The weeks of a planting by the normal season, which bed, net, cover and all work but cutting follow (season model,
 * sections 3 and 5). Weeks may lie before the season or past its end; what counts there is for the reader to cut off.
 */
final class Calendar {
    /** The normal season's clock; for stems written out it says nothing. */
    final Course normal;
    /** Week in which it comes into the ground; negative before the season. */
    final int groundWeek;
    /** First week in which it holds its bed. */
    final int firstHeld;
    /** Last week in which it holds its bed; before the first if it holds none. */
    final int lastHeld;
    /** Last normal cut week, at most the season's last; NEVER if it is not cut. */
    final int lastCut;
    /** Last week whose stems count. */
    final int lastStems;
    /** Week in which the bed is cleared, as it were if the season did not end; NEVER if it is not. */
    final int clearing;
    /** Weeks in which the cover lies, from and up to (not included). */
    final int coverFrom;

    final int coverTo;
    /** Weeks in which the net is in use, first and last; NEVER if it needs none. */
    final int netFrom;

    final int netTo;
    /** Whether it is pulled before its usual end. */
    private boolean isEarly;

    /** Week in which the net is taken down, as it were if the season did not end; NEVER if it is not. */
    final int netDown;

    Calendar(Facts facts, Placed placed) {
        Method method = placed.method();
        int end = facts.weeks() - 1;
        normal = new Course(facts, placed, facts.normal());
        groundWeek = Course.groundWeek(facts, placed);
        firstHeld = Math.max(0, groundWeek);
        if (placed.isWritten()) {
            Standing standing = placed.standing();
            LocalDate until = standing == null ? null : standing.until();
            lastHeld = until == null ? end : Math.min(end, facts.season.weekOf(until));
            lastStems = end;
            lastCut = clearing = netFrom = netTo = netDown = NEVER;
            coverFrom = coverTo = 0;
            return;
        }
        boolean cut = normal.firstCut != NEVER;
        Past past = placed.past();
        int pulledOn = past == null ? NEVER : Placed.day(facts.season, past.pulled(), NEVER);
        boolean isPulled = pulledOn != NEVER;
        int usualEnd = cut
                ? Math.min(end, lastCutWeek(facts, placed, facts.normal(), normal) + method.grace() + method.clearing())
                : end;
        int pulled = isPulled ? Math.floorDiv(pulledOn, 7) : placed.lastWeek();
        if (pulled < usualEnd) {
            int grace = pulled - method.clearing();
            boolean isNetted = method.net() != null && normal.emergence != NEVER && netUp(placed) <= grace;
            lastCut = NEVER;
            clearing = lastHeld = Math.max(pulled, firstHeld - 1);
            lastStems = isPulled ? -1 : grace;
            netFrom = isNetted ? netUp(placed) : NEVER;
            netTo = netDown = isNetted ? grace : NEVER;
            coverFrom = groundWeek;
            coverTo = Math.min(coverTo(method, end), pulled);
            isEarly = true;
            return;
        }
        lastCut = cut ? Math.min(end, lastCutWeek(facts, placed, facts.normal(), normal)) : NEVER;
        int lastGrace = cut ? lastCut + method.grace() : end;
        clearing = cut ? lastGrace + method.clearing() : NEVER;
        lastHeld = cut ? Math.min(end, clearing) : end;
        lastStems = isPulled ? -1 : Math.min(end, lastGrace);
        netFrom = method.net() == null || normal.emergence == NEVER ? NEVER : netUp(placed);
        netTo = netFrom == NEVER ? NEVER : Math.min(end, lastGrace);
        netDown = netFrom == NEVER || !cut ? NEVER : lastGrace;
        coverFrom = groundWeek;
        coverTo = coverTo(method, end);
    }

    /** The net goes up when it is planted out, or comes up. */
    private int netUp(Placed placed) {
        return placed.isPlantedOut() ? groundWeek : Math.floorDiv(normal.emergence, 7);
    }

    private int coverTo(Method method, int end) {
        if (method.cover() == null) {
            return coverFrom;
        }
        if (method.cover().weeks() != null) {
            return coverFrom + method.cover().weeks();
        }
        int off = normal.hardy == NEVER ? end + 1 : Math.floorDiv(normal.hardy, 7);
        return Math.max(coverFrom + 1, off);
    }

    /** The week of a possible season's last cutting day, or the one in which heat ends the cutting. */
    static int lastCutWeek(Facts facts, Placed placed, PossibleSeason possible, Course course) {
        int first = Math.floorDiv(course.firstCut, 7);
        int last = Math.floorDiv(course.firstCut + placed.method().cutDays() - 1, 7);
        for (int week = Math.max(0, first); week < Math.min(last, facts.weeks()); week++) {
            if (Cutting.heat(facts, placed, possible, week) == Cutting.Heat.ENDS) {
                return week;
            }
        }
        return last;
    }

    /** Whether the cover lies on a day. */
    boolean covered(int day) {
        int week = Math.floorDiv(day, 7);
        return coverFrom <= week && week < coverTo;
    }

    /** The first day without cover after those on which it lies. */
    int uncovered() {
        return 7 * coverTo;
    }

    /** Whether what is due in a week comes too late, the planting having been pulled. */
    boolean isPulledBefore(int week) {
        return isEarly && week > lastHeld;
    }

    /** Whether it holds its bed in a week. */
    boolean holds(int week) {
        return firstHeld <= week && week <= lastHeld;
    }
}
