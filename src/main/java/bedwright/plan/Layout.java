package bedwright.plan;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where the plantings of a search's working plan stand, for moves that look before they are tried: most places that
 * could be drawn lie in a bed that is full, and whether there is room is told without asking for a score. Moves are put together here, one planting after the other, as a trial.
 */
final class Layout {
    private static final int NONE = -1;

    private final PlanFacts facts;
    private final RoomLedger room;
    private final int[] place;
    /** The plantings that may move: first those that have a place, then those that are left out. */
    private final int[] free;

    private final int[] indexInFree;
    private int placed;
    /** The plantings that may move and stand in each bed, and where each stands in its bed's list. */
    private final int[][] inBed;

    private final int[] countInBed;
    private final int[] indexInBed;
    private List<Planting> plantings = List.of();

    /** Plantings whose move, lately followed, a score may not have taken over yet. */
    private int[] followed = new int[16];

    private int unsure;

    private int[] moved = new int[8];
    private int[] to = new int[8];
    private int count;
    /** How many of them have been posted: only where several are moved is it needed. */
    private int inRoom;
    /** What had been posted before each. */
    private int[] before = new int[8];

    Layout(PlanFacts facts) {
        this.facts = facts;
        this.room = new RoomLedger(facts);
        this.place = new int[facts.plantings()];
        this.free = facts.free.clone();
        this.indexInFree = new int[place.length];
        this.inBed = new int[facts.bench][4];
        this.countInBed = new int[facts.bench];
        this.indexInBed = new int[place.length];
        Arrays.fill(place, SeasonScore.NOWHERE);
        Arrays.fill(indexInFree, NONE);
        for (int i = 0; i < free.length; i++) {
            indexInFree[free[i]] = i;
        }
    }

    /** Takes the places of a plan's plantings over, and begins a trial from there. */
    void follow(List<Planting> now) {
        follow(now, null);
    }

    /**
     * The same, looking only at what was moved since it was last done.
     *
     * @param probe which notes what is moved, or null
     */
    void follow(List<Planting> now, @Nullable Probe probe) {
        begin();
        if (probe != null && plantings == now && !probe.isAnotherPlan()) {
            for (int i = 0; i < probe.movedCount(); i++) {
                follow(probe.movedPlanting(i));
            }
        } else {
            plantings = now;
            for (int p = 0; p < place.length; p++) {
                follow(p);
            }
        }
        if (probe != null) {
            probe.forgetMoved();
        }
    }

    private void follow(int planting) {
        int at = plantings.get(planting).place();
        if (at != place[planting]) {
            post(place[planting], -1);
            post(at, 1);
            room.commit();
            note(planting, at);
            if (unsure == followed.length) {
                followed = Arrays.copyOf(followed, 2 * unsure);
            }
            followed[unsure++] = planting;
        }
    }

    private void note(int planting, int at) {
        int from = place[planting];
        place[planting] = at;
        int index = indexInFree[planting];
        if (index == NONE) {
            return;
        }
        changeBed(planting, from, at);
        if ((from >= 0) == (at >= 0)) {
            return;
        }
        if (at >= 0) {
            exchange(index, placed++);
        } else {
            exchange(index, --placed);
        }
    }

    private void changeBed(int planting, int from, int at) {
        if (from >= 0) {
            int bed = facts.holds.bed(from);
            int last = inBed[bed][--countInBed[bed]];
            inBed[bed][indexInBed[planting]] = last;
            indexInBed[last] = indexInBed[planting];
        }
        if (at >= 0) {
            int bed = facts.holds.bed(at);
            int count = countInBed[bed]++;
            if (count == inBed[bed].length) {
                inBed[bed] = Arrays.copyOf(inBed[bed], 2 * count);
            }
            inBed[bed][count] = planting;
            indexInBed[planting] = count;
        }
    }

    private void exchange(int i, int j) {
        int one = free[i];
        free[i] = free[j];
        free[j] = one;
        indexInFree[free[i]] = i;
        indexInFree[free[j]] = j;
    }

    private void post(int at, int sign) {
        if (at >= 0) {
            room.post(at, sign);
        }
    }

    PlanFacts facts() {
        return facts;
    }

    /** How many plantings may move. */
    int free() {
        return free.length;
    }

    /** How many of them have a place. */
    int placed() {
        return placed;
    }

    /** The i-th of the plantings that may move; those that have a place come first. */
    int free(int i) {
        return free[i];
    }

    /** How many of those that may move stand in a bed. */
    int inBed(int bed) {
        return countInBed[bed];
    }

    /** The i-th of those that may move and stand in a bed. */
    int inBed(int bed, int i) {
        return inBed[bed][i];
    }

    /** Begins a new trial from where the plantings stand. */
    void begin() {
        room.forget();
        inRoom = 0;
        count = 0;
    }

    /** Where a planting stands, before the trial. */
    int place(int planting) {
        return place[planting];
    }

    /** Puts a planting elsewhere in the trial; each only once, but the last may be taken back. */
    void move(int planting, int at) {
        boolean mayNot = at < 0 ? facts.stays(planting) : facts.isRefused(planting, at);
        if (count == moved.length) {
            moved = Arrays.copyOf(moved, 2 * count);
            to = Arrays.copyOf(to, 2 * count);
        }
        moved[count] = planting;
        to[count++] = mayNot ? place[planting] : at;
    }

    /** Takes back the last that was moved in the trial. */
    void takeBack() {
        count--;
        if (inRoom > count) {
            inRoom = count;
            room.backTo(before[inRoom]);
        }
    }

    /** Moves a planting in the trial if it then all still fits; else nothing is changed. */
    boolean moveIfFits(int planting, int at) {
        if (count == 0) {
            int from = place[planting];
            if (!hasBedRoom(at, from) || !room.fits(at, from)) {
                return false;
            }
            move(planting, at);
            return true;
        }
        move(planting, at);
        if (fits()) {
            return true;
        }
        takeBack();
        return false;
    }

    /**
     * A first look at little cost, before anything is moved: false only if the bed of a place is too full, whatever else
     * there may be.
     *
     * @param without a place that something leaves, or {@link SeasonScore#NOWHERE}
     */
    boolean hasBedRoom(int at, int without) {
        Holds holds = facts.holds;
        int bed = holds.bed(at);
        int from = holds.from(at);
        int to = holds.to(at);
        int size = holds.size(at);
        if (without < 0 || holds.bed(without) != bed) {
            return room.has(bed, size, from, to);
        }
        return room.has(bed, size, from, to, holds.from(without), holds.to(without), holds.millimetres(without));
    }

    /**
     * Whether bench and stocks have what a place takes up, whatever its bed has; before anything is moved.
     *
     * @param without a place that is left for it, or {@link SeasonScore#NOWHERE}
     */
    boolean hasRoomBesidesBed(int at, int without) {
        return room.fitsBesidesBed(at, without);
    }

    /** Whether the trial takes up no more of beds, bench and stock than there is, or than is taken up already. */
    boolean fits() {
        while (inRoom < count) {
            if (inRoom == before.length) {
                before = Arrays.copyOf(before, 2 * inRoom);
            }
            before[inRoom] = room.posted();
            post(place[moved[inRoom]], -1);
            post(to[inRoom], 1);
            inRoom++;
        }
        return !room.isWorse();
    }

    int moved() {
        return count;
    }

    /** The i-th planting of the trial. */
    int movedPlanting(int i) {
        return moved[i];
    }

    /** Where the i-th planting of the trial stands before it. */
    int movedFrom(int i) {
        return place[moved[i]];
    }

    /** Where the i-th planting of the trial is put. */
    int movedTo(int i) {
        return to[i];
    }

    /** Whether a score measures from the plan that is followed here. */
    boolean isOf(SeasonScore score) {
        while (unsure > 0 && score.place(followed[unsure - 1]) == place[followed[unsure - 1]]) {
            unsure--;
        }
        return unsure == 0;
    }

    /** The trial as a move. */
    Put asMove() {
        Planting[] each = new Planting[count];
        Integer[] places = new Integer[count];
        for (int i = 0; i < count; i++) {
            each[i] = plantings.get(moved[i]);
            places[i] = to[i];
        }
        return new Put(List.of(each), List.of(places));
    }
}
