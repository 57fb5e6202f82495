package bedwright.season;

import org.jspecify.annotations.Nullable;

/** When a stem is ready to be cut, and how long it then lasts. */
public record Harvest(
        @Fact(value = "Stage at which it is cut", least = 1) String stage,

        @Fact("Days that it lasts in a vase; left out: not known") @Nullable
        Days vase,

        @Fact("How it keeps in the cold; left out: not known") @Nullable
        Cold cold) {

    /** A number of days from a least to a most. */
    public record Days(
            @Fact(value = "At least", unit = "days", min = 0, max = 1000)
            int least,

            @Fact(value = "At most", unit = "days", min = 0, max = 1000)
            int most) {}

    /** Cold storage. */
    public record Cold(
            @Fact(value = "Temperature of the store", unit = "°C", min = -2, max = 20)
            double temperature,

            @Fact("Days that it keeps there and is still worth selling")
            Days days) {}
}
