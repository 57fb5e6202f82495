package bedwright.log;

import java.util.Locale;

/**
 * Some of a planting's plants.
 *
 * @param value a share, 0 to 1, or plants, 0 or more
 * @param isShare whether it is a share
 */
public record Amount(double value, boolean isShare) {

    /**
     * How many plants that is of so many, to the nearest plant.
     *
     * @param plants plants, 0 or more
     */
    public long of(long plants) {
        return Math.round(isShare ? value * plants : value);
    }

    String said() {
        return isShare
                ? String.format(Locale.ROOT, "%.4g", value * 100).replaceFirst("\\.?0+$", "") + " %"
                : Math.round(value) + " plants";
    }
}
