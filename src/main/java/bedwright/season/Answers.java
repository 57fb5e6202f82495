package bedwright.season;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a grower answers when a season of their own is begun. What is left out is as it is when nothing is typed. */
public record Answers(
        @Fact(value = "Name of the farm or garden", least = 1, byDefault = "\"My flowers\"")
        String name,

        @Fact(
                value = "Units of these answers and of the season file: metres (with °C) or feet (with °F)",
                byDefault = "\"metres\"")
        Units units,

        @Fact(value = "First day of the season") LocalDate starts,

        @Fact(value = "Weeks of the season", unit = "weeks", min = 4, max = 104, byDefault = "40")
        int weeks,

        @Fact(value = "Latitude, south negative", unit = "degrees", min = -65, max = 65)
        double latitude,

        @Fact(
                "File of a weather station's daily record; left out: the climate is reckoned from frosts and temperatures")
        @Nullable
        String station,

        @Fact("Usual last frost of spring; left out with a station, or where there is none") @Nullable
        MonthDay lastFrost,

        @Fact("Usual first frost of autumn; left out with a station, or where there is none") @Nullable
        MonthDay firstFrost,

        @Fact(value = "Mean daily maximum of the warmest month", unit = "°C", min = 5, max = 50, byDefault = "26")
        double warmest,

        @Fact(value = "Mean daily minimum of the coldest month", unit = "°C", min = -40, max = 25, byDefault = "-4")
        double coldest,

        @Fact(value = "The beds, a block of equal ones at a time", least = 1)
        List<Block> beds,

        @Fact(
                value = "Side from which storms come: 0 north, 90 east, 180 south, 270 west; left out: none come",
                unit = "degrees",
                min = 0,
                max = 360)
        @Nullable
        Double stormsFrom,

        @Fact(value = "Length of support net", unit = "m", min = 0, max = 100000, byDefault = "30")
        double net,

        @Fact(value = "Tray cells that the bench holds", unit = "cells", min = 0, max = 10000000, byDefault = "1000")
        int bench,

        @Fact(value = "What is to be grown, from the crop book", least = 1)
        List<Wanted> crops,

        @Fact(value = "Sign or letters of the currency", least = 1, byDefault = "\"$\"")
        String currency,

        @Fact(
                value = "What seed, or a bulb, costs for a plant",
                unit = "money",
                min = 0,
                max = 10000,
                byDefault = "0.05")
        double seed,

        @Fact("First day of selling; left out: eleven weeks after the last frost, or 14 weeks from the start") @Nullable
        LocalDate sellFrom,

        @Fact("Last day of selling; left out: two weeks before the first frost of autumn, or before the end") @Nullable
        LocalDate sellTo,

        @Fact(value = "Bouquets promised each week", unit = "bouquets", min = 0, max = 100000, byDefault = "0")
        int bouquets,

        @Fact(value = "What a bouquet brings", unit = "money", min = 0, max = 100000, byDefault = "12")
        double bouquetPrice,

        @Fact(
                value = "Loose stems that can be sold each week, not promised",
                unit = "stems",
                min = 0,
                max = 1000000,
                byDefault = "0")
        int stems,

        @Fact(value = "What a loose stem brings", unit = "money", min = 0, max = 10000, byDefault = "0.8")
        double stemPrice,

        @Fact(value = "Events to cut for", byDefault = "[]") List<Event> events,

        @Fact(value = "Own hours a week", unit = "hours", min = 0, max = 10000, byDefault = "20")
        double ownHours,

        @Fact(value = "Hours a week that can be hired", unit = "hours", min = 0, max = 10000, byDefault = "0")
        double hiredHours,

        @Fact(value = "Worth of an hour", unit = "money", min = 0, max = 100000, byDefault = "15")
        double rate,

        @Fact(
                value = "Hours a week that are cool enough for cutting",
                unit = "hours",
                min = 0,
                max = 1000,
                byDefault = "8")
        double cuttingHours) {

    public Answers {
        beds = List.copyOf(beds);
        crops = List.copyOf(crops);
        events = List.copyOf(events);
    }

    /** Beds that are alike. */
    public record Block(
            @Fact(value = "Name", least = 1) String name,

            @Fact(value = "How many beds", min = 1, max = 500, byDefault = "1")
            int count,

            @Fact(value = "Length of each", unit = "m", min = 0.5, max = 2000)
            double length,

            @Fact(value = "Whether a tunnel stands over them", byDefault = "false")
            boolean tunnel) {}

    /** A crop that is to be grown. */
    public record Wanted(
            @Fact(value = "Name in the crop book", least = 1)
            String crop,

            @Fact(
                    value = "Plants at the most; left out: as many as is usual for its kind",
                    unit = "plants",
                    min = 1,
                    max = 100000)
            @Nullable
            Integer plants) {}

    /** An event to cut for. */
    public record Event(
            @Fact("Its day") LocalDate date,

            @Fact(value = "Bouquets for it", unit = "bouquets", min = 1, max = 100000)
            int bouquets,

            @Fact(value = "What a bouquet brings; left out: as much as others", unit = "money", min = 0, max = 100000)
            @Nullable
            Double price) {}
}
