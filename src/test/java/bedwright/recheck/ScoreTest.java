package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class ScoreTest {

    @Test
    void withoutCautionItIsTheSum() {
        assertThat(Score.soft(new long[] {5, -3, 10}, 0)).isEqualTo(12);
    }

    /** Of six seasons ⌈6/5⌉ = 2 are the worst fifth: 6 × (1 + 2) / 2. */
    @Test
    void withFullCautionItIsTheWorstFifth() {
        assertThat(Score.soft(new long[] {5, 1, 9, 2, 7, 8}, 100)).isEqualTo(9);
    }

    /** (60 × 1 × 30 + 40 × 2 × 10) / 100 = 26. */
    @Test
    void betweenItIsWeighed() {
        assertThat(Score.soft(new long[] {20, 10}, 40)).isEqualTo(26);
    }

    /** (67 × 1 × 3 + 33 × 2 × 1) / 100 = 2.67. */
    @Test
    void partsAreCutOff() {
        assertThat(Score.soft(new long[] {1, 2}, 33)).isEqualTo(2);
    }

    /** (67 × −3 + 33 × 2 × −2) / 100 = −3.33. */
    @Test
    void floorOfALossIsTheGreaterLoss() {
        assertThat(Score.soft(new long[] {-1, -2}, 33)).isEqualTo(-4);
    }

    @Test
    void greatSumsDoNotOverflow() {
        long money = 9_000_000_000_000_000L;
        long[] seasons = new long[1000];
        Arrays.fill(seasons, money);
        assertThat(Score.soft(seasons, 33)).isEqualTo(1000 * money);
    }
}
