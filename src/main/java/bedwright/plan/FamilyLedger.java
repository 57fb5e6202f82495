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
    /** Plantings by their first and last held week: (bed × families + family) × weeks + week. */
    private final int[] starts;

    private final int[] ends;
    private final int[] startChange;
    private final int[] endChange;
    private int[] touched = new int[16];
    private final boolean[] isTouched;
    private int touchedCount;
    private long restChange;

    FamilyLedger(PlanFacts facts) {
        this.facts = facts;
        this.figures = facts.figures;
        this.weeks = facts.weeks;
        this.families = facts.families;
        int cells = facts.followOnPrice == 0 ? 0 : facts.bench * families;
        this.starts = new int[cells * weeks];
        this.ends = new int[cells * weeks];
        this.startChange = new int[cells * weeks];
        this.endChange = new int[cells * weeks];
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
        if (isTouched.length == 0) {
            return;
        }
        int[] of = figures.of(place);
        int bedUse = figures.start(place) + Figures.FIRST_USE;
        int first = of[bedUse + 1];
        int end = of[bedUse + 2];
        int cell = figures.bed(place) * families + family;
        if (first >= end) {
            return;
        }
        if (!isTouched[cell]) {
            isTouched[cell] = true;
            if (touchedCount == touched.length) {
                touched = Arrays.copyOf(touched, 2 * touchedCount);
            }
            touched[touchedCount++] = cell;
        }
        startChange[cell * weeks + first] += sign;
        endChange[cell * weeks + end - 1] += sign;
    }

    void ask(Answer answer) {
        long followers = 0;
        for (int t = 0; t < touchedCount; t++) {
            followers += followers(touched[t], 1) - followers(touched[t], 0);
        }
        answer.add(Rule.FOLLOW_ON, followers * facts.followOnPrice);
        answer.add(Rule.REST_YEARS, restChange * facts.restPrice);
    }

    private long followers(int cell, int withChange) {
        int at = cell * weeks;
        int w = 0;
        while (w < weeks && ends[at + w] + withChange * endChange[at + w] == 0) {
            w++;
        }
        long followers = 0;
        for (w++; w < weeks; w++) {
            followers += starts[at + w] + withChange * startChange[at + w];
        }
        return followers;
    }

    void commit() {
        for (int t = 0; t < touchedCount; t++) {
            int at = touched[t] * weeks;
            for (int w = at; w < at + weeks; w++) {
                starts[w] += startChange[w];
                ends[w] += endChange[w];
            }
        }
        forget();
    }

    void forget() {
        for (int t = 0; t < touchedCount; t++) {
            int at = touched[t] * weeks;
            Arrays.fill(startChange, at, at + weeks, 0);
            Arrays.fill(endChange, at, at + weeks, 0);
            isTouched[touched[t]] = false;
        }
        touchedCount = 0;
        restChange = 0;
    }
}
