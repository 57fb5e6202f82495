package bedwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.file.BookFigures;
import bedwright.file.CropBookFile;
import bedwright.season.Crop;
import bedwright.season.Method;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * How the crop book's degree-days to the first cut come from days: summed from the day of sowing, setting or planting
 * out with the normals of the place where the days hold, less the delay of pinching, over the factor of day length. Days
 * and places: {@code first-cuts.csv}, with their sources in the book's evidence. Normals in °F: Topeka from memory, held
 * below against the year's normals of the National Weather Service; Ithaca from a travel guide's table of daily highs and
 * nightly lows (Wikivoyage); Logan from a travel guide's table of mean maxima (utahtravelcenter.com), the minima of May to
 * September such that the means are those of the degree-days above 40 °F that the Western Regional Climate Center gives
 * for Logan, Utah State University, 1893–2006, those of the other months from the same guide, April from memory.
 */
class FirstCutsFromDaysTest {
    /** The book's sums are rounded down to fives. */
    private static final double ROUNDED = 5;

    private static final Map<String, Place> PLACES = Map.of(
            "Topeka",
            new Place(
                    39.1,
                    celsius(20, 24, 34, 44, 55, 65, 69, 67, 58, 45, 33, 24),
                    celsius(40, 45, 56, 66, 76, 85, 90, 88, 80, 68, 54, 43)),
            "Ithaca",
            new Place(
                    42.4,
                    celsius(15, 17, 23, 34, 44, 53, 58, 56, 49, 38, 32, 22),
                    celsius(31, 34, 42, 56, 67, 76, 80, 79, 71, 59, 48, 36)),
            "Logan",
            new Place(
                    41.7,
                    celsius(
                            11,
                            16,
                            25,
                            35,
                            fromSum(487, 31, 69),
                            fromSum(727, 30, 80),
                            fromSum(1020, 31, 89),
                            fromSum(979, 31, 88),
                            fromSum(654, 30, 77),
                            33,
                            24,
                            15),
                    celsius(31, 38, 48, 59, 69, 80, 89, 88, 77, 64, 46, 34)));

    private record Place(double latitude, List<Double> min, List<Double> max) {}

    private static List<Double> celsius(double... fahrenheit) {
        return DoubleStream.of(fahrenheit)
                .map(f -> Math.round((f - 32) / 1.8 * 10) / 10.0)
                .boxed()
                .toList();
    }

    /** A month's mean minimum from its degree-days above 40 °F and its mean maximum. */
    private static double fromSum(double sum, int days, double max) {
        return 2 * (40 + sum / days) - max;
    }

    static Stream<NamedCsvRecord> firstCuts() throws IOException {
        Path file = Path.of("src/test/resources/bedwright/climate/first-cuts.csv");
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(file)) {
            return reader.stream().toList().stream();
        }
    }

    /** 66.1 and 44.2 °F: normals 1981–2010 in the annual climate report of the National Weather Service, Topeka, 2020. */
    @Test
    void topekasYearIsThatOfTheWeatherService() {
        Place topeka = Objects.requireNonNull(PLACES.get("Topeka"));

        assertThat(mean(topeka.max)).isCloseTo((66.1 - 32) / 1.8, within(0.5));
        assertThat(mean(topeka.min)).isCloseTo((44.2 - 32) / 1.8, within(0.5));
    }

    private static double mean(List<Double> months) {
        return months.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("firstCuts")
    void theBooksSumIsThatOfItsDays(NamedCsvRecord row) {
        Crop crop = BookFigures.find(CropBookFile.ours(), row.getField("crop")).orElseThrow();
        Method method = crop.methods().stream()
                .filter(one -> one.name().equals(row.getField("method")))
                .findFirst()
                .orElseThrow();
        String[] on = row.getField("on").split("-", -1);
        int start = MonthlyNormals.dayOfYear(Integer.parseInt(on[0]) - 1, Integer.parseInt(on[1]));

        double sum = sum(
                crop,
                method,
                Objects.requireNonNull(PLACES.get(row.getField("place"))),
                start,
                Integer.parseInt(row.getField("days")));

        assertThat(crop.clock().firstCut()).isCloseTo(sum - ROUNDED / 2, within(ROUNDED / 2 + 1e-6));
    }

    private static double sum(Crop crop, Method method, Place place, int start, int days) {
        double[] min = MonthlyNormals.byDay(place.min);
        double[] max = MonthlyNormals.byDay(place.max);
        Crop.Clock clock = crop.clock();
        int year = MonthlyNormals.YEAR;
        double[] warmth = IntStream.range(0, year)
                .mapToDouble(d -> DegreeDays.of(clock.convention(), min[d], max[d], clock.base(), clock.upper()))
                .toArray();
        double[] light = IntStream.rangeClosed(1, year)
                .mapToDouble(d -> DayLength.hours(place.latitude, d))
                .toArray();
        boolean raised = method.start() == Method.Start.TRAY || method.start() == Method.Start.PLUGS;
        double sum = raised ? Math.max(0, method.headStart() - method.check()) : 0;
        int day = 0;
        while (!raised && sum < clock.emergence() - 1e-9) {
            sum += warmth[(start + day++) % year];
        }
        int sensitive = raised ? -7 * (method.trayWeeks()) : day;
        for (; day <= days; day++) {
            int of = (start + day) % year;
            sum += light[of] >= clock.leastDayLength() ? warmth[of] : 0;
        }
        double delay = method.pinched() ? method.pinchDelay() : 0;
        return (sum - delay) / factor(crop, light, start + sensitive);
    }

    private static double factor(Crop crop, double[] light, int from) {
        Crop.DayLengthAnswer answer = crop.clock().dayLength();
        if (answer == null) {
            return 1;
        }
        double mean = IntStream.range(from, from + answer.days())
                .mapToDouble(d -> light[Math.floorMod(d, MonthlyNormals.YEAR)])
                .average()
                .orElseThrow();
        double along = Math.clamp((mean - answer.shortDay()) / (answer.longDay() - answer.shortDay()), 0, 1);
        return answer.shortFactor() + along * (answer.longFactor() - answer.shortFactor());
    }
}
