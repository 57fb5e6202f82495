package bedwright.compare;

import bedwright.plan.Outcome;
import java.util.List;

/**
 * What a plan brings in seasons that it was not made for. Arrays are not to be written to; index k is the season, w the
 * week.
 *
 * @param money what is left in each season, grains
 * @param missing promised stems missing in each, 1/100
 * @param leftOver stems that go nowhere in each, 1/100
 * @param work work in each, ticks
 * @param beyond work beyond own and hired hands in each, ticks
 * @param hours mean work by week, ticks
 * @param stems mean stems by role and week, 1/100: {@code stems[role][w]}
 * @param stocks what is used of bench, trays, nets and cover at the peak
 * @param losses stems lost in the mean, by cause
 * @param hoped what it brought in the mean of the seasons that it was made for, grains
 * @param broken how many hard rules it breaks in those, by place and week; 0 for a plan that can be carried out
 */
public record Judged(
        long[] money,
        long[] missing,
        long[] leftOver,
        long[] work,
        long[] beyond,
        double[] hours,
        double[][] stems,
        List<Peak> stocks,
        List<Loss> losses,
        double hoped,
        int broken) {

    public Judged {
        stocks = List.copyOf(stocks);
        losses = List.copyOf(losses);
    }

    /** The most of a stock that is used in any week: cells, or mm. */
    public record Peak(Outcome.StockKind kind, String name, long most) {}

    /** Stems lost in the mean to one cause, 1/100. */
    public record Loss(Cause cause, double stems) {}

    /** What takes stems before they can be cut. */
    public enum Cause {
        STAND,
        PESTS,
        FROST,
        STORM
    }

    /** Number of seasons. */
    public int seasons() {
        return money.length;
    }

    /** Money in the mean of the seasons, grains. */
    public double meanMoney() {
        return Means.of(money);
    }

    /** By how much the plan's own figure was too hopeful, grains; below 0 if it was too low. */
    public double tooHopeful() {
        return hoped - meanMoney();
    }
}
