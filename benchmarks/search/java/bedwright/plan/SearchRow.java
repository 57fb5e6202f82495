package bedwright.plan;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One search measured: a row of {@code how-close.csv}. What was not measured is null.
 *
 * @param task what was searched, how long and with which seed
 * @param money the plan's, a season, caution included, in main units of the currency
 * @param missing weighted hundredths of stems that must be ours and are missing, over all possible seasons
 * @param bound what no plan that misses no more of them goes beyond, as money is told
 * @param gap (bound − plan) / (bound − nothing planted), per cent
 * @param thumb the rule-of-thumb season's figures on the same problem
 * @param movesASecond moves tried for each second that the search took
 * @param took seconds by the clock, with the opening before the search proper
 * @param heap memory that was used
 * @param health {@value #SOUND}, or what is suspect
 * @param date of the measurement
 * @param commit what was measured
 * @param setting what it was measured on
 */
public record SearchRow(
        SearchTask task,
        double money,
        long missing,
        @Nullable Double bound,
        @Nullable Double gap,
        Thumb thumb,
        double movesASecond,
        @Nullable Double took,
        Heap heap,
        String health,
        @Nullable LocalDate date,
        String commit,
        SearchSetting setting) {
    /** Health of a plan of which nothing is suspect. */
    public static final String SOUND = "sound";

    /**
     * The rule-of-thumb season.
     *
     * @param money as the plan's
     * @param missing as the plan's
     * @param gap as the plan's, at what it misses itself
     */
    public record Thumb(
            @Nullable Double money,
            @Nullable Long missing,
            @Nullable Double gap) {}

    /**
     * Memory, MB of 2²⁰ bytes.
     *
     * @param end in use when the search had ended, with what a collection would have freed
     * @param peak at most in use during the search, likewise: the sum of the peaks of the heap's parts
     * @param limit the most that the JVM was given
     */
    public record Heap(
            @Nullable Long end,
            @Nullable Long peak,
            @Nullable Long limit) {}

    /** Whether nothing about it is suspect. */
    public boolean isSound() {
        return health.equals(SOUND);
    }
}
