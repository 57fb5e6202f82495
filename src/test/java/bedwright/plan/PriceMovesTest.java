package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Caution;
import bedwright.season.Season;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How prices move together on the way to good ones. */
class PriceMovesTest {
    private final Season season = Seasons.over(5, Seasons.of(Seasons.FIRST_BED)).with(Caution.STEADY);
    private final PlanFacts facts = Seasons.facts(season);
    private final Relaxation relaxed = new Relaxation(facts);
    private final PriceLayout layout = PriceLayout.of(facts);
    private final PriceScales scales = new PriceScales(relaxed, layout);
    private final PriceMoves moves = new PriceMoves(relaxed, layout, scales.scale);

    /** Prices as a search may have them, some of them 0. */
    private double[] prices(Random random) {
        double[] prices = new double[layout.size()];
        Arrays.setAll(prices, i -> scales.scale[i] > 0 && random.nextInt(4) > 0 ? 1e6 * random.nextDouble() : 0);
        for (int i = layout.hired(); i < layout.hours(); i++) {
            prices[i] = random.nextDouble() * relaxed.extraPay((i - layout.hired()) / facts.seasonCount);
        }
        for (int k = 0; k < facts.seasonCount; k++) {
            prices[layout.seasons() + k] = 1;
        }
        return prices;
    }

    private double[] slope(Random random) {
        double[] slope = new double[layout.size()];
        Arrays.setAll(slope, i -> 1e4 * random.nextGaussian());
        return slope;
    }

    private double[] down(double[] prices, double[] slope, double length) {
        double[] moved = new double[layout.size()];
        moves.at(prices, slope);
        moves.down(prices, slope, length, moved);
        return moved;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aStepGoesDownTheSlope(long seed) {
        Random random = new Random(seed);
        double[] slope = slope(random);
        // So short that no price is stopped at 0.
        double[] moved = down(prices(random), slope, 1e-9);
        double rise = 0;
        for (int i = 0; i < moved.length; i++) {
            rise += slope[i] * moved[i];
        }

        assertThat(rise).isNegative();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aStepOfACertainLengthDropsByItsSquareOverThatLength(long seed) {
        Random random = new Random(seed);
        double[] prices = prices(random);
        double[] slope = slope(random);
        double length = 1e-9;
        double[] moved = down(prices, slope, length);
        double rise = 0;
        for (int i = 0; i < moved.length; i++) {
            rise += slope[i] * moved[i];
        }

        assertThat(-rise * length).isCloseTo(moves.lengthSquared(moved), within(1e-6 * moves.lengthSquared(moved)));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void noPriceOfHoursOrStemsFallsBelowNothing(long seed) {
        Random random = new Random(seed);
        double[] prices = prices(random);
        double[] moved = down(prices, slope(random), 1e6);

        for (int i = 0; i < layout.shelves(); i++) {
            assertThat(prices[i] + moved[i]).isGreaterThanOrEqualTo(-1e-6 * prices[i]);
        }
    }

    @Test
    void aDearerHourLeavesWhatAStemCostsItsBuyerAsItWas() {
        double[] prices = new double[layout.size()];
        Arrays.setAll(prices, i -> scales.scale[i] > 0 ? 1e6 : 0);
        Arrays.fill(prices, layout.hired(), layout.hours(), 0);
        for (int k = 0; k < facts.seasonCount; k++) {
            prices[layout.seasons() + k] = 1;
        }
        double[] slope = new double[layout.size()];
        int week = firstWeekSold();
        slope[layout.cutting() + week] = -1000;
        double[] moved = down(prices, slope, 1e-3 / scales.scale[layout.cutting() + week]);
        Filling filling = facts.fillings[0];
        int asked = layout.asked() + (filling.firstNode * facts.weeks + week) * facts.seasonCount;

        assertThat(moved[layout.cutting() + week]).isPositive();
        assertThat(moved[asked]).isCloseTo(-filling.cutRate * moved[layout.cutting() + week], within(1e-6));
    }

    private int firstWeekSold() {
        int first = layout.asked() + facts.fillings[0].firstNode * facts.weeks * facts.seasonCount;
        for (int w = 0; w < facts.weeks; w++) {
            if (scales.scale[first + w * facts.seasonCount] > 0 && scales.scale[layout.cutting() + w] > 0) {
                return w;
            }
        }
        throw new IllegalStateException("Nothing of the first role is sold in a week with limited cutting");
    }

    @Test
    void aPriceOfNothingThatWantsToFallStaysAndNothingElseMovesForIt() {
        double[] prices = new double[layout.size()];
        for (int k = 0; k < facts.seasonCount; k++) {
            prices[layout.seasons() + k] = 1;
        }
        double[] slope = new double[layout.size()];
        Arrays.fill(slope, 0, layout.hired(), 1000);
        double[] moved = down(prices, slope, 1);

        assertThat(Arrays.stream(moved)).allMatch(move -> move == 0);
    }
}
