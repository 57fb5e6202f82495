package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WholePricesTest {
    private static final PlanFacts FACTS = Seasons.facts(Seasons.of(Seasons.DEMO_FARM));
    /** Share of what stems bring that may be lost by rounding. */
    private static final double LOST = 0.005;

    private final WholePrices whole = new WholePrices(FACTS);
    private final Random random = new Random(5);

    @ParameterizedTest
    @CsvSource({"1, 1", "53, 16", "60, 64", "300, 64", "53, 5000"})
    void theMostThatALongestRunCanBringFitsAnInt(int weeks, int seasons) {
        long sum = (long) WholePrices.mostUnits(weeks, seasons) * Figures.PARTS * weeks * seasons;

        assertThat(sum).isLessThanOrEqualTo(Integer.MAX_VALUE);
    }

    @Test
    void forSixtyFourPossibleSeasonsOfAYearTheyAreFineEnough() {
        assertThat(WholePrices.mostUnits(53, 64)).isGreaterThan(1000);
    }

    @Test
    void stemsBringWhatTheyBringAtThePricesThatWereRounded() {
        double[] weights = weights();
        float[] prices = prices(2 * (float) Grains.ofStem(FACTS.season, 1));
        set(weights, prices);

        for (int i = 0; i < 300; i++) {
            int place = random.nextInt(FACTS.table().places());
            double exact = exact(place, weights, prices);
            assertThat(said(place)).isCloseTo(exact, within(LOST * Math.abs(exact)));
        }
    }

    @Test
    void whatIsDearerThanAnyLineIsSaidToBeWorthNoMoreThanTheDearestLineInTheWorstSeasons() {
        double[] weights = new double[FACTS.seasonCount];
        Arrays.fill(weights, 1);
        float[] prices = prices(0);
        Arrays.fill(prices, 1e15f);
        set(weights, prices);
        long gain = Arrays.stream(FACTS.fillings)
                .flatMap(filling -> Arrays.stream(filling.lines))
                .mapToLong(Filling.Line::gain)
                .max()
                .orElseThrow();
        int place = FACTS.table().places() / 2;
        long stems =
                Arrays.stream(FACTS.table().stems(FACTS.table().row(place))).sum();
        double caution = FACTS.season.caution().percent() / 100.0;
        double most = gain * (1 - caution + caution * FACTS.seasonCount / Math.ceil(FACTS.seasonCount / 5.0));

        assertThat(said(place) / (most * stems)).isCloseTo(1, within(0.02));
    }

    private double[] weights() {
        double[] weights = new double[FACTS.seasonCount];
        for (int k = 0; k < weights.length; k++) {
            weights[k] = k % 4 == 0 ? 1.6 : 0.8;
        }
        return weights;
    }

    /** @param most grains a hundredth */
    private float[] prices(float most) {
        float[] prices = new float[FACTS.weeks * FACTS.cells.size() * FACTS.seasonCount];
        for (int i = 0; i < prices.length; i++) {
            prices[i] = most * (random.nextFloat() - 0.1f);
        }
        return prices;
    }

    private void set(double[] weights, float[] prices) {
        whole.weigh(weights);
        int wide = FACTS.weeks * FACTS.seasonCount;
        for (int kind = 0; kind < FACTS.cells.size(); kind++) {
            whole.set(prices, kind * wide, wide);
        }
    }

    private double said(int place) {
        int[] of = FACTS.figures.of(place);
        int start = FACTS.figures.start(place);
        return whole.stems(place, of, Figures.runs(of, start), of[start + Figures.RUNS]);
    }

    /** Block by block, from the table. */
    private static double exact(int place, double[] weights, float[] prices) {
        int row = FACTS.table().row(place);
        int[] stems = FACTS.table().stems(row);
        double sum = 0;
        for (int i = 0; i < stems.length; i++) {
            int block = i / FACTS.seasonCount;
            int k = i % FACTS.seasonCount;
            int kind = FACTS.cells.of(FACTS.table().blockNode(row, block));
            int week = FACTS.table().blockWeek(row, block);
            sum += weights[k] * prices[(kind * FACTS.weeks + week) * FACTS.seasonCount + k] * stems[i];
        }
        return sum;
    }
}
