package bedwright.plan;

import org.jspecify.annotations.Nullable;

/**
 * A quick look at a move before it is scored: what it can bring at most, and whether it breaks the hours. Most moves drawn
 * are far from being accepted, and this takes a tenth of the time of a score.
 *
 * <p>What stems and work bring is concave, so a move brings no more than its stems and work at the margins of the plan as it
 * stands ({@link Margins}). Left out is what it saves of extra stock and of families that follow on; and stems that are sold
 * for less than hired hands take to cut them are taken to be worth next to nothing, where they cost. All of that is small.
 */
final class Glance {
    /** Of stems that come besides, the share that is taken to be cut and not cleared. */
    private static final double CUT = 0.5;

    private final Layout layout;
    private final PlanFacts facts;
    private final Figures figures;
    private @Nullable Margins margins;
    private final double[] work;
    private final double[] cutting;
    /** What lies outside these weeks is 0. */
    private int first;

    private int end;

    Glance(Layout layout) {
        this.layout = layout;
        this.facts = layout.facts();
        this.figures = facts.figures;
        this.work = new double[facts.weeks];
        this.cutting = new double[facts.weeks];
    }

    /** Whether the trial can be judged: the score measures from the plan in which it is made, and that breaks no hard rule. */
    boolean canJudge(SeasonScore score) {
        if (!layout.isOf(score) || score.hard() != 0) {
            return false;
        }
        Margins known = margins;
        if (known == null || known.score() != score) {
            margins = new Margins(facts, score);
        } else {
            known.follow();
        }
        return true;
    }

    /** Whether the trial can't bring as much as that, grains, or most likely breaks the hours of a week. */
    boolean isHopeless(double least) {
        return atMost() < least || breaksHours();
    }

    /** The margins of the plan that moves are judged beside. */
    Margins margins() {
        if (margins == null) {
            throw new IllegalStateException("No plan to judge moves beside: canJudge was not asked");
        }
        return margins;
    }

    /** What the trial brings at most, but for rounding ({@link WholePrices}): grains summed over the seasons as caution weighs them. */
    double atMost() {
        Margins margins = margins();
        HoursLedger hours = margins.score().hours();
        double sum = 0;
        for (int i = 0; i < layout.moved(); i++) {
            int planting = layout.movedPlanting(i);
            int from = layout.movedFrom(i);
            int to = layout.movedTo(i);
            if (from == to) {
                continue;
            }
            if (from >= 0) {
                sum -= margins.of(from);
                sum += isLastOfJob(i, from, hours) ? margins.setUp(from) : 0;
            }
            if (to >= 0) {
                sum += margins.of(to);
                sum -= isFirstOfJob(i, to, hours) ? margins.setUp(to) : 0;
            }
            sum -= facts.seasonCount * (double) (facts.changes.cost(planting, to) - facts.changes.cost(planting, from));
        }
        return sum;
    }

    /** Whether the i-th planting is the last of its job to leave it, with those before it in the trial. */
    private boolean isLastOfJob(int i, int from, HoursLedger hours) {
        int job = facts.jobOf[from];
        int left = hours.lotsOfJob(job) - 1;
        for (int j = 0; j < i; j++) {
            int other = layout.movedFrom(j);
            left -= other >= 0 && other != layout.movedTo(j) && facts.jobOf[other] == job ? 1 : 0;
        }
        return left == 0;
    }

    /** Whether the i-th planting is the first of a job that has none, with those before it in the trial. */
    private boolean isFirstOfJob(int i, int to, HoursLedger hours) {
        int job = facts.jobOf[to];
        if (hours.lotsOfJob(job) > 0) {
            return false;
        }
        for (int j = 0; j < i; j++) {
            int other = layout.movedTo(j);
            if (other >= 0 && facts.jobOf[other] == job) {
                return false;
            }
        }
        return true;
    }

    /**
     * Whether more work most likely comes into a week than it still has. Of stems that come no longer all are taken to have
     * been cut, of those that come besides some.
     */
    boolean breaksHours() {
        HoursLedger hours = margins().score().hours();
        first = facts.weeks;
        end = 0;
        for (int i = 0; i < layout.moved(); i++) {
            int from = layout.movedFrom(i);
            int to = layout.movedTo(i);
            if (from != to && from >= 0) {
                post(from, -1, isLastOfJob(i, from, hours));
            }
            if (from != to && to >= 0) {
                post(to, 1, isFirstOfJob(i, to, hours));
            }
        }
        boolean breaks = false;
        for (int w = first; w < end; w++) {
            breaks |= work[w] > 0 && work[w] > hours.left(w);
            breaks |= cutting[w] > 0 && cutting[w] > hours.cuttingLeft(w);
            work[w] = 0;
            cutting[w] = 0;
        }
        return breaks;
    }

    private void post(int place, int sign, boolean withSetUp) {
        int[] of = figures.of(place);
        int start = figures.start(place);
        int week = of[start + Figures.WORK_FROM];
        int count = of[start + Figures.WORK_WEEKS];
        int at = Figures.work(start);
        double ticks = (double) sign * facts.seasonCount * Grains.TICKS_A_MINUTE;
        for (int i = 0; i < count; i++) {
            work[week + i] += ticks * (withSetUp ? of[at + i] + of[at + count + i] : of[at + i]);
        }
        touch(week, week + count);
        int sums = start + of[start + Figures.WEEK_SUMS];
        int runs = of[start + Figures.RUNS];
        for (int r = 0, run = Figures.runs(of, start); r < runs; r++, run += Figures.A_RUN) {
            Filling filling = facts.fillings[of[run + 1] / facts.weeks];
            int firstWeek = of[run + 1] % facts.weeks;
            double cutting = sign > 0 ? CUT * filling.cutRate : -filling.cutRate;
            double clearing = sign > 0 ? (1 - CUT) * filling.clearRate : 0;
            for (int w = 0; w < of[run + 2]; w++) {
                int stems = of[sums++];
                work[firstWeek + w] += (cutting + clearing) * stems;
                this.cutting[firstWeek + w] += cutting * stems;
            }
            touch(firstWeek, firstWeek + of[run + 2]);
        }
    }

    private void touch(int from, int to) {
        first = Math.min(first, from);
        end = Math.max(end, to);
    }
}
