package bedwright.compare;

import bedwright.season.Season;
import bedwright.season.Strategies.Strategy;
import java.util.List;

/**
 * A way of growing with its plans, one from each search, all judged on the same seasons.
 *
 * @param season the season with its changes
 * @param plans at least one; a season by rule of thumb has one
 */
public record Way(Strategy strategy, Season season, List<Judged> plans) {
    public Way {
        plans = List.copyOf(plans);
        if (plans.isEmpty()) {
            throw new IllegalArgumentException(strategy.name() + " has no plan to be judged");
        }
    }

    public String name() {
        return strategy.name();
    }

    /** Number of seasons that its plans were judged on. */
    public int seasons() {
        return plans.getFirst().seasons();
    }

    /** Money of each season in the mean of the plans, grains. */
    public double[] money() {
        double[] mean = new double[seasons()];
        for (Judged plan : plans) {
            for (int k = 0; k < mean.length; k++) {
                mean[k] += (double) plan.money()[k] / plans.size();
            }
        }
        return mean;
    }

    /** Money in the mean of the seasons, for each plan, grains. */
    public double[] moneyOfPlans() {
        return plans.stream().mapToDouble(Judged::meanMoney).toArray();
    }
}
