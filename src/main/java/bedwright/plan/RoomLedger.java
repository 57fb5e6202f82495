package bedwright.plan;

import java.util.Arrays;

/**
 * What plantings take up by the week of beds, bench and stocks, with the rules {@link Rule#BED_ROOM}, {@link
 * Rule#BENCH_ROOM}, {@link Rule#STOCK_ROOM} and {@link Rule#EXTRA_STOCK}.
 *
 * <p>Holds what is used by the plan it measures from. A trial is a list of uses, added or taken away; as a rule they fit
 * where nothing is overfull, and then cost nothing, so they are looked at where they lie. Only else are they summed up by
 * the week.
 */
final class RoomLedger {
    private final PlanFacts facts;
    /** Of {@link Uses}. */
    private final int[] all;

    private final Vacancy vacancy;
    private final int weeks;
    private final Shelf[] shelves;
    private final int[] used;
    /** How much each shelf holds, as far as an int goes. */
    private final int[] holds;

    private final boolean[] canGrow;
    /** Whether more is used than there is, in the plan measured from. */
    private final boolean[] isOver;

    /** The places posted, as what is added (the place) or taken away (−1 − the place). */
    private int[] posted = new int[16];

    private int postedCount;
    /** How many of them are listed by use, and how many uses there were before each. */
    private int listed;

    private int[] usesBefore = new int[16];
    private int[] shelf = new int[32];
    private int[] first = new int[32];
    private int[] end = new int[32];
    private int[] amount = new int[32];
    private int[] size = new int[32];
    private int uses;

    private final int[] change;
    private final boolean[] isTouched;
    private boolean isSummed;

    RoomLedger(PlanFacts facts) {
        this.facts = facts;
        this.all = facts.uses.all;
        this.weeks = facts.weeks;
        this.shelves = facts.shelves.toArray(Shelf[]::new);
        this.used = new int[shelves.length * weeks];
        this.change = new int[used.length];
        this.isTouched = new boolean[shelves.length];
        this.isOver = new boolean[shelves.length];
        this.holds = new int[shelves.length];
        this.canGrow = new boolean[shelves.length];
        for (int s = 0; s < holds.length; s++) {
            holds[s] = (int) Math.min(shelves[s].holds(), Integer.MAX_VALUE);
            canGrow[s] = shelves[s].price() > 0;
            for (int w = 0; w < weeks; w++) {
                // What is not there is as good as used.
                used[s * weeks + w] = (int) shelves[s].missing(facts.season, w);
            }
        }
        this.vacancy = new Vacancy(facts.uses, weeks, used, holds);
    }

    /** Adds (sign 1) or takes away (sign −1) what a place takes up. */
    void post(int place, int sign) {
        if (postedCount == posted.length) {
            posted = Arrays.copyOf(posted, 2 * postedCount);
            usesBefore = Arrays.copyOf(usesBefore, 2 * postedCount);
        }
        posted[postedCount++] = sign > 0 ? place : -1 - place;
    }

    /** Lists the uses of what is posted. */
    private void list() {
        for (; listed < postedCount; listed++) {
            usesBefore[listed] = uses;
            int one = posted[listed];
            list(one >= 0 ? one : -1 - one, one >= 0 ? 1 : -1);
        }
    }

    private void list(int place, int sign) {
        int at = facts.uses.start(place);
        int count = all[at++];
        if (uses + count > shelf.length) {
            grow(2 * (uses + count));
        }
        for (int u = 0; u < count; u++, at += Uses.A_USE) {
            shelf[uses] = shelf(at, place);
            first[uses] = all[at + Uses.FIRST];
            end[uses] = all[at + Uses.END];
            amount[uses] = sign * all[at + Uses.AMOUNT];
            size[uses] = all[at + Uses.SIZE];
            uses++;
        }
    }

    /** The shelf of the use at {@code use}, one of a place. */
    private int shelf(int use, int place) {
        int shelf = all[use + Uses.SHELF];
        return shelf < 0 ? facts.holds.bed(place) : shelf;
    }

    private void grow(int length) {
        shelf = Arrays.copyOf(shelf, length);
        first = Arrays.copyOf(first, length);
        end = Arrays.copyOf(end, length);
        amount = Arrays.copyOf(amount, length);
        size = Arrays.copyOf(size, length);
    }

    /** How much is posted, to come back to with {@link #backTo}. */
    int posted() {
        return postedCount;
    }

    /** Takes back what was posted since. */
    void backTo(int count) {
        postedCount = count;
        if (listed > count) {
            listed = count;
            uses = usesBefore[count];
        }
    }

    /**
     * Whether what a place takes up fits beside the plan measured from; said of what can't be added to.
     *
     * @param without a place that is left for it, or {@link SeasonScore#NOWHERE}
     */
    boolean fits(int place, int without) {
        return fitsFrom(0, place, without);
    }

    /** The same whatever there is in its bed. */
    boolean fitsBesidesBed(int place, int without) {
        return fitsFrom(1, place, without);
    }

    private boolean fitsFrom(int firstUse, int place, int without) {
        int at = facts.uses.start(place);
        int end = at + 1 + all[at] * Uses.A_USE;
        for (int use = at + 1 + firstUse * Uses.A_USE; use < end; use += Uses.A_USE) {
            int on = shelf(use, place);
            if (!canGrow[on] && !fits(on, use, without)) {
                return false;
            }
        }
        return true;
    }

    /** Whether the use at {@code use} fits on a shelf. */
    private boolean fits(int on, int use, int without) {
        if (has(on, all[use + Uses.SIZE], all[use + Uses.FIRST], all[use + Uses.END])) {
            return true;
        }
        if (without >= 0) {
            int at = facts.uses.start(without);
            for (int u = all[at++]; u > 0; u--, at += Uses.A_USE) {
                if (shelf(at, without) == on) {
                    return has(
                            on,
                            all[use + Uses.SIZE],
                            all[use + Uses.FIRST],
                            all[use + Uses.END],
                            all[at + Uses.FIRST],
                            all[at + Uses.END],
                            all[at + Uses.AMOUNT]);
                }
            }
        }
        return false;
    }

    /** Whether a shelf has room for one of the amounts more in all weeks of a stretch, beside what the plan measured from uses. */
    boolean has(int shelf, int size, int first, int end) {
        return vacancy.has(shelf, size, first, end);
    }

    /** The same where something of so much, held in another stretch of the same shelf, goes away. */
    boolean has(int shelf, int size, int first, int end, int outFirst, int outEnd, int out) {
        int bothFirst = Math.max(first, outFirst);
        int bothEnd = Math.min(end, outEnd);
        if (bothFirst >= bothEnd) {
            return has(shelf, size, first, end);
        }
        int more = facts.uses.amount(size) - out;
        return has(shelf, size, first, bothFirst)
                && has(shelf, size, bothEnd, end)
                && (more <= 0 || holds(shelf, more, bothFirst, bothEnd));
    }

    /** Whether no more than a shelf holds is used in a stretch with so much more. */
    private boolean holds(int shelf, int more, int first, int end) {
        int most = holds[shelf] - more;
        for (int w = shelf * weeks + first; w < shelf * weeks + end; w++) {
            if (used[w] > most) {
                return false;
            }
        }
        return true;
    }

    /** Whether the posted changes go (further) beyond what there is of a shelf that can't be added to. */
    boolean isWorse() {
        list();
        for (int u = 0; u < uses; u++) {
            if (amount[u] > 0 && !canGrow[shelf[u]] && isBeyond(u)) {
                return true;
            }
        }
        return false;
    }

    /** Whether with the posted changes more is used than there is in a week of use u that takes more than before. */
    private boolean isBeyond(int u) {
        int s = shelf[u];
        int others = 0;
        for (int o = 0; o < uses; o++) {
            others += shelf[o] == s && first[o] < end[u] && first[u] < end[o] ? 1 : 0;
        }
        return others == 1 ? !has(s, size[u], first[u], end[u]) : isBeyond(u, s);
    }

    private boolean isBeyond(int u, int s) {
        int at = s * weeks;
        for (int w = first[u]; w < end[u]; w++) {
            int more = 0;
            for (int o = 0; o < uses; o++) {
                more += shelf[o] == s && first[o] <= w && w < end[o] ? amount[o] : 0;
            }
            if (more > 0 && used[at + w] + more > holds[s]) {
                return true;
            }
        }
        return false;
    }

    /** Adds to an answer what the posted changes cost more, or less. */
    void ask(Answer answer) {
        if (fitsAsBefore()) {
            return;
        }
        sumUp();
        for (int s = 0; s < shelves.length; s++) {
            if (isTouched[s]) {
                Shelf one = shelves[s];
                long more = canGrow[s]
                        ? overPeak(one, s * weeks, 1) - overPeak(one, s * weeks, 0)
                        : overSum(one, s * weeks);
                answer.add(one.rule(), more * (canGrow[s] ? one.price() : one.hard()));
            }
        }
    }

    /** Whether nothing was overfull where the changes lie, and nothing is. */
    private boolean fitsAsBefore() {
        if (postedCount == 1) {
            return posted[0] >= 0 ? fitsAsBefore(posted[0], SeasonScore.NOWHERE) : isNowhereOver(-1 - posted[0]);
        }
        if (postedCount == 2 && posted[0] < 0 && posted[1] >= 0) {
            return fitsAsBefore(posted[1], -1 - posted[0]);
        }
        list();
        for (int u = 0; u < uses; u++) {
            if (isOver[shelf[u]] || (amount[u] > 0 && isBeyond(u))) {
                return false;
            }
        }
        return true;
    }

    /** The same where one planting takes up a place and leaves another, or none. */
    private boolean fitsAsBefore(int place, int without) {
        if (!isNowhereOver(place) || (without >= 0 && !isNowhereOver(without))) {
            return false;
        }
        int at = facts.uses.start(place);
        for (int u = all[at++]; u > 0; u--, at += Uses.A_USE) {
            if (!fits(shelf(at, place), at, without)) {
                return false;
            }
        }
        return true;
    }

    /** Whether nothing that a place takes up is overfull in any week. */
    private boolean isNowhereOver(int place) {
        int at = facts.uses.start(place);
        for (int u = all[at++]; u > 0; u--, at += Uses.A_USE) {
            if (isOver[shelf(at, place)]) {
                return false;
            }
        }
        return true;
    }

    private void sumUp() {
        isSummed = true;
        list();
        for (int u = 0; u < uses; u++) {
            isTouched[shelf[u]] = true;
            int at = shelf[u] * weeks;
            for (int w = at + first[u]; w < at + end[u]; w++) {
                change[w] += amount[u];
            }
        }
    }

    private long overSum(Shelf shelf, int at) {
        long most = shelf.holds();
        long more = 0;
        for (int w = at; w < at + weeks; w++) {
            int before = used[w];
            more += Math.max(0, before + change[w] - most) - Math.max(0, before - most);
        }
        return more;
    }

    private long overPeak(Shelf shelf, int at, int withChange) {
        long peak = shelf.holds();
        for (int w = at; w < at + weeks; w++) {
            peak = Math.max(peak, used[w] + withChange * change[w]);
        }
        return peak - shelf.holds();
    }

    /** Makes the posted changes part of what is used. */
    void commit() {
        list();
        for (int u = 0; u < uses; u++) {
            int at = shelf[u] * weeks;
            for (int w = at + first[u]; w < at + end[u]; w++) {
                used[w] += amount[u];
            }
        }
        for (int u = 0; u < uses; u++) {
            int s = shelf[u];
            vacancy.changed(s);
            isOver[s] = !holds(s, 0, 0, weeks);
        }
        forget();
    }

    /** Takes the posted changes back. */
    void forget() {
        postedCount = 0;
        listed = 0;
        uses = 0;
        if (isSummed) {
            isSummed = false;
            Arrays.fill(change, 0);
            Arrays.fill(isTouched, false);
        }
    }

    /** What is used of a shelf in a week: mm or cells. */
    int used(int shelf, int week) {
        return used[shelf * weeks + week];
    }
}
