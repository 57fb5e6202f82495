package bedwright.plan;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.growth.ProspectTable;
import bedwright.growth.Spot;
import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.KindTree;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Why a week is short of a kind of stems, or has too many, and what would mend it.
 *
 * @param week week of the season
 * @param node the kind, a node of the season's kind tree
 * @param outcome what the plan brings
 * @param prospects what its plantings give and take
 * @param state whether it is short or over
 * @param mends the cheapest ways to mend it, each really tried, the cheapest first; three at most
 * @param tried how many ways were asked about
 */
public record WeekReasons(
        int week, int node, Outcome outcome, ProspectTable prospects, State state, List<Mend> mends, int tried) {
    private static final int TOLD = 3;
    /** Ways that are followed up, the best by money first, before those are told that mend most. */
    private static final int FOLLOWED = 40;
    /** A way mends a week if it takes away so much of what is wrong with it, in the mean. */
    private static final double A_GOOD_PART = 0.5;

    /** How a week stands. */
    public enum State {
        /** Promised stems are missing, in the mean. */
        SHORT,
        /** Stems of the kind's role are left over, in the mean. */
        OVER,
        /** Neither. */
        ENOUGH
    }

    /**
     * One way to mend it.
     *
     * @param tried what it comes to
     * @param mended of what is wrong with the week, so much is taken away: hundredths of stems, in the mean
     */
    public record Mend(Tried tried, double mended) {}

    public WeekReasons {
        mends = List.copyOf(mends);
    }

    /**
     * Works them out.
     *
     * @param plan all plantings of the plan
     * @throws IllegalArgumentException if the season does not offer such a plan: the message says why
     */
    public static WeekReasons of(
            Season season, List<PossibleSeason> seasons, List<KeptPlanting> plan, int week, int node) {
        PlanFacts facts = PlanFacts.ofPlan(season, seasons, plan, givers(season, week, node));
        return new Mending(facts, new Trials(facts, Outcomes.places(facts, plan)), week, node).reasons();
    }

    /** Spots that give stems of a kind in a week, or the one before or after it, in the normal season. */
    private static Set<Spot> givers(Season season, int week, int node) {
        Sampling known = season.possible();
        Season normal = season.with(new Sampling(1, known.seed(), known.doubt(), List.of()));
        KindTree kinds = KindTree.of(season.roles());
        List<PossibleSeason> one = PossibleSeasons.of(normal);
        // What stands in a season under way may be grown on in more ways than a spot tells.
        ProspectTable table = season.underWay() == null
                ? ProspectTable.at(normal, one, candidates(season, kinds, week, node))
                : ProspectTable.of(normal, one);
        Set<Spot> spots = new HashSet<>();
        for (int place = 0; place < table.places(); place++) {
            int row = table.row(place);
            for (int b = 0; b < table.blocks(row); b++) {
                if (Math.abs(table.blockWeek(row, b) - week) <= 1 && isWithin(kinds, table.blockNode(row, b), node)) {
                    spots.add(table.spot(place));
                    break;
                }
            }
        }
        return spots;
    }

    /** All spots of ways that give stems of a kind, begun no later than the week after one. */
    private static Set<Spot> candidates(Season season, KindTree kinds, int week, int node) {
        Set<Spot> spots = new HashSet<>();
        int pool = season.pool().size();
        int beds = season.allBeds().size();
        for (int stock = 0; stock < pool + season.standing().size(); stock++) {
            Standing standing = stock < pool ? null : season.standing().get(stock - pool);
            String name = standing == null ? season.pool().get(stock).crop() : standing.crop();
            LocalDate sown = standing == null ? null : standing.sown();
            int from = sown == null ? 0 : Math.min(0, season.weekOf(sown));
            Crop crop = season.crops().stream()
                    .filter(one -> one.name().equals(name))
                    .findFirst()
                    .orElseThrow();
            for (int method = 0; method < crop.methods().size(); method++) {
                List<Crop.KindShare> own = crop.methods().get(method).kinds();
                boolean gives = (own == null ? crop.kinds() : own)
                        .stream().anyMatch(kind -> isWithin(kinds, kinds.node(kind.kind()), node));
                for (int w = from; gives && w < season.weeks() && w <= week + 1; w++) {
                    for (int bed = 0; bed < beds; bed++) {
                        spots.add(new Spot(stock, bed, w, method));
                    }
                }
            }
        }
        return spots;
    }

    private static boolean isWithin(KindTree kinds, int inner, int node) {
        int at = inner;
        while (at > node) {
            at = kinds.parent(at);
        }
        return at == node;
    }

    /** Promised stems of a kind and of those within it that are missing in a week, over all seasons. */
    static long missing(Outcome outcome, KindTree kinds, int week, int node) {
        long missing = 0;
        for (DemandLine line : outcome.demand()) {
            if (line.promise() != DemandLine.Promised.NOTHING && isWithin(kinds, line.node(), node)) {
                for (int got : outcome.served()[line.index()][week]) {
                    missing += line.asked()[week] - got;
                }
            }
        }
        return missing;
    }

    private static long left(Outcome outcome, KindTree kinds, int week, int node) {
        long left = 0;
        for (int one : outcome.leftOver()[kinds.role(node)][week]) {
            left += one;
        }
        return left;
    }

    /** Looks for what mends a week. */
    private static final class Mending {
        private final PlanFacts facts;
        private final Trials trials;
        private final Room room;
        private final int week;
        private final int node;
        private final State state;
        private final long wrong;
        private int asked;

        /** A way with what it gains, before it is followed up. */
        private record Way(List<Shift> shifts, Search.Found gain) {}

        Mending(PlanFacts facts, Trials trials, int week, int node) {
            this.facts = facts;
            this.trials = trials;
            this.room = new Room(trials);
            this.week = week;
            this.node = node;
            long missing = missing(trials.outcome(), facts.kinds, week, node);
            long left = left(trials.outcome(), facts.kinds, week, node);
            // Half a stem in the mean is nothing to mend.
            long little = 50L * facts.seasonCount;
            this.state = missing > little ? State.SHORT : left > little ? State.OVER : State.ENOUGH;
            this.wrong = state == State.SHORT ? missing : left;
        }

        WeekReasons reasons() {
            List<Way> ways = switch (state) {
                case SHORT -> more();
                case OVER -> fewer();
                case ENOUGH -> List.of();
            };
            List<Mend> mends = new ArrayList<>();
            for (Way way : best(ways)) {
                Tried tried = trials.tried(way.shifts);
                long after = state == State.SHORT
                        ? missing(tried.after(), facts.kinds, week, node)
                        : left(tried.after(), facts.kinds, week, node);
                if (wrong - after >= A_GOOD_PART * wrong && isNew(mends, tried)) {
                    mends.add(new Mend(tried, (double) (wrong - after) / facts.seasonCount));
                }
                if (mends.size() == TOLD) {
                    break;
                }
            }
            return new WeekReasons(week, node, trials.outcome(), facts.table(), state, mends, asked);
        }

        /** The best ways that keep every hard rule, best first. */
        private static List<Way> best(List<Way> ways) {
            return ways.stream()
                    .filter(way -> way.gain.hard() >= 0)
                    .sorted(Comparator.comparing(
                            Way::gain, (a, b) -> a.isBetterThan(b) ? -1 : b.isBetterThan(a) ? 1 : 0))
                    .limit(FOLLOWED)
                    .toList();
        }

        /** Whether no way told before does the same with the same crop, but for the bed. */
        private boolean isNew(List<Mend> mends, Tried tried) {
            return mends.stream().noneMatch(mend -> isAlike(mend.tried.steps(), tried.steps()));
        }

        private static boolean isAlike(List<Step> some, List<Step> others) {
            Step one = some.getFirst();
            Step other = others.getFirst();
            return some.size() == others.size()
                    && one.stock() == other.stock()
                    && isAlike(one.from(), other.from())
                    && isAlike(one.to(), other.to());
        }

        private static boolean isAlike(@Nullable Spot one, @Nullable Spot other) {
            return one == null || other == null
                    ? one == other
                    : one.sowWeek() == other.sowWeek() && one.method() == other.method();
        }

        private Way asked(List<Shift> shifts) {
            asked++;
            return new Way(shifts, trials.gain(shifts));
        }

        /** Lots more that give such stems then, with room made for them where there is none. */
        private List<Way> more() {
            List<Way> ways = new ArrayList<>();
            List<Way> stopped = new ArrayList<>();
            for (int place = 0; place < facts.table().places(); place++) {
                long gives = gives(place);
                if (gives == 0
                        || facts.table().stock(place) >= facts.season().pool().size()) {
                    continue;
                }
                int lots = Math.toIntExact(Math.min((wrong + gives - 1) / gives, most(place)));
                Shift put = lots == 0 ? null : room.put(place, lots);
                if (put != null) {
                    Way way = asked(List.of(put));
                    (way.gain.hard() >= 0 ? ways : stopped).add(way);
                }
            }
            stopped.sort(Comparator.comparingLong((Way way) -> way.gain.soft()).reversed());
            for (Way way : stopped.subList(0, Math.min(FOLLOWED, stopped.size()))) {
                List<Shift> both = room.inPlaceOfOthers(way.shifts.getFirst());
                if (both != null) {
                    ways.add(asked(both));
                }
            }
            return ways;
        }

        /** Lots of a place's stock that stand or may stand somewhere. */
        private int most(int place) {
            int stock = facts.table().stock(place);
            return facts.firstPlanting(stock + 1) - facts.firstPlanting(stock);
        }

        /** Stems of the kind that a lot at a place gives in the week, over all seasons. */
        private long gives(int place) {
            ProspectTable table = facts.table();
            int row = table.row(place);
            long gives = 0;
            for (int b = 0; b < table.blocks(row); b++) {
                if (table.blockWeek(row, b) == week && isWithin(facts.kinds, table.blockNode(row, b), node)) {
                    for (int k = 0; k < facts.seasonCount; k++) {
                        gives += table.stems(row)[b * facts.seasonCount + k];
                    }
                }
            }
            return gives;
        }

        /** Lots fewer that give such stems then: left out, or sown in another week. */
        private List<Way> fewer() {
            List<Way> ways = new ArrayList<>();
            ProspectTable table = facts.table();
            for (int place : standing()) {
                long gives = gives(place);
                int[] all = trials.lotsAt(table.stock(place), place, Integer.MAX_VALUE);
                int lots = Math.toIntExact(Math.min((wrong + gives - 1) / gives, all.length));
                int[] some = trials.lotsAt(table.stock(place), place, lots);
                ways.add(asked(List.of(new Shift(some, SeasonScore.NOWHERE))));
                for (int to = table.firstPlace(table.stock(place));
                        to < table.firstPlace(table.stock(place) + 1);
                        to++) {
                    boolean another = to != place
                            && table.bed(to) == table.bed(place)
                            && table.method(to) == table.method(place)
                            && gives(to) < gives;
                    if (another) {
                        ways.add(asked(List.of(new Shift(some, to))));
                    }
                }
            }
            return ways;
        }

        /** Places of the plan's lots that may be moved and give such stems then. */
        private Set<Integer> standing() {
            Set<Integer> places = new LinkedHashSet<>();
            for (int p = 0; p < facts.plantings(); p++) {
                int at = trials.place(p);
                if (at >= 0 && !facts.isFixed(p) && gives(at) > 0) {
                    places.add(at);
                }
            }
            return places;
        }
    }
}
