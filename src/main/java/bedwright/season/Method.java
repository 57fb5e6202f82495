package bedwright.season;

import java.time.MonthDay;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One way of growing a crop. */
public record Method(
        @Fact(value = "Name of the method, unique within the crop", least = 1)
        String name,

        @Fact("How it starts: sown (in the bed), tray (raised), plugs (bought) or set (tubers, corms, bulbs)")
        Start start,

        @Fact("Mean temperatures of the sow week that its seed bears; left out: any") @Nullable
        SeedTemperature seedTemperature,

        @Fact("First day of the year on which it may be sown; may lie after the last: the span then wraps the new year")
        @Nullable
        MonthDay sowFrom,

        @Fact("Last day of the year on which it may be sown") @Nullable
        MonthDay sowTo,

        @Fact(value = "Weeks from sowing in trays to planting out", unit = "weeks", min = 0, max = 40, byDefault = "0")
        int trayWeeks,

        @Fact(
                value = "The last of them, outside to harden, off the bench",
                unit = "weeks",
                min = 0,
                max = 40,
                byDefault = "0")
        int hardeningWeeks,

        @Fact(
                value = "Weeks that it may wait in the tray beyond them",
                unit = "weeks",
                min = 0,
                max = 20,
                byDefault = "0")
        int holds,

        @Fact(
                value = "Degree-days that a raised or bought plant has behind it when planted out",
                unit = "°C·d",
                min = 0,
                max = 10000,
                byDefault = "0")
        double headStart,

        @Fact(
                value = "Degree-days that planting out sets it back",
                unit = "°C·d",
                min = 0,
                max = 10000,
                byDefault = "0")
        double check,

        @Fact(value = "Whether it is pinched", byDefault = "false")
        boolean pinched,

        @Fact(
                value = "Degree-days by which pinching puts off the first cut",
                unit = "°C·d",
                min = 0,
                max = 10000,
                byDefault = "0")
        double pinchDelay,

        @Fact(
                value = "Share of seeds, cells or tubers that make a plant",
                min = 0,
                max = 1,
                above = true,
                byDefault = "1")
        double emergence,

        @Fact(value = "Seeds sown at each plant's place", min = 1, max = 50, byDefault = "1")
        int seedsAPlace,

        @Fact(value = "Rows along the bed", min = 1, max = 100)
        int rows,

        @Fact(value = "Distance of plants in the row", unit = "m", small = true, min = 0.005, max = 10)
        double spacing,

        @Fact(value = "Height when in full flower; left out: the crop's", unit = "m", small = true, min = 0.05, max = 5)
        @Nullable
        Double height,

        @Fact(
                value = "How deep it is sown or set; left out: as the crop says",
                unit = "m",
                small = true,
                min = 0,
                max = 0.5)
        @Nullable
        Double depth,

        @Fact(
                value = "Gust that lays half of it flat, full grown; left out: the crop's",
                unit = "m/s",
                min = 1,
                max = 200)
        @Nullable
        Double gust,

        @Fact("Support net; left out: none") @Nullable NetUse net,
        @Fact("Row cover; left out: none") @Nullable CoverUse cover,

        @Fact(value = "Days from the first to the last cut", unit = "days", min = 1, max = 400)
        int cutDays,

        @Fact(
                value = "Shares of the stems in equal stretches of those days, adding up to 1",
                min = 0,
                max = 1,
                least = 1,
                byDefault = "[1]")
        List<Double> cutShares,

        @Fact(value = "Stems from a plant", unit = "stems", min = 0, max = 1000)
        double stems,

        @Fact(value = "Share of them that can be sold", min = 0, max = 1, byDefault = "1")
        double saleable,

        @Fact("Kinds of its stems where they differ from the crop's") @Nullable
        List<Crop.KindShare> kinds,

        @Fact(
                value = "Weeks that the bed is kept beyond the last usual cut, for a late season",
                unit = "weeks",
                min = 0,
                max = 20,
                byDefault = "1")
        int grace,

        @Fact(value = "Weeks to clear the bed after that", unit = "weeks", min = 0, max = 20, byDefault = "0")
        int clearing,

        @Fact(value = "Passes of weeding, weekly from the first week in the bed", min = 0, max = 40, byDefault = "0")
        int weedings,

        @Fact(value = "Share that comes through a usual winter", min = 0, max = 1, byDefault = "1")
        double winterShare,

        @Fact(value = "Price of a seed, cell, plug or tuber; left out: the crop's", unit = "money", min = 0) @Nullable
        Double price,

        @Fact(value = "Jobs that take more or less with this method", byDefault = "{}")
        Map<Job, Labour.JobRate> jobs,

        @Fact(value = "How sure its figures are and where they come from, by key", byDefault = "{}")
        Map<String, Figure> figures) {

    public Method {
        cutShares = List.copyOf(cutShares);
        kinds = kinds == null ? null : List.copyOf(kinds);
        jobs = Collections.unmodifiableMap(new LinkedHashMap<>(jobs));
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    }

    /** Length of bed that so many plants take, m. */
    public double metres(int plants) {
        return plants * spacing / rows;
    }

    /** The same method with other kinds, net and figures. */
    public Method with(
            @Nullable List<Crop.KindShare> otherKinds, @Nullable NetUse otherNet, Map<String, Figure> otherFigures) {
        return new Method(
                name,
                start,
                seedTemperature,
                sowFrom,
                sowTo,
                trayWeeks,
                hardeningWeeks,
                holds,
                headStart,
                check,
                pinched,
                pinchDelay,
                emergence,
                seedsAPlace,
                rows,
                spacing,
                height,
                depth,
                gust,
                otherNet,
                cover,
                cutDays,
                cutShares,
                stems,
                saleable,
                otherKinds,
                grace,
                clearing,
                weedings,
                winterShare,
                price,
                jobs,
                otherFigures);
    }

    /** How a planting starts. */
    public enum Start {
        /** Sown in the bed. */
        SOWN,
        /** Raised in trays and planted out. */
        TRAY,
        /** Bought as young plants and planted out. */
        PLUGS,
        /** Tubers, corms or bulbs set in the bed. */
        SET
    }

    /** Mean temperatures of the sow week between which seed in the bed comes up. */
    public record SeedTemperature(
            @Fact(value = "Coldest; left out: any", unit = "°C", min = -20, max = 50) @Nullable
            Double coldest,

            @Fact(value = "Warmest; left out: any", unit = "°C", min = -20, max = 60) @Nullable
            Double warmest) {}

    /** The support net of a method. */
    public record NetUse(
            @Fact("Name of the net") String net,

            @Fact(value = "Layers", min = 1, max = 6, byDefault = "1")
            int layers) {}

    /** The row cover of a method. */
    public record CoverUse(
            @Fact(value = "Weeks that it lies; left out: until no longer tender", unit = "weeks", min = 1, max = 60)
            @Nullable
            Integer weeks) {}
}
