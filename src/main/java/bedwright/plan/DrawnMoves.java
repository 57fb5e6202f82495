package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.Iterator;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * Draws moves without end, each kind with its share. Only moves after which beds, bench and stock still hold what is put
 * in them are given, since a search that lets no hard rule be broken would refuse all others.
 */
final class DrawnMoves implements Iterator<Put> {
    /** Farthest shift by weeks, one way. */
    private static final int FARTHEST_SHIFT = 3;
    /** Places or plantings tried before a kind of move gives up and another is drawn. */
    private static final int TRIES = 8;
    /** Most lots of a job that are moved together. */
    private static final int MOST_LOTS = 8;
    /** Most plantings of two beds that trade all that stands in them. */
    private static final int MOST_TRADED = 16;
    /** Draws before it is taken that there is nothing to move. */
    private static final int DRAWS = 10_000;
    /** Moves in a row that may be refused before the solver is let look whether it is to end. */
    private static final int MOST_REFUSED = 300;
    /** Of plantings that others make way for, one in so many is any planting, and one in so many is put anywhere. */
    private static final int ANY = 8;
    /** One in so many of them stays in its bed. */
    private static final int SAME_BED = 4;
    /** Farthest shift by weeks, one way, where the method changes. */
    private static final int FARTHEST_WITH_METHOD = 5;
    /** Tries to find another place for a planting that makes room. */
    private static final int OTHER_PLACES = 4;

    /** Most plantings that make room for another. */
    private static final int MOST_GIVE_WAY = 3;
    /** Instead of the number of a planting. */
    private static final int NONE = -1;

    private final Layout layout;
    private final PlanFacts facts;
    private final ProspectTable table;
    private final RandomGenerator random;
    private final @Nullable Probe probe;
    private final Givers givers;
    private final @Nullable Metropolis metropolis;
    private final MakingWay makingWay;

    /**
     * @param layout which follows the plan
     * @param metropolis who decides which of the moves are given, or null to give all that fit
     */
    DrawnMoves(Layout layout, @Nullable Metropolis metropolis, @Nullable Probe probe, RandomGenerator random) {
        this.metropolis = metropolis;
        this.layout = layout;
        this.facts = layout.facts();
        this.table = facts.table();
        this.random = random;
        this.probe = probe;
        this.givers = facts.givers();
        this.makingWay = new MakingWay(layout, metropolis, random);
    }

    @Override
    public boolean hasNext() {
        return layout.free() > 0;
    }

    @Override
    public Put next() {
        int refused = 0;
        for (int i = 0; i < DRAWS && refused < MOST_REFUSED; i++) {
            layout.begin();
            if (metropolis != null) {
                metropolis.begin();
            }
            if (compose(random.nextInt(100)) && layout.moved() > 0) {
                if (metropolis == null || metropolis.accepts(random)) {
                    return layout.asMove();
                }
                refused++;
            }
        }
        // Nothing that fits or is accepted: leave one where it is.
        if (metropolis != null) {
            metropolis.countNone();
        }
        layout.begin();
        int planting = any();
        layout.move(planting, layout.place(planting));
        return layout.asMove();
    }

    /** Makes the layout's trial a move of a kind, each with its share of a hundred; false if it found none. */
    private boolean compose(int kind) {
        if (kind < 33) {
            return makeWay();
        } else if (kind < 35) {
            return fillShortWeek();
        } else if (kind < 44) {
            return place();
        } else if (kind < 45) {
            return clear();
        } else if (kind < 54) {
            return shift();
        } else if (kind < 63) {
            return changeBed();
        } else if (kind < 70) {
            return changeMethod();
        } else if (kind < 86) {
            return swap();
        } else if (kind < 96) {
            return replace();
        } else if (kind < 98) {
            return moveJob();
        } else if (kind < 99) {
            return makeRoom();
        }
        return random.nextBoolean() ? makeRoom() : tradeBeds();
    }

    private int any() {
        return layout.free(random.nextInt(layout.free()));
    }

    /** A planting that has a place, or {@link #NONE}. */
    private int placed() {
        return layout.placed() == 0 ? NONE : layout.free(random.nextInt(layout.placed()));
    }

    /** A planting that is left out, or {@link #NONE}. */
    private int leftOut() {
        int count = layout.free() - layout.placed();
        return count == 0 ? NONE : layout.free(layout.placed() + random.nextInt(count));
    }

    private int anyPlace(int stock) {
        int first = table.firstPlace(stock);
        int count = table.firstPlace(stock + 1) - first;
        return count == 0 ? SeasonScore.NOWHERE : first + random.nextInt(count);
    }

    private int find(int planting, int bed, int week, int method) {
        return table.find(facts.stockOf[planting], bed, week, method);
    }

    private boolean tryAt(int planting, int to) {
        return to >= 0 && to != layout.place(planting) && layout.moveIfFits(planting, to);
    }

    /** A planting some weeks away, by another method or anywhere, and if its new bed is full another gives way there. */
    private boolean makeWay() {
        int planting = random.nextInt(ANY) == 0 ? any() : placed();
        return planting != NONE && makingWay.put(planting, elsewhere(planting));
    }

    private int elsewhere(int planting) {
        int from = layout.place(planting);
        if (from < 0 || facts.stays(planting) || random.nextInt(ANY) == 0) {
            return anyPlace(facts.stockOf[planting]);
        }
        int bed = random.nextInt(SAME_BED) == 0 ? table.bed(from) : random.nextInt(facts.bench);
        return random.nextBoolean()
                ? find(planting, bed, table.sowWeek(from) + weeks(), table.method(from))
                : find(
                        planting,
                        bed,
                        table.sowWeek(from) + random.nextInt(-FARTHEST_WITH_METHOD, FARTHEST_WITH_METHOD + 1),
                        random.nextInt(facts.methods(facts.stockOf[planting])));
    }

    /** Any planting at any of its places. */
    private boolean place() {
        int planting = any();
        for (int i = 0; i < TRIES; i++) {
            if (tryAt(planting, anyPlace(facts.stockOf[planting]))) {
                return true;
            }
        }
        return false;
    }

    /** Leaves a planting out. */
    private boolean clear() {
        int planting = placed();
        if (planting == NONE) {
            return false;
        }
        layout.move(planting, SeasonScore.NOWHERE);
        return true;
    }

    /** A few weeks sooner or later, in the same bed and by the same method. */
    private boolean shift() {
        int planting = placed();
        if (planting != NONE && facts.stays(planting)) {
            return tryAt(planting, anyPlace(facts.stockOf[planting]));
        }
        return planting != NONE && tryAt(planting, shifted(planting));
    }

    private int shifted(int planting) {
        int from = layout.place(planting);
        return find(planting, table.bed(from), table.sowWeek(from) + weeks(), table.method(from));
    }

    /** One to a few weeks, one way or the other. */
    private int weeks() {
        int weeks = 1 + random.nextInt(FARTHEST_SHIFT);
        return random.nextBoolean() ? weeks : -weeks;
    }

    /** Another bed in the same week, by the same method. */
    private boolean changeBed() {
        int planting = placed();
        if (planting == NONE) {
            return false;
        }
        int from = layout.place(planting);
        for (int i = 0; i < TRIES; i++) {
            if (tryAt(planting, find(planting, random.nextInt(facts.bench), table.sowWeek(from), table.method(from)))) {
                return true;
            }
        }
        return false;
    }

    /** Another method in the same bed, sown so that it still comes in about the same time. */
    private boolean changeMethod() {
        int planting = placed();
        if (planting == NONE) {
            return false;
        }
        int from = layout.place(planting);
        int methods = facts.methods(facts.stockOf[planting]);
        for (int i = 0; i < TRIES; i++) {
            int week = table.sowWeek(from) + random.nextInt(-FARTHEST_WITH_METHOD, FARTHEST_WITH_METHOD + 1);
            int to = find(planting, table.bed(from), week, random.nextInt(methods));
            if (to >= 0 && table.method(to) != table.method(from) && tryAt(planting, to)) {
                return true;
            }
        }
        return false;
    }

    /** Two plantings trade beds and about their weeks. */
    private boolean swap() {
        int one = placed();
        int other = placed();
        if (one == NONE || other == NONE || one == other) {
            return false;
        }
        int onePlace = layout.place(one);
        int otherPlace = layout.place(other);
        int oneTo = startingLike(one, onePlace, otherPlace);
        int otherTo = startingLike(other, otherPlace, onePlace);
        if (oneTo < 0 || otherTo < 0 || (oneTo == onePlace && otherTo == otherPlace)) {
            return false;
        }
        if (facts.stockOf[one] == facts.stockOf[other] && oneTo == otherPlace && otherTo == onePlace) {
            // Of lots that are all alike it does not matter which stands where.
            return false;
        }
        if (table.bed(onePlace) != table.bed(otherPlace)
                && !(layout.hasBedRoom(oneTo, otherPlace) && layout.hasBedRoom(otherTo, onePlace))) {
            return false;
        }
        layout.move(one, oneTo);
        layout.move(other, otherTo);
        return layout.fits();
    }

    /** A place of a planting in the bed of another place, in the ground from about the same week. */
    private int startingLike(int planting, int own, int other) {
        int start = facts.holds.from(other);
        int method = own >= 0 ? table.method(own) : random.nextInt(facts.methods(facts.stockOf[planting]));
        int away = facts.weeksToTheBed(facts.stockOf[planting], method);
        int first = random.nextInt(3) - 1;
        for (int i = 0; i < 3; i++) {
            int to = find(planting, table.bed(other), start - away + first, method);
            if (to >= 0) {
                return to;
            }
            first = first == 1 ? -1 : first + 1;
        }
        return -1;
    }

    /**
     * Puts a planting where it gives stems of a kind and week in which somebody promised goes short; another gives way if need
     * be.
     */
    private boolean fillShortWeek() {
        SolverScore live = probe == null ? null : probe.live();
        if (live == null) {
            return false;
        }
        int to = givers.draw(random, live.score());
        int planting = to < 0 ? NONE : lotOf(table.stock(to));
        return planting != NONE && makingWay.put(planting, to);
    }

    /** A free lot of a stock: one left out if a few draws find one, else any. */
    private int lotOf(int stock) {
        int first = facts.firstPlanting(stock);
        int count = facts.firstPlanting(stock + 1) - first;
        if (count == 0) {
            return NONE;
        }
        int last = NONE;
        for (int i = 0; i < TRIES; i++) {
            int planting = first + random.nextInt(count);
            if (facts.isFixed(planting)) {
                continue;
            }
            if (layout.place(planting) < 0) {
                return planting;
            }
            last = planting;
        }
        return last;
    }

    /** Leaves a planting out and puts another crop's in its bed, from about the same week on. */
    private boolean replace() {
        int out = placed();
        int in = leftOut();
        if (out == NONE || in == NONE || facts.stockOf[in] == facts.stockOf[out]) {
            return false;
        }
        int to = startingLike(in, SeasonScore.NOWHERE, layout.place(out));
        if (to < 0 || !layout.hasBedRoom(to, layout.place(out))) {
            return false;
        }
        layout.move(out, SeasonScore.NOWHERE);
        layout.move(in, to);
        return layout.fits();
    }

    /** Moves all lots of a job, or some, together: by weeks, to another bed, or both. */
    private boolean moveJob() {
        int planting = placed();
        if (planting == NONE) {
            return false;
        }
        int from = layout.place(planting);
        int bed = random.nextBoolean() ? table.bed(from) : random.nextInt(facts.bench);
        int week = table.sowWeek(from) + (bed == table.bed(from) || random.nextBoolean() ? weeks() : 0);
        int to = find(planting, bed, week, table.method(from));
        if (to < 0 || to == from) {
            return false;
        }
        int first = facts.firstPlanting(facts.stockOf[planting]);
        int end = facts.firstPlanting(facts.stockOf[planting] + 1);
        for (int p = first; p < end && layout.moved() < MOST_LOTS; p++) {
            if (!facts.isFixed(p) && layout.place(p) == from && !layout.moveIfFits(p, to)) {
                break;
            }
        }
        return layout.moved() > 1;
    }

    /** Puts a planting where others stand, which give way: by some weeks, into another bed, or altogether. */
    private boolean makeRoom() {
        int in = random.nextInt(3) == 0 ? any() : leftOut();
        if (in == NONE) {
            return false;
        }
        int to = anyPlace(facts.stockOf[in]);
        if (to < 0 || to == layout.place(in)) {
            return false;
        }
        layout.move(in, to);
        int bed = table.bed(to);
        int count = layout.inBed(bed);
        int start = count == 0 ? 0 : random.nextInt(count);
        for (int i = 0; i < count && layout.moved() <= MOST_GIVE_WAY; i++) {
            if (layout.fits()) {
                return true;
            }
            int index = start + i;
            int other = layout.inBed(bed, index < count ? index : index - count);
            if (other != in && facts.holds.overlap(layout.place(other), to)) {
                giveWay(other);
            }
        }
        return layout.fits();
    }

    /** Puts a planting where there is room: some weeks away or into another bed, else nowhere. */
    private void giveWay(int planting) {
        int from = layout.place(planting);
        for (int i = 0; i < OTHER_PLACES; i++) {
            int to = random.nextBoolean()
                    ? shifted(planting)
                    : find(
                            planting,
                            random.nextInt(facts.bench),
                            table.sowWeek(from) + random.nextInt(3) - 1,
                            table.method(from));
            if (to >= 0 && to != from) {
                layout.move(planting, to);
                if (layout.fits()) {
                    return;
                }
                layout.takeBack();
            }
        }
        layout.move(planting, SeasonScore.NOWHERE);
    }

    /** Two beds trade all that stands in them, or all that comes there from some week on: same weeks, same methods. */
    private boolean tradeBeds() {
        int one = random.nextInt(facts.bench);
        int other = random.nextInt(facts.bench);
        int count = layout.inBed(one) + layout.inBed(other);
        if (one == other || count == 0 || count > MOST_TRADED) {
            return false;
        }
        int from = random.nextBoolean() ? 0 : random.nextInt(facts.weeks);
        return moveBed(one, other, from) && moveBed(other, one, from) && layout.fits();
    }

    /** Moves what comes to a bed from a week on to another; false where one of them has no such place there. */
    private boolean moveBed(int bed, int to, int from) {
        for (int i = 0; i < layout.inBed(bed); i++) {
            int planting = layout.inBed(bed, i);
            int place = layout.place(planting);
            if (facts.holds.from(place) >= from) {
                int there = find(planting, to, table.sowWeek(place), table.method(place));
                if (there < 0) {
                    return false;
                }
                layout.move(planting, there);
            }
        }
        return true;
    }
}
