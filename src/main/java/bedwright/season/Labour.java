package bedwright.season;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Hands, hours, and what work takes. */
public record Labour(
        @Fact(value = "Worth of an hour of one's own", unit = "money", min = 0, byDefault = "0")
        double ownRate,

        @Fact(value = "Price of a hired hour", unit = "money", min = 0, byDefault = "0")
        double hiredRate,

        @Fact(
                value = "Own hours a week; a later entry overrides an earlier one; left out: as many as are needed",
                byDefault = "[]")
        List<Hours> own,

        @Fact(
                value = "Hours a week that can be hired; a later entry overrides an earlier one; left out: none",
                byDefault = "[]")
        List<Hours> hired,

        @Fact(
                value =
                        "Hours fit for cutting; a later entry overrides an earlier one; left out: no limit of their own",
                byDefault = "[]")
        List<CuttingHours> cutting,

        @Fact(value = "Work that comes every week: watering, market day, deliveries", byDefault = "[]")
        List<Chore> chores,

        @Fact(value = "What each job takes on this farm; those left out take the usual", byDefault = "{}")
        Map<Job, JobRate> jobs) {

    public Labour {
        own = List.copyOf(own);
        hired = List.copyOf(hired);
        cutting = List.copyOf(cutting);
        chores = List.copyOf(chores);
        jobs = Collections.unmodifiableMap(new LinkedHashMap<>(jobs));
    }

    /** The hours of the week that begins on a day: those of the last entry that holds then, 0 where none does. */
    public static double at(List<Hours> hours, LocalDate week) {
        double now = 0;
        for (Hours entry : hours) {
            LocalDate from = entry.from();
            LocalDate to = entry.to();
            boolean holds = (from == null || !week.isBefore(from)) && (to == null || !week.isAfter(to));
            now = holds ? entry.hours() : now;
        }
        return now;
    }

    /** Hours a week, in the weeks whose first day lies between two days. */
    public record Hours(
            @Fact("First day; left out: from the start") @Nullable
            LocalDate from,

            @Fact("Last day; left out: to the end") @Nullable
            LocalDate to,

            @Fact(value = "Hours a week", unit = "hours", min = 0, max = 10000)
            double hours) {}

    /** Hours fit for cutting a week: hands × cool hours a morning × mornings. */
    public record CuttingHours(
            @Fact("First day; left out: from the start") @Nullable
            LocalDate from,

            @Fact("Last day; left out: to the end") @Nullable
            LocalDate to,

            @Fact(value = "Hands that cut", min = 0, max = 1000)
            double hands,

            @Fact(value = "Cool hours of a morning", unit = "hours", min = 0, max = 24)
            double coolHours,

            @Fact(value = "Cutting mornings a week", min = 0, max = 7)
            double mornings) {}

    /** Work of every week; several add up. */
    public record Chore(
            @Fact(value = "Name", least = 1) String name,

            @Fact("First day; left out: from the start") @Nullable
            LocalDate from,

            @Fact("Last day; left out: to the end") @Nullable
            LocalDate to,

            @Fact(value = "Hours a week", unit = "hours", min = 0, max = 10000)
            double hours) {}

    /** What a job takes. */
    public record JobRate(
            @Fact(
                    value = "Minutes to begin and end, however much there is of it",
                    unit = "min",
                    min = 0,
                    max = 10000,
                    byDefault = "0")
            int setUp,

            @Fact(
                    value = "Minutes for each unit: a metre (in a file in feet: a foot), 100 plants or 100 cells",
                    unit = "min",
                    each = true,
                    min = 0,
                    max = 10000)
            double minutes) {}
}
