package bedwright.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.FrostDates;
import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.climate.SiteClimate;
import bedwright.season.Season;
import bedwright.weather.InventedStation;
import bedwright.weather.StationRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Seasons sampled from the climate of a record against the record itself: means and spreads agree within sampling error.
 * With n years, the mean of a sampled quantity lies within t × s/√n of the record's (Student's t of n − 1), and the
 * record's variance over the sampled one within χ²/(n − 1), both at a chance of one in a thousand. The four real years
 * are those of New York 2012–2015 (NOAA); the sixty are invented, by a generator of its own.
 */
class SampledLikeTheRecordTest {
    private static final double CHANCE = 0.001;
    private static final int SEASONS = 2000;

    private record Place(StationRecord record, Season season, List<PossibleSeason> sampled, Seen seen) {
        static Place of(StationRecord record) {
            Season season = Stations.season(StationClimate.of(record, 270), 40.8, Stations.NEW_YEAR, 53);
            return new Place(record, season, PossibleSeasons.sample(season, SEASONS, 11), new Seen(record, true));
        }

        IntStream years() {
            return IntStream.rangeClosed(record.first().getYear(), record.last().getYear());
        }
    }

    private static final Place NEW_YORK = Place.of(Stations.newYork());
    private static final Place INVENTED = Place.of(Stations.of(new InventedStation(1941, 2000, 17)));

    static Stream<Arguments> places() {
        return Stream.of(Arguments.of("New York", NEW_YORK), Arguments.of("sixty invented years", INVENTED));
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double variance(double[] values) {
        double mean = mean(values);
        return Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / (values.length - 1);
    }

    /**
     * @param rounding what a figure may be off because it was rounded
     * @param widened how much wider than the record's the sampled spread is meant to be, because few years tell little
     */
    private static void assertAgree(String what, double[] were, double[] sampled, double rounding, double widened) {
        int n = were.length;
        double t = TDistribution.of(n - 1).inverseSurvivalProbability(CHANCE / 2);
        double error = Math.sqrt(variance(sampled) * (1.0 / n + 1.0 / sampled.length));
        assertThat(mean(sampled)).as("mean of %s", what).isCloseTo(mean(were), within(t * error + rounding));
        ChiSquaredDistribution chi = ChiSquaredDistribution.of(n - 1);
        assertThat(variance(were) * widened * widened / variance(sampled) * (n - 1))
                .as(
                        "spread of %s: %s sampled, %s recorded",
                        what, Math.sqrt(variance(sampled)), Math.sqrt(variance(were)))
                .isBetween(chi.inverseCumulativeProbability(CHANCE / 2), chi.inverseSurvivalProbability(CHANCE / 2));
    }

    /** Mean temperature of each month. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("places")
    void meanAndSpreadOfMonthsAgree(String name, Place place) {
        SiteClimate climate = SiteClimate.of(place.season());
        for (int month = 1; month <= 12; month++) {
            LocalDate first = LocalDate.of(2027, month, 1);
            int from = place.season().dayOf(first);
            int to = from + first.lengthOfMonth();
            double normal = IntStream.range(from, to)
                    .mapToDouble(day -> (climate.normalMin(day) + climate.normalMax(day)) / 2)
                    .average()
                    .orElseThrow();
            double[] sampled = place.sampled().stream()
                    .mapToDouble(possible -> normal + mean(Arrays.copyOfRange(possible.deviation(), from, to)))
                    .toArray();
            int of = month;
            double[] were = place.years()
                    .mapToDouble(year -> monthMean(place.record(), LocalDate.of(year, of, 1)))
                    .toArray();

            assertAgree("month " + month, were, sampled, 0.05, 1);
        }
    }

    private static double monthMean(StationRecord record, LocalDate first) {
        int from = record.dayOf(first);
        return IntStream.range(from, from + first.lengthOfMonth())
                .mapToDouble(record::mean)
                .average()
                .orElseThrow();
    }

    /**
     * The growing months together: as many degrees of freedom more. A year's shift makes months of a year alike, so that
     * the sum strays more than χ² of independent ones; hence only months that lie apart.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("places")
    void spreadOfGrowingMonthsTogetherAgrees(String name, Place place) {
        int[] months = {4, 6, 8, 10};
        int n = (int) place.years().count();
        double ratio = 0;
        for (int month : months) {
            LocalDate first = LocalDate.of(2027, month, 1);
            int from = place.season().dayOf(first);
            double[] sampled = place.sampled().stream()
                    .mapToDouble(possible ->
                            mean(Arrays.copyOfRange(possible.deviation(), from, from + first.lengthOfMonth())))
                    .toArray();
            double[] were = place.years()
                    .mapToDouble(year -> monthMean(place.record(), LocalDate.of(year, month, 1)))
                    .toArray();
            ratio += (n - 1) * variance(were) / variance(sampled);
        }
        ChiSquaredDistribution chi = ChiSquaredDistribution.of(months.length * (n - 1.0));

        assertThat(ratio)
                .isBetween(chi.inverseCumulativeProbability(CHANCE / 2), chi.inverseSurvivalProbability(CHANCE / 2));
    }

    /** With fewer than 20 springs the quantiles lie wider by t × √(1 + 1/n)/1.2816, on purpose. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("places")
    void meanAndSpreadOfTheLastFrostAgree(String name, Place place) {
        FrostDates dates = FrostDates.of(place.season()).orElseThrow();
        double[] sampled = place.sampled().stream()
                .mapToDouble(possible -> dates.spring(1, 0, possible.springFrost()))
                .toArray();
        double[] were = place.years()
                .mapToDouble(year -> place.seen().of(Measure.LAST_FROST, year))
                .toArray();
        int n = were.length;
        double widened =
                n < 20 ? TDistribution.of(n - 1).inverseSurvivalProbability(0.1) * Math.sqrt(1 + 1.0 / n) / 1.28155 : 1;

        assertAgree("last frost", were, sampled, 0.5, widened);
    }

    /** Sown at three times; the mark is published for Manitoba (883 °C·d over 6.7 °C). */
    @ParameterizedTest(name = "{0}")
    @MethodSource("places")
    void meanAndSpreadOfDaysToTheFirstAnthersAgree(String name, Place place) {
        SiteClimate climate = SiteClimate.of(place.season());
        List<Integer> sowings = new ArrayList<>();
        for (LocalDate sown :
                List.of(LocalDate.of(2027, 4, 18), LocalDate.of(2027, 5, 15), LocalDate.of(2027, 6, 15))) {
            sowings.add(place.season().dayOf(sown));
        }
        for (int sown : sowings) {
            Measure measure = new Measure("R5.1", true, null, sown, Measure.FIRST_FLOWER);
            double[] sampled = place.sampled().stream()
                    .mapToDouble(possible -> measure.of(Foretold.temperatures(climate, possible)))
                    .toArray();
            double[] were = place.years()
                    .mapToDouble(year -> place.seen().of(measure, year))
                    .toArray();

            assertAgree("sown on day " + sown, were, sampled, 0.5, 1);
        }
    }
}
