package bedwright.plan;

import bedwright.plan.Outcome.Broken;
import bedwright.season.Plan;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A change of a plan that was really tried: the plan as it is and the plan with the change made, each counted afresh.
 *
 * @param steps what is put elsewhere
 * @param before what the plan brings
 * @param after what it brings with the change made
 * @param rules what each rule costs more with it (see {@link Bill})
 */
public record Tried(List<Step> steps, Outcome before, Outcome after, Bill rules) {
    public Tried {
        steps = List.copyOf(steps);
    }

    /** By how much the score is better. */
    public Plan.Score gain() {
        return new Plan.Score(
                after.score().hard() - before.score().hard(),
                after.score().medium() - before.score().medium(),
                after.score().soft() - before.score().soft());
    }

    /** Whether a hard rule stops it: one that is broken further than before. */
    public boolean isStopped() {
        return gain().hard() < 0;
    }

    /** Money more, grains, in the mean of the possible seasons. */
    public double money() {
        return mean(sum(after.money().season()) - sum(before.money().season()));
    }

    /** Money more with the weight of the bad seasons, which is what plans are judged by: grains, a season. */
    public double weighed() {
        return mean(gain().soft());
    }

    /** Stems more that go somewhere, hundredths, in the mean. */
    public double delivered() {
        long more = 0;
        for (DemandLine line : before.demand()) {
            more += sum(after.served()[line.index()]) - sum(before.served()[line.index()]);
        }
        return mean(more);
    }

    /** Promised stems missing more, hundredths, in the mean. */
    public double missing() {
        long more = 0;
        for (DemandLine line : before.demand()) {
            if (line.promise() != DemandLine.Promised.NOTHING) {
                more += sum(before.served()[line.index()]) - sum(after.served()[line.index()]);
            }
        }
        return mean(more);
    }

    /** Work more, ticks, in the mean. */
    public double work() {
        long more = 0;
        for (int w = 0; w < before.work().chores().length; w++) {
            for (int k = 0; k < before.seasons(); k++) {
                more += after.work().all(w, k) - before.work().all(w, k);
            }
        }
        return mean(more);
    }

    /** Where hard rules are broken that were not, or further than before. */
    public List<Broken> stops() {
        Map<List<Object>, Double> known = new HashMap<>();
        for (Broken broken : before.broken()) {
            known.put(List.of(broken.rule(), broken.where(), broken.week()), broken.by());
        }
        return after.broken().stream()
                .filter(broken ->
                        broken.by() > known.getOrDefault(List.of(broken.rule(), broken.where(), broken.week()), 0.0))
                .toList();
    }

    private double mean(long sum) {
        return (double) sum / before.seasons();
    }

    private static long sum(long[] values) {
        long sum = 0;
        for (long one : values) {
            sum += one;
        }
        return sum;
    }

    private static long sum(int[][] byWeek) {
        long sum = 0;
        for (int[] week : byWeek) {
            for (int one : week) {
                sum += one;
            }
        }
        return sum;
    }
}
