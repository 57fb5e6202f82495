package bedwright.season;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A plan as it is kept in a file: the season it was made for, how it was made, and its plantings. */
public record Plan(
        @Fact(value = "Version of this file's form", min = 1, max = 1)
        int version,

        @Fact("The season it was made for, whole") Season season,
        @Fact("How it was made") Making making,

        @Fact("Its score in the planner's own units, to check it by")
        Score score,

        @Fact(value = "The plantings, by number", byDefault = "[]")
        List<KeptPlanting> plantings,

        @Fact("How close it comes to the best possible, if that was looked for") @Nullable
        Closeness closeness,

        @Fact("The plan of the whole season, where this one was made for what was left of it") @Nullable
        Throughout throughout) {

    public Plan {
        plantings = List.copyOf(plantings);
        // A file is in one set of units.
        throughout = throughout == null ? null : throughout.in(season.units());
    }

    /** A plan of which nothing is said of how close it comes to the best possible. */
    public Plan(int version, Season season, Making making, Score score, List<KeptPlanting> plantings) {
        this(version, season, making, score, plantings, null, null);
    }

    /** The season as it began; that of the plan itself, if this was made before its season. */
    public Season began() {
        return throughout == null ? season : throughout.season();
    }

    /** Its plantings over the whole season, those that are over among them. */
    public List<KeptPlanting> plantingsThroughout() {
        return throughout == null ? plantings : throughout.plantings();
    }

    /** Whether it has a planting of this number, over the whole season. */
    public boolean has(int number) {
        return plantingsThroughout().stream().anyMatch(planting -> planting.number() == number);
    }

    /** Plantings of this plan and of those before it, which notes may speak of. */
    public List<KeptPlanting> everyPlanting() {
        return throughout == null
                ? plantings
                : Stream.concat(throughout.plantings().stream(), throughout.gone().stream())
                        .toList();
    }

    /** Lines of the season log whose moves are in the plan already. */
    public int notesTakenIn() {
        return throughout == null ? 0 : throughout.notes();
    }

    /** The least number that no planting has had. */
    public int nextNumber() {
        UnderWay underWay = season.underWay();
        int next = underWay == null ? 1 : underWay.nextNumber();
        for (KeptPlanting planting : everyPlanting()) {
            next = Math.max(next, planting.number() + 1);
        }
        return next;
    }

    /** The same plan, with how close it comes to the best possible. */
    public Plan with(@Nullable Closeness how) {
        return new Plan(version, season, making, score, plantings, how, throughout);
    }

    /** The same plan of what is left of a season, with the plan of all of it. */
    public Plan with(Throughout whole) {
        return new Plan(version, season, making, score, plantings, closeness, whole);
    }

    /**
     * A plan changed during its season, over the whole of it. What was done before the change stands in it as it was done,
     * the rest as it was planned then; from it and the season log follows where the season is on any later day.
     */
    public record Throughout(
            @Fact("The season as it began, whole") Season season,

            @Fact(value = "The plantings, those that are over among them", byDefault = "[]")
            List<KeptPlanting> plantings,

            @Fact(
                    value = "Plantings of plans before this that it has no more; their numbers are not used again",
                    byDefault = "[]")
            List<KeptPlanting> gone,

            @Fact(value = "New plantings that were proposed and refused when it was made", byDefault = "[]")
            List<KeptPlanting> refused,

            @Fact(value = "Lines of the season log that were known when it was made", min = 0, max = 1000000)
            int notes,

            @Fact("Fingerprint (SHA-256) of these lines") String log,

            @Fact("Fingerprint (SHA-256) of the file of the plan before")
            String before) {

        public Throughout {
            plantings = List.copyOf(plantings);
            gone = List.copyOf(gone);
            refused = List.copyOf(refused);
        }

        /** The same in other units. */
        Throughout in(Units units) {
            return units == season.units()
                    ? this
                    : new Throughout(season.with(units), plantings, gone, refused, notes, log, before);
        }
    }

    /** Seed and limits with which a plan was made. */
    public record Making(
            @Fact(value = "Seed of the search", min = 0, max = 9007199254740991L)
            long seed,

            @Fact(value = "Limit in seconds, if that was the limit", unit = "s", min = 0) @Nullable
            Double seconds,

            @Fact(value = "Limit in moves of each search, if that was the limit", min = 0) @Nullable
            Long moves,

            @Fact(value = "Whether it was interrupted", byDefault = "false")
            boolean interrupted,

            @Fact(value = "Whether it ended by itself before its limit, since it hardly improved", byDefault = "false")
            boolean settled) {}

    /** Score in whole units: see the contributors' page for the units. */
    public record Score(
            @Fact("Hard rules broken; 0 if none") long hard,

            @Fact("Stems missing that must be ours; 0 if none")
            long medium,

            @Fact("Money, caution included") long soft) {}

    /**
     * How close a plan comes to the best possible: to what no plan goes beyond that keeps every hard rule and misses no
     * more stems that must be ours.
     */
    public record Closeness(
            @Fact(
                    value = "The plan lies within so much of the best possible, rounded up: of what the best possible"
                            + " brings more than nothing planted. Left out where it can't be claimed",
                    unit = "%",
                    min = 0)
            @Nullable
            Double within,

            @Fact("What the money of no such plan goes beyond, caution included, in the score's units")
            long bound,

            @Fact("What nothing planted brings, likewise") long nothing,

            @Fact(value = "Steps taken to find the prices that it follows from", min = 0)
            long steps,

            @Fact(value = "Limit of that search in seconds, if that was the limit", unit = "s", min = 0) @Nullable
            Double seconds,

            @Fact(value = "What one more of what is scarce would be worth: an estimate", byDefault = "[]")
            List<Worth> worths) {

        public Closeness {
            worths = List.copyOf(worths);
        }
    }

    /**
     * What one more of something would add to the best possible, parts of lots allowed: an estimate of what it would add
     * to a plan.
     */
    public record Worth(
            @Fact("What there would be more of") Thing thing,

            @Fact("Name of the beds or the net; empty where there is but one such thing")
            String name,

            @Fact(
                    value = "What one more of it would be worth in each week, in the mean of the seasons, caution"
                            + " included",
                    unit = "money",
                    min = 0)
            List<Double> weeks) {

        public Worth {
            weeks = List.copyOf(weeks);
        }

        /** For the whole season. */
        public double season() {
            return weeks.stream().mapToDouble(Double::doubleValue).sum();
        }

        /** What one more is of. */
        public enum Thing {
            /** A metre of these beds. */
            BED,
            /** An hour of one's own, beyond its pay. */
            HOUR,
            /** An hour fit for cutting, in which there are hands. */
            CUTTING_HOUR,
            /** A cell of the bench. */
            BENCH,
            /** A cell of the trays. */
            TRAYS,
            /** A metre of a net. */
            NET,
            /** A metre of row cover. */
            COVER
        }
    }
}
