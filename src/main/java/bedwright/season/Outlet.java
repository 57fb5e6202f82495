package bedwright.season;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Somebody who takes stems of one kind. Falling prices are several outlets. */
public record Outlet(
        @Fact(value = "Name", least = 1) String name,
        @Fact("Path of the kind it takes, as in focal/warm") String kind,

        @Fact(value = "Price of a stem", unit = "money", min = 0)
        double price,

        @Fact(value = "Weeks and how many stems it takes in each at the most", least = 1)
        List<Ask> asks,

        @Fact("What is promised; left out: nothing is") @Nullable
        Promise promise,

        @Fact(
                value = "Minutes of serving it in each week in which it asks",
                unit = "min",
                min = 0,
                max = 10000,
                byDefault = "0")
        int service) {

    public Outlet {
        asks = List.copyOf(asks);
    }

    /** An amount in each week of a run of weeks. Where runs overlap they add up. */
    public record Ask(
            @Fact("First day of the first week") LocalDate from,

            @Fact("First day of the last week; left out: the one week") @Nullable
            LocalDate to,

            @Fact(value = "Stems a week", unit = "stems", min = 0, max = 10000000)
            double stems) {}
}
