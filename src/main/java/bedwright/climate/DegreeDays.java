package bedwright.climate;

import bedwright.season.Crop;
import org.jspecify.annotations.Nullable;

/** Degree-days of one day. */
public final class DegreeDays {
    private DegreeDays() {}

    /**
     * Degree-days of a day, °C·d.
     *
     * @param min minimum, °C, at most {@code max}
     * @param max maximum, °C
     * @param base lower threshold, °C
     * @param upper upper threshold, °C, above the base; or null for none
     */
    public static double of(Crop.Convention convention, double min, double max, double base, @Nullable Double upper) {
        if (min > max) {
            throw new IllegalArgumentException("Minimum " + min + " °C is above maximum " + max + " °C");
        }
        return Double.NaN;
    }
}
