package bedwright.plan;

/**
 * Until when there is room: for each shelf, each amount that anything takes up and each week, the first week from then on in
 * which so much more does not go in. Worked out where it is asked for, and anew once the shelf was changed: looked up, it
 * takes as long for a year as for a week.
 */
final class Vacancy {
    private final Uses uses;
    private final int weeks;
    private final int[] used;
    private final int[] holds;
    /** By shelf, then number of the amount; null where it was not asked for yet. */
    private final short[][] until;
    /** How many times the shelf had been changed when it was worked out. */
    private final int[] madeAt;

    private final int[] changes;

    /**
     * @param used of each shelf, by week
     * @param holds how much each shelf holds
     */
    Vacancy(Uses uses, int weeks, int[] used, int[] holds) {
        this.uses = uses;
        this.weeks = weeks;
        this.used = used;
        this.holds = holds;
        this.until = new short[holds.length * uses.sizes()][];
        this.madeAt = new int[until.length];
        this.changes = new int[holds.length];
    }

    /** Notes that another amount of a shelf is used. */
    void changed(int shelf) {
        changes[shelf]++;
    }

    /** Whether a shelf has room for so much more in all weeks of a stretch. */
    boolean has(int shelf, int size, int first, int end) {
        int row = shelf * uses.sizes() + size;
        short[] weeksUntil = until[row];
        if (weeksUntil == null || madeAt[row] != changes[shelf]) {
            weeksUntil = make(row, shelf, size);
        }
        return first >= end || weeksUntil[first] >= end;
    }

    private short[] make(int row, int shelf, int size) {
        short[] made = until[row] == null ? new short[weeks] : until[row];
        until[row] = made;
        madeAt[row] = changes[shelf];
        int most = holds[shelf] - uses.amount(size);
        int next = weeks;
        for (int w = weeks - 1; w >= 0; w--) {
            next = used[shelf * weeks + w] > most ? w : next;
            made[w] = (short) next;
        }
        return made;
    }
}
