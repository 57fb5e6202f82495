package bedwright.season;

import java.time.MonthDay;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A pest: what it takes, when, how far it comes from the rough grass and how years differ. */
public record Pest(
        @Fact(value = "Name of the pest, a common one", least = 1)
        String name,

        @Fact(value = "What it takes: seed, seedlings, blooms", least = 1)
        List<Takes> takes,

        @Fact(value = "Times of the year and the share a day that it takes then; elsewhere none", byDefault = "[]")
        List<Pressure> pressure,

        @Fact(
                value =
                        "Distance from the rough grass over which its bite falls to about a third; left out: everywhere alike",
                unit = "m",
                min = 0.1,
                max = 10000)
        @Nullable
        Double range,

        @Fact(
                value = "How much years differ (standard deviation of the logarithm)",
                min = 0,
                max = 3,
                byDefault = "0.5")
        double yearSpread) {

    public Pest {
        takes = List.copyOf(takes);
        pressure = List.copyOf(pressure);
    }

    /** What a pest takes. */
    public enum Takes {
        /** From sowing to emergence, in the bed. */
        SEED,
        /** From emergence until no longer tender. */
        SEEDLINGS,
        /** In the weeks of cutting. */
        BLOOMS
    }

    /**
     * Pressure between two days of the year, which may wrap the new year. A week of the year has the pressure of the
     * last entry that holds its first day.
     */
    public record Pressure(
            @Fact("First day") MonthDay from,
            @Fact("Last day") MonthDay to,

            @Fact(value = "Pressure a day: 0.01 takes about one in a hundred", min = 0, max = 5)
            double aDay) {}
}
