package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** How a week's stems spread over parts of it; week 4 is days 28 to 34. */
class CourseTest {
    private static final double EXACT = 1e-12;

    private final SmallCrop crop = new SmallCrop();

    private double[] spread(int firstCut, int week, int parts) {
        return new Course(
                        crop.build().methods().getFirst(),
                        0,
                        0,
                        Prospect.NONE,
                        4,
                        Prospect.NONE,
                        firstCut,
                        List.of(),
                        List.of())
                .spread(week, parts);
    }

    private static void assertSpread(double[] spread, double... expected) {
        assertThat(spread).containsExactly(expected, within(EXACT));
    }

    @Test
    void beforeTheFirstCutNothingComes() {
        assertSpread(spread(30, 4, 7), 0, 0, 0.2, 0.2, 0.2, 0.2, 0.2);
    }

    @Test
    void afterTheLastCutNothingComes() {
        // The fourteenth day of cutting is 43, the second of week 6.
        assertSpread(spread(30, 6, 7), 0.5, 0.5, 0, 0, 0, 0, 0);
    }

    @Test
    void aDayInTwoPartsGivesEachItsPart() {
        // Of five days of cutting, from the third on, one and a half come by noon of the fourth day.
        assertSpread(spread(30, 4, 2), 0.3, 0.7);
    }

    @Test
    void thirdsOfAWeekEndWithinDays() {
        assertSpread(spread(30, 4, 3), 1.0 / 15, 7.0 / 15, 7.0 / 15);
    }

    @Test
    void aDayThatGivesMoreCountsMore() {
        crop.cutShares = List.of(0.75, 0.25);

        // Three days of three parts each, then four of one.
        assertSpread(spread(24, 4, 7), 3.0 / 13, 3.0 / 13, 3.0 / 13, 1.0 / 13, 1.0 / 13, 1.0 / 13, 1.0 / 13);
    }

    @Test
    void aWeekOfCuttingAllThroughIsSpreadEvenly() {
        assertSpread(spread(28, 4, 4), 0.25, 0.25, 0.25, 0.25);
    }

    @Test
    void onePartIsAll() {
        assertSpread(spread(30, 4, 1), 1);
    }

    @Test
    void aWeekWithoutStemsIsSpreadEvenly() {
        assertSpread(spread(35, 4, 2), 0.5, 0.5);
    }

    @Test
    void whatIsNeverCutIsSpreadEvenly() {
        assertSpread(spread(Prospect.NONE, 4, 2), 0.5, 0.5);
    }
}
