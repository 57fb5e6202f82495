package bedwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A tenth, a half and nine tenths of the possible seasons. */
class SpreadTest {
    @Test
    void takesTheFirstFifthAndNinthOfTen() {
        int[] figures = IntStream.rangeClosed(1, 10).map(i -> 11 - i).toArray();
        assertThat(Spread.of(figures)).isEqualTo(new Spread(1, 5, 9, 5.5));
    }

    @Test
    void takesTheSecondEighthAndFifteenthOfSixteen() {
        // A tenth of 16 is 1.6, so the second lowest; 14.4 is the fifteenth.
        int[] figures = IntStream.rangeClosed(1, 16).toArray();
        assertThat(Spread.of(figures)).isEqualTo(new Spread(2, 8, 15, 8.5));
    }

    @Test
    void aSingleSeasonIsAllThree() {
        assertThat(Spread.of(new long[] {7})).isEqualTo(new Spread(7, 7, 7, 7));
    }
}
