package bedwright.season;

import java.time.MonthDay;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where the farm lies and what weather it has. */
public record Site(
        @Fact(value = "Latitude, south negative", unit = "degrees", min = -65, max = 65)
        double latitude,

        @Fact(
                value = "Mean daily minimum of each month, January first",
                unit = "°C",
                least = 12,
                most = 12,
                min = -60,
                max = 45)
        List<Double> meanMin,

        @Fact(
                value = "Mean daily maximum of each month, January first",
                unit = "°C",
                least = 12,
                most = 12,
                min = -60,
                max = 55)
        List<Double> meanMax,

        @Fact(value = "How far temperatures stray from the normal", byDefault = "{}")
        TemperatureSpread spread,

        @Fact("Last spring and first autumn frost; left out where there is none") @Nullable
        Frost frost,

        @Fact(value = "Weeks in which the seed-bed is too wet, dry or crusted", byDefault = "{}")
        BadSeedBed badSeedBed,

        @Fact(value = "Winters harder than the usual", byDefault = "{}")
        HardWinter hardWinter,

        @Fact(value = "Damaging gusts by the side they come from", byDefault = "[]")
        List<StormSide> storms) {

    public Site {
        meanMin = List.copyOf(meanMin);
        meanMax = List.copyOf(meanMax);
        storms = List.copyOf(storms);
    }

    /** Spread of temperatures about the normal, for sampled seasons. The defaults are assumed. */
    public record TemperatureSpread(
            @Fact(
                    value = "Standard deviation of a whole year's shift",
                    unit = "°C difference",
                    min = 0,
                    max = 10,
                    byDefault = "0.8")
            double year,

            @Fact(
                    value = "Standard deviation of a day about its year's course",
                    unit = "°C difference",
                    min = 0,
                    max = 15,
                    byDefault = "3.2")
            double day,

            @Fact(value = "Share of a day's deviation that the next day keeps", min = 0, max = 0.99, byDefault = "0.8")
            double memory) {}

    /** Frost dates at 0 °C and how they move with a colder threshold. */
    public record Frost(
            @Fact("Last frost of spring") FrostDate lastSpring,
            @Fact("First frost of autumn") FrostDate firstAutumn,

            @Fact(
                    value = "Days that the last spring frost comes earlier for each degree that it is harder",
                    unit = "days/°C",
                    min = 0,
                    max = 30,
                    byDefault = "5.7")
            double springDaysPerDegree,

            @Fact(
                    value = "Days that the first autumn frost comes later for each degree that it is harder",
                    unit = "days/°C",
                    min = 0,
                    max = 30,
                    byDefault = "4.4")
            double autumnDaysPerDegree) {}

    /** A date with its spread: early falls before it in one year of ten, late after it in one year of ten. */
    public record FrostDate(
            @Fact("In one year of ten it comes before this day")
            MonthDay early,

            @Fact("In half of the years it comes before this day")
            MonthDay usual,

            @Fact("In one year of ten it comes after this day")
            MonthDay late) {}

    /** Chance of a bad week for direct sowing, and what it leaves. */
    public record BadSeedBed(
            @Fact(value = "Chance that a week is a bad one to sow in", min = 0, max = 1, byDefault = "0")
            double chance,

            @Fact(value = "Share of the seedlings that come up all the same", min = 0, max = 1, byDefault = "1")
            double share) {}

    /** Chance of a hard winter, and what it leaves of a planting that stands through it. */
    public record HardWinter(
            @Fact(value = "Chance that a winter is a hard one", min = 0, max = 1, byDefault = "0")
            double chance,

            @Fact(value = "Share left of what a usual winter would leave", min = 0, max = 1, byDefault = "1")
            double share) {}

    /** Gusts from one side: how often, and how strong (a Gumbel distribution of the speed of one damaging gust). */
    public record StormSide(
            @Fact(
                    value = "Side from which it blows: 0 north, 90 east, 180 south, 270 west",
                    unit = "degrees",
                    min = 0,
                    max = 360)
            double from,

            @Fact(
                    value = "Damaging gusts a week, in each month, January first",
                    unit = "gusts/week",
                    least = 12,
                    most = 12,
                    min = 0,
                    max = 7)
            List<Double> gustsAWeek,

            @Fact(value = "Speed of the most frequent damaging gust (Gumbel mode)", unit = "m/s", min = 1, max = 90)
            double mode,

            @Fact(value = "Spread of their speeds (Gumbel scale)", unit = "m/s", min = 0.1, max = 30)
            double scale) {

        public StormSide {
            gustsAWeek = List.copyOf(gustsAWeek);
        }
    }
}
