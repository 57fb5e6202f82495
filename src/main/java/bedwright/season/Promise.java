package bedwright.season;

import org.jspecify.annotations.Nullable;

/**
 * What it means to have promised: the stems must be our own, or are bought in, or their lack costs a price. With none
 * of the three said, a missing stem costs three times its price.
 */
public record Promise(
        @Fact(value = "Must be ours, with this weight", min = 1, max = 1000) @Nullable
        Integer must,

        @Fact(
                value = "Price at which a missing stem is bought in; the order is then paid in full",
                unit = "money",
                min = 0)
        @Nullable
        Double buyIn,

        @Fact(value = "Cost of a missing stem", unit = "money", min = 0) @Nullable
        Double shortage) {}
