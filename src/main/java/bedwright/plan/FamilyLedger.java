package bedwright.plan;

import java.util.Arrays;

/**
 * Which families stand when in which bed, with the rules {@link Rule#FOLLOW_ON} and {@link Rule#REST_YEARS}.
 *
 * <p>A planting follows on if another of its family in its bed has ended before it starts: that is, if it starts after
 * the earliest end of all of them, since no planting ends before it starts.
 */
final class FamilyLedger {
    private final PlanFacts facts;
    private final Figures figures;
    private final int weeks;
    private final int families;
    /** Plantings by their first and last held week: (bed × families + family) × weeks + week. With the posted changes. */
    private final short[] starts;

    private final short[] ends;
    /** Plantings that follow on, by bed and family, in the plan measured from. */
    private final int[] followers;

    private int[] touched = new int[16];
    private final boolean[] isTouched;
    private int touchedCount;
    /** Posted changes: cell × weeks + first week, cell × weeks + last week, sign. */
    private int[] posted = new int[48];

    private int postedEnd;
    private long restChange;

    FamilyLedger(PlanFacts facts) {
        this.facts = facts;
        this.figures = facts.figures;
        this.weeks = facts.weeks;
        this.families = facts.families;
        int cells = facts.followOnPrice == 0 ? 0 : facts.bench * families;
        this.starts = new short[cells * weeks];
        this.ends = new short[cells * weeks];
        this.followers = new int[cells];
        this.isTouched = new boolean[cells];
    }

    void post(int place, int sign) {
        int family = facts.familyOf[figures.stock(place)];
        if (family < 0) {
            return;
        }
        if (facts.restBroken[place]) {
            restChange += sign;
        }
        int[] of = figures.of(place);
        int first = of[figures.start(place) + Figures.STOOD_FROM];
        int end = of[figures.start(place) + Figures.STOOD_TO];
        if (isTouched.length == 0 || first >= end) {
            return;
        }
        int cell = figures.bed(place) * families + family;
        touch(cell);
        if (postedEnd == posted.length) {
            posted = Arrays.copyOf(posted, 2 * postedEnd);
        }
        posted[postedEnd++] = cell * weeks + first;
        posted[postedEnd++] = cell * weeks + end - 1;
        posted[postedEnd++] = sign;
        count(cell * weeks + first, cell * weeks + end - 1, sign);
    }

    private void count(int start, int end, int sign) {
        starts[start] += (short) sign;
        ends[end] += (short) sign;
    }

    private void touch(int cell) {
        if (!isTouched[cell]) {
            isTouched[cell] = true;
            if (touchedCount == touched.length) {
                touched = Arrays.copyOf(touched, 2 * touchedCount);
            }
            touched[touchedCount++] = cell;
        }
    }

    void ask(Answer answer) {
        long more = 0;
        for (int t = 0; t < touchedCount; t++) {
            more += followers(touched[t]) - followers[touched[t]];
        }
        answer.add(Rule.FOLLOW_ON, more * facts.followOnPrice);
        answer.add(Rule.REST_YEARS, restChange * facts.restPrice);
    }

    private int followers(int cell) {
        int end = (cell + 1) * weeks;
        int w = cell * weeks;
        while (w < end && ends[w] == 0) {
            w++;
        }
        int count = 0;
        for (w++; w < end; w++) {
            count += starts[w];
        }
        return count;
    }

    void commit() {
        for (int t = 0; t < touchedCount; t++) {
            followers[touched[t]] = followers(touched[t]);
        }
        // What was posted is now part of the plan, so there is nothing to take back.
        postedEnd = 0;
        forget();
    }

    void forget() {
        for (int i = 0; i < postedEnd; i += 3) {
            count(posted[i], posted[i + 1], -posted[i + 2]);
        }
        postedEnd = 0;
        for (int t = 0; t < touchedCount; t++) {
            isTouched[touched[t]] = false;
        }
        touchedCount = 0;
        restChange = 0;
    }
}
