package bedwright.season;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Bouquets ordered, weekly or for an event; each line of the recipe becomes an outlet. */
public record Order(
        @Fact(value = "Name", least = 1) String name,
        @Fact("Recipe") String recipe,

        @Fact(value = "Weeks and how many bouquets in each", least = 1)
        List<Ask> asks,

        @Fact(value = "Share of stems asked for beyond what is paid, to be safe", min = 0, max = 1, byDefault = "0")
        double spare,

        @Fact("What is promised; left out: nothing is") @Nullable
        Promise promise,

        @Fact(
                value = "Minutes of serving it in each week in which it asks",
                unit = "min",
                min = 0,
                max = 10000,
                byDefault = "0")
        int service,

        @Fact(value = "Whether it is an event", byDefault = "false")
        boolean event) {

    public Order {
        asks = List.copyOf(asks);
    }

    /** Bouquets in each week of a run of weeks. */
    public record Ask(
            @Fact("First day of the first week") LocalDate from,

            @Fact("First day of the last week; left out: the one week") @Nullable
            LocalDate to,

            @Fact(value = "Bouquets a week", min = 0, max = 100000)
            int bouquets) {}
}
