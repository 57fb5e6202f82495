package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoolingTest {
    private static final long MOVES = 100_000;

    @ParameterizedTest
    @CsvSource({"0, 0.75", "48000, 0.475", "96000, 0.2", "98000, 0.1", "100000, 0", "100001, 0"})
    void aRoundCoolsEvenlyAndThenQuicklyToNothing(long asked, double share) {
        assertThat(new Cooling(1000, MOVES, Long.MAX_VALUE).after(asked, 0)).isCloseTo(1000 * share, within(1e-9));
    }

    @Test
    void timeCountsWhereItIsFurtherOnThanTheMoves() {
        Cooling cooling = new Cooling(1000, MOVES, 1_000_000);

        assertThat(cooling.after(1, 480_000)).isCloseTo(475, within(1e-9));
    }

    @Test
    void movesCountWhereTheyAreFurtherOnThanTheTime() {
        Cooling cooling = new Cooling(1000, MOVES, 1_000_000);

        assertThat(cooling.after(48_000, 1)).isCloseTo(475, within(1e-9));
    }
}
