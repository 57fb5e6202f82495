package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a bound makes of a season's plantings: which of them stand in a bed, how much of a job's set-up each lot carries
 * at least, and where stems can come at all.
 *
 * <p>Set-up is counted once a job, however many lots share it; as no more lots can share it than the crop has and the bed
 * holds, each carries at least one part in so many. Following on costs nothing here.
 */
final class Relaxation {
    final PlanFacts facts;
    /** Part of its job's set-up that a lot at a place carries at least. */
    final double[] share;
    /** Whether stems of a kind told apart, or of one within it, can come in a week: cell × weeks + week. */
    final boolean[] comes;
    /** The fixed plantings. */
    final int[] fixed;
    /** Whether a place is one of a planting that may be left out. */
    final boolean[] open;
    /** Plantings of each stock that may be left out. */
    final int[] lots;

    Relaxation(PlanFacts facts) {
        this.facts = facts;
        ProspectTable table = facts.table;
        open = new boolean[table.places()];
        lots = new int[table.stocks()];
        List<Integer> bound = new ArrayList<>();
        int[] lotsOfCrop = new int[facts.season.crops().size()];
        for (int p = 0; p < facts.plantings(); p++) {
            int stock = facts.stockOf[p];
            if (facts.isFixed(p)) {
                bound.add(p);
            } else {
                Arrays.fill(open, table.firstPlace(stock), table.firstPlace(stock + 1), true);
                lots[stock]++;
                lotsOfCrop[facts.cropOf[stock]]++;
            }
        }
        fixed = bound.stream().mapToInt(Integer::intValue).toArray();
        share = shares(lotsOfCrop);
        comes = comes();
    }

    private double[] shares(int[] lotsOfCrop) {
        ProspectTable table = facts.table;
        double[] shares = new double[table.places()];
        int[] most = new int[facts.placeOfJob.length];
        for (int place = 0; place < shares.length; place++) {
            int stock = table.stock(place);
            int lots = stock < facts.season.pool().size() ? lotsOfCrop[facts.cropOf[stock]] : 1;
            if (holdsBed(place)) {
                long fit = facts.shelves.get(table.bed(place)).holds() / table.millimetres(table.row(place));
                lots = (int) Math.min(lots, Math.max(1, fit));
            }
            most[facts.jobOf[place]] = Math.max(most[facts.jobOf[place]], lots);
        }
        for (int place = 0; place < shares.length; place++) {
            shares[place] = 1.0 / Math.max(1, most[facts.jobOf[place]]);
        }
        return shares;
    }

    private boolean[] comes() {
        ProspectTable table = facts.table;
        boolean[] can = new boolean[facts.cells.size() * facts.weeks];
        for (int place = 0; place < table.places(); place++) {
            int row = table.row(place);
            for (int b = 0; b < table.blocks(row); b++) {
                for (int c = facts.cells.of(table.blockNode(row, b)); c >= 0; c = facts.cells.parent(c)) {
                    can[c * facts.weeks + table.blockWeek(row, b)] = true;
                }
            }
        }
        return can;
    }

    /** Whether a place takes up a length of a bed. */
    boolean holdsBed(int place) {
        int row = facts.table.row(place);
        return facts.table.millimetres(row) > 0 && facts.table.heldFrom(row) < facts.table.heldTo(row);
    }

    /**
     * What the hours of a week cost at least, each of them, grains a tick. Were hired hours cheaper than own ones, a season
     * would pay the less for each the more they are; it can't have more than those of all seasons together, since their
     * mean is limited.
     */
    double pay(int week) {
        if (isUnlimited(week) || facts.hiredRate >= facts.ownRate) {
            return facts.ownRate;
        }
        double own = facts.hours.own()[week];
        double all = (double) facts.seasonCount * hours(week);
        return all <= own ? facts.ownRate : (facts.ownRate * own + facts.hiredRate * (all - own)) / all;
    }

    /** What an hour beyond one's own costs more, grains a tick. */
    long extraPay(int week) {
        return isUnlimited(week) ? 0 : Math.max(0, facts.hiredRate - facts.ownRate);
    }

    private boolean isUnlimited(int week) {
        return facts.hours.own()[week] >= WorkWeeks.UNLIMITED;
    }

    /** Ticks of all hours of a week, or {@link WorkWeeks#UNLIMITED}. */
    long hours(int week) {
        return isUnlimited(week)
                ? WorkWeeks.UNLIMITED
                : Math.min(
                        WorkWeeks.UNLIMITED,
                        facts.hours.own()[week] + facts.hours.hired()[week]);
    }

    /** The nearest weights to these, of those that caution allows: between the least and the greatest, K together. */
    double[] weights(double[] wanted) {
        double low = facts.leastWeight();
        double high = facts.greatestWeight();
        double down = -high;
        double up = high;
        for (double one : wanted) {
            down = Math.min(down, low - one);
            up = Math.max(up, high - one);
        }
        for (int i = 0; i < 200 && down < up; i++) {
            double shift = (down + up) / 2;
            double sum = 0;
            for (double one : wanted) {
                sum += Math.clamp(one + shift, low, high);
            }
            if (sum < wanted.length) {
                down = shift;
            } else {
                up = shift;
            }
        }
        double[] weights = new double[wanted.length];
        for (int k = 0; k < weights.length; k++) {
            weights[k] = Math.clamp(wanted[k] + up, low, high);
        }
        return weights;
    }
}
