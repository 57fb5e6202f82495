package bedwright.season;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The possible seasons over which a plan is judged: sampled from a seed, or given outright. */
public record Sampling(
        @Fact(value = "How many are sampled; 1 is the normal season alone", min = 1, max = 1000, byDefault = "16")
        int count,

        @Fact(value = "Seed of the sampling", min = 0, max = 9007199254740991L, byDefault = "1")
        long seed,

        @Fact(value = "How far figures may be off, by how sure they are", byDefault = "{}")
        Doubt doubt,

        @Fact(value = "Seasons given outright; where there are any, none is sampled", byDefault = "[]", most = 1000)
        List<GivenSeason> given) {

    public Sampling {
        given = List.copyOf(given);
    }

    /** Standard deviation of the logarithm of the factor on a figure, by how sure the figure is. Defaults are assumed. */
    public record Doubt(
            @Fact(
                    value = "Of the first cut's degree-days",
                    byDefault = "{\"sure\": 0.03, \"fair\": 0.06, \"weak\": 0.1}")
            BySureness firstCut,

            @Fact(value = "Of the stems a plant gives", byDefault = "{\"sure\": 0.1, \"fair\": 0.2, \"weak\": 0.35}")
            BySureness stems) {}

    /** A value for each sureness. */
    public record BySureness(
            @Fact(value = "For a sure figure", min = 0, max = 2)
            double sure,

            @Fact(value = "For a fair figure", min = 0, max = 2)
            double fair,

            @Fact(value = "For a weak figure", min = 0, max = 2)
            double weak) {

        /** The value for a sureness. */
        public double of(Sureness sureness) {
            return switch (sureness) {
                case SURE -> sure;
                case FAIR -> fair;
                case WEAK -> weak;
            };
        }
    }

    /** A season given outright; what it does not say is as normal, without gusts. */
    public record GivenSeason(
            @Fact("Name") @Nullable String name,

            @Fact(
                    value = "Warmer or colder than normal throughout",
                    unit = "°C difference",
                    min = -15,
                    max = 15,
                    byDefault = "0")
            double warmer,

            @Fact(
                    value =
                            "Further deviation of each day from the normal, from the first; days beyond the list have none",
                    unit = "°C difference",
                    min = -40,
                    max = 40,
                    byDefault = "[]")
            List<Double> days,

            @Fact(value = "Damaging gusts", byDefault = "[]")
            List<GivenGust> gusts,

            @Fact(value = "Multiplier of each pest; those not named have 1", min = 0, max = 100, byDefault = "{}")
            Map<String, Double> pests,

            @Fact("Last spring frost at 0 °C; left out: the usual") @Nullable
            LocalDate lastSpringFrost,

            @Fact("First autumn frost at 0 °C; left out: the usual") @Nullable
            LocalDate firstAutumnFrost,

            @Fact(value = "First days of the weeks with a bad seed-bed", byDefault = "[]")
            List<LocalDate> badSeedBeds,

            @Fact(value = "Whether the winter is a hard one", byDefault = "false")
            boolean hardWinter,

            @Fact(
                    value = "Factor on the first cut's degree-days, by crop; those not named have 1",
                    min = 0.1,
                    max = 10,
                    byDefault = "{}")
            Map<String, Double> firstCut,

            @Fact(value = "Factor on the stems, by crop; those not named have 1", min = 0, max = 100, byDefault = "{}")
            Map<String, Double> yields) {

        public GivenSeason {
            days = List.copyOf(days);
            gusts = List.copyOf(gusts);
            pests = Collections.unmodifiableMap(new LinkedHashMap<>(pests));
            badSeedBeds = List.copyOf(badSeedBeds);
            firstCut = Collections.unmodifiableMap(new LinkedHashMap<>(firstCut));
            yields = Collections.unmodifiableMap(new LinkedHashMap<>(yields));
        }
    }

    /** One gust of a given season. */
    public record GivenGust(
            @Fact("Day") LocalDate on,

            @Fact(value = "Side from which it blows", unit = "degrees", min = 0, max = 360)
            double from,

            @Fact(value = "Speed", unit = "m/s", min = 1, max = 150)
            double speed) {}
}
