package bedwright.station;

import bedwright.season.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether the last years of a record are unlike the ones before. */
final class Trend {
    private static final int LAST = 20;
    private static final double ERRORS = 3;

    private Trend() {}

    /** A sentence, where the last twenty whole years are warmer or colder than those before by more than chance does. */
    static Optional<String> of(Months months, Unit degrees) {
        List<Double> means = new ArrayList<>();
        List<Integer> years = new ArrayList<>();
        for (int year = 0; year < months.years(); year++) {
            double sum = 0;
            for (int month = 0; month < 12; month++) {
                sum += months.mean(month, year) / 12;
            }
            if (!Double.isNaN(sum)) {
                means.add(sum);
                years.add(months.firstYear() + year);
            }
        }
        int split = means.size() - LAST;
        if (split < LAST) {
            return Optional.empty();
        }
        List<Double> before = means.subList(0, split);
        List<Double> last = means.subList(split, means.size());
        double difference = mean(last) - mean(before);
        double error = Math.sqrt(variance(last) / last.size() + variance(before) / before.size());
        if (Math.abs(difference) <= ERRORS * error) {
            return Optional.empty();
        }
        return Optional.of(String.format(
                Locale.ROOT,
                "The last %d years are %s by %.1f %s than those before, more than chance does. To plan for what comes,"
                        + " take those alone: --from %d.",
                LAST,
                difference > 0 ? "warmer" : "colder",
                degrees.of(Math.abs(difference)),
                degrees.symbol(),
                years.get(split)));
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
    }

    private static double variance(List<Double> values) {
        double mean = mean(values);
        return values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum() / (values.size() - 1);
    }
}
