package bedwright.season;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A crop by its generic name, with what it needs, what threatens it and the ways it is grown. */
public record Crop(
        @Fact(value = "Generic name of the crop", least = 1) String name,

        @Fact("Plant family, one of the season's; left out: none that matters") @Nullable
        String family,

        @Fact(value = "Kinds of its stems in fixed shares that add up to 1", least = 1)
        List<KindShare> kinds,

        @Fact("Its development by degree-days") Clock clock,

        @Fact("What heat does to its cutting; left out: nothing") @Nullable
        Heat heat,

        @Fact(value = "Temperatures that kill it", byDefault = "{}")
        Killing killing,

        @Fact(
                value = "Degree-days after emergence for which insects can eat it whole",
                unit = "°C·d",
                min = 0,
                max = 5000,
                byDefault = "150")
        double tender,

        @Fact(
                value =
                        "Appetite of each pest for it: 0 left alone, 0.3 nibbled, 1 loved; pests not named leave it alone",
                min = 0,
                max = 10,
                byDefault = "{}")
        Map<String, Double> appeal,

        @Fact(value = "Height when in full flower", unit = "m", small = true, min = 0.05, max = 5)
        double height,

        @Fact(
                value =
                        "How deep its seed, corms, tubers or bulbs go; 0 for seed that needs light and is only pressed on;"
                                + " left out: as the packet says",
                unit = "m",
                small = true,
                min = 0,
                max = 0.5)
        @Nullable
        Double depth,

        @Fact(value = "How it stands against gusts", byDefault = "{}")
        Stand stand,

        @Fact(
                value = "Price of a seed, cell, plug or tuber where the method gives none",
                unit = "money",
                min = 0,
                byDefault = "0")
        double price,

        @Fact(value = "Jobs that take more or less with this crop", byDefault = "{}")
        Map<Job, Labour.JobRate> jobs,

        @Fact(value = "Dangers of handling it", byDefault = "[]")
        List<Hazard> hazards,

        @Fact("When it is cut and how long it then lasts; left out: not said") @Nullable
        Harvest harvest,

        @Fact(
                value = "How sure its figures are and where they come from, by key: firstCut, stems, height, …",
                byDefault = "{}")
        Map<String, Figure> figures,

        @Fact(value = "The ways it is grown", least = 1) List<Method> methods) {

    public Crop {
        kinds = List.copyOf(kinds);
        appeal = Collections.unmodifiableMap(new LinkedHashMap<>(appeal));
        jobs = Collections.unmodifiableMap(new LinkedHashMap<>(jobs));
        hazards = List.copyOf(hazards);
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
        methods = List.copyOf(methods);
    }

    /** How sure a figure is; fair where nothing is said. */
    public Sureness sureness(String key) {
        Figure figure = figures.get(key);
        return figure == null ? Sureness.FAIR : figure.sure();
    }

    /** The same crop with other kinds, appeal, figures and methods. */
    public Crop with(
            List<KindShare> otherKinds,
            Map<String, Double> otherAppeal,
            Map<String, Figure> otherFigures,
            List<Method> otherMethods) {
        return new Crop(
                name,
                family,
                otherKinds,
                clock,
                heat,
                killing,
                tender,
                otherAppeal,
                height,
                depth,
                stand,
                price,
                jobs,
                hazards,
                harvest,
                otherFigures,
                otherMethods);
    }

    /** A kind and its share of the stems. */
    public record KindShare(
            @Fact("Path of the kind, as in focal/warm/zinnia")
            String kind,

            @Fact(value = "Share of the stems", min = 0, max = 1, byDefault = "1")
            double share) {}

    /** How degree-days are counted. */
    public enum Convention {
        /** Single sine with horizontal cut-off (Baskerville and Emin 1969). */
        SINE,
        /** Mean of the day less the base, never negative. */
        AVERAGE,
        /** Mean of both temperatures, each held between base and upper threshold, less the base. */
        CLAMPED
    }

    /** Development by degree-days. */
    public record Clock(
            @Fact(value = "Base temperature", unit = "°C", min = -10, max = 25)
            double base,

            @Fact(value = "Upper threshold; left out: none", unit = "°C", min = 5, max = 60) @Nullable
            Double upper,

            @Fact(
                    value = "Convention in which the sums were published: sine, average or clamped",
                    byDefault = "\"sine\"")
            Convention convention,

            @Fact(value = "Sowing to emergence", unit = "°C·d", min = 0, max = 5000)
            double emergence,

            @Fact(
                    value = "Sowing to the pinching stage; left out: it is never pinched",
                    unit = "°C·d",
                    min = 0,
                    max = 10000)
            @Nullable
            Double pinch,

            @Fact(value = "Sowing to the first cut", unit = "°C·d", min = 0, max = 20000, above = true)
            double firstCut,

            @Fact(
                    value = "Day length below which it stands still after emergence; 0: none",
                    unit = "hours",
                    min = 0,
                    max = 24,
                    byDefault = "10")
            double leastDayLength,

            @Fact("How day length changes the first cut; left out: it does not") @Nullable
            DayLengthAnswer dayLength) {}

    /** Factor on the first cut's degree-days, linear between two mean day lengths, constant beyond. */
    public record DayLengthAnswer(
            @Fact(value = "Shorter day length", unit = "hours", min = 0, max = 24)
            double shortDay,

            @Fact(value = "Factor at it", min = 0.1, max = 5, byDefault = "1")
            double shortFactor,

            @Fact(value = "Longer day length", unit = "hours", min = 0, max = 24)
            double longDay,

            @Fact(value = "Factor at it", min = 0.1, max = 5, byDefault = "1")
            double longFactor,

            @Fact(
                    value = "Days after emergence (raised in trays: after sowing) that count",
                    unit = "days",
                    min = 1,
                    max = 200,
                    byDefault = "21")
            int days) {}

    /** What weeks warmer than the limit do from the first cut on. */
    public record Heat(
            @Fact(value = "Mean temperature of a week that is too much", unit = "°C", min = 0, max = 60)
            double limit,

            @Fact("Whether such a week ends the cutting or pauses it: ends, pauses")
            Answer then) {

        /** What happens to the cutting. */
        public enum Answer {
            ENDS,
            PAUSES
        }
    }

    /** Killing temperatures while young and when grown. */
    public record Killing(
            @Fact(value = "Temperature that kills it young", unit = "°C", min = -40, max = 3, byDefault = "0")
            double young,

            @Fact(value = "Temperature that kills it grown", unit = "°C", min = -40, max = 3, byDefault = "0")
            double grown) {}

    /** How a crop stands against gusts. */
    public record Stand(
            @Fact(
                    value = "Gust that lays half of it flat, full grown",
                    unit = "m/s",
                    min = 1,
                    max = 200,
                    byDefault = "24")
            double gust,

            @Fact(
                    value = "Height at which that gust was meant; left out: the crop's height",
                    unit = "m",
                    small = true,
                    min = 0.05,
                    max = 5)
            @Nullable
            Double height,

            @Fact(
                    value = "Spread: how much more or less from a half to about three quarters or one quarter",
                    unit = "m/s",
                    min = 0.1,
                    max = 50,
                    byDefault = "3")
            double spread,

            @Fact(value = "Share of what was laid flat that stands up again", min = 0, max = 1, byDefault = "0.3")
            double standsUp) {}
}
