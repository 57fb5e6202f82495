package bedwright.plan;

import bedwright.growth.ProspectTable;

/**
 * Which bed each place holds, from when to when and how much of it, one number a place: what a search looks up most, and
 * at random, so that it has to lie close together.
 *
 * <p>From the highest bits: bed 16, first week 8, end 8, number of the length among the amounts of
 * {@link Uses} 32.
 */
final class Holds {
    private static final int WEEK = 0xff;
    private final long[] packed;
    private final Uses uses;

    Holds(ProspectTable table, Uses uses) {
        this.uses = uses;
        packed = new long[table.places()];
        for (int place = 0; place < packed.length; place++) {
            int row = table.row(place);
            packed[place] = (long) table.bed(place) << 48
                    | (long) table.heldFrom(row) << 40
                    | (long) table.heldTo(row) << 32
                    | uses.sizeInBed(place);
        }
    }

    int bed(int place) {
        return (int) (packed[place] >>> 48);
    }

    int from(int place) {
        return (int) (packed[place] >>> 40) & WEEK;
    }

    /** End of the hold, not included. */
    int to(int place) {
        return (int) (packed[place] >>> 32) & WEEK;
    }

    /** The number of its length among all amounts. */
    int size(int place) {
        return (int) packed[place];
    }

    int millimetres(int place) {
        return uses.amount(size(place));
    }

    /** Whether two places hold one bed in a same week. */
    boolean overlap(int one, int other) {
        return bed(one) == bed(other) && from(one) < to(other) && from(other) < to(one);
    }
}
