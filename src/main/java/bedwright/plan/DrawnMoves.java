package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * Draws moves without end, each kind with its share: place, clear, shift by weeks, change the bed, change the method,
 * swap two, fill a week that is short, replace by another crop, move a whole job.
 */
final class DrawnMoves implements Iterator<Put> {
    /** Farthest shift by weeks, one way. */
    private static final int FARTHEST_SHIFT = 3;
    /** Draws before a kind of move gives up and another is drawn. */
    private static final int TRIES = 6;
    /** Most lots of a job that are moved together. */
    private static final int MOST_LOTS = 8;

    private final List<Planting> plantings;
    private final PlanFacts facts;
    private final ProspectTable table;
    private final RandomGenerator random;
    private final @Nullable Probe probe;
    private final int[] free;
    private final Givers givers;

    DrawnMoves(SeasonPlan plan, RandomGenerator random) {
        this.plantings = plan.getPlantings();
        this.facts = plan.knownFacts();
        this.table = facts.table();
        this.random = random;
        this.probe = plan.getProbe();
        this.givers = facts.givers();
        this.free = facts.free;
    }

    @Override
    public boolean hasNext() {
        return free.length > 0;
    }

    @Override
    public Put next() {
        while (true) {
            Put move = draw(random.nextInt(100));
            if (move != null) {
                return move;
            }
        }
    }

    private @Nullable Put draw(int kind) {
        if (kind < 18) {
            return place();
        } else if (kind < 22) {
            return clear();
        } else if (kind < 38) {
            return shift();
        } else if (kind < 50) {
            return changeBed();
        } else if (kind < 57) {
            return changeMethod();
        } else if (kind < 67) {
            return swap();
        } else if (kind < 79) {
            return fillShortWeek();
        } else if (kind < 93) {
            return replace();
        }
        return moveJob();
    }

    private Planting any() {
        return plantings.get(free[random.nextInt(free.length)]);
    }

    /** A planting that has a place, or null if some draws found none. */
    private @Nullable Planting placed() {
        for (int i = 0; i < TRIES; i++) {
            Planting planting = any();
            if (planting.place() >= 0) {
                return planting;
            }
        }
        return null;
    }

    /** A planting that is left out, or null. */
    private @Nullable Planting leftOut() {
        for (int i = 0; i < TRIES; i++) {
            Planting planting = any();
            if (planting.place() < 0) {
                return planting;
            }
        }
        return null;
    }

    private int anyPlace(int stock) {
        int first = table.firstPlace(stock);
        return first + random.nextInt(table.firstPlace(stock + 1) - first);
    }

    /** Puts any planting at any of its places. */
    private @Nullable Put place() {
        Planting planting = any();
        int to = anyPlace(planting.getStock());
        return to == planting.place() ? null : Put.of(planting, to);
    }

    /** Leaves a planting out. */
    private @Nullable Put clear() {
        Planting planting = placed();
        return planting == null ? null : Put.of(planting, SeasonScore.NOWHERE);
    }

    /** A few weeks sooner or later, in the same bed and by the same method. */
    private @Nullable Put shift() {
        Planting planting = placed();
        if (planting == null) {
            return null;
        }
        int from = planting.place();
        return put(planting, find(planting, table.bed(from), table.sowWeek(from) + weeks(), table.method(from)));
    }

    /** One to a few weeks, one way or the other. */
    private int weeks() {
        int weeks = 1 + random.nextInt(FARTHEST_SHIFT);
        return random.nextBoolean() ? weeks : -weeks;
    }

    private int find(Planting planting, int bed, int week, int method) {
        return table.find(planting.getStock(), bed, week, method);
    }

    private @Nullable Put put(Planting planting, int to) {
        return to < 0 || to == planting.place() ? null : Put.of(planting, to);
    }

    /** Another bed in the same week, by the same method. */
    private @Nullable Put changeBed() {
        Planting planting = placed();
        if (planting == null) {
            return null;
        }
        int from = planting.place();
        for (int i = 0; i < TRIES; i++) {
            int to = find(planting, random.nextInt(facts.bench), table.sowWeek(from), table.method(from));
            if (to >= 0 && to != from) {
                return Put.of(planting, to);
            }
        }
        return null;
    }

    /** Another method in the same bed, sown so that it still comes in about the same time. */
    private @Nullable Put changeMethod() {
        Planting planting = placed();
        if (planting == null) {
            return null;
        }
        int from = planting.place();
        int methods = facts.season
                .crops()
                .get(facts.cropOf[planting.getStock()])
                .methods()
                .size();
        for (int i = 0; i < TRIES; i++) {
            int week = table.sowWeek(from) + random.nextInt(-5, 6);
            int to = find(planting, table.bed(from), week, random.nextInt(methods));
            if (to >= 0 && table.method(to) != table.method(from)) {
                return Put.of(planting, to);
            }
        }
        return null;
    }

    /** Two plantings trade beds and about their weeks. */
    private @Nullable Put swap() {
        Planting one = placed();
        Planting other = placed();
        if (one == null || other == null || one == other) {
            return null;
        }
        int onePlace = one.place();
        int otherPlace = other.place();
        int oneTo = startingLike(one, onePlace, otherPlace);
        int otherTo = startingLike(other, otherPlace, onePlace);
        return oneTo < 0 || otherTo < 0 || (oneTo == onePlace && otherTo == otherPlace)
                ? null
                : Put.of(one, oneTo, other, otherTo);
    }

    /** A place of a planting in the bed of another place, in the ground from about the same week. */
    private int startingLike(Planting planting, int own, int other) {
        int start = table.heldFrom(table.row(other));
        int method = own >= 0 ? table.method(own) : -1;
        if (method < 0) {
            int methods = facts.season
                    .crops()
                    .get(facts.cropOf[planting.getStock()])
                    .methods()
                    .size();
            method = random.nextInt(methods);
        }
        int away = facts.weeksToTheBed(planting.getStock(), method);
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

    /** Puts a planting where it gives stems of a kind and week in which somebody promised goes short. */
    private @Nullable Put fillShortWeek() {
        SeasonScore live = probe == null ? null : probe.live();
        if (live == null) {
            return null;
        }
        for (int i = 0; i < TRIES; i++) {
            int to = givers.draw(random, live);
            if (to < 0) {
                continue;
            }
            Planting planting = lotOf(table.stock(to));
            if (planting != null && planting.place() != to) {
                return Put.of(planting, to);
            }
        }
        return null;
    }

    /** A free lot of a stock: one left out if a few draws find one, else any. */
    private @Nullable Planting lotOf(int stock) {
        int first = facts.firstPlanting(stock);
        int count = facts.firstPlanting(stock + 1) - first;
        Planting last = null;
        for (int i = 0; i < TRIES; i++) {
            Planting planting = plantings.get(first + random.nextInt(count));
            if (planting.isHeld()) {
                continue;
            }
            if (planting.place() < 0) {
                return planting;
            }
            last = planting;
        }
        return last;
    }

    /** Leaves a planting out and puts another crop's in its bed, from about the same week on. */
    private @Nullable Put replace() {
        Planting out = placed();
        Planting in = leftOut();
        if (out == null || in == null || in.getStock() == out.getStock()) {
            return null;
        }
        int to = startingLike(in, SeasonScore.NOWHERE, out.place());
        return to < 0 ? null : Put.of(out, SeasonScore.NOWHERE, in, to);
    }

    /** Moves all lots of a job, or some, together: by weeks, to another bed, or both. */
    private @Nullable Put moveJob() {
        Planting planting = placed();
        if (planting == null) {
            return null;
        }
        int from = planting.place();
        int bed = random.nextBoolean() ? table.bed(from) : random.nextInt(facts.bench);
        int week = table.sowWeek(from) + (bed == table.bed(from) || random.nextBoolean() ? weeks() : 0);
        int to = find(planting, bed, week, table.method(from));
        if (to < 0 || to == from) {
            return null;
        }
        List<Planting> together = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        int first = facts.firstPlanting(planting.getStock());
        int end = facts.firstPlanting(planting.getStock() + 1);
        for (int p = first; p < end && together.size() < MOST_LOTS; p++) {
            Planting lot = plantings.get(p);
            if (!lot.isHeld() && lot.place() == from) {
                together.add(lot);
                places.add(to);
            }
        }
        return together.size() < 2 ? null : new Put(List.copyOf(together), List.copyOf(places));
    }
}
