package bedwright.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * How close plans are wanted to come.
 *
 * @param median largest median gap, per cent
 * @param worst largest gap of any seed, per cent, or null if nothing is said of it
 */
public record SearchBar(
        String problem,
        int seconds,
        double median,
        @Nullable Double worst) {
    private static final List<SearchBar> ALL =
            List.of(new SearchBar("demo", 10, 7, null), new SearchBar("demo", 60, 3.5, 5.0));

    /** The bar of a problem searched for so long, if there is one. */
    public static Optional<SearchBar> of(String problem, int seconds) {
        return ALL.stream()
                .filter(bar -> bar.problem.equals(problem) && bar.seconds == seconds)
                .findFirst();
    }

    /** Whether the median keeps to it; a group without gaps does not. */
    public boolean keepsMedian(SearchGroup group) {
        OptionalDouble gap = group.medianGap();
        return gap.isPresent() && gap.getAsDouble() <= median;
    }

    /** Whether every gap keeps to what is wanted of the worst, if anything is; a group without gaps does not. */
    public boolean keepsWorst(SearchGroup group) {
        double[] gaps = group.gaps();
        return gaps.length > 0 && (worst == null || gaps[gaps.length - 1] <= worst);
    }
}
