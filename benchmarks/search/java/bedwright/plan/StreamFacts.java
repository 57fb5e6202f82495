package bedwright.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What {@link StreamRules} know of a season, as objects that never change. Each thing is one object, however often it is
 * asked for, so that streams compare and group them by identity.
 */
final class StreamFacts {
    private StreamFacts() {}

    /** A bed, the bench or a stock. */
    static final class Store {
        final Shelf shelf;
        private final int seasons;

        Store(Shelf shelf, int seasons) {
            this.shelf = shelf;
            this.seasons = seasons;
        }

        boolean canBeBought() {
            return shelf.price() > 0;
        }

        /** Grains for each mm or cell of the peak beyond, in all seasons together. */
        long price() {
            return shelf.price() * seasons;
        }
    }

    /** What a place takes up of a store: mm or cells from a week to a week. */
    static final class Use {
        private final Store store;
        final int from;
        final int to;
        final long amount;

        Use(Store store, int from, int to, long amount) {
            this.store = store;
            this.from = from;
            this.to = to;
            this.amount = amount;
        }

        Store store() {
            return store;
        }
    }

    /** A week of the season. */
    static final class Week {
        final PlanFacts facts;
        final int number;
        final StreamFilling[] roles;

        Week(PlanFacts facts, int number, StreamFilling[] roles) {
            this.facts = facts;
            this.number = number;
            this.roles = roles;
        }
    }

    /** Stems of a role: by kind of those told apart, hundredths by season. */
    record RoleStems(int role, int[] kinds, int[][] stems) {}

    /** Part of what a week comes to: work that is the same in all seasons, in ticks, and stems. */
    static final class Part {
        private final Week week;
        final long work;
        final RoleStems[] stems;

        Part(Week week, long work, RoleStems[] stems) {
            this.week = week;
            this.work = work;
            this.stems = stems;
        }

        Week week() {
            return week;
        }
    }

    /** A job: its set-up by week. */
    static final class JobHere {
        private final List<Part> setUp;

        JobHere(List<Part> setUp) {
            this.setUp = setUp;
        }

        List<Part> setUp() {
            return setUp;
        }
    }

    /** A family in a bed. */
    static final class FamilyInBed {
        private final long price;

        FamilyInBed(long price) {
            this.price = price;
        }

        /** Grains for a planting that follows on, in all seasons together. */
        long price() {
            return price;
        }
    }

    /** A place with all that it takes and gives. */
    static final class Plot {
        private final List<Use> room;
        private final List<Use> stock;
        private final List<Part> weeks;
        private final JobHere job;
        private final long costs;
        private final @Nullable FamilyInBed family;
        final int from;
        final int to;

        Plot(
                List<Use> uses,
                List<Part> weeks,
                JobHere job,
                long costs,
                @Nullable FamilyInBed family,
                int from,
                int to) {
            this.room = uses.stream().filter(use -> !use.store.canBeBought()).toList();
            this.stock = uses.stream().filter(use -> use.store.canBeBought()).toList();
            this.weeks = weeks;
            this.job = job;
            this.costs = costs;
            this.family = family;
            this.from = from;
            this.to = to;
        }

        /** What it takes up of what can't be exceeded. */
        List<Use> room() {
            return room;
        }

        /** What it takes up of what more can be bought of. */
        List<Use> stock() {
            return stock;
        }

        List<Part> weeks() {
            return weeks;
        }

        JobHere job() {
            return job;
        }

        /** Grains that count in every season, all together. */
        long costs() {
            return costs;
        }

        @Nullable
        FamilyInBed family() {
            return family;
        }
    }
}
