package bedwright.plan;

import bedwright.plan.DemandLine.Promised;
import bedwright.season.KindTree;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What can still be promised of a plan's stems: what is there after everybody who was promised any has what they get, judged
 * over seasons that the plan was not made on.
 *
 * <p>How many stems can be promised in so many seasons of a hundred is an order statistic of what is free in the judged
 * seasons, the greatest amount that is there in at least that share of them. It holds for a further season drawn likewise as
 * often, within 1 in the number of seasons judged over.
 *
 * <p>Whether there are hands enough to cut more is not asked: the answer says how much work it is.
 */
public final class Promises {
    private final PlanFacts facts;
    private final KindTree kinds;
    private final Outcome outcome;

    private Promises(PlanFacts facts, Outcome outcome) {
        this.facts = facts;
        this.kinds = facts.kinds;
        this.outcome = outcome;
    }

    /**
     * Judges a plan.
     *
     * @param facts over the seasons to judge it over, as {@link PlanFacts#ofPlan} makes them
     * @param places where each planting is
     */
    public static Promises of(PlanFacts facts, int[] places) {
        return new Promises(facts, Outcomes.of(facts, places));
    }

    /**
     * One line of an order.
     *
     * @param node kind, a node of the season's kind tree
     * @param stems hundredths asked for
     */
    public record Line(int node, long stems) {}

    /**
     * What can be said of an order.
     *
     * @param filled in how large a share of the seasons all its lines are there at once, 0 to 1
     * @param lines what can be said of each line, as if it were the only one
     * @param takings what all others bring less because of it, grains, the mean of the seasons in which all of it is there
     * @param work cutting that it takes, less the clearing that it saves, in ticks; likewise
     */
    public record Answer(double filled, List<Alone> lines, double takings, double work) {
        public Answer {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One line by itself.
     *
     * @param filled in how large a share of the seasons it is there
     * @param free hundredths that could be promised, by season
     */
    public record Alone(Line line, double filled, int[] free) {}

    /** Number of seasons that it is judged over. */
    public int seasons() {
        return facts.seasonCount;
    }

    /** The judged plan's outcome in these seasons. */
    public Outcome outcome() {
        return outcome;
    }

    /** Stems of a kind that nobody was promised in a week: hundredths, by season. */
    public int[] free(int node, int week) {
        return afterPromises(week).free(node);
    }

    /**
     * The most whole stems that are there in at least a share of the seasons.
     *
     * @param free hundredths by season
     * @param share more than 0, at most 1
     */
    public static int most(int[] free, double share) {
        int[] sorted = free.clone();
        Arrays.sort(sorted);
        int needed = (int) Math.ceil(share * sorted.length - 1e-9);
        return Math.floorDiv(sorted[sorted.length - Math.max(1, needed)], 100);
    }

    /** What can be said of an order for a week. */
    public Answer ask(int week, List<Line> order) {
        KindRoom promised = afterPromises(week);
        List<Alone> alone = new ArrayList<>();
        for (Line line : order) {
            int[] free = promised.free(line.node());
            alone.add(new Alone(line, share(atLeast(free, line.stems())), free));
        }
        KindRoom with = promised.copy();
        boolean[] filled = new boolean[seasons()];
        Arrays.fill(filled, true);
        // Whatever the order of lines: on a tree all of them are there at once if each finds its stems after the
        // others.
        for (Line line : order) {
            boolean[] there = atLeast(with.take(line.node(), line.stems()), line.stems());
            for (int k = 0; k < filled.length; k++) {
                filled[k] &= there[k];
            }
        }
        double[] takings = new double[seasons()];
        double[] work = new double[seasons()];
        rest(week, promised.copy(), 1, takings, work);
        rest(week, with, -1, takings, work);
        for (Line line : order) {
            Filling filling = facts.fillings[kinds.role(line.node())];
            for (int k = 0; k < work.length; k++) {
                work[k] += (double) line.stems() * (filling.cutRate - filling.clearRate);
            }
        }
        return new Answer(share(filled), alone, mean(takings, filled), mean(work, filled));
    }

    /** What is there when all that is promised has been taken. */
    private KindRoom afterPromises(int week) {
        KindRoom room = KindRoom.of(kinds, outcome.stems(), week);
        for (Filling filling : facts.fillings) {
            for (Filling.Line line : filling.lines) {
                DemandLine asked = facts.demand.get(line.line());
                if (asked.promise() != Promised.NOTHING) {
                    room.take(asked.node(), asked.asked()[week]);
                }
            }
        }
        return room;
    }

    /** Lets those who were promised nothing take theirs, and adds what that brings and the work of cutting it. */
    private void rest(int week, KindRoom room, int sign, double[] takings, double[] work) {
        for (Filling filling : facts.fillings) {
            for (Filling.Line line : filling.lines) {
                DemandLine asked = facts.demand.get(line.line());
                if (asked.promise() == Promised.NOTHING) {
                    int[] taken = room.take(asked.node(), asked.asked()[week]);
                    for (int k = 0; k < taken.length; k++) {
                        takings[k] += (double) sign * line.gain() * taken[k];
                        work[k] -= (double) sign * (filling.cutRate - filling.clearRate) * taken[k];
                    }
                }
            }
        }
    }

    private static boolean[] atLeast(int[] there, long wanted) {
        boolean[] is = new boolean[there.length];
        for (int k = 0; k < is.length; k++) {
            is[k] = there[k] >= wanted;
        }
        return is;
    }

    private static double share(boolean[] of) {
        int count = 0;
        for (boolean one : of) {
            count += one ? 1 : 0;
        }
        return (double) count / of.length;
    }

    private static double mean(double[] values, boolean[] counting) {
        double sum = 0;
        int count = 0;
        for (int k = 0; k < values.length; k++) {
            if (counting[k]) {
                sum += values[k];
                count++;
            }
        }
        return count == 0 ? 0 : sum / count;
    }
}
