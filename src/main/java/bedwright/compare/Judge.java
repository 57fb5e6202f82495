package bedwright.compare;

import bedwright.climate.PossibleSeason;
import bedwright.plan.DemandLine;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.season.KeptPlanting;
import bedwright.season.KindTree;
import bedwright.season.Season;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Judges plans on seasons of one's choice. Only the places that a plan uses are worked out, so that a thousand seasons
 * take a second or so; what comes out is what the planner itself would say of the plan in these seasons.
 */
public final class Judge {
    private static final long NO_LIMIT = Long.MAX_VALUE / 4;

    private final Season season;
    private final List<KeptPlanting> plantings;

    private Judge(Season season, List<KeptPlanting> plantings) {
        this.season = season;
        this.plantings = plantings;
    }

    /**
     * What a plan brings in fresh seasons.
     *
     * @param season the season that the plan was made of, a strategy's changes in it
     * @param planned the possible seasons that it was made for
     * @param fresh those to judge it on
     * @throws IllegalArgumentException if a planting has no place in the season
     */
    public static Judged of(
            Season season, List<KeptPlanting> plantings, List<PossibleSeason> planned, List<PossibleSeason> fresh) {
        Judge judge = new Judge(season, plantings);
        return judge.judged(judge.outcome(planned), judge.outcome(fresh), fresh);
    }

    /** What a plan brings in these seasons, whole. */
    public static Outcome outcome(Season season, List<KeptPlanting> plantings, List<PossibleSeason> seasons) {
        return new Judge(season, plantings).outcome(seasons);
    }

    private Outcome outcome(List<PossibleSeason> seasons) {
        PlanFacts facts = PlanFacts.ofPlan(season, seasons, plantings);
        return Outcomes.of(facts, Outcomes.places(facts, plantings));
    }

    private Judged judged(Outcome own, Outcome outcome, List<PossibleSeason> fresh) {
        int seasons = outcome.seasons();
        int weeks = season.weeks();
        Outcome.Work work = outcome.work();
        long[] all = new long[seasons];
        long[] beyond = new long[seasons];
        double[] hours = new double[weeks];
        for (int w = 0; w < weeks; w++) {
            long hands = work.own()[w] >= NO_LIMIT ? Long.MAX_VALUE : work.own()[w] + work.hired()[w];
            for (int k = 0; k < seasons; k++) {
                long one = work.all(w, k);
                all[k] += one;
                beyond[k] += Math.max(0, one - hands);
                hours[w] += (double) one / seasons;
            }
        }
        return new Judged(
                outcome.money().season(),
                missing(outcome),
                leftOver(outcome),
                all,
                beyond,
                hours,
                stems(outcome),
                outcome.stocks().stream()
                        .map(use -> new Judged.Peak(
                                use.kind(),
                                use.name(),
                                Arrays.stream(use.use()).max().orElse(0)))
                        .toList(),
                Losses.of(season, plantings, fresh),
                Means.of(own.money().season()),
                own.broken().size());
    }

    private static long[] missing(Outcome outcome) {
        long[] missing = new long[outcome.seasons()];
        for (DemandLine line : outcome.demand()) {
            if (line.promise() == DemandLine.Promised.NOTHING) {
                continue;
            }
            int[][] served = outcome.served()[line.index()];
            for (int w = 0; w < served.length; w++) {
                for (int k = 0; k < missing.length; k++) {
                    missing[k] += line.asked()[w] - served[w][k];
                }
            }
        }
        return missing;
    }

    private static long[] leftOver(Outcome outcome) {
        long[] left = new long[outcome.seasons()];
        for (int[][] role : outcome.leftOver()) {
            for (int[] week : role) {
                for (int k = 0; k < left.length; k++) {
                    left[k] += week[k];
                }
            }
        }
        return left;
    }

    private double[][] stems(Outcome outcome) {
        KindTree kinds = KindTree.of(season.roles());
        double[][] stems = new double[season.roles().size()][season.weeks()];
        for (int n = 0; n < kinds.size(); n++) {
            if (kinds.parent(n) < 0) {
                int[][] weeks = outcome.stems()[n];
                stems[kinds.role(n)] = IntStream.range(0, weeks.length)
                        .mapToDouble(w -> Arrays.stream(weeks[w]).average().orElse(0))
                        .toArray();
            }
        }
        return stems;
    }
}
