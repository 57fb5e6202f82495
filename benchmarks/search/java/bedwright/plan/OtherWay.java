package bedwright.plan;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What another way to a plan than the search came to: a row of {@code other-ways.csv}. What there was not is null.
 *
 * @param problem as {@link SearchTask} has it
 * @param way {@link Way}
 * @param seconds that it was given
 * @param took seconds by the clock until it came back or was stopped, building its model not counted
 * @param money of its plan, as {@link SearchRow} tells it
 * @param missing of its plan, likewise
 * @param gap of its plan, likewise
 * @param outcome what came of it, in words
 * @param beside what else the machine did meanwhile: nothing, or what it was
 * @param date of the measurement
 * @param commit what was measured
 * @param setting what it was measured on
 */
public record OtherWay(
        String problem,
        Way way,
        int seconds,
        double took,
        @Nullable Double money,
        @Nullable Long missing,
        @Nullable Double gap,
        String outcome,
        String beside,
        @Nullable LocalDate date,
        String commit,
        SearchSetting setting) {

    /** Ways to a plan. */
    public enum Way {
        /** The relaxation's parts of lots made whole and polished by the search. */
        DIVE("dived and polished"),
        /** The whole model given to a solver. */
        SAT("CP-SAT"),
        SCIP("SCIP"),
        HIGHS("HiGHS");

        private final String label;

        Way(String label) {
            this.label = label;
        }

        /** What it is called in results. */
        public String label() {
            return label;
        }

        boolean isExact() {
            return this != DIVE;
        }

        static Way of(String label) {
            for (Way way : values()) {
                if (way.label.equals(label)) {
                    return way;
                }
            }
            throw new IllegalArgumentException("\"" + label + "\" is no way to a plan");
        }
    }
}
